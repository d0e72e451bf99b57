//! Takes an edit back, and does it again: as new changes, so that the log only grows.

use std::collections::BTreeSet;

use rusqlite::{OptionalExtension, params};
use serde_json::Value;

use super::change::{COLUMNS, Change, GONE, SEEN};
use super::edit::{Done, Edit, Stack};
use super::fields::same;
use super::{Author, Store, log};
use crate::error::BookError;
use crate::record::Id;

/// An entry of the stack: its number and the part of the log that it would turn.
pub(super) struct Entry {
    pub(super) no: i64,
    after_seq: i64,
    last_seq: i64,
}

/// Edits on the sites that the edit `one` of the book made, removed or brought back, since then.
/// The `+` keeps to the index of nouns: an import may have written most of the log.
const WORKED_ON_SINCE: &str = "SELECT 1 FROM change JOIN own_edit AS later
     ON later.site = change.record
     WHERE change.noun = 'site' AND +change.seq > one.after_seq AND +change.seq <= one.last_seq
     AND later.taken_back = 0 AND later.last_seq > one.last_seq";

impl Store {
    /// Takes back the last edit that this phone made on a site (or, without one, on the crew, the
    /// gear, the codebook, or that made or removed a site). What somebody else has changed since
    /// stays. Nothing if there is none.
    ///
    /// A site on which this phone has worked since is not taken away with the edit that made it:
    /// that would be no undo of the last step. It can be removed.
    ///
    /// # Errors
    /// As [`Store::edit`].
    pub fn undo(&mut self, site: Option<&Id>, author: &Author) -> Result<Option<Done>, BookError> {
        self.turn(site, author, true)
    }

    /// Does again what was taken back last. A new edit on the site clears what could be done again.
    ///
    /// # Errors
    /// As [`Store::edit`].
    pub fn redo(&mut self, site: Option<&Id>, author: &Author) -> Result<Option<Done>, BookError> {
        self.turn(site, author, false)
    }

    /// Whether there is an edit to take back.
    ///
    /// # Errors
    /// As the database reports.
    pub fn can_undo(&self, site: Option<&Id>) -> Result<bool, BookError> {
        Ok(self.entry(site, true)?.is_some())
    }

    /// Whether there is an edit to do again.
    ///
    /// # Errors
    /// As the database reports.
    pub fn can_redo(&self, site: Option<&Id>) -> Result<bool, BookError> {
        Ok(self.entry(site, false)?.is_some())
    }

    fn turn(
        &mut self,
        site: Option<&Id>,
        author: &Author,
        back: bool,
    ) -> Result<Option<Done>, BookError> {
        let Some(entry) = self.entry(site, back)? else {
            return Ok(None);
        };
        let stack = Stack::Turn {
            no: entry.no,
            taken_back: back,
        };
        self.edit_on(author, stack, |edit| edit.turn_back(&entry))
            .map(Some)
    }

    pub(super) fn entry(&self, site: Option<&Id>, back: bool) -> Result<Option<Entry>, BookError> {
        let order = if back { "DESC" } else { "ASC" };
        self.conn
            .query_row(
                &format!(
                    "SELECT no, after_seq, last_seq FROM own_edit AS one
                     WHERE site IS ?1 AND taken_back = ?2
                     AND (?1 IS NOT NULL OR NOT EXISTS ({WORKED_ON_SINCE}))
                     ORDER BY no {order} LIMIT 1"
                ),
                params![site.map(Id::as_str), !back],
                |row| {
                    Ok(Entry {
                        no: row.get(0)?,
                        after_seq: row.get(1)?,
                        last_seq: row.get(2)?,
                    })
                },
            )
            .optional()
            .map_err(|fault| self.placed(fault.into()))
    }
}

