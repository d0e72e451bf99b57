//! Entries, read in the reader's language and units, each held against its rule.

use serde_json::{Value, json};

use super::fill::defect;
use super::position::{mean_fix, on_earth, one_fix, tapped_place, typed_place};
use crate::error::BookError;
use crate::pages::{
    Ask, AskKind, CommandKind, Entry, EntryValue, Listed, SizeClass, asks_of, choice_ids,
};
use crate::record::{Fault, LatLon, NumberField, Quantity};
use crate::words::Words;

/// What was entered for a command, by input; null clears what was there.
#[derive(Debug, Clone)]
pub(super) struct Entered {
    asks: &'static [Ask],
    values: Vec<(&'static Ask, Value)>,
}

impl Entered {
    /// Reads entries. Every fault is told at once, at its input.
    pub(super) fn read(
        command: CommandKind,
        entries: &[Entry],
        words: &Words,
    ) -> Result<Entered, BookError> {
        let asks = asks_of(command);
        let mut values: Vec<(&'static Ask, Value)> = Vec::new();
        let mut faults = Vec::new();
        for entry in entries {
            let ask = asks.iter().find(|ask| ask.id == entry.input);
            let ask =
                ask.ok_or_else(|| defect(format!("{} asks for no {}", command.id(), entry.input)))?;
            match value_of(ask, &entry.value, words) {
                Ok(value) => {
                    values.retain(|(other, _)| other.id != ask.id);
                    values.push((ask, value));
                }
                Err(Misread::Fault(fault)) => faults.push(fault),
                Err(Misread::Kind) => {
                    let detail = format!("{} does not take {:?}", ask.id, entry.value);
                    return Err(defect(detail));
                }
            }
        }
        if faults.is_empty() {
            Ok(Entered { asks, values })
        } else {
            Err(BookError::Refused { faults })
        }
    }

    /// Refuses a new record that lacks what the command needs.
    pub(super) fn whole(self) -> Result<Entered, BookError> {
        let faults = self.lacking();
        if faults.is_empty() {
            Ok(self)
        } else {
            Err(BookError::Refused { faults })
        }
    }

    /// A fault for every needed input that nobody filled.
    pub(super) fn lacking(&self) -> Vec<Fault> {
        let needed = self.asks.iter().filter(|ask| ask.needed);
        needed
            .filter(|ask| self.value(ask.id).is_none_or(Value::is_null))
            .map(|ask| Fault::new("fault.needed", ask.id, "", ""))
            .collect()
    }

    /// The inputs with their values, in the order of the command.
    pub(super) fn values(&self) -> impl Iterator<Item = (&'static Ask, &Value)> {
        self.asks.iter().filter_map(|ask| {
            let found = self.values.iter().find(|(other, _)| other.id == ask.id);
            found.map(|(ask, value)| (*ask, value))
        })
    }

    /// The asks of the command.
    pub(super) fn asks(&self) -> &'static [Ask] {
        self.asks
    }

    /// Enters a value that nobody entered, such as the present day.
    pub(super) fn or_else(mut self, input: &str, value: impl FnOnce() -> Value) -> Entered {
        let is_there = self.value(input).is_some_and(|value| !value.is_null());
        if !is_there && let Some(ask) = self.asks.iter().find(|ask| ask.id == input) {
            self.values.retain(|(other, _)| other.id != input);
            self.values.push((ask, value()));
        }
        self
    }

    /// The same with another value for an input that was entered.
    pub(super) fn with(mut self, input: &str, value: Value) -> Entered {
        if let Some((_, entered)) = self.values.iter_mut().find(|(ask, _)| ask.id == input) {
            *entered = value;
        }
        self
    }

    /// A number that was entered, in its base unit.
    pub(super) fn number(&self, input: &str) -> Option<f64> {
        self.value(input).and_then(Value::as_f64)
    }

