//! Nothing that the core says is missing in the catalogue.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentError, FluentResource};

use super::catalogue::{Language, Words, catalogue_id};
use super::units::{UnitSystem, unit_of};
use crate::record::{DefectKind, NUMBER_FIELDS, Noun};
use crate::words::Worded;

/// Entries whose keys are found by their first part, wherever they stand in the code.
const FIRST_PARTS: [&str; 23] = [
    "stop.",
    "gap.",
    "cap.",
    "limit.",
    "rule.",
    "remark.",
    "cause.",
    "margin.",
    "next.",
    "fault.",
    "error.",
    "verdict.",
    "caution.",
    "photo.gap.",
    "import.",
    "paper.",
    "sheet.",
    "summary.",
    "legend.",
    "plan.",
    "desk.",
    "offer.",
    "page.",
];

/// Calls whose next text is an entry's key.
const CALLS: [&str; 5] = [
    ".say(",
    "Reason::new(",
    ".say_args(",
    "Fault::new(",
    ".has(",
];

fn words() -> Words {
    Words::new(Language::English, UnitSystem::Metric)
}

/// The words in every language.
fn in_every_language() -> [Words; 2] {
    Language::ALL.map(|language| Words::new(language, UnitSystem::Metric))
}

fn sources_in(folder: &Path, found: &mut Vec<PathBuf>) {
    let mut entries: Vec<PathBuf> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    entries.sort();
    for path in entries {
        let is_test = path.ends_with("words/complete.rs") || path.ends_with("tests.rs");
        if path.is_dir() {
            sources_in(&path, found);
        } else if path.extension().is_some_and(|end| end == "rs") && !is_test {
            found.push(path);
        }
    }
}

/// The code of every source file, without its tests and its comments.
fn code_of_the_core() -> Vec<(PathBuf, String)> {
    let mut sources = Vec::new();
    sources_in(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("core/src"),
        &mut sources,
    );
    sources
        .into_iter()
        .map(|path| {
            let text = std::fs::read_to_string(&path).unwrap();
            let code = text.split("\n#[cfg(test)]\nmod tests").next().unwrap_or("");
            let lines = code.lines();
            let code: Vec<&str> = lines
                .filter(|line| !line.trim_start().starts_with("//"))
                .collect();
            (path, code.join("\n"))
        })
        .collect()
}

fn looks_like_a_key(text: &str) -> bool {
    let parts: Vec<&str> = text.split('.').collect();
    let fits =
        |letter: char| letter.is_ascii_lowercase() || letter.is_ascii_digit() || letter == '-';
    parts.len() >= 2
        && !text.ends_with('-')
        && parts
            .iter()
            .all(|part| !part.is_empty() && part.chars().all(fits))
}

/// The keys that a piece of code uses.
fn keys_in(code: &str) -> BTreeSet<String> {
    let mut keys = BTreeSet::new();
    for (at, _) in code.match_indices('"') {
        let Some(text) = code[at + 1..].split('"').next() else {
            continue;
        };
        let by_first_part = FIRST_PARTS.iter().any(|first| text.starts_with(first));
        let before = code[..at].trim_end();
        let by_call = CALLS.iter().any(|call| before.ends_with(call));
        let second_of_term = before
            .rfind(".term(")
            .is_some_and(|call| before[call..].matches('"').count() == 2 && before.ends_with(','));
        if looks_like_a_key(text) && (by_first_part || by_call || second_of_term) {
            keys.insert(text.to_owned());
        }
    }
    keys
}

#[test]
fn keys_are_found_in_code() {
    let code = r#"
        Reason::new("stop.hanger-above").term("part", "tree-part.stem");
        words.say(
            "some.entry", &[]);
        let row = "zone.fell"; let field = "weather.wind_ms"; let n = "gap.{part}";
        let gap = format!("rule.way-{n}"); let cap = "cap.part-seen";
    "#;
    let expected = [
        "cap.part-seen",
        "some.entry",
        "stop.hanger-above",
        "tree-part.stem",
    ];
    assert_eq!(keys_in(code), expected.map(str::to_owned).into());
}

#[test]
fn every_entry_that_the_code_says_is_there() {
    let mut missing = BTreeSet::new();
    let mut found = 0;
    for (path, code) in code_of_the_core() {
        for key in keys_in(&code) {
            found += 1;
            for words in in_every_language() {
                if !words.has(&key) {
                    let language = words.language();
                    missing.insert(format!("{language:?} {key} in {}", path.display()));
                }
            }
        }
    }
    assert!(found > 20, "the keys were not found in the code");
    assert_eq!(missing, BTreeSet::new());
}