impl Edit<'_> {
    fn turn_back(&mut self, entry: &Entry) -> Result<(), BookError> {
        let changes = self.changes_of(entry)?;
        let mut made = BTreeSet::new();
        for change in &changes {
            let key = (change.noun.clone(), change.record.clone());
            if change.field == SEEN || made.contains(&key) {
                continue;
            }
            if self.was_made_by(change)? {
                made.insert(key);
                self.take_away(change)?;
            } else {
                self.restore(change, &changes)?;
            }
        }
        Ok(())
    }

    fn changes_of(&self, entry: &Entry) -> Result<Vec<Change>, BookError> {
        let mut query = self.conn.prepare_cached(&format!(
            "SELECT {COLUMNS} FROM change WHERE seq > ?1 AND seq <= ?2 ORDER BY seq"
        ))?;
        let rows = query.query_map([entry.after_seq, entry.last_seq], Change::of_row)?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }

    /// Whether the change's edit made the record.
    fn was_made_by(&self, change: &Change) -> Result<bool, BookError> {
        let first: Option<String> = self
            .conn
            .prepare_cached(
                "SELECT edit FROM change WHERE noun = ?1 AND record = ?2
                 ORDER BY hlc, device, id LIMIT 1",
            )?
            .query_row([&change.noun, &change.record], |row| row.get(0))
            .optional()?;
        Ok(first.as_deref() == Some(change.edit.as_str()))
    }

    /// Removes what the edit made. Where somebody else said meanwhile that it stays, the two stand
    /// side by side.
    fn take_away(&mut self, change: &Change) -> Result<(), BookError> {
        let heads = self.heads_of(&change.noun, &change.record, GONE)?;
        let own = heads.into_iter().filter(|head| head.device == self.device);
        let replaces = own.map(|head| head.id).collect();
        let site = change.site.clone();
        self.write(
            &change.noun,
            &change.record,
            site,
            GONE,
            Value::Bool(true),
            replaces,
        )?;
        Ok(())
    }

    /// Puts back what a change replaced, if it is still in force. Values that stood side by side
    /// stand side by side again; what somebody else replaced meanwhile does not come back.
    fn restore(&mut self, change: &Change, all: &[Change]) -> Result<(), BookError> {
        let Some(in_force) = self.in_force(change)? else {
            return Ok(());
        };
        let mut others = self.heads_of(&change.noun, &change.record, &change.field)?;
        others.retain(|head| head.id != in_force);
        let past = self.replaced_by(&others)?;
        let mut values: Vec<(Option<String>, Value)> = Vec::new();
        for before in self.before(change, all)? {
            let is_past = past.contains(&before.id);
            if !is_past && !values.iter().any(|(_, value)| same(value, &before.value)) {
                values.push((Some(before.id), before.value));
            }
        }
        if values.is_empty() {
            let unset = match change.field.as_str() {
                GONE => Value::Bool(false),
                _ => Value::Null,
            };
            // What somebody else entered meanwhile then stands alone, not beside an empty value.
            let theirs = others.pop().map(|head| head.value);
            values.push((None, theirs.unwrap_or(unset)));
        }
        for (original, value) in values {
            let replaces = vec![in_force.clone()];
            let site = change.site.clone();
            let restored = self.write(
                &change.noun,
                &change.record,
                site,
                &change.field,
                value,
                replaces,
            )?;
            if let Some(original) = original {
                self.conn.execute(
                    "INSERT INTO own_restored (change, stands_for) VALUES (?1, ?2)",
                    [restored, self.original_of(original)?],
                )?;
            }
        }
        Ok(())
    }

    /// Every change that these, or what they replaced, replaced.
    fn replaced_by(&self, heads: &[Change]) -> Result<BTreeSet<String>, BookError> {
        let mut past = BTreeSet::new();
        let mut open: Vec<String> = heads
            .iter()
            .flat_map(|head| head.replaces.clone())
            .collect();
        while let Some(id) = open.pop() {
            // A hostile log may turn in circles.
            if past.insert(id.clone())
                && let Some(change) = log::by_id(self.conn, &id)?
            {
                open.extend(change.replaces);
            }
        }
        Ok(past)
    }

    /// The change that nobody replaced and that says what this one said: itself, or what an undo
    /// or a redo wrote to restore it.
    fn in_force(&self, change: &Change) -> Result<Option<String>, BookError> {
        let original = self.original_of(change.id.clone())?;
        for head in self.heads_of(&change.noun, &change.record, &change.field)? {
            if self.original_of(head.id.clone())? == original {
                return Ok(Some(head.id));
            }
        }
        Ok(None)
    }

    fn original_of(&self, id: String) -> Result<String, BookError> {
        let restored: Option<String> = self
            .conn
            .prepare_cached("SELECT stands_for FROM own_restored WHERE change = ?1")?
            .query_row([&id], |row| row.get(0))
            .optional()?;
        Ok(restored.unwrap_or(id))
    }

    /// What stood before the edit: what the change replaced, and what that replaced if it was part
    /// of the same edit.
    fn before(&self, change: &Change, all: &[Change]) -> Result<Vec<Change>, BookError> {
        let mut found = Vec::new();
        let mut open: Vec<String> = change.replaces.clone();
        while let Some(id) = open.pop() {
            if let Some(own) = all.iter().find(|own| own.id == id) {
                open.extend(own.replaces.iter().cloned());
            } else if let Some(before) = log::by_id(self.conn, &id)? {
                found.push(before);
            }
        }
        found.sort_by(|one, other| {
            (&one.hlc, &one.device, &one.id).cmp(&(&other.hlc, &other.device, &other.id))
        });
        Ok(found)
    }
}
