//! Outlines and ways on the ground as geometries, cut in two at 180° of longitude as RFC 7946,
//! section 3.1.9, asks; rings run counterclockwise around their inside (section 3.1.6).

use geo::orient::Direction;
use geo::{
    BooleanOps, BoundingRect, Coord, Geometry, LineString, MapCoords, MultiLineString,
    MultiPolygon, Orient, Point, Polygon, Rect,
};

use crate::measure::place::{unwrapped_lon, wrapped_lon};
use crate::record::{GroundForm, LatLon};

/// Room around a shape when it is cut, in degrees.
const AROUND_DEG: f64 = 0.001;

/// The geometry of a list of points, or nothing where they make none.
pub(super) fn ground(form: GroundForm, points: &[LatLon]) -> Option<Geometry> {
    match form {
        GroundForm::Spot => points.first().and_then(|at| spot(*at)),
        GroundForm::Way => way(points),
        GroundForm::Area => area(points),
    }
}

/// A point, or nothing where its coordinates are no numbers.
pub(super) fn spot(at: LatLon) -> Option<Geometry> {
    finite(&[at]).then(|| Geometry::Point(Point::new(at.lon_deg, at.lat_deg)))
}

/// A ring around an area; closed whether or not its last point repeats the first.
pub(super) fn area(points: &[LatLon]) -> Option<Geometry> {
    let open = match points.split_last() {
        Some((last, rest)) if rest.first() == Some(last) => rest,
        _ => points,
    };
    if open.len() < 3 || !finite(open) {
        return None;
    }
    let ring = Polygon::new(LineString::new(unwrapped(open)), Vec::new());
    let bounds = ring.bounding_rect()?;
    let pieces = match beyond(&bounds) {
        Some(edge) => halves(&ring, &bounds, edge),
        None => MultiPolygon::new(vec![ring]),
    };
    let mut pieces = pieces.orient(Direction::Default).0;
    match pieces.len() {
        0 => None,
        1 => pieces.pop().map(Geometry::Polygon),
        _ => Some(Geometry::MultiPolygon(MultiPolygon::new(pieces))),
    }
}

/// A way from point to point.
pub(super) fn way(points: &[LatLon]) -> Option<Geometry> {
    if points.len() < 2 || !finite(points) {
        return None;
    }
    let path = LineString::new(unwrapped(points));
    let mut pieces = match beyond(&path.bounding_rect()?) {
        Some(edge) => parts(&path, edge),
        None => vec![path],
    };
    match pieces.len() {
        0 => None,
        1 => pieces.pop().map(Geometry::LineString),
        _ => Some(Geometry::MultiLineString(MultiLineString::new(pieces))),
    }
}

fn finite(points: &[LatLon]) -> bool {
    points
        .iter()
        .all(|at| at.lat_deg.is_finite() && at.lon_deg.is_finite())
}

/// Longitudes continued from point to point, so that a shape at 180° stays in one piece.
fn unwrapped(points: &[LatLon]) -> Vec<Coord> {
    let mut before = points.first().map_or(0.0, |at| at.lon_deg);
    points
        .iter()
        .map(|at| {
            before = unwrapped_lon(at.lon_deg, before);
            Coord {
                x: before,
                y: at.lat_deg,
            }
        })
        .collect()
}

/// The edge of the map that a shape reaches over.
fn beyond(bounds: &Rect) -> Option<f64> {
    if bounds.max().x > 180.0 {
        Some(180.0)
    } else if bounds.min().x < -180.0 {
        Some(-180.0)
    } else {
        None
    }
}

fn halves(ring: &Polygon, bounds: &Rect, edge: f64) -> MultiPolygon {
    let (low, high) = (bounds.min(), bounds.max());
    let piece = |from: f64, to: f64| {
        let side = Rect::new(
            Coord {
                x: from,
                y: low.y - AROUND_DEG,
            },
            Coord {
                x: to,
                y: high.y + AROUND_DEG,
            },
        );
        ring.intersection(&side.to_polygon())
    };
    let west = piece((low.x - AROUND_DEG).min(edge), edge);
    let east = piece(edge, (high.x + AROUND_DEG).max(edge));
    let mut pieces = settled(west, edge > 0.0, 180.0).0;
    pieces.extend(settled(east, edge < 0.0, -180.0).0);
    MultiPolygon::new(pieces)
}

/// Brings a half back onto the map: its cut side lies at `cut_at` exactly.
fn settled(pieces: MultiPolygon, stays: bool, cut_at: f64) -> MultiPolygon {
    let round = |degrees: f64| libm::round(degrees * 1e8) / 1e8;
    let turn = match (stays, cut_at > 0.0) {
        (true, _) => 0.0,
        (false, true) => 360.0,
        (false, false) => -360.0,
    };
    pieces.map_coords(|at| Coord {
        x: round(at.x + turn).clamp(-180.0, 180.0),
        y: round(at.y),
    })
}

