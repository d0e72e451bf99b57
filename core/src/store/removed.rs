//! What one person removed and another changed without knowing: shown until it is settled, for an
//! inspection must not vanish with a tree that somebody else took off the list.

use rusqlite::Connection;

use super::change::GONE;
use super::fields;
use super::log;
use crate::error::BookError;
use crate::record::{Id, Noun};

/// A record removed by one and changed, itself or in what lies in it, by another later on.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RemovedButChanged {
    /// The noun, by its table name.
    pub noun: String,
    /// The record.
    pub record: Id,
    /// Who removed it.
    pub removed_by: Id,
    /// Who changed it.
    pub changed_by: Id,
}

/// Removed records of a site (or of the book) that were changed after their removal.
pub fn find(conn: &Connection, site: Option<&Id>) -> Result<Vec<RemovedButChanged>, BookError> {
    let mut found = Vec::new();
    for known in fields::all() {
        let table = known.place.table;
        let mut query = conn.prepare_cached(&format!(
            "SELECT id FROM {table} WHERE site IS ?1 AND gone = 1 ORDER BY id"
        ))?;
        let ids = query.query_map([site.map(Id::as_str)], |row| row.get::<_, String>(0))?;
        for id in ids {
            let id = id?;
            let heads = log::heads(conn, table, &id)?;
            let Some(removal) = heads.iter().rev().find(|change| change.field == GONE) else {
                continue;
            };
            if let Some(changed_by) = changed_after(conn, known.place.noun, &id, &removal.hlc)? {
                found.push(RemovedButChanged {
                    noun: table.to_owned(),
                    record: Id(id),
                    removed_by: Id(removal.person.clone()),
                    changed_by,
                });
            }
        }
    }
    Ok(found)
}

/// Who changed a record, or what lies in it, after a logical time: nobody who knew of the removal
/// could.
fn changed_after(
    conn: &Connection,
    noun: Noun,
    id: &str,
    hlc: &str,
) -> Result<Option<Id>, BookError> {
    let table = noun.place().table;
    let later = log::heads(conn, table, id)?
        .into_iter()
        .find(|change| change.field != GONE && change.hlc.as_str() > hlc);
    if let Some(change) = later {
        return Ok(Some(Id(change.person)));
    }
    let lists = fields::of(noun).map_or(&[][..], |known| &known.lists);
    for (_, child) in lists {
        let mut query = conn.prepare_cached(&format!(
            "SELECT id FROM {} WHERE parent = ?1 AND gone = 0 ORDER BY id",
            child.place().table
        ))?;
        let ids = query.query_map([id], |row| row.get::<_, String>(0))?;
        for id in ids {
            if let Some(person) = changed_after(conn, *child, &id?, hlc)? {
                return Ok(Some(person));
            }
        }
    }
    Ok(None)
}
