//! The anchor: bending of its limb at the union, at work, in a rescue, in a slip, in the load test.

mod working;

use crate::record::{AnchorPoint, LoadTestOutcome, Quantity, Reason, UnionForm};

use super::inputs::{Inputs, Lot, Values};
use super::plan_case::PlanCase;
use super::rules::{Rule, RuleSet};
use super::spread::anchor_cv;
use super::statics::{
    LimbWeight, UnionRule, bending_stress_mpa, catch_factor, lever_m, pull_moment_knm,
    rope_system_factor, union_factor, weight_kn,
};
use super::wood::WoodValue;

/// Everything that bends an anchor, as inputs to be sampled and values that are fixed.
pub(crate) struct AnchorModel<'a> {
    anchor: &'a AnchorPoint,
    rules: &'a RuleSet,
    system_factor: f64,
    from_union_cm: f64,
    union: UnionState,
    mass: usize,
    dynamic: usize,
    stretch: usize,
    diameter: usize,
    bark: usize,
    bark_share: f64,
    angle: usize,
    length: Option<usize>,
    density: usize,
    strength: usize,
    grain: usize,
    union_weakest: usize,
    test_kg: Option<f64>,
}

/// What is known of the union.
#[derive(Clone, Copy)]
struct UnionState {
    included_bark: bool,
    parent_cm: Option<f64>,
}

/// Margins of an anchor: strength over stress.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct AnchorMargins {
    pub work: f64,
    pub rescue: f64,
    pub slip: f64,
    /// Under the load test, where one held today.
    pub test: Option<f64>,
}

/// Inputs that anchor and stem share.
pub(crate) struct SharedInputs {
    pub mass: usize,
    pub dynamic: usize,
    pub density: usize,
    pub strength: usize,
    pub grain: usize,
}

impl SharedInputs {
    pub(crate) fn of(plan: &PlanCase, inputs: &mut Inputs) -> Self {
        let rules = plan.case.site.rules;
        let wood = &plan.case.wood;
        let lognormal = |value: &WoodValue| Lot::Lognormal {
            median: value.value,
            cv: value.cv,
        };
        SharedInputs {
            mass: inputs.add("load.mass", mass_lot(plan)),
            dynamic: inputs.add(
                "load.factor",
                Lot::Uniform {
                    low: rules.number(Rule::LoadWorkFactorLow),
                    high: rules.number(Rule::LoadWorkFactorHigh),
                },
            ),
            density: inputs.add("wood.density", lognormal(&wood.density_kg_m3)),
            strength: inputs.add("wood.strength", lognormal(&wood.strength_mpa)),
            grain: inputs.add(
                "wood.grain",
                Lot::Uniform {
                    low: rules.number(Rule::WoodLimbFactorLow),
                    high: rules.number(Rule::WoodLimbFactorHigh),
                },
            ),
        }
    }
}

/// The named climber with gear, else the rule set's.
fn mass_lot(plan: &PlanCase) -> Lot {
    let rules = plan.case.site.rules;
    match plan.climber.and_then(|person| person.mass_with_gear_kg) {
        Some(mass) => Lot::Lognormal {
            median: mass,
            cv: rules.number(Rule::LoadNamedClimberCv),
        },
        None => {
            let mass = rules.number(Rule::LoadClimberKg);
            Lot::Lognormal {
                median: mass,
                cv: rules.number(Rule::LoadClimberSeKg) / mass,
            }
        }
    }
}

impl<'a> AnchorModel<'a> {
    /// The model of a plan's anchor; nothing where a reading it needs is missing.
    pub(crate) fn of(
        plan: &PlanCase<'a>,
        shared: &SharedInputs,
        inputs: &mut Inputs,
    ) -> Option<Self> {
        let anchor = plan.anchor?;
        let rules = plan.case.site.rules;
        let diameter_cm = anchor.diameter_cm?;
        let angle_deg = anchor.limb_angle_deg?;
        let union = anchor.union?;
        let name = |what: &str| format!("anchor.{}.{what}", anchor.id);
        let crown_m = plan.case.look().crown.map(|crown| crown.radius_m);
        let length_m = anchor.limb_length_m.or(crown_m)?;
        let bark_share = 2.0 * plan.case.wood.usual_bark_cm(diameter_cm) / diameter_cm;
        Some(AnchorModel {
            anchor,
            rules,
            system_factor: rope_system_factor(plan.system()),
            from_union_cm: anchor.from_union_cm?,
            union: UnionState {
                included_bark: union == UnionForm::IncludedBark,
                parent_cm: anchor.parent_diameter_cm,
            },
            mass: shared.mass,
            dynamic: shared.dynamic,
            density: shared.density,
            strength: shared.strength,
            grain: shared.grain,
            stretch: inputs.add(
                "load.stretch",
                Lot::Uniform {
                    low: rules.number(Rule::LoadSlipStretchLowM),
                    high: rules.number(Rule::LoadSlipStretchHighM),
                },
            ),
            diameter: inputs.add(
                &name("diameter"),
                Lot::Lognormal {
                    median: diameter_cm,
                    cv: anchor_cv(anchor, rules),
                },
            ),
            bark: inputs.add(
                "wood.bark",
                Lot::Lognormal {
                    median: 1.0,
                    cv: rules.number(Rule::MeasureBarkCv),
                },
            ),
            bark_share,
            angle: inputs.add(
                &name("angle"),
                Lot::Folded {
                    mean: angle_deg,
                    se: rules.number(Rule::MeasureLimbAngleDeg),
                },
            ),
            length: Some(inputs.add(
                &name("length"),
                Lot::Lognormal {
                    median: length_m,
                    cv: rules.number(Rule::MeasureLimbLengthCv),
                },
            )),
            union_weakest: inputs.add(
                &name("union"),
                Lot::Uniform {
                    low: rules.number(Rule::WoodIncludedBarkLow),
                    high: rules.number(Rule::WoodIncludedBarkHigh),
                },
            ),
            test_kg: held_test_kg(plan),
        })
    }

