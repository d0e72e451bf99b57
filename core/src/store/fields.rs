//! Which fields each noun has, and how each is kept: read off the records' own schema, so that a
//! field added to a record needs one column and nothing else.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use rusqlite::types::{Value as Cell, ValueRef};
use serde_json::{Map, Value};

use crate::record::{Noun, NounPlace, SiteFile};

/// How a field is kept in its column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FieldKind {
    /// A text, a choice, an id or a day.
    Text,
    /// A number.
    Real,
    /// A whole number.
    Whole,
    /// Yes or no, kept as 1 or 0.
    Truth,
    /// A whole geometry, a measure, a list of plain values: JSON text.
    Json,
}

/// A field of a noun.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Field {
    /// Its name in records, changes and columns.
    pub name: String,
    /// How it is kept.
    pub kind: FieldKind,
}

/// A noun with its fields and the nouns that lie in it.
#[derive(Debug, Clone)]
pub struct NounFields {
    /// How the noun is kept.
    pub place: NounPlace,
    /// Its fields, in the order of the record.
    pub fields: Vec<Field>,
    /// What lies in it: the list's name and the noun.
    pub lists: Vec<(&'static str, Noun)>,
    /// Whether it belongs to a site.
    pub in_site: bool,
}

/// Lists of the site file that hold nouns of the book.
const BOOK_LISTS: [(Noun, &str); 4] = [
    (Noun::Person, "crew"),
    (Noun::Gear, "gear"),
    (Noun::DefectCode, "codebook"),
    (Noun::HouseValue, "house_values"),
];

static KNOWN: LazyLock<Vec<NounFields>> = LazyLock::new(read_schema);

/// Every noun with its fields, parents before children.
pub fn all() -> &'static [NounFields] {
    &KNOWN
}

/// The fields of a noun.
pub fn of(noun: Noun) -> Option<&'static NounFields> {
    KNOWN.iter().find(|known| known.place.noun == noun)
}

impl NounFields {
    /// The field of this name.
    pub fn field(&self, name: &str) -> Option<&Field> {
        self.fields.iter().find(|field| field.name == name)
    }
}

fn read_schema() -> Vec<NounFields> {
    let schema = schemars::schema_for!(SiteFile).to_value();
    let mut homes: BTreeMap<Noun, Value> = BTreeMap::new();
    Noun::PLACES
        .into_iter()
        .map(|place| {
            let home = home_of(&schema, &homes, place).unwrap_or_default();
            let lists: Vec<(&'static str, Noun)> = Noun::PLACES
                .into_iter()
                .filter_map(|child| match child.held_by {
                    Some((parent, list)) if parent == place.noun => Some((list, child.noun)),
                    _ => None,
                })
                .collect();
            let fields = fields_of(&schema, &home, &lists);
            homes.insert(place.noun, home);
            NounFields {
                fields: if fields.is_empty() {
                    signed_fields()
                } else {
                    fields
                },
                place,
                lists,
                in_site: in_site(place.noun),
            }
        })
        .collect()
}

/// A judgement is frozen as it was: one JSON value beside who signed and when. It is no part of a
/// site file, so the schema does not carry it.
fn signed_fields() -> Vec<Field> {
    [
        ("judgement", FieldKind::Json),
        ("by", FieldKind::Text),
        ("at", FieldKind::Json),
    ]
    .map(|(name, kind)| Field {
        name: name.to_owned(),
        kind,
    })
    .to_vec()
}

fn in_site(noun: Noun) -> bool {
    match noun.place().held_by {
        Some((parent, _)) => in_site(parent),
        None => noun == Noun::Site,
    }
}

/// The schema of the object that a noun is.
fn home_of(schema: &Value, homes: &BTreeMap<Noun, Value>, place: NounPlace) -> Option<Value> {
    let listed = match place.held_by {
        Some((parent, list)) => homes.get(&parent)?.get("properties")?.get(list)?.clone(),
        None if place.noun == Noun::Site => {
            let site = schema.pointer("/properties/site")?.clone();
            return Some(followed(schema, &site).clone());
        }
        None => {
            let list = BOOK_LISTS.iter().find(|(noun, _)| *noun == place.noun)?.1;
            schema.get("properties")?.get(list)?.clone()
        }
    };
    Some(followed(schema, listed.get("items")?).clone())
}

/// Follows a reference into the schema's definitions.
fn followed<'a>(schema: &'a Value, part: &'a Value) -> &'a Value {
    match part.get("$ref").and_then(Value::as_str) {
        Some(reference) => schema
            .pointer(reference.trim_start_matches('#'))
            .unwrap_or(part),
        None => part,
    }
}

fn fields_of(schema: &Value, home: &Value, lists: &[(&str, Noun)]) -> Vec<Field> {
    let Some(properties) = home.get("properties").and_then(Value::as_object) else {
        return Vec::new();
    };
    properties
        .iter()
        .filter(|(name, _)| *name != "id" && !lists.iter().any(|(list, _)| list == name))
        .map(|(name, part)| Field {
            name: name.clone(),
            kind: kind_of(schema, part),
        })
        .collect()
}

/// How a part of the schema is kept; what may be null is kept as what it else is.
fn kind_of(schema: &Value, part: &Value) -> FieldKind {
    let part = followed(schema, part);
    if let Some(kind) = part.get("type").and_then(plain_kind) {
        return kind;
    }
    for key in ["anyOf", "oneOf"] {
        let choices = part
            .get(key)
            .and_then(Value::as_array)
            .into_iter()
            .flatten();
        for choice in choices {
            if choice.get("type").and_then(Value::as_str) != Some("null") {
                return kind_of(schema, choice);
            }
        }
    }
    FieldKind::Json
}

fn plain_kind(kind: &Value) -> Option<FieldKind> {
    let name = match kind {
        Value::String(name) => name,
        Value::Array(names) => names
            .iter()
            .filter_map(Value::as_str)
            .find(|name| *name != "null")?,
        _ => return None,
    };
    Some(match name {
        "string" => FieldKind::Text,
        "number" => FieldKind::Real,
        "integer" => FieldKind::Whole,
        "boolean" => FieldKind::Truth,
        _ => FieldKind::Json,
    })
}

impl FieldKind {
    /// The column's type in a STRICT table.
    pub fn column_type(self) -> &'static str {
        match self {
            FieldKind::Text | FieldKind::Json => "TEXT",
            FieldKind::Real => "REAL",
            FieldKind::Whole | FieldKind::Truth => "INTEGER",
        }
    }

    /// A value as its cell; nothing if this version cannot read a value of that form.
    pub fn cell(self, value: &Value) -> Option<Cell> {
        match (self, value) {
            (_, Value::Null) => Some(Cell::Null),
            (FieldKind::Text, Value::String(text)) => Some(Cell::Text(text.clone())),
            (FieldKind::Real, Value::Number(number)) => number.as_f64().map(Cell::Real),
            (FieldKind::Whole, Value::Number(number)) => number.as_i64().map(Cell::Integer),
            (FieldKind::Truth, Value::Bool(truth)) => Some(Cell::Integer(i64::from(*truth))),
            (FieldKind::Json, Value::Array(_) | Value::Object(_)) => {
                Some(Cell::Text(value.to_string()))
            }
            _ => None,
        }
    }

    /// A cell as its value.
    pub fn value(self, column: usize, cell: ValueRef<'_>) -> rusqlite::Result<Value> {
        let odd = || rusqlite::Error::InvalidColumnType(column, String::new(), cell.data_type());
        Ok(match (self, cell) {
            (_, ValueRef::Null) => Value::Null,
            (FieldKind::Text, ValueRef::Text(_)) => Value::from(cell.as_str()?),
            (FieldKind::Real, ValueRef::Real(number)) => Value::from(number),
            (FieldKind::Whole, ValueRef::Integer(number)) => Value::from(number),
            (FieldKind::Truth, ValueRef::Integer(number)) => Value::from(number != 0),
            (FieldKind::Json, ValueRef::Text(_)) => super::change::parsed(column, cell.as_str()?)?,
            _ => return Err(odd()),
        })
    }
}

