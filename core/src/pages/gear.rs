//! The page of the gear: what must not be used comes first, each with its reason.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::PageRecord;
use super::offer::Offer;
use crate::judge::rules::RuleSet;
use crate::judge::{gear_fault, next_check};
use crate::record::{Gear, Id, Quantity};
use crate::words::Said;

/// The gear.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct GearPage {
    /// Title.
    pub title: String,
    /// What to do while none is entered; else how many pieces must not be used, and that all are in
    /// order where they are.
    pub lead: String,
    /// What has to be settled by a person.
    pub unsettled: Vec<PageRecord>,
    /// The pieces: out of date or not to be used, out of use, in order.
    pub pieces: Vec<GearOfBook>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A piece of gear.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct GearOfBook {
    /// The piece.
    pub id: Id,
    /// Its name or mark.
    pub name: String,
    /// How it stands.
    pub state: GearState,
    /// The same in words.
    pub state_words: String,
    /// Why it must not be used, and what to do; empty where it may.
    pub reason: String,
    /// Kind, rating, size, checks, who uses it.
    pub detail: String,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// How a piece of gear stands today.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum GearState {
    /// Its check is due, or something else bars its use.
    NotToBeUsed,
    /// Somebody put it out of use.
    OutOfUse,
    /// It may be used.
    InOrder,
}

/// The page of the gear.
pub fn gear_page(desk: &PageDesk, rules: &RuleSet) -> GearPage {
    let nobody = Id::default();
    let mut pieces: Vec<GearOfBook> = desk
        .gear
        .iter()
        .map(|gear| piece(desk, gear, rules))
        .collect();
    pieces.sort_by_key(|piece| piece.state);
    let mut offers = vec![desk.offer(CommandKind::AddGear, &nobody, None)];
    offers.extend(desk.undo_offers(&nobody));
    GearPage {
        title: desk.say("page.gear"),
        lead: gear_words(desk, rules),
        unsettled: desk.unsettled_records(),
        pieces,
        offers,
        headings: Vec::new(),
    }
}

/// How many pieces must not be used today; what to do while there is none.
pub(super) fn gear_words(desk: &PageDesk, rules: &RuleSet) -> String {
    if desk.gear.is_empty() {
        return desk.say("page.gear-lead");
    }
    let barred = |gear: &&Gear| gear_fault(gear, rules, desk.today).is_some();
    let count = desk.gear.iter().filter(barred).count() as i64;
    desk.words
        .say("page.gear-barred", &[("count", Said::Count(count))])
}

fn piece(desk: &PageDesk, gear: &Gear, rules: &RuleSet) -> GearOfBook {
    let fault = gear_fault(gear, rules, desk.today);
    let out = gear.out_of_use.is_some();
    let (state, key) = match (out, &fault) {
        (true, _) => (GearState::OutOfUse, "page.gear-out-of-use"),
        (false, Some(_)) => (GearState::NotToBeUsed, "page.gear-not-to-be-used"),
        (false, None) => (GearState::InOrder, "page.gear-in-order"),
    };
    GearOfBook {
        id: gear.id.clone(),
        name: gear.name.clone(),
        state,
        state_words: desk.say(key),
        reason: fault.map_or_else(String::new, |fault| desk.words.reason(&fault)),
        detail: detail(desk, gear, rules),
        offers: offers(desk, gear, out),
    }
}

fn detail(desk: &PageDesk, gear: &Gear, rules: &RuleSet) -> String {
    let words = &desk.words;
    let number = |value: Option<f64>, quantity| value.map(|value| words.number(value, quantity));
    let on = |key: &str, day: Option<crate::record::Day>| {
        day.map(|day| words.say(key, &[("day", Said::Day(day))]))
    };
    let user = (!gear.used_by.is_empty()).then(|| {
        let name = desk.person(&gear.used_by);
        words.say("page.used-by", &[("name", Said::Text(&name))])
    });
    let parts = [
        Some(words.word_of(&gear.kind)),
        number(gear.rating_kn, Quantity::ForceKn),
        number(gear.diameter_mm, Quantity::LengthMm),
        number(gear.length_m, Quantity::LengthM),
        on("page.first-use", gear.first_use),
        on("page.last-check", gear.last_check),
        on("page.next-check", next_check(gear, rules)),
        user,
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

fn offers(desk: &PageDesk, gear: &Gear, out: bool) -> Vec<Offer> {
    let id = &gear.id;
    let check = desk.offer(CommandKind::CheckGear, id, None);
    let turn = if out {
        desk.offer(CommandKind::BringGearBack, id, None)
    } else {
        desk.offer(CommandKind::PutGearOut, id, None)
    };
    vec![
        desk.unless(check, out, "page.bring-back-first"),
        turn,
        desk.offer_on(CommandKind::ChangeGear, id, gear),
        desk.offer(CommandKind::RemoveGear, id, None),
    ]
}
