//! Lengths that run around a stem, and directions on the ground.

use core::f64::consts::PI;

/// A length that runs around the stem: the same everywhere, or given at bearings and linear
/// between.
#[derive(Debug, Clone, PartialEq)]
pub enum Run {
    /// The same on every side, in centimetres.
    Even(f64),
    /// Given at bearings in degrees, in centimetres.
    AtBearings(Vec<BearingLength>),
}

/// A length at one bearing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BearingLength {
    /// Bearing from the stem's centre in degrees.
    pub bearing_deg: f64,
    /// Length in centimetres.
    pub length_cm: f64,
}

impl Run {
    /// The run through these points; sorted by bearing here. Without points it is 0 everywhere.
    pub fn through(mut points: Vec<BearingLength>) -> Run {
        for point in &mut points {
            point.bearing_deg = round_turn(point.bearing_deg);
        }
        points.sort_by(|a, b| a.bearing_deg.total_cmp(&b.bearing_deg));
        match points.as_slice() {
            [] => Run::Even(0.0),
            [only] => Run::Even(only.length_cm),
            _ => Run::AtBearings(points),
        }
    }

    /// The length at a bearing in degrees.
    pub fn at(&self, bearing_deg: f64) -> f64 {
        let points = match self {
            Run::Even(length) => return *length,
            Run::AtBearings(points) => points,
        };
        let bearing = round_turn(bearing_deg);
        let after = points.partition_point(|point| point.bearing_deg <= bearing);
        let before = after.checked_sub(1).and_then(|place| points.get(place));
        let (Some(left), Some(right)) = (
            before.or_else(|| points.last()),
            points.get(after).or_else(|| points.first()),
        ) else {
            return 0.0;
        };
        let span = round_turn(right.bearing_deg - left.bearing_deg);
        if span <= 0.0 {
            return left.length_cm.min(right.length_cm);
        }
        let share = round_turn(bearing - left.bearing_deg) / span;
        left.length_cm + (right.length_cm - left.length_cm) * share
    }
}

/// Bearings of evenly spaced sectors from north, clockwise; at least eight.
pub(super) fn bearings(points: u32) -> impl Iterator<Item = f64> {
    let points = points.max(8);
    (0..points).map(move |k| 360.0 * f64::from(k) / f64::from(points))
}

/// East and north of a unit step toward a bearing.
pub(super) fn direction(bearing_deg: f64) -> (f64, f64) {
    let bearing = radians(bearing_deg);
    (libm::sin(bearing), libm::cos(bearing))
}

/// Degrees to radians.
pub(super) fn radians(degrees: f64) -> f64 {
    degrees * PI / 180.0
}

/// 0 to under 360.
pub(super) fn round_turn(degrees: f64) -> f64 {
    let turned = degrees - 360.0 * libm::floor(degrees / 360.0);
    if turned >= 360.0 { 0.0 } else { turned }
}

/// −180 to under 180.
pub(super) fn signed_turn(degrees: f64) -> f64 {
    round_turn(degrees + 180.0) - 180.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn walls_between_bearings_are_linear_and_the_circle_closes() {
        let run = Run::through(vec![
            BearingLength {
                bearing_deg: 350.0,
                length_cm: 10.0,
            },
            BearingLength {
                bearing_deg: 10.0,
                length_cm: 20.0,
            },
        ]);
        assert!((run.at(0.0) - 15.0).abs() < 1e-9);
        assert!((run.at(180.0) - 15.0).abs() < 1e-9);
        assert!((run.at(-10.0) - 10.0).abs() < 1e-9);
    }
}
