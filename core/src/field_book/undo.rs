//! Takes edits back and does them again; settles what stands side by side.

use super::act::Outcome;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun};
use crate::store::Done;

impl Inner {
    /// Takes back the last edit of this phone on a site, or in the book where none is named.
    pub(super) fn act_undo(&mut self, site: &Id) -> Result<Outcome, BookError> {
        let author = self.author();
        self.outdate_judgement();
        let done = self.store.undo(named(site), &author)?;
        turned(done, "fault.nothing-to-undo", "edit.undo")
    }

    /// Does again what was taken back last.
    pub(super) fn act_redo(&mut self, site: &Id) -> Result<Outcome, BookError> {
        let author = self.author();
        self.outdate_judgement();
        let done = self.store.redo(named(site), &author)?;
        turned(done, "fault.nothing-to-redo", "edit.redo")
    }

    /// Makes one of several standing values count, by the id of its change.
    pub(super) fn act_settle_value(&mut self, change: &Id) -> Result<Outcome, BookError> {
        let sites = self.store.read().load_book()?.sites;
        let places = sites.into_iter().map(|site| Some(site.id));
        for place in places.chain([None]) {
            let standing = self.store.read().standing(place.as_ref())?;
            for field in standing {
                let Some(value) = field.values.iter().find(|value| value.change == *change) else {
                    continue;
                };
                let Some(noun) = Noun::of_table(&field.noun) else {
                    continue;
                };
                let (id, name) = (field.record.clone(), field.field.clone());
                let value = value.value.clone();
                let done = self.edit(|edit| edit.set(noun, &id, &name, value))?;
                return Ok(Outcome {
                    record: field.record,
                    changes: done.changes,
                });
            }
        }
        Err(BookError::NotFound {
            kind: "value".to_owned(),
            id: change.0.clone(),
        })
    }

    /// Settles a removal against a change made without knowing of it. `about` names the record as
    /// `noun/id`.
    pub(super) fn act_settle_removal(
        &mut self,
        about: &Id,
        stays: bool,
    ) -> Result<Outcome, BookError> {
        let found = about
            .as_str()
            .split_once('/')
            .and_then(|(table, id)| Some((Noun::of_table(table)?, Id::from(id))));
        let (noun, id) = found.ok_or_else(|| BookError::NotFound {
            kind: "record".to_owned(),
            id: about.0.clone(),
        })?;
        let done = self.edit(|edit| edit.settle_removal(noun, &id, stays))?;
        Ok(Outcome {
            record: id,
            changes: done.changes,
        })
    }
}

/// The site, unless none is named.
fn named(site: &Id) -> Option<&Id> {
    Some(site).filter(|site| !site.is_empty())
}

fn turned(done: Option<Done>, code: &str, place: &str) -> Result<Outcome, BookError> {
    match done {
        Some(done) => Ok(Outcome {
            record: done.site.unwrap_or_default(),
            changes: done.changes,
        }),
        None => Err(BookError::refused(Fault::new(code, place, "", ""))),
    }
}
