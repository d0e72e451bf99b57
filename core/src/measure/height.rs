//! Heights from angles and distances. Angles are from the horizontal in degrees, up positive;
//! distances in metres; each reading carries its standard error.
//!
//! The result is the height of the tip above the base, not the length of the stem. The sine method
//! needs no level distance and cannot read too high (Bragg 2008; USDA Forest Service Research Note
//! SRS-22, 2011).

use crate::record::Fault;

use super::Measured;
use super::measured::{check, check_angle, check_distance, radians};

/// Off-vertical offset over distance from which a lean is warned about.
const LEAN_WARNING_SHARE: f64 = 0.05;

/// Tangent method: H = D (tan up − tan down). `distance` is level, from the eye to the plumb line
/// under the tip.
///
/// # Errors
/// A fault with the input's name when a reading is no number or out of range, or the top is not
/// above the base.
pub fn by_tangent(distance: Measured, up: Measured, down: Measured) -> Result<Measured, Fault> {
    check_distance("height.distance_m", distance)?;
    check_angle("height.up_deg", up)?;
    check_angle("height.down_deg", down)?;
    check_order(up.value, down.value, "height.up_deg")?;
    let (tan_up, tan_down) = (tan(up.value), tan(down.value));
    let d = distance.value;
    Ok(Measured::propagated(
        d * (tan_up - tan_down),
        &[
            d * (1.0 + tan_up * tan_up) * radians(up.se),
            d * (1.0 + tan_down * tan_down) * radians(down.se),
            (tan_up - tan_down) * distance.se,
        ],
    ))
}

/// Tangent method with the distance taped along the slope to the base: D = S cos(down).
///
/// # Errors
/// As [`by_tangent`].
pub fn by_tangent_on_slope(
    slope_distance: Measured,
    up: Measured,
    down: Measured,
) -> Result<Measured, Fault> {
    check_distance("height.slope_distance_m", slope_distance)?;
    check_angle("height.up_deg", up)?;
    check_angle("height.down_deg", down)?;
    check_order(up.value, down.value, "height.up_deg")?;
    let (sin_down, cos_down) = (
        libm::sin(radians(down.value)),
        libm::cos(radians(down.value)),
    );
    let tan_up = tan(up.value);
    let s = slope_distance.value;
    // H = S (cos down · tan up − sin down).
    Ok(Measured::propagated(
        s * (cos_down * tan_up - sin_down),
        &[
            s * cos_down * (1.0 + tan_up * tan_up) * radians(up.se),
            s * (sin_down * tan_up + cos_down) * radians(down.se),
            (cos_down * tan_up - sin_down) * slope_distance.se,
        ],
    ))
}

/// Percent clinometer: H = D (up − down)/100, readings in percent.
///
/// # Errors
/// As [`by_tangent`].
pub fn by_percent(distance: Measured, up: Measured, down: Measured) -> Result<Measured, Fault> {
    check_distance("height.distance_m", distance)?;
    check("height.up_pct", up, -1000.0, 1000.0)?;
    check("height.down_pct", down, -1000.0, 1000.0)?;
    check_order(up.value, down.value, "height.up_pct")?;
    let (d, rise) = (distance.value, (up.value - down.value) / 100.0);
    Ok(Measured::propagated(
        d * rise,
        &[d * up.se / 100.0, d * down.se / 100.0, rise * distance.se],
    ))
}

/// Sine method: H = S_top sin(up) − S_base sin(down), distances along the line of sight to real
/// points.
///
/// # Errors
/// As [`by_tangent`].
pub fn by_sine(
    to_top: Measured,
    up: Measured,
    to_base: Measured,
    down: Measured,
) -> Result<Measured, Fault> {
    check_distance("height.to_top_m", to_top)?;
    check_distance("height.to_base_m", to_base)?;
    check_angle("height.up_deg", up)?;
    check_angle("height.down_deg", down)?;
    let (u, d) = (radians(up.value), radians(down.value));
    let height = to_top.value * libm::sin(u) - to_base.value * libm::sin(d);
    check_above(height, "height.up_deg")?;
    Ok(Measured::propagated(
        height,
        &[
            to_top.value * libm::cos(u) * radians(up.se),
            to_base.value * libm::cos(d) * radians(down.se),
            libm::sin(u) * to_top.se,
            libm::sin(d) * to_base.se,
        ],
    ))
}

/// What two positions on one line give.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TwoPositions {
    /// Height of the tip above the base.
    pub height: Measured,
    /// Height of the tip above the eye in metres.
    pub above_eye_m: f64,
    /// Level distance of the near position from the stem in metres.
    pub near_distance_m: f64,
}

