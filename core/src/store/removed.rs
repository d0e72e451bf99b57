//! What one person removed and another changed without knowing: shown until it is settled, for an
//! inspection must not vanish with a tree that somebody else took off the list.

use std::collections::BTreeMap;

use rusqlite::{Connection, OptionalExtension, params};
use serde_json::Value;

use super::change::{Change, GONE, SEEN};
use super::fields;
use super::log;
use crate::error::BookError;
use crate::record::{Id, Noun};

/// A record removed by one and changed, itself or in what lies in it, by another whose change the
/// first did not know.
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

/// Where what the author of a removal knew is noted: at the site, or at the record itself.
pub fn seen_at<'a>(noun: &'a str, id: &'a str, site: Option<&'a str>) -> (&'a str, &'a str) {
    match site {
        Some(site) => (Noun::Site.place().table, site),
        None => (noun, id),
    }
}

/// Of every device the time of its latest change of a site, or of the book, that this log has. A
/// pack carries all changes of a site, so that whoever has one of a device has those before it.
pub fn seen_of(conn: &Connection, site: Option<&str>) -> Result<Value, BookError> {
    let mut query = conn.prepare_cached(
        "SELECT device, max(hlc) FROM change WHERE site IS ?1 GROUP BY device ORDER BY device",
    )?;
    let rows = query.query_map([site], |row| Ok((row.get::<_, String>(0)?, row.get(1)?)))?;
    let mut seen = serde_json::Map::new();
    for row in rows {
        let (device, hlc): (String, String) = row?;
        seen.insert(device, Value::from(hlc));
    }
    Ok(Value::Object(seen))
}

/// What the author of a removal knew.
struct Removal {
    change: Change,
    /// The latest time of every device; nothing where it was not noted.
    seen: Option<BTreeMap<String, String>>,
}

impl Removal {
    fn of(conn: &Connection, change: Change) -> Result<Removal, BookError> {
        let (noun, holder) = seen_at(&change.noun, &change.record, change.site.as_deref());
        let seen: Option<String> = conn
            .prepare_cached(
                "SELECT value FROM change
                 WHERE noun = ?1 AND record = ?2 AND field = ?3 AND edit = ?4 LIMIT 1",
            )?
            .query_row(params![noun, holder, SEEN, change.edit], |row| row.get(0))
            .optional()?;
        let seen = seen.and_then(|text| serde_json::from_str(&text).ok());
        Ok(Removal { change, seen })
    }

    fn knew(&self, change: &Change) -> bool {
        match &self.seen {
            Some(seen) => seen
                .get(&change.device)
                .is_some_and(|latest| change.hlc <= *latest),
            None => change.hlc <= self.change.hlc,
        }
    }
}

/// Removed records of a site (or of the book) that somebody changed without its remover's knowledge.
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
            let removals = heads
                .into_iter()
                .filter(|change| change.field == GONE && change.value == Value::Bool(true))
                .map(|change| Removal::of(conn, change))
                .collect::<Result<Vec<_>, _>>()?;
            let Some(last) = removals.last() else {
                continue;
            };
            let removed_by = Id(last.change.person.clone());
            if let Some(changed_by) = changed_unknown(conn, known.place.noun, &id, &removals)? {
                found.push(RemovedButChanged {
                    noun: table.to_owned(),
                    record: Id(id),
                    removed_by,
                    changed_by,
                });
            }
        }
    }
    Ok(found)
}

/// Removed sites that somebody changed without their remover's knowledge.
pub fn find_sites(conn: &Connection) -> Result<Vec<RemovedButChanged>, BookError> {
    let mut query = conn.prepare_cached("SELECT id FROM site WHERE gone = 1 ORDER BY id")?;
    let ids = query
        .query_map([], |row| row.get::<_, String>(0))?
        .collect::<rusqlite::Result<Vec<String>>>()?;
    let mut found = Vec::new();
    for id in ids {
        let of_site = find(conn, Some(&Id(id)))?;
        let table = Noun::Site.place().table;
        found.extend(of_site.into_iter().filter(|one| one.noun == table));
    }
    Ok(found)
}

/// Who changed a record, or what lies in it, so that none of those who removed it knew.
fn changed_unknown(
    conn: &Connection,
    noun: Noun,
    id: &str,
    removals: &[Removal],
) -> Result<Option<Id>, BookError> {
    let table = noun.place().table;
    let unknown = log::heads(conn, table, id)?.into_iter().find(|change| {
        let is_entered = change.field != GONE && change.field != SEEN;
        is_entered && !removals.iter().any(|removal| removal.knew(change))
    });
    if let Some(change) = unknown {
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
            if let Some(person) = changed_unknown(conn, *child, &id?, removals)? {
                return Ok(Some(person));
            }
        }
    }
    Ok(None)
}
