//! One edit: a number of changes, the tables and what can be taken back, in one transaction.

use std::collections::{BTreeMap, BTreeSet};

use rusqlite::{Transaction, TransactionBehavior, params};
use serde_json::Value;

use super::change::{GONE, ORDER};
use super::clock::{LogClock, written};
use super::faults::defect;
use super::fields;
use super::flatten;
use super::project::{self, RecordKey};
use super::write::not_found;
use super::{Author, Store, fit, ids, log, nest};
use crate::error::BookError;
use crate::record::{Fault, Id, Noun};

/// What an edit did.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Done {
    /// The edit's id; empty when nothing differed from what was there.
    pub edit: Id,
    /// How many changes it wrote.
    pub changes: u32,
    /// The first site it touched; nothing for crew, gear, codebook and house values.
    pub site: Option<Id>,
}

/// An edit in the making; nothing is kept until it ends well.
#[derive(Debug)]
pub struct Edit<'a> {
    pub(super) conn: &'a Transaction<'a>,
    pub(super) clock: &'a mut LogClock,
    pub(super) author: &'a Author,
    pub(super) device: &'a str,
    pub(super) id: String,
    /// Which command it is; empty where nobody said so.
    pub(super) command: String,
    pub(super) touched: BTreeSet<RecordKey>,
    unchecked: BTreeSet<RecordKey>,
    pub(super) fresh: BTreeMap<(Noun, String), Option<String>>,
    pub(super) orders: BTreeMap<(Noun, String), f64>,
    /// Where this edit has noted what its author knew.
    pub(super) seen_at: BTreeSet<RecordKey>,
    pub(super) done: Done,
    /// Whether it makes, removes or brings back a site: the book takes that back, for the pages of
    /// a site that is not there cannot.
    pub(super) of_book: bool,
}

/// What an edit does to the stack of what can be taken back.
pub(super) enum Stack {
    /// A new edit on top; what was taken back is past.
    Push,
    /// The entry was taken back, or done again.
    Turn { no: i64, taken_back: bool },
}

