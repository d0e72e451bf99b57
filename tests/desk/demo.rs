//! The whole job from one command: the demo's folder, its table, its files, its working.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

use serde_json::Value;
use tempfile::TempDir;

mod numbers;

use super::{bolewalk, err, out};

/// The demo, made once for all tests, in the place of an earlier one.
struct Demo {
    folder: TempDir,
    told: String,
}

impl Demo {
    fn made() -> &'static Demo {
        static MADE: OnceLock<Demo> = OnceLock::new();
        MADE.get_or_init(|| {
            let folder = tempfile::tempdir().unwrap();
            let place = folder.path().join("demo");
            earlier_demo(&place);
            let output = bolewalk(&["demo", place.to_str().unwrap(), "--yes"]);
            assert_eq!(output.status.code(), Some(0), "{}", err(&output));
            let told = out(&output);
            Demo { folder, told }
        })
    }

    fn place(&self) -> PathBuf {
        self.folder.path().join("demo")
    }

    fn run(&self, args: &[&str]) -> String {
        let place = self.place();
        let (command, rest) = args.split_first().unwrap();
        let mut all = vec![*command, place.to_str().unwrap()];
        all.extend(rest);
        let output = bolewalk(&all);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        out(&output)
    }

    fn judged(&self) -> Value {
        serde_json::from_str(&self.run(&["judge", "--json"])).unwrap()
    }
}

