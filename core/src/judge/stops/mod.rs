//! Facts that bar climbing whatever the rest says. Each names who may lift it and how, in its words.

mod above;
mod anchor;
mod day;
mod dead;
mod people;
mod roots;
mod wood;

use crate::record::Reason;

use super::plan_case::PlanCase;
use super::tree_case::{Defect, TreeCase};

pub(crate) use day::{cautions, site_stops};
pub(crate) use roots::explain;

/// Stops of the tree itself, whatever the plan; those of wires come with the distances.
pub(crate) fn of_tree(case: &TreeCase) -> Vec<Reason> {
    let mut stops = Vec::new();
    dead::of_tree(case, &mut stops);
    roots::of_tree(case, &mut stops);
    wood::of_tree(case, &mut stops);
    above::animals(case, &mut stops);
    stops
}

/// Stops that depend on the plan: its route, its anchor, its people.
pub(crate) fn of_plan(plan: &PlanCase) -> Vec<Reason> {
    let mut stops = Vec::new();
    dead::on_route(plan, &mut stops);
    wood::on_route(plan, &mut stops);
    above::hangers(plan, &mut stops);
    anchor::of_plan(plan, &mut stops);
    people::of_plan(plan, &mut stops);
    stops
}

/// A stop about a finding.
fn about(defect: &Defect, code: &str) -> Reason {
    Reason::new(code).about(&defect.finding.id)
}