    fn wood_cm(&self, x: &Values) -> f64 {
        let share = (self.bark_share * x.of(self.bark)).min(0.9);
        x.of(self.diameter) * (1.0 - share)
    }

    fn union_left(&self, x: &Values) -> f64 {
        let ratio = self
            .union
            .parent_cm
            .map(|parent| x.of(self.diameter) / parent);
        let rule = UnionRule {
            aspect_none_at: self.rules.number(Rule::WoodAspectNoneAt),
            aspect_full_at: self.rules.number(Rule::WoodAspectFullAt),
        };
        union_factor(
            self.union.included_bark,
            ratio,
            x.of(self.union_weakest),
            rule,
        )
    }

    fn strength_mpa(&self, x: &Values) -> f64 {
        x.of(self.strength) * x.of(self.grain) * self.union_left(x)
    }

    /// Moment of the limb's own weight, only where it lies further from the vertical.
    fn own_moment_knm(&self, x: &Values) -> f64 {
        let angle_deg = x.of(self.angle);
        let Some(length) = self.length else {
            return 0.0;
        };
        if angle_deg <= self.rules.number(Rule::LoadLimbWeightFromDeg) {
            return 0.0;
        }
        LimbWeight {
            diameter_cm: self.wood_cm(x),
            length_m: x.of(length),
            angle_deg,
            density_kg_m3: x.of(self.density),
            volume_factor: self.rules.number(Rule::LoadLimbVolumeFactor),
            branches_share: self.rules.number(Rule::LoadLimbBranchesShare),
            centre_share: self.rules.number(Rule::LoadLimbCentreShare),
        }
        .moment_knm()
    }

    fn lever_m(&self, x: &Values) -> f64 {
        lever_m(
            self.from_union_cm,
            x.of(self.diameter),
            self.rules.number(Rule::LoadLeverExtraCm),
        )
    }

    fn margin(&self, x: &Values, force_kn: f64, stray_deg: f64) -> f64 {
        let pull = pull_moment_knm(force_kn, self.lever_m(x), x.of(self.angle), stray_deg);
        let stress = bending_stress_mpa(pull + self.own_moment_knm(x), self.wood_cm(x));
        if stress > 0.0 {
            self.strength_mpa(x) / stress
        } else {
            f64::INFINITY
        }
    }

    fn stray_deg(&self) -> f64 {
        self.rules.number(Rule::LoadPullStrayDeg)
    }

    /// Force of work on the anchor in kN.
    fn work_force_kn(&self, x: &Values) -> f64 {
        weight_kn(x.of(self.mass)) * self.system_factor * x.of(self.dynamic)
    }

    fn rescue_force_kn(&self) -> f64 {
        weight_kn(self.rules.number(Rule::LoadRescueKg))
            * self.system_factor
            * self.rules.number(Rule::LoadRescueFactor)
    }

    fn slip_force_kn(&self, x: &Values) -> f64 {
        let caught = catch_factor(self.rules.number(Rule::LoadSlipM), x.of(self.stretch));
        weight_kn(x.of(self.mass)) * self.system_factor * caught
    }

    /// The margins for one set of values.
    pub(crate) fn margins(&self, x: &Values) -> AnchorMargins {
        let stray = self.stray_deg();
        AnchorMargins {
            work: self.margin(x, self.work_force_kn(x), stray),
            rescue: self.margin(x, self.rescue_force_kn(), stray),
            slip: self.margin(x, self.slip_force_kn(x), stray),
            // The test hangs straight down.
            test: self
                .test_kg
                .map(|mass| self.margin(x, weight_kn(mass) * self.system_factor, 0.0)),
        }
    }

    /// Whether a load test held today.
    pub(crate) fn is_tested(&self) -> bool {
        self.test_kg.is_some()
    }

    /// What the sheet says of a test that held: its force, over the working load.
    pub(crate) fn test_remark(&self, x: &Values) -> Option<Reason> {
        let force = weight_kn(self.test_kg?) * self.system_factor;
        let ratio = force / self.work_force_kn(x);
        Some(
            Reason::new("remark.load-test-held")
                .about(&self.anchor.id)
                .number("force", force, Quantity::ForceKn)
                .number("ratio", ratio, Quantity::Ratio),
        )
    }
}

/// The mass of a load test that held today; one of another day, without a mass or on a dead tree
/// says nothing.
fn held_test_kg(plan: &PlanCase) -> Option<f64> {
    if plan.case.is_dead() {
        return None;
    }
    let test = plan.anchor?.load_test.as_ref()?;
    let day = test.on.or(plan.case.seen.day);
    let today = day == Some(plan.case.site.as_of);
    (test.outcome == LoadTestOutcome::Held && today)
        .then_some(test.mass_kg)
        .flatten()
}
