//! Who may climb: sign-offs in training order, gear in order, and a second person who could bring
//! the climber down.

use crate::record::{
    ClimberAnswer, GearKind, Person, Quantity, Reason, RopeSystem, Skill, WayOfWorking,
};

use super::case::SiteContext;
use super::gear;
use super::plan_case::PlanCase;
use super::rules::Rule;
use super::training::is_signed_off;

/// Answers for everybody who is there.
pub(crate) fn answers(plan: &PlanCase) -> Vec<ClimberAnswer> {
    let people = plan.case.site.people();
    people
        .into_iter()
        .map(|person| climber_answer(plan, person))
        .collect()
}

/// Whether one person may climb by this plan, and why not.
pub(crate) fn climber_answer(plan: &PlanCase, person: &Person) -> ClimberAnswer {
    let mut reasons = Vec::new();
    skills(plan, person, &climbing_skills(plan), &mut reasons);
    trainee(plan, person, &mut reasons);
    gear_in_order(plan, person, &mut reasons);
    if plan.on_spurs() && !plan.case.is_removed() {
        reasons.push(Reason::new("stop.spurs-on-pruning").about(&person.id));
    }
    throw(plan, person, &mut reasons);
    let may = !reasons
        .iter()
        .any(|reason| reason.code.starts_with("stop."));
    ClimberAnswer {
        person: person.id.clone(),
        name: person.name.clone(),
        may,
        may_rescue: may_rescue(plan, person, None),
        reasons,
    }
}

/// The skills that the plan asks of its climber; each stands on those before it in training order.
fn climbing_skills(plan: &PlanCase) -> Vec<Skill> {
    let mut asked = vec![match plan.plan.map(|plan| plan.system) {
        Some(RopeSystem::StationaryCrown | RopeSystem::StationaryBase) => Skill::StationaryRope,
        // Without a plan the simplest rope system is asked.
        Some(RopeSystem::MovingRope) | None => Skill::MovingRope,
    }];
    if plan.plan.is_some_and(|plan| !plan.limbs.is_empty()) {
        asked.push(Skill::LimbWalk);
    }
    if plan.chainsaw_aloft() {
        asked.push(Skill::ChainsawAloft);
    }
    if plan.on_spurs() {
        asked.push(Skill::Spurs);
    }
    if plan.case.tree.way == Some(WayOfWorking::SectionRigged) {
        asked.push(Skill::Rigging);
    }
    asked
}

/// Every skill up to the furthest one asked, in training order; spurs and rigging stand aside and
/// are asked only where they are used.
fn skills(plan: &PlanCase, person: &Person, asked: &[Skill], reasons: &mut Vec<Reason>) {
    let ladder = |skill: &Skill| !matches!(skill, Skill::Spurs | Skill::Rigging);
    let furthest = asked.iter().filter(|skill| ladder(skill)).max();
    for skill in Skill::IN_ORDER {
        let on_the_way = ladder(&skill) && furthest.is_some_and(|furthest| skill <= *furthest);
        if (on_the_way || asked.contains(&skill))
            && !is_signed_off(person, skill, plan.case.site.as_of)
        {
            let stop = Reason::new("stop.no-sign-off").about(&person.id);
            reasons.push(
                stop.text("person", &person.name)
                    .term("skill", skill_term(skill)),
            );
        }
    }
}

/// A trainee climbs up to a height that somebody set, and nowhere without one.
fn trainee(plan: &PlanCase, person: &Person, reasons: &mut Vec<Reason>) {
    let about = |code: &str| {
        Reason::new(code)
            .about(&person.id)
            .text("person", &person.name)
    };
    let height = plan.anchor.and_then(|anchor| anchor.height_m);
    match (person.height_limit_m, height) {
        (None, _) if person.trainee => reasons.push(about("stop.trainee-no-limit")),
        (Some(limit), Some(height)) if height > limit => reasons.push(
            about("stop.above-height-limit")
                .number("limit", limit, Quantity::LengthM)
                .number("height", height, Quantity::LengthM),
        ),
        (Some(limit), None) => {
            reasons.push(about("stop.above-height-limit-unknown").number(
                "limit",
                limit,
                Quantity::LengthM,
            ));
        }
        _ => {}
    }
    if person.trainee {
        reasons.push(about("limit.trainee-within-reach"));
    }
}

