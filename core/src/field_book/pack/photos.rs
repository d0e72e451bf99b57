//! The photos of a pack: taken in aside, put in their place together, taken back if it does not end
//! well.

use std::fs;
use std::io::{Read, Seek};
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use tempfile::TempDir;

use crate::error::BookError;
use crate::intake::Pack;
use crate::photo::{import_photo, photo_files};
use crate::record::{Fault, PACK_PHOTOS, PackedPhoto};
use crate::store::PHOTOS;

/// Folders that are filled aside in a book's own begin so; what a sudden end left behind goes when
/// the next pack comes.
const ASIDE: &str = ".pack-";
/// So many photos are read, then taken in on all cores.
const AT_ONCE: usize = 8;

/// Photos that lie ready aside.
#[derive(Debug)]
pub struct Aside {
    folder: TempDir,
    photos: PathBuf,
    files: Vec<String>,
}

/// Photos put in their place; taken back unless they are kept.
#[derive(Debug)]
pub struct InPlace {
    fresh: Vec<PathBuf>,
    photos: u32,
}

/// Takes every photo that is not here yet in aside. `step` is told how many are done.
pub fn bring_aside(
    pack: &mut Pack<impl Read + Seek>,
    book: &Path,
    step: &dyn Fn(u32) -> Result<(), BookError>,
) -> Result<Aside, BookError> {
    clear_rests(book);
    let folder = tempfile::Builder::new()
        .prefix(ASIDE)
        .tempdir_in(book)
        .map_err(|cause| BookError::writing(book, &cause))?;
    let photos = book.join(PHOTOS);
    let wanted: Vec<PackedPhoto> = pack
        .head()
        .photos
        .iter()
        .filter(|photo| !is_here(&photos, photo))
        .cloned()
        .collect();
    let mut done = pack.head().photos.len() - wanted.len();
    for some in wanted.chunks(AT_ONCE) {
        step(u32::try_from(done).unwrap_or(u32::MAX))?;
        for photo in some {
            let raw = folder.path().join(&photo.file);
            let bytes = pack.photo(photo)?;
            fs::write(&raw, bytes).map_err(|cause| BookError::writing(&raw, &cause))?;
        }
        take_in(folder.path(), some)?;
        done += some.len();
    }
    Ok(Aside {
        folder,
        photos,
        files: wanted.into_iter().map(|photo| photo.file).collect(),
    })
}

/// Makes each its copies; tells all that are no photos.
fn take_in(aside: &Path, some: &[PackedPhoto]) -> Result<(), BookError> {
    let taken: Vec<_> = some
        .par_iter()
        .map(|photo| {
            let raw = aside.join(&photo.file);
            let taken = import_photo(&raw, &aside.join(PHOTOS));
            // Its copy lies in the folder beside it by now; what stays goes with the folder.
            let _ = fs::remove_file(raw);
            (photo, taken)
        })
        .collect();
    let mut faults = Vec::new();
    for (photo, taken) in taken {
        let place = format!("{PACK_PHOTOS}/{}", photo.file);
        match taken {
            Ok(taken) if taken.file == photo.file => {}
            Ok(taken) => faults.push(Fault::new("fault.pack-altered", place, taken.file, "")),
            Err(BookError::Refused { faults: found }) => {
                faults.extend(found.into_iter().map(|fault| Fault {
                    place: place.clone(),
                    ..fault
                }));
            }
            Err(other) => return Err(other),
        }
    }
    if faults.is_empty() {
        return Ok(());
    }
    Err(BookError::Refused { faults })
}

impl Aside {
    /// Puts the photos where the book's photos lie.
    pub fn put_in_place(&self) -> Result<InPlace, BookError> {
        let failed = |path: &Path| {
            let path = path.to_owned();
            move |cause: std::io::Error| BookError::writing(path, &cause)
        };
        let mut in_place = InPlace {
            fresh: Vec::new(),
            photos: u32::try_from(self.files.len()).unwrap_or(u32::MAX),
        };
        fs::create_dir_all(&self.photos).map_err(failed(&self.photos))?;
        for file in &self.files {
            let from = photo_files(&self.folder.path().join(PHOTOS), file);
            let to = photo_files(&self.photos, file);
            for (from, to) in [
                (from.small, to.small),
                (from.view, to.view),
                // Last: where the original stands, its copies stand too.
                (from.original, to.original),
            ] {
                let is_new = !to.exists();
                fs::rename(from, &to).map_err(failed(&to))?;
                if is_new {
                    in_place.fresh.push(to);
                }
            }
        }
        if let Ok(folder) = fs::File::open(&self.photos) {
            // Some file systems refuse; the photos themselves are safe already.
            let _ = folder.sync_all();
        }
        Ok(in_place)
    }
}

impl InPlace {
    /// Keeps them; how many there are.
    pub fn keep(mut self) -> u32 {
        self.fresh.clear();
        self.photos
    }
}

impl Drop for InPlace {
    fn drop(&mut self) {
        for path in &self.fresh {
            // One that will not go is named by nothing and does no harm.
            let _ = fs::remove_file(path);
        }
    }
}

/// Whether the photo is here with its copies, and as long as it should be.
fn is_here(photos: &Path, photo: &PackedPhoto) -> bool {
    let files = photo_files(photos, &photo.file);
    let length = fs::metadata(files.original).map(|about| about.len());
    length.is_ok_and(|length| length == photo.bytes)
        && files.view.is_file()
        && files.small.is_file()
}

/// Takes away what a sudden end left behind.
fn clear_rests(book: &Path) {
    for entry in fs::read_dir(book).into_iter().flatten().flatten() {
        if entry.file_name().to_string_lossy().starts_with(ASIDE) {
            // What will not go does no harm.
            let _ = fs::remove_dir_all(entry.path());
        }
    }
}
