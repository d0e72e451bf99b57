//! Checks against published works: each value stands beside the work it was taken from.

mod danger;
mod decay;
mod heights;
mod loads;
mod places;
mod table;
mod units;
mod wood;
mod zones;

use table::Checks;

/// A group of checks.
type Group = fn(&mut Checks);

const GROUPS: &[Group] = &[
    zones::all,
    danger::all,
    decay::all,
    wood::all,
    loads::all,
    heights::all,
    places::all,
];

#[test]
fn at_least_a_hundred_published_values_are_checked() {
    let mut checks = Checks::new();
    for group in GROUPS {
        group(&mut checks);
    }
    println!("{} published values checked", checks.count());
    assert!(checks.count() >= 110, "{}", checks.count());
}
