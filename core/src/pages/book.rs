//! The page of the field book: its sites, its people, its gear, and this phone's settings.

use serde_json::Value;

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::line::{PageLine, PageRecord};
use super::offer::Offer;
use super::page::PageAddress;
use crate::record::{Gear, Id, Person, Quantity, Skill};
use crate::words::Said;

/// The field book.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct BookPage {
    /// Title.
    pub title: String,
    /// What a person has to be told first: damage repaired, an upgrade.
    pub notices: Vec<String>,
    /// The day, and who holds the phone.
    pub lines: Vec<PageLine>,
    /// The sites.
    pub sites: Vec<SiteOfBook>,
    /// The crew, each with the training record.
    pub crew: Vec<PersonOfBook>,
    /// The gear.
    pub gear: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// A line of the list of sites.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct SiteOfBook {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client and the number of trees, in words.
    pub words: String,
    /// Number of trees.
    pub trees: u32,
    /// Its page.
    pub go_to: PageAddress,
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
    /// The sign-offs, in training order.
    pub sign_offs: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// What the page of the field book is made from, besides the desk.
#[derive(Debug, Clone, PartialEq)]
pub struct BookFacts {
    /// The sites.
    pub sites: Vec<SiteFacts>,
    /// This phone's settings, as JSON.
    pub settings: Value,
    /// Who holds the phone; empty while nobody is named.
    pub holder: Id,
}

/// One site of the book.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteFacts {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client.
    pub client: Option<String>,
    /// Number of trees.
    pub trees: u32,
}

/// The page of the field book.
pub fn book_page(desk: &PageDesk, facts: BookFacts) -> BookPage {
    let nobody = Id::default();
    let holder = (!facts.holder.is_empty()).then(|| desk.person(&facts.holder));
    let mut offers = vec![
        desk.offer(CommandKind::AddSite, &nobody, None),
        desk.offer(CommandKind::ImportSiteFile, &nobody, None),
        desk.offer(CommandKind::ReadPack, &nobody, None),
        desk.offer(CommandKind::AddPerson, &nobody, None),
        desk.offer(CommandKind::AddGear, &nobody, None),
        desk.offer(CommandKind::ChangeSettings, &nobody, Some(&facts.settings)),
        desk.offer(CommandKind::MakeBackup, &nobody, None),
    ];
    offers.extend(desk.undo_offers(&nobody));
    BookPage {
        title: desk.say("page.book"),
        notices: desk.notices.clone(),
        lines: vec![
            PageLine::known(
                "book.today",
                desk.say("page.today"),
                desk.words.day(desk.today),
            ),
            desk.line("settings.person", "settings.person.why", holder),
        ],
        sites: facts.sites.into_iter().map(|one| site(desk, one)).collect(),
        crew: desk.crew.iter().map(|one| person(desk, one)).collect(),
        gear: desk.gear.iter().map(|one| gear(desk, one)).collect(),
        offers,
    }
}

fn site(desk: &PageDesk, site: SiteFacts) -> SiteOfBook {
    let count = [("count", Said::Count(site.trees.into()))];
    let count = desk.words.say("page.tree-count", &count);
    let words = match site.client {
        Some(client) => {
            let said = [
                ("client", Said::Text(client.as_str())),
                ("trees", Said::Text(&count)),
            ];
            desk.words.say("page.client-and-trees", &said)
        }
        None => count,
    };
    SiteOfBook {
        go_to: PageAddress::Site {
            site: site.id.clone(),
        },
        id: site.id,
        name: site.name,
        words,
        trees: site.trees,
    }
}

fn person(desk: &PageDesk, person: &Person) -> PersonOfBook {
    let mut detail = Vec::new();
    if person.trainee {
        detail.push(desk.say("page.trainee"));
    }
    if let Some(mass) = person.mass_with_gear_kg {
        detail.push(desk.words.number(mass, Quantity::MassKg));
    }
    if let Some(limit_m) = person.height_limit_m {
        let limit =
            desk.words
                .number_toward(limit_m, Quantity::LengthM, crate::words::Rounding::Down);
        detail.push(
            desk.words
                .say("page.up-to", &[("height", Said::Text(&limit))]),
        );
    }
    if let Some(level) = &person.electrical {
        detail.push(desk.words.word_of(level));
    }
    let mut sign_offs: Vec<_> = person.sign_offs.iter().collect();
    let order = |skill: Skill| Skill::IN_ORDER.iter().position(|known| *known == skill);
    sign_offs.sort_by_key(|sign_off| (order(sign_off.skill), sign_off.on));
    PersonOfBook {
        id: person.id.clone(),
        name: person.name.clone(),
        detail: detail.join(" · "),
        sign_offs: sign_offs
            .into_iter()
            .map(|sign_off| PageRecord {
                id: sign_off.id.clone(),
                words: match &sign_off.knot {
                    Some(knot) => desk.words.word_of(knot),
                    None => desk.words.word_of(&sign_off.skill),
                },
                detail: desk.words.say(
                    "page.signed-off",
                    &[
                        ("by", Said::Text(&sign_off.by)),
                        ("day", Said::Day(sign_off.on)),
                    ],
                ),
                go_to: None,
                offers: vec![desk.offer(CommandKind::RemoveSignOff, &sign_off.id, None)],
            })
            .collect(),
        offers: vec![
            desk.offer(CommandKind::SignOffSkill, &person.id, None),
            desk.offer_on(CommandKind::ChangePerson, &person.id, person),
            desk.offer(CommandKind::RemovePerson, &person.id, None),
        ],
    }
}

fn gear(desk: &PageDesk, gear: &Gear) -> PageRecord {
    let mut detail = vec![desk.words.word_of(&gear.kind)];
    if let Some(rating) = gear.rating_kn {
        detail.push(desk.words.number(rating, Quantity::ForceKn));
    }
    match (&gear.out_of_use, gear.next_check, gear.last_check) {
        (Some(why), _, _) => {
            detail.push(
                desk.words
                    .say("page.out-of-use", &[("why", Said::Text(why))]),
            );
        }
        (None, Some(day), _) => {
            detail.push(
                desk.words
                    .say("page.next-check", &[("day", Said::Day(day))]),
            );
        }
        (None, None, Some(day)) => {
            detail.push(
                desk.words
                    .say("page.last-check", &[("day", Said::Day(day))]),
            );
        }
        (None, None, None) => detail.push(desk.say("page.never-checked")),
    }
    PageRecord {
        id: gear.id.clone(),
        words: gear.name.clone(),
        detail: detail.join(" · "),
        go_to: None,
        offers: vec![
            desk.offer_on(CommandKind::ChangeGear, &gear.id, gear),
            desk.offer(CommandKind::RemoveGear, &gear.id, None),
        ],
    }
}
