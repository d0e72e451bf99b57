//! Reads a pack, hostile until parsed: nothing of it is believed before it was looked at, nothing is
//! written, and no name in it ever becomes a path.
//!
//! | file | what it does |
//! | --- | --- |
//! | `limits` | what is refused before anything is unpacked |
//! | `head` | `pack.json`, held against what the zip holds |
//! | `faults` | what the zip reports, in our own errors |

mod faults;
mod head;
mod limits;

use std::fs::File;
use std::io::{BufRead, BufReader, Read, Seek};
use std::path::Path;

use zip::ZipArchive;

use self::faults::{failed, no_pack, torn};
use self::head::read_head;
use self::limits::{LONGEST_LINE, refuse_size, refuse_tail, refuse_unfit};
use crate::error::BookError;
use crate::record::{
    Fault, PACK_CHANGES, PACK_HEAD, PACK_PHOTOS, PackHead, PackedPhoto, hash_of_photo,
};

/// A pack that was opened: its head is known and fits, its changes and photos are still to be read.
#[derive(Debug)]
pub struct Pack<R> {
    zip: ZipArchive<R>,
    head: PackHead,
}

impl Pack<BufReader<File>> {
    /// Opens a pack. A file that is larger than any pack is refused before it is read.
    ///
    /// # Errors
    /// `NotFound`, `Unreadable` for the file; `Newer` for a pack of a later format; `Refused` for
    /// what is no pack, was cut short, names places outside itself, unpacks beyond all measure, or
    /// does not hold what its head lists.
    pub fn open(path: &Path) -> Result<Self, BookError> {
        let reading = |cause: &std::io::Error| BookError::reading(path, cause);
        let about = std::fs::metadata(path).map_err(|cause| reading(&cause))?;
        if !about.is_file() {
            return Err(BookError::Unreadable {
                place: path.display().to_string(),
                reason: "not a file".to_owned(),
            });
        }
        refuse_size(path, about.len())?;
        let file = File::open(path).map_err(|cause| reading(&cause))?;
        Pack::read(BufReader::new(file))
    }
}

impl<R: Read + Seek> Pack<R> {
    /// The same from anything that can be read in any order.
    ///
    /// # Errors
    /// As [`Pack::open`].
    pub fn read(mut from: R) -> Result<Self, BookError> {
        refuse_tail(&mut from)?;
        let mut zip = ZipArchive::new(from).map_err(failed)?;
        refuse_unfit(&mut zip)?;
        let head = read_head(&mut zip)?;
        Ok(Pack { zip, head })
    }

    /// What the pack says of itself.
    pub fn head(&self) -> &PackHead {
        &self.head
    }

    /// Hands over every line of the changes with its number, counted from 1, and sees at the end
    /// whether they are what the head says.
    ///
    /// # Errors
    /// `Refused` for a torn or altered pack, at the end too: what was handed over before is then
    /// not to be kept. What `take` reports.
    pub fn each_change(
        &mut self,
        take: &mut dyn FnMut(u64, &str) -> Result<(), BookError>,
    ) -> Result<(), BookError> {
        let wanted = &self.head.changes;
        let entry = self.zip.by_name(PACK_CHANGES).map_err(failed)?;
        let mut lines = BufReader::new(entry.take(wanted.bytes + 1));
        let mut hasher = blake3::Hasher::new();
        let (mut count, mut bytes) = (0_u64, 0_u64);
        let mut line = Vec::new();
        loop {
            line.clear();
            let mut one = (&mut lines).take(LONGEST_LINE);
            let length = one
                .read_until(b'\n', &mut line)
                .map_err(|cause| torn(PACK_CHANGES, cause))?;
            if length == 0 {
                break;
            }
            hasher.update(&line);
            bytes += length as u64;
            count += 1;
            let Some(text) = line.strip_suffix(b"\n") else {
                let whole = "whole lines";
                return Err(refused("fault.pack-torn", PACK_CHANGES, count, whole));
            };
            let text = std::str::from_utf8(text).map_err(|cause| torn(PACK_CHANGES, cause))?;
            take(count, text)?;
        }
        let is_it = hasher.finalize().to_hex().as_str() == wanted.blake3;
        if (count, bytes) == (wanted.count, wanted.bytes) && is_it {
            return Ok(());
        }
        Err(refused("fault.pack-altered", PACK_CHANGES, "", ""))
    }

    /// The bytes of a photo that the head lists, after a look at length and hash.
    ///
    /// # Errors
    /// `Refused` for a photo that is not what its name says, or that is torn.
    pub fn photo(&mut self, photo: &PackedPhoto) -> Result<Vec<u8>, BookError> {
        let name = format!("{PACK_PHOTOS}/{}", photo.file);
        let entry = self.zip.by_name(&name).map_err(failed)?;
        let mut bytes = Vec::new();
        entry
            .take(photo.bytes + 1)
            .read_to_end(&mut bytes)
            .map_err(|cause| torn(&name, cause))?;
        let hash = blake3::hash(&bytes).to_hex();
        if bytes.len() as u64 != photo.bytes || hash_of_photo(&photo.file) != Some(hash.as_str()) {
            return Err(refused("fault.pack-altered", &name, "", ""));
        }
        Ok(bytes)
    }
}

/// Whether a file looks like a pack: a zip whose first bytes say so.
///
/// # Errors
/// `NotFound`, `Unreadable`.
pub fn is_zip(path: &Path) -> Result<bool, BookError> {
    let mut first = Vec::new();
    File::open(path)
        .and_then(|file| file.take(4).read_to_end(&mut first))
        .map_err(|cause| BookError::reading(path, &cause))?;
    Ok(first == b"PK\x03\x04")
}

/// The head's text, or that there is none.
fn head_text<R: Read + Seek>(zip: &mut ZipArchive<R>, longest: u64) -> Result<Vec<u8>, BookError> {
    if zip.index_for_name(PACK_HEAD).is_none() {
        return Err(no_pack());
    }
    let entry = zip.by_name(PACK_HEAD).map_err(failed)?;
    let mut text = Vec::new();
    entry
        .take(longest + 1)
        .read_to_end(&mut text)
        .map_err(|cause| torn(PACK_HEAD, cause))?;
    if text.len() as u64 > longest {
        return Err(refused(
            "fault.pack-swells",
            PACK_HEAD,
            text.len(),
            longest.to_string(),
        ));
    }
    Ok(text)
}

fn refused(
    code: &str,
    place: &str,
    found: impl std::fmt::Display,
    allowed: impl Into<String>,
) -> BookError {
    BookError::refused(Fault::new(code, place, found, allowed))
}
