//! Both papers against other people's readers: qpdf, poppler. veraPDF has a module of its own.

use std::path::{Path, PathBuf};
use std::process::Command;

use bolewalk_core::error::BookError;
use bolewalk_core::handover::paper::Sheet;
use bolewalk_core::handover::{PaperInput, climb_sheets, site_summary};
use bolewalk_core::record::{Moment, Photo};
use bolewalk_core::words::{Language, UnitSystem, Words};

/// A grey photo; one of the two of the property is missing on purpose.
fn copy(photo: &Photo) -> Result<Vec<u8>, BookError> {
    if photo.file == "broken.jpg" {
        return Err(BookError::NotFound {
            kind: "file".into(),
            id: photo.file.clone(),
        });
    }
    let picture = image::GrayImage::from_fn(400, 300, |x, y| image::Luma([(x / 4 + y / 3) as u8]));
    let mut bytes = Vec::new();
    image::codecs::jpeg::JpegEncoder::new_with_quality(&mut bytes, 75)
        .encode_image(&picture)
        .unwrap();
    Ok(bytes)
}

/// Writes the summary and the sheets of the small property into `folder`, for both sheets of paper
/// and both systems of units.
pub fn write_papers(folder: &Path) -> Vec<PathBuf> {
    let file = include_str!("../../fixtures/papers/larch-hollow.json");
    let judged = include_str!("../../fixtures/papers/larch-hollow-judged.json");
    let (file, judgement) = (
        serde_json::from_str(file).unwrap(),
        serde_json::from_str(judged).unwrap(),
    );
    let mut written = Vec::new();
    for (language, units, sheet, name) in [
        (Language::English, UnitSystem::Metric, Sheet::A4, "a4"),
        (
            Language::English,
            UnitSystem::Imperial,
            Sheet::UsLetter,
            "letter",
        ),
        (Language::Spanish, UnitSystem::Metric, Sheet::A4, "es-a4"),
        (
            Language::Spanish,
            UnitSystem::Imperial,
            Sheet::UsLetter,
            "es-letter",
        ),
    ] {
        let input = PaperInput {
            file: &file,
            judgement: &judgement,
            words: Words::new(language, units),
            made: Moment {
                utc_ms: 1_778_850_000_000,
                offset_min: -240,
            },
            sheet,
            photo: &copy,
        };
        let path = folder.join(format!("summary-{name}.pdf"));
        site_summary(&input, &path, &|_, _| true).unwrap();
        written.push(path);
        let path = folder.join(format!("sheets-{name}.pdf"));
        climb_sheets(&input, &path, &|_, _| true).unwrap();
        written.push(path);
    }
    written
}

/// Whether a program is there; says once what is missing and how to get it.
fn installed(program: &str, package: &str) -> bool {
    let there = Command::new(program).arg("--help").output().is_ok();
    if !there {
        println!("SKIPPED: {program} is missing; apt-get install {package}");
    }
    there
}

/// What a program prints about a file.
fn printed(program: &str, arguments: &[&str], file: &Path, more: &[&str]) -> String {
    let output = Command::new(program)
        .args(arguments)
        .arg(file)
        .args(more)
        .output()
        .unwrap();
    String::from_utf8_lossy(&output.stdout).into_owned()
}

#[test]
fn qpdf_reads_both_papers() {
    if !installed("qpdf", "qpdf") {
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    for file in write_papers(folder.path()) {
        let said = printed("qpdf", &["--check"], &file, &[]);
        let sound = said.contains("No syntax or stream encoding errors");
        assert!(sound, "{said}");
    }
}

#[test]
fn every_face_is_embedded_cut_and_mapped_to_unicode() {
    if !installed("pdffonts", "poppler-utils") {
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    for file in write_papers(folder.path()) {
        let said = printed("pdffonts", &[], &file, &[]);
        let fonts: Vec<&str> = said.lines().skip(2).collect();
        assert!(!fonts.is_empty(), "{said}");
        for font in fonts {
            assert!(font.contains("yes yes yes"), "{font}");
        }
        let said = printed("pdfinfo", &[], &file, &[]);
        assert!(said.contains("Tagged:          yes"), "{said}");
    }
}

#[test]
fn the_client_reads_neither_score_nor_climb_verdict_and_the_crew_no_forces() {
    if !installed("pdftotext", "poppler-utils") {
        return;
    }
    let folder = tempfile::tempdir().unwrap();
    for file in write_papers(folder.path()) {
        let in_spanish = file.to_string_lossy().contains("-es-");
        let (language, not_assessed) = match in_spanish {
            true => (Language::Spanish, "Sin evaluar"),
            false => (Language::English, "Not assessed"),
        };
        let words = Words::new(language, UnitSystem::Metric);
        let text = printed("pdftotext", &["-layout"], &file, &["-"]);
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(!text.contains('⟦') && !text.contains('□'), "{text}");
        let name = file.file_name().unwrap().to_string_lossy().into_owned();
        if name.starts_with("summary") {
            use bolewalk_core::record::Verdict;
            for verdict in [
                Verdict::Barred,
                Verdict::Incomplete,
                Verdict::Refer,
                Verdict::Limited,
                Verdict::NoStop,
            ] {
                let shown = words.word_of(&verdict).to_lowercase();
                assert!(!text.to_lowercase().contains(&shown), "{shown}");
            }
            // The oak's score is 77, 63 to 84; no other number of the property is.
            for number in ["77", "63", "84"] {
                assert!(!text.split(' ').any(|word| word == number), "{number}");
            }
            assert!(text.contains(not_assessed) && text.contains("broken.jpg"));
        } else {
            for word in ["kN", "sample", "score", "%", "=", "modulus", "puntuación"] {
                assert!(!text.contains(word), "{word}");
            }
        }
    }
}
