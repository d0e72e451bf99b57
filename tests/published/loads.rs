//! Rope systems, dynamic bounds, stress at unions.

use bolewalk_core::judge::rules::{Rule, RuleSet};
use bolewalk_core::judge::statics::{
    base_tied_factor_over_bark, bending_stress_mpa, catch_factor, pull_moment_knm, redirect_factor,
    required_diameter_cm, rope_system_factor, weight_kn,
};
use bolewalk_core::record::{Id, RopeSystem};

use super::table::{Checks, Table};

const LBF_PER_KN: f64 = 1000.0 / 4.448_221_6;

pub fn all(checks: &mut Checks) {
    rope_systems(checks);
    dynamic_bounds(checks);
    unions(checks);
    gear(checks);
}

fn rope_systems(checks: &mut Checks) {
    checks.from("Plane statics; base-tied doubling: Kane 2020, Urban Forestry & Urban Greening 51");
    for (system, factor) in [
        (RopeSystem::MovingRope, 1.0),
        (RopeSystem::StationaryCrown, 1.0),
        (RopeSystem::StationaryBase, 2.0),
    ] {
        checks.same("factor", rope_system_factor(system), factor);
    }
    checks.from("Belt friction: 1 + e^(-mu phi), half a turn");
    for (friction, factor) in [(0.1, 1.730), (0.2, 1.533), (0.3, 1.390)] {
        let got = base_tied_factor_over_bark(friction, 180.0);
        checks.near("over bark", got, factor, 0.0005);
    }
    let table = Table::read(include_str!("redirect.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let factor = redirect_factor(line.number("between_deg"));
        checks.near("redirect", factor, line.number("factor"), 0.00005);
    }
    checks.from("g = 9.80665 m/s², 1 lbf = 4.4482216 N");
    let weight = weight_kn(90.0);
    checks.near("90 kg", weight, 0.8826, 0.00005);
    checks.near("in lbf", weight * LBF_PER_KN, 198.4, 0.05);
    let base = weight * rope_system_factor(RopeSystem::StationaryBase);
    checks.near("base-tied", base, 1.7652, 0.00005);
    checks.near("with 1.5", base * 1.5, 2.6478, 0.00005);
    checks.near("in lbf", base * 1.5 * LBF_PER_KN, 595.2, 0.05);
}

fn dynamic_bounds(checks: &mut Checks) {
    checks.from("Energy balance: F/W = 1 + √(1 + 2h/δ)");
    for (stretch, fall, factor) in [
        (0.05, 0.0, 2.000),
        (0.05, 0.5, 5.583),
        (0.05, 1.0, 7.403),
        (0.2, 1.0, 4.317),
        (0.2, 2.0, 5.583),
    ] {
        checks.near("F/W", catch_factor(fall, stretch), factor, 0.0005);
    }
}

fn unions(checks: &mut Checks) {
    let table = Table::read(include_str!("union_stress.csv"));
    checks.from(&table.source);
    // Straight across the limb: the whole lever counts.
    let moment = pull_moment_knm(2.6478, 0.30, 90.0, 45.0);
    checks.near("M", moment, 0.7943, 0.00005);
    for line in table.lines() {
        let stress = bending_stress_mpa(moment, line.number("diameter_mm") / 10.0);
        checks.near("stress", stress, line.number("stress_mpa"), 0.0051);
    }
    checks.from("Strength of materials: d = (32 F l n/(π MOR))^(1/3)");
    for (strength, margin, mm) in [(39.0, 4.0, 94.0), (39.0, 10.0, 127.5), (53.0, 4.0, 84.8)] {
        let needed = required_diameter_cm(moment, margin, strength);
        checks.near("needed", needed * 10.0, mm, 0.06);
    }
    let rules = RuleSet::shipped(&Id::default()).unwrap();
    checks.from("Smiley 2003, Journal of Arboriculture 29(2):104-106: both fitted lines");
    let ratio = |d: f64| (537.0 * d - 1285.0) / (613.0 * d - 1388.0);
    checks.near(
        "small stems",
        rules.number(Rule::WoodIncludedBarkLow),
        ratio(3.0),
        0.005,
    );
    checks.near(
        "large stems",
        rules.number(Rule::WoodIncludedBarkHigh),
        ratio(6.0),
        0.005,
    );
}

fn gear(checks: &mut Checks) {
    let rules = RuleSet::shipped(&Id::default()).unwrap();
    checks.from("ANSI Z133 (2000/2006): 5,400 lbf line, 5,000 lbf connectors");
    let line = rules.number(Rule::GearLineKn) * LBF_PER_KN;
    checks.near("line", line, 5395.4, 0.05);
    let connector = rules.number(Rule::GearConnectorKn) * LBF_PER_KN;
    checks.near("connector", connector, 5000.0, 0.5);
}

#[test]
fn loads_are_as_published() {
    all(&mut Checks::new());
}
