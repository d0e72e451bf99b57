//! The inputs of an offer: rule, choices and present value, in the reader's words and units.

use serde_json::Value;

use super::ask::{Ask, AskKind, Listed};
use super::desk::PageDesk;
use super::drawn::DrawingAddress;
use super::entry::EntryValue;
use super::offer::{InputKind, OfferedChoice, OfferedInput};
use super::scale::ReaderScale;
use crate::record::{LatLon, NumberField, Position, Quantity, UnionForm};
use crate::words::all_term_keys;

/// A number of which nothing is known yet.
const ANY_NUMBER: NumberField = NumberField {
    id: "house_value.value",
    quantity: Quantity::Ratio,
    min: 0.0,
    max: 1000.0,
    step: 0.01,
};

impl PageDesk<'_> {
    pub(super) fn input(&self, ask: &Ask, record: Option<&Value>) -> OfferedInput {
        // How it is read goes before why it is asked, and an input's own reason before that of the
        // field it shares with others.
        let own = ["how", "why"].map(|end| format!("{}.{end}", ask.id));
        let own = own.into_iter().find(|key| self.words.has(key));
        let why = own.unwrap_or_else(|| ask.why_key());
        let current = record
            .and_then(|record| at_field(record, ask.field))
            .and_then(|value| self.current(ask, value));
        let mut kind = self.input_kind(ask);
        if let InputKind::Search { chosen, .. } = &mut kind {
            *chosen = match &current {
                Some(EntryValue::Words { text }) => self.species(Some(text)),
                Some(EntryValue::Choice { id }) => self.tag_of(id),
                _ => String::new(),
            };
        }
        OfferedInput {
            id: ask.id.to_owned(),
            words: self.say(&ask.label_key()),
            help: if nobody_to_choose(&kind, ask) {
                self.say("page.add-people-first")
            } else if self.words.has(&why) {
                self.say(&why)
            } else {
                String::new()
            },
            needed: ask.needed,
            kind,
            current,
        }
    }

    /// Whether an input has nothing to choose from, and can be left out. People are asked for all
    /// the same, and the help says what to do first.
    pub(super) fn nothing_to_choose(&self, ask: &Ask) -> bool {
        match ask.kind {
            AskKind::OneOf(listed) | AskKind::SomeOf(listed) => {
                !ask.needed && listed != Listed::People && self.listed(listed).is_empty()
            }
            _ => false,
        }
    }

    fn input_kind(&self, ask: &Ask) -> InputKind {
        match ask.kind {
            AskKind::Number(field) => self.number_kind(field, false),
            AskKind::Whole(field) => self.number_kind(field, true),
            // The page of the rule set puts the row's own rule in its place.
            AskKind::RowValue => self.number_kind(&ANY_NUMBER, false),
            AskKind::OneToThree(of) => InputKind::Choice {
                choices: (1..=3)
                    .map(|step| self.choice(&step.to_string(), &format!("{of}.{step}")))
                    .collect(),
            },
            AskKind::Choice(of) => InputKind::Choice {
                choices: self.term_choices(of),
            },
            AskKind::Choices(of) => InputKind::Choices {
                choices: self.term_choices(of),
            },
            AskKind::Text(most) => InputKind::Words {
                most,
                suggested: self.suggested(ask.id),
            },
            AskKind::Species(_) => InputKind::Search {
                first: self.species_first(),
                chosen: String::new(),
            },
            AskKind::SizeClass => InputKind::Choice {
                choices: self.size_classes(),
            },
            AskKind::YesNo => InputKind::YesNo,
            AskKind::Bearing(_) => InputKind::Bearing,
            AskKind::Angle(field) => InputKind::Tilt {
                min: field.min,
                max: field.max,
            },
            AskKind::Fix => InputKind::Fix,
            AskKind::PhotoFile => InputKind::PhotoFile,
            AskKind::Outline(least) => InputKind::Outline { least },
            AskKind::OnDay => InputKind::OnDay,
            AskKind::OneOf(Listed::Trees) => self.tree_input(),
            AskKind::OneOf(listed) => InputKind::Choice {
                choices: self.listed(listed),
            },
            AskKind::SomeOf(listed) => InputKind::Choices {
                choices: self.listed(listed),
            },
        }
    }

    pub(super) fn number_kind(&self, field: &NumberField, whole: bool) -> InputKind {
        let scale = ReaderScale::of(&self.words, field.quantity);
        InputKind::Number {
            min: scale.shown(field.min),
            max: scale.shown(field.max),
            step: scale.step(field.step),
            unit: self.words.unit_symbol(field.quantity),
            range: self.words.range_of(field),
            whole,
        }
    }

    fn choice(&self, id: &str, key: &str) -> OfferedChoice {
        OfferedChoice::of(id, self.words.label(key))
    }

    /// The choices of an enum of the record: its catalogue entries, in the order of the record.
    fn term_choices(&self, of: &str) -> Vec<OfferedChoice> {
        choice_ids(of)
            .iter()
            .map(|id| {
                let mut choice = self.choice(id, &format!("{of}.{}", id.replace('_', "-")));
                choice.drawing = drawing_of_choice(of, id);
                choice
            })
            .collect()
    }

    /// What is there now, in the form in which it would be entered.
    fn current(&self, ask: &Ask, value: &Value) -> Option<EntryValue> {
        match ask.kind {
            AskKind::Number(field)
            | AskKind::Whole(field)
            | AskKind::Bearing(field)
            | AskKind::Angle(field) => Some(EntryValue::Number {
                typed: self.words.number(value.as_f64()?, field.quantity),
            }),
            AskKind::RowValue => Some(EntryValue::Number {
                typed: value.as_str()?.to_owned(),
            }),
            AskKind::OneToThree(_) => Some(EntryValue::Choice {
                id: value.as_u64()?.to_string(),
            }),
            AskKind::Choice(_) | AskKind::OneOf(_) => Some(EntryValue::Choice {
                id: value.as_str()?.to_owned(),
            }),
            AskKind::Choices(_) | AskKind::SomeOf(_) => Some(EntryValue::Choices {
                ids: serde_json::from_value(value.clone()).ok()?,
            }),
            AskKind::Text(_) | AskKind::Species(_) | AskKind::OnDay => Some(EntryValue::Words {
                text: value.as_str()?.to_owned(),
            }),
            AskKind::YesNo => Some(EntryValue::YesNo {
                yes: value.as_bool()?,
            }),
            AskKind::Fix => {
                let position: Position = serde_json::from_value(value.clone()).ok()?;
                Some(EntryValue::Fix {
                    lat_deg: position.lat_deg,
                    lon_deg: position.lon_deg,
                    accuracy_m: position.accuracy_m,
                })
            }
            AskKind::Outline(_) => {
                let points: Vec<LatLon> = serde_json::from_value(value.clone()).ok()?;
                Some(EntryValue::Outline { points })
            }
            AskKind::PhotoFile | AskKind::SizeClass => None,
        }
    }
}

