//! `bolewalk judge`: the judgement of a site as a table, in words, as data, or line by line.

mod data;
mod explain;
mod ground;
mod names;
mod reasons;
mod table;

use std::path::PathBuf;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::record::{Day, SiteFile, SiteJudgement};
use bolewalk_core::words::{Said, Words};

use super::answer::{tell, words};
use super::lines::Lines;
use super::place::Place;

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// A site file (JSON) or the folder of a field book.
    place: PathBuf,
    /// The property, by its name, where a field book holds several.
    #[arg(long)]
    site: Option<String>,
    /// The day it is judged for, such as 2026-05-14; the day of the latest visit if left out.
    #[arg(long)]
    date: Option<Day>,
    /// The hour of the day, 0 to 23, whose weather counts; the worst of the day if left out.
    #[arg(long, value_parser = clap::value_parser!(u32).range(0..24))]
    hour: Option<u32>,
    /// Feet, inches and pounds instead of metres, centimetres and kilograms.
    #[arg(long)]
    imperial: bool,
    /// Print everything as JSON, for other programs.
    #[arg(long, conflicts_with = "explain")]
    json: bool,
    /// The working of one tree, line by line: formula, inputs with units, result, source.
    #[arg(long, value_name = "TAG")]
    explain: Option<String>,
}

pub fn judge(asked: &Asked) -> Result<ExitCode, BookError> {
    let place = Place::open(&asked.place, asked.site.as_deref())?;
    let judgement = place.judged(asked.date, asked.hour)?;
    let words = words(asked.imperial);
    let text = if asked.json {
        data::json(&place.file, &judgement, asked.hour)?
    } else if let Some(tag) = &asked.explain {
        explain::explained(&place.file, &judgement, tag, &words)?
    } else {
        let mut lines = Lines::default();
        report(&place.file, &judgement, &words, &mut lines);
        beside(&place, &words, &mut lines);
        lines.into_text()
    };
    tell(&text)?;
    Ok(ExitCode::SUCCESS)
}

/// The table, what follows from it on the ground, and why.
pub fn report(file: &SiteFile, judgement: &SiteJudgement, words: &Words, lines: &mut Lines) {
    let head = words.say(
        "desk.judge-head",
        &[
            ("site", Said::Text(&file.site.name)),
            ("day", Said::Day(judgement.as_of)),
        ],
    );
    lines.heading(&head);
    lines.gap();
    if judgement.trees.is_empty() {
        lines.laid(&words.say("desk.judge-no-trees", &[]));
    } else {
        lines.laid(&table::table(file, judgement, words));
        lines.hung("", &words.say("desk.judge-table-note", &[]));
    }
    ground::told(file, judgement, words, lines);
    reasons::told(file, judgement, words, lines);
    cautions(words, lines);
}

fn cautions(words: &Words, lines: &mut Lines) {
    lines.gap();
    for caution in [
        "caution.sheet-aid",
        "caution.sheet-refuse",
        "caution.zone-more",
        "caution.decay-bending",
        "caution.sheet-decide",
    ] {
        lines.hung("! ", &words.say(caution, &[]));
    }
}

/// What the field book says beside the judgement.
fn beside(place: &Place, words: &Words, lines: &mut Lines) {
    for (count, entry) in [
        (place.unsettled, "desk.judge-unsettled"),
        (place.unread, "desk.judge-unread"),
    ] {
        if count > 0 {
            let count = ("count", Said::Count(count as i64));
            lines.hung("! ", &words.say(entry, &[count]));
        }
    }
}
