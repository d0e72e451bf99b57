//! What every noun's commands are made of: make, change, remove one record.

use serde::Serialize;
use serde::de::DeserializeOwned;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Id, Noun};

impl Inner {
    /// A record with all that lies in it.
    pub(super) fn record<T: DeserializeOwned>(&self, noun: Noun, id: &Id) -> Result<T, BookError> {
        self.store.read().record_as(noun, id)
    }

    /// Makes a record, with all that lies in it, at the end of its parent's list.
    pub(super) fn make<T: Serialize>(
        &mut self,
        noun: Noun,
        parent: Option<&Id>,
        record: &T,
    ) -> Result<Outcome, BookError> {
        let json = serde_json::to_value(record).map_err(defect)?;
        let mut id = Id::default();
        let done = self.edit(|edit| {
            id = edit.create(noun, parent, json)?;
            Ok(())
        })?;
        Ok(Outcome {
            record: id,
            changes: done.changes,
        })
    }

    /// Sets what differs between a record as it was and as it shall be.
    pub(super) fn change<T: Serialize>(
        &mut self,
        noun: Noun,
        id: &Id,
        before: &T,
        after: &T,
    ) -> Result<Outcome, BookError> {
        let done = self.edit(|edit| set_changed(edit, noun, id, before, after))?;
        Ok(Outcome {
            record: id.clone(),
            changes: done.changes,
        })
    }

    /// Removes a record with what lies in it; its changes stay in the log.
    pub(super) fn remove(&mut self, noun: Noun, id: &Id) -> Result<Outcome, BookError> {
        let done = self.edit(|edit| edit.remove(noun, id))?;
        Ok(Outcome {
            record: id.clone(),
            changes: done.changes,
        })
    }

    /// Makes a record of what was entered.
    pub(super) fn make_entered<T: Serialize + DeserializeOwned>(
        &mut self,
        noun: Noun,
        parent: Option<&Id>,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let record: T = new_record(&entered.whole()?)?;
        self.make(noun, parent, &record)
    }

    /// Lays what was entered over a record.
    pub(super) fn change_entered<T: Serialize + DeserializeOwned>(
        &mut self,
        noun: Noun,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: T = self.record(noun, id)?;
        let after: T = changed_record(&before, entered)?;
        self.change(noun, id, &before, &after)
    }

    /// The record in which a record lies.
    pub(super) fn holder(&self, noun: Noun, id: &Id) -> Result<Id, BookError> {
        let found = self.store.read().whereabouts(noun, id)?;
        found
            .and_then(|place| place.parent)
            .ok_or_else(|| unknown(noun, id))
    }

    /// The site of a record.
    pub(super) fn site_of(&self, noun: Noun, id: &Id) -> Result<Id, BookError> {
        let found = self.store.read().whereabouts(noun, id)?;
        found
            .and_then(|place| place.site)
            .ok_or_else(|| unknown(noun, id))
    }
}

/// No such record.
pub(super) fn unknown(noun: Noun, id: &Id) -> BookError {
    BookError::NotFound {
        kind: noun.place().table.to_owned(),
        id: id.0.clone(),
    }
}
