//! Writes a pack: what one phone hands another, in a zip that is there whole or not at all.

use std::io::{BufWriter, Seek, Write};
use std::path::{Path, PathBuf};

use zip::result::ZipError;
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipWriter};

use super::aside::write_aside_with;
use super::paper_input::HowFar;
use crate::error::BookError;
use crate::record::{
    Moment, PACK_CHANGES, PACK_FORMAT, PACK_HEAD, PACK_LARGEST, PACK_MOST_PHOTOS, PACK_PHOTOS,
    PackHead, PackedChanges, PackedPhoto, PackedSite, SiteFile, hash_of_photo,
};

/// Name of the site file in a pack.
const SITE_FILE: &str = "property.json";
/// Room kept for the head and the directory of the zip, in bytes.
const ROOM_FOR_HEAD: u64 = 16_000_000;

/// Takes one line of `changes.jsonl`.
pub type TakeLine<'a> = dyn FnMut(&str) -> Result<(), BookError> + 'a;

/// What a pack is made from.
pub struct PackInput<'a> {
    /// The device's lasting name.
    pub device: &'a str,
    /// The present moment.
    pub made: Moment,
    /// The site as it is now, for reading only.
    pub file: &'a SiteFile,
    /// Hands over every change as a line of JSON.
    pub changes: &'a dyn Fn(&mut TakeLine<'_>) -> Result<(), BookError>,
    /// The photos that the changes name, those that matter most first.
    pub photos: &'a [PathBuf],
}

/// A pack that was written.
#[derive(Debug, Clone, PartialEq)]
pub struct PackMade {
    /// Its head.
    pub head: PackHead,
    /// Photos that are not in it: missing, damaged, or more than a pack may hold.
    pub left_out: u32,
}

/// Writes a pack to `path`. The same input gives the same bytes. Photos that are missing, that are
/// not what their name says, or that have no room are left out and counted.
///
/// # Errors
/// `DiskFull`, `Unwritable` for `path`; `Stopped`; what handing over the changes reports. Nothing
/// half-written stays behind.
pub fn write_pack(
    input: &PackInput<'_>,
    path: &Path,
    how_far: HowFar<'_>,
) -> Result<PackMade, BookError> {
    write_aside_with(path, |file| {
        let mut out = BufWriter::new(file);
        let made = put_pack(input, &mut out, path, how_far)?;
        out.flush()
            .map_err(|cause| BookError::writing(path, &cause))?;
        Ok(made)
    })
}

/// The same in memory, for small ones.
///
/// # Errors
/// What handing over the changes reports.
pub fn pack_bytes(input: &PackInput<'_>) -> Result<Vec<u8>, BookError> {
    let mut out = std::io::Cursor::new(Vec::new());
    put_pack(input, &mut out, Path::new(PACK_HEAD), &|_, _| true)?;
    Ok(out.into_inner())
}

/// Writes a pack into `out`; `path` is named in errors.
fn put_pack(
    input: &PackInput<'_>,
    out: impl Write + Seek,
    path: &Path,
    how_far: HowFar<'_>,
) -> Result<PackMade, BookError> {
    let mut zip = Zip {
        zip: ZipWriter::new(out),
        path,
    };
    let steps = u32::try_from(input.photos.len()).unwrap_or(u32::MAX - 2) + 2;
    go_on(how_far, 0, steps)?;
    let changes = put_changes(input, &mut zip)?;
    go_on(how_far, 1, steps)?;
    let site = put_site(input.file, &mut zip)?;
    let room = PACK_LARGEST.saturating_sub(changes.bytes + site.bytes + ROOM_FOR_HEAD);
    let mut photos = Vec::new();
    let mut used = 0;
    for (photo, done) in input.photos.iter().zip(2..) {
        go_on(how_far, done, steps)?;
        let Some((file, bytes)) = sound(photo) else {
            continue;
        };
        let length = bytes.len() as u64;
        if used + length > room || photos.len() >= PACK_MOST_PHOTOS {
            continue;
        }
        used += length;
        zip.put(
            &format!("{PACK_PHOTOS}/{file}"),
            CompressionMethod::Stored,
            &bytes,
        )?;
        photos.push(PackedPhoto {
            file,
            bytes: length,
        });
    }
    let left_out = u32::try_from(input.photos.len() - photos.len()).unwrap_or(u32::MAX);
    photos.sort_by(|one, other| one.file.cmp(&other.file));
    let head = PackHead {
        format: PACK_FORMAT,
        made_by: env!("CARGO_PKG_VERSION").to_owned(),
        device: input.device.to_owned(),
        made_at: input.made,
        sites: vec![site],
        changes,
        photos,
    };
    let text = serde_json::to_vec_pretty(&head).map_err(defect)?;
    zip.put(PACK_HEAD, CompressionMethod::Deflated, &text)?;
    zip.zip.finish().map_err(|cause| failed(path, cause))?;
    Ok(PackMade { head, left_out })
}

