//! The one measurement that would narrow a judgement most, with the offer that takes it.

use super::command_kind::CommandKind as C;
use super::desk::PageDesk;
use super::line::PageRecord;
use super::looks::Looks;
use super::offer::Offer;
use super::walk::part_offers;
use crate::record::{
    AnchorPoint, ArgValue, ClimbPlan, Id, Judgement, NextMeasurement, Quantity, Reason, Site, Tree,
};
use crate::words::Said;

/// The next measurement, and what it costs; nothing where none would narrow the answer.
pub(super) fn next_measurement(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    answer: &Judgement,
) -> Option<PageRecord> {
    let next = answer.next_measurement.as_ref()?;
    let looks = Looks::of(tree, site, desk.today, &desk.rules);
    let cost = desk.words.number(next.cost_s, Quantity::DurationS);
    let cost = [("cost", Said::Text(cost.as_str()))];
    Some(PageRecord {
        id: Id(next.what.code.clone()),
        words: desk.words.reason(&next.what),
        detail: desk.words.say("page.takes-about", &cost),
        go_to: None,
        offers: offers(desk, tree, answer, &looks, next),
    })
}

/// The offers by which it is taken. What belongs to an inspection waits until one is begun today:
/// then that is the offer.
fn offers(
    desk: &PageDesk,
    tree: &Tree,
    answer: &Judgement,
    looks: &Looks,
    next: &NextMeasurement,
) -> Vec<Offer> {
    let code = next.what.code.as_str();
    match code {
        "next.species" => return vec![desk.offer_on(C::ChangeTree, &tree.id, tree)],
        "next.climber" => return climber_offer(desk, answer, looks).into_iter().collect(),
        "next.anchor-photo" | "next.anchor-tape" | "next.anchor-union" => {
            let found = anchor(looks, &answer.anchor);
            let found = found.map(|anchor| desk.offer_on(C::ChangeAnchor, &anchor.id, anchor));
            return found.into_iter().collect();
        }
        // A section that nobody made yet is the base of the stem.
        "next.section-drill" if !next.what.about.is_empty() => {
            return vec![desk.offer(C::ReadWall, &next.what.about, None)];
        }
        _ => {}
    }
    let Some(today) = looks.today else {
        return vec![desk.offer(C::StartInspection, &tree.id, None)];
    };
    let known = serde_json::to_value(today).ok();
    let with_known = |command: C| desk.offer(command, &today.id, known.as_ref());
    match code {
        "next.height" => {
            let of_height = |input: &str| input.starts_with("tree.height");
            let height =
                desk.offer_asking(C::RecordMeasures, &today.id, known.as_ref(), &of_height);
            vec![height]
        }
        "next.girth" => vec![with_known(C::RecordGirth)],
        "next.lean" => vec![desk.offer(C::RecordLeanFromTwoSides, &today.id, None)],
        "next.section-drill" => vec![desk.offer(C::AddSection, &today.id, None)],
        "next.look-again" => part_offers(desk, &today.id, looks, &term(&next.what, "part")),
        _ => Vec::new(),
    }
}

/// Weighing the climber of the plan; naming one, where the plan has none.
fn climber_offer(desk: &PageDesk, answer: &Judgement, looks: &Looks) -> Option<Offer> {
    let plan = looks
        .all(|look| &look.plans)
        .into_iter()
        .find(|plan: &&ClimbPlan| plan.id == answer.plan);
    let Some(plan) = plan else {
        let today = looks.today?;
        let known = serde_json::json!({ "anchor": answer.anchor });
        return Some(desk.offer(C::PlanClimb, &today.id, Some(&known)));
    };
    let mut crew = desk.crew.iter();
    Some(match crew.find(|person| person.id == plan.climber) {
        Some(person) => desk.offer_on(C::ChangePerson, &person.id, person),
        None => desk.offer_on(C::ChangePlan, &plan.id, plan),
    })
}

fn anchor<'a>(looks: &Looks<'a>, id: &Id) -> Option<&'a AnchorPoint> {
    let anchors = looks.all(|look| &look.anchors);
    anchors.into_iter().find(|anchor| anchor.id == *id)
}

/// The catalogue entry that an argument of a reason names.
fn term(reason: &Reason, name: &str) -> String {
    let arg = reason.args.iter().find(|arg| arg.name == name);
    match arg.map(|arg| &arg.value) {
        Some(ArgValue::Term { key }) => key.clone(),
        _ => String::new(),
    }
}
