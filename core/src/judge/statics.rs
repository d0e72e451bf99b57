//! What a rope system puts on an anchor, and what that does to the wood at its union.

use core::f64::consts::PI;

use crate::record::RopeSystem;

/// Standard acceleration of gravity in m/s².
pub const GRAVITY_MS2: f64 = 9.806_65;

/// Weight in kilonewtons of a mass in kilograms.
pub fn weight_kn(mass_kg: f64) -> f64 {
    mass_kg * GRAVITY_MS2 / 1000.0
}

/// Load on the anchor over the weight of the climber, at rest (plane statics). A line tied at the
/// base and running over the anchor without friction doubles it; the friction of bark is never
/// counted on.
pub fn rope_system_factor(system: RopeSystem) -> f64 {
    match system {
        RopeSystem::MovingRope | RopeSystem::StationaryCrown => 1.0,
        RopeSystem::StationaryBase => 2.0,
    }
}

/// The same for a base-tied line that runs over bark with friction `friction` through `wrap_deg`:
/// 1 + e^(−μφ) (belt friction). For explaining only.
pub fn base_tied_factor_over_bark(friction: f64, wrap_deg: f64) -> f64 {
    1.0 + libm::exp(-friction * radians(wrap_deg))
}

/// Force of a redirect over the tension of the line whose two legs enclose `between_deg`:
/// 2 cos(θ/2) (plane statics).
pub fn redirect_factor(between_deg: f64) -> f64 {
    2.0 * libm::cos(radians(between_deg) / 2.0)
}

/// Highest force of a line that catches a mass after a free fall, over its weight:
/// 1 + √(1 + 2 h/δ), with the stretch δ of the line under the still weight (energy balance). No
/// stretch at all catches with an endless force.
pub fn catch_factor(fall_m: f64, stretch_m: f64) -> f64 {
    if stretch_m > 0.0 {
        1.0 + libm::sqrt(1.0 + 2.0 * fall_m.max(0.0) / stretch_m)
    } else {
        f64::INFINITY
    }
}

/// Lever in metres of the line from the union: as read, never below half the diameter and
/// `extra_cm`.
pub fn lever_m(from_union_cm: f64, diameter_cm: f64, extra_cm: f64) -> f64 {
    from_union_cm.max(diameter_cm / 2.0 + extra_cm) / 100.0
}

/// Bending moment in kN·m at the union of a limb `limb_angle_deg` from the vertical, from a force
/// that may stray `stray_deg` from the vertical: F l sin(min(90°, angle + stray)).
pub fn pull_moment_knm(force_kn: f64, lever_m: f64, limb_angle_deg: f64, stray_deg: f64) -> f64 {
    force_kn * lever_m * libm::sin(radians((limb_angle_deg + stray_deg).clamp(0.0, 90.0)))
}

/// A limb's own weight: what is needed for its moment at the union.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LimbWeight {
    /// Diameter at the union in centimetres, without bark.
    pub diameter_cm: f64,
    /// Length in metres.
    pub length_m: f64,
    /// Angle from the vertical in degrees.
    pub angle_deg: f64,
    /// Green density in kilograms per cubic metre.
    pub density_kg_m3: f64,
    /// Volume over that of a cylinder of the same diameter and length.
    pub volume_factor: f64,
    /// Mass of its branches over its own.
    pub branches_share: f64,
    /// Centre of mass from the union over the length.
    pub centre_share: f64,
}

impl LimbWeight {
    /// Mass in kilograms with branches.
    pub fn mass_kg(&self) -> f64 {
        let diameter_m = self.diameter_cm / 100.0;
        let cylinder_m3 = PI / 4.0 * diameter_m * diameter_m * self.length_m;
        self.density_kg_m3 * self.volume_factor * cylinder_m3 * (1.0 + self.branches_share)
    }

    /// Moment in kN·m at the union.
    pub fn moment_knm(&self) -> f64 {
        let across = libm::sin(radians(self.angle_deg.clamp(0.0, 90.0)));
        weight_kn(self.mass_kg()) * self.centre_share * self.length_m * across
    }
}

