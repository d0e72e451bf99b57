//! What every page is made with: the reader's words, the records to choose from, and the offers.

use std::cell::Cell;

use serde_json::Value;

use super::ask::{Ask, AskKind, Listed};
use super::command_kind::CommandKind;
use super::entry::EntryValue;
use super::forms::asks_of;
use super::offer::{InputKind, Offer, OfferedChoice, OfferedInput};
use crate::record::{
    DefectCode, Id, Inspection, LatLon, NumberField, Person, Position, Quantity, Site,
};
use crate::words::{Words, all_term_keys};

/// What every page is made with.
pub struct PageDesk<'a> {
    /// The reader's words and units.
    pub words: Words,
    /// First part of the tokens of this page's offers, never used before.
    pub token: String,
    /// Counts the offers of this page.
    pub offered: Cell<u32>,
    /// The crew.
    pub crew: &'a [Person],
    /// The codes in use, starter codes and the crew's own, in the order of their tiles.
    pub codes: Vec<DefectCode>,
    /// The site, on its pages.
    pub site: Option<&'a Site>,
    /// The inspection, where the page is about one.
    pub inspection: Option<&'a Inspection>,
}

impl PageDesk<'_> {
    /// An entry of the catalogue without arguments.
    pub fn say(&self, key: &str) -> String {
        self.words.say(key, &[])
    }

    /// An offer that can be taken; `record` is what is there now, as JSON.
    pub fn offer(&self, command: CommandKind, about: &Id, record: Option<&Value>) -> Offer {
        self.offered.set(self.offered.get() + 1);
        Offer {
            id: command.id().to_owned(),
            command,
            about: about.0.clone(),
            words: self.say(&format!("offer.{}", command.id())),
            enabled: true,
            why_not: String::new(),
            inputs: asks_of(command)
                .iter()
                .map(|ask| self.input(ask, record))
                .collect(),
            token: format!("{}-{}", self.token, self.offered.get()),
        }
    }

    /// The same offer, not to be taken now, and why.
    pub fn offer_unless(
        &self,
        command: CommandKind,
        about: &Id,
        record: Option<&Value>,
        why_not: Option<&str>,
    ) -> Offer {
        let mut offer = self.offer(command, about, record);
        if let Some(key) = why_not {
            offer.enabled = false;
            offer.why_not = self.say(key);
        }
        offer
    }

    fn input(&self, ask: &Ask, record: Option<&Value>) -> OfferedInput {
        let why = ask.why_key();
        OfferedInput {
            id: ask.id.to_owned(),
            words: self.say(&ask.label_key()),
            help: if self.words.has(&why) {
                self.say(&why)
            } else {
                String::new()
            },
            needed: ask.needed,
            kind: self.input_kind(ask),
            current: record
                .and_then(|record| at_field(record, ask.field))
                .and_then(|value| self.current(ask, value)),
        }
    }

    fn input_kind(&self, ask: &Ask) -> InputKind {
        match ask.kind {
            AskKind::Number(field) => self.number_kind(field, false),
            AskKind::Whole(field) => self.number_kind(field, true),
            AskKind::Grade => InputKind::Choice {
                choices: (1..=3)
                    .map(|grade| self.choice(&grade.to_string(), &format!("grade.{grade}")))
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
            AskKind::OneOf(listed) => InputKind::Choice {
                choices: self.listed(listed),
            },
            AskKind::SomeOf(listed) => InputKind::Choices {
                choices: self.listed(listed),
            },
        }
    }

    fn number_kind(&self, field: &NumberField, whole: bool) -> InputKind {
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
        OfferedChoice {
            id: id.to_owned(),
            words: self.say(key),
            help: String::new(),
        }
    }

    /// The choices of an enum of the record: its catalogue entries, in the order of the record.
    fn term_choices(&self, of: &str) -> Vec<OfferedChoice> {
        choice_ids(of)
            .iter()
            .map(|id| self.choice(id, &format!("{of}.{}", id.replace('_', "-"))))
            .collect()
    }

    fn listed(&self, listed: Listed) -> Vec<OfferedChoice> {
        let plain = |id: &Id, words: &str| OfferedChoice {
            id: id.0.clone(),
            words: words.to_owned(),
            help: String::new(),
        };
        let site = self.site;
        let seen = self.inspection;
        match listed {
            Listed::People => self.crew.iter().map(|p| plain(&p.id, &p.name)).collect(),
            Listed::Codes => self
                .codes
                .iter()
                .filter(|code| !code.retired)
                .map(|code| plain(&code.id, &self.code_name(code)))
                .collect(),
            Listed::Lines => site
                .map(|site| site.lines.iter().map(|l| plain(&l.id, &l.name)).collect())
                .unwrap_or_default(),
            Listed::Targets => site
                .map(|site| site.targets.iter().map(|t| plain(&t.id, &t.name)).collect())
                .unwrap_or_default(),
            Listed::Trees => site
                .map(|site| site.trees.iter().map(|t| plain(&t.id, &t.tag)).collect())
                .unwrap_or_default(),
            Listed::Anchors => seen
                .map(|seen| {
                    seen.anchors
                        .iter()
                        .map(|a| plain(&a.id, a.name.as_deref().unwrap_or(a.id.as_str())))
                        .collect()
                })
                .unwrap_or_default(),
            Listed::Findings => seen
                .map(|seen| {
                    seen.findings
                        .iter()
                        .map(|f| plain(&f.id, &self.code_words(&f.code)))
                        .collect()
                })
                .unwrap_or_default(),
            Listed::RuleSets => vec![self.choice("us", "rule-set.us")],
        }
    }

    /// The name of a code: the crew's own, else the word of its kind.
    pub fn code_name(&self, code: &DefectCode) -> String {
        code.name
            .clone()
            .unwrap_or_else(|| self.words.word_of(&code.kind))
    }

    /// The name of a code by its id; the id where the codebook lacks it.
    pub fn code_words(&self, id: &Id) -> String {
        self.codes
            .iter()
            .find(|code| code.id == *id)
            .map_or_else(|| id.to_string(), |code| self.code_name(code))
    }

    /// Species that the site already has.
    fn suggested(&self, input: &str) -> Vec<String> {
        let Some(site) = self.site.filter(|_| input == "tree.species") else {
            return Vec::new();
        };
        let mut species: Vec<String> = Vec::new();
        for tree in &site.trees {
            if let Some(name) = &tree.species
                && !species.contains(name)
            {
                species.push(name.clone());
            }
        }
        species.sort();
        species
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
            AskKind::Grade => Some(EntryValue::Choice {
                id: value.as_u64()?.to_string(),
            }),
            AskKind::Choice(_) | AskKind::OneOf(_) => Some(EntryValue::Choice {
                id: value.as_str()?.to_owned(),
            }),
            AskKind::Choices(_) | AskKind::SomeOf(_) => Some(EntryValue::Choices {
                ids: serde_json::from_value(value.clone()).ok()?,
            }),
            AskKind::Text(_) | AskKind::OnDay => Some(EntryValue::Words {
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
            AskKind::PhotoFile => None,
        }
    }
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

/// From the base unit of a quantity to the reader's.
struct ReaderScale {
    zero: f64,
    one: f64,
}

impl ReaderScale {
    fn of(words: &Words, quantity: Quantity) -> ReaderScale {
        let read = |typed: &str| words.read(typed, quantity, "").unwrap_or(f64::NAN);
        ReaderScale {
            zero: read("0"),
            one: read("1"),
        }
    }

    fn shown(&self, base: f64) -> f64 {
        rounded((base - self.zero) / (self.one - self.zero))
    }

    /// A step is made round in the reader's unit: 1, 2 or 5 times a power of ten, or a tenth part
    /// thereof.
    fn step(&self, base: f64) -> f64 {
        let exact = base / (self.one - self.zero);
        if exact <= 0.0 {
            return exact;
        }
        let power = libm::pow(10.0, libm::floor(libm::log10(exact) + 1e-9));
        let lead = exact / power;
        let round = [1.0, 2.0, 5.0, 10.0]
            .into_iter()
            .min_by(|one, other| (one - lead).abs().total_cmp(&(other - lead).abs()))
            .unwrap_or(1.0);
        rounded(round * power)
    }
}

/// Takes off what the conversion adds in the last digits.
fn rounded(value: f64) -> f64 {
    (value * 1e9).round() / 1e9
}