fn put_changes(
    input: &PackInput<'_>,
    zip: &mut Zip<'_, impl Write + Seek>,
) -> Result<PackedChanges, BookError> {
    zip.start(PACK_CHANGES, CompressionMethod::Deflated)?;
    let mut hasher = blake3::Hasher::new();
    let (mut count, mut bytes) = (0, 0);
    (input.changes)(&mut |line| {
        for part in [line.as_bytes(), b"\n"] {
            hasher.update(part);
            bytes += part.len() as u64;
            zip.write(part)?;
        }
        count += 1;
        Ok(())
    })?;
    Ok(PackedChanges {
        count,
        bytes,
        blake3: hasher.finalize().to_hex().to_string(),
    })
}

/// The site as a file that names its photos as they lie in the pack.
fn put_site(
    file: &SiteFile,
    zip: &mut Zip<'_, impl Write + Seek>,
) -> Result<PackedSite, BookError> {
    let mut file = file.clone();
    let looks = file
        .site
        .trees
        .iter_mut()
        .flat_map(|tree| &mut tree.inspections);
    for photo in looks.flat_map(|look| &mut look.photos) {
        photo.file = format!("{PACK_PHOTOS}/{}", photo.file);
    }
    let text = serde_json::to_vec_pretty(&file).map_err(defect)?;
    zip.put(SITE_FILE, CompressionMethod::Deflated, &text)?;
    Ok(PackedSite {
        id: file.site.id,
        name: file.site.name,
        trees: u32::try_from(file.site.trees.len()).unwrap_or(u32::MAX),
        file: SITE_FILE.to_owned(),
        bytes: text.len() as u64,
        blake3: blake3::hash(&text).to_hex().to_string(),
    })
}

/// A photo's name and bytes, if it is there and is what its name says.
fn sound(photo: &Path) -> Option<(String, Vec<u8>)> {
    let file = photo.file_name()?.to_str()?;
    let hash = hash_of_photo(file)?;
    let bytes = std::fs::read(photo).ok()?;
    (blake3::hash(&bytes).to_hex().as_str() == hash).then(|| (file.to_owned(), bytes))
}

/// A zip in the making, with the path that errors name.
pub(super) struct Zip<'a, W: Write + Seek> {
    pub(super) zip: ZipWriter<W>,
    pub(super) path: &'a Path,
}

impl<W: Write + Seek> Zip<'_, W> {
    pub(super) fn start(&mut self, name: &str, how: CompressionMethod) -> Result<(), BookError> {
        // Without a date of its own an entry carries the first of the format: same input, same
        // bytes.
        let options = SimpleFileOptions::DEFAULT
            .compression_method(how)
            .unix_permissions(0o644);
        self.zip
            .start_file(name, options)
            .map_err(|cause| failed(self.path, cause))
    }

    pub(super) fn write(&mut self, bytes: &[u8]) -> Result<(), BookError> {
        self.zip
            .write_all(bytes)
            .map_err(|cause| BookError::writing(self.path, &cause))
    }

    fn put(&mut self, name: &str, how: CompressionMethod, bytes: &[u8]) -> Result<(), BookError> {
        self.start(name, how)?;
        self.write(bytes)
    }
}

pub(super) fn failed(path: &Path, cause: ZipError) -> BookError {
    match cause {
        ZipError::Io(cause) => BookError::writing(path, &cause),
        other => defect(other),
    }
}

pub(super) fn defect(cause: impl std::fmt::Display) -> BookError {
    BookError::Defect {
        detail: cause.to_string(),
    }
}

pub(super) fn go_on(how_far: HowFar<'_>, done: u32, of: u32) -> Result<(), BookError> {
    if how_far(done, of) {
        Ok(())
    } else {
        Err(BookError::Stopped)
    }
}
