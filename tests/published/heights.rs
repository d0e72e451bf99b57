//! Heights, their errors, and lean.

use bolewalk_core::measure::Measured;
use bolewalk_core::measure::height::{
    by_percent, by_sine, by_stick, by_tangent, by_tangent_on_slope, by_two_positions,
    from_opposite_sides, lean_bias_share,
};
use bolewalk_core::measure::lean::from_two_sides;

use super::table::{Checks, Table};

pub fn all(checks: &mut Checks) {
    methods(checks);
    errors(checks);
    bias(checks);
    leans(checks);
}

fn exact(value: f64) -> Measured {
    Measured::new(value, 0.0)
}

fn tangent(distance: f64, up: f64, down: f64) -> f64 {
    by_tangent(exact(distance), exact(up), exact(down))
        .unwrap()
        .value
}

fn sine(top: f64, up: f64, base: f64, down: f64) -> f64 {
    by_sine(exact(top), exact(up), exact(base), exact(down))
        .unwrap()
        .value
}

fn methods(checks: &mut Checks) {
    checks.from("Plane trigonometry: H = D (tan up − tan down)");
    for (distance, up, down, height) in [
        (20.0, 45.0, -5.0, 21.750),
        (30.0, 38.66, -3.05, 25.599),
        (25.0, 40.0, 8.0, 17.464),
        (25.0, 30.0, -20.0, 23.533),
    ] {
        checks.near("tangent", tangent(distance, up, down), height, 0.0005);
    }
    let slope = by_tangent_on_slope(exact(25.0), exact(40.0), exact(-10.0)).unwrap();
    checks.near("slope distance", slope.value, 25.000, 0.0005);
    checks.from("Plane trigonometry: percent readings are 100 tan");
    let percent = by_percent(exact(20.0), exact(100.0), exact(-8.748_866_35)).unwrap();
    checks.near("percent", percent.value, 21.750, 0.0005);
    checks.from("Bragg et al. 2011, USDA Forest Service Research Note SRS-22: sine method");
    let above_eye = sine(105.0, 47.0, 1.0, 0.0);
    checks.near("105 ft at 47°", above_eye, 76.8, 0.05);
    checks.near("with the base", sine(105.0, 47.0, 61.0, -5.0), 82.11, 0.005);
    checks.near("metric", sine(32.0, 47.0, 22.5, -4.0), 24.973, 0.0005);
    checks.from("Plane trigonometry: two positions on one line");
    let two = by_two_positions(exact(10.0), exact(40.0), exact(30.0), exact(0.0)).unwrap();
    checks.near("above the eye", two.above_eye_m, 18.508, 0.0005);
    checks.near("near distance", two.near_distance_m, 22.057, 0.0005);
    checks.from("Similar triangles: H = D stick/arm");
    let stick = by_stick(exact(22.0), exact(65.0), exact(65.0)).unwrap();
    checks.near("stick as long as the arm", stick.value, 22.0, 1e-9);
}

fn errors(checks: &mut Checks) {
    checks.from("Propagation of independent errors, 0.5° and 0.1 m");
    let angle = |value| Measured::new(value, 0.5);
    let length = |value| Measured::new(value, 0.1);
    let tangent_se = by_tangent(length(20.0), angle(45.0), angle(-5.0))
        .unwrap()
        .se;
    checks.near("tangent", tangent_se, 0.4057, 0.00005);
    let only = |distance: Measured, up: Measured, down: Measured| {
        by_tangent(distance, up, down).unwrap().se
    };
    let up_term = only(exact(20.0), angle(45.0), exact(-5.0));
    checks.near("term of the top", up_term, 0.3491, 0.00005);
    let down_term = only(exact(20.0), exact(45.0), angle(-5.0));
    checks.near("term of the base", down_term, 0.1759, 0.00005);
    let distance_term = only(length(20.0), exact(45.0), exact(-5.0));
    checks.near("term of the distance", distance_term, 0.1087, 0.00006);
    let sine_se = by_sine(length(28.284), angle(45.0), length(20.076), angle(-5.0))
        .unwrap()
        .se;
    checks.near("sine", sine_se, 0.2569, 0.00005);
    checks.from("Plane trigonometry: one degree at 45° and 20 m");
    let rise = tangent(20.0, 46.0, -5.0) - tangent(20.0, 45.0, -5.0);
    checks.near("one degree up", rise, 0.711, 0.0005);
    let fall = tangent(20.0, 44.0, -5.0) - tangent(20.0, 45.0, -5.0);
    // The sheet prints −0.686; tan 44° gives −0.6862.
    checks.near("one degree down", fall, -0.686, 0.0005);
}

fn bias(checks: &mut Checks) {
    let table = Table::read(include_str!("lean_bias.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let share = lean_bias_share(30.0, line.number("toward_m"));
        let measured = 20.0 * (1.0 + share);
        checks.near("measured", measured, line.number("measured_m"), 0.0005);
        checks.near("error", 100.0 * share, line.number("error_pct"), 0.05);
    }
    checks.from("Similar triangles: two opposite positions at equal distance, x = 3 m");
    let (one, other) = (
        20.0 * (1.0 + lean_bias_share(30.0, 3.0)),
        20.0 * 30.0 / 33.0,
    );
    checks.near("arithmetic mean", (one + other) / 2.0, 20.202, 0.0005);
    let harmonic = from_opposite_sides(exact(one), exact(other)).value;
    checks.near("harmonic mean", harmonic, 20.000, 1e-9);
}

fn leans(checks: &mut Checks) {
    checks.from("Plane trigonometry: tan θ = √(tan² a + tan² b)");
    let lean = from_two_sides(exact(8.0), exact(6.0), 0.0).unwrap();
    checks.near("8° and 6°", lean.lean_deg.value, 9.95, 0.005);
    let toward = lean.toward_deg.unwrap().value;
    let expected = libm::atan2(libm::tan(0.104_719_755), libm::tan(0.139_626_340)) * 57.295_779_5;
    checks.near("azimuth", toward, expected, 1e-6);
}

#[test]
fn heights_are_as_published() {
    all(&mut Checks::new());
}
