//! `bolewalk check`: the health of a site file or a field book.

use std::path::Path;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::intake::read_site_file_at;
use bolewalk_core::store::{DATABASE, Health, Store};

use super::answer::{BAD_INPUT, DAMAGED, tell};
use super::clock::now;
use super::import::shipped_codes;

pub fn check(place: &Path) -> Result<ExitCode, BookError> {
    if place.is_dir() {
        check_book(place)
    } else {
        check_site_file(place)
    }
}

fn check_site_file(path: &Path) -> Result<ExitCode, BookError> {
    let file = read_site_file_at(path, &shipped_codes())?;
    let site = &file.site;
    let inspections: usize = site.trees.iter().map(|tree| tree.inspections.len()).sum();
    tell(&format!(
        "{}: no fault found. {} trees, {inspections} inspections, {} targets, {} overhead lines, \
         {} people.",
        site.name,
        site.trees.len(),
        site.targets.len(),
        site.lines.len(),
        file.crew.len()
    ))?;
    tell("This says that the file can be read, not that any tree may be climbed.")?;
    Ok(ExitCode::SUCCESS)
}

fn check_book(folder: &Path) -> Result<ExitCode, BookError> {
    // Opening a folder without a book would make one: a check changes nothing.
    if !folder.join(DATABASE).is_file() {
        return Err(BookError::NotFound {
            kind: "field book".to_owned(),
            id: folder.display().to_string(),
        });
    }
    let store = Store::open(folder, "desk", now())?;
    if let Some(repair) = &store.opening().repair {
        tell(&format!(
            "The field book was damaged: {}. The damaged files are kept in {}.",
            repair.detail, repair.kept
        ))?;
        tell(&format!(
            "{} changes were saved from them.",
            repair.saved_changes
        ))?;
    }
    let health = store.check()?;
    health_told(&health)?;
    Ok(
        if store.opening().repair.is_some() || health.complaint.is_some() {
            ExitCode::from(DAMAGED)
        } else if health.is_sound() {
            ExitCode::SUCCESS
        } else {
            ExitCode::from(BAD_INPUT)
        },
    )
}

fn health_told(health: &Health) -> Result<(), BookError> {
    match &health.complaint {
        Some(complaint) => tell(&format!("Damaged: {complaint}"))?,
        None => tell("The database is sound.")?,
    }
    if !health.tables_match_log {
        tell("The tables are not what the log says; they can be worked out anew from it.")?;
    }
    for photo in &health.missing_photos {
        tell(&format!("Photo missing: {photo}"))?;
    }
    tell(&format!(
        "{} changes in the log, {} values stand side by side, {} not understood by this version.",
        health.changes, health.standing, health.unread
    ))?;
    for (table, count) in health.counts.iter().filter(|(_, count)| *count > 0) {
        tell(&format!("{count:>8}  {}", table.replace('_', " ")))?;
    }
    Ok(())
}
