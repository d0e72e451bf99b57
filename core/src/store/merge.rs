//! Merging: the union of two logs, projected anew where it touched something; what a pack carries.

use std::collections::BTreeSet;

use rusqlite::{Connection, OptionalExtension, Transaction, TransactionBehavior};

use super::change::{COLUMNS, Change};
use super::clock::{AHEAD_ALLOWED_MS, LogClock};
use super::edit::save_clock;
use super::project;
use super::read::Reader;
use super::{Store, log};
use crate::error::BookError;
use crate::record::{Fault, Id, Moment, Noun, hash_of_photo};

/// Part of the log, in the order in which this phone got it.
#[derive(Debug, Clone, PartialEq)]
pub struct ChangesPage {
    /// The changes.
    pub changes: Vec<Change>,
    /// Number of the last; ask with it for the next ones.
    pub last_seq: i64,
}

/// What came in.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Absorbed {
    /// Changes that were new here.
    pub taken: u32,
    /// Changes that were known.
    pub known: u32,
    /// How far in milliseconds another phone's clock is ahead of this one's, if by more than
    /// [`AHEAD_ALLOWED_MS`]: one of the two is wrong.
    pub ahead_ms: Option<i64>,
    /// That phone; empty where none is ahead.
    pub ahead_device: String,
}

/// Takes one change, or says why not.
pub type TakeChange<'a> = dyn FnMut(&Change) -> Result<(), BookError> + 'a;

impl Reader<'_> {
    /// At most `most` changes that this phone got after number `seq` (0 for all).
    ///
    /// # Errors
    /// As the database reports.
    pub fn changes_since(&self, seq: i64, most: u32) -> Result<ChangesPage, BookError> {
        self.placed(since(self.conn, seq, most))
    }

    /// All changes of a site, with those of crew, gear, codebook and house values: what a pack
    /// carries. The whole crew and all gear, for the judgement reads them all: who may climb, and
    /// with what.
    ///
    /// # Errors
    /// As the database reports.
    pub fn changes_of_site(&self, site: &Id) -> Result<Vec<Change>, BookError> {
        let mut changes = Vec::new();
        self.each_change_of_site(site, &mut |change| {
            changes.push(change.clone());
            Ok(())
        })?;
        Ok(changes)
    }

    /// The same, one at a time.
    ///
    /// # Errors
    /// As the database reports; what `take` reports.
    pub fn each_change_of_site(
        &self,
        site: &Id,
        take: &mut TakeChange<'_>,
    ) -> Result<(), BookError> {
        let query =
            format!("SELECT {COLUMNS} FROM change WHERE site = ?1 OR site IS NULL ORDER BY seq");
        let mut each = || -> Result<(), BookError> {
            let mut query = self.conn.prepare(&query)?;
            for change in query.query_map([site.as_str()], Change::of_row)? {
                take(&change?)?;
            }
            Ok(())
        };
        self.placed(each())
    }

    /// The names of photos that the changes of a site name anywhere, those named last first; also
    /// where this version does not know what names them.
    ///
    /// # Errors
    /// As the database reports.
    pub fn photos_named(&self, site: &Id) -> Result<Vec<String>, BookError> {
        let read = || -> Result<Vec<String>, BookError> {
            // A hash of 64 digits, an ending and the quotes of JSON.
            let mut query = self.conn.prepare(
                "SELECT value FROM change
                 WHERE (site = ?1 OR site IS NULL) AND length(value) BETWEEN 68 AND 72
                 GROUP BY value ORDER BY max(seq) DESC",
            )?;
            let rows = query.query_map([site.as_str()], |row| row.get::<_, String>(0))?;
            let mut names = Vec::new();
            for text in rows {
                if let Ok(name) = serde_json::from_str::<String>(&text?)
                    && hash_of_photo(&name).is_some()
                {
                    names.push(name);
                }
            }
            Ok(names)
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
        self.merged(at, Trust::OwnLog, &mut |take| {
            changes.iter().try_for_each(&mut *take)
        })
    }

    /// The same for changes that `feed` hands over one at a time, as from a pack; what is known
    /// here has to be the same there.
    ///
    /// # Errors
    /// `Refused` with the changes that are none, that stand here with other content under their
    /// id, or whose record belongs to another site here; whatever `feed` reports. Nothing was taken
    /// then.
    pub fn take_in(
        &mut self,
        at: Moment,
        feed: &mut dyn FnMut(&mut TakeChange<'_>) -> Result<(), BookError>,
    ) -> Result<Absorbed, BookError> {
        self.merged(at, Trust::Stranger, feed)
    }

    fn merged(
        &mut self,
        at: Moment,
        trust: Trust,
        feed: &mut dyn FnMut(&mut TakeChange<'_>) -> Result<(), BookError>,
    ) -> Result<Absorbed, BookError> {
        let place = self.place();
        let before = self.clock.last();
        let kept = self.try_merge(at, trust, feed);
        if kept.is_err() {
            self.clock = LogClock::after(before);
        }
        kept.map_err(|fault| super::faults::placed(fault, &place))
    }

    fn try_merge(
        &mut self,
        at: Moment,
        trust: Trust,
        feed: &mut dyn FnMut(&mut TakeChange<'_>) -> Result<(), BookError>,
    ) -> Result<Absorbed, BookError> {
        let conn = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)?;
        let mut merge = Merge {
            conn: &conn,
            clock: &mut self.clock,
            at,
            trust,
            line: 0,
            touched: BTreeSet::new(),
            faults: Vec::new(),
            absorbed: Absorbed::default(),
        };
        feed(&mut |change| merge.take(change))?;
        let Merge {
            touched,
            faults,
            absorbed,
            ..
        } = merge;
        if !faults.is_empty() {
            return Err(BookError::Refused { faults });
        }
        project::project_all(&conn, &touched)?;
        save_clock(&conn, &self.clock)?;
        conn.commit()?;
        Ok(absorbed)
    }
}

/// Where changes come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Trust {
    /// This book's own log, as far as it could be saved: what is known here stays as it is.
    OwnLog,
    /// Somebody else's file: what does not agree with this log is told.
    Stranger,
}

/// A merge in the making; nothing is kept until it ends well.
struct Merge<'a> {
    conn: &'a Transaction<'a>,
    clock: &'a mut LogClock,
    at: Moment,
    trust: Trust,
    line: usize,
    touched: BTreeSet<project::RecordKey>,
    faults: Vec<Fault>,
    absorbed: Absorbed,
}

