//! Both papers of one small property, made by hand.

use super::paper::Sheet;
use super::*;
use crate::error::BookError;
use crate::record::{Moment, Photo, SiteFile, SiteJudgement};
use crate::words::{Language, UnitSystem, Words};

/// A property with a barred tree, a tree within limits and one that nobody looked at.
fn site_file() -> SiteFile {
    serde_json::from_str(include_str!("../../../fixtures/papers/larch-hollow.json")).unwrap()
}

fn judgement() -> SiteJudgement {
    let text = include_str!("../../../fixtures/papers/larch-hollow-judged.json");
    serde_json::from_str(text).unwrap()
}

fn copy(photo: &Photo) -> Result<Vec<u8>, BookError> {
    if photo.file == "broken.jpg" {
        return Err(BookError::NotFound {
            kind: "file".into(),
            id: photo.file.clone(),
        });
    }
    let picture =
        image::RgbImage::from_fn(400, 300, |x, y| image::Rgb([90, (x / 2) as u8, y as u8]));
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 75)
        .encode_image(&picture)
        .unwrap();
    Ok(bytes)
}

fn with_input<T>(units: UnitSystem, sheet: Sheet, make: impl Fn(&PaperInput) -> T) -> T {
    let (file, judgement) = (site_file(), judgement());
    make(&PaperInput {
        file: &file,
        judgement: &judgement,
        words: Words::new(Language::English, units),
        made: Moment {
            utc_ms: 1_778_850_000_000,
            offset_min: -240,
        },
        sheet,
        photo: &copy,
    })
}

fn keep(name: &str, bytes: &[u8]) {
    // For a look by eye and by outside tools.
    if let Some(folder) = std::env::var_os("BOLEWALK_PAPERS") {
        std::fs::write(std::path::Path::new(&folder).join(name), bytes).unwrap();
    }
}

#[test]
fn both_papers_are_made_and_repeat_to_the_byte() {
    for (units, sheet) in [
        (UnitSystem::Metric, Sheet::A4),
        (UnitSystem::Imperial, Sheet::UsLetter),
    ] {
        with_input(units, sheet, |input| {
            let summary = site_summary_bytes(input, &|_, _| true).unwrap();
            assert!(summary == site_summary_bytes(input, &|_, _| true).unwrap());
            keep(&format!("summary-{sheet:?}.pdf"), &summary);
            let sheets = climb_sheets_bytes(input, &|_, _| true).unwrap();
            assert!(sheets == climb_sheets_bytes(input, &|_, _| true).unwrap());
            keep(&format!("sheets-{sheet:?}.pdf"), &sheets);
        });
    }
}

#[test]
fn a_stopped_paper_leaves_the_old_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("summary.pdf");
    std::fs::write(&path, b"old").unwrap();
    with_input(UnitSystem::Metric, Sheet::A4, |input| {
        for stop_at in [0, 1, 3, 9] {
            let outcome = site_summary(input, &path, &|done, _| done < stop_at);
            assert_eq!(outcome, Err(BookError::Stopped));
            let outcome = climb_sheets(input, &path, &|done, _| done < stop_at.min(5));
            assert_eq!(outcome, Err(BookError::Stopped));
        }
    });
    assert_eq!(std::fs::read(&path).unwrap(), b"old");
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn progress_never_runs_backwards() {
    with_input(UnitSystem::Metric, Sheet::A4, |input| {
        for make in [site_summary_bytes, climb_sheets_bytes] {
            let last = std::cell::Cell::new(0);
            make(input, &|done, of| {
                assert!(done >= last.get() && done <= of, "{done} of {of}");
                last.set(done);
                true
            })
            .unwrap();
        }
    });
}

#[test]
fn a_sheet_stays_on_one_page_with_much_to_say() {
    let file = site_file();
    let mut judged = judgement();
    let sentence = crate::record::Reason::new("caution.anchor-not");
    let many = |count: usize| -> Vec<crate::record::Reason> {
        (0..count)
            .map(|number| sentence.clone().text("number", &number.to_string()))
            .collect()
    };
    for tree in &mut judged.trees {
        tree.gaps = many(1);
        tree.gaps.extend(
            ["roots", "base", "crown", "wires", "hangers", "insects"]
                .map(|part| crate::record::Reason::new(&format!("walk-part.{part}"))),
        );
        tree.limit_caps.push(sentence.clone());
        tree.stops
            .push(crate::record::Reason::new("caution.decay-shape"));
    }
    let input = PaperInput {
        file: &file,
        judgement: &judged,
        words: Words::new(Language::English, UnitSystem::Imperial),
        made: Moment {
            utc_ms: 0,
            offset_min: 0,
        },
        sheet: Sheet::UsLetter,
        photo: &copy,
    };
    let sheets = climb_sheets_bytes(&input, &|_, _| true).unwrap();
    keep("sheets-crowded.pdf", &sheets);
    // Bookmarks of level 1 are the trees; as many pages as trees.
    let text = String::from_utf8_lossy(&sheets);
    assert!(text.contains("/Count 3"), "not three pages");
    assert_eq!(
        text.matches("/Type /Page\n")
            .count()
            .max(text.matches("/Type/Page/").count()),
        3
    );
}
