//! Lean from plumb readings, and bearings brought to true north.

use crate::record::Fault;

use super::Measured;
use super::measured::{check, degrees, radians};

/// A lean with the bearing it points to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeanReading {
    /// Lean from the vertical in degrees.
    pub lean_deg: Measured,
    /// Bearing it leans toward in degrees; nothing where it stands upright.
    pub toward_deg: Option<Measured>,
}

/// Lean from two plumb readings at right angles: tan θ = √(tan² a + tan² b). `along` is the lean
/// seen toward `along_bearing_deg`, `across` the lean seen toward 90° clockwise of it; readings the
/// other way are negative.
///
/// # Errors
/// A fault with the input's name when a reading is no number or beyond ± 80°.
pub fn from_two_sides(
    along: Measured,
    across: Measured,
    along_bearing_deg: f64,
) -> Result<LeanReading, Fault> {
    check("lean.along_deg", along, -80.0, 80.0)?;
    check("lean.across_deg", across, -80.0, 80.0)?;
    let bearing = Measured::new(along_bearing_deg, 0.0);
    check("lean.along_bearing_deg", bearing, -360.0, 720.0)?;
    let (a, b) = (tan(along.value), tan(across.value));
    let slope = libm::sqrt(a * a + b * b);
    if slope == 0.0 {
        // Upright: either reading alone could be the lean.
        return Ok(LeanReading {
            lean_deg: Measured::new(0.0, along.se.max(across.se)),
            toward_deg: None,
        });
    }
    // d tan a = (1 + tan² a) da.
    let (da, db) = ((1.0 + a * a) * along.se, (1.0 + b * b) * across.se);
    let flatten = 1.0 + slope * slope;
    let square = slope * slope;
    let toward = round_turn(along_bearing_deg + degrees(libm::atan2(b, a)));
    Ok(LeanReading {
        lean_deg: Measured::propagated(
            degrees(libm::atan(slope)),
            &[a / slope * da / flatten, b / slope * db / flatten],
        ),
        toward_deg: Some(Measured::propagated(
            toward,
            &[b / square * da, a / square * db],
        )),
    })
}

/// A bearing by compass brought to true north: raw + declination (east positive). Without a
/// declination the bearing is taken as it is, with the standard error of the rule set for an
/// unknown one.
pub fn true_bearing(
    compass: Measured,
    declination_deg: Option<f64>,
    unknown_declination_se_deg: f64,
) -> Measured {
    match declination_deg {
        Some(declination) => Measured::new(round_turn(compass.value + declination), compass.se),
        None => Measured::propagated(
            round_turn(compass.value),
            &[compass.se, unknown_declination_se_deg],
        ),
    }
}

fn tan(angle_deg: f64) -> f64 {
    libm::tan(radians(angle_deg))
}

/// 0 to under 360.
fn round_turn(bearing_deg: f64) -> f64 {
    let turned = bearing_deg - 360.0 * libm::floor(bearing_deg / 360.0);
    if turned >= 360.0 { 0.0 } else { turned }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(along: f64, across: f64, bearing: f64) -> LeanReading {
        from_two_sides(
            Measured::new(along, 1.0),
            Measured::new(across, 1.0),
            bearing,
        )
        .unwrap()
    }

    #[test]
    fn the_lean_points_between_its_two_readings() {
        // Plane trigonometry: equal readings toward north and east point north-east.
        let toward =
            |along, across, bearing| read(along, across, bearing).toward_deg.unwrap().value;
        assert!((toward(5.0, 5.0, 0.0) - 45.0).abs() < 1e-9);
        assert!((toward(-5.0, 0.0, 30.0) - 210.0).abs() < 1e-9);
        assert!((toward(0.0, -5.0, 30.0) - 300.0).abs() < 1e-9);
    }

    #[test]
    fn an_upright_stem_points_nowhere_and_still_has_an_error() {
        let upright = read(0.0, 0.0, 10.0);
        assert_eq!(upright.lean_deg, Measured::new(0.0, 1.0));
        assert_eq!(upright.toward_deg, None);
        assert!(from_two_sides(Measured::new(85.0, 1.0), Measured::new(0.0, 1.0), 0.0).is_err());
    }

    #[test]
    fn a_single_reading_along_the_lean_keeps_its_error() {
        // Propagation of errors: with b = 0 the lean is the reading itself.
        let one = read(10.0, 0.0, 0.0);
        assert!((one.lean_deg.value - 10.0).abs() < 1e-9);
        assert!((one.lean_deg.se - 1.0).abs() < 1e-9);
    }

    #[test]
    fn an_unknown_declination_widens_the_bearing() {
        // Method: an unknown declination adds 10 degrees.
        let compass = Measured::new(355.0, 3.0);
        assert_eq!(
            true_bearing(compass, Some(-14.0), 10.0),
            Measured::new(341.0, 3.0)
        );
        assert_eq!(true_bearing(compass, Some(10.0), 10.0).value, 5.0);
        let unknown = true_bearing(compass, None, 10.0);
        assert!((unknown.se - libm::sqrt(109.0)).abs() < 1e-12);
    }
}