impl Merge<'_> {
    fn take(&mut self, change: &Change) -> Result<(), BookError> {
        self.line += 1;
        if let Some(fault) = change.fault(self.line) {
            self.faults.push(fault);
        }
        if !self.faults.is_empty() {
            // Everything is told; nothing will be kept.
            return Ok(());
        }
        if !log::append(self.conn, change)? {
            self.absorbed.known += 1;
            return self.see_same(change);
        }
        self.absorbed.taken += 1;
        self.see_own_site(change)?;
        self.clock.see(&change.hlc);
        touch(self.conn, change, &mut self.touched)?;
        let ahead = change.utc_ms().saturating_sub(self.at.utc_ms);
        if ahead > self.absorbed.ahead_ms.unwrap_or(AHEAD_ALLOWED_MS) {
            self.absorbed.ahead_ms = Some(ahead);
            self.absorbed.ahead_device.clone_from(&change.device);
        }
        Ok(())
    }

    /// A change that is known has to be the same: the log is never altered.
    fn see_same(&mut self, change: &Change) -> Result<(), BookError> {
        let known = log::by_id(self.conn, &change.id)?;
        if self.trust == Trust::Stranger && known.is_none_or(|known| !known.says_the_same(change)) {
            self.refuse("fault.change-differs", &change.id);
        }
        Ok(())
    }

    /// A record that lies in another site here is another record under the same id.
    fn see_own_site(&mut self, change: &Change) -> Result<(), BookError> {
        let key = (change.noun.clone(), change.record.clone());
        let noun = Noun::of_table(&change.noun).filter(|noun| *noun != Noun::Site);
        let (Some(noun), Some(site), false) = (noun, &change.site, self.touched.contains(&key))
        else {
            return Ok(());
        };
        let query = format!("SELECT site FROM {} WHERE id = ?1", noun.place().table);
        let here: Option<Option<String>> = self
            .conn
            .prepare_cached(&query)?
            .query_row([&change.record], |row| row.get(0))
            .optional()?;
        let elsewhere = here.flatten().is_some_and(|here| here != *site);
        if self.trust == Trust::Stranger && elsewhere {
            self.refuse("fault.record-elsewhere", &change.record);
        }
        Ok(())
    }

    fn refuse(&mut self, code: &str, found: &str) {
        let place = format!("line {}", self.line);
        self.faults.push(Fault::new(code, place, found, ""));
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
