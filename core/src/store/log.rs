//! Appends changes, and finds what nobody replaced.

use rusqlite::{Connection, OptionalExtension, params};

use super::change::{COLUMNS, Change};
use crate::error::BookError;

/// Appends a change unless the log has it; says whether it was new.
pub fn append(conn: &Connection, change: &Change) -> Result<bool, BookError> {
    let added = conn
        .prepare_cached(
            "INSERT OR IGNORE INTO change
             (id, hlc, device, person, edit, site, noun, record, field, value, replaces)
             VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)",
        )?
        .execute(params![
            change.id,
            change.hlc,
            change.device,
            change.person,
            change.edit,
            change.site,
            change.noun,
            change.record,
            change.field,
            change.value.to_string(),
            serde_json::to_string(&change.replaces).map_err(super::faults::defect)?,
        ])?;
    if added == 0 {
        return Ok(false);
    }
    note_replaced(conn, change)?;
    Ok(true)
}

/// Notes what a change replaced: worked out from the log, and kept to find what still stands.
pub fn note_replaced(conn: &Connection, change: &Change) -> Result<(), BookError> {
    for replaced in &change.replaces {
        conn.prepare_cached("INSERT OR IGNORE INTO replaced (id) VALUES (?1)")?
            .execute([replaced])?;
    }
    Ok(())
}

/// The changes to a record that nobody replaced, in the one fixed order: logical time, device, id.
pub fn heads(conn: &Connection, noun: &str, record: &str) -> Result<Vec<Change>, BookError> {
    let mut query = conn.prepare_cached(&format!(
        "SELECT {COLUMNS} FROM change AS one WHERE noun = ?1 AND record = ?2
         AND NOT EXISTS (SELECT 1 FROM replaced WHERE replaced.id = one.id)
         ORDER BY hlc, device, id"
    ))?;
    let rows = query.query_map([noun, record], Change::of_row)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// Every change to a record in the one fixed order.
pub fn of_record(conn: &Connection, noun: &str, record: &str) -> Result<Vec<Change>, BookError> {
    let mut query = conn.prepare_cached(&format!(
        "SELECT {COLUMNS} FROM change WHERE noun = ?1 AND record = ?2 ORDER BY hlc, device, id"
    ))?;
    let rows = query.query_map([noun, record], Change::of_row)?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// The change of this id.
pub fn by_id(conn: &Connection, id: &str) -> Result<Option<Change>, BookError> {
    let mut query = conn.prepare_cached(&format!("SELECT {COLUMNS} FROM change WHERE id = ?1"))?;
    Ok(query.query_row([id], Change::of_row).optional()?)
}

/// How far back the log is looked at for what was used last.
const USED_LATELY: i64 = 20_000;

/// The texts that a field was given last, each once, the last first.
pub fn used_last(
    conn: &Connection,
    noun: &str,
    field: &str,
    most: u32,
) -> Result<Vec<String>, BookError> {
    let from = last_seq(conn)?.saturating_sub(USED_LATELY);
    let mut query = conn.prepare_cached(
        "SELECT json_extract(value, '$') AS text FROM change
         WHERE seq > ?1 AND noun = ?2 AND field = ?3 AND json_type(value) = 'text'
         GROUP BY text ORDER BY max(seq) DESC LIMIT ?4",
    )?;
    let rows = query.query_map(params![from, noun, field, most], |row| row.get(0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// The texts that a field was given lately, each once, the most frequent first.
pub fn used_most(
    conn: &Connection,
    noun: &str,
    field: &str,
    most: u32,
) -> Result<Vec<String>, BookError> {
    let from = last_seq(conn)?.saturating_sub(USED_LATELY);
    let mut query = conn.prepare_cached(
        "SELECT json_extract(value, '$') AS text FROM change
         WHERE seq > ?1 AND noun = ?2 AND field = ?3 AND json_type(value) = 'text'
         GROUP BY text ORDER BY count(*) DESC, max(seq) DESC LIMIT ?4",
    )?;
    let rows = query.query_map(params![from, noun, field, most], |row| row.get(0))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// The number of the last change of the log, 0 for an empty one.
pub fn last_seq(conn: &Connection) -> Result<i64, BookError> {
    Ok(
        conn.query_row("SELECT coalesce(max(seq), 0) FROM change", [], |row| {
            row.get(0)
        })?,
    )
}
