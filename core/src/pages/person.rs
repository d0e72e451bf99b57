//! The page of a person: the training record in its order, knots by what they are for, and the log
//! of climbs.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{PageLine, PageRecord};
use super::offer::{InputKind, Offer};
use super::people::up_to;
use crate::judge::rules::{Rule, RuleSet};
use crate::judge::{CLIMBING_KNOTS, is_signed_off, knows_knot};
use crate::record::{Id, KnotUse, LoggedClimb, Person, Quantity, SignOff, Skill};
use crate::words::Said;

/// A person of the crew.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PersonPage {
    /// The person.
    pub id: Id,
    /// The name.
    pub title: String,
    /// What has to be settled by a person.
    pub unsettled: Vec<PageRecord>,
    /// The person's own facts.
    pub lines: Vec<PageLine>,
    /// How far the training has come, and what comes next.
    pub training: String,
    /// The skills, in training order.
    pub skills: Vec<SkillOfPerson>,
    /// The aim for tying a knot, which nothing depends on.
    pub knots_lead: String,
    /// The knots, by what they are for.
    pub knots: Vec<KnotOfPerson>,
    /// What the log of climbs is for; empty where none is kept.
    pub climbs_lead: String,
    /// The log of climbs, the newest first.
    pub climbs: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// One skill of the training record.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SkillOfPerson {
    /// The skill.
    pub skill: Skill,
    /// Its name.
    pub words: String,
    /// How it stands.
    pub state: TrainingState,
    /// Who confirmed it and when; what is missing where nobody did.
    pub detail: String,
    /// Its sign-offs.
    pub sign_offs: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// One knot of the training record.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct KnotOfPerson {
    /// What it is for.
    pub knot: KnotUse,
    /// The same in words.
    pub words: String,
    /// How it stands.
    pub state: TrainingState,
    /// Who confirmed it, when, and the time it took.
    pub detail: String,
    /// Its sign-offs.
    pub sign_offs: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// How a skill stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum TrainingState {
    /// Confirmed, and holds today.
    Confirmed,
    /// It was confirmed; it has ended, or has not begun yet.
    Lapsed,
    /// Not confirmed, and next in training order.
    Next,
    /// Not confirmed; others come first.
    Later,
}

/// The page of a person.
pub fn person_page(desk: &PageDesk, person: &Person, rules: &RuleSet) -> PersonPage {
    let aim = rules.number(Rule::GearKnotAimS);
    let keeps_log = person.trainee || !person.climbs.is_empty();
    PersonPage {
        id: person.id.clone(),
        title: person.name.clone(),
        unsettled: desk.unsettled_records(),
        lines: lines(desk, person),
        training: training_words(desk, person),
        skills: skills(desk, person),
        knots_lead: desk.words.say(
            "page.knots-lead",
            &[("aim", Said::Number(aim, Quantity::DurationS))],
        ),
        knots: knots(desk, person),
        climbs_lead: if keeps_log {
            desk.say("page.climbs-lead")
        } else {
            String::new()
        },
        climbs: climbs(desk, person),
        offers: offers(desk, person, keeps_log),
        headings: Vec::new(),
    }
}

/// The first skill in training order that is not confirmed today.
fn next_skill(desk: &PageDesk, person: &Person) -> Option<Skill> {
    let missing = |skill: &Skill| !is_signed_off(person, *skill, desk.today);
    Skill::IN_ORDER.into_iter().find(missing)
}

/// How many skills are confirmed, and what comes next.
pub(super) fn training_words(desk: &PageDesk, person: &Person) -> String {
    let confirmed = |skill: &Skill| is_signed_off(person, *skill, desk.today);
    let done = Skill::IN_ORDER.into_iter().filter(confirmed).count() as i64;
    let of = Skill::IN_ORDER.len() as i64;
    let counts = [("done", Said::Count(done)), ("of", Said::Count(of))];
    match next_skill(desk, person) {
        Some(next) => {
            let next = desk.words.word_of(&next);
            let mut said = counts.to_vec();
            said.push(("next", Said::Text(&next)));
            desk.words.say("page.training-next", &said)
        }
        None => desk.words.say("page.training-all", &counts),
    }
}

