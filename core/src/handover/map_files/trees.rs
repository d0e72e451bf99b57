//! The layer of trees: what was measured, what was judged, where it stands.

use super::layer::{Column, Form, Kind, Layer, Row, Value, tenth_up};
use super::layers::{column, judged, shown_zone, tree_point};
use crate::handover::paper_input::{carries_days, looks_that_count};
use crate::record::Quantity::{AngleDeg, BearingDeg, LengthCm, LengthM};
use crate::record::{Day, Inspection, Judgement, SiteFile, SiteJudgement, Tree, Visit};
use crate::words::Words;

/// The columns of the trees. No score: the number stands with its interval and its reasons on the
/// climb sheet, and not alone on a map.
pub(super) const TREE_COLUMNS: &[Column] = &[
    column("tag", Kind::Text),
    column("species", Kind::Text),
    column("height_m", Kind::Number(LengthM)),
    column("girth_cm", Kind::Number(LengthCm)),
    column("crown_radius_m", Kind::Number(LengthM)),
    column("lean_deg", Kind::Number(AngleDeg)),
    column("lean_toward_deg", Kind::Number(BearingDeg)),
    column("way", Kind::Text),
    column("way_shown", Kind::Text),
    column("verdict", Kind::Text),
    column("verdict_shown", Kind::Text),
    column("climb", Kind::Text),
    column("drop_radius_m", Kind::Reach(LengthM)),
    column("keep_out_m", Kind::Reach(LengthM)),
    column("keep_out_crew_m", Kind::Reach(LengthM)),
    column("keep_out_downhill_m", Kind::Reach(LengthM)),
    column("accuracy_m", Kind::Number(LengthM)),
    column("inspected_on", Kind::Day),
    column("judged_for", Kind::Day),
    column("next_look", Kind::Day),
    column("note", Kind::Text),
];

pub(super) fn trees(file: &SiteFile, judgement: &SiteJudgement, words: Words) -> Layer {
    let by_tree = judged(judgement);
    let visits = &file.site.visits;
    let carries = carries_days(file);
    let rows = file.site.trees.iter().map(|tree| {
        let looks = looks_that_count(tree, visits, judgement.as_of, carries);
        let judged = by_tree.get(&tree.id).copied();
        let mut values = seen_values(tree, &looks);
        values.extend(judged_values(tree, judged, words));
        values.extend([
            Value::number(tree.position.and_then(|at| at.accuracy_m)),
            Value::day(looks.first().and_then(|look| day_of(look, visits))),
            Value::day(judged.map(|judged| judged.as_of)),
            Value::day(
                judged
                    .and_then(|judged| judged.next_look)
                    .or_else(|| looks.iter().find_map(|look| look.next_look)),
            ),
            Value::text_or(tree.note.as_ref()),
        ]);
        Row {
            id: tree.id.to_string(),
            place: tree_point(tree),
            values,
        }
    });
    Layer {
        name: "trees",
        form: Form::Point,
        columns: TREE_COLUMNS,
        rows: rows.collect(),
    }
}

/// Each measure from the newest look that has it.
fn seen_values(tree: &Tree, looks: &[&Inspection]) -> Vec<Value> {
    let lean = looks.iter().find_map(|look| look.lean);
    let height = looks.iter().find_map(|look| look.height);
    let girth = looks.iter().find_map(|look| look.girth);
    let crown = looks.iter().find_map(|look| look.crown);
    vec![
        Value::text(&tree.tag),
        Value::text_or(tree.species.as_ref()),
        Value::number(height.map(|height| height.height_m)),
        Value::number(girth.map(|girth| girth.girth_cm)),
        Value::number(crown.map(|crown| crown.radius_m)),
        Value::number(lean.map(|lean| lean.lean_deg)),
        Value::number(lean.and_then(|lean| lean.toward_deg)),
    ]
}

fn judged_values(tree: &Tree, judged: Option<&Judgement>, words: Words) -> Vec<Value> {
    let zone = judged.and_then(shown_zone);
    let way = zone.map(|zone| zone.way).or(tree.way);
    let reach = |radius_m: Option<f64>| Value::number(radius_m.map(tenth_up));
    let shown = |text: Option<String>| text.map_or(Value::Missing, Value::text);
    vec![
        Value::code(way),
        shown(way.map(|way| words.word_of(&way))),
        Value::code(judged.map(|judged| judged.verdict)),
        shown(judged.map(|judged| words.word_of(&judged.verdict))),
        Value::code(judged.map(|judged| judged.climb)),
        reach(zone.map(|zone| zone.drop_radius_m)),
        reach(zone.map(|zone| zone.keep_out_m)),
        reach(zone.map(|zone| zone.keep_out_crew_m)),
        reach(zone.map(|zone| zone.keep_out_downhill_m)),
    ]
}

fn day_of(look: &Inspection, visits: &[Visit]) -> Option<Day> {
    let visit = visits.iter().find(|visit| visit.id == look.visit)?;
    (!look.visit.is_empty()).then_some(visit.day)
}
