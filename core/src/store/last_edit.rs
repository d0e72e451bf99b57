//! What undo would take back, or redo would do again: the step, what of, and whose.

use rusqlite::{OptionalExtension, params};

use super::change::{COLUMNS, Change, SEEN};
use super::{Edit, Store};
use crate::error::BookError;
use crate::record::{Id, Noun};

/// So many changes of an edit are looked at; an import may have made most of the log.
const LOOKED_AT: u32 = 100;

/// An edit as a person knows it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LastEdit {
    /// The command's id, as given to [`Edit::named`]; empty where none was.
    pub command: String,
    /// What was changed first.
    pub noun: Noun,
    /// The one field that was changed; nothing where it was several, or where the edit made or
    /// removed a record.
    pub field: Option<String>,
    /// The tree, person, piece of gear … that it was about, and what that is called.
    pub whose: Option<(Noun, String)>,
}

impl Edit<'_> {
    /// Says which command this edit is, by its id.
    pub fn named(&mut self, command: &str) {
        command.clone_into(&mut self.command);
    }
}

impl Store {
    /// What [`Store::undo`] (`back`) or [`Store::redo`] would turn; nothing if there is none.
    ///
    /// # Errors
    /// As the database reports.
    pub fn last_edit(&self, site: Option<&Id>, back: bool) -> Result<Option<LastEdit>, BookError> {
        match self.entry(site, back)? {
            Some(entry) => self.told(entry.no).map_err(|fault| self.placed(fault)),
            None => Ok(None),
        }
    }

    fn told(&self, no: i64) -> Result<Option<LastEdit>, BookError> {
        let command: Option<String> = self
            .conn
            .prepare_cached("SELECT command FROM own_edit WHERE no = ?1")?
            .query_row([no], |row| row.get(0))?;
        let mut query = self.conn.prepare_cached(&format!(
            "SELECT {COLUMNS} FROM change
             WHERE seq > (SELECT after_seq FROM own_edit WHERE no = ?1)
             AND seq <= (SELECT last_seq FROM own_edit WHERE no = ?1) ORDER BY seq LIMIT ?2"
        ))?;
        let rows = query.query_map(params![no, LOOKED_AT], Change::of_row)?;
        let changes: Vec<Change> = rows.collect::<rusqlite::Result<_>>()?;
        // What the author of a removal knew stands at the site and is no part of what was done.
        let done = changes.iter().filter(|change| change.field != SEEN);
        let mut records = done.filter_map(|change| {
            let noun = Noun::of_table(&change.noun)?;
            Some((noun, change.record.as_str()))
        });
        let Some((noun, record)) = records.next() else {
            return Ok(None);
        };
        let mut whose = self.whose(noun, record)?;
        // An inspection may begin with the visit of the day, which is no tree's.
        for (noun, record) in records {
            if whose.is_some() {
                break;
            }
            whose = self.whose(noun, record)?;
        }
        Ok(Some(LastEdit {
            command: command.unwrap_or_default(),
            noun,
            field: one_field(&changes),
            whose,
        }))
    }

    /// What a record is about, by name: the nearest that has one, the record itself included. What
    /// was removed is found too.
    fn whose(&self, noun: Noun, record: &str) -> Result<Option<(Noun, String)>, BookError> {
        let (mut noun, mut record) = (noun, record.to_owned());
        loop {
            let place = noun.place();
            if let Some(column) = name_of(noun) {
                let query = format!("SELECT {column} FROM {} WHERE id = ?1", place.table);
                let name: Option<Option<String>> = self
                    .conn
                    .prepare_cached(&query)?
                    .query_row([&record], |row| row.get(0))
                    .optional()?;
                return Ok(name.flatten().map(|name| (noun, name)));
            }
            // The property itself is not named for what lies in it: its page is in front.
            let Some((holder, _)) = place.held_by.filter(|(holder, _)| *holder != Noun::Site)
            else {
                return Ok(None);
            };
            let query = format!("SELECT parent FROM {} WHERE id = ?1", place.table);
            let parent: Option<Option<String>> = self
                .conn
                .prepare_cached(&query)?
                .query_row([&record], |row| row.get(0))
                .optional()?;
            let Some(parent) = parent.flatten() else {
                return Ok(None);
            };
            (noun, record) = (holder, parent);
        }
    }
}

/// The column with the name that people know a record by.
fn name_of(noun: Noun) -> Option<&'static str> {
    match noun {
        Noun::Tree => Some("tag"),
        Noun::Person
        | Noun::Gear
        | Noun::DefectCode
        | Noun::Site
        | Noun::Target
        | Noun::OverheadLine => Some("name"),
        _ => None,
    }
}

/// The field, where all changes are of one field of one record that was there before.
fn one_field(changes: &[Change]) -> Option<String> {
    let first = changes.first()?;
    let is_own = !first.field.starts_with('@');
    let is_same = |change: &Change| change.field == first.field && change.record == first.record;
    (is_own && changes.iter().all(is_same)).then(|| first.field.clone())
}
