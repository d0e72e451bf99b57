//! The zones around one tree: where something may land, where nobody stands, and how far to pace.

use super::drawing::{LegendLine, Spot, StyleRole};
use super::frame::{BarUnit, DrawnFrame, TextWidth};
use super::plan::{LaidOut, plan_around};
use super::plan_fit::whole_extent;
use super::plan_input::{
    PlanArea, PlanDistance, PlanInput, PlanLine, PlanTarget, PlanTree, PlanZone,
};

/// One tree with its zones, in metres east and north of anywhere.
#[derive(Debug, Clone, PartialEq)]
pub struct ZonesInput {
    /// What the drawing shows, in words for people who do not see it.
    pub described: String,
    /// The tree.
    pub tree: PlanTree,
    /// Its zones, each with the distance from the stem to be paced.
    pub zones: Vec<PacedZone>,
    /// Other trees that should be seen beside it.
    pub neighbours: Vec<PlanTree>,
    /// Targets near by.
    pub targets: Vec<PlanTarget>,
    /// Overhead lines near by.
    pub overhead_lines: Vec<PlanLine>,
    /// The property's edge, when it is to be seen.
    pub property: Vec<Vec<Spot>>,
    /// The letter for north.
    pub north: String,
    /// The reader's unit for the scale bar.
    pub bar_unit: BarUnit,
    /// The legend, handed on as it is.
    pub legend: Vec<LegendLine>,
}

/// A zone and its distance from the stem.
#[derive(Debug, Clone, PartialEq)]
pub struct PacedZone {
    /// Drop zone, keep-out for everyone or keep-out for the crew.
    pub role: StyleRole,
    /// Its area.
    pub area: PlanArea,
    /// Distance from the stem in metres, as the climb sheet gives it.
    pub distance_m: f64,
    /// The distance and the paces, already worded.
    pub words: String,
}

/// The zones of one tree in `frame`; neighbours, targets and lines show as far as they lie there.
pub fn zones(input: &ZonesInput, frame: &DrawnFrame, width: TextWidth) -> LaidOut {
    let mut trees = input.neighbours.clone();
    trees.push(input.tree.clone());
    let bearings = free_bearings(input, input.zones.len());
    let distances = input
        .zones
        .iter()
        .zip(bearings)
        .map(|(zone, bearing_deg)| PlanDistance {
            about: input.tree.id.clone(),
            from: input.tree.at,
            bearing_deg,
            distance_m: zone.distance_m,
            words: zone.words.clone(),
        })
        .collect();
    let plan_input = PlanInput {
        described: input.described.clone(),
        property: input.property.clone(),
        trees,
        zones: input
            .zones
            .iter()
            .map(|zone| PlanZone {
                about: input.tree.id.clone(),
                role: zone.role,
                area: zone.area.clone(),
            })
            .collect(),
        targets: input.targets.clone(),
        overhead_lines: input.overhead_lines.clone(),
        distances,
        merge_zones: false,
        north: input.north.clone(),
        bar_unit: input.bar_unit.clone(),
        legend: input.legend.clone(),
    };
    let plan_input = plan_input.finite();
    let own = PlanInput {
        property: Vec::new(),
        trees: plan_input.trees.last().cloned().into_iter().collect(),
        targets: Vec::new(),
        ..plan_input.clone()
    };
    plan_around(&plan_input, &frame.held(), whole_extent(&own), width)
}

/// Bearings for the lines of distance: as far as can be from targets, neighbours and each other,
/// of 24 directions.
fn free_bearings(input: &ZonesInput, wanted: usize) -> Vec<f64> {
    let stem = input.tree.at;
    let bearing_to =
        |spot: Spot| libm::atan2(spot.x_m - stem.x_m, spot.y_m - stem.y_m).to_degrees();
    let targets = input
        .targets
        .iter()
        .filter_map(|target| target.at.or(target.outline.first().copied()));
    let mut taken: Vec<f64> = input
        .neighbours
        .iter()
        .map(|tree| tree.at)
        .chain(targets)
        .map(bearing_to)
        .collect();
    let mut chosen = Vec::new();
    for _ in 0..wanted {
        let mut best = (-1.0, 90.0);
        for step in 0..24 {
            // East first: words then run to the right of the stem.
            let bearing_deg = libm::fmod(75.0 + 15.0 * f64::from(step), 360.0);
            let apart = taken
                .iter()
                .map(|other| turn_between(bearing_deg, *other))
                .fold(180.0, f64::min);
            if apart > best.0 + 1e-9 {
                best = (apart, bearing_deg);
            }
        }
        chosen.push(best.1);
        taken.push(best.1);
    }
    chosen
}

/// The angle between two bearings, 0 to 180.
fn turn_between(one_deg: f64, other_deg: f64) -> f64 {
    let turn = libm::fabs(libm::fmod(one_deg - other_deg, 360.0));
    turn.min(360.0 - turn)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bearings_meet_across_north() {
        assert_eq!(turn_between(350.0, 20.0), 30.0);
        assert_eq!(turn_between(-170.0, 170.0), 20.0);
    }
}
