//! The health of a field book, for a person to read.

use rusqlite::Connection;

use super::read::Reader;
use super::{PHOTOS, Store, backup, fields, project};
use crate::error::BookError;

/// How a field book is.
#[derive(Debug, Clone, PartialEq)]
pub struct Health {
    /// What SQLite's quick check complains of; nothing if all is well.
    pub complaint: Option<String>,
    /// Whether the tables are what the log says.
    pub tables_match_log: bool,
    /// Photos that records name and that are not in the folder.
    pub missing_photos: Vec<String>,
    /// Changes in the log.
    pub changes: u64,
    /// Values that stand side by side.
    pub standing: u64,
    /// Changes that this version cannot read.
    pub unread: u64,
    /// Records that are there, by table, removed ones not counted.
    pub counts: Vec<(String, u64)>,
}

impl Health {
    /// Whether nothing needs a person.
    pub fn is_sound(&self) -> bool {
        self.complaint.is_none() && self.tables_match_log && self.missing_photos.is_empty()
    }
}

impl Store {
    /// Looks the whole field book over. The tables are worked out anew in memory and compared; the
    /// book itself is only read.
    ///
    /// # Errors
    /// As the database reports; damage is part of the answer, where it can still be read.
    pub fn check(&self) -> Result<Health, BookError> {
        let reader = self.read();
        let complaint = match reader.placed(backup::quick_check(reader.conn)) {
            Err(BookError::Damaged { detail, .. }) => Some(detail),
            other => other?,
        };
        let mut health = Health {
            tables_match_log: false,
            missing_photos: Vec::new(),
            changes: 0,
            standing: 0,
            unread: 0,
            counts: Vec::new(),
            complaint,
        };
        match reader.placed(self.look_over(&reader, &mut health)) {
            Err(BookError::Damaged { detail, .. }) => {
                health.complaint.get_or_insert(detail);
            }
            other => other?,
        }
        Ok(health)
    }

    fn look_over(&self, reader: &Reader<'_>, health: &mut Health) -> Result<(), BookError> {
        let conn = reader.conn;
        health.changes = count(conn, "SELECT count(*) FROM change")?;
        health.standing = count(
            conn,
            "SELECT count(*) FROM (SELECT DISTINCT noun, record, field FROM standing)",
        )?;
        health.unread = count(conn, "SELECT count(*) FROM unread")?;
        for known in fields::all() {
            let table = known.place.table;
            let here = count(
                conn,
                &format!("SELECT count(*) FROM {table} WHERE gone = 0"),
            )?;
            health.counts.push((table.to_owned(), here));
        }
        health.missing_photos = self.missing_photos(conn)?;
        health.tables_match_log = tables_match_log(conn)?;
        Ok(())
    }

    fn missing_photos(&self, conn: &Connection) -> Result<Vec<String>, BookError> {
        let Some(folder) = &self.folder else {
            return Ok(Vec::new());
        };
        let mut query = conn.prepare(
            "SELECT DISTINCT file FROM photo WHERE gone = 0 AND file IS NOT NULL ORDER BY file",
        )?;
        let files = query
            .query_map([], |row| row.get::<_, String>(0))?
            .collect::<rusqlite::Result<Vec<String>>>()?;
        let photos = folder.join(PHOTOS);
        Ok(files
            .into_iter()
            .filter(|file| !photos.join(file).is_file())
            .collect())
    }
}

fn count(conn: &Connection, query: &str) -> Result<u64, BookError> {
    let number: i64 = conn.query_row(query, [], |row| row.get(0))?;
    Ok(number.unsigned_abs())
}

/// Works the tables out anew in a copy in memory, and compares.
fn tables_match_log(conn: &Connection) -> Result<bool, BookError> {
    let mut copy = Connection::open_in_memory()?;
    rusqlite::backup::Backup::new(conn, &mut copy)?.run_to_completion(
        1_000,
        std::time::Duration::ZERO,
        None,
    )?;
    let before = project::fingerprint(&copy)?;
    let anew = copy.transaction()?;
    project::rebuild(&anew)?;
    Ok(project::fingerprint(&anew)? == before)
}
