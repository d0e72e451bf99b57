//! What a page lets the person do, with the rules of each input in the reader's units.

use super::command_kind::CommandKind;
use super::drawn::DrawingAddress;
use super::entry::{Entry, EntryValue};

/// Something that the person can do here.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct Offer {
    /// Stable id of the button, such as `tree.add`.
    pub id: String,
    /// The command.
    pub command: CommandKind,
    /// The record it acts on or in; empty for the book itself.
    pub about: String,
    /// What the button says.
    pub words: String,
    /// Whether it can be done now.
    pub enabled: bool,
    /// Why not, and what to do first; empty when it can be done.
    pub why_not: String,
    /// What it asks, in order. An offer that asks nothing is taken at one tap.
    pub inputs: Vec<OfferedInput>,
    /// Entries that nobody is asked for: they go with the act before what was entered.
    pub fixed: Vec<Entry>,
    /// Whether this is what stands now, where it is one of several answers.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub chosen: bool,
    /// Handed back with the act: the same token twice does nothing the second time.
    pub token: String,
}

/// One input of an offer.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct OfferedInput {
    /// Stable id, such as `tree.girth`.
    pub id: String,
    /// Its label.
    pub words: String,
    /// Why it is asked; empty where that is plain.
    pub help: String,
    /// Whether the command needs it.
    pub needed: bool,
    /// What is asked.
    pub kind: InputKind,
    /// What is there now, in the form in which it would be entered.
    pub current: Option<EntryValue>,
}

/// What an input asks.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Enum)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum InputKind {
    /// A number, in the reader's unit.
    Number {
        /// The smallest value.
        min: f64,
        /// The largest value.
        max: f64,
        /// The step of a dial or a button.
        step: f64,
        /// The unit's symbol; empty where there is none.
        unit: String,
        /// The range in words.
        range: String,
        /// Whether only whole numbers fit.
        whole: bool,
    },
    /// One choice.
    Choice {
        /// The choices, in order.
        choices: Vec<OfferedChoice>,
    },
    /// Any number of choices.
    Choices {
        /// The choices, in order.
        choices: Vec<OfferedChoice>,
    },
    /// A text.
    Words {
        /// Most letters.
        most: u32,
        /// What was entered here before, to be tapped instead of typed.
        suggested: Vec<String>,
    },
    /// One choice of many, looked for by typing: `suggest` answers with the choices. What is none of
    /// them is sent as words.
    Search {
        /// Choices to be tapped without typing, what was used last first.
        first: Vec<OfferedChoice>,
        /// What is chosen now, in words; empty where nothing is.
        chosen: String,
    },
    /// Yes or no.
    YesNo,
    /// A bearing from true north: sensed, or typed as degrees or as a side.
    Bearing,
    /// An angle in degrees: sensed, or typed.
    Tilt {
        /// The smallest value in degrees.
        min: f64,
        /// The largest value in degrees.
        max: f64,
    },
    /// A position: one fix, many fixes to be averaged, or typed as latitude and longitude.
    Fix,
    /// A photo.
    PhotoFile,
    /// Points on the ground.
    Outline {
        /// At least so many.
        least: u32,
    },
    /// A day, as `2026-05-14`.
    OnDay,
}

/// One choice of an input.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct OfferedChoice {
    /// Its id, handed back when chosen.
    pub id: String,
    /// Its words.
    pub words: String,
    /// What it means, in a sentence; may be empty.
    pub help: String,
    /// A small drawing that shows it, for a large tile.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drawing: Option<DrawingAddress>,
    /// Whether it waits behind a tile that shows more, for it is seldom meant here.
    #[serde(skip_serializing_if = "is_false")]
    pub aside: bool,
}

impl OfferedChoice {
    /// A choice at hand, without a sentence.
    pub(super) fn of(id: &str, words: String) -> OfferedChoice {
        OfferedChoice {
            id: id.to_owned(),
            words,
            help: String::new(),
            drawing: None,
            aside: false,
        }
    }
}

/// What goes without saying in a page written down.
fn is_false(whether: &bool) -> bool {
    !whether
}
