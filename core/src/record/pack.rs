//! What a pack says of itself: `pack.json`, the head of what one phone hands another.
//!
//! A pack is a zip of `pack.json`, `changes.jsonl` (one change a line, as the log keeps them),
//! `photos/` (files named by their BLAKE3 hash) and a site file of every site, for reading only.

use serde::{Deserialize, Serialize};

use super::id::{Id, Moment};

/// Format of the packs that this version writes and reads.
pub const PACK_FORMAT: u32 = 1;
/// Name of the head in a pack.
pub const PACK_HEAD: &str = "pack.json";
/// Name of the changes in a pack: one JSON object a line.
pub const PACK_CHANGES: &str = "changes.jsonl";
/// Folder of the photos in a pack.
pub const PACK_PHOTOS: &str = "photos";
/// The largest pack in bytes, packed or unpacked: 1.8 GB, about 500 photos as a phone takes them.
pub const PACK_LARGEST: u64 = 1_800_000_000;
/// The most photos in a pack.
pub const PACK_MOST_PHOTOS: usize = 20_000;

/// The head of a pack.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PackHead {
    /// Format of the pack.
    pub format: u32,
    /// Version of the app that made it.
    pub made_by: String,
    /// The device that made it.
    pub device: String,
    /// When, by that device's clock.
    pub made_at: Moment,
    /// The sites it carries.
    pub sites: Vec<PackedSite>,
    /// The changes.
    pub changes: PackedChanges,
    /// The photos, in the order of their names.
    pub photos: Vec<PackedPhoto>,
}

/// A site of a pack, with its site file for reading only.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PackedSite {
    /// The site.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// How many trees it has.
    pub trees: u32,
    /// The site file's name in the pack.
    pub file: String,
    /// Its length in bytes.
    pub bytes: u64,
    /// Its BLAKE3 hash, 64 hexadecimal digits.
    pub blake3: String,
}

/// The changes of a pack.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PackedChanges {
    /// How many.
    pub count: u64,
    /// Length of `changes.jsonl` in bytes.
    pub bytes: u64,
    /// Its BLAKE3 hash, 64 hexadecimal digits.
    pub blake3: String,
}

/// A photo of a pack; its name is its hash.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct PackedPhoto {
    /// The file's name in `photos/`.
    pub file: String,
    /// Its length in bytes.
    pub bytes: u64,
}

/// The hash in a photo's file name: 64 hexadecimal digits before `.jpg` or `.png`; nothing for any
/// other name.
pub fn hash_of_photo(file: &str) -> Option<&str> {
    let (hash, ending) = file.rsplit_once('.')?;
    let is_hash = hash.len() == 64
        && hash
            .bytes()
            .all(|digit| matches!(digit, b'0'..=b'9' | b'a'..=b'f'));
    (is_hash && matches!(ending, "jpg" | "png")).then_some(hash)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_a_hash_with_the_ending_of_a_photo_names_one() {
        let hash = "0123456789abcdef".repeat(4);
        assert_eq!(hash_of_photo(&format!("{hash}.jpg")), Some(hash.as_str()));
        for odd in [
            format!("{hash}.exe"),
            format!("../{hash}.jpg"),
            format!("{}.jpg", hash.to_uppercase()),
            format!("{}.jpg", &hash[1..]),
            hash,
            ".jpg".to_owned(),
            String::new(),
        ] {
            assert_eq!(hash_of_photo(&odd), None, "{odd}");
        }
    }
}