/// What a climber wears and hangs on.
fn gear_in_order(plan: &PlanCase, person: &Person, reasons: &mut Vec<Reason>) {
    let site = plan.case.site;
    if site.file.gear.is_empty() {
        // Nobody entered any gear: a gap, told elsewhere.
        return;
    }
    let mut kinds = vec![
        GearKind::Harness,
        GearKind::Helmet,
        GearKind::Lanyard,
        GearKind::Connector,
        GearKind::HitchCord,
    ];
    if plan.chainsaw_aloft() {
        // Two attachments while a chainsaw runs aloft.
        kinds.push(GearKind::SecondAttachment);
    }
    if plan.on_spurs() {
        kinds.push(GearKind::Spurs);
    }
    for kind in kinds {
        if let Err(fault) = gear::best_of_kind(site, person, kind, 0, |_| None) {
            reasons.push(fault);
        }
    }
    let needed_m = plan.rope().map(|rope| rope.length_m);
    let long_enough = |line: &crate::record::Gear| {
        let needed = needed_m?;
        let about = |code: &str| Reason::new(code).about(&line.id).text("gear", &line.name);
        match line.length_m {
            None => {
                Some(about("stop.line-length-unknown").number("needed", needed, Quantity::LengthM))
            }
            Some(length) if length < needed => Some(
                about("stop.line-short")
                    .number("length", length, Quantity::LengthM)
                    .number("needed", needed, Quantity::LengthM),
            ),
            Some(_) => None,
        }
    };
    let line = gear::best_of_kind(site, person, GearKind::ClimbingLine, 0, long_enough);
    if let Err(fault) = line {
        reasons.push(fault);
    }
}

/// How high the line has to be thrown, against what this person reaches.
fn throw(plan: &PlanCase, person: &Person, reasons: &mut Vec<Reason>) {
    let Some(rope) = plan.rope() else { return };
    let rules = plan.case.site.rules;
    let reach_m = person
        .throw_m
        .unwrap_or_else(|| rules.number(Rule::GearThrowRoutineM));
    if rope.throw_m > reach_m {
        let code = if rope.throw_m > rules.number(Rule::GearThrowGoodHandM) {
            "limit.throw-beyond-a-good-hand"
        } else {
            "limit.throw-beyond-reach"
        };
        let limit = Reason::new(code)
            .about(&person.id)
            .text("person", &person.name);
        reasons.push(limit.number("reach", reach_m, Quantity::LengthM).number(
            "height",
            rope.throw_m,
            Quantity::LengthM,
        ));
    }
}

/// Whether a person counts as second: signed off for aerial rescue with all that comes before it,
/// no trainee, geared beside the climber, and able to reach the anchor.
fn may_rescue(plan: &PlanCase, person: &Person, climber: Option<&Person>) -> bool {
    let mut reasons = Vec::new();
    let mut asked = vec![Skill::AerialRescue];
    asked.extend(climbing_skills(plan).into_iter().filter(|skill| {
        // Who brings somebody down comes up on the rope, without saw, spurs or rigging.
        matches!(skill, Skill::MovingRope | Skill::StationaryRope)
    }));
    skills(plan, person, &asked, &mut reasons);
    trainee(plan, person, &mut reasons);
    let site = plan.case.site;
    for kind in [
        GearKind::Harness,
        GearKind::Helmet,
        GearKind::Lanyard,
        GearKind::Connector,
    ] {
        let taken = climber.map_or(0, |climber| taken_by(site, climber, kind));
        if !site.file.gear.is_empty()
            && let Err(fault) = gear::best_of_kind(site, person, kind, taken, |_| None)
        {
            reasons.push(fault);
        }
    }
    !person.trainee
        && !reasons
            .iter()
            .any(|reason| reason.code.starts_with("stop."))
}

/// Whether somebody stands ready: the second person of the plan, else anybody there beside the
/// climber. The climber's pieces of the common stock are gone.
pub(crate) fn second_stands_ready(plan: &PlanCase) -> bool {
    let climbers: Vec<&Person> = match plan.climber {
        Some(climber) => vec![climber],
        None => {
            let people = plan.case.site.people();
            let may = |p: &&Person| plan.climbers.iter().any(|a| a.person == p.id && a.may);
            people.into_iter().filter(may).collect()
        }
    };
    let named = plan.plan.is_some_and(|plan| !plan.second.is_empty());
    let seconds: Vec<&Person> = if named {
        plan.second.into_iter().collect()
    } else {
        plan.case.site.people()
    };
    seconds.iter().any(|second| {
        climbers
            .iter()
            .any(|climber| climber.id != second.id && may_rescue(plan, second, Some(climber)))
    })
}

/// How many pieces of the common stock the climber takes: one, unless they have their own.
fn taken_by(site: &SiteContext, climber: &Person, kind: GearKind) -> usize {
    let mut gear = site.file.gear.iter();
    let owns = gear.any(|piece| piece.kind == kind && piece.used_by == climber.id);
    usize::from(!owns)
}

/// The catalogue's word for a skill.
pub(crate) fn skill_term(skill: Skill) -> &'static str {
    match skill {
        Skill::Inspection => "skill.inspection",
        Skill::GearCheck => "skill.gear-check",
        Skill::ElectricalAwareness => "skill.electrical-awareness",
        Skill::FirstAid => "skill.first-aid",
        Skill::Knot => "skill.knot",
        Skill::FrictionHitch => "skill.friction-hitch",
        Skill::MovingRope => "skill.moving-rope",
        Skill::ThrowLine => "skill.throw-line",
        Skill::LimbWalk => "skill.limb-walk",
        Skill::AerialRescue => "skill.aerial-rescue",
        Skill::StationaryRope => "skill.stationary-rope",
        Skill::ChainsawAloft => "skill.chainsaw-aloft",
        Skill::Spurs => "skill.spurs",
        Skill::Rigging => "skill.rigging",
    }
}