fn parts(path: &LineString, edge: f64) -> Vec<LineString> {
    let mut pieces = Vec::new();
    let mut piece: Vec<Coord> = Vec::new();
    let far = |at: Coord| if edge > 0.0 { at.x > edge } else { at.x < edge };
    let home = |at: Coord| Coord {
        x: if far(at) { wrapped_lon(at.x) } else { at.x },
        y: at.y,
    };
    for line in path.lines() {
        if piece.is_empty() {
            piece.push(home(line.start));
        }
        if far(line.start) != far(line.end) {
            let share = (edge - line.start.x) / (line.end.x - line.start.x);
            let y = line.start.y + share * (line.end.y - line.start.y);
            let side = if far(line.start) { -edge } else { edge };
            piece.push(Coord { x: side, y });
            pieces.push(std::mem::take(&mut piece));
            piece.push(Coord { x: -side, y });
        }
        piece.push(home(line.end));
    }
    pieces.push(piece);
    pieces
        .into_iter()
        .map(|mut piece| {
            piece.dedup();
            piece
        })
        .filter(|piece| piece.len() > 1)
        .map(LineString::new)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use geo::{Area, Validation, Winding};

    fn at(lat_deg: f64, lon_deg: f64) -> LatLon {
        LatLon { lat_deg, lon_deg }
    }

    #[test]
    fn a_ring_is_closed_and_runs_counterclockwise() {
        let clockwise = [at(0.0, 0.0), at(1.0, 0.0), at(1.0, 1.0), at(0.0, 1.0)];
        let Some(Geometry::Polygon(ring)) = area(&clockwise) else {
            panic!("no polygon")
        };
        assert!(ring.exterior().is_ccw() && ring.exterior().is_closed());
        assert_eq!(ring.exterior().0.len(), 5);
    }

    #[test]
    fn a_ring_across_the_date_line_becomes_two_that_stand_on_it() {
        // RFC 7946, section 3.1.9: cut so that no part crosses 180°.
        for turned in [false, true] {
            let mut ring = [
                at(10.0, 179.9),
                at(10.0, -179.8),
                at(10.2, -179.8),
                at(10.2, 179.9),
            ];
            if turned {
                ring.rotate_left(2);
            }
            let Some(Geometry::MultiPolygon(halves)) = area(&ring) else {
                panic!("not cut")
            };
            assert!(halves.is_valid());
            let areas: Vec<f64> = halves.iter().map(Area::signed_area).collect();
            assert!((areas[0] - 0.02).abs() < 1e-9, "{areas:?}");
            assert!((areas[1] - 0.04).abs() < 1e-9, "{areas:?}");
            let east = halves.0[1].bounding_rect().unwrap();
            assert_eq!((east.min().x, east.max().x), (-180.0, -179.8));
            assert_eq!(halves.0[0].bounding_rect().unwrap().max().x, 180.0);
        }
    }

    #[test]
    fn a_hollow_ring_gives_as_many_pieces_as_it_crosses() {
        // A U that opens to the east: one piece in the west, two arms in the east.
        let ring = [
            at(0.0, 179.9),
            at(0.0, -179.9),
            at(0.1, -179.9),
            at(0.1, 179.95),
            at(0.2, 179.95),
            at(0.2, -179.9),
            at(0.3, -179.9),
            at(0.3, 179.9),
        ];
        let Some(Geometry::MultiPolygon(pieces)) = area(&ring) else {
            panic!("not cut")
        };
        assert!(pieces.is_valid());
        assert_eq!(pieces.0.len(), 3);
        // 0.2 × 0.3 without the notch of 0.15 × 0.1.
        assert!((pieces.unsigned_area() - 0.045).abs() < 1e-9);
    }

    #[test]
    fn a_way_across_the_date_line_is_cut_where_it_crosses() {
        let there_and_back = [at(0.0, 179.9), at(1.0, -179.9), at(2.0, 179.9)];
        let Some(Geometry::MultiLineString(pieces)) = way(&there_and_back) else {
            panic!("not cut")
        };
        let ends: Vec<(f64, f64)> = pieces
            .iter()
            .map(|piece| (piece.0[0].x, piece.0.last().unwrap().x))
            .collect();
        assert_eq!(ends, [(179.9, 180.0), (-180.0, -180.0), (180.0, 179.9)]);
        assert!((pieces.0[0].0[1].y - 0.5).abs() < 1e-9);
    }

    #[test]
    fn what_only_touches_the_date_line_stays_whole() {
        let touching = [at(0.0, 179.9), at(0.0, 180.0), at(0.1, 180.0)];
        assert!(matches!(area(&touching), Some(Geometry::Polygon(_))));
        assert!(matches!(way(&touching), Some(Geometry::LineString(_))));
        let from_the_other_side = [at(0.0, 179.9), at(0.0, -180.0)];
        assert!(matches!(
            way(&from_the_other_side),
            Some(Geometry::LineString(_))
        ));
    }

    #[test]
    fn too_few_points_make_no_shape() {
        assert!(area(&[at(0.0, 0.0), at(1.0, 1.0), at(0.0, 0.0)]).is_none());
        assert!(way(&[at(0.0, 0.0)]).is_none());
        assert!(spot(at(f64::NAN, 0.0)).is_none());
    }
}