impl Store {
    /// Makes one edit: all of it is kept, or nothing.
    ///
    /// # Errors
    /// Whatever `act` returns; `Refused` if a record would not be whole; `DiskFull`, `Busy`,
    /// `Unwritable`, `Damaged` as the database reports. Nothing was changed then.
    pub fn edit(
        &mut self,
        author: &Author,
        act: impl FnOnce(&mut Edit<'_>) -> Result<(), BookError>,
    ) -> Result<Done, BookError> {
        self.edit_on(author, Stack::Push, act)
    }

    pub(super) fn edit_on(
        &mut self,
        author: &Author,
        stack: Stack,
        act: impl FnOnce(&mut Edit<'_>) -> Result<(), BookError>,
    ) -> Result<Done, BookError> {
        let place = self.place();
        let before = self.clock.last();
        let kept = self.try_edit(author, stack, act);
        if kept.is_err() {
            self.clock = LogClock::after(before);
        }
        kept.map_err(|fault| super::faults::placed(fault, &place))
    }

    fn try_edit(
        &mut self,
        author: &Author,
        stack: Stack,
        act: impl FnOnce(&mut Edit<'_>) -> Result<(), BookError>,
    ) -> Result<Done, BookError> {
        let id = self.clock.new_id(author.at);
        let conn = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let after_seq = log::last_seq(&conn)?;
        let mut edit = Edit {
            conn: &conn,
            clock: &mut self.clock,
            author,
            device: &self.device,
            id,
            command: String::new(),
            touched: BTreeSet::new(),
            unchecked: BTreeSet::new(),
            fresh: BTreeMap::new(),
            orders: BTreeMap::new(),
            seen_at: BTreeSet::new(),
            done: Done::default(),
            of_book: false,
        };
        act(&mut edit)?;
        let done = edit.finish(stack, after_seq)?;
        conn.commit()?;
        Ok(done)
    }
}

impl Edit<'_> {
    /// Sets a field of a record; null clears it. A value that already stands alone is no change.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed record, `Refused` for a value of another form.
    pub fn set(&mut self, noun: Noun, id: &Id, field: &str, value: Value) -> Result<(), BookError> {
        let known = fields::of(noun)
            .and_then(|known| known.field(field))
            .ok_or_else(|| defect(format!("{noun:?} has no field {field}")))?;
        let table = noun.place().table;
        if known.kind.cell(&value).is_none() {
            let place = format!("{table}.{field}");
            return Err(BookError::refused(Fault::new(
                "fault.form",
                place,
                value,
                known.kind.column_type(),
            )));
        }
        let site = self.live(noun, id)?;
        self.unchecked.insert((table.to_owned(), id.0.clone()));
        self.replace(table, id.as_str(), site, field, value)
    }

    /// Makes a record with all that lies in it, at the end of its parent's list. Ids that are
    /// missing are made; the record's own is returned.
    ///
    /// # Errors
    /// `Refused` if the id is taken or the record is not whole, `NotFound` for an unknown parent.
    pub fn create(
        &mut self,
        noun: Noun,
        parent: Option<&Id>,
        mut json: Value,
    ) -> Result<Id, BookError> {
        let (clock, at) = (&mut *self.clock, self.author.at);
        ids::give_ids(noun, &mut json, &mut || clock.new_id(at));
        let mut flats = Vec::new();
        flatten::flatten(noun, parent.map(Id::as_str), 0.0, &json, &mut flats)?;
        self.refuse_twice(&flats)?;
        for flat in &flats {
            if self.place_of(flat.noun, &flat.id)?.is_some() {
                let place = flat.noun.place().table;
                return Err(BookError::refused(Fault::new(
                    "fault.id-taken",
                    place,
                    &flat.id,
                    "a new id",
                )));
            }
        }
        if let Some(first) = flats.first_mut() {
            first.order = self.next_order(noun, parent.map_or("", Id::as_str))?;
        }
        let id = flats
            .first()
            .map(|flat| Id(flat.id.clone()))
            .unwrap_or_default();
        for flat in flats {
            self.unchecked
                .insert((flat.noun.place().table.to_owned(), flat.id.clone()));
            self.put_flat(flat)?;
        }
        Ok(id)
    }

    /// Makes a record of the book whose id is fixed, such as a starter code. One that was removed
    /// comes back with the values named and no others.
    ///
    /// # Errors
    /// `Refused` if the record is not whole or lacks its id.
    pub fn put(&mut self, noun: Noun, json: Value) -> Result<(), BookError> {
        let mut flats = Vec::new();
        flatten::flatten(noun, None, 0.0, &json, &mut flats)?;
        for mut flat in flats {
            for field in fields::of(noun).into_iter().flat_map(|known| &known.fields) {
                if !flat.fields.iter().any(|(name, _)| *name == field.name) {
                    flat.fields.push((field.name.clone(), Value::Null));
                }
            }
            if self.place_of(noun, &flat.id)?.is_none() {
                flat.order = self.next_order(noun, "")?;
                flat.fields.retain(|(_, value)| !value.is_null());
            }
            let table = noun.place().table.to_owned();
            self.unchecked.insert((table, flat.id.clone()));
            self.put_flat(flat)?;
        }
        Ok(())
    }

    /// Removes a record; what lies in it goes with it. Its changes stay in the log.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed record.
    pub fn remove(&mut self, noun: Noun, id: &Id) -> Result<(), BookError> {
        let site = self.live(noun, id)?;
        self.replace(
            noun.place().table,
            id.as_str(),
            site,
            GONE,
            Value::Bool(true),
        )
    }

    /// Settles a removal against changes made without knowing of it: the record is removed anew
    /// (`stays` false) or comes back (`stays` true).
    ///
    /// # Errors
    /// `NotFound` for an unknown record.
    pub fn settle_removal(&mut self, noun: Noun, id: &Id, stays: bool) -> Result<(), BookError> {
        let (site, _) = self
            .place_of(noun, id.as_str())?
            .ok_or_else(|| not_found(noun, id))?;
        let heads = self.heads_of(noun.place().table, id.as_str(), GONE)?;
        let replaces = heads.into_iter().map(|change| change.id).collect();
        self.write(
            noun.place().table,
            id.as_str(),
            site,
            GONE,
            Value::Bool(!stays),
            replaces,
        )?;
        Ok(())
    }

    /// Moves a record to another place in its parent's list: just before `order`'s whole number,
    /// such as 2.5 between the third and the fourth.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed record.
    pub fn reorder(&mut self, noun: Noun, id: &Id, order: f64) -> Result<(), BookError> {
        let site = self.live(noun, id)?;
        self.replace(
            noun.place().table,
            id.as_str(),
            site,
            ORDER,
            Value::from(order),
        )
    }

    /// Works out the tables, checks what was touched, and notes what can be taken back.
    fn finish(mut self, stack: Stack, after_seq: i64) -> Result<Done, BookError> {
        project::project_all(self.conn, &self.touched)?;
        self.check_whole()?;
        let last_seq = log::last_seq(self.conn)?;
        match stack {
            Stack::Push if self.done.changes == 0 => {}
            Stack::Push => self.push(after_seq, last_seq)?,
            Stack::Turn { no, taken_back } => {
                self.conn.execute(
                    "UPDATE own_edit SET after_seq = ?2, last_seq = ?3, taken_back = ?4 WHERE no = ?1",
                    params![no, after_seq, last_seq, taken_back],
                )?;
            }
        }
        if self.done.changes > 0 {
            save_clock(self.conn, self.clock)?;
            self.done.edit = Id(std::mem::take(&mut self.id));
        }
        Ok(self.done)
    }

    fn push(&self, after_seq: i64, last_seq: i64) -> Result<(), BookError> {
        let site = self.done.site.as_ref().map(Id::as_str);
        let site = site.filter(|_| !self.of_book);
        self.conn.execute(
            "DELETE FROM own_edit WHERE site IS ?1 AND taken_back = 1",
            [site],
        )?;
        self.conn.execute(
            "INSERT INTO own_edit (site, after_seq, last_seq, command) VALUES (?1, ?2, ?3, ?4)",
            params![site, after_seq, last_seq, self.command],
        )?;
        Ok(())
    }

    fn check_whole(&self) -> Result<(), BookError> {
        let mut faults = Vec::new();
        for (table, id) in &self.unchecked {
            let Some(noun) = Noun::of_table(table) else {
                continue;
            };
            let Some(record) = nest::own_fields(self.conn, noun, id)? else {
                continue;
            };
            if let Err(cause) = fit::fits(noun, &record) {
                faults.push(Fault::new(
                    "fault.record",
                    format!("{table} {id}"),
                    cause,
                    "a whole record",
                ));
            }
        }
        if faults.is_empty() {
            return Ok(());
        }
        Err(BookError::Refused { faults })
    }
}

/// Keeps the latest logical time.
pub(super) fn save_clock(conn: &Transaction<'_>, clock: &LogClock) -> Result<(), BookError> {
    conn.execute(
        "INSERT INTO clock (only, hlc) VALUES (1, ?1) ON CONFLICT (only) DO UPDATE SET hlc = ?1",
        [written(clock.last())],
    )?;
    Ok(())
}

#[cfg(test)]
#[path = "edit_tests.rs"]
mod tests;
