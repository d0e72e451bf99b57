//! The anchor: dead, thin, regrown, or moved under the load test. Its margin comes with the loads.

use crate::judge::plan_case::PlanCase;
use crate::judge::rules::Rule;
use crate::record::{AnchorState, LoadTestOutcome, Quantity, Reason, UnionForm};

pub(super) fn of_plan(plan: &PlanCase, stops: &mut Vec<Reason>) {
    let Some(anchor) = plan.anchor else { return };
    let about = |code: &str| {
        let name = anchor.name.as_deref().unwrap_or(anchor.id.as_str());
        Reason::new(code).about(&anchor.id).text("anchor", name)
    };
    match anchor.state {
        Some(AnchorState::Dead) => stops.push(about("stop.anchor-dead")),
        Some(AnchorState::DeadStub) => stops.push(about("stop.anchor-dead-stub")),
        Some(AnchorState::Regrowth) => stops.push(about("stop.anchor-regrowth")),
        Some(AnchorState::Live) | None => {}
    }
    if anchor.union == Some(UnionForm::Opening) {
        stops.push(about("stop.anchor-union-opening"));
    }
    if let Some(test) = &anchor.load_test
        && test.outcome != LoadTestOutcome::Held
    {
        stops.push(about("stop.load-test-failed"));
    }
    if let Some(over_bark) = anchor.diameter_cm {
        let wood = over_bark - 2.0 * plan.case.wood.usual_bark_cm(over_bark);
        let least = plan.case.site.rules.number(if plan.case.wood.brittle {
            Rule::StopAnchorBrittleCm
        } else {
            Rule::StopAnchorCm
        });
        if wood < least {
            stops.push(
                about("stop.anchor-thin")
                    .number("wood", wood, Quantity::LengthCm)
                    .number("least", least, Quantity::LengthCm),
            );
        }
    }
}