fn lines(desk: &PageDesk, person: &Person) -> Vec<PageLine> {
    let words = &desk.words;
    let yes_no = |yes: bool| desk.say(if yes { "page.yes" } else { "page.no" });
    let number = |value: Option<f64>, quantity| value.map(|value| words.number(value, quantity));
    let mut lines = vec![desk.line("person.trainee", "", Some(yes_no(person.trainee)))];
    // Only a trainee has to have a limit.
    if person.trainee || person.height_limit_m.is_some() {
        lines.push(desk.line(
            "person.height_limit",
            "person.height_limit_m.why",
            person.height_limit_m.map(|limit| up_to(desk, limit)),
        ));
    }
    lines.push(desk.line(
        "person.mass",
        "person.mass_with_gear_kg.why",
        number(person.mass_with_gear_kg, Quantity::MassKg),
    ));
    lines.push(desk.line(
        "person.throw",
        "person.throw_m.why",
        number(person.throw_m, Quantity::LengthM),
    ));
    lines.push(desk.line(
        "person.electrical",
        "person.electrical.why",
        person.electrical.map(|level| words.word_of(&level)),
    ));
    lines
}

fn skills(desk: &PageDesk, person: &Person) -> Vec<SkillOfPerson> {
    let next = next_skill(desk, person);
    Skill::IN_ORDER
        .into_iter()
        .map(|skill| {
            let of_skill = |sign: &&SignOff| sign.skill == skill;
            let signs: Vec<&SignOff> = person.sign_offs.iter().filter(of_skill).collect();
            let holds = is_signed_off(person, skill, desk.today);
            let state = state_of(holds, !signs.is_empty(), next == Some(skill));
            // Knots are confirmed one by one, below.
            let is_knots = skill == Skill::Knot;
            SkillOfPerson {
                skill,
                words: desk.words.label_of(&skill),
                state,
                detail: match state {
                    _ if is_knots => knots_detail(desk, person, state),
                    TrainingState::Confirmed | TrainingState::Lapsed => signed(desk, &signs),
                    TrainingState::Next => desk.say("page.skill-next"),
                    TrainingState::Later => desk.say("page.skill-later"),
                },
                sign_offs: if is_knots {
                    Vec::new()
                } else {
                    sign_off_records(desk, &signs)
                },
                offers: if is_knots {
                    Vec::new()
                } else {
                    vec![sign_off_offer(desk, person, skill, None)]
                },
            }
        })
        .collect()
}

fn state_of(holds: bool, was_signed: bool, is_next: bool) -> TrainingState {
    match (holds, was_signed, is_next) {
        (true, _, _) => TrainingState::Confirmed,
        (false, _, true) => TrainingState::Next,
        (false, true, false) => TrainingState::Lapsed,
        (false, false, false) => TrainingState::Later,
    }
}

/// The knots that a climber needs and that are still to be confirmed.
fn knots_detail(desk: &PageDesk, person: &Person, state: TrainingState) -> String {
    if state == TrainingState::Confirmed {
        return desk.say("page.knots-known");
    }
    let missing: Vec<String> = CLIMBING_KNOTS
        .into_iter()
        .filter(|knot| !knows_knot(person, *knot, desk.today))
        .map(|knot| desk.words.word_of(&knot))
        .collect();
    let missing = missing.join(", ");
    desk.words
        .say("page.knots-missing", &[("knots", Said::Text(&missing))])
}

fn knots(desk: &PageDesk, person: &Person) -> Vec<KnotOfPerson> {
    KnotUse::ALL
        .into_iter()
        .map(|knot| {
            let of_knot = |sign: &&SignOff| {
                sign.skill == Skill::Knot && sign.knot.is_none_or(|own| own == knot)
            };
            let signs: Vec<&SignOff> = person.sign_offs.iter().filter(of_knot).collect();
            let holds = knows_knot(person, knot, desk.today);
            let needed = CLIMBING_KNOTS.contains(&knot);
            KnotOfPerson {
                knot,
                words: desk.words.label_of(&knot),
                state: state_of(holds, !signs.is_empty(), needed),
                detail: match (signs.is_empty(), needed) {
                    (false, _) => signed(desk, &signs),
                    (true, true) => desk.say("page.knot-needed"),
                    (true, false) => desk.say("page.knot-later"),
                },
                sign_offs: sign_off_records(desk, &signs),
                offers: vec![sign_off_offer(desk, person, Skill::Knot, Some(knot))],
            }
        })
        .collect()
}

/// The last sign-off in words.
fn signed(desk: &PageDesk, signs: &[&SignOff]) -> String {
    let last = signs.iter().max_by_key(|sign| sign.on);
    last.map_or_else(String::new, |sign| sign_off_words(desk, sign))
}

