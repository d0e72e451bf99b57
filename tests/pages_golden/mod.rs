//! Every page of the demo property as the shells get it, in two languages and both unit systems,
//! held against the files in `fixtures/pages`. `tests/pages_golden/refresh` writes them anew.

mod demo_book;
mod forms;
mod layout;
mod walk;

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use bolewalk_core::words::{Language, UnitSystem};

/// Set to anything, the files are written anew instead of compared.
const REFRESH: &str = "BOLEWALK_REFRESH_PAGES";
/// The files stay small enough to be read in a review.
const MOST_BYTES: usize = 3_000_000;

const READERS: [(&str, Language, UnitSystem); 4] = [
    ("en-metric", Language::English, UnitSystem::Metric),
    ("en-imperial", Language::English, UnitSystem::Imperial),
    ("es-metric", Language::Spanish, UnitSystem::Metric),
    ("es-imperial", Language::Spanish, UnitSystem::Imperial),
];

fn fixtures() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/pages")
}

/// Every page by the path of its file.
fn pages_now() -> BTreeMap<String, String> {
    let mut files = BTreeMap::new();
    for (folder, language, units) in READERS {
        let mut forms = forms::Forms::default();
        for (name, mut page) in demo_book::pages(language, units) {
            forms.take_out(&mut page);
            files.insert(format!("{folder}/{name}.json"), layout::laid_out(&page));
        }
        let forms = layout::laid_out(&forms.page());
        files.insert(format!("{folder}/forms.json"), forms);
    }
    files
}

/// Every page as it is kept.
fn pages_kept() -> BTreeMap<String, String> {
    let mut files = BTreeMap::new();
    for (folder, ..) in READERS {
        let entries = fs::read_dir(fixtures().join(folder)).into_iter().flatten();
        for path in entries.map(|entry| entry.unwrap().path()) {
            let name = path.file_name().unwrap().to_string_lossy().into_owned();
            let text = fs::read_to_string(&path).unwrap();
            files.insert(format!("{folder}/{name}"), text);
        }
    }
    files
}

fn refresh(now: &BTreeMap<String, String>) {
    for (folder, ..) in READERS {
        let folder = fixtures().join(folder);
        if folder.exists() {
            fs::remove_dir_all(&folder).unwrap();
        }
        fs::create_dir_all(&folder).unwrap();
    }
    for (path, text) in now {
        fs::write(fixtures().join(path), text).unwrap();
    }
}

/// The first line that differs, as it was and as it is.
fn first_difference(kept: &str, now: &str) -> Option<String> {
    let (mut was, mut is) = (kept.lines(), now.lines());
    for number in 1.. {
        match (was.next(), is.next()) {
            (None, None) => return None,
            (old, new) if old == new => {}
            (old, new) => {
                let shown = |line: Option<&str>| line.unwrap_or("(no more lines)").to_owned();
                return Some(format!(
                    "line {number}\n  was {}\n  is  {}",
                    shown(old),
                    shown(new)
                ));
            }
        }
    }
    None
}

#[test]
fn every_page_of_the_demo_is_as_it_was() {
    let now = pages_now();
    let bytes: usize = now.values().map(String::len).sum();
    let is_asked = std::env::var_os(REFRESH).is_some();
    if is_asked {
        refresh(&now);
    }
    assert!(bytes < MOST_BYTES, "{bytes} bytes of pages");
    if is_asked {
        return;
    }
    let kept = pages_kept();
    let paths: BTreeSet<&String> = now.keys().chain(kept.keys()).collect();
    let mut changed = Vec::new();
    for path in paths {
        match (kept.get(path), now.get(path)) {
            (Some(was), Some(is)) => {
                if let Some(difference) = first_difference(was, is) {
                    changed.push(format!("{path}, {difference}"));
                }
            }
            (None, _) => changed.push(format!("{path} is new")),
            (_, None) => changed.push(format!("{path} is no longer there")),
        }
    }
    assert!(
        changed.is_empty(),
        "{} of {} pages differ. If they should, run tests/pages_golden/refresh and look at \
         `git diff fixtures/pages`.\n{}",
        changed.len(),
        now.len(),
        changed[..changed.len().min(12)].join("\n")
    );
}

#[test]
fn no_page_shows_an_entry_that_is_missing() {
    for (folder, language, units) in READERS {
        for (name, page) in demo_book::pages(language, units) {
            let text = layout::laid_out(&page);
            let odd = text
                .lines()
                .find(|line| line.contains('⟦') || line.contains("{$"));
            assert_eq!(odd, None, "{folder}/{name}");
        }
    }
}

#[test]
fn a_difference_is_told_by_its_line() {
    assert_eq!(first_difference("a\nb", "a\nb"), None);
    let told = first_difference("a\nb\nc", "a\nx\nc").unwrap();
    assert_eq!(told, "line 2\n  was b\n  is  x");
    assert!(
        first_difference("a", "a\nb")
            .unwrap()
            .contains("(no more lines)")
    );
}
