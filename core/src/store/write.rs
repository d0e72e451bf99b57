//! Writes one change of an edit: finds the record, what its author saw, and appends.

use rusqlite::OptionalExtension;
use serde_json::Value;

use super::change::{Change, GONE, SEEN};
use super::edit::Edit;
use super::fields::same;
use super::{log, removed};
use crate::error::BookError;
use crate::record::{Id, Noun};

impl Edit<'_> {
    /// The site of a record, and whether it was removed; nothing for an unknown record.
    pub(super) fn place_of(
        &self,
        noun: Noun,
        id: &str,
    ) -> Result<Option<(Option<String>, bool)>, BookError> {
        if let Some(site) = self.fresh.get(&(noun, id.to_owned())) {
            return Ok(Some((site.clone(), false)));
        }
        let query = format!(
            "SELECT site, gone FROM {} WHERE id = ?1",
            noun.place().table
        );
        Ok(self
            .conn
            .prepare_cached(&query)?
            .query_row([id], |row| Ok((row.get(0)?, row.get(1)?)))
            .optional()?)
    }

    pub(super) fn live(&self, noun: Noun, id: &Id) -> Result<Option<String>, BookError> {
        match self.place_of(noun, id.as_str())? {
            Some((site, false)) => Ok(site),
            _ => Err(not_found(noun, id)),
        }
    }

    pub(super) fn next_order(&mut self, noun: Noun, parent: &str) -> Result<f64, BookError> {
        let key = (noun, parent.to_owned());
        let order = match self.orders.get(&key) {
            Some(last) => last + 1.0,
            None => {
                let table = noun.place().table;
                let query =
                    format!("SELECT coalesce(max(ord) + 1, 0) FROM {table} WHERE parent IS ?1");
                let parent = Some(parent).filter(|parent| !parent.is_empty());
                self.conn.query_row(&query, [parent], |row| row.get(0))?
            }
        };
        self.orders.insert(key, order);
        Ok(order)
    }

    pub(super) fn heads_of(
        &self,
        noun: &str,
        id: &str,
        field: &str,
    ) -> Result<Vec<Change>, BookError> {
        let mut heads = log::heads(self.conn, noun, id)?;
        heads.retain(|change| change.field == field);
        Ok(heads)
    }

    /// Writes a value over all that stand, unless it already stands alone.
    pub(super) fn replace(
        &mut self,
        noun: &str,
        id: &str,
        site: Option<String>,
        field: &str,
        value: Value,
    ) -> Result<(), BookError> {
        let heads = self.heads_of(noun, id, field)?;
        let stands = heads.iter().all(|change| same(&change.value, &value));
        if stands && (!heads.is_empty() || value.is_null()) {
            return Ok(());
        }
        let replaces = heads.into_iter().map(|change| change.id).collect();
        self.write(noun, id, site, field, value, replaces)?;
        Ok(())
    }

    /// Appends a change; with a removal it notes what its author knew.
    pub(super) fn write(
        &mut self,
        noun: &str,
        id: &str,
        site: Option<String>,
        field: &str,
        value: Value,
        replaces: Vec<String>,
    ) -> Result<String, BookError> {
        if field == GONE && value == Value::Bool(true) {
            self.note_seen(noun, id, site.as_deref())?;
        }
        let change = Change {
            id: self.clock.new_id(self.author.at),
            hlc: self.clock.tick(self.author.at),
            device: self.device.to_owned(),
            person: self.author.person.0.clone(),
            edit: self.id.clone(),
            site,
            noun: noun.to_owned(),
            record: id.to_owned(),
            field: field.to_owned(),
            value,
            replaces,
        };
        log::append(self.conn, &change)?;
        self.done.changes += 1;
        self.of_book |= change.noun == Noun::Site.place().table
            && (field == GONE || self.fresh.contains_key(&(Noun::Site, id.to_owned())));
        if self.done.site.is_none() {
            self.done.site = change.site.map(Id);
        }
        self.touched.insert((change.noun, change.record));
        Ok(change.id)
    }
}

impl Edit<'_> {
    /// Notes, once an edit, what its author knew of the site, or of a record of the book.
    fn note_seen(&mut self, noun: &str, id: &str, site: Option<&str>) -> Result<(), BookError> {
        let (table, holder) = removed::seen_at(noun, id, site);
        if !self.seen_at.insert((table.to_owned(), holder.to_owned())) {
            return Ok(());
        }
        let heads = self.heads_of(table, holder, SEEN)?;
        let replaces = heads.into_iter().map(|change| change.id).collect();
        let seen = removed::seen_of(self.conn, site)?;
        let site = site.map(str::to_owned);
        self.write(table, holder, site, SEEN, seen, replaces)?;
        // Nobody entered it.
        self.done.changes -= 1;
        Ok(())
    }
}

/// No such record, or one that was removed.
pub fn not_found(noun: Noun, id: &Id) -> BookError {
    BookError::NotFound {
        kind: noun.place().table.to_owned(),
        id: id.0.clone(),
    }
}