/// Two positions on one line with the stem, `apart` from each other, at one eye level:
/// h = b/(cot far − cot near) above the eye, and `eye` above the base.
///
/// # Errors
/// As [`by_tangent`]; also when the near angle is not the steeper.
pub fn by_two_positions(
    apart: Measured,
    near: Measured,
    far: Measured,
    eye: Measured,
) -> Result<TwoPositions, Fault> {
    check_distance("height.apart_m", apart)?;
    check("height.near_deg", near, 0.5, 89.0)?;
    check("height.far_deg", far, 0.5, 89.0)?;
    check("height.eye_m", eye, -50.0, 50.0)?;
    check_order(near.value, far.value, "height.near_deg")?;
    let (cot_near, cot_far) = (1.0 / tan(near.value), 1.0 / tan(far.value));
    let above_eye_m = apart.value / (cot_far - cot_near);
    let by_angle = |angle: Measured| {
        let sine = libm::sin(radians(angle.value));
        above_eye_m * above_eye_m / (apart.value * sine * sine) * radians(angle.se)
    };
    Ok(TwoPositions {
        height: Measured::propagated(
            above_eye_m + eye.value,
            &[
                above_eye_m / apart.value * apart.se,
                by_angle(near),
                by_angle(far),
                eye.se,
            ],
        ),
        above_eye_m,
        near_distance_m: above_eye_m * cot_near,
    })
}

/// The same without knowing the height of the eye: the base is aimed at too, from the near
/// position. H = h (1 − cot near · tan down), h as in [`by_two_positions`]; works on a slope as long
/// as both positions are level with each other.
///
/// # Errors
/// As [`by_two_positions`].
pub fn by_two_positions_to_base(
    apart: Measured,
    near: Measured,
    far: Measured,
    down: Measured,
) -> Result<Measured, Fault> {
    let two = by_two_positions(apart, near, far, Measured::new(0.0, 0.0))?;
    check_angle("height.down_deg", down)?;
    check_order(near.value, down.value, "height.near_deg")?;
    let (h, b) = (two.above_eye_m, apart.value);
    let (cot_near, tan_down) = (1.0 / tan(near.value), tan(down.value));
    let share = 1.0 - cot_near * tan_down;
    let over_sine = |angle: Measured| {
        let sine = libm::sin(radians(angle.value));
        1.0 / (sine * sine)
    };
    let by_near = -h * h / b * over_sine(near) * share + h * tan_down * over_sine(near);
    let by_far = h * h / b * over_sine(far) * share;
    let by_down = -h * cot_near * (1.0 + tan_down * tan_down);
    Ok(Measured::propagated(
        h * share,
        &[
            h / b * share * apart.se,
            by_near * radians(near.se),
            by_far * radians(far.se),
            by_down * radians(down.se),
        ],
    ))
}

/// Stick and similar triangles: H = D · stick/arm, stick and arm in one unit.
///
/// # Errors
/// As [`by_tangent`].
pub fn by_stick(distance: Measured, stick: Measured, arm: Measured) -> Result<Measured, Fault> {
    check_distance("height.distance_m", distance)?;
    check("height.stick", stick, 1e-3, 1e4)?;
    check("height.arm", arm, 1e-3, 1e4)?;
    let height = distance.value * stick.value / arm.value;
    Ok(Measured::propagated(
        height,
        &[
            height * distance.se / distance.value,
            height * stick.se / stick.value,
            height * arm.se / arm.value,
        ],
    ))
}

/// How much too high, as a share of the height, the tangent method reads when the tip hangs
/// `toward_m` toward the observer (away negative) and the distance was taped to the base:
/// D/(D − x) − 1.
pub fn lean_bias_share(distance_m: f64, toward_m: f64) -> f64 {
    distance_m / (distance_m - toward_m) - 1.0
}

/// Whether a lean spoils a height taken by the tangent method: the tip hangs more than 5 % of the
/// distance toward or away from the observer. Measure at right angles to the lean, or from two
/// opposite sides.
pub fn lean_spoils(distance_m: f64, toward_m: f64) -> bool {
    toward_m.abs() > LEAN_WARNING_SHARE * distance_m
}

/// A height by the tangent method, put right for a known lean toward the observer (`lean_deg` from
/// the vertical, `off_deg` between the lean's bearing and the bearing from the tree to the
/// observer): H = Hₘ D/(D + Hₘ tan θ cos φ).
pub fn corrected_for_lean(
    measured: Measured,
    distance_m: f64,
    lean_deg: f64,
    off_deg: f64,
) -> Measured {
    let toward = tan(lean_deg) * libm::cos(radians(off_deg));
    let factor = distance_m / (distance_m + measured.value * toward);
    // dH/dHₘ = factor².
    Measured::new(measured.value * factor, measured.se * factor * factor)
}