#[test]
fn every_number_field_has_its_reason() {
    for field in NUMBER_FIELDS {
        let key = format!("{}.why", field.id);
        for words in in_every_language() {
            assert!(words.has(&key), "{:?} {key}", words.language());
        }
    }
}

#[test]
fn every_choice_of_the_record_is_worded() {
    let worded = super::all_term_keys();
    for (path, code) in code_of_the_core() {
        if !path.to_string_lossy().contains("/record/") {
            continue;
        }
        for piece in code.split("pub enum ").skip(1) {
            let (name, body) = piece.split_once('{').unwrap();
            let (name, body) = (name.trim(), body.split("\n}").next().unwrap());
            // Enums with contents, and those that are never shown.
            if body.contains('{') || ["Noun", "Quantity"].contains(&name) {
                continue;
            }
            for variant in body.split(',').map(|variant| variant.trim()) {
                let variant = variant.lines().last().unwrap_or("").trim();
                if variant.is_empty() {
                    continue;
                }
                let kebab = |name: &str| {
                    name.chars().fold(String::new(), |mut so_far, letter| {
                        if letter.is_uppercase() && !so_far.is_empty() {
                            so_far.push('-');
                        }
                        so_far.extend(letter.to_lowercase());
                        so_far
                    })
                };
                let key = format!("{}.{}", kebab(name), kebab(variant));
                assert!(worded.contains(&key), "{key} is not in terms.rs");
            }
        }
    }
}

#[test]
fn nouns_starter_codes_and_units_are_worded() {
    for words in in_every_language() {
        for place in Noun::PLACES {
            let key = format!("noun.{}", place.table.replace('_', "-"));
            assert!(words.has(&key), "{key}");
        }
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for quantity in super::reading::EVERY_QUANTITY {
                let unit = unit_of(quantity, units).code;
                assert!(words.has(&format!("unit.{unit}")), "{unit}");
                assert!(words.has(&format!("symbol.{unit}")), "{unit}");
            }
        }
    }
    let code = DefectKind::Hanger.key().replace("defect-kind", "code");
    assert_eq!(words().say(&code, &[]), "hanger");
}

/// The ids of a catalogue, in its order.
fn ids_of(language: Language) -> Vec<&'static str> {
    let lines = language.source().lines();
    lines
        .filter(|line| line.starts_with(|first: char| first.is_ascii_lowercase()))
        .filter_map(|line| line.split_once(" =").map(|(id, _)| id))
        .collect()
}

#[test]
fn the_catalogues_have_no_faulty_doubled_or_dangling_entry() {
    for language in Language::ALL {
        let resource = FluentResource::try_new(language.source().to_owned())
            .map_err(|(_, errors)| errors)
            .expect("every entry can be read");
        let mut bundle = FluentBundle::new_concurrent(vec!["en-US".parse().unwrap()]);
        bundle.set_use_isolating(false);
        bundle.add_resource(resource).expect("no entry twice");
        for id in ids_of(language) {
            let pattern = bundle.get_message(id).and_then(|entry| entry.value());
            let pattern = pattern.unwrap_or_else(|| panic!("{id} cannot be found"));
            let mut errors = Vec::new();
            let text = bundle.format_pattern(pattern, None, &mut errors);
            let dangling = errors.iter().any(|error| {
                let FluentError::ResolverError(error) = error else {
                    return true;
                };
                !error.to_string().starts_with("Unknown variable")
            });
            assert!(!dangling, "{id}: {text} {errors:?}");
            assert_eq!(catalogue_id(id), id);
        }
    }
}

#[test]
fn papers_and_sheets_use_plain_words() {
    // What climbers read has nothing of sampling, force units or formulas.
    let unwanted = [
        "sample",
        "percentile",
        "quantile",
        "standard error",
        " kN",
        "sigma",
        "muestreo",
        "percentil",
        "error típico",
        "error estándar",
    ];
    let lines = Language::ALL.map(|language| language.source().lines());
    for line in lines.into_iter().flatten() {
        let facing = [
            "caution-", "verdict-", "stop-", "gap-", "cap-", "limit-", "sheet-",
        ];
        if facing.iter().any(|first| line.starts_with(first)) {
            for word in unwanted {
                assert!(!line.contains(word), "{word} in: {line}");
            }
        }
    }
}
