//! `bolewalk summary`: the client's site summary and the crew's climb sheets.

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::handover::paper::Sheet;
use bolewalk_core::handover::{PaperInput, climb_sheets, site_summary};
use bolewalk_core::photo::report_copy;
use bolewalk_core::record::{Day, ReportFor, SiteJudgement};
use bolewalk_core::words::{Language, Said, Words};

use super::answer::{language, tell, words};
use super::clock::now;
use super::place::Place;
use super::progress::Progress;

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// A site file (JSON) or the folder of a field book.
    place: PathBuf,
    /// The property, by its name, where a field book holds several.
    #[arg(long)]
    site: Option<String>,
    /// The folder for the papers; made if it is not there.
    #[arg(long, default_value = ".")]
    out: PathBuf,
    /// The day it is judged for, such as 2026-05-14; the day of the latest visit if left out.
    #[arg(long)]
    date: Option<Day>,
    /// The hour of the day, 0 to 23, whose weather counts; the worst of the day if left out.
    #[arg(long, value_parser = clap::value_parser!(u32).range(0..24))]
    hour: Option<u32>,
    /// Photos sharp enough to print; larger files.
    #[arg(long, conflicts_with = "mail")]
    print: bool,
    /// Photos small enough to mail (so it is if nothing is said).
    #[arg(long)]
    mail: bool,
    /// On A4 sheets.
    #[arg(long, conflicts_with = "letter")]
    a4: bool,
    /// On US letter sheets (so it is if nothing is said).
    #[arg(long)]
    letter: bool,
    /// Feet, inches and pounds instead of metres, centimetres and kilograms.
    #[arg(long)]
    imperial: bool,
    /// The language of the papers: en or es.
    #[arg(long, default_value = "en", value_parser = language)]
    language: Language,
}

pub fn summary(asked: &Asked) -> Result<ExitCode, BookError> {
    let place = Place::open(&asked.place, asked.site.as_deref())?;
    let judgement = place.judged(asked.date, asked.hour)?;
    std::fs::create_dir_all(&asked.out).map_err(|cause| BookError::writing(&asked.out, &cause))?;
    let look = PaperLook {
        words: Words::new(asked.language, words(asked.imperial).units()),
        sheet: if asked.a4 { Sheet::A4 } else { Sheet::UsLetter },
        made_for: if asked.print {
            ReportFor::Print
        } else {
            ReportFor::Mail
        },
    };
    let progress = Progress::begin();
    let written = write_papers(&place, &judgement, &look, &asked.out, &progress)?;
    drop(progress);
    tell(&written_words(&written, &look.words))?;
    Ok(ExitCode::SUCCESS)
}

/// How papers are to look.
pub struct PaperLook {
    pub words: Words,
    pub sheet: Sheet,
    pub made_for: ReportFor,
}

/// Writes both papers into a folder; gives their paths.
pub fn write_papers(
    place: &Place,
    judgement: &SiteJudgement,
    look: &PaperLook,
    out: &Path,
    progress: &Progress,
) -> Result<Vec<PathBuf>, BookError> {
    let input = PaperInput {
        file: &place.file,
        judgement,
        words: look.words,
        made: now(),
        sheet: look.sheet,
        photo: &|photo| {
            let (longest, quality) = (look.made_for.max_px(), look.made_for.quality());
            report_copy(&place.photo(photo), longest, quality)
        },
    };
    let summary = out.join("site-summary.pdf");
    progress.part(&look.words.say("summary.title", &[]));
    site_summary(&input, &summary, &|done, of| progress.how_far(done, of))?;
    let sheets = out.join("climb-sheets.pdf");
    progress.part(&look.words.say("sheet.title", &[]));
    climb_sheets(&input, &sheets, &|done, of| progress.how_far(done, of))?;
    Ok(vec![summary, sheets])
}

/// What was written, a line each.
pub fn written_words(written: &[PathBuf], words: &Words) -> String {
    let lines: Vec<String> = written
        .iter()
        .map(|path| {
            let path = path.display().to_string();
            words.say("desk.written", &[("path", Said::Text(&path))])
        })
        .collect();
    lines.join("\n")
}
