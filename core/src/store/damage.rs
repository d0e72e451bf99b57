//! Damage: the files are moved aside together, never deleted; the newest sound backup takes their
//! place; and what can still be read of the damaged log is merged into it.

use std::fs;
use std::path::{Path, PathBuf};

use rusqlite::{Connection, OpenFlags};

use super::backup::{self, stamp};
use super::change::{COLUMNS, Change};
use super::{DATABASE, QUARANTINE, Store};
use crate::error::BookError;
use crate::record::Moment;

/// What opening found and did.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Opening {
    /// There was no field book here before.
    pub new: bool,
    /// The older format it had.
    pub upgraded_from: Option<u32>,
    /// It was damaged, and what was done about it.
    pub repair: Option<Repair>,
}

/// What was done about a damaged database. A person has to be told.
#[derive(Debug, Clone, PartialEq)]
pub struct Repair {
    /// What the check found.
    pub detail: String,
    /// The folder where the damaged files are; empty if there were none.
    pub kept: String,
    /// Moment of the backup put in place, in milliseconds since 1970 (UTC); nothing if none was
    /// sound and the book starts empty.
    pub backup_ms: Option<i64>,
    /// Changes read from the damaged log that the backup did not have.
    pub saved_changes: u32,
}

impl Store {
    /// Repairs an open field book after a call reported `Damaged`: as opening would.
    ///
    /// # Errors
    /// As [`Store::open`].
    pub fn mend(&mut self, detail: &str, at: Moment) -> Result<(), BookError> {
        let Some(folder) = self.folder.clone() else {
            return Ok(());
        };
        // The connection has to let go of the files before they are moved.
        self.conn = Connection::open_in_memory()?;
        let device = self.device.clone();
        *self = repair(&folder, &device, detail, at)?;
        Ok(())
    }
}

/// Moves the damaged files aside, restores, merges what can still be read.
pub fn repair(folder: &Path, device: &str, detail: &str, at: Moment) -> Result<Store, BookError> {
    let kept = quarantine(folder, at)?;
    let mut backup_ms = None;
    for (moment, path) in backup::at_hand(folder) {
        if backup::complaint(&path)?.is_none() {
            backup::put_in_place(&path, folder)?;
            backup_ms = Some(moment);
            break;
        }
    }
    let mut store = Store::open_sound(folder, device, at)?;
    let readable = kept.as_deref().map_or_else(Vec::new, salvage);
    let saved = store.absorb(&readable, at)?;
    store.opening.repair = Some(Repair {
        detail: detail.to_owned(),
        kept: kept.map_or_else(String::new, |kept| kept.display().to_string()),
        backup_ms,
        saved_changes: saved.taken,
    });
    Ok(store)
}

/// Moves database, `-wal` and `-shm` together into a folder of their own.
fn quarantine(folder: &Path, at: Moment) -> Result<Option<PathBuf>, BookError> {
    let files = ["-shm", "-wal", ""].map(|ending| format!("{DATABASE}{ending}"));
    if !files.iter().any(|name| folder.join(name).exists()) {
        return Ok(None);
    }
    let quarantine = folder.join(QUARANTINE);
    let mut kept = quarantine.join(stamp(at));
    // A second damage within a millisecond is kept as well.
    for again in 2..1000 {
        if !kept.exists() {
            break;
        }
        kept = quarantine.join(format!("{}-{again}", stamp(at)));
    }
    fs::create_dir_all(&kept).map_err(|cause| BookError::writing(&kept, &cause))?;
    // The database goes last: if this is cut short, the next opening finds it and goes on. None of
    // the three may stay: a foreign log of writes would be played into the restored database.
    for name in files {
        let from = folder.join(&name);
        if from.exists() {
            fs::rename(&from, kept.join(&name))
                .map_err(|cause| BookError::writing(&from, &cause))?;
        }
    }
    backup::sync_folder(&kept);
    backup::sync_folder(folder);
    Ok(Some(kept))
}

/// The changes that can still be read, from the start up to the damage and from the end back to it.
fn salvage(kept: &Path) -> Vec<Change> {
    let path = kept.join(DATABASE);
    let Ok(conn) = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY) else {
        return Vec::new();
    };
    let mut found = Vec::new();
    let whole = read_on(&conn, "ASC", &mut found);
    if !whole {
        read_on(&conn, "DESC", &mut found);
    }
    found.retain(|change| change.fault(1).is_none());
    found
}

/// Reads changes until something cannot be read; says whether it came to the end.
fn read_on(conn: &Connection, order: &str, found: &mut Vec<Change>) -> bool {
    let Ok(mut query) = conn.prepare(&format!(
        "SELECT {COLUMNS} FROM change ORDER BY seq {order}"
    )) else {
        return false;
    };
    let Ok(rows) = query.query_map([], Change::of_row) else {
        return false;
    };
    for row in rows {
        match row {
            Ok(change) => found.push(change),
            Err(_) => return false,
        }
    }
    true
}
