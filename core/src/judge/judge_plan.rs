//! The judgement of one way up: what bars it, what is missing, what limits it, and its score.

use crate::record::{
    ClimberAnswer, Id, NextMeasurement, PartMargin, Quantity, Reason, RopeNeed, Score, Verdict,
    WireAnswer,
};

use super::clearance::Wires;
use super::plan_case::PlanCase;
use super::rules::{Rule, RuleSet};
use super::score::{Sampled, ScoreModel};
use super::sensitivity::next_measurement;
use super::stem::SectionFacts;
use super::working::Working;
use super::{caps, gaps, remarks, stops};

/// What one way up came to.
#[derive(Default)]
pub(crate) struct PlanAnswer {
    pub plan: Id,
    pub anchor: Id,
    pub stops: Vec<Reason>,
    pub gaps: Vec<Reason>,
    pub refer_caps: Vec<Reason>,
    pub limit_caps: Vec<Reason>,
    pub limits: Vec<Reason>,
    pub remarks: Vec<Reason>,
    pub score: Option<Score>,
    /// The verdict of the score's 10 % end, before caps.
    pub by_score: Option<Verdict>,
    pub margins: Vec<PartMargin>,
    pub climbers: Vec<ClimberAnswer>,
    pub rope: Option<RopeNeed>,
    pub wires: Vec<WireAnswer>,
    pub next: Option<NextMeasurement>,
    pub working: Working,
}

/// Judges one way up.
pub(crate) fn judge_plan(plan: &PlanCase) -> PlanAnswer {
    let wires = Wires::of(plan.case, Some(plan));
    let facts = SectionFacts::all(plan.case);
    let mut answer = PlanAnswer {
        plan: plan.plan.map(|made| made.id.clone()).unwrap_or_default(),
        anchor: plan
            .anchor
            .map(|anchor| anchor.id.clone())
            .unwrap_or_default(),
        stops: stops::of_plan(plan),
        gaps: gaps::of_plan(plan),
        refer_caps: caps::refer(plan),
        limit_caps: caps::limited(plan),
        remarks: remarks::of_plan(plan),
        climbers: plan.climbers.clone(),
        rope: plan.rope(),
        ..PlanAnswer::default()
    };
    answer
        .refer_caps
        .extend(caps::refer_for_walls(plan, &facts));
    answer.stops.extend(wires.stops);
    answer.limit_caps.extend(wires.limits);
    answer.gaps.extend(wires.gaps);
    answer.remarks.extend(wires.remarks);
    answer.wires = wires.answers;
    answer.working = wires.working;
    explain_rope(plan, &mut answer.working);
    if let Some(climber) = plan.climber {
        let own = plan
            .climbers
            .iter()
            .find(|answer| answer.person == climber.id);
        let limits = own.into_iter().flat_map(|own| own.reasons.iter());
        answer
            .limits
            .extend(limits.filter(|r| r.code.starts_with("limit.")).cloned());
    }
    strength_losses(plan, &facts, &mut answer);
    super::section_working::explain(&facts, &mut answer.working);
    if let Some(model) = ScoreModel::of(plan, &facts) {
        score(plan, &facts, &model, &mut answer);
    }
    answer
}

fn explain_rope(plan: &PlanCase, lines: &mut Working) {
    let (Some(rope), Some(made)) = (plan.rope(), plan.plan) else {
        return;
    };
    let reserve_m = plan.case.site.rules.number(Rule::GearRopeReserveM);
    lines
        .line(
            "work.rope-length",
            "legs · A + reserve",
            rope.length_m,
            Quantity::LengthM,
        )
        .about(&made.id)
        .input(
            "legs",
            (rope.length_m - reserve_m) / rope.throw_m,
            Quantity::Ratio,
        )
        .input("A", rope.throw_m, Quantity::LengthM)
        .input("reserve", reserve_m, Quantity::LengthM)
        .source("Geometry of the rope system; reserve: Bolewalk house value");
}

/// Strength lost by any published formula or by modulus.
fn strength_losses(plan: &PlanCase, facts: &[SectionFacts], answer: &mut PlanAnswer) {
    let most = plan.case.site.rules.number(Rule::StopStrengthLossPct);
    for section in facts {
        let loss = section.worst_loss_pct();
        if loss >= most {
            answer.stops.push(
                Reason::new("stop.strength-loss")
                    .about(&section.id)
                    .number("loss", loss, Quantity::Percent)
                    .number("height", section.height_m, Quantity::LengthM),
            );
        }
    }
}

fn score(plan: &PlanCase, facts: &[SectionFacts], model: &ScoreModel, answer: &mut PlanAnswer) {
    let rules = plan.case.site.rules;
    central_margins(model, rules, answer);
    let sampled = model.sample(plan.case.site.draws);
    if sampled.test_disagrees {
        let gap = Reason::new("gap.test-and-readings-disagree");
        answer.gaps.push(gap.about(&answer.anchor));
    }
    case_margins(&sampled, rules, answer);
    answer.score = model.score(&sampled);
    answer.by_score = answer
        .score
        .as_ref()
        .map(|score| by_score(score.low, rules));
    answer.next = next_measurement(plan, model, facts, &sampled);
    model.explain(plan, &mut answer.working);
    let x = model.inputs.central();
    answer.remarks.extend(model.anchor.test_remark(&x));
    if !model.anchor.is_tested() {
        let remark = Reason::new("remark.load-test-first");
        answer.remarks.insert(0, remark.about(&answer.anchor));
    }
    answer.margins = sampled.margins;
}

/// A central margin at the stop or below bars, at the anchor and at the stem under it.
fn central_margins(model: &ScoreModel, rules: &RuleSet, answer: &mut PlanAnswer) {
    let stop = rules.number(Rule::MarginStopAt);
    let (anchor, stems) = model.central_margins();
    if anchor <= stop {
        answer.stops.push(
            Reason::new("stop.anchor-margin")
                .about(&answer.anchor)
                .number("margin", anchor, Quantity::Ratio),
        );
    }
    for (id, height_m, margin) in stems {
        if margin <= stop {
            answer.stops.push(
                Reason::new("stop.stem-margin")
                    .about(&id)
                    .number("height", height_m, Quantity::LengthM)
                    .number("margin", margin, Quantity::Ratio),
            );
        }
    }
}

/// Rescue and slip at their 10 % ends.
fn case_margins(sampled: &Sampled, rules: &RuleSet, answer: &mut PlanAnswer) {
    let low = |part: &str| {
        let mut margins = sampled.margins.iter();
        margins
            .find(|margin| margin.part == part)
            .map_or(f64::INFINITY, |m| m.low)
    };
    let rescue = low("margin.rescue");
    if rescue < rules.number(Rule::MarginRescueBarsBelow) {
        answer
            .stops
            .push(Reason::new("stop.rescue-margin").about(&answer.anchor));
    } else if rescue < rules.number(Rule::MarginRescueLimitsBelow) {
        answer
            .limit_caps
            .push(Reason::new("cap.rescue-own-anchor").about(&answer.anchor));
    }
    if low("margin.slip") < rules.number(Rule::MarginSlipLimitsBelow) {
        answer
            .limit_caps
            .push(Reason::new("cap.no-slack").about(&answer.anchor));
    }
}

fn by_score(low: u32, rules: &RuleSet) -> Verdict {
    let low = f64::from(low);
    if low >= rules.number(Rule::ScoreNoStopFrom) {
        Verdict::NoStop
    } else if low >= rules.number(Rule::ScoreLimitedFrom) {
        Verdict::Limited
    } else {
        Verdict::Refer
    }
}
