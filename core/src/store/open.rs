//! Opens a field book, upgrades it, and finishes: in one place.

use std::fs::{self, File};
use std::io::Read;
use std::path::Path;

use rusqlite::{Connection, OpenFlags, TransactionBehavior};

use super::clock::{LogClock, read};
use super::read::Snapshot;
use super::{DATABASE, Opening, Store, backup, damage, migrate, project};
use crate::error::BookError;
use crate::record::Moment;

/// How long a call waits for another program that writes, in milliseconds.
const BUSY_MS: u64 = 5_000;

impl Store {
    /// Opens the field book in a folder, making folder and book if there are none. `device` is
    /// this device's lasting name; `at` is the present moment. A damaged database is moved aside,
    /// the newest sound backup is restored and what can still be read of the damaged log is merged
    /// into it: [`Store::opening`] says so.
    ///
    /// # Errors
    /// `Newer` for a book of a newer version, `Unreadable` for a database of another program, both
    /// left untouched; `Unwritable`, `DiskFull`, `Busy` as the system reports.
    pub fn open(folder: &Path, device: &str, at: Moment) -> Result<Store, BookError> {
        fs::create_dir_all(folder).map_err(|cause| BookError::writing(folder, &cause))?;
        let path = folder.join(DATABASE);
        // A log of writes without its database is the rest of a repair that was cut short.
        let has_rest = folder.join(format!("{DATABASE}-wal")).exists();
        let was_here = has_rest || !backup::at_hand(folder).is_empty();
        let bytes = fs::metadata(&path).map_or(0, |found| found.len());
        if bytes == 0 && was_here {
            return damage::repair(folder, device, "the database is missing or empty", at);
        }
        let format = look_at_header(&path)?;
        if bytes > 0 && format.is_none() {
            return damage::repair(folder, device, "the file is no database", at);
        }
        match Store::open_sound(folder, device, at) {
            Err(BookError::Damaged { detail, .. }) => damage::repair(folder, device, &detail, at),
            other => other,
        }
    }

    /// A field book in memory, for trying things out.
    ///
    /// # Errors
    /// As the database reports.
    pub fn in_memory(device: &str) -> Result<Store, BookError> {
        let mut conn = Connection::open_in_memory()?;
        migrate::migrate(&mut conn)?;
        finished(
            conn,
            None,
            device,
            Opening {
                new: true,
                ..Opening::default()
            },
        )
    }

    /// Opens without repair: damage is an error.
    pub(super) fn open_sound(folder: &Path, device: &str, at: Moment) -> Result<Store, BookError> {
        let path = folder.join(DATABASE);
        let place = path.display().to_string();
        open_file(&path, folder, device, at).map_err(|fault| super::faults::placed(fault, &place))
    }

    /// The present state over a second connection that only reads: long work reads from it while
    /// edits go on.
    ///
    /// # Errors
    /// `NotFound` for a book in memory; else as the database reports.
    pub fn snapshot(&self) -> Result<Snapshot, BookError> {
        let folder = self.folder.as_deref().ok_or_else(|| BookError::NotFound {
            kind: "folder".to_owned(),
            id: "of a book in memory".to_owned(),
        })?;
        let begin = || -> Result<Connection, BookError> {
            let conn = Connection::open_with_flags(
                folder.join(DATABASE),
                OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_NO_MUTEX,
            )?;
            conn.busy_timeout(std::time::Duration::from_millis(BUSY_MS))?;
            // The first read fixes the state.
            conn.execute_batch("BEGIN; SELECT count(*) FROM setting;")?;
            Ok(conn)
        };
        Ok(Snapshot {
            conn: begin().map_err(|fault| self.placed(fault))?,
            place: self.place(),
        })
    }

    /// Works out all tables anew from the log.
    ///
    /// # Errors
    /// As the database reports.
    pub fn rebuild_projection(&mut self) -> Result<(), BookError> {
        let place = self.place();
        let mut rebuild = || -> Result<(), BookError> {
            let conn = self
                .conn
                .transaction_with_behavior(TransactionBehavior::Immediate)?;
            project::rebuild(&conn)?;
            Ok(conn.commit()?)
        };
        rebuild().map_err(|fault| super::faults::placed(fault, &place))
    }
}