/// Who confirmed it, when, until when, and the time it took.
fn sign_off_words(desk: &PageDesk, sign: &SignOff) -> String {
    let mut parts = vec![desk.words.say(
        "page.signed-off",
        &[("by", Said::Text(&sign.by)), ("day", Said::Day(sign.on))],
    )];
    if let Some(seconds) = sign.seconds {
        let time = desk.words.number(seconds, Quantity::DurationS);
        parts.push(
            desk.words
                .say("page.tied-in", &[("time", Said::Text(&time))]),
        );
    }
    if sign.on > desk.today {
        parts.push(desk.say("page.not-yet"));
    }
    if let Some(day) = sign.until {
        let key = if day < desk.today {
            "page.ended-on"
        } else {
            "page.holds-until"
        };
        parts.push(desk.words.say(key, &[("day", Said::Day(day))]));
    }
    parts.join(" · ")
}

fn sign_off_records(desk: &PageDesk, signs: &[&SignOff]) -> Vec<PageRecord> {
    signs
        .iter()
        .map(|sign| PageRecord {
            id: sign.id.clone(),
            words: sign_off_words(desk, sign),
            detail: String::new(),
            go_to: None,
            offers: vec![desk.offer(CommandKind::RemoveSignOff, &sign.id, None)],
        })
        .collect()
}

/// The offer to confirm one skill or knot: which one is part of what it is about.
fn sign_off_offer(desk: &PageDesk, person: &Person, skill: Skill, knot: Option<KnotUse>) -> Offer {
    let id = |value: serde_json::Value| value.as_str().unwrap_or_default().to_owned();
    let mut about = format!("{}/{}", person.id, id(serde_json::json!(skill)));
    if let Some(knot) = knot {
        about = format!("{about}/{}", id(serde_json::json!(knot)));
    }
    // Whoever holds the phone confirms, unless it is the person's own skill.
    let by = desk.holder_name().filter(|_| desk.holder != person.id);
    let ready = by.map(|by| serde_json::json!({ "by": by }));
    let mut offer = desk.offer(CommandKind::SignOffSkill, &Id(about), ready.as_ref());
    without_own_name(&mut offer, person);
    offer.inputs.retain(|input| match input.id.as_str() {
        "sign_off.skill" | "sign_off.knot" => false,
        "sign_off.seconds" => knot.is_some(),
        _ => true,
    });
    offer
}

/// Nobody confirms an own skill or climbs with nobody: the own name is not suggested.
fn without_own_name(offer: &mut Offer, person: &Person) {
    for input in &mut offer.inputs {
        if let InputKind::Words { suggested, .. } = &mut input.kind {
            suggested.retain(|name| *name != person.name);
        }
    }
}

fn climbs(desk: &PageDesk, person: &Person) -> Vec<PageRecord> {
    let mut climbs: Vec<&LoggedClimb> = person.climbs.iter().collect();
    climbs.sort_by_key(|climb| std::cmp::Reverse(climb.on));
    climbs
        .into_iter()
        .map(|climb| {
            let height = desk.words.number(climb.height_m, Quantity::LengthM);
            let above = person.height_limit_m.is_some_and(|l| climb.height_m > l);
            let with = [("who", Said::Text(climb.with_whom.as_str()))];
            let parts = [
                Some(height),
                above.then(|| desk.say("page.above-limit")),
                Some(desk.words.word_of(&climb.system)),
                Some(desk.words.say("page.climbed-with", &with)),
                climb.note.clone(),
            ];
            PageRecord {
                id: climb.id.clone(),
                words: desk.words.say(
                    "page.climb-at",
                    &[
                        ("day", Said::Day(climb.on)),
                        ("place", Said::Text(&climb.place)),
                    ],
                ),
                detail: parts.into_iter().flatten().collect::<Vec<_>>().join(" · "),
                go_to: None,
                offers: vec![
                    desk.offer_on(CommandKind::ChangeClimb, &climb.id, climb),
                    desk.offer(CommandKind::RemoveClimb, &climb.id, None),
                ],
            }
        })
        .collect()
}

fn offers(desk: &PageDesk, person: &Person, keeps_log: bool) -> Vec<Offer> {
    let id = &person.id;
    let mut offers = Vec::new();
    if keeps_log {
        let mut log = desk.offer(CommandKind::LogClimb, id, None);
        without_own_name(&mut log, person);
        offers.push(log);
    }
    offers.push(desk.offer_on(CommandKind::ChangePerson, id, person));
    offers.push(desk.offer(CommandKind::RemovePerson, id, None));
    offers.extend(desk.undo_offers(&Id::default()));
    offers
}
