//! Conductors, wind, thunder, heat, and the two risk matrices.

use bolewalk_core::judge::electricity::{
    Keep, altitude_factor, approach, phase_to_ground_kv, unqualified_distance_ft,
    unqualified_distance_m, unqualified_distance_without_steps_m,
};
use bolewalk_core::judge::risk::{combined_likelihood, risk_rating};
use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::judge::weather::{
    HeatBand, flash_distance_km, heat_band, heat_index_f, wind_force_of_mph, wind_force_of_ms,
    wind_ms_of_force,
};
use bolewalk_core::record::{ElectricalLevel, Id, VoltageBetween};
use serde::de::DeserializeOwned;

use super::table::{Checks, Table};

pub fn all(checks: &mut Checks) {
    unqualified(checks);
    qualified(checks);
    phases(checks);
    matrices(checks);
    wind(checks);
    heat(checks);
}

fn us() -> RuleSet {
    RuleSet::shipped(&Id::default()).unwrap()
}

fn unqualified(checks: &mut Checks) {
    let rules = us();
    let table = Table::read(include_str!("unqualified_approach.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let kv = line.number("kv");
        let linear_m = unqualified_distance_without_steps_m(kv, &rules);
        checks.near("linear", linear_m, line.number("linear_m"), 0.0051);
        let step_m = unqualified_distance_m(kv, &rules);
        checks.near("step", step_m, line.number("step_m"), 1e-9);
        let step_ft = unqualified_distance_ft(kv, &rules);
        checks.near("step in feet", step_ft, line.number("step_ft"), 0.0051);
        let level = ElectricalLevel::Unqualified;
        let given = approach(Some(kv), None, level, 0.0, &rules).keep;
        checks.same("given", given, Keep::AtLeast { distance_m: step_m });
    }
}

fn qualified(checks: &mut Checks) {
    let rules = us();
    let level = ElectricalLevel::LineClearance;
    let table = Table::read(include_str!("qualified_approach.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        for end in ["from_kv", "to_kv"] {
            let kv = line.number(end);
            let keep = approach(Some(kv), Some(VoltageBetween::Phases), level, 0.0, &rules).keep;
            let published = match line.maybe("phase_to_phase_m") {
                Some(distance_m) => Keep::AtLeast { distance_m },
                None => Keep::NoContact,
            };
            checks.same("phase to phase", keep, published);
        }
        let kv = line.number("to_kv");
        let band = rules.approach_bands().iter().find(|band| band.to_kv == kv);
        let ground = band.and_then(|band| band.phase_to_ground_m);
        checks.same("phase to ground", ground, line.maybe("phase_to_ground_m"));
    }
    checks.from("29 CFR 1910.269 Table R-5 (2014)");
    let factor = altitude_factor(1700.0, &rules).unwrap();
    checks.near("0.65 m at 1,700 m", 0.65 * factor, 0.702, 1e-9);
    checks.same("above the table", altitude_factor(6001.0, &rules), None);
}

fn phases(checks: &mut Checks) {
    checks.from("Three-phase systems: phase to ground is phase to phase over √3");
    for (phases, ground) in [
        (69.0, 39.84),
        (115.0, 66.40),
        (138.0, 79.67),
        (230.0, 132.79),
        (345.0, 199.19),
        (500.0, 288.68),
    ] {
        checks.near("to ground", phase_to_ground_kv(phases), ground, 0.005);
    }
}

fn word<T: DeserializeOwned>(text: &str) -> T {
    serde_json::from_value(serde_json::Value::String(text.to_owned())).unwrap()
}

fn matrices(checks: &mut Checks) {
    let table = Table::read(include_str!("matrix_1.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let failure = word(line.text("failure"));
        for impact in &table.columns()[1..] {
            let got = combined_likelihood(failure, word(impact));
            checks.same(impact, got, word(line.text(impact)));
        }
    }
    let table = Table::read(include_str!("matrix_2.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let likelihood = word(line.text("likelihood"));
        for consequences in &table.columns()[1..] {
            let got = risk_rating(likelihood, word(consequences));
            checks.same(consequences, got, word(line.text(consequences)));
        }
    }
}

fn wind(checks: &mut Checks) {
    let table = Table::read(include_str!("beaufort.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let force = line.number("force") as u32;
        for end in ["from_mph", "to_mph"] {
            let mph = line.number(end);
            checks.same(end, wind_force_of_mph(mph), force);
            checks.same(end, wind_force_of_ms(mph * 0.44704), force);
        }
    }
    checks.from("World Meteorological Organization, 0.836 B^1.5, from memory");
    for (force, ms) in [(5.0, 9.35), (6.0, 12.29), (7.0, 15.48)] {
        checks.near("wind of a force", wind_ms_of_force(force), ms, 0.005);
    }
    checks.from("Canadian lightning rule: 30 s are about 10 km");
    checks.near("30 s", flash_distance_km(30.0), 10.3, 0.05);
}

fn heat(checks: &mut Checks) {
    let mut index = |text: &str, within: f64| {
        let table = Table::read(text);
        checks.from(&table.source);
        for line in table.lines() {
            let got = heat_index_f(line.number("temperature_f"), line.number("humidity_pct"));
            checks.near("heat index", got, line.number("heat_index_f"), within);
        }
    };
    index(include_str!("heat_index.csv"), 0.005);
    index(include_str!("heat_chart.csv"), 0.5);
    let rules = us();
    checks.from("US National Weather Service, heat index bands");
    for (index, band) in [
        (79.9, HeatBand::Usual),
        (80.0, HeatBand::Caution),
        (90.0, HeatBand::ExtremeCaution),
        (103.0, HeatBand::Danger),
        (125.0, HeatBand::ExtremeDanger),
    ] {
        checks.same("band", heat_band(index, &rules), band);
    }
}

#[test]
fn dangers_are_as_published() {
    all(&mut Checks::new());
}
