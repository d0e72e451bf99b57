//! The tables → nested records: a site, the book, one tree, its history.

use std::collections::HashMap;

use rusqlite::{Connection, OptionalExtension, Row};
use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

use super::change::Change;
use super::faults::{defect, placed};
use super::fields::{self, NounFields};
use super::removed::{self, RemovedButChanged};
use super::{Store, fit, log};
use crate::error::BookError;
use crate::record::{DefectCode, Gear, HouseValue, Id, Noun, Person, SITE_FILE_FORMAT, SiteFile};

/// A line of the list of sites.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteLine {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client's name.
    pub client: Option<String>,
    /// How many trees it has.
    pub trees: u32,
}

/// What the book holds beside the sites' own records.
#[derive(Debug, Clone, PartialEq)]
pub struct Book {
    /// The sites.
    pub sites: Vec<SiteLine>,
    /// The crew with their sign-offs.
    pub crew: Vec<Person>,
    /// The gear.
    pub gear: Vec<Gear>,
    /// The crew's own codes.
    pub codebook: Vec<DefectCode>,
    /// House values that the crew has changed.
    pub house_values: Vec<HouseValue>,
    /// What this version cannot read of these.
    pub unread: Vec<UnreadValue>,
}

/// A value that this version cannot read: it is in the log, is passed on, and counts as a gap.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct UnreadValue {
    /// The noun, by its table name; may be an unknown one.
    pub noun: String,
    /// The record.
    pub record: Id,
    /// The field; empty for a whole record.
    pub field: String,
}

/// A site with all that the judgement reads, and what has to be said beside it.
#[derive(Debug, Clone, PartialEq)]
pub struct LoadedSite {
    /// The site, the crew, the gear, the codes and the house values.
    pub file: SiteFile,
    /// Values that stand side by side; in `file` stands the last of them.
    pub standing: Vec<Standing>,
    /// Records removed by one and changed by another who did not know; they are not in `file`.
    pub removed_but_changed: Vec<RemovedButChanged>,
    /// What this version cannot read.
    pub unread: Vec<UnreadValue>,
}

/// A field for which several values stand.
#[derive(Debug, Clone, PartialEq)]
pub struct Standing {
    /// The noun, by its table name.
    pub noun: String,
    /// The record.
    pub record: Id,
    /// The field, or `@parent`, `@gone`.
    pub field: String,
    /// The values in the fixed order; the last is the one in the tables.
    pub values: Vec<StandingValue>,
}

/// One of several values that stand side by side.
#[derive(Debug, Clone, PartialEq)]
pub struct StandingValue {
    /// The change that set it.
    pub change: Id,
    /// The value.
    pub value: Value,
    /// Who set it.
    pub person: Id,
    /// On which device.
    pub device: String,
    /// When, in milliseconds since 1970 (UTC), by that device's clock.
    pub utc_ms: i64,
}

/// A state of the book that stays as it is while others go on editing, over a connection of its
/// own that only reads.
#[derive(Debug)]
pub struct Snapshot {
    pub(super) conn: Connection,
    pub(super) place: String,
}

impl Snapshot {
    /// Reads from this state.
    pub fn read(&self) -> Reader<'_> {
        Reader {
            conn: &self.conn,
            place: self.place.clone(),
        }
    }
}

impl Store {
    /// Reads the present state.
    pub fn read(&self) -> Reader<'_> {
        Reader {
            conn: &self.conn,
            place: self.place(),
        }
    }
}

/// Reads nested records from the tables.
#[derive(Debug)]
pub struct Reader<'a> {
    pub(super) conn: &'a Connection,
    place: String,
}

type Kept<T> = Result<T, BookError>;

