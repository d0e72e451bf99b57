//! Answers to what somebody types into a search.

use super::fill::defect;
use super::inner::Inner;
use crate::error::BookError;
use crate::pages::{OfferedChoice, species_suggested};
use crate::record::Noun;

/// Most species remembered as used last.
const USED: u32 = 12;

impl Inner {
    /// The choices of a search that come near what was typed, the nearest first.
    pub(super) fn suggest(
        &self,
        input: &str,
        typed: &str,
    ) -> Result<Vec<OfferedChoice>, BookError> {
        match input {
            "tree.species" => {
                let used = self.species_used()?;
                Ok(species_suggested(&self.settings.words(), typed, &used))
            }
            _ => Err(defect(format!("{input} is no search"))),
        }
    }

    /// Species in the order in which they were used last.
    pub(super) fn species_used(&self) -> Result<Vec<String>, BookError> {
        self.store.read().used_last(Noun::Tree, "species", USED)
    }
}
