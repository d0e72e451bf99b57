//! Distances and overlaps on the flat piece of ground around a site.

use geo::{Contains, Coord, Intersects, LineString, Point, Polygon};

use crate::measure::place::LocalPlane;
use crate::record::{GroundForm, LatLon};

fn coord(plane: &LocalPlane, point: LatLon) -> Coord<f64> {
    let place = plane.metres(point);
    Coord {
        x: place.east_m,
        y: place.north_m,
    }
}

fn way(plane: &LocalPlane, points: &[LatLon]) -> LineString<f64> {
    LineString::new(points.iter().map(|point| coord(plane, *point)).collect())
}

/// A ring of the plane.
pub(crate) fn ring(plane: &LocalPlane, points: &[LatLon]) -> Polygon<f64> {
    Polygon::new(way(plane, points), Vec::new())
}

/// Whether what lies on the ground touches a ring.
pub(crate) fn touches(
    plane: &LocalPlane,
    zone: &Polygon<f64>,
    form: GroundForm,
    points: &[LatLon],
) -> bool {
    match (form, points) {
        (_, []) => false,
        (GroundForm::Spot, [spot, ..]) | (_, [spot]) => {
            zone.intersects(&Point(coord(plane, *spot)))
        }
        (GroundForm::Way, points) | (GroundForm::Area, points @ [_, _]) => {
            zone.intersects(&way(plane, points))
        }
        (GroundForm::Area, points) => zone.intersects(&ring(plane, points)),
    }
}

/// Whether a ring holds another whole.
pub(crate) fn holds(outer: &Polygon<f64>, inner: &Polygon<f64>) -> bool {
    outer.contains(inner)
}

/// Distance in metres from a point to what lies on the ground; 0 inside an area.
pub(crate) fn distance_m(
    plane: &LocalPlane,
    from: LatLon,
    form: GroundForm,
    points: &[LatLon],
) -> Option<f64> {
    let here = coord(plane, from);
    let mut line: Vec<Coord<f64>> = points.iter().map(|point| coord(plane, *point)).collect();
    let first = *line.first()?;
    match form {
        GroundForm::Spot => line.truncate(1),
        GroundForm::Area if ring(plane, points).contains(&Point(here)) => return Some(0.0),
        GroundForm::Area => line.push(first),
        GroundForm::Way => {}
    }
    let mut nearest = libm::hypot(first.x - here.x, first.y - here.y);
    for (a, b) in line.iter().zip(line.iter().skip(1)) {
        nearest = nearest.min(to_piece_m(here, *a, *b));
    }
    Some(nearest)
}

/// Distance from a point to a straight piece, metres.
fn to_piece_m(p: Coord<f64>, a: Coord<f64>, b: Coord<f64>) -> f64 {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let length2 = dx * dx + dy * dy;
    let along = if length2 > 0.0 {
        (((p.x - a.x) * dx + (p.y - a.y) * dy) / length2).clamp(0.0, 1.0)
    } else {
        0.0
    };
    libm::hypot(p.x - a.x - along * dx, p.y - a.y - along * dy)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(lat_deg: f64, lon_deg: f64) -> LatLon {
        LatLon { lat_deg, lon_deg }
    }

    #[test]
    fn a_point_a_way_and_an_area_are_measured_to_their_nearest_place() {
        // The geodesic line of 33.240243 m between two points of one property (Karney's
        // algorithm, reference value).
        let home = at(42.3314, -71.1211);
        let plane = LocalPlane::around(home);
        let there = at(42.3316, -71.1208);
        let spot = distance_m(&plane, home, GroundForm::Spot, &[there]).unwrap();
        assert!((spot - 33.240_243).abs() < 0.001);
        // A way that runs north through `there` lies as far off as the difference in longitude.
        let road = [at(42.33, -71.1208), at(42.333, -71.1208)];
        let way = distance_m(&plane, home, GroundForm::Way, &road).unwrap();
        assert!((way - 0.0003 * 82_419.488).abs() < 0.01);
        let yard = [
            at(42.33, -71.122),
            at(42.333, -71.122),
            at(42.333, -71.12),
            at(42.33, -71.12),
        ];
        assert_eq!(distance_m(&plane, home, GroundForm::Area, &yard), Some(0.0));
        assert!(touches(
            &plane,
            &ring(&plane, &yard),
            GroundForm::Way,
            &road
        ));
        assert_eq!(distance_m(&plane, home, GroundForm::Way, &[]), None);
    }
}
