//! Answers to what somebody types into a search, and what an entry leaves to be chosen.

use super::fill::defect;
use super::inner::Inner;
use crate::error::BookError;
use crate::pages::{
    Entry, Offer, OfferedChoice, OfferedInput, depends, species_suggested, trees_suggested,
};
use crate::record::{Id, Noun};

/// Most species and codes remembered as used.
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
            "permission.tree" => {
                // The site whose page is in front is the one judged last.
                let site = self.judged.as_ref().map(|judged| &judged.loaded.file.site);
                let words = self.settings.words();
                Ok(site.map_or_else(Vec::new, |site| trees_suggested(&words, site, typed)))
            }
            _ => Err(defect(format!("{input} is no search"))),
        }
    }

    /// The inputs of an offer once these entries are made.
    pub(super) fn narrowed(
        &mut self,
        offer: &Offer,
        entries: &[Entry],
    ) -> Result<Vec<OfferedInput>, BookError> {
        if !depends(offer) {
            return Ok(offer.inputs.clone());
        }
        self.on_book(|desk, _, _| Ok(desk.narrowed(offer, entries)))
    }

    /// Codes in the order of how often they were used lately.
    pub(super) fn codes_used(&self) -> Result<Vec<Id>, BookError> {
        let ids = self.store.read().used_most(Noun::Finding, "code", USED)?;
        Ok(ids.into_iter().map(Id).collect())
    }

    /// Species in the order in which they were used last.
    pub(super) fn species_used(&self) -> Result<Vec<String>, BookError> {
        self.store.read().used_last(Noun::Tree, "species", USED)
    }
}
