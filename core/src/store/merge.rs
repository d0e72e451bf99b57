//! Merging: the union of two logs, projected anew where it touched something.

use std::collections::BTreeSet;

use rusqlite::{Connection, Transaction, TransactionBehavior};

use super::change::{COLUMNS, Change};
use super::clock::{AHEAD_ALLOWED_MS, LogClock};
use super::edit::save_clock;
use super::project;
use super::read::Reader;
use super::{Store, log};
use crate::error::BookError;
use crate::record::{Fault, Id, Moment};

/// Part of the log, in the order in which this phone got it.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangesPage {
    /// The changes.
    pub changes: Vec<Change>,
    /// Number of the last; ask with it for the next ones.
    pub last_seq: i64,
}

/// What came in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Absorbed {
    /// Changes that were new here.
    pub taken: u32,
    /// Changes that were known.
    pub known: u32,
    /// How far in milliseconds the other phone's clock is ahead of this one's, if by more than
    /// [`AHEAD_ALLOWED_MS`]: one of the two is wrong.
    pub ahead_ms: Option<i64>,
}

impl Reader<'_> {
    /// At most `most` changes that this phone got after number `seq` (0 for all).
    ///
    /// # Errors
    /// As the database reports.
    pub fn changes_since(&self, seq: i64, most: u32) -> Result<ChangesPage, BookError> {
        self.placed(since(self.conn, seq, most))
    }

    /// All changes of a site, with those of crew, gear, codebook and house values that it may
    /// name: what a pack carries.
    ///
    /// # Errors
    /// As the database reports.
    pub fn changes_of_site(&self, site: &Id) -> Result<Vec<Change>, BookError> {
        let query =
            format!("SELECT {COLUMNS} FROM change WHERE site = ?1 OR site IS NULL ORDER BY seq");
        let read = || -> Result<Vec<Change>, BookError> {
            let mut query = self.conn.prepare(&query)?;
            let rows = query.query_map([site.as_str()], Change::of_row)?;
            Ok(rows.collect::<rusqlite::Result<_>>()?)
        };
        self.placed(read())
    }
}

fn since(conn: &Connection, seq: i64, most: u32) -> Result<ChangesPage, BookError> {
    let mut query = conn.prepare_cached(&format!(
        "SELECT {COLUMNS}, seq FROM change WHERE seq > ?1 ORDER BY seq LIMIT ?2"
    ))?;
    let mut page = ChangesPage {
        changes: Vec::new(),
        last_seq: seq,
    };
    let mut rows = query.query([seq, i64::from(most)])?;
    while let Some(row) = rows.next()? {
        page.changes.push(Change::of_row(row)?);
        page.last_seq = row.get(11)?;
    }
    Ok(page)
}

impl Store {
    /// Takes in changes of another phone, in any order, as often as they come; `at` is the present
    /// moment. What this version does not know is kept and passed on.
    ///
    /// # Errors
    /// `Refused` with every change that is none, by line; nothing was taken then.
    pub fn absorb(&mut self, changes: &[Change], at: Moment) -> Result<Absorbed, BookError> {
        let faults: Vec<Fault> = (1..)
            .zip(changes)
            .filter_map(|(line, change)| change.fault(line))
            .collect();
        if !faults.is_empty() {
            return Err(BookError::Refused { faults });
        }
        let place = self.place();
        let before = self.clock.last();
        let kept = self.try_absorb(changes, at);
        if kept.is_err() {
            self.clock = LogClock::after(before);
        }
        kept.map_err(|fault| super::faults::placed(fault, &place))
    }

    fn try_absorb(&mut self, changes: &[Change], at: Moment) -> Result<Absorbed, BookError> {
        let conn = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut absorbed = Absorbed::default();
        let mut touched = BTreeSet::new();
        for change in changes {
            if !log::append(&conn, change)? {
                absorbed.known += 1;
                continue;
            }
            absorbed.taken += 1;
            self.clock.see(&change.hlc);
            touch(&conn, change, &mut touched)?;
            let ahead = change.utc_ms().saturating_sub(at.utc_ms);
            if ahead > AHEAD_ALLOWED_MS {
                absorbed.ahead_ms = absorbed.ahead_ms.max(Some(ahead));
            }
        }
        project::project_all(&conn, &touched)?;
        save_clock(&conn, &self.clock)?;
        conn.commit()?;
        Ok(absorbed)
    }
}

/// The change's record, and the records of what it replaced, should they differ.
fn touch(
    conn: &Transaction<'_>,
    change: &Change,
    touched: &mut BTreeSet<project::RecordKey>,
) -> Result<(), BookError> {
    touched.insert((change.noun.clone(), change.record.clone()));
    for id in &change.replaces {
        if let Some(replaced) = log::by_id(conn, id)? {
            touched.insert((replaced.noun, replaced.record));
        }
    }
    Ok(())
}
