//! A fault in what was entered or read: where, what was found, what is allowed.

use serde::{Deserialize, Serialize};

/// One fault, worded by its code and shown with its place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Fault {
    /// Catalogue entry that words the fault, such as `fault.out-of-range`.
    pub code: String,
    /// Where: a JSON pointer, `line 12, column height`, or an input's id.
    pub place: String,
    /// What was found there, shortened to 80 characters.
    pub found: String,
    /// What is allowed there, such as `0.5 to 116 m`.
    pub allowed: String,
}

impl Fault {
    /// A fault with `found` cut to 80 characters.
    pub fn new(
        code: &str,
        place: impl Into<String>,
        found: impl std::fmt::Display,
        allowed: impl Into<String>,
    ) -> Self {
        let found = found.to_string();
        let shortened = if found.chars().count() > 80 {
            found.chars().take(79).chain(['…']).collect()
        } else {
            found
        };
        Fault {
            code: code.to_owned(),
            place: place.into(),
            found: shortened,
            allowed: allowed.into(),
        }
    }
}
