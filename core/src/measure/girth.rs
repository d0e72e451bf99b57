//! Girth, diameter and bark.

use core::f64::consts::PI;

use super::Measured;

/// Diameter over bark from girth: g/π, in the girth's unit.
pub fn diameter_of_girth(girth: Measured) -> Measured {
    girth.times(1.0 / PI)
}

/// Girth from diameter over bark: π d, in the diameter's unit.
pub fn girth_of_diameter(diameter: Measured) -> Measured {
    diameter.times(PI)
}

/// Diameter inside bark from girth over bark and the thickness of the bark, all in one unit:
/// g/π − 2 b. Never below 0.
pub fn diameter_inside_bark(girth: Measured, bark: Measured) -> Measured {
    let inside = girth.value / PI - 2.0 * bark.value;
    Measured::propagated(inside.max(0.0), &[girth.se / PI, 2.0 * bark.se])
}

/// Diameter over bark from two calliper readings at right angles: their root mean square, which
/// keeps the area of an oval stem close.
pub fn diameter_of_callipers(one: Measured, other: Measured) -> Measured {
    let mean = libm::sqrt((one.value * one.value + other.value * other.value) / 2.0);
    if mean == 0.0 {
        return Measured::new(0.0, one.se.max(other.se));
    }
    let share = |reading: Measured| reading.value / (2.0 * mean) * reading.se;
    Measured::propagated(mean, &[share(one), share(other)])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back_is_the_same() {
        let girth = Measured::new(188.5, 1.9);
        let back = girth_of_diameter(diameter_of_girth(girth));
        assert!((back.value - 188.5).abs() < 1e-9 && (back.se - 1.9).abs() < 1e-9);
    }

    #[test]
    fn bark_is_taken_off_twice_and_its_error_counts_twice() {
        // Plane geometry, propagation of errors.
        let inside = diameter_inside_bark(Measured::new(60.0 * PI, 0.0), Measured::new(2.0, 0.5));
        assert!((inside.value - 56.0).abs() < 1e-9);
        assert_eq!(inside.se, 1.0);
        let all_bark = diameter_inside_bark(Measured::new(PI, 0.0), Measured::new(2.0, 0.0));
        assert_eq!(all_bark.value, 0.0);
    }

    #[test]
    fn a_round_stem_has_the_diameter_of_both_readings() {
        let reading = Measured::new(40.0, 0.5);
        let mean = diameter_of_callipers(reading, reading);
        assert!((mean.value - 40.0).abs() < 1e-12);
        assert!((mean.se - 0.5 / libm::sqrt(2.0)).abs() < 1e-12);
    }
}
