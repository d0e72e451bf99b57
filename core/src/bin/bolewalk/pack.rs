//! `bolewalk pack`: a property of a field book as one file that another phone or desk takes in.

use std::path::PathBuf;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::pack::{pack_written, write_pack_of};

use super::answer::{tell, words};
use super::clock::now;
use super::place::{chosen, open_book};
use super::progress::Progress;
use super::summary::written_words;

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// The folder of a field book. (A site file is handed over as it is: it has no history.)
    place: PathBuf,
    /// The property, by its name, where a field book holds several.
    #[arg(long)]
    site: Option<String>,
    /// The pack.
    #[arg(long, default_value = "property-pack.zip")]
    out: PathBuf,
}

pub fn pack(asked: &Asked) -> Result<ExitCode, BookError> {
    let store = open_book(&asked.place)?;
    let site = chosen(&store, asked.site.as_deref())?;
    let words = words(false);
    let progress = Progress::begin();
    progress.part(&words.say("desk.packing", &[]));
    let made = write_pack_of(
        &store.read(),
        &asked.place,
        store.device(),
        &site,
        now(),
        &asked.out,
        &|done, of| progress.how_far(done, of),
    )?;
    drop(progress);
    tell(&pack_written(&made, &words).words)?;
    tell(&written_words(std::slice::from_ref(&asked.out), &words))?;
    Ok(ExitCode::SUCCESS)
}