/// Whether people are to be chosen from, and none is entered.
fn nobody_to_choose(kind: &InputKind, ask: &Ask) -> bool {
    let of_people = matches!(
        ask.kind,
        AskKind::OneOf(Listed::People) | AskKind::SomeOf(Listed::People)
    );
    let (InputKind::Choice { choices } | InputKind::Choices { choices }) = kind else {
        return false;
    };
    of_people && choices.is_empty()
}

/// The ids of the choices of an enum of the record, as records write them, in their order.
pub fn choice_ids(of: &str) -> Vec<String> {
    let first = format!("{of}.");
    all_term_keys()
        .into_iter()
        .filter_map(|key| key.strip_prefix(&first).map(|id| id.replace('-', "_")))
        .collect()
}

/// The value at a field or a field of a part, such as `girth.girth_cm`.
pub fn at_field<'v>(record: &'v Value, field: &str) -> Option<&'v Value> {
    if field.is_empty() {
        return None;
    }
    field
        .split('.')
        .try_fold(record, |part, name| part.get(name))
}
/// What a choice looks like, where a picture says it sooner than words.
fn drawing_of_choice(of: &str, id: &str) -> Option<DrawingAddress> {
    let value = Value::from(id);
    match of {
        "tree-part" => {
            let part = serde_json::from_value(value).ok()?;
            Some(DrawingAddress::PartOfTree { part })
        }
        "union-form" => match serde_json::from_value(value).ok()? {
            UnionForm::NotSeen => None,
            form => Some(DrawingAddress::UnionOfForm { form }),
        },
        _ => None,
    }
}
