//! Areas merged into one, and the strip on both sides of a line.

use geo::{BooleanOps, Buffer, Coord, LineString, MultiPolygon, Polygon, unary_union};

use super::drawing::Spot;
use super::plan_input::PlanArea;

/// The union of some areas: for each part that does not touch another, its edge and its holes.
pub(crate) fn merged_rings<'a>(areas: impl Iterator<Item = &'a PlanArea>) -> Vec<Vec<Vec<Spot>>> {
    let polygons: Vec<Polygon> = areas
        .filter_map(|area| {
            let mut rings = area.rings().into_iter().map(line_of);
            rings.next().map(|edge| Polygon::new(edge, rings.collect()))
        })
        .collect();
    // A union with nothing winds and cleans the rings alike, whether one area came in or many.
    let one = unary_union(&polygons).union(&MultiPolygon::<f64>(Vec::new()));
    rings_of(&one)
}

/// The strip within `away_m` metres of a line, with round ends.
pub(crate) fn strip_rings(course: &[Spot], away_m: f64) -> Vec<Vec<Vec<Spot>>> {
    if course.len() < 2 {
        return Vec::new();
    }
    rings_of(&line_of(course.to_vec()).buffer(away_m))
}

fn line_of(spots: Vec<Spot>) -> LineString {
    spots
        .into_iter()
        .map(|spot| Coord {
            x: spot.x_m,
            y: spot.y_m,
        })
        .collect()
}

fn rings_of(many: &MultiPolygon) -> Vec<Vec<Vec<Spot>>> {
    let ring_of = |line: &LineString| -> Vec<Spot> {
        let open = line.0.len().saturating_sub(1);
        line.coords()
            .take(open)
            .map(|at| Spot::new(at.x, at.y))
            .collect()
    };
    many.iter()
        .map(|polygon| {
            std::iter::once(polygon.exterior())
                .chain(polygon.interiors())
                .map(ring_of)
                .collect()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::lines::inside_rings;
    use super::*;

    fn circle(x_m: f64, radius_m: f64) -> PlanArea {
        PlanArea::Circle {
            centre: Spot::new(x_m, 0.0),
            radius_m,
        }
    }

    #[test]
    fn circles_that_meet_become_one_and_others_stay_apart() {
        let areas = [circle(0.0, 10.0), circle(15.0, 10.0), circle(100.0, 5.0)];
        let parts = merged_rings(areas.iter());
        assert_eq!(parts.len(), 2);
        for (spot, within) in [(7.5, true), (24.9, true), (50.0, false), (100.0, true)] {
            let spot = Spot::new(spot, 0.0);
            assert_eq!(parts.iter().any(|rings| inside_rings(spot, rings)), within);
        }
    }

    #[test]
    fn a_strip_reaches_its_distance_on_both_sides_and_past_the_ends() {
        let course = [Spot::new(0.0, 0.0), Spot::new(20.0, 0.0)];
        let strip = strip_rings(&course, 3.0);
        assert_eq!(strip.len(), 1);
        for (x_m, y_m, within) in [
            (10.0, 2.99, true),
            (10.0, -2.99, true),
            (10.0, 3.01, false),
            (22.9, 0.0, true),
            (23.1, 0.0, false),
        ] {
            assert_eq!(
                inside_rings(Spot::new(x_m, y_m), &strip[0]),
                within,
                "{x_m} {y_m}"
            );
        }
        assert!(strip_rings(&course[..1], 3.0).is_empty());
    }
}