/// Largest bending stress in megapascals in a round, sound limb: 32 M/(π d³).
pub fn bending_stress_mpa(moment_knm: f64, diameter_cm: f64) -> f64 {
    let diameter_m = diameter_cm / 100.0;
    32.0 * moment_knm / (PI * diameter_m * diameter_m * diameter_m) / 1000.0
}

/// Diameter in centimetres that a round, sound limb needs for a margin on its strength:
/// (32 M n/(π MOR))^(1/3).
pub fn required_diameter_cm(moment_knm: f64, margin: f64, strength_mpa: f64) -> f64 {
    100.0 * libm::cbrt(32.0 * moment_knm * margin / (PI * strength_mpa * 1000.0))
}

/// How a union weakens the limb: values of the rule set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UnionRule {
    /// Ratio of limb to parent up to which it is a branch.
    pub aspect_none_at: f64,
    /// Ratio of limb to parent from which it is a codominant stem.
    pub aspect_full_at: f64,
}

/// Strength of a union over that of the limb. `weakest` is the factor of included bark (0.72–0.85,
/// Smiley 2003): in full with included bark; for the ratio of diameters it grows in linearly, so
/// that a thinner branch never gains by a step. An unknown ratio counts as codominant.
pub fn union_factor(
    included_bark: bool,
    aspect_ratio: Option<f64>,
    weakest: f64,
    rule: UnionRule,
) -> f64 {
    let span = rule.aspect_full_at - rule.aspect_none_at;
    let share = match aspect_ratio {
        _ if included_bark => 1.0,
        Some(ratio) if span > 0.0 => ((ratio - rule.aspect_none_at) / span).clamp(0.0, 1.0),
        Some(ratio) if ratio < rule.aspect_full_at => 0.0,
        _ => 1.0,
    };
    1.0 - share * (1.0 - weakest)
}

fn radians(degrees: f64) -> f64 {
    degrees * PI / 180.0
}

#[cfg(test)]
mod tests {
    use super::*;

    const RULE: UnionRule = UnionRule {
        aspect_none_at: 0.6,
        aspect_full_at: 0.8,
    };

    #[test]
    fn the_union_weakens_without_a_step() {
        // Method, section 6: in full at 0.8, fading linearly to 1 at 0.6.
        assert_eq!(union_factor(false, Some(0.5), 0.72, RULE), 1.0);
        assert!((union_factor(false, Some(0.7), 0.72, RULE) - 0.86).abs() < 1e-12);
        assert_eq!(union_factor(false, Some(0.9), 0.72, RULE), 0.72);
        assert_eq!(union_factor(true, Some(0.2), 0.72, RULE), 0.72);
        assert_eq!(union_factor(false, None, 0.72, RULE), 0.72);
    }

    #[test]
    fn a_pull_across_the_limb_is_the_worst() {
        // Plane statics: the lever is the limb's part across the force.
        let upright = pull_moment_knm(2.0, 0.3, 0.0, 45.0);
        assert!((upright - 0.6 * libm::sqrt(0.5)).abs() < 1e-12);
        assert_eq!(pull_moment_knm(2.0, 0.3, 60.0, 45.0), 0.6);
        assert_eq!(pull_moment_knm(2.0, 0.3, 140.0, 45.0), 0.6);
    }

    #[test]
    fn the_lever_is_never_shorter_than_half_the_limb() {
        assert_eq!(lever_m(0.0, 20.0, 5.0), 0.15);
        assert_eq!(lever_m(40.0, 20.0, 5.0), 0.40);
    }

    #[test]
    fn stress_and_required_diameter_are_each_others_inverse() {
        let needed = required_diameter_cm(0.8, 4.0, 39.0);
        assert!((bending_stress_mpa(0.8, needed) * 4.0 - 39.0).abs() < 1e-9);
    }

    #[test]
    fn no_stretch_has_no_bound() {
        assert_eq!(catch_factor(0.5, 0.0), f64::INFINITY);
    }
}
