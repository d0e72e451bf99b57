//! What the plan of a site is drawn from: local metres and words, nothing else.

use super::drawing::{LegendLine, PointSymbol, Spot, StyleRole};
use super::frame::BarUnit;

/// A site, or a part of it, in local metres: `x_m` east, `y_m` north of one point of the site.
/// Spots that are not finite are left out.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanInput {
    /// What the plan shows, in words for people who do not see it.
    pub described: String,
    /// The edges of the property, a ring for each part.
    pub property: Vec<Vec<Spot>>,
    /// The trees.
    pub trees: Vec<PlanTree>,
    /// Drop zones and keep-out areas.
    pub zones: Vec<PlanZone>,
    /// What could be hit.
    pub targets: Vec<PlanTarget>,
    /// The conductors.
    pub overhead_lines: Vec<PlanLine>,
    /// Distances to be paced, drawn from a place outwards.
    pub distances: Vec<PlanDistance>,
    /// Whether zones of one role are drawn as one area; they can then not be tapped one by one.
    pub merge_zones: bool,
    /// The letter for north.
    pub north: String,
    /// The reader's unit for the scale bar.
    pub bar_unit: BarUnit,
    /// The legend, in the order to be read; it is handed on as it is.
    pub legend: Vec<LegendLine>,
}

/// A tree on the plan.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanTree {
    /// Its id, for whoever taps it.
    pub id: String,
    /// The tag written beside it.
    pub tag: String,
    /// Where it stands.
    pub at: Spot,
    /// Radius in metres that holds the true place with 95 % probability; unknown draws no ring.
    pub accuracy_m: Option<f64>,
    /// The spread of its crown, when known.
    pub crown: Option<PlanArea>,
    /// Whether the crown is dead.
    pub dead: bool,
    /// Its mark: a verdict for the crew, plain for the client.
    pub symbol: PointSymbol,
}

/// An area on the plan. A circle is drawn as a circle.
#[derive(Debug, Clone, PartialEq)]
pub enum PlanArea {
    /// A circle.
    Circle {
        /// Its middle.
        centre: Spot,
        /// Its radius in metres, more than 0.
        radius_m: f64,
    },
    /// A polygon: its edge, then its holes.
    Outline {
        /// Rings, not closed by repeating the first spot.
        rings: Vec<Vec<Spot>>,
    },
}

/// A drop zone or a keep-out area.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanZone {
    /// The id of what it belongs to.
    pub about: String,
    /// Drop zone, keep-out for everyone or keep-out for the crew.
    pub role: StyleRole,
    /// Its area.
    pub area: PlanArea,
}

/// A target.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanTarget {
    /// Its id.
    pub id: String,
    /// Its kind, as one of the target symbols.
    pub symbol: PointSymbol,
    /// Where its symbol stands when it is a point; else the middle of the outline or of the line.
    pub at: Option<Spot>,
    /// Its outline, such as a house's; may be empty.
    pub outline: Vec<Spot>,
    /// Its course, such as a road's middle line; may be empty.
    pub course: Vec<Spot>,
    /// Its name; empty when the legend is enough.
    pub words: String,
}

/// An overhead line.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanLine {
    /// Its id.
    pub id: String,
    /// Its course over the ground; poles stand at both ends and at the bends.
    pub course: Vec<Spot>,
    /// Distance in metres that everybody and everything stays away on both sides, when known.
    pub approach_m: Option<f64>,
    /// What is written along it; may be empty.
    pub words: String,
}

/// A distance to be taped or paced.
#[derive(Debug, Clone, PartialEq)]
pub struct PlanDistance {
    /// The id of what it belongs to.
    pub about: String,
    /// Where it begins, mostly at the stem.
    pub from: Spot,
    /// In which direction, in degrees clockwise from north.
    pub bearing_deg: f64,
    /// How far, in metres.
    pub distance_m: f64,
    /// What is written at its end.
    pub words: String,
}

impl PlanArea {
    /// The rings of the area; a circle's polygon stands outside the circle, never inside.
    pub(crate) fn rings(&self) -> Vec<Vec<Spot>> {
        match self {
            PlanArea::Circle { centre, radius_m } => vec![ring_around(*centre, *radius_m)],
            PlanArea::Outline { rings } => rings.clone(),
        }
    }

    /// The corners of the rectangle around a circle, or all spots of an outline.
    pub(crate) fn reach(&self) -> Vec<Spot> {
        match self {
            PlanArea::Circle { centre, radius_m } => [-radius_m, *radius_m]
                .iter()
                .map(|by_m| Spot::new(centre.x_m + by_m, centre.y_m + by_m))
                .collect(),
            PlanArea::Outline { rings } => rings.iter().flatten().copied().collect(),
        }
    }

    fn finite(&self) -> bool {
        match self {
            PlanArea::Circle { centre, radius_m } => {
                is_finite(centre) && radius_m.is_finite() && *radius_m > 0.0
            }
            PlanArea::Outline { rings } => rings.iter().flatten().all(is_finite),
        }
    }
}

impl PlanInput {
    /// The same input without whatever is not finite, so that a single bad coordinate cannot
    /// spoil the plan.
    pub(crate) fn finite(&self) -> PlanInput {
        let mut sound = self.clone();
        for ring in &mut sound.property {
            ring.retain(is_finite);
        }
        sound.trees.retain(|tree| is_finite(&tree.at));
        for tree in &mut sound.trees {
            tree.crown = tree.crown.take().filter(PlanArea::finite);
            tree.accuracy_m = tree.accuracy_m.filter(|radius_m| radius_m.is_finite());
        }
        sound.zones.retain(|zone| zone.area.finite());
        for target in &mut sound.targets {
            target.at = target.at.filter(is_finite);
            target.outline.retain(is_finite);
            target.course.retain(is_finite);
        }
        for line in &mut sound.overhead_lines {
            line.course.retain(is_finite);
            line.approach_m = line.approach_m.filter(|away_m| away_m.is_finite());
        }
        sound.distances.retain(|distance| {
            is_finite(&distance.from)
                && distance.bearing_deg.is_finite()
                && distance.distance_m.is_finite()
        });
        sound
    }
}

fn is_finite(spot: &Spot) -> bool {
    spot.x_m.is_finite() && spot.y_m.is_finite()
}

/// Seventy-two corners around a circle, each side touching it from outside.
pub(crate) fn ring_around(centre: Spot, radius_m: f64) -> Vec<Spot> {
    let corner_m = radius_m / libm::cos(std::f64::consts::PI / 72.0);
    (0..72)
        .map(|corner| centre.towards(5.0 * f64::from(corner) + 2.5, corner_m))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::lines::{distance_to_line_m, pieces};
    use super::*;

    #[test]
    fn a_polygon_for_a_circle_stands_outside_it() {
        let centre = Spot::new(3.0, -4.0);
        let ring = ring_around(centre, 30.48);
        for side in pieces(&ring, true) {
            let distance_m = distance_to_line_m(centre, side);
            assert!((30.479_8..30.481).contains(&distance_m), "{distance_m}");
        }
    }
}