/// Two heights by the tangent method from opposite sides at equal distance: their harmonic mean,
/// which the lean does not spoil.
pub fn from_opposite_sides(one: Measured, other: Measured) -> Measured {
    let mean = 2.0 / (1.0 / one.value + 1.0 / other.value);
    let slope = |reading: Measured| mean * mean / (2.0 * reading.value * reading.value);
    Measured::propagated(mean, &[slope(one) * one.se, slope(other) * other.se])
}

fn tan(angle_deg: f64) -> f64 {
    libm::tan(radians(angle_deg))
}

fn check_order(upper: f64, lower: f64, place: &str) -> Result<(), Fault> {
    if upper > lower {
        return Ok(());
    }
    Err(Fault::new(
        "fault.top-below-base",
        place,
        upper,
        format!("more than {lower}"),
    ))
}

fn check_above(height: f64, place: &str) -> Result<(), Fault> {
    if height > 0.0 {
        return Ok(());
    }
    Err(Fault::new(
        "fault.top-below-base",
        place,
        height,
        "a top above the base",
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn exact(value: f64) -> Measured {
        Measured::new(value, 0.0)
    }

    #[test]
    fn errors_agree_with_small_steps() {
        // Calculus: each term of the propagation is the derivative of the formula.
        let step = 1e-6;
        let two = |b: f64, a1: f64, a2: f64| {
            let (b, a1, a2) = (exact(b), exact(a1), exact(a2));
            by_two_positions(b, a1, a2, exact(1.5))
                .unwrap()
                .height
                .value
        };
        let by_near = (two(10.0, 40.0 + step, 30.0) - two(10.0, 40.0 - step, 30.0)) / (2.0 * step);
        let near = Measured::new(40.0, 1.0);
        let with_error = by_two_positions(exact(10.0), near, exact(30.0), exact(1.5)).unwrap();
        assert!((with_error.height.se - by_near.abs()).abs() < 1e-5);
        let slope = |down: f64| {
            by_tangent_on_slope(exact(25.0), exact(40.0), exact(down))
                .unwrap()
                .value
        };
        let by_down = (slope(-10.0 + step) - slope(-10.0 - step)) / (2.0 * step);
        let down = Measured::new(-10.0, 1.0);
        let with_error = by_tangent_on_slope(exact(25.0), exact(40.0), down).unwrap();
        assert!((with_error.se - by_down.abs()).abs() < 1e-5);
    }

    #[test]
    fn the_base_aimed_at_stands_for_the_height_of_the_eye() {
        // Plane trigonometry: a stem of 20 m, the eye 2 m above its base, 10 m and 20 m away.
        let angle = |rise: f64, away: f64| exact(libm::atan(rise / away) / radians(1.0));
        let (near, far) = (angle(18.0, 10.0), angle(18.0, 20.0));
        let down = angle(-2.0, 10.0);
        let two = |near: f64, far: f64, down: f64| {
            by_two_positions_to_base(exact(10.0), exact(near), exact(far), exact(down)).unwrap()
        };
        assert!((two(near.value, far.value, down.value).value - 20.0).abs() < 1e-9);
        // Calculus: each term of the propagation is the derivative of the formula.
        let step = 1e-6;
        for which in 0..3 {
            let moved = |by: f64| {
                let mut at = [near.value, far.value, down.value];
                at[which] += by;
                two(at[0], at[1], at[2]).value
            };
            let slope = (moved(step) - moved(-step)) / (2.0 * step);
            let mut at = [near, far, down];
            at[which].se = 1.0;
            let read = by_two_positions_to_base(exact(10.0), at[0], at[1], at[2]).unwrap();
            assert!((read.se - slope.abs()).abs() < 1e-4, "{which}");
        }
    }

    #[test]
    fn a_top_below_the_base_and_no_number_are_refused() {
        let fault = by_tangent(exact(20.0), exact(-5.0), exact(10.0)).unwrap_err();
        assert_eq!(fault.code, "fault.top-below-base");
        let fault = by_sine(exact(f64::INFINITY), exact(40.0), exact(20.0), exact(-4.0));
        assert_eq!(fault.unwrap_err().place, "height.to_top_m");
        let fault = by_two_positions(exact(10.0), exact(30.0), exact(40.0), exact(1.5));
        assert!(fault.is_err());
    }

    #[test]
    fn a_known_lean_is_taken_out_again() {
        // Similar triangles: H = 20 m, tip 3 m toward the observer at 30 m, reads 22.222 m.
        let lean_deg = libm::atan(3.0 / 20.0) * 180.0 / core::f64::consts::PI;
        let read = Measured::new(20.0 * 30.0 / 27.0, 0.4);
        let right = corrected_for_lean(read, 30.0, lean_deg, 0.0);
        assert!((right.value - 20.0).abs() < 1e-9);
        assert!(right.se < 0.4);
        assert!(lean_spoils(30.0, 3.0) && !lean_spoils(30.0, -1.0));
    }
}
