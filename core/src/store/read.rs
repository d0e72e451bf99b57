//! The tables → nested records: a site, the book, one tree, its history.

use rusqlite::{Connection, OptionalExtension};
use serde::de::DeserializeOwned;
use serde_json::Value;

use super::change::Change;
use super::faults::{defect, placed};
use super::fields;
use super::nest::{filled, record_of, rows, site_of};
use super::removed::{self, RemovedButChanged};
use super::standing::{Standing, UnreadValue, standing_of, unread_of};
use super::{Store, fit, log};
use crate::error::BookError;
use crate::record::{
    DefectCode, Gear, HouseValue, Id, LatLon, Noun, Person, SITE_FILE_FORMAT, SiteFile,
};

/// A line of the list of sites.
#[derive(Debug, Clone, PartialEq)]
pub struct SiteLine {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// The client's name.
    pub client: Option<String>,
    /// The address.
    pub address: Option<String>,
    /// Where it is: its outline, else one of its trees; empty where nobody took a position.
    pub points: Vec<LatLon>,
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
    /// Values of these that stand side by side.
    pub standing: Vec<Standing>,
    /// Records of these removed by one and changed by another who did not know.
    pub removed_but_changed: Vec<RemovedButChanged>,
    /// What this version cannot read of these.
    pub unread: Vec<UnreadValue>,
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

    /// The rule set that a site names; nothing where it names none.
    ///
    /// # Errors
    /// As the database reports.
    pub fn rule_set_of(&self, site: &Id) -> Kept<Option<Id>> {
        let query = "SELECT rule_set FROM site WHERE id = ?1";
        let found = self
            .conn
            .query_row(query, [site.as_str()], |row| {
                row.get::<_, Option<String>>(0)
            })
            .optional();
        self.placed(
            found
                .map(|found| found.flatten().map(Id))
                .map_err(BookError::from),
        )
    }

    /// The texts that a field of a noun was given last, each once, the last first. Looks at the
    /// newest part of the log only.
    ///
    /// # Errors
    /// As the database reports.
    pub fn used_last(&self, noun: Noun, field: &str, most: u32) -> Kept<Vec<String>> {
        self.placed(log::used_last(self.conn, noun.place().table, field, most))
    }

    /// The texts that a field was given lately, each once, the most frequent first.
    ///
    /// # Errors
    /// As the book reports.
    pub fn used_most(&self, noun: Noun, field: &str, most: u32) -> Kept<Vec<String>> {
        self.placed(log::used_most(self.conn, noun.place().table, field, most))
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
         (SELECT count(*) FROM tree WHERE tree.site = site.id AND tree.gone = 0),
         address, outline,
         (SELECT position FROM tree WHERE tree.site = site.id AND tree.gone = 0
          AND position IS NOT NULL ORDER BY ord, id LIMIT 1)
         FROM site WHERE gone = 0 ORDER BY ord, name, id",
    )?;
    let sites = query.query_map([], |row| {
        Ok(SiteLine {
            id: Id(row.get(0)?),
            name: row.get::<_, Option<String>>(1)?.unwrap_or_default(),
            client: row.get(2)?,
            trees: row.get(3)?,
            address: row.get(4)?,
            points: points_of(row.get(5)?, row.get(6)?),
        })
    })?;
    let mut unread = unread_of(conn, None)?;
    Ok(Book {
        sites: sites.collect::<rusqlite::Result<_>>()?,
        crew: of_book(conn, Noun::Person, &mut unread)?,
        gear: of_book(conn, Noun::Gear, &mut unread)?,
        codebook: of_book(conn, Noun::DefectCode, &mut unread)?,
        house_values: of_book(conn, Noun::HouseValue, &mut unread)?,
        standing: standing_of(conn, None)?,
        removed_but_changed: [removed::find(conn, None)?, removed::find_sites(conn)?].concat(),
        unread,
    })
}

/// The corners of an outline, else the position of a tree, each as it is kept. What cannot be read
/// is no place.
fn points_of(outline: Option<String>, position: Option<String>) -> Vec<LatLon> {
    let outline: Vec<LatLon> = outline
        .and_then(|text| serde_json::from_str(&text).ok())
        .unwrap_or_default();
    if !outline.is_empty() {
        return outline;
    }
    let position = position.and_then(|text| serde_json::from_str(&text).ok());
    position.into_iter().collect()
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