impl Reader<'_> {
    /// A site with all that lies in it, as JSON.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed site.
    pub fn site_json(&self, site: &Id) -> Kept<Value> {
        self.placed(site_of(self.conn, site))
    }

    /// A site as a site file, with what has to be said beside it.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed site.
    pub fn load_site(&self, site: &Id) -> Kept<LoadedSite> {
        self.placed(loaded(self.conn, site))
    }

    /// The sites in one line each, the crew, the gear, the codes.
    ///
    /// # Errors
    /// As the database reports.
    pub fn load_book(&self) -> Kept<Book> {
        self.placed(book_of(self.conn))
    }

    /// One record with all that lies in it, as JSON.
    ///
    /// # Errors
    /// `NotFound` for an unknown or removed record.
    pub fn record(&self, noun: Noun, id: &Id) -> Kept<Value> {
        self.placed(record_of(self.conn, noun, id))
    }

    /// One record with all that lies in it, typed, such as `record_as::<Tree>`.
    ///
    /// # Errors
    /// `NotFound`; `Damaged` is never reported for a value of a newer version: what cannot be read
    /// is left out as in [`Reader::load_site`].
    pub fn record_as<T: DeserializeOwned>(&self, noun: Noun, id: &Id) -> Kept<T> {
        let mut json = self.record(noun, id)?;
        if let Ok(record) = T::deserialize(&json) {
            return Ok(record);
        }
        fit::trim(noun, &mut json, &mut Vec::new());
        serde_json::from_value(json).map_err(|_| BookError::NotFound {
            kind: noun.place().table.to_owned(),
            id: id.0.clone(),
        })
    }

    /// The record that a record lies in, and its site; nothing for an unknown one. Finds removed
    /// records too.
    ///
    /// # Errors
    /// As the database reports.
    pub fn whereabouts(&self, noun: Noun, id: &Id) -> Kept<Option<Whereabouts>> {
        let query = format!(
            "SELECT parent, site, gone FROM {} WHERE id = ?1",
            noun.place().table
        );
        let found = self
            .conn
            .query_row(&query, [id.as_str()], |row| {
                Ok(Whereabouts {
                    parent: row.get::<_, Option<String>>(0)?.map(Id),
                    site: row.get::<_, Option<String>>(1)?.map(Id),
                    gone: row.get(2)?,
                })
            })
            .optional();
        self.placed(found.map_err(BookError::from))
    }

    /// Every change to a record in the fixed order.
    ///
    /// # Errors
    /// As the database reports.
    pub fn history(&self, noun: Noun, id: &Id) -> Kept<Vec<Change>> {
        self.placed(log::of_record(self.conn, noun.place().table, id.as_str()))
    }

    /// Values of a site (or of the book) that stand side by side until a person settles them.
    ///
    /// # Errors
    /// As the database reports.
    pub fn standing(&self, site: Option<&Id>) -> Kept<Vec<Standing>> {
        self.placed(standing_of(self.conn, site))
    }

    pub(super) fn placed<T>(&self, kept: Kept<T>) -> Kept<T> {
        kept.map_err(|fault| placed(fault, &self.place))
    }
}

/// Where a record lies.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Whereabouts {
    /// The record it lies in.
    pub parent: Option<Id>,
    /// Its site.
    pub site: Option<Id>,
    /// Whether it was removed itself.
    pub gone: bool,
}

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

type ParentAndRecord = (Option<String>, Map<String, Value>);

