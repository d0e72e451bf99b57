//! The log → the tables: each record is worked out from what nobody replaced, in one fixed order,
//! hence the same on every phone whatever the order of meeting.

use std::collections::BTreeSet;

use rusqlite::types::Value as Cell;
use rusqlite::{Connection, params, params_from_iter};
use serde_json::Value;

use super::change::{COLUMNS, Change, GONE, ORDER, PARENT, SEEN};
use super::fields::{self, NounFields, same};
use super::log;
use crate::error::BookError;
use crate::record::Noun;

/// A record by its noun's table name and its id.
pub type RecordKey = (String, String);

/// Works out every record of the set anew.
pub fn project_all(conn: &Connection, touched: &BTreeSet<RecordKey>) -> Result<(), BookError> {
    for (noun, record) in touched {
        project_record(conn, noun, record)?;
    }
    Ok(())
}

/// Works out all tables anew from the log alone.
pub fn rebuild(conn: &Connection) -> Result<(), BookError> {
    for table in ["replaced", "standing", "unread"] {
        conn.execute(&format!("DELETE FROM {table}"), [])?;
    }
    for known in fields::all() {
        conn.execute(&format!("DELETE FROM {}", known.place.table), [])?;
    }
    let mut query = conn.prepare(&format!("SELECT {COLUMNS} FROM change ORDER BY seq"))?;
    let mut touched = BTreeSet::new();
    for change in query.query_map([], Change::of_row)? {
        let change = change?;
        log::note_replaced(conn, &change)?;
        touched.insert((change.noun, change.record));
    }
    project_all(conn, &touched)
}

fn project_record(conn: &Connection, noun: &str, record: &str) -> Result<(), BookError> {
    for table in ["standing", "unread"] {
        conn.prepare_cached(&format!(
            "DELETE FROM {table} WHERE noun = ?1 AND record = ?2"
        ))?
        .execute([noun, record])?;
    }
    let heads = log::heads(conn, noun, record)?;
    note_standing(conn, &heads)?;
    let Some(known) = Noun::of_table(noun).and_then(fields::of) else {
        for change in &heads {
            note_unread(conn, change)?;
        }
        return Ok(());
    };
    write_row(conn, known, record, &heads)
}

/// The change whose value counts for a field: the last in the fixed order.
fn winner<'a>(heads: &'a [Change], field: &str) -> Option<&'a Change> {
    heads.iter().rev().find(|change| change.field == field)
}

fn write_row(
    conn: &Connection,
    known: &NounFields,
    record: &str,
    heads: &[Change],
) -> Result<(), BookError> {
    let parent = winner(heads, PARENT);
    let site = match known.place.noun {
        Noun::Site => Some(record.to_owned()),
        _ => parent.and_then(|change| change.site.clone()),
    };
    let mut cells: Vec<Cell> = vec![
        Cell::Text(record.to_owned()),
        parent
            .and_then(|change| change.value.as_str())
            .map_or(Cell::Null, |parent| Cell::Text(parent.to_owned())),
        site.map_or(Cell::Null, Cell::Text),
        Cell::Real(
            winner(heads, ORDER)
                .and_then(|change| change.value.as_f64())
                .unwrap_or(0.0),
        ),
        Cell::Integer(i64::from(
            winner(heads, GONE).is_some_and(|change| change.value == Value::Bool(true)),
        )),
    ];
    for field in &known.fields {
        let cell = winner(heads, &field.name).map(|change| field.kind.cell(&change.value));
        cells.push(cell.flatten().unwrap_or(Cell::Null));
    }
    conn.prepare_cached(&insert_of(known))?
        .execute(params_from_iter(cells))?;
    note_unknown(conn, known, heads)
}

fn insert_of(known: &NounFields) -> String {
    let names: String = known
        .fields
        .iter()
        .map(|field| format!(", \"{}\"", field.name))
        .collect();
    let marks = ", ?".repeat(known.fields.len());
    format!(
        "INSERT OR REPLACE INTO {} (id, parent, site, ord, gone{names}) VALUES (?, ?, ?, ?, ?{marks})",
        known.place.table
    )
}

/// Notes what this version cannot show: a field it does not know, or a value of another form.
fn note_unknown(conn: &Connection, known: &NounFields, heads: &[Change]) -> Result<(), BookError> {
    for change in heads {
        let read = match change.field.as_str() {
            PARENT => change.value.is_string(),
            ORDER => change.value.is_number(),
            GONE => change.value.is_boolean() || change.value.is_null(),
            SEEN => true,
            name => known
                .field(name)
                .is_some_and(|field| field.kind.cell(&change.value).is_some()),
        };
        if !read {
            note_unread(conn, change)?;
        }
    }
    Ok(())
}

fn note_unread(conn: &Connection, change: &Change) -> Result<(), BookError> {
    conn.prepare_cached(
        "INSERT OR IGNORE INTO unread (change, site, noun, record, field)
         VALUES (?1, ?2, ?3, ?4, ?5)",
    )?
    .execute(params![
        change.id,
        change.site,
        change.noun,
        change.record,
        change.field
    ])?;
    Ok(())
}

/// Notes the values of a field that stand side by side. The order in a list settles itself, and
/// what somebody knew is no dispute.
fn note_standing(conn: &Connection, heads: &[Change]) -> Result<(), BookError> {
    for change in heads
        .iter()
        .filter(|one| one.field != ORDER && one.field != SEEN)
    {
        let disputed = heads
            .iter()
            .any(|other| other.field == change.field && !same(&other.value, &change.value));
        if disputed {
            conn.prepare_cached(
                "INSERT INTO standing (change, site, noun, record, field)
                 VALUES (?1, ?2, ?3, ?4, ?5)",
            )?
            .execute(params![
                change.id,
                change.site,
                change.noun,
                change.record,
                change.field
            ])?;
        }
    }
    Ok(())
}

/// A hash over every row of every worked-out table: equal hashes are equal projections.
pub fn fingerprint(conn: &Connection) -> Result<String, BookError> {
    let mut hasher = blake3::Hasher::new();
    each_row(conn, &mut |line| {
        hasher.update(line.as_bytes());
    })?;
    Ok(hasher.finalize().to_hex().to_string())
}

/// Hands over every row of every worked-out table as a line of text, in a fixed order.
pub fn each_row(conn: &Connection, take: &mut dyn FnMut(&str)) -> Result<(), BookError> {
    let tables = fields::all().iter().map(|known| known.place.table);
    for table in tables.chain(["replaced", "standing", "unread"]) {
        let mut query = conn.prepare(&format!("SELECT * FROM {table} ORDER BY 1"))?;
        let columns = query.column_count();
        let mut rows = query.query([])?;
        while let Some(row) = rows.next()? {
            let mut line = table.to_owned();
            for column in 0..columns {
                line.push_str(&format!(" | {:?}", row.get_ref(column)?));
            }
            line.push('\n');
            take(&line);
        }
    }
    Ok(())
}

#[cfg(test)]
#[path = "project_tests.rs"]
mod tests;
