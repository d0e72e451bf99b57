//! A layer of a map file: its columns, and rows that may have a place on the ground.

use geo::Geometry;
use serde::Serialize;

use crate::record::{Day, Quantity};

/// A layer of a map file.
pub(super) struct Layer {
    /// Its name: a table of the GeoPackage, the property `layer` in GeoJSON.
    pub name: &'static str,
    /// Its geometries.
    pub form: Form,
    /// Its columns, in their order.
    pub columns: &'static [Column],
    /// Its rows.
    pub rows: Vec<Row>,
}

/// The kind of geometry that a layer holds.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Form {
    Point,
    MultiLine,
    MultiPolygon,
    Any,
}

/// A column; a number's unit is part of its name.
pub(super) struct Column {
    pub name: &'static str,
    pub kind: Kind,
}

/// What a column holds.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Kind {
    Text,
    Yes,
    Day,
    /// A number as it was recorded.
    Number(Quantity),
    /// A distance that people keep: rounded up to a tenth of its unit.
    Reach(Quantity),
}

/// One row: the id of its record, its place, a value for each column.
pub(super) struct Row {
    pub id: String,
    pub place: Option<Geometry>,
    pub values: Vec<Value>,
}

/// A value; what nobody observed is missing, never zero.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Value {
    Missing,
    Text(String),
    Yes(bool),
    Day(Day),
    Number(f64),
}

impl Value {
    pub fn text(text: impl Into<String>) -> Self {
        let text = text.into();
        if text.trim().is_empty() {
            Value::Missing
        } else {
            Value::Text(text)
        }
    }

    pub fn text_or(text: Option<&String>) -> Self {
        text.map_or(Value::Missing, Value::text)
    }

    /// A number as recorded; neither NaN nor infinity has a place in a map file.
    pub fn number(value: Option<f64>) -> Self {
        value
            .filter(|value| value.is_finite())
            .map_or(Value::Missing, Value::Number)
    }

    pub fn yes(answer: Option<bool>) -> Self {
        answer.map_or(Value::Missing, Value::Yes)
    }

    pub fn day(day: Option<Day>) -> Self {
        day.map_or(Value::Missing, Value::Day)
    }

    /// The code of a choice as the site file writes it, such as `section_rigged`.
    pub fn code(choice: Option<impl Serialize>) -> Self {
        choice
            .and_then(|choice| serde_json::to_value(choice).ok())
            .and_then(|code| code.as_str().map(str::to_owned))
            .map_or(Value::Missing, Value::Text)
    }
}

/// Up to the next tenth; noise in the tenth digit is forgiven.
pub(super) fn tenth_up(value: f64) -> f64 {
    libm::ceil(value * 10.0 - 1e-8) / 10.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Verdict;

    #[test]
    fn distances_that_people_keep_round_up() {
        assert_eq!(tenth_up(11.61), 11.7);
        assert_eq!(tenth_up(11.6), 11.6);
        assert_eq!(tenth_up(0.1 + 0.2), 0.3);
    }

    #[test]
    fn what_is_not_there_is_missing() {
        assert_eq!(Value::number(Some(f64::NAN)), Value::Missing);
        assert_eq!(Value::text("  "), Value::Missing);
        assert_eq!(
            Value::code(Some(Verdict::NoStop)),
            Value::Text("no_stop".into())
        );
    }
}