fn rows(
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
fn site_of(conn: &Connection, site: &Id) -> Kept<Value> {
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

fn record_of(conn: &Connection, noun: Noun, id: &Id) -> Kept<Value> {
    let own = own_fields(conn, noun, id.as_str())?.ok_or_else(|| BookError::NotFound {
        kind: noun.place().table.to_owned(),
        id: id.0.clone(),
    })?;
    filled(conn, noun, own)
}

fn filled(conn: &Connection, noun: Noun, mut own: Value) -> Kept<Value> {
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

/// The records of a noun of the book, typed; what cannot be read is left out and named.
fn of_book<T: DeserializeOwned>(
    conn: &Connection,
    noun: Noun,
    unread: &mut Vec<UnreadValue>,
) -> Kept<Vec<T>> {
    let known = fields::of(noun).ok_or_else(|| defect("a noun without fields"))?;
    let mut found = Vec::new();
    for (_, record) in rows(conn, known, "parent", None)? {
        let mut json = filled(conn, noun, Value::Object(record))?;
        if T::deserialize(&json).is_err() && !fit::trim(noun, &mut json, unread) {
            continue;
        }
        found.push(serde_json::from_value(json).map_err(defect)?);
    }
    Ok(found)
}

fn book_of(conn: &Connection) -> Kept<Book> {
    let mut query = conn.prepare_cached(
        "SELECT id, name, client,
         (SELECT count(*) FROM tree WHERE tree.site = site.id AND tree.gone = 0)
         FROM site WHERE gone = 0 ORDER BY ord, name, id",
    )?;
    let sites = query.query_map([], |row| {
        Ok(SiteLine {
            id: Id(row.get(0)?),
            name: row.get::<_, Option<String>>(1)?.unwrap_or_default(),
            client: row.get(2)?,
            trees: row.get(3)?,
        })
    })?;
    let mut unread = unread_of(conn, None)?;
    Ok(Book {
        sites: sites.collect::<rusqlite::Result<_>>()?,
        crew: of_book(conn, Noun::Person, &mut unread)?,
        gear: of_book(conn, Noun::Gear, &mut unread)?,
        codebook: of_book(conn, Noun::DefectCode, &mut unread)?,
        house_values: of_book(conn, Noun::HouseValue, &mut unread)?,
        unread,
    })
}

fn loaded(conn: &Connection, site: &Id) -> Kept<LoadedSite> {
    let book = book_of(conn)?;
    let mut unread = unread_of(conn, Some(site))?;
    unread.extend(book.unread);
    let mut json = site_of(conn, site)?;
    if fit::fits(Noun::Site, &json).is_err() && !fit::trim(Noun::Site, &mut json, &mut unread) {
        return Err(BookError::NotFound {
            kind: "site".to_owned(),
            id: site.0.clone(),
        });
    }
    Ok(LoadedSite {
        file: SiteFile {
            format: SITE_FILE_FORMAT,
            site: serde_json::from_value(json).map_err(defect)?,
            crew: book.crew,
            gear: book.gear,
            codebook: book.codebook,
            house_values: book.house_values,
        },
        standing: standing_of(conn, Some(site))?,
        removed_but_changed: removed::find(conn, Some(site))?,
        unread,
    })
}

fn unread_of(conn: &Connection, site: Option<&Id>) -> Kept<Vec<UnreadValue>> {
    let mut query = conn.prepare_cached(
        "SELECT noun, record, field FROM unread WHERE site IS ?1 ORDER BY noun, record, field",
    )?;
    let rows = query.query_map([site.map(Id::as_str)], |row| {
        Ok(UnreadValue {
            noun: row.get(0)?,
            record: Id(row.get(1)?),
            field: row.get(2)?,
        })
    })?;
    Ok(rows.collect::<rusqlite::Result<_>>()?)
}

fn standing_of(conn: &Connection, site: Option<&Id>) -> Kept<Vec<Standing>> {
    let mut query = conn.prepare_cached(
        "SELECT change FROM standing JOIN change AS one ON one.id = standing.change
         WHERE standing.site IS ?1
         ORDER BY standing.noun, standing.record, standing.field, hlc, device, one.id",
    )?;
    let ids = query.query_map([site.map(Id::as_str)], |row| row.get::<_, String>(0))?;
    let mut found: Vec<Standing> = Vec::new();
    for id in ids {
        let Some(change) = log::by_id(conn, &id?)? else {
            continue;
        };
        let value = StandingValue {
            utc_ms: change.utc_ms(),
            change: Id(change.id),
            value: change.value,
            person: Id(change.person),
            device: change.device,
        };
        match found.last_mut() {
            Some(last)
                if last.noun == change.noun
                    && last.record.0 == change.record
                    && last.field == change.field =>
            {
                last.values.push(value);
            }
            _ => found.push(Standing {
                noun: change.noun,
                record: Id(change.record),
                field: change.field,
                values: vec![value],
            }),
        }
    }
    Ok(found)
}
