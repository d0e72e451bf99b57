//! The page of the crew: one line a person, with how far the training has come.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::offer::Offer;
use super::page::PageAddress;
use super::person::training_words;
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
                go_to: PageAddress::Person {
                    person: person.id.clone(),
                },
            })
            .collect(),
        offers,
        headings: Vec::new(),
    }
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
