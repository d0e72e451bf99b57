//! What bends a stem at one height: its own weight where it leans, and the climber at the anchor.
//!
//! Roots and anchorage in the soil, wind, buckling of thin shells and shear are not calculated.

use core::f64::consts::PI;

use super::statics::{pull_moment_knm, weight_kn};

/// Height of the reference diameter in the taper formula, in metres.
const TAPER_REFERENCE_M: f64 = 1.3;

/// Diameter in centimetres at height `at_m` of a stem `height_m` high whose diameter at breast
/// height is known: ((H − z)/(H − 1.3))^exponent (house; exponent 0.8). Nothing at or above the
/// tip.
pub fn diameter_by_taper_cm(
    breast_diameter_cm: f64,
    height_m: f64,
    at_m: f64,
    exponent: f64,
) -> f64 {
    // A tree lower than breast height tapers from its base.
    let reference = TAPER_REFERENCE_M.min(height_m / 2.0);
    let share = (height_m - at_m) / (height_m - reference);
    if share > 0.0 {
        breast_diameter_cm * libm::pow(share, exponent)
    } else {
        0.0
    }
}

/// The part of a stem above one height.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StemAbove {
    /// Height of the tip above ground in metres.
    pub tip_m: f64,
    /// Height of the section above ground in metres.
    pub section_m: f64,
    /// Diameter at the section in centimetres, without bark.
    pub diameter_cm: f64,
    /// Lean from the vertical in degrees.
    pub lean_deg: f64,
    /// Green density in kilograms per cubic metre.
    pub density_kg_m3: f64,
    /// Volume over that of a cylinder of the section's area and the length above it.
    pub form_factor: f64,
    /// Mass of the branches over that of the stem.
    pub branch_share: f64,
    /// Centre of mass from the section, over the length above it.
    pub centre_share: f64,
}

impl StemAbove {
    /// Length of stem above the section in metres, along the lean.
    pub fn length_m(&self) -> f64 {
        (self.tip_m - self.section_m).max(0.0) / libm::cos(self.lean())
    }

    /// Mass above the section in kilograms, with branches: ρ f A L (1 + branches).
    pub fn mass_kg(&self) -> f64 {
        let diameter_m = self.diameter_cm / 100.0;
        let area_m2 = PI / 4.0 * diameter_m * diameter_m;
        self.density_kg_m3
            * self.form_factor
            * area_m2
            * self.length_m()
            * (1.0 + self.branch_share)
    }

    /// Moment of its own weight at the section in kN·m; the lever is the lean's part of the
    /// distance to the centre of mass.
    pub fn own_moment_knm(&self) -> f64 {
        let lever_m = self.centre_share * self.length_m() * libm::sin(self.lean());
        weight_kn(self.mass_kg()) * lever_m
    }

    /// Moment in kN·m at the section of a force at an anchor `anchor_m` above ground that may stray
    /// `stray_deg` from the vertical, toward the lean. Nothing below the section.
    pub fn climber_moment_knm(&self, force_kn: f64, anchor_m: f64, stray_deg: f64) -> f64 {
        let along_m = (anchor_m - self.section_m).max(0.0) / libm::cos(self.lean());
        pull_moment_knm(force_kn, along_m, self.lean_deg, stray_deg)
    }

    fn lean(&self) -> f64 {
        self.lean_deg.clamp(0.0, 80.0) * PI / 180.0
    }
}

/// Bending stress in megapascals of a moment in kN·m on a section modulus in cm³.
pub fn stress_mpa(moment_knm: f64, modulus_cm3: f64) -> f64 {
    if modulus_cm3 > 0.0 {
        moment_knm * 1000.0 / modulus_cm3
    } else {
        f64::INFINITY
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn maple(lean_deg: f64) -> StemAbove {
        StemAbove {
            tip_m: 1.2,
            section_m: 0.0,
            diameter_cm: 30.0,
            lean_deg,
            density_kg_m3: 801.0,
            form_factor: 1.0,
            branch_share: 0.0,
            centre_share: 0.5,
        }
    }

    #[test]
    fn an_upright_cylinder_weighs_what_the_table_says_and_bends_nothing() {
        // Sheet of check values 4.5: red maple, 0.30 m by 1.20 m, 67.94 kg.
        let upright = maple(0.0);
        assert!((upright.mass_kg() - 67.94).abs() < 0.01);
        assert_eq!(upright.own_moment_knm(), 0.0);
    }

    #[test]
    fn lean_raises_length_lever_and_moment() {
        // Plane statics: at 30° the cylinder of 1.2/cos 30° m has its centre 0.3464 m out.
        let leaning = maple(30.0);
        let expected = 67.944 / libm::cos(PI / 6.0) * 9.80665e-3 * 0.34641;
        assert!((leaning.own_moment_knm() - expected).abs() < 1e-3 * expected);
    }

    #[test]
    fn a_stem_tapers_to_nothing_and_the_reference_height_is_itself() {
        assert!((diameter_by_taper_cm(60.0, 20.0, 1.3, 0.8) - 60.0).abs() < 1e-12);
        assert_eq!(diameter_by_taper_cm(60.0, 20.0, 20.0, 0.8), 0.0);
        assert!(diameter_by_taper_cm(60.0, 20.0, 0.0, 0.8) > 60.0);
        assert!(diameter_by_taper_cm(3.0, 1.2, 1.0, 0.8).is_finite());
    }

    #[test]
    fn a_climber_below_the_section_does_not_bend_it() {
        let mut stem = maple(0.0);
        stem.section_m = 10.0;
        assert_eq!(stem.climber_moment_knm(1.0, 8.0, 45.0), 0.0);
        assert_eq!(stress_mpa(1.0, 0.0), f64::INFINITY);
        // 1 kN·m on 1000 cm³ is 1 MPa.
        assert_eq!(stress_mpa(1.0, 1000.0), 1.0);
    }
}
