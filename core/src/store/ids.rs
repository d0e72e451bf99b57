//! Ids: given to records that have none, freed where another site has taken them.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Map, Value};
use uuid::Uuid;

use super::fields;
use super::flatten::{Flat, id_of};
use crate::error::BookError;
use crate::record::{Fault, Noun};

/// Gives every record that has no id one, from `new_id`.
pub fn give_ids(noun: Noun, json: &mut Value, new_id: &mut dyn FnMut() -> String) {
    give(noun, json, &mut |_, _| new_id());
}

/// Gives every record that has no id one that follows from its parent and from what it is known
/// by, so that reading a file a second time meets the same records.
pub fn give_lasting_ids(noun: Noun, json: &mut Value, new_id: &mut dyn FnMut() -> String) {
    let mut given: BTreeMap<String, u32> = BTreeMap::new();
    let mut parents: Vec<String> = Vec::new();
    walk(noun, json, &mut parents, &mut |noun, parent, record| {
        let Some(parent) = parent else {
            return new_id();
        };
        let name = format!("{} {}", noun.place().table, known_by(noun, record));
        let id = lasting(parent, &name);
        // Two of the same make: the second, the third.
        let times = given.entry(id.clone()).or_default();
        *times += 1;
        if *times == 1 {
            id
        } else {
            lasting(parent, &format!("{name} {times}"))
        }
    });
}

/// An id of version 5 from a parent's id and a name.
fn lasting(parent: &str, name: &str) -> String {
    Uuid::new_v5(&Uuid::NAMESPACE_OID, format!("{parent} {name}").as_bytes()).to_string()
}

/// What a record without an id is known by among its siblings.
fn known_by(noun: Noun, record: &Map<String, Value>) -> String {
    let key = match noun {
        Noun::Tree => "tag",
        Noun::Visit => "day",
        Noun::WeatherHour => "hour",
        Noun::Inspection => "visit",
        Noun::PartLook => "part",
        Noun::Target | Noun::OverheadLine | Noun::AnchorPoint => "name",
        _ => "",
    };
    match record.get(key) {
        Some(value) => value.to_string(),
        None => Value::from(record.clone()).to_string(),
    }
}

fn give(noun: Noun, json: &mut Value, make: &mut dyn FnMut(Noun, Option<&str>) -> String) {
    walk(noun, json, &mut Vec::new(), &mut |noun, parent, _| {
        make(noun, parent)
    });
}

type MakeId<'a> = dyn FnMut(Noun, Option<&str>, &Map<String, Value>) -> String + 'a;

fn walk(noun: Noun, json: &mut Value, parents: &mut Vec<String>, make: &mut MakeId<'_>) {
    let Some(known) = fields::of(noun) else {
        return;
    };
    let has_id = id_of(json).is_some();
    let Some(record) = json.as_object_mut() else {
        return;
    };
    if !has_id {
        let id = make(noun, parents.last().map(String::as_str), record);
        record.insert("id".to_owned(), Value::from(id));
    }
    let id = record.get("id").and_then(Value::as_str).unwrap_or_default();
    parents.push(id.to_owned());
    for (list, child) in &known.lists {
        let items = record.get_mut(*list).and_then(Value::as_array_mut);
        for item in items.into_iter().flatten() {
            walk(*child, item, parents, make);
        }
    }
    parents.pop();
}

/// Fields that name another record of the same site, and what that record is.
const NAMED: [(&str, Noun); 6] = [
    ("visit", Noun::Visit),
    ("line", Noun::OverheadLine),
    ("anchor", Noun::AnchorPoint),
    ("target", Noun::Target),
    ("tree", Noun::Tree),
    ("finding", Noun::Finding),
];

