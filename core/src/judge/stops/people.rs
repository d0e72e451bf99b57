//! The people and their gear: who climbs, who could bring them down, and the rescue plan.

use crate::judge::plan_case::PlanCase;
use crate::judge::rules::Rule;
use crate::judge::who;
use crate::record::{Quantity, Reason, RopeSystem};

pub(super) fn of_plan(plan: &PlanCase, stops: &mut Vec<Reason>) {
    let site = plan.case.site;
    if site.file.site.rescue.is_none() {
        stops.push(Reason::new("stop.no-rescue-plan"));
    }
    stopper(plan, stops);
    if site.file.crew.is_empty() {
        // Nobody entered a crew: a gap, told elsewhere.
        return;
    }
    match plan.climber {
        Some(person) => {
            let answer = who::climber_answer(plan, person);
            stops.extend(
                answer
                    .reasons
                    .into_iter()
                    .filter(|r| r.code.starts_with("stop.")),
            );
        }
        None if plan.climbers.iter().all(|answer| !answer.may) => {
            stops.push(Reason::new("stop.nobody-may-climb"));
        }
        None => {}
    }
    let above_m = site.rules.number(Rule::StopRescueHeightM);
    let goes_higher = plan
        .anchor
        .and_then(|anchor| anchor.height_m)
        .is_none_or(|height| height > above_m);
    if goes_higher && !who::second_stands_ready(plan) {
        let stop = Reason::new("stop.no-second");
        stops.push(stop.number("above", above_m, Quantity::LengthM));
    }
}

/// An open moving-rope system needs a stopper knot; a closed one does not (common practice).
fn stopper(plan: &PlanCase, stops: &mut Vec<Reason>) {
    let Some(made) = plan.plan else { return };
    let open = made.system == RopeSystem::MovingRope && made.open_system != Some(false);
    if open && made.stopper == Some(false) {
        stops.push(Reason::new("stop.no-stopper").about(&made.id));
    }
}
