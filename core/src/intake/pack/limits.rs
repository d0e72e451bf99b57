//! What is refused of a zip before anything in it is unpacked: sizes, counts, ratios, names.

use std::collections::BTreeSet;
use std::io::{Read, Seek, SeekFrom};
use std::path::Path;

use zip::ZipArchive;

use super::faults::{failed, no_pack, torn};
use super::refused;
use crate::error::BookError;
use crate::record::{PACK_LARGEST, PACK_MOST_PHOTOS, PACK_PHOTOS, hash_of_photo};

/// The longest line of the changes, in bytes: an outline of 200,000 points.
pub const LONGEST_LINE: u64 = 16_000_000;
/// The largest photo, in bytes, as when it is taken.
pub const LARGEST_PHOTO: u64 = 64_000_000;
/// Entries beside the photos: head, changes, site files, and what a file manager puts in.
const OTHER_ENTRIES: usize = 1_000;
/// No text of a field book shrinks to less than a part in so many.
const STEEPEST: u64 = 200;
/// Below this length nothing is said about the ratio, in bytes.
const RATIO_FROM: u64 = 1_000_000;

/// Refuses a file that is larger than any pack.
pub fn refuse_size(path: &Path, bytes: u64) -> Result<(), BookError> {
    if bytes <= PACK_LARGEST {
        return Ok(());
    }
    let megabytes = |bytes: u64| format!("{} MB", bytes / 1_000_000);
    let allowed = format!("up to {}", megabytes(PACK_LARGEST));
    let place = path.display().to_string();
    Err(refused(
        "fault.pack-too-large",
        &place,
        megabytes(bytes),
        allowed,
    ))
}

/// Looks at the zip's last record (PKWARE, 'ZIP File Format Specification' 6.3.10, section 4.3.16)
/// before its directory is read, so that the number of entries is bounded. A pack has no comment
/// after it and never needs the large form.
pub fn refuse_tail(from: &mut (impl Read + Seek)) -> Result<(), BookError> {
    let torn = |cause: std::io::Error| torn("", cause);
    let mut first = [0; 4];
    from.rewind().map_err(torn)?;
    if from.read_exact(&mut first).is_err() || &first != b"PK\x03\x04" {
        return Err(no_pack());
    }
    let mut tail = [0; 22];
    from.seek(SeekFrom::End(-22)).map_err(torn)?;
    from.read_exact(&mut tail).map_err(torn)?;
    from.rewind().map_err(torn)?;
    if !tail.starts_with(b"PK\x05\x06") {
        return Err(refused("fault.pack-torn", "", "no end of the zip", ""));
    }
    let entries = usize::from(u16::from_le_bytes([tail[10], tail[11]]));
    most("", entries, PACK_MOST_PHOTOS + OTHER_ENTRIES)
}

fn most(place: &str, found: usize, allowed: usize) -> Result<(), BookError> {
    if found <= allowed {
        return Ok(());
    }
    let allowed = format!("up to {allowed} entries");
    Err(refused("fault.pack-swells", place, found, allowed))
}

/// Refuses names that lead out of the pack or stand twice, entries that share bytes, and whatever
/// would unpack beyond all measure.
pub fn refuse_unfit<R: Read + Seek>(zip: &mut ZipArchive<R>) -> Result<(), BookError> {
    most("", zip.len(), PACK_MOST_PHOTOS + OTHER_ENTRIES)?;
    if zip.has_duplicate_names() {
        return Err(refused("fault.pack-altered", "", "a name twice", ""));
    }
    let mut unpacked = 0_u64;
    let mut seen = BTreeSet::new();
    for at in 0..zip.len() {
        let entry = zip.by_index_data(at).map_err(failed)?;
        let name = entry.name().map_err(failed)?.into_owned();
        if !is_plain(&name) {
            return Err(refused("fault.pack-path", &name, "", ""));
        }
        // A phone's file system may take two names for one.
        if !seen.insert(name.to_lowercase()) {
            return Err(refused("fault.pack-altered", &name, "a name twice", ""));
        }
        let (packed, full) = (entry.compressed_size(), entry.size());
        unpacked = unpacked.saturating_add(full);
        let largest = match is_photo(&name) {
            true => LARGEST_PHOTO,
            false => PACK_LARGEST,
        };
        let swells = full > RATIO_FROM && full / STEEPEST > packed;
        if full > largest || unpacked > PACK_LARGEST || swells {
            let found = format!("{packed} bytes that become {full}");
            return Err(refused("fault.pack-swells", &name, found, ""));
        }
    }
    if zip.has_overlapping_entries().map_err(failed)? {
        return Err(refused(
            "fault.pack-altered",
            "",
            "entries that overlap",
            "",
        ));
    }
    Ok(())
}

fn is_photo(name: &str) -> bool {
    let file = name
        .strip_prefix(PACK_PHOTOS)
        .and_then(|rest| rest.strip_prefix('/'));
    file.is_some_and(|file| hash_of_photo(file).is_some())
}

/// Whether a name stays inside the pack on every system: no way up, no drive, no root.
fn is_plain(name: &str) -> bool {
    let parts = name.strip_suffix('/').unwrap_or(name);
    !parts.is_empty()
        && name.len() <= 255
        && !name.contains(['\\', ':', '\0'])
        && !name.chars().any(char::is_control)
        && parts
            .split('/')
            .all(|part| !matches!(part, "" | "." | ".."))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_that_leads_out_is_not_plain() {
        for odd in [
            "../book.db",
            "photos/../../x",
            "/etc/passwd",
            "C:\\x",
            "c:x",
            "photos\\x",
            "a//b",
            "./a",
            "",
            "/",
            "a\0.jpg",
            "a\nb",
        ] {
            assert!(!is_plain(odd), "{odd:?}");
        }
        for fine in ["pack.json", "photos/", "photos/a.jpg", "…/ä.txt", "..a"] {
            assert!(is_plain(fine), "{fine:?}");
        }
    }
}
