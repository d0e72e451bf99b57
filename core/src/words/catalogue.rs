//! The catalogue of words, one Fluent file a language.

use std::borrow::Cow;
use std::sync::OnceLock;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::types::FluentNumber;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use icu_locale_core::{Locale, locale};
use serde::{Deserialize, Serialize};
use unic_langid::LanguageIdentifier;

use super::numbers::{Decimals, Rounding, decimal};
use super::units::UnitSystem;
use crate::record::{Day, Quantity};

/// A language that the catalogue speaks.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum Language {
    /// English as in the United States.
    English,
    /// Spanish, with the decimal comma.
    Spanish,
}

impl Language {
    /// Every language.
    pub const ALL: [Language; 2] = [Language::English, Language::Spanish];

    /// The language that a phone's language tag asks for (RFC 5646, such as `es-MX`; with `_` and an
    /// encoding after it, as systems write it, too). English where the catalogue lacks it.
    pub fn of_tag(tag: &str) -> Language {
        let first = tag.split(['-', '_', '.', '@']).next().unwrap_or_default();
        let of = |language: &Language| {
            language
                .langid()
                .language
                .as_str()
                .eq_ignore_ascii_case(first)
        };
        let known = Language::ALL.into_iter().find(of);
        known.unwrap_or(Language::English)
    }

    pub(super) fn locale(self) -> Locale {
        match self {
            Language::English => locale!("en-US"),
            Language::Spanish => locale!("es"),
        }
    }

    fn langid(self) -> LanguageIdentifier {
        match self {
            Language::English => "en-US",
            Language::Spanish => "es",
        }
        .parse()
        .unwrap_or_default()
    }

    pub(super) fn source(self) -> &'static str {
        match self {
            Language::English => include_str!("../../words/en.ftl"),
            Language::Spanish => include_str!("../../words/es.ftl"),
        }
    }

    fn bundle(self) -> &'static FluentBundle<FluentResource> {
        static ENGLISH: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
        static SPANISH: OnceLock<FluentBundle<FluentResource>> = OnceLock::new();
        match self {
            Language::English => ENGLISH.get_or_init(|| self.build()),
            Language::Spanish => SPANISH.get_or_init(|| self.build()),
        }
    }

    fn build(self) -> FluentBundle<FluentResource> {
        let mut bundle = FluentBundle::new_concurrent(vec![self.langid()]);
        // Isolating marks would get into PDF and CSV.
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(match self {
            Language::English => |value, _| formatted(Language::English, value),
            Language::Spanish => |value, _| formatted(Language::Spanish, value),
        }));
        // A faulty entry is left out and shown by its key; a test holds that none is faulty.
        let resource = match FluentResource::try_new(self.source().to_owned()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        bundle.add_resource_overriding(resource);
        bundle
    }
}

fn formatted(language: Language, value: &FluentValue<'_>) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(decimal(
            language,
            number.value,
            Decimals::up_to(2),
            Rounding::Nearest,
        )),
        _ => None,
    }
}

/// What an entry of the catalogue is told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Said<'a> {
    /// Text as it stands.
    Text(&'a str),
    /// A whole number, by which the entry may choose its plural.
    Count(i64),
    /// A number by which the entry may choose its plural.
    Plural(f64),
    /// A value in the base unit of its quantity. An entry that names it `x` may also use
    /// `x-up` and `x-down`, rounded to that side.
    Number(f64, Quantity),
    /// A value with its standard error, both in the base unit of the quantity.
    Measure(f64, f64, Quantity),
    /// A day.
    Day(Day),
    /// Another entry.
    Term(&'a str),
}

/// The words of one reader: a language and a unit system. Cheap to copy.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Words {
    language: Language,
    units: UnitSystem,
}

/// The id of a catalogue entry in the Fluent file, which knows no dots: `stop.hanger-above` is
/// `stop-hanger-above`, `height.height_m.why` is `height-height_m-why`.
pub fn catalogue_id(key: &str) -> Cow<'_, str> {
    if key.contains('.') {
        Cow::Owned(key.replace('.', "-"))
    } else {
        Cow::Borrowed(key)
    }
}

impl Words {
    /// The words of a reader.
    pub fn new(language: Language, units: UnitSystem) -> Self {
        Words { language, units }
    }

    /// The language.
    pub fn language(&self) -> Language {
        self.language
    }

    /// The units.
    pub fn units(&self) -> UnitSystem {
        self.units
    }

    /// Whether the catalogue has an entry.
    pub fn has(&self, key: &str) -> bool {
        self.language.bundle().has_message(&catalogue_id(key))
    }