    /// Yes or no, where it was entered.
    pub(super) fn truth(&self, input: &str) -> Option<bool> {
        self.value(input).and_then(Value::as_bool)
    }

    /// What was entered for a part of the record, such as `girth`; nothing where nothing was.
    pub(super) fn values_of_part(&self, part: &str) -> Option<Value> {
        let mut fields = serde_json::Map::new();
        for (ask, value) in self.values() {
            if let Some((of, field)) = ask.field.split_once('.')
                && of == part
                && !value.is_null()
            {
                fields.insert(field.to_owned(), value.clone());
            }
        }
        (!fields.is_empty()).then_some(Value::Object(fields))
    }

    /// A text or a choice that was entered.
    pub(super) fn text(&self, input: &str) -> Option<&str> {
        self.value(input).and_then(Value::as_str)
    }

    /// What was entered for an input.
    pub(super) fn value(&self, input: &str) -> Option<&Value> {
        let found = self.values.iter().find(|(ask, _)| ask.id == input);
        found.map(|(_, value)| value)
    }
}

enum Misread {
    /// The person can mend it.
    Fault(Fault),
    /// The shell sent a value of another kind.
    Kind,
}

impl From<Fault> for Misread {
    fn from(fault: Fault) -> Self {
        Misread::Fault(fault)
    }
}

fn value_of(ask: &Ask, value: &EntryValue, words: &Words) -> Result<Value, Misread> {
    if let EntryValue::Choice { id } = value
        && id.is_empty()
    {
        return Ok(Value::Null);
    }
    Ok(match (ask.kind, value) {
        (AskKind::Number(field), EntryValue::Number { typed }) => number(ask, typed, field, words)?,
        (AskKind::RowValue, EntryValue::Number { typed }) => text_or_null(typed),
        (AskKind::Whole(field), EntryValue::Number { typed }) => {
            whole(ask, &number(ask, typed, field, words)?)?
        }
        (AskKind::Bearing(field) | AskKind::Angle(field), EntryValue::Number { typed }) => {
            number(ask, typed, field, words)?
        }
        (AskKind::Bearing(field), EntryValue::Bearing { degrees })
        | (AskKind::Angle(field), EntryValue::Tilt { degrees }) => {
            sensed(ask, *degrees, field, words)?
        }
        (AskKind::OneToThree(_), EntryValue::Choice { id }) => match id.as_str() {
            "1" | "2" | "3" => json!(id.parse::<u32>().unwrap_or(3)),
            _ => return Err(no_choice(ask, id).into()),
        },
        (AskKind::Choice(of), EntryValue::Choice { id }) => {
            if !choice_ids(of).contains(id) {
                return Err(no_choice(ask, id).into());
            }
            json!(id)
        }
        (AskKind::Choices(of), EntryValue::Choices { ids }) => {
            let known = choice_ids(of);
            if let Some(odd) = ids.iter().find(|id| !known.contains(id)) {
                return Err(no_choice(ask, odd).into());
            }
            json!(ids)
        }
        (AskKind::SizeClass, EntryValue::Choice { id }) => match SizeClass::of_id(id) {
            Some(class) => json!(class.id()),
            None => return Err(no_choice(ask, id).into()),
        },
        (AskKind::OneOf(_), EntryValue::Choice { id }) => text_or_null(id),
        // Looked for by typing, a tree is named by its tag.
        (AskKind::OneOf(Listed::Trees), EntryValue::Words { text }) => text_of(ask, text, 40)?,
        (AskKind::SomeOf(_), EntryValue::Choices { ids }) => json!(ids),
        (AskKind::Text(most) | AskKind::Species(most), EntryValue::Words { text }) => {
            text_of(ask, text, most)?
        }
        (AskKind::Species(most), EntryValue::Choice { id }) => text_of(ask, id, most)?,
        (AskKind::OnDay, EntryValue::Words { text }) => day_of(ask, text)?,
        (AskKind::YesNo, EntryValue::YesNo { yes }) => json!(yes),
        (
            AskKind::Fix,
            EntryValue::Fix {
                lat_deg,
                lon_deg,
                accuracy_m,
            },
        ) => {
            let at = LatLon {
                lat_deg: *lat_deg,
                lon_deg: *lon_deg,
            };
            one_fix(ask.id, at, *accuracy_m, words)?
        }
        (
            AskKind::Fix,
            EntryValue::OnPlan {
                lat_deg,
                lon_deg,
                accuracy_m,
            },
        ) => {
            let at = LatLon {
                lat_deg: *lat_deg,
                lon_deg: *lon_deg,
            };
            tapped_place(ask.id, at, *accuracy_m, words)?
        }
        (AskKind::Fix, EntryValue::Fixes { fixes, .. }) => match fixes.as_slice() {
            [mean] => mean_fix(ask.id, mean)?,
            _ => return Err(Misread::Kind),
        },
        (AskKind::Fix, EntryValue::Words { text }) if text.trim().is_empty() => Value::Null,
        (AskKind::Fix, EntryValue::Words { text }) => typed_place(ask.id, text)?,
        (AskKind::PhotoFile, EntryValue::PhotoFile { path }) => text_or_null(path),
        (AskKind::Outline(least), EntryValue::Outline { points }) => outline(ask, points, least)?,
        _ => return Err(Misread::Kind),
    })
}

fn no_choice(ask: &Ask, id: &str) -> Fault {
    Fault::new("fault.not-a-choice", ask.id, id, "")
}

fn text_or_null(text: &str) -> Value {
    match text.trim() {
        "" => Value::Null,
        text => json!(text),
    }
}

fn number(ask: &Ask, typed: &str, field: &NumberField, words: &Words) -> Result<Value, Fault> {
    if typed.trim().is_empty() {
        return Ok(Value::Null);
    }
    words
        .read_field(typed, field, ask.id)
        .map(|value| json!(value))
}

fn whole(ask: &Ask, value: &Value) -> Result<Value, Fault> {
    match value.as_f64() {
        None => Ok(Value::Null),
        Some(number) if number.fract() == 0.0 && number >= 0.0 => Ok(json!(number as u32)),
        Some(number) => Err(Fault::new("fault.not-whole", ask.id, number, "")),
    }
}

fn sensed(ask: &Ask, degrees: f64, field: &NumberField, words: &Words) -> Result<Value, Fault> {
    if field.allows(degrees) {
        return Ok(json!(degrees));
    }
    if !degrees.is_finite() {
        return Err(Fault::new("fault.no-reading", ask.id, "", ""));
    }
    let found = words.number(degrees, Quantity::AngleDeg);
    let allowed = words.range_of(field);
    Err(Fault::new("fault.out-of-range", ask.id, found, allowed))
}

fn text_of(ask: &Ask, text: &str, most: u32) -> Result<Value, Fault> {
    let length = text.trim().chars().count();
    if length > most as usize {
        let allowed = most.to_string();
        return Err(Fault::new("fault.too-long", ask.id, length, allowed));
    }
    Ok(text_or_null(text))
}

fn day_of(ask: &Ask, text: &str) -> Result<Value, Fault> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(Value::Null);
    }
    match text.parse::<crate::record::Day>() {
        Ok(day) => Ok(json!(day.to_string())),
        Err(_) => Err(Fault::new("fault.not-a-day", ask.id, text, "2026-05-14")),
    }
}

fn outline(ask: &Ask, points: &[LatLon], least: u32) -> Result<Value, Fault> {
    if points.is_empty() {
        return Ok(json!([]));
    }
    if points.len() < least as usize {
        let allowed = least.to_string();
        return Err(Fault::new("fault.too-few", ask.id, points.len(), allowed));
    }
    for point in points {
        on_earth(ask.id, *point)?;
    }
    Ok(json!(points))
}
