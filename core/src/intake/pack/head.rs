//! The head of a pack: read, and held against what the zip holds.

use std::collections::BTreeSet;
use std::io::{Read, Seek};

use serde_json::Value;
use zip::ZipArchive;

use super::{head_text, refused};
use crate::error::BookError;
use crate::record::{
    Fault, PACK_CHANGES, PACK_FORMAT, PACK_HEAD, PACK_PHOTOS, PackHead, hash_of_photo,
};

/// The longest head, in bytes: 20,000 photos have room.
const LONGEST_HEAD: u64 = 8_000_000;
/// How many faults are told at once.
const TOLD: usize = 20;

/// Reads the head and sees whether the pack holds what it lists, and no photo beside it.
pub fn read_head<R: Read + Seek>(zip: &mut ZipArchive<R>) -> Result<PackHead, BookError> {
    let text = head_text(zip, LONGEST_HEAD)?;
    let odd = |cause: serde_json::Error| refused("fault.pack-head", PACK_HEAD, cause, "");
    let json: Value = serde_json::from_slice(&text).map_err(odd)?;
    let format = json.get("format").and_then(Value::as_u64).unwrap_or(0);
    if format > u64::from(PACK_FORMAT) {
        return Err(BookError::Newer {
            place: PACK_HEAD.to_owned(),
            found: u32::try_from(format).unwrap_or(u32::MAX),
            known: PACK_FORMAT,
        });
    }
    if format != u64::from(PACK_FORMAT) {
        let allowed = format!("format {PACK_FORMAT}");
        return Err(refused("fault.pack-head", PACK_HEAD, format, allowed));
    }
    let head: PackHead = serde_json::from_value(json).map_err(odd)?;
    let mut faults = Vec::new();
    let mut listed = BTreeSet::new();
    for (name, bytes) in parts(&head, &mut faults) {
        look_for(zip, &name, bytes, &mut faults)?;
        if !listed.insert(name.clone()) {
            faults.push(Fault::new("fault.pack-altered", name, "a name twice", ""));
        }
    }
    faults.extend(
        zip.file_names()
            .filter_map(Result::ok)
            .filter(|name| name.starts_with(PACK_PHOTOS) && !name.ends_with('/'))
            .filter(|name| !listed.contains(name.as_ref()))
            .map(|name| Fault::new("fault.pack-unlisted", name, "", "")),
    );
    if faults.is_empty() {
        return Ok(head);
    }
    faults.truncate(TOLD);
    Err(BookError::Refused { faults })
}

/// The name and the length of every part that the head lists.
fn parts(head: &PackHead, faults: &mut Vec<Fault>) -> Vec<(String, u64)> {
    let mut parts = vec![(PACK_CHANGES.to_owned(), head.changes.bytes)];
    for site in &head.sites {
        if site.id.is_empty() {
            faults.push(Fault::new("fault.pack-head", PACK_HEAD, "", "sites by id"));
        }
        parts.push((site.file.clone(), site.bytes));
    }
    if head.sites.is_empty() {
        faults.push(Fault::new("fault.pack-head", PACK_HEAD, "no site", ""));
    }
    for photo in &head.photos {
        if hash_of_photo(&photo.file).is_none() {
            let allowed = "photos named by their hash";
            faults.push(Fault::new(
                "fault.pack-head",
                PACK_HEAD,
                &photo.file,
                allowed,
            ));
        }
        parts.push((format!("{PACK_PHOTOS}/{}", photo.file), photo.bytes));
    }
    parts
}

fn look_for<R: Read + Seek>(
    zip: &mut ZipArchive<R>,
    name: &str,
    bytes: u64,
    faults: &mut Vec<Fault>,
) -> Result<(), BookError> {
    let Some(at) = zip.index_for_name(name) else {
        faults.push(Fault::new("fault.pack-missing", name, "", ""));
        return Ok(());
    };
    let size = zip.by_index_data(at).map_err(super::faults::failed)?.size();
    if size != bytes {
        let allowed = format!("{bytes} bytes");
        faults.push(Fault::new("fault.pack-altered", name, size, allowed));
    }
    Ok(())
}
