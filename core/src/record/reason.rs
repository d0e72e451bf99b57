//! A reason without language: a code and its arguments, worded by the catalogue.

use serde::{Deserialize, Serialize};

use super::id::{Day, Id};
use super::quantity::Quantity;

/// A reason, worded by the catalogue entry of its code.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Reason {
    /// Catalogue entry, such as `stop.hanger-above`.
    pub code: String,
    /// The record it is about (finding, line, person, gear, target), empty for the tree itself.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub about: Id,
    /// What the words need.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub args: Vec<Arg>,
}

impl Reason {
    /// A reason about the tree itself.
    pub fn new(code: &str) -> Self {
        Reason {
            code: code.to_owned(),
            about: Id::default(),
            args: Vec::new(),
        }
    }

    /// The same reason about a record.
    pub fn about(mut self, id: &Id) -> Self {
        self.about = id.clone();
        self
    }

    /// Adds an argument.
    pub fn with(mut self, name: &str, value: ArgValue) -> Self {
        self.args.push(Arg {
            name: name.to_owned(),
            value,
        });
        self
    }

    /// Adds a number with what it measures.
    pub fn number(self, name: &str, value: f64, quantity: Quantity) -> Self {
        self.with(name, ArgValue::Number { value, quantity })
    }

    /// Adds a text as typed by a person.
    pub fn text(self, name: &str, text: &str) -> Self {
        self.with(
            name,
            ArgValue::Words {
                text: text.to_owned(),
            },
        )
    }

    /// Adds a catalogue entry, worded when shown.
    pub fn term(self, name: &str, key: &str) -> Self {
        self.with(
            name,
            ArgValue::Term {
                key: key.to_owned(),
            },
        )
    }
}

/// One named argument of a reason.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Arg {
    /// The name the catalogue entry uses.
    pub name: String,
    /// The value.
    pub value: ArgValue,
}

/// The value of an argument.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Enum)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum ArgValue {
    /// Text as typed by a person: a name, a tag.
    Words {
        /// The text.
        text: String,
    },
    /// A catalogue entry.
    Term {
        /// The entry's key.
        key: String,
    },
    /// A number in the base unit of its quantity.
    Number {
        /// The value.
        value: f64,
        /// What it measures.
        quantity: Quantity,
    },
    /// A whole number.
    Whole {
        /// The count.
        count: i64,
    },
    /// A day.
    OnDay {
        /// The day.
        day: Day,
    },
}
