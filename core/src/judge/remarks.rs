//! What a person should know besides: values that stand in for what was not read, always said.

use crate::record::{ArgValue, LoadTestOutcome, Quantity, Reason};

use super::plan_case::PlanCase;
use super::rules::Rule;
use super::tree_case::TreeCase;
use super::wood::{WoodBasis, find_species};

/// Remarks on the tree.
pub(crate) fn of_tree(case: &TreeCase) -> Vec<Reason> {
    let mut remarks = Vec::new();
    let look = case.look();
    if let Some(day) = case.seen.day.filter(|day| *day != case.site.as_of) {
        remarks.push(Reason::new("remark.last-look").with("day", ArgValue::OnDay { day }));
    }
    if case.tree.work_is_done() {
        remarks.push(Reason::new("remark.work-done"));
    }
    if case.tree.other_access.is_none() && case.is_worked_on() {
        remarks.push(Reason::new("remark.other-access-not-asked"));
    }
    if look.bark_cm.is_none() && look.girth.is_some() && case.is_climbed() {
        remarks.push(Reason::new("remark.bark-usual"));
    }
    if case.tree.species.is_some() && case.is_climbed() {
        match case.wood.strength_mpa.basis {
            WoodBasis::Species => {}
            WoodBasis::Genus => remarks.push(Reason::new("remark.wood-by-genus")),
            WoodBasis::General => remarks.push(Reason::new("remark.wood-general")),
        }
    }
    height_for_diameter(case, &mut remarks);
    if look
        .slope
        .is_some_and(|slope| slope.slope_pct > 0.0 && slope.downhill_deg.is_none())
    {
        remarks.push(Reason::new("remark.downhill-all-round"));
    }
    if look.slope.is_none() {
        remarks.push(Reason::new("remark.slope-not-given"));
    }
    if look.next_look.is_none() && case.seen.full {
        remarks.push(Reason::new("remark.next-look-open"));
    }
    remarks
}

/// A height far from what its species usually has for its diameter is asked about, never refused.
fn height_for_diameter(case: &TreeCase, remarks: &mut Vec<Reason>) {
    let (Some(height), Some(diameter)) = (case.look().height, case.breast_diameter_cm()) else {
        return;
    };
    let usual = case.tree.species.as_deref().and_then(find_species);
    let Some(fit) = usual.and_then(|species| species.height.as_ref()) else {
        return;
    };
    let spreads = case.site.rules.number(Rule::MeasureHeightCheckSpreads);
    let low = fit.height_m(diameter, -spreads);
    let high = fit.height_m(diameter, spreads);
    if height.height_m < low || height.height_m > high {
        remarks.push(
            Reason::new("remark.height-unusual")
                .number("height", height.height_m, Quantity::LengthM)
                .number("low", low, Quantity::LengthM)
                .number("high", high, Quantity::LengthM),
        );
    }
}

/// Remarks on one way up.
pub(crate) fn of_plan(plan: &PlanCase) -> Vec<Reason> {
    let mut remarks = Vec::new();
    match plan.plan {
        None => remarks.push(Reason::new("remark.no-plan-worst-system")),
        Some(made) => {
            if made.system == crate::record::RopeSystem::MovingRope && made.open_system.is_none() {
                remarks.push(Reason::new("remark.system-counts-as-open").about(&made.id));
            }
        }
    }
    if !plan.route.is_known() {
        remarks.push(Reason::new("remark.route-sides-unknown"));
    }
    if plan
        .climber
        .is_none_or(|person| person.mass_with_gear_kg.is_none())
    {
        let mass = plan.case.site.rules.number(Rule::LoadClimberKg);
        remarks.push(Reason::new("remark.mass-usual").number("mass", mass, Quantity::MassKg));
    }
    let Some(anchor) = plan.anchor else {
        return remarks;
    };
    if anchor.diameter_cm.is_some() && anchor.diameter_read.is_none() {
        remarks.push(Reason::new("remark.anchor-read-as-by-eye").about(&anchor.id));
    }
    if anchor.limb_length_m.is_none() {
        remarks.push(Reason::new("remark.limb-length-usual").about(&anchor.id));
    }
    if anchor.parent_diameter_cm.is_none() {
        remarks.push(Reason::new("remark.parent-diameter-missing").about(&anchor.id));
    }
    if let Some(test) = &anchor.load_test
        && test.outcome == LoadTestOutcome::Held
    {
        if test.mass_kg.is_none() {
            remarks.push(Reason::new("remark.load-test-without-mass").about(&anchor.id));
        }
        let day = test.on.or(plan.case.seen.day);
        if day != Some(plan.case.site.as_of) {
            remarks.push(Reason::new("remark.load-test-older").about(&anchor.id));
        }
    }
    remarks
}