/// A field book that holds the demo property alone, without its photos.
fn earlier_demo(place: &Path) {
    let text = include_str!("../../core/src/bin/bolewalk/demo/property.json");
    let mut file: Value = serde_json::from_str(text).unwrap();
    for tree in file["site"]["trees"].as_array_mut().unwrap() {
        for seen in tree["inspections"].as_array_mut().unwrap() {
            seen.as_object_mut().unwrap().remove("photos");
        }
    }
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("property.json");
    fs::write(&path, file.to_string()).unwrap();
    let output = bolewalk(&[
        "import".as_ref(),
        path.as_os_str(),
        "--into".as_ref(),
        place.as_ref(),
    ]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
}

fn trees(judged: &Value) -> &Vec<Value> {
    judged["judgement"]["trees"].as_array().unwrap()
}

#[test]
fn the_folder_holds_the_book_its_papers_and_its_map_files() {
    let demo = Demo::made();
    let place = demo.place();
    let starts = |name: &str, with: &[u8]| {
        let bytes = fs::read(place.join(name)).unwrap();
        assert!(bytes.starts_with(with), "{name}");
        assert!(bytes.len() > 1_000, "{name}");
    };
    starts("site-summary.pdf", b"%PDF-");
    starts("climb-sheets.pdf", b"%PDF-");
    starts("trees.gpkg", b"SQLite format 3\0");
    starts("field-book.db", b"SQLite format 3\0");
    starts("trees.geojson", b"{");
    starts("trees.csv", b"tag,");
    let csv = fs::read_to_string(place.join("trees.csv")).unwrap();
    assert_eq!(csv.lines().count(), 1 + 26);
    // Nothing is left beside it of what was made aside.
    assert_eq!(fs::read_dir(demo.folder.path()).unwrap().count(), 1);
    // At least 40 photos, each an original with a view and a small copy.
    let photos = fs::read_dir(place.join("photos")).unwrap().count();
    assert!(photos >= 3 * 40, "{photos}");
    assert!(demo.run(&["check"]).contains("The database is sound."));
}

#[test]
fn its_site_file_is_read_back_with_its_photos() {
    let demo = Demo::made();
    let file = demo.place().join("property.json");
    let output = bolewalk(&["check".as_ref(), file.as_os_str()]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    let of_file = bolewalk(&["judge".as_ref(), file.as_os_str()]);
    assert_eq!(out(&of_file), demo.run(&["judge"]));
}

#[test]
fn the_table_fits_the_page_and_shows_every_verdict() {
    let demo = Demo::made();
    for line in demo.told.lines().filter(|line| !line.contains("bolewalk ")) {
        assert!(line.chars().count() <= 100, "{line}");
    }
    // Without a terminal there is no colour.
    assert!(!demo.told.contains('\u{1b}'));
    let judged = demo.judged();
    let verdicts: BTreeSet<&str> = trees(&judged)
        .iter()
        .map(|tree| tree["verdict"].as_str().unwrap())
        .collect();
    assert_eq!(verdicts.len(), 5, "{verdicts:?}");
    for words in [
        "no stop found",
        "only within these",
        "do not climb yet:",
        "do not climb",
        "not judged: still",
        "nobody needs to",
    ] {
        assert!(demo.told.contains(words), "{words}");
    }
}

// Each for a reason of the method, sections 1 to 4.
#[test]
fn every_verdict_has_its_reason() {
    let judged = Demo::made().judged();
    let has = |tag: &str, verdict: &str, list: &str, code: &str| {
        let tree = trees(&judged)
            .iter()
            .find(|tree| tree["tag"] == tag)
            .unwrap();
        assert_eq!(tree["verdict"], verdict, "{tag}");
        let reasons = tree[list].as_array().unwrap();
        assert!(
            reasons.iter().any(|r| r["code"] == code),
            "{tag}: {reasons:?}"
        );
    };
    has("03", "limited", "limit_caps", "cap.included-bark");
    has("04", "refer", "refer_caps", "cap.grade-3-on-route");
    has("05", "barred", "stops", "stop.ash-beetle");
    has("06", "refer", "refer_caps", "cap.dead-tree");
    has("07", "barred", "stops", "stop.hanger-over-route");
    has("08", "limited", "limit_caps", "cap.wire-near");
    has("09", "barred", "stops", "stop.wire-voltage-unknown");
    has("11", "barred", "stops", "stop.soil-movement");
    has("15", "barred", "stops", "stop.ground-dug");
    has("16", "incomplete", "gaps", "gap.part-hidden");
    has("24", "incomplete", "gaps", "gap.full-check");
    let nobody: Vec<_> = trees(&judged)
        .iter()
        .filter(|tree| tree["climb"] == "not_needed")
        .map(|tree| tree["tag"].as_str().unwrap())
        .collect();
    assert!(
        nobody.contains(&"10") && nobody.contains(&"17"),
        "{nobody:?}"
    );
}

#[test]
fn the_words_tell_what_to_close_and_what_to_keep_apart() {
    let told = &Demo::made().told;
    for words in [
        "rooms emptied, or another way",
        "close it off while work goes on",
        "move away what stands there",
        "cover or protect it",
        "call its owner first",
        "ask them, and tell them the hour",
        "not together with",
        "Quarantine: asked, not answered yet",
        "not a permission to climb",
    ] {
        let whole = told.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(whole.contains(words), "{words}");
    }
}

#[test]
fn no_entry_of_the_catalogue_is_missing_or_half_filled() {
    let demo = Demo::made();
    let place = demo.place();
    let mut texts = vec![demo.told.clone(), demo.run(&["judge", "--imperial"])];
    for tree in trees(&demo.judged()) {
        let tag = tree["tag"].as_str().unwrap();
        texts.push(demo.run(&["judge", "--explain", tag]));
    }
    for name in ["trees.csv", "trees.geojson", "property.json"] {
        texts.push(fs::read_to_string(place.join(name)).unwrap());
    }
    texts.extend(words_of_pdf(&place.join("site-summary.pdf")));
    texts.extend(words_of_pdf(&place.join("climb-sheets.pdf")));
    for text in texts {
        for fault in ["⟦", "⟧", "{$", "{ $", "NaN"] {
            assert!(!text.contains(fault), "{fault} in {text:.2000}");
        }
    }
}

/// The words of a paper, where poppler is at hand.
fn words_of_pdf(path: &Path) -> Option<String> {
    match Command::new("pdftotext").arg(path).arg("-").output() {
        Ok(output) => {
            let words = String::from_utf8(output.stdout).unwrap();
            assert!(words.contains("Hobnail Farm"));
            Some(words)
        }
        Err(_) => {
            println!("SKIPPED: pdftotext is missing; apt-get install poppler-utils");
            None
        }
    }
}

// PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2), by veraPDF.
#[test]
fn its_papers_are_accessible_and_made_to_last() {
    let place = Demo::made().place();
    let papers = ["site-summary.pdf", "climb-sheets.pdf"].map(|name| place.join(name));
    let Some(said) = crate::outside::verapdf::checked(&papers) else {
        return;
    };
    let compliant = said.lines().filter(|line| line.starts_with("compliant "));
    assert_eq!(compliant.count(), 4, "{said}");
}

#[test]
fn a_climb_sheet_takes_one_page_a_tree() {
    let demo = Demo::made();
    one_page_a_tree(&demo.place().join("climb-sheets.pdf"));
    // Spanish says the same with more letters, feet and letter sheets have the least room.
    let folder = tempfile::tempdir().unwrap();
    let at = folder.path().to_str().unwrap();
    for units in [&["--a4"][..], &["--imperial"]] {
        let asked = ["summary", "--language", "es", "--out", at];
        let said = demo.run(&[&asked[..], units].concat());
        assert!(said.contains("Escrito: "), "{said}");
        one_page_a_tree(&folder.path().join("climb-sheets.pdf"));
    }
}

fn one_page_a_tree(path: &Path) {
    match Command::new("pdfinfo").arg(path).output() {
        Ok(output) => {
            let told = String::from_utf8(output.stdout).unwrap();
            let pages = told.lines().find_map(|line| line.strip_prefix("Pages:"));
            assert_eq!(pages.unwrap().trim(), "26");
        }
        Err(_) => println!("SKIPPED: pdfinfo is missing; apt-get install poppler-utils"),
    }
}
