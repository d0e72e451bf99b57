//! Packs: what one phone hands another, written from a snapshot and taken in as a whole or not at
//! all.
//!
//! | file | what it does |
//! | --- | --- |
//! | `changes` | the changes of a pack, looked over before anything is kept |
//! | `photos` | its photos, brought in aside and put in their place together |
//! | `told` | what a person is told of it |

mod changes;
mod photos;
mod told;

use std::fs::File;
use std::io::BufReader;
use std::path::Path;

use super::inner::Inner;
use super::long_work::Running;
use super::papers::PaperState;
use crate::error::BookError;
use crate::handover::{HowFar, PackInput, PackMade, TakeLine};
use crate::intake::Pack;
use crate::record::{Id, Moment, PackHead};
use crate::store::{Absorbed, PHOTOS, Reader, Store};

pub use told::{PackTaken, PackWritten, pack_taken, pack_written};

/// Writes a pack of a site of a field book in `folder` to `path`.
///
/// # Errors
/// `NotFound` for an unknown site; else as [`crate::handover::write_pack`].
pub fn write_pack_of(
    reader: &Reader<'_>,
    folder: &Path,
    device: &str,
    site: &Id,
    made: Moment,
    path: &Path,
    how_far: HowFar<'_>,
) -> Result<PackMade, BookError> {
    let loaded = reader.load_site(site)?;
    let named = reader.photos_named(site)?;
    let photos: Vec<_> = named
        .iter()
        .map(|file| folder.join(PHOTOS).join(file))
        .collect();
    let lines = |take: &mut TakeLine<'_>| {
        reader.each_change_of_site(site, &mut |change| {
            take(&serde_json::to_string(change).map_err(super::fill::defect)?)
        })
    };
    let input = PackInput {
        device,
        made,
        file: &loaded.file,
        changes: &lines,
        photos: &photos,
    };
    crate::handover::write_pack(&input, path, how_far)
}

/// A pack that was looked over: it fits, its photos lie ready aside, and nothing is kept yet.
#[derive(Debug)]
pub struct PackAtHand {
    pack: Pack<BufReader<File>>,
    photos: photos::Aside,
    at: Moment,
}

/// What came with a pack.
#[derive(Debug, Clone, PartialEq)]
pub struct Received {
    /// What the pack said of itself.
    pub head: PackHead,
    /// Its changes.
    pub absorbed: Absorbed,
    /// How many of its photos were new here.
    pub photos: u32,
}

impl PackAtHand {
    /// Looks a pack over for the field book in `folder`, without touching the book; `at` is the
    /// present moment.
    ///
    /// # Errors
    /// `Refused`, `Newer`, `NotFound`, `Unreadable` for the pack; `DiskFull`, `Unwritable` for the
    /// folder; `Stopped`. Nothing stays behind.
    pub fn look_over(
        path: &Path,
        folder: &Path,
        at: Moment,
        how_far: HowFar<'_>,
    ) -> Result<PackAtHand, BookError> {
        let mut pack = Pack::open(path)?;
        let photos = u32::try_from(pack.head().photos.len()).unwrap_or(u32::MAX);
        let of = photos.saturating_add(2);
        go_on(how_far, 0, of)?;
        changes::look_over(&mut pack, at, &|| go_on(how_far, 0, of))?;
        let photos = photos::bring_aside(&mut pack, folder, &|done| go_on(how_far, done + 1, of))?;
        Ok(PackAtHand { pack, photos, at })
    }

    /// Takes the pack in: its photos, then its changes in one transaction. Either all of it is
    /// there afterwards, or nothing.
    ///
    /// # Errors
    /// `Refused` for changes that do not agree with this book's log; `DiskFull`, `Unwritable`,
    /// `Busy`, `Damaged` as the book reports; `Stopped`.
    pub fn take_in(
        mut self,
        store: &mut Store,
        how_far: HowFar<'_>,
    ) -> Result<Received, BookError> {
        let photos = u32::try_from(self.pack.head().photos.len()).unwrap_or(u32::MAX);
        let of = photos.saturating_add(2);
        let in_place = self.photos.put_in_place()?;
        let pack = &mut self.pack;
        let absorbed = store.take_in(self.at, &mut |take| {
            pack.each_change(&mut |line, text| {
                if line % changes::LINES_A_STEP == 0 {
                    go_on(how_far, of - 1, of)?;
                }
                take(&changes::read(line, text)?)
            })
        })?;
        Ok(Received {
            head: self.pack.head().clone(),
            absorbed,
            photos: in_place.keep(),
        })
    }
}

impl PaperState {
    /// Writes a pack of a site.
    pub(super) fn write_pack(
        &self,
        site: &Id,
        path: &Path,
        running: &Running<'_>,
    ) -> Result<PackWritten, BookError> {
        let folder = self.photos.parent().unwrap_or(Path::new("."));
        let how_far = |done: u32, of: u32| running.tell(done, of);
        let reader = self.snapshot.read();
        let made = write_pack_of(
            &reader,
            folder,
            &self.device,
            site,
            self.now,
            path,
            &how_far,
        )?;
        Ok(pack_written(&made, &self.words))
    }
}

impl Inner {
    /// Takes a pack in that was looked over.
    pub(super) fn take_pack(
        &mut self,
        pack: PackAtHand,
        running: &Running<'_>,
    ) -> Result<PackTaken, BookError> {
        self.see_room()?;
        // Another phone's changes may lie anywhere: the site is read whole.
        self.judged = None;
        self.judged_before = None;
        let received = pack.take_in(&mut self.store, &|done, of| running.tell(done, of))?;
        pack_taken(&received, &self.store, &self.settings.words())
    }
}

fn go_on(how_far: HowFar<'_>, done: u32, of: u32) -> Result<(), BookError> {
    if how_far(done, of) {
        Ok(())
    } else {
        Err(BookError::Stopped)
    }
}
