//! The site summary of the demo property as PDF.

use std::path::Path;
use std::process::Command;

use bolewalk_core::handover::paper::Sheet;
use bolewalk_core::handover::{PaperInput, site_summary};
use bolewalk_core::judge::judge_site;
use bolewalk_core::photo::report_copy;
use bolewalk_core::record::{Moment, Photo, ReportFor};
use bolewalk_core::words::{Language, UnitSystem, Words};

use crate::bench::{Bench, Outcome, latest_day, rules};
use crate::peer::library;
use crate::row::{Beside, Row};
use crate::times::timed;

/// How far the numbers of pages may lie apart, as a share of ours.
const LIKE_WITHIN: f64 = 0.2;

pub fn rows(bench: &Bench) -> Outcome<Vec<Row>> {
    let (folder, file) = bench.demo()?;
    let judgement = judge_site(&file, &rules()?, latest_day(&file)?, None);
    let made_for = ReportFor::Mail;
    let input = PaperInput {
        file: &file,
        judgement: &judgement,
        words: Words::new(Language::English, UnitSystem::Metric),
        made: Moment {
            utc_ms: 1_778_763_600_000,
            offset_min: 0,
        },
        sheet: Sheet::A4,
        photo: &|photo: &Photo| {
            let path = folder.join(&photo.file);
            report_copy(&path, made_for.max_px(), made_for.quality())
        },
    };
    let path = bench.path("site-summary.pdf");
    let ours = || Ok(timed(|| Ok(site_summary(&input, &path, &|_, _| true)?))?.0);
    ours()?;
    let pages = pages_of(&path)?;
    let copy = bench.path("site-summary-of-the-peer.pdf");
    let peer = library("paper.py", &[folder.as_os_str(), copy.as_os_str()])?;
    let row = Row::beside("paper: site summary of the demo", ours, peer, |made| {
        let theirs = made["pages"].as_f64().unwrap_or_default();
        match pages.map(f64::from) {
            Some(pages) if (theirs / pages - 1.0).abs() > LIKE_WITHIN => {
                Err(format!("ours has {pages} pages, the peer's {theirs}").into())
            }
            _ => Ok(()),
        }
    })?;
    let theirs = match row.beside {
        Beside::Timed { .. } => pages_of(&copy)?,
        _ => None,
    };
    let counted = |pages: Option<u32>| pages.map_or("uncounted".into(), |pages| pages.to_string());
    let note = format!(
        "{} pages, the peer {}; the same photos made smaller alike, both tagged for screen readers. \
         Only ours draws the plan; ours copies photos on every core.",
        counted(pages),
        counted(theirs)
    );
    Ok(vec![row.noted(note)])
}

/// The pages of a PDF, where poppler is there to count them.
fn pages_of(path: &Path) -> Outcome<Option<u32>> {
    let Ok(output) = Command::new("pdfinfo").arg(path).output() else {
        return Ok(None);
    };
    let said = String::from_utf8_lossy(&output.stdout).into_owned();
    let line = said.lines().find_map(|line| line.strip_prefix("Pages:"));
    Ok(Some(line.ok_or("no PDF")?.trim().parse()?))
}
