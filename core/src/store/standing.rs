//! What has to be said beside the tables: values that stand side by side, values of a newer version.

use rusqlite::Connection;
use serde_json::Value;

use super::read::LoadedSite;
use super::{fields, fit, log};
use crate::error::BookError;
use crate::record::{Id, Noun, SiteFile};

type Kept<T> = Result<T, BookError>;

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

impl LoadedSite {
    /// The site file as it would be if another of the standing values counted: the judgement is
    /// taken of each, and the lower verdict stands until a person settles it. Nothing if the value
    /// is not of a field that this version reads.
    pub fn with_value(&self, standing: &Standing, value: &StandingValue) -> Option<SiteFile> {
        let noun = Noun::of_table(&standing.noun)?;
        fields::of(noun)?.field(&standing.field)?;
        let mut json = serde_json::to_value(&self.file).ok()?;
        let lists = ["site", "crew", "gear", "codebook", "house_values"];
        let nouns = [
            Noun::Site,
            Noun::Person,
            Noun::Gear,
            Noun::DefectCode,
            Noun::HouseValue,
        ];
        let mut found = false;
        for (list, top) in lists.into_iter().zip(nouns) {
            let part = json.get_mut(list);
            match part {
                Some(Value::Array(items)) => {
                    for item in items {
                        found |= put(top, item, noun, standing, &value.value);
                    }
                }
                Some(item) => found |= put(top, item, noun, standing, &value.value),
                None => {}
            }
        }
        if !found {
            return None;
        }
        fit::trim(Noun::Site, json.get_mut("site")?, &mut Vec::new());
        serde_json::from_value(json).ok()
    }
}

/// Puts the value into the record wherever it lies below `record`; says whether it was met.
fn put(at: Noun, record: &mut Value, noun: Noun, standing: &Standing, value: &Value) -> bool {
    if at == noun && record.get("id").and_then(Value::as_str) == Some(standing.record.as_str()) {
        if let Some(own) = record.as_object_mut() {
            own.insert(standing.field.clone(), value.clone());
        }
        return true;
    }
    let lists = fields::of(at).map_or(&[][..], |known| &known.lists);
    lists.iter().any(|(list, child)| {
        let items = record.get_mut(*list).and_then(Value::as_array_mut);
        items
            .into_iter()
            .flatten()
            .any(|item| put(*child, item, noun, standing, value))
    })
}

/// What this version cannot read of a site, or of the book.
pub fn unread_of(conn: &Connection, site: Option<&Id>) -> Kept<Vec<UnreadValue>> {
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

/// The values of a site, or of the book, that stand side by side.
pub fn standing_of(conn: &Connection, site: Option<&Id>) -> Kept<Vec<Standing>> {
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