    /// The entry of the catalogue with its arguments filled in. An entry that is missing shows its
    /// key in ⟦⟧, so that nothing is lost and the gap is seen.
    pub fn say(&self, key: &str, args: &[(&str, Said<'_>)]) -> String {
        let mut filled = FluentArgs::with_capacity(args.len());
        for (name, said) in args {
            self.fill(&mut filled, name, *said);
        }
        self.say_filled(key, &filled)
    }

    pub(super) fn say_filled(&self, key: &str, args: &FluentArgs<'_>) -> String {
        let bundle = self.language.bundle();
        let pattern = bundle
            .get_message(&catalogue_id(key))
            .and_then(|message| message.value());
        match pattern {
            // Arguments that are missing stay visible as `{$name}`.
            Some(pattern) => bundle
                .format_pattern(pattern, Some(args), &mut Vec::new())
                .into_owned(),
            None => format!("⟦{key}⟧"),
        }
    }

    pub(super) fn fill<'a>(&self, args: &mut FluentArgs<'a>, name: &str, said: Said<'a>) {
        match said {
            Said::Text(text) => args.set(name.to_owned(), text),
            Said::Count(count) => args.set(name.to_owned(), count),
            Said::Plural(number) => {
                args.set(
                    name.to_owned(),
                    FluentNumber::new(number, Default::default()),
                );
            }
            Said::Number(value, quantity) => {
                args.set(name.to_owned(), self.number(value, quantity));
                for (suffix, rounding) in [("up", Rounding::Up), ("down", Rounding::Down)] {
                    args.set(
                        format!("{name}-{suffix}"),
                        self.number_toward(value, quantity, rounding),
                    );
                }
            }
            Said::Measure(value, se, quantity) => args.set(
                name.to_owned(),
                self.measure_with_se(value, Some(se), quantity),
            ),
            Said::Day(day) => args.set(name.to_owned(), self.day(day)),
            Said::Term(key) => args.set(name.to_owned(), self.say(key, &[])),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    #[test]
    fn the_catalogue_is_shared_between_threads() {
        fn shared<T: Send + Sync>() {}
        shared::<FluentBundle<FluentResource>>();
        let said = std::thread::spawn(|| words().say("verdict.no-stop", &[]))
            .join()
            .unwrap();
        assert_eq!(said, "no stop found today");
    }

    #[test]
    fn a_phones_language_tag_finds_its_catalogue() {
        // RFC 5646, 'Tags for Identifying Languages': case does not matter, the language is first.
        for tag in ["es", "es-MX", "ES-419", "es_ES.UTF-8", "es-Latn-US"] {
            assert_eq!(Language::of_tag(tag), Language::Spanish, "{tag}");
        }
        for tag in ["en", "en-GB", "", "de-AT", "est", "zh-Hans"] {
            assert_eq!(Language::of_tag(tag), Language::English, "{tag}");
        }
    }

    #[test]
    fn a_missing_entry_shows_its_key() {
        assert_eq!(words().say("no.such-entry", &[]), "⟦no.such-entry⟧");
    }

    #[test]
    fn counts_choose_their_plural() {
        // Unicode CLDR plural rules, `en`: one for 1, other for everything else.
        let points = |value| words().number(value, Quantity::Points);
        assert_eq!(points(1.0), "1 point");
        assert_eq!(points(0.0), "0 points");
        assert_eq!(points(12.0), "12 points");
    }

    #[test]
    fn spanish_counts_choose_their_plural() {
        // Unicode CLDR plural rules, `es`: one for 1, many for whole millions, other elsewhere.
        let spanish = Words::new(Language::Spanish, UnitSystem::Imperial);
        let months = |value| spanish.number(value, Quantity::DurationMonths);
        assert_eq!(months(1.0), "1 mes");
        assert_eq!(months(6.0), "6 meses");
        assert_eq!(months(1_000_000.0), "1.000.000 meses");
        assert_eq!(spanish.number(0.3048, Quantity::LengthM), "1 pie");
    }

    #[test]
    fn no_isolating_marks_get_into_the_text() {
        let text = words().say(
            "measure.from-to",
            &[("low", Said::Text("1")), ("high", Said::Text("2"))],
        );
        assert_eq!(text, "1 to 2");
        assert!(!text.contains(['\u{2068}', '\u{2069}']));
    }

    #[test]
    fn dots_are_no_part_of_an_id() {
        assert_eq!(catalogue_id("height.height_m.why"), "height-height_m-why");
        assert_eq!(catalogue_id("plain"), "plain");
    }
}
