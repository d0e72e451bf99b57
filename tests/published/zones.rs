//! Leaning stems, slopes, falling pieces, distances while felling.

use bolewalk_core::judge::falling::{
    drop_along_m, fall_time_s, height_of_stem_m, length_on_map_m, piece_reach_m, stem_length_m,
    tip_offset_m,
};
use bolewalk_core::judge::rules::{Rule, RuleSet};
use bolewalk_core::measure::place::EastNorth;
use bolewalk_core::record::Id;

use super::table::{Checks, Table};

pub fn all(checks: &mut Checks) {
    leaning_stems(checks);
    slopes(checks);
    pieces(checks);
    published_distances(checks);
}

fn leaning_stems(checks: &mut Checks) {
    let rules = RuleSet::shipped(&Id::default()).unwrap();
    let crew = rules.number(Rule::ZoneFellCrewLengths);
    let everyone = rules.number(Rule::ZoneFellEveryoneLengths);
    let table = Table::read(include_str!("stem_lean.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let lean = line.number("lean_deg");
        let length = stem_length_m(20.0, lean);
        checks.near("L", length, line.number("length_m"), 0.0005);
        checks.near(
            "offset",
            tip_offset_m(20.0, lean),
            line.number("offset_m"),
            0.0005,
        );
        checks.near("1.5 L", crew * length, line.number("crew_m"), 0.0005);
        checks.near("2 L", everyone * length, line.number("everyone_m"), 0.0005);
        let shortfall = everyone * (length - 20.0);
        checks.near("shortfall", shortfall, line.number("shortfall_m"), 0.0005);
    }
    checks.near(
        "1.5 L, 25 m at 15°",
        crew * stem_length_m(25.0, 15.0),
        38.823,
        0.0005,
    );
    checks.near(
        "2 L, 25 m at 15°",
        everyone * stem_length_m(25.0, 15.0),
        51.764,
        0.0005,
    );
    checks.near(
        "H of 20 m taped at 30°",
        height_of_stem_m(20.0, 30.0),
        17.321,
        0.0005,
    );
    let tip = EastNorth {
        east_m: 0.0,
        north_m: 0.0,
    }
    .moved(135.0, tip_offset_m(20.0, 10.0));
    checks.near("tip east", tip.east_m, 2.494, 0.0005);
    checks.near("tip north", tip.north_m, -2.494, 0.0005);
}

fn slopes(checks: &mut Checks) {
    let table = Table::read(include_str!("slope.csv"));
    checks.from(&table.source);
    for line in table.lines() {
        let slope = line.number("slope_deg");
        checks.near(
            "map",
            length_on_map_m(20.0, slope),
            line.number("map_m"),
            0.0005,
        );
        checks.near(
            "drop",
            drop_along_m(20.0, slope),
            line.number("drop_m"),
            0.0005,
        );
    }
}

fn pieces(checks: &mut Checks) {
    checks.from("Plane mechanics: free fall with an outward speed");
    checks.near("fall of 12 m", fall_time_s(12.0), 1.5644, 0.00005);
    checks.near("reach", piece_reach_m(12.0, 1.0, 5.0, 1.5), 8.347, 0.0005);
}

fn published_distances(checks: &mut Checks) {
    let rules = RuleSet::shipped(&Id::default()).unwrap();
    let mut is = |source: &str, rule, value| {
        checks.from(source);
        checks.same(source, rules.number(rule), value);
    };
    is(
        "29 CFR 1910.266(d)(6)(ii), (h)(1)",
        Rule::ZoneFellEveryoneLengths,
        2.0,
    );
    is(
        "29 CFR 1910.266(d)(6)(ii), adjacent work areas",
        Rule::ZoneConflictLengths,
        2.0,
    );
    is("ANSI Z133-2017, pull line", Rule::ZoneFellCrewLengths, 1.5);
    is(
        "ANSI Z133-2017, 10 ft beyond the drip line",
        Rule::ZonePruneBarrierM,
        3.05,
    );
    is(
        "ANSI Z133-2017, 20 ft from the drip line",
        Rule::ZoneRemovalM,
        6.1,
    );
    is(
        "OSHA hurricane recovery, 20 ft beyond",
        Rule::ZoneBeyondDropM,
        6.1,
    );
    is(
        "ANSI Z133-2017, twice the material",
        Rule::ZonePieceLengths,
        2.0,
    );
    is(
        "Approved Code of Practice NZ 2012",
        Rule::StopRescueHeightM,
        3.0,
    );
    is("30-30 rule", Rule::StopThunderMin, 30.0);
}

#[test]
fn zones_are_as_published() {
    all(&mut Checks::new());
}
