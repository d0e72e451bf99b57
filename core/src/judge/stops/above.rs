//! What hangs above, and what lives in the tree.

use crate::judge::inside::is_over_people;
use crate::judge::plan_case::PlanCase;
use crate::judge::tree_case::TreeCase;
use crate::record::{DefectKind, Reason};

use super::about;

/// A hanger of any size over the route or over people.
pub(super) fn hangers(plan: &PlanCase, stops: &mut Vec<Reason>) {
    for defect in plan.case.defects() {
        if defect.kind != DefectKind::Hanger {
            continue;
        }
        if plan.route.place(defect.finding).counts_in_full() {
            stops.push(about(&defect, "stop.hanger-over-route"));
        } else if is_over_people(plan.case) {
            stops.push(about(&defect, "stop.hanger-over-people"));
        }
    }
}

pub(super) fn animals(case: &TreeCase, stops: &mut Vec<Reason>) {
    for defect in case.defects() {
        match defect.kind {
            DefectKind::StingingInsects => stops.push(about(&defect, "stop.stinging-insects")),
            DefectKind::NestOrRoost => stops.push(about(&defect, "stop.nest-or-roost")),
            _ => {}
        }
    }
}
