//! The page of the field book: its sites, its people, its gear, and this phone's settings.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::line::{LineState, PageLine};
use super::offer::Offer;
use crate::record::{Day, Id};
use crate::words::Said;
use serde_json::Value;

/// The field book.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct BookPage {
    /// Title.
    pub title: String,
    /// What a person has to be told first: damage repaired, an upgrade.
    pub notices: Vec<String>,
    /// The sites.
    pub sites: Vec<SiteOfBook>,
    /// What the book knows and lacks.
    pub lines: Vec<PageLine>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// A line of the list of sites.
#[derive(Debug, Clone, PartialEq, uniffi::Record)]
pub struct SiteOfBook {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client and the number of trees, in words.
    pub words: String,
    /// Number of trees.
    pub trees: u32,
}

/// What the page of the field book is made from.
#[derive(Debug, Clone, PartialEq)]
pub struct BookFacts {
    /// The sites: id, name, client, number of trees.
    pub sites: Vec<(Id, String, Option<String>, u32)>,
    /// This phone's settings.
    pub settings: Value,
    /// The present day.
    pub today: Day,
    /// What a person has to be told first, already worded.
    pub notices: Vec<String>,
}

/// The page of the field book.
pub fn book_page(desk: &PageDesk, facts: BookFacts) -> BookPage {
    let sites = facts
        .sites
        .into_iter()
        .map(|(id, name, client, trees)| {
            let count = desk
                .words
                .say("page.tree-count", &[("count", Said::Count(trees.into()))]);
            SiteOfBook {
                id,
                name,
                words: match client {
                    Some(client) => desk.words.say(
                        "page.client-and-trees",
                        &[
                            ("client", Said::Text(&client)),
                            ("trees", Said::Text(&count)),
                        ],
                    ),
                    None => count,
                },
                trees,
            }
        })
        .collect();
    BookPage {
        title: desk.say("page.book"),
        notices: facts.notices,
        sites,
        lines: vec![PageLine {
            id: "book.today".to_owned(),
            label: desk.say("page.today"),
            words: desk.words.day(facts.today),
            why: String::new(),
            state: LineState::Known,
        }],
        offers: vec![
            desk.offer(CommandKind::AddSite, &Id::default(), None),
            desk.offer(
                CommandKind::ChangeSettings,
                &Id::default(),
                Some(&facts.settings),
            ),
        ],
    }
}
