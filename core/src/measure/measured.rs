//! A value with its standard error, and the checks that every raw reading passes first.

use crate::record::Fault;

/// A value with its standard error, in one unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    /// The value.
    pub value: f64,
    /// One standard error, 0 or more.
    pub se: f64,
}

impl Measured {
    /// A value with its standard error.
    pub fn new(value: f64, se: f64) -> Self {
        Measured { value, se }
    }

    /// The value times a factor that has no error.
    pub fn times(self, factor: f64) -> Self {
        Measured::new(self.value * factor, self.se * factor.abs())
    }

    /// A value worked out from independent readings: each term is the derivative times the
    /// reading's standard error, and the squares add up (propagation of errors).
    pub(super) fn propagated(value: f64, terms: &[f64]) -> Self {
        let square: f64 = terms.iter().map(|term| term * term).sum();
        Measured::new(value, libm::sqrt(square))
    }
}

/// Refuses a reading that is no number, outside `low` to `high`, or whose error is no error.
pub(super) fn check(place: &str, reading: Measured, low: f64, high: f64) -> Result<(), Fault> {
    let allowed = || format!("{low} to {high}");
    if !(reading.value.is_finite() && reading.value >= low && reading.value <= high) {
        return Err(Fault::new(
            "fault.out-of-range",
            place,
            reading.value,
            allowed(),
        ));
    }
    if !(reading.se.is_finite() && reading.se >= 0.0) {
        return Err(Fault::new(
            "fault.out-of-range",
            format!("{place}.se"),
            reading.se,
            "0 or more",
        ));
    }
    Ok(())
}

/// Refuses an angle beyond ± 89° from the horizontal.
pub(super) fn check_angle(place: &str, angle: Measured) -> Result<(), Fault> {
    check(place, angle, -89.0, 89.0)
}

/// Refuses a distance under 0.1 m or over 1,000 m.
pub(super) fn check_distance(place: &str, distance: Measured) -> Result<(), Fault> {
    check(place, distance, 0.1, 1000.0)
}

pub(super) fn radians(degrees: f64) -> f64 {
    degrees * core::f64::consts::PI / 180.0
}

pub(super) fn degrees(radians: f64) -> f64 {
    radians * 180.0 / core::f64::consts::PI
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn errors_add_by_their_squares() {
        // Propagation of independent errors: 3, 4 and 12 make 13.
        assert_eq!(Measured::propagated(1.0, &[3.0, -4.0, 12.0]).se, 13.0);
        assert_eq!(
            Measured::new(2.0, 0.5).times(-4.0),
            Measured::new(-8.0, 2.0)
        );
    }

    #[test]
    fn what_is_no_number_is_refused_with_its_place() {
        let fault = check_distance("height.distance_m", Measured::new(f64::NAN, 0.1));
        assert_eq!(fault.unwrap_err().place, "height.distance_m");
        let fault = check_angle("height.up_deg", Measured::new(45.0, -1.0));
        assert_eq!(fault.unwrap_err().place, "height.up_deg.se");
    }
}
