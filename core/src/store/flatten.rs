//! A nested record → records of their own, each with its place in its parent's list.

use serde_json::Value;

use super::fields::{self, NounFields};
use crate::error::BookError;
use crate::record::{Fault, Noun};

/// A record on its own.
#[derive(Debug, Clone, PartialEq)]
pub struct Flat {
    /// What it is.
    pub noun: Noun,
    /// Its id.
    pub id: String,
    /// The record it lies in.
    pub parent: Option<String>,
    /// Its place in the list.
    pub order: f64,
    /// Its fields with their values.
    pub fields: Vec<(String, Value)>,
}

/// Flattens a record and all that lies in it, parents before children.
///
/// # Errors
/// `Refused` for what is no record, has no id, or has a field that the noun does not know.
pub fn flatten(
    noun: Noun,
    parent: Option<&str>,
    order: f64,
    json: &Value,
    out: &mut Vec<Flat>,
) -> Result<(), BookError> {
    let known = fields::of(noun).ok_or_else(|| super::faults::defect("a noun without fields"))?;
    let record = json
        .as_object()
        .ok_or_else(|| odd(known, json, "a record with its fields"))?;
    let id = id_of(json).ok_or_else(|| odd(known, json, "an id"))?;
    let place = out.len();
    out.push(Flat {
        noun,
        id: id.to_owned(),
        parent: parent.map(str::to_owned),
        order,
        fields: Vec::new(),
    });
    let mut own = Vec::new();
    for (name, value) in record.iter().filter(|(name, _)| *name != "id") {
        if let Some((_, child)) = known.lists.iter().find(|(list, _)| list == name) {
            let items = value.as_array().into_iter().flatten();
            for (item, order) in items.zip(0_u32..) {
                flatten(*child, Some(id), f64::from(order), item, out)?;
            }
        } else if known.field(name).is_some() {
            own.push((name.clone(), value.clone()));
        } else {
            return Err(odd(
                known,
                &Value::from(name.as_str()),
                "a field of this record",
            ));
        }
    }
    if let Some(flat) = out.get_mut(place) {
        flat.fields = own;
    }
    Ok(())
}

fn odd(known: &NounFields, found: &Value, allowed: &str) -> BookError {
    BookError::refused(Fault::new(
        "fault.record",
        known.place.table,
        found,
        allowed,
    ))
}

/// A record's id, if it has one.
pub fn id_of(json: &Value) -> Option<&str> {
    json.get("id")
        .and_then(Value::as_str)
        .filter(|id| !id.is_empty())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::store::ids::give_lasting_ids;
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
    fn lists_become_records_and_the_rest_fields() {
        let mut json = site();
        give_lasting_ids(Noun::Site, &mut json, &mut || "new".to_owned());
        let flats = flat(&json);
        let nouns: Vec<Noun> = flats.iter().map(|flat| flat.noun).collect();
        assert_eq!(nouns.iter().filter(|noun| **noun == Noun::Tree).count(), 2);
        let finding = flats
            .iter()
            .find(|flat| flat.noun == Noun::Finding)
            .unwrap();
        assert_eq!(finding.parent.as_deref(), Some("i"));
        assert_eq!(finding.fields.len(), 3);
    }

    #[test]
    fn an_unknown_field_is_refused() {
        let json = json!({"id": "s", "name": "Hill", "colour": "red"});
        let fault = flatten(Noun::Site, None, 0.0, &json, &mut Vec::new()).unwrap_err();
        assert!(matches!(fault, BookError::Refused { .. }));
    }
}
