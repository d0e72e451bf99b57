//! Dead and brittle wood.

use crate::judge::plan_case::PlanCase;
use crate::judge::route::Place;
use crate::judge::rules::Rule;
use crate::judge::tree_case::TreeCase;
use crate::judge::wood::DeadBrittle;
use crate::record::{DefectKind, Quantity, Reason};

use super::about;

pub(super) fn of_tree(case: &TreeCase, stops: &mut Vec<Reason>) {
    let look = case.look();
    if case.is_dead() {
        if look.dead_since.is_none() {
            stops.push(Reason::new("stop.dead-date-unknown"));
        }
        if case.wood.dead_brittle == DeadBrittle::Yes {
            stops.push(Reason::new("stop.dead-brittle-kind"));
        }
    }
    if case.genus() != "fraxinus" {
        return;
    }
    if look.beetle_killed == Some(true) {
        stops.push(Reason::new("stop.ash-beetle"));
    }
    let most = case.site.rules.number(Rule::StopAshDiebackPct);
    if look.dieback_pct.is_some_and(|lost| lost > most) {
        let stop = Reason::new("stop.ash-dieback");
        stops.push(stop.number("lost", most, Quantity::Percent));
    } else if let Some(defect) = case
        .defects()
        .find(|defect| defect.kind == DefectKind::Dieback && defect.grade == 3)
    {
        // Grade 3 means more than half of the crown.
        stops.push(about(&defect, "stop.ash-dieback").number("lost", most, Quantity::Percent));
    }
}

/// A dead part of a living tree on the route: from grade 2, since grade 1 is twigs.
pub(super) fn on_route(plan: &PlanCase, stops: &mut Vec<Reason>) {
    for defect in plan.case.defects() {
        let on_route = matches!(
            plan.route.place(defect.finding),
            Place::OnRoute | Place::UnderAnchor
        );
        if defect.kind == DefectKind::DeadLimb && defect.grade >= 2 && on_route {
            stops.push(about(&defect, "stop.route-dead"));
        }
    }
}
