//! How far a stem, a crown or a piece reaches when it comes down.

use core::f64::consts::PI;

use super::statics::GRAVITY_MS2;

/// Length of a stem in metres from its height and lean: H/cos θ. On level ground its tip sweeps a
/// circle of this radius, not of the height. Leans beyond 80° count as 80°.
pub fn stem_length_m(height_m: f64, lean_deg: f64) -> f64 {
    height_m / libm::cos(lean(lean_deg))
}

/// How far the tip hangs out in metres: H tan θ.
pub fn tip_offset_m(height_m: f64, lean_deg: f64) -> f64 {
    height_m * libm::tan(lean(lean_deg))
}

/// Height of the tip in metres of a stem whose length was taped: L cos θ.
pub fn height_of_stem_m(length_m: f64, lean_deg: f64) -> f64 {
    length_m * libm::cos(lean(lean_deg))
}

/// Reach in metres of a piece let go at `height_m`, held `hold_m` from the stem, pushed outward
/// at `speed_ms`: r₀ + piece + v √(2h/g) (plane mechanics without air; a floor, not a limit).
pub fn piece_reach_m(height_m: f64, hold_m: f64, piece_m: f64, speed_ms: f64) -> f64 {
    hold_m + piece_m + speed_ms * fall_time_s(height_m)
}

/// Seconds of a free fall from a height in metres: √(2h/g).
pub fn fall_time_s(height_m: f64) -> f64 {
    libm::sqrt(2.0 * height_m.max(0.0) / GRAVITY_MS2)
}

/// Factor on a radius in the downhill half: 1 + share · slope, the slope as rise over run up to
/// `most` (house; published rules say only "more").
pub fn downhill_factor(slope_ratio: f64, share: f64, most: f64) -> f64 {
    1.0 + share * slope_ratio.clamp(0.0, most)
}

/// Length on the map in metres of a stem that lies straight down a slope: L cos β. Never used to
/// shrink a zone.
pub fn length_on_map_m(length_m: f64, slope_deg: f64) -> f64 {
    length_m * libm::cos(slope_deg * PI / 180.0)
}

/// Drop in metres along a stem that lies straight down a slope: L sin β.
pub fn drop_along_m(length_m: f64, slope_deg: f64) -> f64 {
    length_m * libm::sin(slope_deg * PI / 180.0)
}

fn lean(lean_deg: f64) -> f64 {
    lean_deg.abs().min(80.0) * PI / 180.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn more_lean_never_shortens_the_reach() {
        // Plane trigonometry: 1/cos rises from 0 to 90 degrees.
        let mut before = 0.0;
        for lean in 0..=90 {
            let length = stem_length_m(20.0, f64::from(lean));
            assert!(length >= before && length.is_finite());
            before = length;
        }
    }

    #[test]
    fn downhill_grows_and_uphill_does_not_shrink() {
        assert_eq!(downhill_factor(0.4, 0.5, 1.0), 1.2);
        assert_eq!(downhill_factor(3.0, 0.5, 1.0), 1.5);
        assert_eq!(downhill_factor(-0.4, 0.5, 1.0), 1.0);
    }
}
