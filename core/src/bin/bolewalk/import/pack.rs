//! A pack into a field book: the history of another phone's property beside one's own.

use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::pack::{PackAtHand, PackTaken, pack_taken};
use bolewalk_core::store::Store;

use super::super::answer::{tell, words};
use super::super::clock::now;
use super::super::progress::Progress;
use super::{Asked, refuse_repaired};

pub fn import(asked: &Asked) -> Result<ExitCode, BookError> {
    let is_new = !asked.into.exists();
    let taken = take_in(asked);
    if taken.is_err() && is_new {
        // Nothing was in it; what cannot be removed does no harm.
        let _ = std::fs::remove_dir_all(&asked.into);
    }
    let taken = taken?;
    tell(&taken.words)?;
    for notice in &taken.notices {
        tell(notice)?;
    }
    Ok(ExitCode::SUCCESS)
}

fn take_in(asked: &Asked) -> Result<PackTaken, BookError> {
    let words = words(false);
    let at = now();
    let mut store = Store::open(&asked.into, "desk", at)?;
    refuse_repaired(asked, &store)?;
    let progress = Progress::begin();
    progress.part(&words.say("desk.taking-pack", &[]));
    let how_far = |done: u32, of: u32| progress.how_far(done, of);
    let pack = PackAtHand::look_over(&asked.file, &asked.into, at, &how_far)?;
    let received = pack.take_in(&mut store, &how_far)?;
    pack_taken(&received, &store, &words)
}
