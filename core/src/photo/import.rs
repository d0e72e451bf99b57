//! Takes a photo into a field book's photo folder.

use std::path::{Path, PathBuf};

use super::blur::{BLUR_DOUBTFUL_BELOW, sharpness};
use super::container::{is_whole, kind_of};
use super::decode::{DecodeFault, MAX_EDGE_PX, decode_upright};
use super::facts::read_facts;
use super::file::{Contents, holds, read_within, write_aside};
use super::imported::{ImportedPhoto, photo_files};
use super::pixels::{SMALL_EDGE_PX, VIEW_EDGE_PX, encode_jpeg, fit};
use crate::error::BookError;
use crate::record::Fault;

/// Largest photo file taken in, in bytes: 64 MB.
pub const MAX_FILE_BYTES: u64 = 64_000_000;
/// Quality of the upright copy.
const VIEW_QUALITY: u8 = 85;
/// Quality of the thumbnail.
const SMALL_QUALITY: u8 = 78;
/// Longest edge at which the sharpness is taken.
const BLUR_EDGE_PX: u32 = 1024;

/// Takes the photo at `source` into `photo_dir` (made if missing): the original untouched under
/// its BLAKE3 hash, an upright copy and a thumbnail. Taking it in again changes nothing.
///
/// # Errors
/// `NotFound`, `Unreadable` for the source; `Refused` with one fault for a file that is too
/// large (`fault.photo-too-large`), no JPEG or PNG (`fault.photo-unknown-kind`), torn
/// (`fault.photo-torn`), broken inside (`fault.photo-broken`) or of too many pixels
/// (`fault.photo-too-many-pixels`); `DiskFull`, `Unwritable` for the folder. Nothing half-written
/// stays behind.
pub fn import_photo(source: &Path, photo_dir: &Path) -> Result<ImportedPhoto, BookError> {
    let bytes = match read_within(source, MAX_FILE_BYTES)? {
        Contents::Read(bytes) => bytes,
        Contents::TooLong => {
            let megabytes = std::fs::metadata(source).map_or(0, |m| m.len() / 1_000_000);
            return Err(refused(
                "fault.photo-too-large",
                source,
                format!("{megabytes} MB"),
                "up to 64 MB",
            ));
        }
    };
    let prepared = prepare(source, &bytes)?;
    std::fs::create_dir_all(photo_dir).map_err(|cause| BookError::writing(photo_dir, &cause))?;
    let files = photo_files(photo_dir, &prepared.photo.file);
    write_all([
        (&files.small, prepared.small.as_slice()),
        (&files.view, prepared.view.as_slice()),
        // Last: where the original stands, its copies stand too.
        (&files.original, bytes.as_slice()),
    ])?;
    Ok(prepared.photo)
}

struct Prepared {
    photo: ImportedPhoto,
    view: Vec<u8>,
    small: Vec<u8>,
}

/// Everything that can fail on the picture itself, before anything is written.
fn prepare(source: &Path, bytes: &[u8]) -> Result<Prepared, BookError> {
    let kind = kind_of(bytes).ok_or_else(|| {
        refused(
            "fault.photo-unknown-kind",
            source,
            first_bytes(bytes),
            "JPEG or PNG",
        )
    })?;
    if !is_whole(kind, bytes) {
        let found = format!("breaks off after {} bytes", bytes.len());
        return Err(refused(
            "fault.photo-torn",
            source,
            found,
            "a whole picture",
        ));
    }
    let facts = read_facts(bytes);
    let upright = decode_upright(kind, bytes, facts.turn).map_err(|fault| match fault {
        DecodeFault::TooManyPixels => refused(
            "fault.photo-too-many-pixels",
            source,
            format!("an edge over {MAX_EDGE_PX} px, or over 200 megapixels"),
            "up to 20,000 px an edge and 200 megapixels",
        ),
        DecodeFault::Broken(cause) => {
            refused("fault.photo-broken", source, cause, "a whole picture")
        }
    })?;
    let view = fit(&upright, VIEW_EDGE_PX)?;
    let small = fit(&view, SMALL_EDGE_PX)?;
    let sharpness = sharpness(&fit(&view, BLUR_EDGE_PX)?);
    let hash = blake3::hash(bytes).to_hex();
    Ok(Prepared {
        photo: ImportedPhoto {
            file: format!("{hash}.{}", kind.ending()),
            width_px: upright.width(),
            height_px: upright.height(),
            facts,
            sharpness,
            perhaps_blurred: sharpness < BLUR_DOUBTFUL_BELOW,
        },
        view: encode_jpeg(&view, VIEW_QUALITY)?,
        small: encode_jpeg(&small, SMALL_QUALITY)?,
    })
}

/// Writes what is not there yet; on a failure takes back what it wrote.
fn write_all(files: [(&PathBuf, &[u8]); 3]) -> Result<(), BookError> {
    let mut fresh: Vec<&Path> = Vec::new();
    for (path, bytes) in files {
        if holds(path, bytes) {
            continue;
        }
        let was_there = path.exists();
        if let Err(cause) = write_aside(path, bytes) {
            for path in fresh {
                // Best effort on a failing disk; an orphan is harmless and written over next time.
                let _ = std::fs::remove_file(path);
            }
            return Err(cause);
        }
        if !was_there {
            fresh.push(path);
        }
    }
    Ok(())
}

pub(super) fn refused(
    code: &str,
    source: &Path,
    found: impl std::fmt::Display,
    allowed: &str,
) -> BookError {
    BookError::refused(Fault::new(
        code,
        source.display().to_string(),
        found,
        allowed,
    ))
}

