//! Whether a record is one that this version can read, and what has to be left out if not.

use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

use super::fields;
use super::standing::UnreadValue;
use crate::record::{
    AnchorPoint, ClimbPlan, DefectCode, Finding, Gear, HouseValue, Id, Inspection, LoggedClimb,
    NearMiss, Noun, OverheadLine, PartLook, Permission, Person, Photo, RiskEntry, ShellReading,
    SignOff, Site, StemSection, Target, Tree, Visit, WeatherHour, WireDistance, Work,
};

/// Whether a record, with or without what lies in it, is whole.
///
/// # Errors
/// What is missing or of another form, in the words of the reader.
pub fn fits(noun: Noun, record: &Value) -> Result<(), String> {
    match noun {
        Noun::Site => reads::<Site>(record),
        Noun::Target => reads::<Target>(record),
        Noun::OverheadLine => reads::<OverheadLine>(record),
        Noun::Permission => reads::<Permission>(record),
        Noun::Visit => reads::<Visit>(record),
        Noun::WeatherHour => reads::<WeatherHour>(record),
        Noun::Tree => reads::<Tree>(record),
        Noun::Work => reads::<Work>(record),
        Noun::Inspection => reads::<Inspection>(record),
        Noun::WireDistance => reads::<WireDistance>(record),
        Noun::PartLook => reads::<PartLook>(record),
        Noun::Finding => reads::<Finding>(record),
        Noun::StemSection => reads::<StemSection>(record),
        Noun::ShellReading => reads::<ShellReading>(record),
        Noun::AnchorPoint => reads::<AnchorPoint>(record),
        Noun::ClimbPlan => reads::<ClimbPlan>(record),
        Noun::Photo => reads::<Photo>(record),
        Noun::RiskEntry => reads::<RiskEntry>(record),
        Noun::NearMiss => reads::<NearMiss>(record),
        Noun::Person => reads::<Person>(record),
        Noun::SignOff => reads::<SignOff>(record),
        Noun::LoggedClimb => reads::<LoggedClimb>(record),
        Noun::Gear => reads::<Gear>(record),
        Noun::DefectCode => reads::<DefectCode>(record),
        Noun::HouseValue => reads::<HouseValue>(record),
        Noun::SignedJudgement => match record.get("judgement") {
            Some(Value::Object(_)) => Ok(()),
            _ => Err("missing field `judgement`".to_owned()),
        },
    }
}

fn reads<T: DeserializeOwned>(record: &Value) -> Result<(), String> {
    T::deserialize(record)
        .map(|_| ())
        .map_err(|cause| cause.to_string())
}

/// Leaves out what this version cannot read: a value if the rest is whole without it, else the
/// record. Everything left out is named. Says whether the record itself can stay.
pub fn trim(noun: Noun, record: &mut Value, left_out: &mut Vec<UnreadValue>) -> bool {
    let Some(known) = fields::of(noun) else {
        return false;
    };
    for (list, child) in &known.lists {
        if let Some(items) = record.get_mut(*list).and_then(Value::as_array_mut) {
            items.retain_mut(|item| trim(*child, item, left_out));
        }
    }
    let Some(all) = record.as_object_mut() else {
        return false;
    };
    let is_list = |name: &str| known.lists.iter().any(|(list, _)| *list == name);
    let whole = Value::Object(own_part(all, &is_list));
    if fits(noun, &whole).is_ok() {
        return true;
    }
    let id = Id(all
        .get("id")
        .and_then(Value::as_str)
        .unwrap_or_default()
        .to_owned());
    let mut leave_out = |field: &str| {
        left_out.push(UnreadValue {
            noun: noun.place().table.to_owned(),
            record: id.clone(),
            field: field.to_owned(),
        });
    };
    let Some(mut read) = needed(noun, all) else {
        leave_out("");
        return false;
    };
    for field in &known.fields {
        let Some(value) = all.get(&field.name).cloned() else {
            continue;
        };
        if let Some(fields) = read.as_object_mut() {
            fields.insert(field.name.clone(), value);
        }
        if fits(noun, &read).is_err() {
            for fields in [read.as_object_mut(), Some(&mut *all)]
                .into_iter()
                .flatten()
            {
                fields.remove(&field.name);
            }
            leave_out(&field.name);
        }
    }
    true
}

/// The record without the lists of what lies in it.
fn own_part(all: &Map<String, Value>, is_list: &dyn Fn(&str) -> bool) -> Map<String, Value> {
    all.iter()
        .filter(|(name, _)| !is_list(name))
        .map(|(name, value)| (name.clone(), value.clone()))
        .collect()
}

/// The least of a record that can be read: what the reader asks for, one field after the other.
/// Nothing if a field that it needs is missing or cannot be read.
fn needed(noun: Noun, all: &Map<String, Value>) -> Option<Value> {
    let mut least = Map::new();
    least.insert("id".to_owned(), all.get("id")?.clone());
    loop {
        let tried = Value::Object(least.clone());
        let Err(cause) = fits(noun, &tried) else {
            return Some(tried);
        };
        let name = cause.strip_prefix("missing field `")?.split('`').next()?;
        least.insert(name.to_owned(), all.get(name)?.clone());
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn an_unknown_choice_is_left_out_and_named() {
        let mut tree = json!({"id": "t", "tag": "7", "way": "by_balloon", "walk_order": 3,
            "other_access": ["jetpack"]});
        let mut left_out = Vec::new();
        assert!(trim(Noun::Tree, &mut tree, &mut left_out));
        assert_eq!(tree, json!({"id": "t", "tag": "7", "walk_order": 3}));
        let names: Vec<&str> = left_out.iter().map(|left| left.field.as_str()).collect();
        assert_eq!(names, ["way", "other_access"]);
    }

    #[test]
    fn a_record_without_what_it_needs_is_left_out_whole_and_named() {
        let mut inspection = json!({"id": "i", "level": "triage",
            "findings": [{"id": "f", "part": "aerial_root", "code": "decay"}]});
        let mut left_out = Vec::new();
        assert!(trim(Noun::Inspection, &mut inspection, &mut left_out));
        assert_eq!(inspection["findings"], json!([]));
        assert!(
            left_out
                .iter()
                .any(|left| left.noun == "finding" && left.field.is_empty())
        );
    }
}
