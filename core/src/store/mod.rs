//! The only place that opens the field book's database: an append-only log and its projection.
//!
//! Every edit is a number of [`Change`]s, appended and never altered; the tables, one a noun, are
//! worked out from the log in the same transaction. Audit, undo, history, merging and repair are
//! therefore one thing: reading the log.
//!
//! | file | what it does |
//! | --- | --- |
//! | `open`, `migrate` | opens, upgrades, finishes, in one place |
//! | `change`, `clock` | one change; logical time and ids from a moment handed in |
//! | `fields` | which fields a noun has and how each is kept |
//! | `log` | appends changes, finds what nobody replaced |
//! | `project` | the log → the tables, in one fixed order |
//! | `flatten`, `ids`, `put` | nested records in |
//! | `edit`, `write`, `undo` | one transaction an edit, and back |
//! | `refresh` | a site that was read, brought up to an edit |
//! | `read`, `nest`, `fit` | the tables → nested records |
//! | `standing`, `removed` | what stands side by side until a person settles it |
//! | `merge` | the union of two logs |
//! | `backup`, `thin`, `damage`, `check` | copies, repair, health |
//! | `keep` | settings and the cache of judgements, outside the log |
//!
//! The store has no clock: each edit, backup and repair is handed its [`Moment`].

mod backup;
mod change;
mod check;
mod clock;
mod damage;
mod edit;
mod faults;
mod fields;
mod fit;
mod flatten;
mod ids;
mod keep;
mod last_edit;
mod log;
mod merge;
mod migrate;
mod nest;
mod open;
mod project;
mod put;
mod read;
mod refresh;
mod removed;
mod standing;
mod thin;
mod undo;
mod write;

use std::path::{Path, PathBuf};

use rusqlite::Connection;

use crate::error::BookError;
use crate::record::{Id, Moment};

pub use change::Change;
pub use check::Health;
pub use clock::AHEAD_ALLOWED_MS;
pub use damage::{Opening, Repair};
pub use edit::{Done, Edit};
pub use last_edit::LastEdit;
pub use merge::{Absorbed, ChangesPage, TakeChange};
pub use read::{Book, LoadedSite, Reader, SiteLine, Snapshot, Whereabouts};
pub use removed::RemovedButChanged;
pub use standing::{Standing, StandingValue, UnreadValue};
pub use thin::superfluous;

/// File name of the database in a field book's folder.
pub const DATABASE: &str = "field-book.db";
/// Folder of the photos, named by hash.
pub const PHOTOS: &str = "photos";
/// Folder of the backups.
pub const BACKUPS: &str = "backups";
/// Folder where damaged databases are kept.
pub const QUARANTINE: &str = "quarantine";

/// Who edits, and when.
#[derive(Debug, Clone, PartialEq)]
pub struct Author {
    /// The person; empty when nobody is named yet.
    pub person: Id,
    /// The moment, from the field book's one clock.
    pub at: Moment,
}

/// An open field book: one connection that writes.
#[derive(Debug)]
pub struct Store {
    conn: Connection,
    folder: Option<PathBuf>,
    device: String,
    clock: clock::LogClock,
    opening: Opening,
}

impl Store {
    /// The folder of the field book; nothing for one in memory.
    pub fn folder(&self) -> Option<&Path> {
        self.folder.as_deref()
    }

    /// This device's name in the log.
    pub fn device(&self) -> &str {
        &self.device
    }

    /// What opening found and did: new, upgraded, repaired.
    pub fn opening(&self) -> &Opening {
        &self.opening
    }

    /// The database's file, for errors.
    fn place(&self) -> String {
        self.folder.as_ref().map_or_else(String::new, |folder| {
            folder.join(DATABASE).display().to_string()
        })
    }

    /// Puts the database's file into an error that only knows its name.
    fn placed(&self, fault: BookError) -> BookError {
        faults::placed(fault, &self.place())
    }

    /// Bounds the size of the database in pages of 4 KiB: an edit beyond it fails as on a full
    /// disk and leaves everything as it was. 0 lifts the bound.
    ///
    /// # Errors
    /// [`BookError`] as the database reports it.
    pub fn bound_pages(&self, pages: u32) -> Result<(), BookError> {
        let most = if pages == 0 { u32::MAX - 1 } else { pages };
        self.conn
            .query_row(&format!("PRAGMA max_page_count = {most}"), [], |_| Ok(()))
            .map_err(|fault| self.placed(fault.into()))
    }
}