/// The first bytes as text, so that a person sees what the file is instead.
fn first_bytes(bytes: &[u8]) -> String {
    if bytes.is_empty() {
        return "an empty file".to_owned();
    }
    bytes
        .iter()
        .take(16)
        .flat_map(|b| b.escape_ascii())
        .map(char::from)
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::exif_write::tests::entry;
    use crate::photo::pixels::speckled;
    use crate::photo::{PhotoGapKind, write_exif_jpeg};
    use tempfile::TempDir;

    fn taken_in(name: &str, bytes: &[u8]) -> (TempDir, Result<ImportedPhoto, BookError>) {
        let folder = tempfile::tempdir().unwrap();
        let source = folder.path().join(name);
        std::fs::write(&source, bytes).unwrap();
        let outcome = import_photo(&source, &folder.path().join("photos"));
        (folder, outcome)
    }

    fn photos_in(folder: &TempDir) -> usize {
        std::fs::read_dir(folder.path().join("photos")).map_or(0, Iterator::count)
    }

    fn code_of(outcome: Result<ImportedPhoto, BookError>) -> String {
        match outcome {
            Err(BookError::Refused { faults }) => faults[0].code.clone(),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn a_photo_becomes_three_files() {
        let jpeg = write_exif_jpeg(&speckled(2501, 1403), 85, &entry()).unwrap();
        let (folder, outcome) = taken_in("IMG_1.JPG", &jpeg);
        let photo = outcome.unwrap();
        assert_eq!((photo.width_px, photo.height_px), (2501, 1403));
        assert_eq!(photo.facts.gaps, []);
        let files = photo_files(&folder.path().join("photos"), &photo.file);
        assert_eq!(std::fs::read(&files.original).unwrap(), jpeg);
        let hash = blake3::hash(&jpeg).to_hex();
        assert_eq!(photo.file, format!("{hash}.jpg"));
        let size = |path: &Path| image::image_dimensions(path).unwrap();
        assert_eq!(size(&files.view), (2048, 1149));
        assert_eq!(size(&files.small), (320, 180));
        assert_eq!(photos_in(&folder), 3);
        let record = photo.record(None);
        assert_eq!(record.taken, Some(entry().taken));
        assert_eq!(record.direction_deg, Some(0.0));
    }

    #[test]
    fn copies_carry_no_record() {
        let jpeg = write_exif_jpeg(&speckled(400, 300), 85, &entry()).unwrap();
        let (folder, outcome) = taken_in("a.jpg", &jpeg);
        let files = photo_files(&folder.path().join("photos"), &outcome.unwrap().file);
        assert!(jpeg.windows(4).any(|w| w == b"Exif"));
        for path in [&files.view, &files.small] {
            let bytes = std::fs::read(path).unwrap();
            assert!(!bytes.windows(4).any(|w| w == b"Exif"));
            let gaps = read_facts(&bytes).gaps;
            assert_eq!(gaps[0].kind, PhotoGapKind::NoRecord);
        }
    }

    #[test]
    fn taking_it_in_twice_changes_nothing_and_mends_a_damaged_copy() {
        let jpeg = write_exif_jpeg(&speckled(400, 300), 85, &entry()).unwrap();
        let (folder, outcome) = taken_in("a.jpg", &jpeg);
        let first = outcome.unwrap();
        let dir = folder.path().join("photos");
        let files = photo_files(&dir, &first.file);
        std::fs::write(&files.original, b"wrecked").unwrap();
        let again = import_photo(&folder.path().join("a.jpg"), &dir).unwrap();
        assert_eq!(first, again);
        assert_eq!(std::fs::read(&files.original).unwrap(), jpeg);
        assert_eq!(photos_in(&folder), 3);
    }

    #[test]
    fn what_is_no_whole_picture_is_refused_and_leaves_nothing() {
        let jpeg = write_exif_jpeg(&speckled(400, 300), 85, &entry()).unwrap();
        for (bytes, code) in [
            (&b"not a picture"[..], "fault.photo-unknown-kind"),
            (&b""[..], "fault.photo-unknown-kind"),
            (&jpeg[..jpeg.len() / 2], "fault.photo-torn"),
            (&b"\xff\xd8\xff\xd9"[..], "fault.photo-broken"),
        ] {
            let (folder, outcome) = taken_in("a.jpg", bytes);
            assert_eq!(code_of(outcome), code);
            assert_eq!(photos_in(&folder), 0);
        }
    }

    #[test]
    fn a_file_over_64_mb_is_refused_unread() {
        let folder = tempfile::tempdir().unwrap();
        let source = folder.path().join("film.jpg");
        let file = std::fs::File::create(&source).unwrap();
        file.set_len(MAX_FILE_BYTES + 1).unwrap();
        let outcome = import_photo(&source, &folder.path().join("photos"));
        assert_eq!(code_of(outcome), "fault.photo-too-large");
    }

    #[test]
    fn a_png_and_a_single_pixel_are_taken_in() {
        let mut png = std::io::Cursor::new(Vec::new());
        speckled(1, 1)
            .write_to(&mut png, image::ImageFormat::Png)
            .unwrap();
        let (_folder, outcome) = taken_in("dot.png", &png.into_inner());
        let photo = outcome.unwrap();
        assert!(photo.file.ends_with(".png"));
        assert_eq!((photo.width_px, photo.height_px), (1, 1));
        assert!(photo.perhaps_blurred);
    }

    #[test]
    fn a_folder_that_cannot_be_made_is_an_error() {
        let folder = tempfile::tempdir().unwrap();
        let source = folder.path().join("a.jpg");
        std::fs::write(&source, encode_jpeg(&speckled(9, 9), 80).unwrap()).unwrap();
        // A file stands where the folder should be.
        let outcome = import_photo(&source, &source.join("photos"));
        assert!(
            matches!(outcome, Err(BookError::Unwritable { .. })),
            "{outcome:?}"
        );
    }
}