/// Renames records of a site whose ids another site has taken, and whatever names them.
/// `is_taken` says so of a noun and an id.
pub fn free_ids(
    site: &str,
    flats: &mut [Flat],
    is_taken: &mut dyn FnMut(Noun, &str) -> Result<bool, BookError>,
) -> Result<(), BookError> {
    let mut renamed: BTreeMap<(Noun, String), String> = BTreeMap::new();
    for flat in flats.iter().filter(|flat| flat.noun != Noun::Site) {
        if is_taken(flat.noun, &flat.id)? {
            let name = format!("{} {}", flat.noun.place().table, flat.id);
            renamed.insert((flat.noun, flat.id.clone()), lasting(site, &name));
        }
    }
    if renamed.is_empty() {
        return Ok(());
    }
    let new_name = |noun: Noun, id: &str| renamed.get(&(noun, id.to_owned())).cloned();
    for flat in flats.iter_mut() {
        let holder = flat.noun.place().held_by.map(|(parent, _)| parent);
        if let (Some(holder), Some(parent)) = (holder, &flat.parent)
            && let Some(new) = new_name(holder, parent)
        {
            flat.parent = Some(new);
        }
        if let Some(new) = new_name(flat.noun, &flat.id) {
            flat.id = new;
        }
        for (field, value) in &mut flat.fields {
            let named = NAMED.iter().find(|(name, _)| name == field);
            if let (Some((_, noun)), Some(id)) = (named, value.as_str())
                && let Some(new) = new_name(*noun, id)
            {
                *value = Value::from(new);
            }
        }
    }
    Ok(())
}

/// Ids that stand twice for one noun: the second would overwrite the first.
pub fn ids_twice(flats: &[Flat]) -> Vec<Fault> {
    let mut seen = BTreeSet::new();
    flats
        .iter()
        .filter(|flat| !seen.insert((flat.noun, flat.id.as_str())))
        .map(|flat| {
            Fault::new(
                "fault.id-twice",
                flat.noun.place().table,
                &flat.id,
                "each id once",
            )
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::flatten::flatten;
    use serde_json::json;

    fn site() -> Value {
        json!({"id": "s", "name": "Hill", "trees": [
            {"tag": "1", "inspections": [{"id": "i", "level": "triage",
                "findings": [{"code": "decay", "part": "stem", "anchor": "a"}],
                "anchors": [{"id": "a", "height_m": 9}]}]},
            {"tag": "2"}]})
    }

    fn flat(json: &Value) -> Vec<Flat> {
        let mut out = Vec::new();
        flatten(Noun::Site, None, 0.0, json, &mut out).unwrap();
        out
    }

    #[test]
    fn a_file_read_twice_meets_the_same_records() {
        let (mut once, mut again) = (site(), site());
        // A tree put in front moves no other.
        again["trees"]
            .as_array_mut()
            .unwrap()
            .insert(0, json!({"tag": "0"}));
        for json in [&mut once, &mut again] {
            give_lasting_ids(Noun::Site, json, &mut || "new".to_owned());
        }
        assert_eq!(once["trees"][0]["id"], again["trees"][1]["id"]);
        assert_ne!(once["trees"][0]["id"], once["trees"][1]["id"]);
    }

    #[test]
    fn a_taken_id_is_renamed_with_whatever_names_it() {
        let mut json = site();
        give_lasting_ids(Noun::Site, &mut json, &mut || "new".to_owned());
        let mut flats = flat(&json);
        free_ids(
            "s",
            &mut flats,
            &mut |noun, _| Ok(noun == Noun::AnchorPoint),
        )
        .unwrap();
        let anchor = flats
            .iter()
            .find(|flat| flat.noun == Noun::AnchorPoint)
            .unwrap();
        let finding = flats
            .iter()
            .find(|flat| flat.noun == Noun::Finding)
            .unwrap();
        assert_ne!(anchor.id, "a");
        let names = finding
            .fields
            .iter()
            .find(|(name, _)| name == "anchor")
            .unwrap();
        assert_eq!(names.1, Value::from(anchor.id.as_str()));
    }

    #[test]
    fn every_field_that_names_a_record_is_known() {
        // People, codes, sites' rule sets are of the book and keep their ids.
        let of_the_book = [
            "id",
            "by",
            "cleared_by",
            "climber",
            "second",
            "code",
            "used_by",
            "rule_set",
            "first_aider",
            "crew",
        ];
        let schema = schemars::schema_for!(crate::record::SiteFile).to_value();
        for (def, part) in schema["$defs"].as_object().unwrap() {
            for (name, field) in part["properties"].as_object().into_iter().flatten() {
                if field.to_string().contains("\"#/$defs/Id\"") {
                    let known = NAMED.iter().any(|(named, _)| named == name)
                        || of_the_book.contains(&name.as_str());
                    assert!(known, "{def}.{name} names a record: of which noun?");
                }
            }
        }
    }
}
