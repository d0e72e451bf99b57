//! Rows of the tables → nested JSON.

use std::collections::HashMap;

use rusqlite::{Connection, Row};
use serde_json::{Map, Value};

use super::faults::defect;
use super::fields::{self, NounFields};
use crate::error::BookError;
use crate::record::{Id, Noun};

type Kept<T> = Result<T, BookError>;

fn columns(known: &NounFields) -> String {
    known
        .fields
        .iter()
        .map(|field| format!(", \"{}\"", field.name))
        .collect()
}

/// A row of `id, parent, fields…` as a record.
fn record_row(known: &NounFields, row: &Row<'_>) -> rusqlite::Result<Map<String, Value>> {
    let mut record = Map::with_capacity(known.fields.len() + 1);
    record.insert("id".to_owned(), Value::from(row.get::<_, String>(0)?));
    for (field, column) in known.fields.iter().zip(2..) {
        let value = field.kind.value(column, row.get_ref(column)?)?;
        if !value.is_null() {
            record.insert(field.name.clone(), value);
        }
    }
    Ok(record)
}

/// The parent's id, and the record's own fields.
type ParentAndRecord = (Option<String>, Map<String, Value>);

/// The live records of a noun whose column `whose` is `key`, in the order of their lists.
pub fn rows(
    conn: &Connection,
    known: &NounFields,
    whose: &str,
    key: Option<&str>,
) -> Kept<Vec<ParentAndRecord>> {
    let query = format!(
        "SELECT id, parent{} FROM {} WHERE {whose} IS ?1 AND gone = 0 ORDER BY ord, id",
        columns(known),
        known.place.table
    );
    let mut query = conn.prepare_cached(&query)?;
    let rows = query.query_map([key], |row| Ok((row.get(1)?, record_row(known, row)?)))?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

/// A record's own fields, without what lies in it; nothing if unknown or removed.
pub fn own_fields(conn: &Connection, noun: Noun, id: &str) -> Kept<Option<Value>> {
    let known = fields::of(noun).ok_or_else(|| defect("a noun without fields"))?;
    let found = rows(conn, known, "id", Some(id))?;
    Ok(found
        .into_iter()
        .next()
        .map(|(_, record)| Value::Object(record)))
}

type Nested = HashMap<(Noun, String), Vec<Value>>;

/// Hangs the lists into a record.
fn with_lists(known: &NounFields, mut record: Map<String, Value>, below: &mut Nested) -> Value {
    let id = record
        .get("id")
        .and_then(Value::as_str)
        .unwrap_or_default()
        .to_owned();
    for (list, child) in &known.lists {
        if let Some(items) = below.remove(&(*child, id.clone())) {
            record.insert((*list).to_owned(), Value::Array(items));
        }
    }
    Value::Object(record)
}

/// A whole site: one query a noun, put together from the leaves up.
pub fn site_of(conn: &Connection, site: &Id) -> Kept<Value> {
    let mut below = Nested::new();
    for known in fields::all().iter().rev().filter(|known| known.in_site) {
        if known.place.noun == Noun::Site {
            continue;
        }
        for (parent, record) in rows(conn, known, "site", Some(site.as_str()))? {
            let nested = with_lists(known, record, &mut below);
            let key = (known.place.noun, parent.unwrap_or_default());
            below.entry(key).or_default().push(nested);
        }
    }
    let known = fields::of(Noun::Site).ok_or_else(|| defect("a site without fields"))?;
    let own = rows(conn, known, "id", Some(site.as_str()))?;
    let (_, record) = own.into_iter().next().ok_or_else(|| BookError::NotFound {
        kind: "site".to_owned(),
        id: site.0.clone(),
    })?;
    Ok(with_lists(known, record, &mut below))
}

/// One record with all that lies in it.
pub fn record_of(conn: &Connection, noun: Noun, id: &Id) -> Kept<Value> {
    let own = own_fields(conn, noun, id.as_str())?.ok_or_else(|| BookError::NotFound {
        kind: noun.place().table.to_owned(),
        id: id.0.clone(),
    })?;
    filled(conn, noun, own)
}

/// Fills a record with what lies in it, list by list.
pub fn filled(conn: &Connection, noun: Noun, mut own: Value) -> Kept<Value> {
    let Some(known) = fields::of(noun) else {
        return Ok(own);
    };
    let id = own
        .get("id")
        .and_then(Value::as_str)
        .unwrap_or_default()
        .to_owned();
    for (list, child) in &known.lists {
        let Some(held) = fields::of(*child) else {
            continue;
        };
        let mut items = Vec::new();
        for (_, record) in rows(conn, held, "parent", Some(&id))? {
            items.push(filled(conn, *child, Value::Object(record))?);
        }
        if let (false, Some(record)) = (items.is_empty(), own.as_object_mut()) {
            record.insert((*list).to_owned(), Value::Array(items));
        }
    }
    Ok(own)
}
