//! Published formulas for strength loss by decay. All of them see concentric circles; two of them
//! take no notice of where the hole lies (Kane & Ryan 2004, Journal of Arboriculture 30(6)).
//!
//! `hole` is the diameter of the decayed core over the stem's diameter inside bark, 0 to 1.

use core::f64::consts::PI;

/// Strength loss in percent, 100 d³/D³ (Wagener 1963).
pub fn wagener_loss_pct(hole: f64) -> f64 {
    let hole = hole.clamp(0.0, 1.0);
    100.0 * hole * hole * hole
}

/// Strength loss in percent, 100 d⁴/D⁴ (Coder 1989): the exact loss of the second moment for a
/// concentric hole.
pub fn coder_loss_pct(hole: f64) -> f64 {
    let hole = hole.clamp(0.0, 1.0);
    100.0 * hole * hole * hole * hole
}

/// Strength loss in percent with an opening, 100 (d³ + r (D³ − d³))/D³ (Smiley & Fraedrich 1992);
/// `opening_ratio` is the width of the opening over the stem's circumference, 0 to 1.
pub fn smiley_fraedrich_loss_pct(hole: f64, opening_ratio: f64) -> f64 {
    let hole = hole.clamp(0.0, 1.0);
    let cube = hole * hole * hole;
    100.0 * (cube + opening_ratio.clamp(0.0, 1.0) * (1.0 - cube))
}

/// Sound wall over radius inside bark, t/R (Mattheck & Breloer 1994). Not for open cavities.
pub fn shell_ratio(wall_cm: f64, radius_cm: f64) -> f64 {
    wall_cm / radius_cm
}

/// Width of an opening along the bark over the circumference, for its angle in degrees.
pub fn opening_ratio(opening_deg: f64) -> f64 {
    opening_deg.clamp(0.0, 360.0) / 360.0
}

/// Angle in degrees of an opening of this width along the bark of a stem of this girth, both in
/// centimetres; the whole round at most.
pub fn opening_deg(width_cm: f64, girth_cm: f64) -> f64 {
    (360.0 * width_cm / girth_cm).clamp(0.0, 360.0)
}

/// Least sound wall of a closed stem, one inch for six inches of diameter (hazard rating codes of
/// USDA Forest Service NA-TP-03-03, 2003).
pub fn minimum_shell_cm(diameter_cm: f64) -> f64 {
    diameter_cm / 6.0
}

/// Second moment of area of a solid round section in cm⁴, π D⁴/64.
pub fn solid_inertia_cm4(diameter_cm: f64) -> f64 {
    let square = diameter_cm * diameter_cm;
    PI * square * square / 64.0
}

/// Section modulus of a solid round section in cm³, π D³/32.
pub fn solid_modulus_cm3(diameter_cm: f64) -> f64 {
    PI * diameter_cm * diameter_cm * diameter_cm / 32.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_hole_as_wide_as_the_stem_leaves_nothing_and_no_hole_takes_nothing() {
        // Follows from the formulas of Wagener 1963, Coder 1989, Smiley & Fraedrich 1992.
        assert_eq!(wagener_loss_pct(1.4), 100.0);
        assert_eq!(coder_loss_pct(-0.1), 0.0);
        assert_eq!(smiley_fraedrich_loss_pct(0.0, 0.25), 25.0);
        assert_eq!(smiley_fraedrich_loss_pct(1.0, 0.25), 100.0);
    }
}
