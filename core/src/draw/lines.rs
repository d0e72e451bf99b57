//! Small plane geometry that labels, plans and fingers need.

use super::drawing::{DrawnExtent, Spot};

/// Whether a straight line from one spot to another touches the inside of a rectangle.
pub(crate) fn line_meets_extent((from, to): (Spot, Spot), extent: DrawnExtent) -> bool {
    inside_part((from, to), extent).is_some_and(|(enter, leave)| enter < leave)
}

/// The part of a straight line inside a rectangle, as shares of its length (Liang and Barsky 1984).
fn inside_part((from, to): (Spot, Spot), extent: DrawnExtent) -> Option<(f64, f64)> {
    let (along_x, along_y) = (to.x_m - from.x_m, to.y_m - from.y_m);
    let sides = [
        (-along_x, from.x_m - extent.left_m),
        (along_x, extent.right_m - from.x_m),
        (-along_y, from.y_m - extent.bottom_m),
        (along_y, extent.top_m - from.y_m),
    ];
    let (mut enter, mut leave) = (0.0f64, 1.0f64);
    for (slope, gap) in sides {
        if slope == 0.0 {
            if gap < 0.0 {
                return None;
            }
        } else if slope < 0.0 {
            enter = enter.max(gap / slope);
        } else {
            leave = leave.min(gap / slope);
        }
    }
    (enter <= leave).then_some((enter, leave))
}

/// Whether two straight lines cross; lines that only touch do not.
pub(crate) fn lines_cross(one: (Spot, Spot), other: (Spot, Spot)) -> bool {
    let side = |line: (Spot, Spot), spot: Spot| {
        (line.1.x_m - line.0.x_m) * (spot.y_m - line.0.y_m)
            - (line.1.y_m - line.0.y_m) * (spot.x_m - line.0.x_m)
    };
    side(one, other.0) * side(one, other.1) < 0.0 && side(other, one.0) * side(other, one.1) < 0.0
}

/// The pieces of a line of many spots, closed or open.
pub(crate) fn pieces(spots: &[Spot], closed: bool) -> Vec<(Spot, Spot)> {
    let back = match (spots.last(), spots.first()) {
        (Some(last), Some(first)) if closed && spots.len() > 2 => Some((*last, *first)),
        _ => None,
    };
    let next = spots.iter().skip(1);
    let inner = spots.iter().zip(next).map(|(from, to)| (*from, *to));
    inner.chain(back).collect()
}

/// Spots along the course of a line inside a rectangle: the middle of the inside first, then by and
/// by nearer to its ends.
pub(crate) fn spots_along(spots: &[Spot], extent: DrawnExtent) -> Vec<Spot> {
    let inside: Vec<(Spot, Spot)> = pieces(spots, false)
        .into_iter()
        .filter_map(|piece| {
            inside_part(piece, extent).map(|(a, b)| (between(piece, a), between(piece, b)))
        })
        .collect();
    let long_m: f64 = inside.iter().map(|(from, to)| from.distance_m(*to)).sum();
    [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92]
        .iter()
        .filter_map(|share| spot_at(&inside, share * long_m))
        .collect()
}

fn spot_at(pieces: &[(Spot, Spot)], along_m: f64) -> Option<Spot> {
    let mut left_m = along_m;
    for piece in pieces {
        let long_m = piece.0.distance_m(piece.1);
        if left_m <= long_m && long_m > 0.0 {
            return Some(between(*piece, left_m / long_m));
        }
        left_m -= long_m;
    }
    pieces.last().map(|piece| piece.1)
}

fn between((from, to): (Spot, Spot), share: f64) -> Spot {
    Spot::new(
        from.x_m + share * (to.x_m - from.x_m),
        from.y_m + share * (to.y_m - from.y_m),
    )
}

/// Distance in metres from a spot to a straight line between two spots.
pub(crate) fn distance_to_line_m(spot: Spot, (from, to): (Spot, Spot)) -> f64 {
    let (along_x, along_y) = (to.x_m - from.x_m, to.y_m - from.y_m);
    let square = along_x * along_x + along_y * along_y;
    let share = if square > 0.0 {
        (((spot.x_m - from.x_m) * along_x + (spot.y_m - from.y_m) * along_y) / square)
            .clamp(0.0, 1.0)
    } else {
        0.0
    };
    spot.distance_m(Spot {
        x_m: from.x_m + share * along_x,
        y_m: from.y_m + share * along_y,
    })
}

/// Whether a spot lies inside rings, by the even-odd rule.
pub(crate) fn inside_rings(spot: Spot, rings: &[Vec<Spot>]) -> bool {
    let crossings = rings
        .iter()
        .flat_map(|ring| pieces(ring, true))
        .filter(|(from, to)| (from.y_m > spot.y_m) != (to.y_m > spot.y_m))
        .filter(|(from, to)| {
            let share = (spot.y_m - from.y_m) / (to.y_m - from.y_m);
            spot.x_m < from.x_m + share * (to.x_m - from.x_m)
        })
        .count();
    crossings % 2 == 1
}

#[cfg(test)]
mod tests {
    use super::*;

    fn unit() -> DrawnExtent {
        DrawnExtent {
            left_m: 0.0,
            bottom_m: 0.0,
            right_m: 1.0,
            top_m: 1.0,
        }
    }

    #[test]
    fn a_line_through_a_corner_only_touches() {
        let at = Spot::new;
        assert!(line_meets_extent((at(-1.0, 0.5), at(2.0, 0.5)), unit()));
        assert!(line_meets_extent((at(0.2, 0.2), at(0.3, 0.3)), unit()));
        assert!(!line_meets_extent((at(-1.0, 1.0), at(1.0, -1.0)), unit()));
        assert!(!line_meets_extent((at(2.0, -1.0), at(2.0, 2.0)), unit()));
    }

    #[test]
    fn crossing_needs_both_sides() {
        let at = Spot::new;
        let level = (at(0.0, 0.0), at(2.0, 0.0));
        assert!(lines_cross(level, (at(1.0, -1.0), at(1.0, 1.0))));
        assert!(!lines_cross(level, (at(1.0, 0.0), at(1.0, 1.0))));
        assert!(!lines_cross(level, (at(3.0, -1.0), at(3.0, 1.0))));
    }

    #[test]
    fn the_middle_of_the_visible_part_comes_first() {
        let line = [Spot::new(-9.0, 0.5), Spot::new(9.0, 0.5)];
        assert_eq!(spots_along(&line, unit())[0], Spot::new(0.5, 0.5));
        assert!(spots_along(&[Spot::new(5.0, 5.0), Spot::new(6.0, 5.0)], unit()).is_empty());
    }

    #[test]
    fn a_hole_is_not_inside() {
        let square = |half: f64| {
            vec![
                Spot::new(-half, -half),
                Spot::new(half, -half),
                Spot::new(half, half),
                Spot::new(-half, half),
            ]
        };
        let rings = [square(2.0), square(1.0)];
        assert!(inside_rings(Spot::new(1.5, 0.0), &rings));
        assert!(!inside_rings(Spot::new(0.5, 0.0), &rings));
        assert_eq!(
            distance_to_line_m(
                Spot::new(3.0, 4.0),
                (Spot::new(0.0, 0.0), Spot::new(0.0, 0.0))
            ),
            5.0
        );
    }
}
