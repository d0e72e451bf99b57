//! Every catalogue says the same as the English one: the same entries, told the same things, and
//! really in its own language.

use std::collections::{BTreeMap, BTreeSet};

use super::catalogue::Language;

/// Arguments by which an entry may choose its plural; a language that needs no choice leaves them
/// out.
const CHOOSERS: [&str; 2] = ["value", "feet-value"];

/// Entries that read alike in English and Spanish: symbols, names of languages in themselves,
/// and words that both languages share.
const ALIKE: [&str; 12] = [
    "unit-",
    "symbol-",
    "side-short-",
    "code-",
    "walk-part-base",
    "tree-part-base",
    "failure-likelihood-improbable",
    "failure-likelihood-probable",
    "language-",
    "page-no",
    "shell-answer_no",
    "plan-north",
];

/// The entries of a catalogue by id, each as it stands in the file.
fn entries(language: Language) -> BTreeMap<&'static str, String> {
    let mut entries: BTreeMap<&str, String> = BTreeMap::new();
    let mut open = "";
    for line in language.source().lines() {
        if let Some((id, text)) = line.split_once(" =")
            && line.starts_with(|first: char| first.is_ascii_lowercase())
        {
            open = id;
            entries.insert(id, text.trim().to_owned());
        } else if line.starts_with([' ', '}']) {
            let entry = entries.entry(open).or_default();
            entry.push('\n');
            entry.push_str(line.trim());
        }
    }
    entries
}

/// The names of the arguments that an entry uses.
fn arguments(text: &str) -> BTreeSet<&str> {
    text.split('$')
        .skip(1)
        .filter_map(|rest| {
            rest.split(|letter: char| {
                !letter.is_ascii_alphanumeric() && letter != '-' && letter != '_'
            })
            .next()
        })
        .filter(|name| !CHOOSERS.contains(name))
        .collect()
}

/// Whether an entry says anything but its arguments.
fn has_words(text: &str) -> bool {
    let mut depth = 0;
    text.chars().any(|letter| {
        match letter {
            '{' => depth += 1,
            '}' => depth -= 1,
            _ => {}
        }
        depth == 0 && letter.is_alphabetic()
    })
}

/// Entries whose English stands in a table of data.
fn english_is_data(id: &str) -> bool {
    let grade = id.starts_with("grade-") && id.len() > "grade-1".len();
    grade || id.starts_with("species-")
}

fn others() -> impl Iterator<Item = Language> {
    Language::ALL
        .into_iter()
        .filter(|language| *language != Language::English)
}

#[test]
fn every_catalogue_has_the_same_entries() {
    let english: BTreeSet<&str> = entries(Language::English).into_keys().collect();
    for language in others() {
        let own = entries(language).into_keys();
        let own: BTreeSet<&str> = own.filter(|id| !english_is_data(id)).collect();
        let missing: Vec<_> = english.difference(&own).collect();
        let spare: Vec<_> = own.difference(&english).collect();
        assert!(missing.is_empty(), "{language:?} lacks {missing:?}");
        assert!(spare.is_empty(), "English lacks {spare:?} of {language:?}");
    }
}

#[test]
fn every_entry_uses_the_same_arguments() {
    let english = entries(Language::English);
    for language in others() {
        for (id, own) in entries(language) {
            let Some(text) = english.get(id) else {
                continue;
            };
            assert_eq!(arguments(&own), arguments(text), "{language:?}: {id}");
        }
    }
}

#[test]
fn no_entry_was_left_in_english() {
    let english = entries(Language::English);
    for language in others() {
        for (id, own) in entries(language) {
            let alike = ALIKE.iter().any(|first| id.starts_with(first));
            if !alike && has_words(&own) {
                assert_ne!(english.get(id), Some(&own), "{language:?}: {id}");
            }
        }
    }
}

#[test]
fn arguments_and_words_of_an_entry_are_told_apart() {
    let text = "{ $count ->\n[one] one of { $all-up }\n*[other] { $count } of { $value }\n}";
    assert_eq!(arguments(text), ["all-up", "count"].into());
    assert!(has_words("{ $a } and { $b }"));
    assert!(!has_words("{ $a } · { $b }: { one }"));
}
