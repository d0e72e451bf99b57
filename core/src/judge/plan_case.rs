//! One way up a tree: an anchor, a rope system, a route, a climber and a second person.

use crate::record::{AnchorPoint, ClimbPlan, ClimberAnswer, Person, RopeNeed, RopeSystem};

use super::route::Route;
use super::rules::Rule;
use super::tree_case::TreeCase;
use super::who;

/// A plan as it is judged. Without a plan each anchor is one, with ascent on its side.
pub(crate) struct PlanCase<'a> {
    pub case: &'a TreeCase<'a>,
    pub plan: Option<&'a ClimbPlan>,
    pub anchor: Option<&'a AnchorPoint>,
    pub route: Route,
    pub climber: Option<&'a Person>,
    pub second: Option<&'a Person>,
    /// Who may climb, filled before the stops are asked.
    pub climbers: Vec<ClimberAnswer>,
}

impl<'a> PlanCase<'a> {
    /// Every way up that was recorded; one without an anchor where none was.
    pub(crate) fn all(case: &'a TreeCase<'a>) -> Vec<PlanCase<'a>> {
        let look = &case.seen.look;
        let plans: Vec<_> = look
            .plans
            .iter()
            .map(|plan| {
                let anchor = look.anchors.iter().find(|anchor| anchor.id == plan.anchor);
                PlanCase::new(case, Some(plan), anchor)
            })
            .collect();
        if !plans.is_empty() {
            return plans;
        }
        let anchors = look.anchors.iter();
        let plans: Vec<_> = anchors
            .map(|anchor| PlanCase::new(case, None, Some(anchor)))
            .collect();
        if plans.is_empty() {
            vec![PlanCase::new(case, None, None)]
        } else {
            plans
        }
    }

    fn new(
        case: &'a TreeCase<'a>,
        plan: Option<&'a ClimbPlan>,
        anchor: Option<&'a AnchorPoint>,
    ) -> Self {
        let crew = &case.site.file.crew;
        let named = |pick: fn(&ClimbPlan) -> &crate::record::Id| {
            let id = plan.map(pick).filter(|id| !id.is_empty())?;
            crew.iter().find(|person| person.id == *id)
        };
        let mut whole = PlanCase {
            case,
            plan,
            anchor,
            route: Route::of(plan, anchor, case.site.rules),
            climber: named(|plan| &plan.climber),
            second: named(|plan| &plan.second),
            climbers: Vec::new(),
        };
        whole.climbers = who::answers(&whole);
        whole
    }

    /// The rope system; without a plan the one that loads an anchor most.
    pub(crate) fn system(&self) -> RopeSystem {
        self.plan
            .map_or(RopeSystem::StationaryBase, |plan| plan.system)
    }

    /// Whether the climb is made on spurs.
    pub(crate) fn on_spurs(&self) -> bool {
        self.plan.is_some_and(|plan| plan.spurs == Some(true))
    }

    /// Whether a chainsaw is used aloft.
    pub(crate) fn chainsaw_aloft(&self) -> bool {
        let mut work = self.case.tree.work.iter();
        work.any(|work| work.chainsaw_aloft == Some(true))
    }

    /// Whether an opening in the moving rope asks for a stopper knot: unless somebody said that
    /// the system is closed.
    pub(crate) fn stopper_needed(&self) -> bool {
        self.plan.is_some_and(|plan| {
            plan.system == RopeSystem::MovingRope && plan.open_system != Some(false)
        })
    }

    /// The rope that the plan needs; nothing without a plan or the anchor's height.
    pub(crate) fn rope(&self) -> Option<RopeNeed> {
        let plan = self.plan?;
        let height_m = self.anchor?.height_m?;
        // A moving rope, and one tied at the base, goes up and comes down again.
        let legs = match plan.system {
            RopeSystem::MovingRope | RopeSystem::StationaryBase => 2.0,
            RopeSystem::StationaryCrown => 1.0,
        };
        let reserve_m = self.case.site.rules.number(Rule::GearRopeReserveM);
        Some(RopeNeed {
            system: plan.system,
            length_m: legs * height_m + reserve_m,
            throw_m: height_m,
            stopper_needed: self.stopper_needed(),
        })
    }
}
