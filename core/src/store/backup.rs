//! Backups: written aside, checked, made lasting, renamed, thinned.

use std::fs::{self, File};
use std::path::{Path, PathBuf};

use chrono::{DateTime, NaiveDateTime};
use rusqlite::{Connection, OpenFlags};

use super::{BACKUPS, DATABASE, QUARANTINE, Store, migrate, superfluous};
use crate::error::BookError;
use crate::record::Moment;

/// The moment in a backup's name.
const STAMP: &str = "%Y%m%dT%H%M%S%3fZ";

impl Store {
    /// Makes a backup and thins the older ones. Returns its path.
    ///
    /// # Errors
    /// `DiskFull`, `Unwritable`; `Damaged` if the copy fails its check. No half backup stays.
    pub fn backup(&self, at: Moment) -> Result<PathBuf, BookError> {
        let folder = self.folder.as_deref().ok_or_else(|| BookError::NotFound {
            kind: "folder".to_owned(),
            id: "of a book in memory".to_owned(),
        })?;
        make(&self.conn, folder, at).map_err(|fault| self.placed(fault))
    }

    /// Makes a backup of the book in a folder over a connection of its own that only reads, while
    /// others go on editing.
    ///
    /// # Errors
    /// As [`Store::backup`].
    pub fn backup_of(folder: &Path, at: Moment) -> Result<PathBuf, BookError> {
        let place = folder.join(DATABASE);
        let copy = || -> Result<PathBuf, BookError> {
            let conn = Connection::open_with_flags(&place, OpenFlags::SQLITE_OPEN_READ_ONLY)?;
            conn.busy_timeout(std::time::Duration::from_secs(5))?;
            make(&conn, folder, at)
        };
        copy().map_err(|fault| super::faults::placed(fault, &place.display().to_string()))
    }

    /// The backups at hand with their moments in milliseconds since 1970 (UTC), newest first.
    pub fn backups(&self) -> Vec<(i64, PathBuf)> {
        self.folder.as_deref().map_or_else(Vec::new, at_hand)
    }
}

impl Store {
    /// The folders of damaged files that were put aside, with their moments in milliseconds since
    /// 1970 (UTC), the latest first.
    pub fn damage_kept(&self) -> Vec<(i64, PathBuf)> {
        let Some(folder) = self.folder.as_deref() else {
            return Vec::new();
        };
        stamped(&folder.join(QUARANTINE), |path| path.is_dir())
    }
}

/// A moment as it stands in names of files and folders.
pub fn stamp(at: Moment) -> String {
    DateTime::from_timestamp_millis(at.utc_ms)
        .unwrap_or_default()
        .format(STAMP)
        .to_string()
}

/// Writes a backup of an open database.
pub fn make(conn: &Connection, folder: &Path, at: Moment) -> Result<PathBuf, BookError> {
    let backups = folder.join(BACKUPS);
    fs::create_dir_all(&backups).map_err(|cause| BookError::writing(&backups, &cause))?;
    let lasting = backups.join(format!("{}.db", stamp(at)));
    let aside = backups.join(format!("{}.partial", stamp(at)));
    discard(&aside);
    let written = write_aside(conn, &aside).and_then(|()| {
        fs::rename(&aside, &lasting).map_err(|cause| BookError::writing(&lasting, &cause))
    });
    if let Err(fault) = written {
        discard(&aside);
        return Err(fault);
    }
    sync_folder(&backups);
    let moments: Vec<i64> = at_hand(folder).iter().map(|(moment, _)| *moment).collect();
    let may_go = superfluous(&moments, at.utc_ms);
    for (moment, path) in at_hand(folder) {
        if may_go.contains(&moment) {
            discard(&path);
        }
    }
    Ok(lasting)
}