/// Reads format and application from the first bytes, before anything touches the file (SQLite,
/// 'Database File Format', offsets 60 and 68). The format; nothing for a missing file or one that is
/// no database.
fn look_at_header(path: &Path) -> Result<Option<u32>, BookError> {
    let mut header = Vec::new();
    match File::open(path) {
        Err(cause) if cause.kind() == std::io::ErrorKind::NotFound => return Ok(None),
        Err(cause) => return Err(BookError::reading(path, &cause)),
        Ok(file) => file
            .take(100)
            .read_to_end(&mut header)
            .map_err(|cause| BookError::reading(path, &cause))?,
    };
    if !header.starts_with(b"SQLite format 3\0") {
        return Ok(None);
    }
    let number = |at: usize| {
        let bytes = header
            .get(at..at + 4)
            .and_then(|four| <[u8; 4]>::try_from(four).ok());
        bytes.map_or(0, u32::from_be_bytes)
    };
    refuse_foreign(path, number(60), number(68))?;
    Ok(Some(number(60)))
}

/// Refuses what is newer than this version, or not ours.
fn refuse_foreign(path: &Path, format: u32, application: u32) -> Result<(), BookError> {
    let place = path.display().to_string();
    if application == migrate::APPLICATION_ID && format > migrate::KNOWN_FORMAT {
        return Err(BookError::Newer {
            place,
            found: format,
            known: migrate::KNOWN_FORMAT,
        });
    }
    if application != migrate::APPLICATION_ID && (format, application) != (0, 0) {
        return Err(BookError::Unreadable {
            place,
            reason: "it is a database of another program".to_owned(),
        });
    }
    Ok(())
}

fn open_file(path: &Path, folder: &Path, device: &str, at: Moment) -> Result<Store, BookError> {
    let written = look_at_header(path)?;
    let mut conn = Connection::open(path)?;
    prepare(&conn)?;
    let (format, application) = migrate::found(&conn)?;
    refuse_foreign(path, format, application)?;
    if format == 0 && written.is_some_and(|written| written > 0) {
        // SQLite takes a file cut down to less than a page for a new one.
        return Err(damaged(path, "the file was cut short".to_owned()));
    }
    let mut opening = Opening {
        new: format == 0,
        ..Opening::default()
    };
    if format > 0 {
        if let Some(detail) = backup::quick_check(&conn)? {
            return Err(damaged(path, detail));
        }
        if format < migrate::KNOWN_FORMAT {
            backup::make(&conn, folder, at)?;
            opening.upgraded_from = Some(format);
        }
    }
    conn.pragma_update(None, "journal_mode", "WAL")?;
    migrate::migrate(&mut conn)?;
    finished(conn, Some(folder), device, opening)
}

fn damaged(path: &Path, detail: String) -> BookError {
    BookError::Damaged {
        place: path.display().to_string(),
        detail,
        kept: String::new(),
    }
}

/// What every connection that writes needs, outside any transaction. FULL, for with NORMAL a power
/// cut may lose an edit that was confirmed.
fn prepare(conn: &Connection) -> Result<(), BookError> {
    conn.busy_timeout(std::time::Duration::from_millis(BUSY_MS))?;
    conn.pragma_update(None, "synchronous", "FULL")?;
    conn.pragma_update(None, "foreign_keys", "ON")?;
    conn.pragma_update(None, "journal_size_limit", 16 * 1024 * 1024)?;
    if cfg!(target_vendor = "apple") {
        conn.pragma_update(None, "fullfsync", "ON")?;
    }
    Ok(())
}

fn finished(
    conn: Connection,
    folder: Option<&Path>,
    device: &str,
    opening: Opening,
) -> Result<Store, BookError> {
    conn.set_prepared_statement_cache_capacity(128);
    let last: String =
        conn.query_row("SELECT coalesce((SELECT hlc FROM clock), '')", [], |row| {
            row.get(0)
        })?;
    Ok(Store {
        conn,
        folder: folder.map(Path::to_owned),
        device: device.to_owned(),
        clock: LogClock::after(read(&last)),
        opening,
    })
}
