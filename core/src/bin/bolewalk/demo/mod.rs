//! `bolewalk demo`: the whole job on a property that does not exist.

mod pictures;
mod property;
mod target;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::handover::paper::Sheet;
use bolewalk_core::intake::make_unique;
use bolewalk_core::record::{Id, ReportFor, SiteFile};
use bolewalk_core::store::{Author, PHOTOS, Store};
use bolewalk_core::words::{Said, Words};

use super::answer::{tell, words};
use super::clock::now;
use super::export::{write_map_files, write_site_file_beside};
use super::import::take_photos;
use super::judge::report;
use super::lines::Lines;
use super::place::Place;
use super::progress::Progress;
use super::summary::{PaperLook, write_papers};
use pictures::{PictureOrder, write_pictures};
use target::Target;

/// Pictures drawn at a time, so that the work can be stopped in between.
const DRAWN_AT_ONCE: usize = 16;

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// The folder that is made: a field book, its papers and its map files.
    #[arg(default_value = "bolewalk-demo")]
    folder: PathBuf,
    /// Replace an earlier demo without asking.
    #[arg(long)]
    yes: bool,
    /// Feet, inches and pounds instead of metres, centimetres and kilograms.
    #[arg(long)]
    imperial: bool,
}

pub fn demo(asked: &Asked) -> Result<ExitCode, BookError> {
    let words = words(asked.imperial);
    let target = Target::of(&asked.folder)?;
    if !target.may_be_written(asked.yes, &words)? {
        tell(&words.say("desk.demo-left", &[]))?;
        return Ok(ExitCode::SUCCESS);
    }
    let progress = Progress::begin();
    let aside = target.aside()?;
    let text = made(aside.path(), &target, &words, &progress)?;
    target.put_in_place(aside)?;
    drop(progress);
    tell(&text)?;
    Ok(ExitCode::SUCCESS)
}

/// Makes the whole demo in a folder; gives what is to be told.
fn made(
    folder: &Path,
    target: &Target,
    words: &Words,
    progress: &Progress,
) -> Result<String, BookError> {
    let mut file = property::property()?;
    photographs(&mut file, folder, words, progress)?;
    make_unique(&mut file, &[]);
    let at = now();
    let author = Author {
        person: Id::default(),
        at,
    };
    Store::open(folder, "desk", at)?.put_site_file(&author, &file)?;
    let place = Place::open(folder, None)?;
    let judgement = place.judged(None, None)?;
    let look = PaperLook {
        words: *words,
        sheet: Sheet::UsLetter,
        made_for: ReportFor::Mail,
    };
    let mut written = write_papers(&place, &judgement, &look, folder, progress)?;
    written.extend(write_map_files(
        &place.file,
        &judgement,
        *words,
        folder,
        progress,
    )?);
    written.push(write_site_file_beside(&place.file, folder)?);
    let mut lines = Lines::default();
    report(&place.file, &judgement, words, &mut lines);
    lines.gap();
    lines.hung("", &words.say("desk.demo-invented", &[]));
    let name = |path: &PathBuf| {
        path.file_name()
            .map(|name| name.to_string_lossy().into_owned())
    };
    let names: Vec<String> = written.iter().filter_map(name).collect();
    let shown = target.shown();
    let said = [
        ("folder", Said::Text(&shown)),
        ("files", Said::Text(&names.join(", "))),
    ];
    lines.hung("", &words.say("desk.demo-made", &said));
    lines.hung("", &words.say("desk.demo-next", &said));
    Ok(lines.into_text())
}

/// Draws the photos, takes them into the book's folder and puts their names into the file.
fn photographs(
    file: &mut SiteFile,
    folder: &Path,
    words: &Words,
    progress: &Progress,
) -> Result<(), BookError> {
    let drawn = folder.join("drawn");
    std::fs::create_dir_all(&drawn).map_err(|cause| BookError::writing(&drawn, &cause))?;
    let orders: Vec<PictureOrder> = property::orders(file)?;
    let of = orders.len() as u32;
    progress.part(&words.say("desk.demo-photos", &[]));
    let mut done = 0;
    for some in orders.chunks(DRAWN_AT_ONCE) {
        progress.go_on(done, of)?;
        write_pictures(some, &drawn)?;
        done += some.len() as u32;
    }
    progress.go_on(done, of)?;
    take_photos(file, &drawn, &folder.join(PHOTOS))?;
    std::fs::remove_dir_all(&drawn).map_err(|cause| BookError::writing(&drawn, &cause))
}