fn write_aside(conn: &Connection, aside: &Path) -> Result<(), BookError> {
    conn.execute("VACUUM INTO ?1", [aside.display().to_string()])
        .map_err(|fault| super::faults::placed(fault.into(), &aside.display().to_string()))?;
    if let Some(detail) = complaint(aside)? {
        return Err(BookError::Damaged {
            place: aside.display().to_string(),
            detail,
            kept: String::new(),
        });
    }
    make_lasting(aside)
}

/// Waits until a file's bytes are on the disk.
pub fn make_lasting(path: &Path) -> Result<(), BookError> {
    File::options()
        .write(true)
        .open(path)
        .and_then(|file| file.sync_all())
        .map_err(|cause| BookError::writing(path, &cause))
}

/// Makes a rename lasting, where the system can; where it cannot, the rename itself still holds.
pub fn sync_folder(folder: &Path) {
    if let Ok(folder) = File::open(folder) {
        let _ = folder.sync_all();
    }
}

/// Takes a file away that nobody needs; one that will not go does no harm.
fn discard(path: &Path) {
    let _ = fs::remove_file(path);
}

/// The backups of a folder, newest first.
pub fn at_hand(folder: &Path) -> Vec<(i64, PathBuf)> {
    stamped(&folder.join(BACKUPS), |path| {
        path.extension().is_some_and(|end| end == "db")
    })
}

/// What lies in a folder and is named by its moment, newest first.
fn stamped(folder: &Path, is_meant: impl Fn(&Path) -> bool) -> Vec<(i64, PathBuf)> {
    let mut found: Vec<(i64, PathBuf)> = fs::read_dir(folder)
        .into_iter()
        .flatten()
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| is_meant(path))
        .filter_map(|path| {
            let name = path.file_stem()?.to_str()?;
            // A second one of the same millisecond has a number behind its moment.
            let name = name.split('-').next()?;
            let moment = NaiveDateTime::parse_from_str(name, STAMP).ok()?;
            Some((moment.and_utc().timestamp_millis(), path))
        })
        .collect();
    found.sort_by(|one, other| other.cmp(one));
    found
}

/// What a check finds wrong with a database file; nothing if it is a sound field book.
///
/// # Errors
/// What keeps it from being looked at, other than damage.
pub fn complaint(path: &Path) -> Result<Option<String>, BookError> {
    let look = || -> Result<Option<String>, BookError> {
        let conn = Connection::open_with_flags(path, OpenFlags::SQLITE_OPEN_READ_ONLY)?;
        let (format, application) = migrate::found(&conn)?;
        if application != migrate::APPLICATION_ID || format > migrate::KNOWN_FORMAT {
            return Ok(Some("not a field book of this version".to_owned()));
        }
        quick_check(&conn)
    };
    match look() {
        Err(BookError::Damaged { detail, .. }) => Ok(Some(detail)),
        other => other,
    }
}

/// The first complaints of SQLite's quick check; nothing if it says all is well.
pub fn quick_check(conn: &Connection) -> Result<Option<String>, BookError> {
    let mut query = conn.prepare("PRAGMA quick_check(5)")?;
    let lines = query
        .query_map([], |row| row.get::<_, String>(0))?
        .collect::<rusqlite::Result<Vec<String>>>()?;
    Ok((lines != ["ok"]).then(|| lines.join("; ")))
}

/// Puts a backup in the database's place: copied aside, made lasting, renamed.
pub fn put_in_place(backup: &Path, folder: &Path) -> Result<(), BookError> {
    let aside = folder.join(format!("{DATABASE}.partial"));
    let lasting = folder.join(DATABASE);
    let copied = fs::copy(backup, &aside)
        .map_err(|cause| BookError::writing(&aside, &cause))
        .and_then(|_| make_lasting(&aside))
        .and_then(|()| {
            fs::rename(&aside, &lasting).map_err(|cause| BookError::writing(&lasting, &cause))
        });
    if copied.is_err() {
        discard(&aside);
    }
    sync_folder(folder);
    copied
}
