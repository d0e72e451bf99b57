//! The zones around a tree, with the distances to be paced from the stem.

use super::plan::{overhead_line, plan_tree, plane_of, property, spots, target};
use super::{bar_unit, width};
use crate::draw::{
    Drawing, DrawnFrame, LegendLine, PacedZone, PlanArea, StyleRole, ZonesInput, zones,
};
use crate::measure::place::LocalPlane;
use crate::pages::desk::PageDesk;
use crate::record::{Id, LatLon, Quantity, ZoneAnswer};
use crate::words::Said;

/// The zones of the planned way; nothing without a position or a zone.
pub(super) fn tree_zones(desk: &PageDesk, id: &Id, frame: &DrawnFrame) -> Option<Drawing> {
    let (site, judged) = desk.site?;
    let plane = plane_of(site)?;
    let (tree, answer) = desk.tree(id)?;
    let drawn = plan_tree(desk, site, tree, answer, &plane)?;
    let zone = answer.zones.iter().find(|zone| zone.planned);
    let zone = zone.or(answer.zones.first())?;
    let way = desk.words.word_of(&zone.way);
    let others = desk
        .trees()
        .into_iter()
        .filter(|(other, _)| other.id != *id);
    let input = ZonesInput {
        described: desk.words.say(
            "page.zones-described",
            &[("tag", Said::Text(&tree.tag)), ("way", Said::Text(&way))],
        ),
        tree: drawn,
        zones: paced(desk, zone, &plane),
        neighbours: others
            .filter_map(|(tree, answer)| plan_tree(desk, site, tree, answer, &plane))
            .collect(),
        targets: site.targets.iter().map(|at| target(at, &plane)).collect(),
        overhead_lines: site
            .lines
            .iter()
            .map(|at| overhead_line(judged, at, &plane))
            .collect(),
        property: property(site, &plane),
        north: desk.say("plan.north"),
        bar_unit: bar_unit(desk, Quantity::LengthM),
        legend: [
            (StyleRole::KeepOutEveryone, "sheet.pace-everyone"),
            (StyleRole::DropZone, "sheet.pace-lands"),
        ]
        .map(|(role, key)| LegendLine {
            role,
            symbol: None,
            words: desk.say(key),
        })
        .to_vec(),
    };
    Some(zones(&input, frame, &width).drawing)
}

/// The keep-out and the drop zone, each with the distance from the stem.
fn paced(desk: &PageDesk, zone: &ZoneAnswer, plane: &LocalPlane) -> Vec<PacedZone> {
    let farthest = zone.keep_out_m.max(zone.keep_out_downhill_m);
    let of = |role, outline: &[LatLon], distance_m: f64| {
        (outline.len() >= 3).then(|| PacedZone {
            role,
            area: PlanArea::Outline {
                rings: vec![spots(plane, outline)],
            },
            distance_m,
            words: desk.words.distance_up(distance_m),
        })
    };
    let keep_out = of(StyleRole::KeepOutEveryone, &zone.keep_out_outline, farthest);
    let drop = of(StyleRole::DropZone, &zone.drop_outline, zone.drop_radius_m);
    [keep_out, drop].into_iter().flatten().collect()
}
