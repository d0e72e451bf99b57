//! One change: what the log is made of, and one line of a pack's `changes.jsonl`.

use rusqlite::Row;
use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use super::clock;
use super::fields::same;
use crate::record::Fault;

/// Field of a change that says in which record a record lies.
pub const PARENT: &str = "@parent";
/// Field of a change that says where in its list a record lies.
pub const ORDER: &str = "@order";
/// Field of a change that says whether a record was removed.
pub const GONE: &str = "@gone";
/// Field of a change that says what the author of a removal knew: of every device the time of the
/// latest change. It stands at the site, or at a record of the book itself; one an edit.
pub const SEEN: &str = "@seen";

/// One field of one record set to a value by one person; appended, never altered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Change {
    /// UUID of version 7.
    pub id: String,
    /// Hybrid logical time: 16 hexadecimal digits, seconds since 1970 in the first eight, parts of
    /// a second in the others; sorts as text.
    pub hlc: String,
    /// The device it was made on.
    pub device: String,
    /// The person; empty if nobody was named.
    pub person: String,
    /// The edit it belongs to: what one undo takes back.
    pub edit: String,
    /// The site it belongs to, or nothing for crew, gear, codebook and house values.
    pub site: Option<String>,
    /// The noun, by its table name; may be one that this version does not know.
    pub noun: String,
    /// The record's id.
    pub record: String,
    /// The field; `@parent`, `@order` and `@gone` are the record's own place and removal.
    pub field: String,
    /// The value; null when cleared.
    pub value: Value,
    /// Ids of the changes to that field that the author saw.
    pub replaces: Vec<String>,
}

/// The columns of a change in the order that [`Change::of_row`] reads.
pub const COLUMNS: &str =
    "id, hlc, device, person, edit, site, noun, record, field, value, replaces";

impl Change {
    /// Reads a row selected with `COLUMNS`.
    pub fn of_row(row: &Row<'_>) -> rusqlite::Result<Change> {
        Ok(Change {
            id: row.get(0)?,
            hlc: row.get(1)?,
            device: row.get(2)?,
            person: row.get(3)?,
            edit: row.get(4)?,
            site: row.get(5)?,
            noun: row.get(6)?,
            record: row.get(7)?,
            field: row.get(8)?,
            value: parsed(9, &row.get::<_, String>(9)?)?,
            replaces: parsed(10, &row.get::<_, String>(10)?)?,
        })
    }

    /// The moment it was made by its author's own clock, in milliseconds since 1970 (UTC). The id
    /// says it; the logical time may have run ahead with that of a phone whose date was wrong.
    pub fn utc_ms(&self) -> i64 {
        let stamp = Uuid::try_parse(&self.id)
            .ok()
            .filter(|id| id.get_version_num() == 7)
            .and_then(|id| id.get_timestamp());
        let Some((seconds, nanos)) = stamp.map(|stamp| stamp.to_unix()) else {
            return self.logical_ms();
        };
        let ms = seconds.saturating_mul(1000) + u64::from(nanos / 1_000_000);
        i64::try_from(ms).unwrap_or(i64::MAX)
    }

    /// Its logical time in milliseconds since 1970 (UTC): not earlier than anything its author saw.
    pub fn logical_ms(&self) -> i64 {
        clock::utc_ms_of(&self.hlc)
    }

    /// Whether two changes of one id are one: every part alike, numbers by their value.
    pub fn says_the_same(&self, other: &Change) -> bool {
        let parts = |change: &Change| Change {
            value: Value::Null,
            ..change.clone()
        };
        same(&self.value, &other.value) && parts(self) == parts(other)
    }

    /// What keeps a change of another phone from being taken; `line` counts from 1.
    pub fn fault(&self, line: usize) -> Option<Fault> {
        let wrong = |what: &str, found: &str, allowed: &str| {
            let place = format!("line {line}, {what}");
            Some(Fault::new("fault.change", place, found, allowed))
        };
        if self.id.is_empty() || self.id.len() > 64 {
            return wrong("id", &self.id, "1 to 64 characters");
        }
        if !clock::is_time(&self.hlc) {
            return wrong("hlc", &self.hlc, "16 hexadecimal digits");
        }
        for (what, text) in [
            ("noun", &self.noun),
            ("record", &self.record),
            ("field", &self.field),
        ] {
            if text.is_empty() {
                return wrong(what, "", "a name");
            }
        }
        if self.replaces.contains(&self.id) {
            return wrong("replaces", &self.id, "other changes only");
        }
        None
    }
}

/// JSON kept in a column; what cannot be read there is damage.
pub fn parsed<T: serde::de::DeserializeOwned>(column: usize, text: &str) -> rusqlite::Result<T> {
    serde_json::from_str(text).map_err(|cause| {
        rusqlite::Error::FromSqlConversionFailure(
            column,
            rusqlite::types::Type::Text,
            Box::new(cause),
        )
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn change() -> Change {
        serde_json::from_str(
            r#"{"id":"a","hlc":"6850000000000000","device":"d","person":"ana","edit":"e",
            "site":null,"noun":"tree","record":"t","field":"tag","value":"7","replaces":[]}"#,
        )
        .unwrap()
    }

    #[test]
    fn a_change_that_replaces_itself_is_a_fault() {
        assert_eq!(change().fault(1), None);
        let mut circular = change();
        circular.replaces.push("a".to_owned());
        assert_eq!(circular.fault(3).unwrap().place, "line 3, replaces");
    }

    #[test]
    fn its_moment_is_that_of_its_author_and_not_of_a_phone_set_ahead() {
        let mut far = change();
        assert_eq!(far.utc_ms(), far.logical_ms());
        // RFC 9562, appendix A.6: this UUID of version 7 was made at 1645557742000.
        far.id = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f".to_owned();
        assert_eq!(far.utc_ms(), 1_645_557_742_000);
    }

    #[test]
    fn one_id_is_one_change_whatever_the_form_of_its_numbers() {
        let (mut one, mut other) = (change(), change());
        one.value = Value::from(12);
        other.value = Value::from(12.0);
        assert!(one.says_the_same(&other));
        other.person = "ben".to_owned();
        assert!(!one.says_the_same(&other));
    }

    #[test]
    fn a_time_of_another_form_is_a_fault() {
        let mut odd = change();
        odd.hlc = "yesterday".to_owned();
        assert_eq!(odd.fault(2).unwrap().place, "line 2, hlc");
    }
}
