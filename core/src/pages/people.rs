//! The page of the crew: one line a person, with how far the training has come.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::offer::Offer;
use super::page::PageAddress;
use super::person::training_words;
use super::settings::people_count;
use crate::judge::{Lapse, lapses};
use crate::record::{Id, Person, Quantity};
use crate::words::{Rounding, Said};

/// The crew.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PeoplePage {
    /// Title.
    pub title: String,
    /// What to do while nobody is entered; empty else.
    pub lead: String,
    /// The people.
    pub people: Vec<PersonOfBook>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A person of the crew.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PersonOfBook {
    /// The person.
    pub id: Id,
    /// The name.
    pub name: String,
    /// Trainee, mass, limits, in words.
    pub detail: String,
    /// How far the training has come, and what comes next.
    pub training: String,
    /// The sign-offs that have lapsed or soon will, each in a sentence.
    pub lapses: Vec<String>,
    /// The person's page.
    pub go_to: PageAddress,
}

/// The page of the crew.
pub fn people_page(desk: &PageDesk) -> PeoplePage {
    let nobody = Id::default();
    let mut offers = vec![desk.offer(CommandKind::AddPerson, &nobody, None)];
    offers.extend(desk.undo_offers(&nobody));
    let lead = if desk.crew.is_empty() {
        desk.say("page.people-lead")
    } else {
        String::new()
    };
    PeoplePage {
        title: desk.say("page.people"),
        lead,
        people: desk
            .crew
            .iter()
            .map(|person| PersonOfBook {
                id: person.id.clone(),
                name: person.name.clone(),
                detail: person_detail(desk, person),
                training: training_words(desk, person),
                lapses: lapses(person, desk.today, LAPSE_SOON_DAYS)
                    .iter()
                    .map(|lapse| lapse_words(desk, lapse))
                    .collect(),
                go_to: PageAddress::Person {
                    person: person.id.clone(),
                },
            })
            .collect(),
        offers,
        headings: Vec::new(),
    }
}

/// A sign-off that lapses within so many days is told ahead (house).
const LAPSE_SOON_DAYS: u64 = 30;

/// What has lapsed, or until when it holds.
fn lapse_words(desk: &PageDesk, lapse: &Lapse) -> String {
    let key = match lapse.until < desk.today {
        true => "page.sign-off-lapsed",
        false => "page.sign-off-lapses",
    };
    let what = match lapse.knot {
        Some(knot) => desk.words.label_of(&knot),
        None => desk.words.label_of(&lapse.skill),
    };
    let said = [
        ("skill", Said::Text(&what)),
        ("day", Said::Day(lapse.until)),
    ];
    desk.words.say(key, &said)
}

/// How many people there are, and how many sign-offs have lapsed or soon will.
pub(super) fn people_words(desk: &PageDesk) -> String {
    let mut crew = desk.crew.iter();
    let said = crew
        .by_ref()
        .flat_map(|person| lapses(person, desk.today, LAPSE_SOON_DAYS));
    let (lapsed, soon): (Vec<Lapse>, Vec<Lapse>) = said.partition(|one| one.until < desk.today);
    let count = |key: &str, count: usize| {
        let said = [("count", Said::Count(count as i64))];
        (count > 0).then(|| desk.words.say(key, &said))
    };
    let parts = [
        Some(people_count(desk)),
        count("page.sign-offs-lapsed", lapsed.len()),
        count("page.sign-offs-lapse", soon.len()),
    ];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// Trainee, mass, limits, in words.
fn person_detail(desk: &PageDesk, person: &Person) -> String {
    let words = &desk.words;
    let trainee = person.trainee.then(|| desk.say("page.trainee"));
    let mass = person
        .mass_with_gear_kg
        .map(|kg| words.number(kg, Quantity::MassKg));
    let limit = person.height_limit_m.map(|limit| up_to(desk, limit));
    let level = person.electrical.map(|level| words.word_of(&level));
    let parts = [trainee, mass, limit, level];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

/// A height limit, never printed higher than it is.
pub(super) fn up_to(desk: &PageDesk, limit_m: f64) -> String {
    let words = &desk.words;
    let limit = words.number_toward(limit_m, Quantity::LengthM, Rounding::Down);
    words.say("page.up-to", &[("height", Said::Text(&limit))])
}