/// Whether two values say the same; 12 and 12.0 do, and null is a field left out.
pub fn same(one: &Value, other: &Value) -> bool {
    match (one, other) {
        (Value::Number(one), Value::Number(other)) => one.as_f64() == other.as_f64(),
        (Value::Array(one), Value::Array(other)) => {
            one.len() == other.len() && one.iter().zip(other).all(|(one, other)| same(one, other))
        }
        (Value::Object(one), Value::Object(other)) => holds(one, other) && holds(other, one),
        _ => one == other,
    }
}

fn holds(all: &Map<String, Value>, some: &Map<String, Value>) -> bool {
    some.iter()
        .all(|(name, value)| same(all.get(name).unwrap_or(&Value::Null), value))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kind(noun: Noun, field: &str) -> FieldKind {
        of(noun).unwrap().field(field).unwrap().kind
    }

    #[test]
    fn kinds_follow_the_records() {
        assert_eq!(kind(Noun::Tree, "tag"), FieldKind::Text);
        assert_eq!(kind(Noun::Tree, "way"), FieldKind::Text);
        assert_eq!(kind(Noun::Tree, "position"), FieldKind::Json);
        assert_eq!(kind(Noun::Tree, "walk_order"), FieldKind::Whole);
        assert_eq!(kind(Noun::Inspection, "bark_cm"), FieldKind::Real);
        assert_eq!(kind(Noun::Inspection, "visit"), FieldKind::Text);
        assert_eq!(kind(Noun::Inspection, "next_look"), FieldKind::Text);
        assert_eq!(kind(Noun::Inspection, "lean_is_new"), FieldKind::Truth);
        assert_eq!(kind(Noun::Site, "outline"), FieldKind::Json);
        assert_eq!(kind(Noun::Gear, "kind"), FieldKind::Text);
    }

    #[test]
    fn every_noun_has_fields_and_no_field_takes_the_name_of_a_place() {
        for known in all() {
            assert!(!known.fields.is_empty(), "{:?}", known.place.noun);
            for field in &known.fields {
                let taken = ["id", "parent", "site", "ord", "gone"];
                assert!(!taken.contains(&field.name.as_str()), "{field:?}");
            }
        }
    }

    #[test]
    fn a_value_comes_back_from_its_cell() {
        for (kind, text) in [
            (FieldKind::Text, r#""Quercus robur""#),
            (FieldKind::Real, "0.1"),
            (FieldKind::Whole, "3"),
            (FieldKind::Truth, "true"),
            (FieldKind::Json, r#"[{"lat_deg":1.5}]"#),
        ] {
            let value: Value = serde_json::from_str(text).unwrap();
            let cell = kind.cell(&value).unwrap();
            assert_eq!(kind.value(0, ValueRef::from(&cell)).unwrap(), value);
        }
        assert!(FieldKind::Real.cell(&Value::from("tall")).is_none());
    }

    #[test]
    fn a_whole_number_says_the_same_as_its_decimal() {
        let one = serde_json::json!({"height_m": 12, "se_m": null});
        let other = serde_json::json!({"height_m": 12.0});
        assert!(same(&one, &other));
    }
}
