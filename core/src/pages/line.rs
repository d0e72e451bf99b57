//! One line of a page: what is there, what is missing, and why it matters.

use super::desk::PageDesk;
use super::offer::Offer;
use super::page::PageAddress;
use crate::record::Id;

/// A line of a page.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PageLine {
    /// Stable id, such as `tree.girth`: the input that changes it, where there is one.
    pub id: String,
    /// What it is about.
    pub label: String,
    /// What is known, in the reader's units; what is missing, where nothing is.
    pub words: String,
    /// Why it matters; empty where that is plain.
    pub why: String,
    /// Whether it is known.
    pub state: LineState,
}

/// Whether what a line shows is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum LineState {
    /// It is there.
    Known,
    /// Nobody looked or measured yet.
    Missing,
    /// It is there, and in doubt: several values stand, or part of it could not be seen.
    Doubtful,
}

/// A record in a list of a page, with what can be done to it.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PageRecord {
    /// The record.
    pub id: Id,
    /// What it is.
    pub words: String,
    /// What is known of it besides; may be empty.
    pub detail: String,
    /// Its own page, where it has one.
    pub go_to: Option<PageAddress>,
    /// What can be done to it.
    pub offers: Vec<Offer>,
}

/// A way to another page.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PageWay {
    /// Stable id, such as `book.gear`.
    pub id: String,
    /// The page it leads to.
    pub words: String,
    /// What waits there; may be empty.
    pub detail: String,
    /// The page.
    pub go_to: PageAddress,
}

/// A photo in a list of a page.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PagePhoto {
    /// The photo.
    pub id: Id,
    /// Its caption; what it shows, where it has none.
    pub words: String,
    /// Path of the upright copy for the whole screen.
    pub view_path: String,
    /// Path of the small copy for lists.
    pub small_path: String,
    /// The finding it shows; empty where there is none.
    pub finding: Id,
    /// What can be done to it.
    pub offers: Vec<Offer>,
}

impl PageLine {
    /// A line that is known.
    pub(super) fn known(id: &str, label: String, words: String) -> Self {
        PageLine {
            id: id.to_owned(),
            label,
            words,
            why: String::new(),
            state: LineState::Known,
        }
    }

    /// A line that nobody filled yet, and why it matters.
    pub(super) fn missing(id: &str, label: String, words: String, why: String) -> Self {
        PageLine {
            id: id.to_owned(),
            label,
            words,
            why,
            state: LineState::Missing,
        }
    }
}

impl PageDesk<'_> {
    /// The line of a note, where one was written.
    pub(super) fn note(&self, ask: &str, note: Option<&String>) -> Option<PageLine> {
        note.map(|note| self.line(ask, "", Some(note.clone())))
    }

    /// A line for an input: its label, and what is known; where nothing is, that it is missing and
    /// why it is asked.
    pub(super) fn line(&self, ask: &str, why_key: &str, known: Option<String>) -> PageLine {
        let label = self.say(&format!("input.{ask}"));
        match known {
            Some(words) => PageLine::known(ask, label, words),
            None => {
                let why = if self.words.has(why_key) {
                    self.say(why_key)
                } else {
                    String::new()
                };
                PageLine::missing(ask, label, self.say("page.missing"), why)
            }
        }
    }
}
