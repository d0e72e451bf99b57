//! The layers of the map files: trees, zones, targets, overhead lines, the property's outline.

use std::collections::BTreeMap;

use super::cut::{area, ground, spot, way};
use super::layer::{Column, Form, Kind, Layer, Row, Value, tenth_up};
use super::trees::trees;
use crate::record::Quantity::{LengthM, VoltageKv};
use crate::record::{Id, Judgement, SiteFile, SiteJudgement, Tree, ZoneAnswer};
use crate::words::Words;

/// Shorthand for the lists of columns.
pub(super) const fn column(name: &'static str, kind: Kind) -> Column {
    Column { name, kind }
}

const ZONE_COLUMNS: &[Column] = &[
    column("tag", Kind::Text),
    column("zone", Kind::Text),
    column("way", Kind::Text),
    column("way_shown", Kind::Text),
    column("radius_m", Kind::Reach(LengthM)),
    column("rule", Kind::Text),
    column("source", Kind::Text),
];

const TARGET_COLUMNS: &[Column] = &[
    column("name", Kind::Text),
    column("kind", Kind::Text),
    column("kind_shown", Kind::Text),
    column("occupancy", Kind::Text),
    column("occupancy_shown", Kind::Text),
    column("neighbours", Kind::Yes),
    column("can_be_moved", Kind::Yes),
    column("can_be_closed", Kind::Yes),
];

const LINE_COLUMNS: &[Column] = &[
    column("name", Kind::Text),
    column("kind", Kind::Text),
    column("kind_shown", Kind::Text),
    column("voltage_kv", Kind::Number(VoltageKv)),
    column("voltage_known", Kind::Yes),
    column("height_m", Kind::Number(LengthM)),
    column("dead_on", Kind::Day),
];

const OUTLINE_COLUMNS: &[Column] = &[column("name", Kind::Text)];

/// Every layer of a site, in the order in which they are drawn last to first.
pub(super) fn layers(file: &SiteFile, judgement: &SiteJudgement, words: Words) -> Vec<Layer> {
    vec![
        trees(file, judgement, words),
        zones(file, judgement, words),
        targets(file, words),
        lines(file, words),
        outline(file),
    ]
}

/// The judgements by tree.
pub(super) fn judged(judgement: &SiteJudgement) -> BTreeMap<&Id, &Judgement> {
    judgement
        .trees
        .iter()
        .map(|judged| (&judged.tree, judged))
        .collect()
}

/// The zone that a tree's papers show: the planned way of working, else the first.
pub(super) fn shown_zone(judgement: &Judgement) -> Option<&ZoneAnswer> {
    let planned = judgement.zones.iter().find(|zone| zone.planned);
    planned.or_else(|| judgement.zones.first())
}

fn zones(file: &SiteFile, judgement: &SiteJudgement, words: Words) -> Layer {
    let judged = judged(judgement);
    let rows = file
        .site
        .trees
        .iter()
        .filter_map(|tree| Some((tree, shown_zone(judged.get(&tree.id)?)?)))
        .flat_map(|(tree, zone)| zone_rows(tree, zone, words))
        .collect();
    Layer {
        name: "zones",
        form: Form::MultiPolygon,
        columns: ZONE_COLUMNS,
        rows,
    }
}

/// Drop zone and keep-out; a tree without a position has neither on the ground.
fn zone_rows(tree: &Tree, zone: &ZoneAnswer, words: Words) -> Vec<Row> {
    let row = |name: &str, radius_m: f64, outline| {
        Some(Row {
            id: format!("{}/{name}", tree.id),
            place: Some(area(outline)?),
            values: vec![
                Value::text(&tree.tag),
                Value::text(name),
                Value::code(Some(zone.way)),
                Value::text(words.word_of(&zone.way)),
                Value::number(Some(tenth_up(radius_m))),
                Value::text(words.reason(&zone.rule)),
                Value::text(&zone.source),
            ],
        })
    };
    [
        row("drop", zone.drop_radius_m, &zone.drop_outline),
        row("keep_out", zone.keep_out_m, &zone.keep_out_outline),
    ]
    .into_iter()
    .flatten()
    .collect()
}

fn targets(file: &SiteFile, words: Words) -> Layer {
    let rows = file.site.targets.iter().map(|target| Row {
        id: target.id.to_string(),
        place: ground(target.form, &target.ground),
        values: vec![
            Value::text(&target.name),
            Value::code(Some(target.kind)),
            Value::text(words.word_of(&target.kind)),
            Value::code(target.occupancy),
            Value::text(
                target
                    .occupancy
                    .map(|often| words.word_of(&often))
                    .unwrap_or_default(),
            ),
            Value::yes(target.neighbours),
            Value::yes(target.can_be_moved),
            Value::yes(target.can_be_closed),
        ],
    });
    Layer {
        name: "targets",
        form: Form::Any,
        columns: TARGET_COLUMNS,
        rows: rows.collect(),
    }
}

fn lines(file: &SiteFile, words: Words) -> Layer {
    let rows = file.site.lines.iter().map(|line| Row {
        id: line.id.to_string(),
        place: way(&line.way),
        values: vec![
            Value::text(&line.name),
            Value::code(Some(line.kind)),
            Value::text(words.word_of(&line.kind)),
            Value::number(line.voltage_kv),
            Value::yes(Some(line.voltage_kv.is_some())),
            Value::number(line.height_m),
            Value::day(line.dead_on),
        ],
    });
    Layer {
        name: "lines",
        form: Form::MultiLine,
        columns: LINE_COLUMNS,
        rows: rows.collect(),
    }
}

fn outline(file: &SiteFile) -> Layer {
    let site = &file.site;
    let row = area(&site.outline).map(|place| Row {
        id: site.id.to_string(),
        place: Some(place),
        values: vec![Value::text(&site.name)],
    });
    Layer {
        name: "outline",
        form: Form::MultiPolygon,
        columns: OUTLINE_COLUMNS,
        rows: row.into_iter().collect(),
    }
}

/// A tree's point.
pub(super) fn tree_point(tree: &Tree) -> Option<geo::Geometry> {
    tree.position.and_then(|at| spot(at.point()))
}
