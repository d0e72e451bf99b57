//! A field book with the demo property, at a standing clock: a few of its trees, one a verdict.

use std::fs;
use std::path::Path;
use std::sync::Arc;

use bolewalk_core::field_book::{FieldBook, FixedClock};
use bolewalk_core::pages::{CommandKind, Entry, EntryValue};
use bolewalk_core::record::Moment;
use bolewalk_core::words::{Language, UnitSystem, Worded};
use serde_json::Value;

use super::walk::walked;

/// 2026-05-19, 15:00 at UTC−4: the afternoon of the demo's visit.
const AFTERNOON: Moment = Moment {
    utc_ms: 1_779_217_200_000,
    offset_min: -240,
};

/// No stop, limits, a section and a doubt, a hanger, no climb, and still to check.
const TREES: [&str; 6] = ["01", "02", "04", "07", "10", "16"];

/// Enough of them to show every kind of figure in feet and pounds.
const TREES_IN_FEET: [&str; 3] = ["04", "07", "10"];

/// The tree that keeps its photos.
const WITH_PHOTOS: &str = "04";

/// The pages of an empty book, then of the demo property, by name.
pub fn pages(language: Language, units: UnitSystem) -> Vec<(String, Value)> {
    let folder = tempfile::tempdir().unwrap();
    let book = opened(&folder.path().join("book"));
    choose(&book, "settings.language", &language);
    choose(&book, "settings.units", &units);
    let mut pages = walked(&book, folder.path());
    // Codes and rules are the same in an empty book.
    pages.retain(|(name, _)| ["book", "people", "gear"].contains(&name.as_str()));
    for (name, _) in &mut pages {
        name.insert_str(0, "empty-");
    }
    let trees: &[&str] = match units {
        UnitSystem::Metric => &TREES,
        UnitSystem::Imperial => &TREES_IN_FEET,
    };
    let file = demo_file(folder.path(), trees);
    book.import_site_file(file).unwrap();
    pages.extend(walked(&book, folder.path()));
    pages
}

fn opened(folder: &Path) -> Arc<FieldBook> {
    let clock = FixedClock::at(AFTERNOON).unwrap();
    let folder = folder.display().to_string();
    FieldBook::open_with_clock(folder, "phone-1".to_owned(), clock).unwrap()
}

fn choose(book: &FieldBook, input: &str, choice: &impl Worded) {
    let key = choice.key();
    let id = key.split('.').next_back().unwrap().replace('-', "_");
    let entry = Entry {
        input: input.to_owned(),
        value: EntryValue::Choice { id },
    };
    let token = format!("{input} {key}");
    book.act(
        CommandKind::ChangeSettings,
        String::new(),
        vec![entry],
        token,
    )
    .unwrap();
}

/// The demo's site file with the chosen trees; photos are kept of one tree.
fn demo_file(folder: &Path, kept: &[&str]) -> String {
    let text = include_str!("../../core/src/bin/bolewalk/demo/property.json");
    let mut file: Value = serde_json::from_str(text).unwrap();
    let trees = file["site"]["trees"].as_array_mut().unwrap();
    trees.retain(|tree| kept.contains(&tree["tag"].as_str().unwrap()));
    assert_eq!(trees.len(), kept.len());
    for tree in trees {
        let with_photos = tree["tag"] == WITH_PHOTOS;
        for seen in tree["inspections"].as_array_mut().unwrap() {
            match seen.get_mut("photos") {
                Some(photos) if with_photos => take_photos(photos, folder),
                _ => {
                    seen.as_object_mut().unwrap().remove("photos");
                }
            }
        }
    }
    let path = folder.join("property.json");
    fs::write(&path, file.to_string()).unwrap();
    path.display().to_string()
}

fn take_photos(photos: &Value, folder: &Path) {
    let taken = Path::new(env!("CARGO_MANIFEST_DIR")).join("fixtures/photos/progressive.jpg");
    for photo in photos.as_array().unwrap() {
        let to = folder.join(photo["file"].as_str().unwrap());
        fs::create_dir_all(to.parent().unwrap()).unwrap();
        fs::copy(&taken, to).unwrap();
    }
}
