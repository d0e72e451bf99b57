//! Values entered → the fields of a record.

use serde::de::DeserializeOwned;
use serde_json::{Map, Value};

use super::entries::Entered;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun};
use crate::store::Edit;

/// A fault of the program.
pub(super) fn defect(cause: impl std::fmt::Display) -> BookError {
    BookError::Defect {
        detail: cause.to_string(),
    }
}

/// A new record from what was entered.
///
/// # Errors
/// `Refused` at the input of what is missing.
pub(super) fn new_record<T: DeserializeOwned>(entered: &Entered) -> Result<T, BookError> {
    let mut record = Map::new();
    // The store gives it an id.
    record.insert("id".to_owned(), Value::from(""));
    lay_over(&mut record, entered);
    typed(Value::Object(record), entered)
}

/// A record as it is with what was entered laid over it.
///
/// # Errors
/// `Refused` at the input of what is missing.
pub(super) fn changed_record<T: DeserializeOwned + serde::Serialize>(
    record: &T,
    entered: &Entered,
) -> Result<T, BookError> {
    let Value::Object(mut fields) = serde_json::to_value(record).map_err(defect)? else {
        return Err(defect("a record that is no object"));
    };
    lay_over(&mut fields, entered);
    typed(Value::Object(fields), entered)
}

/// Lays the values over a record. Clearing the value that a part stands and falls with clears the
/// part; a part of which nothing is left is no part.
fn lay_over(record: &mut Map<String, Value>, entered: &Entered) {
    for (ask, value) in entered.values() {
        match ask.field.split_once('.') {
            _ if ask.field.is_empty() => {}
            None => put(record, ask.field, value),
            Some((part, _)) if value.is_null() && ask.heads => {
                record.remove(part);
            }
            Some((part, field)) => {
                let held = record
                    .entry(part.to_owned())
                    .or_insert_with(|| Value::Object(Map::new()));
                if let Value::Object(held) = held {
                    put(held, field, value);
                    if held.is_empty() {
                        record.remove(part);
                    }
                }
            }
        }
    }
}

fn put(record: &mut Map<String, Value>, field: &str, value: &Value) {
    if value.is_null() {
        record.remove(field);
    } else {
        record.insert(field.to_owned(), value.clone());
    }
}

/// The record, or the input of what it lacks.
fn typed<T: DeserializeOwned>(json: Value, entered: &Entered) -> Result<T, BookError> {
    serde_json::from_value(json).map_err(|cause| {
        let told = cause.to_string();
        let missing = told
            .strip_prefix("missing field `")
            .and_then(|rest| rest.split('`').next());
        let ask = missing.and_then(|missing| {
            entered.asks().iter().find(|ask| {
                ask.field
                    .rsplit('.')
                    .next()
                    .is_some_and(|own| own == missing)
            })
        });
        match ask {
            Some(ask) => BookError::refused(Fault::new("fault.needed", ask.id, "", "")),
            None => defect(told),
        }
    })
}

/// Sets every field in which two records differ.
pub(super) fn set_changed<T: serde::Serialize>(
    edit: &mut Edit<'_>,
    noun: Noun,
    id: &Id,
    before: &T,
    after: &T,
) -> Result<(), BookError> {
    let (before, after) = (
        serde_json::to_value(before).map_err(defect)?,
        serde_json::to_value(after).map_err(defect)?,
    );
    let (Some(before), Some(after)) = (before.as_object(), after.as_object()) else {
        return Err(defect("a record that is no object"));
    };
    let names = before.keys().chain(after.keys());
    let mut done: Vec<&str> = vec!["id"];
    for name in names {
        if done.contains(&name.as_str()) {
            continue;
        }
        done.push(name);
        let now = after.get(name).unwrap_or(&Value::Null);
        if before.get(name).unwrap_or(&Value::Null) != now {
            edit.set(noun, id, name, now.clone())?;
        }
    }
    Ok(())
}
