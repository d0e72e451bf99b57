//! What a person is told of a pack.

use crate::error::BookError;
use crate::handover::PackMade;
use crate::record::Id;
use crate::store::{LoadedSite, PHOTOS, Store};
use crate::words::{Said, Words};

use super::Received;

/// Milliseconds of a minute, an hour, a day.
const SPANS: [(&str, i64); 3] = [
    ("page.days", 86_400_000),
    ("page.hours", 3_600_000),
    ("page.minutes", 60_000),
];

/// A pack that was written.
#[derive(Debug, Clone, PartialEq, Eq, uniffi::Record)]
pub struct PackWritten {
    /// What it holds, in words.
    pub words: String,
    /// How many changes it holds.
    pub changes: u32,
    /// How many photos it holds.
    pub photos: u32,
    /// Photos that are not in it: missing, damaged, or more than a pack may hold.
    pub left_out: u32,
}

/// What came with a pack.
#[derive(Debug, Clone, PartialEq, Eq, uniffi::Record)]
pub struct PackTaken {
    /// The site that it is about, the first of several: where to go now.
    pub record: Id,
    /// What came, in words.
    pub words: String,
    /// How many changes were new here.
    pub changes: u32,
    /// How many were known.
    pub known: u32,
    /// How many photos were new here.
    pub photos: u32,
    /// What stands in two ways on its sites now, and has to be settled.
    pub to_settle: u32,
    /// What a person has to be told beside it: differences to settle, a clock that is wrong, photos
    /// that are missing, values of a newer version.
    pub notices: Vec<String>,
}

/// What a person is told of a pack that was written.
pub fn pack_written(made: &PackMade, words: &Words) -> PackWritten {
    let changes = u32::try_from(made.head.changes.count).unwrap_or(u32::MAX);
    let photos = u32::try_from(made.head.photos.len()).unwrap_or(u32::MAX);
    let mut said = words.say("pack.written", &counts(changes, photos));
    if made.left_out > 0 {
        let count = [("count", Said::Count(made.left_out.into()))];
        said = format!("{said} {}", words.say("pack.photos-left-out", &count));
    }
    PackWritten {
        words: said,
        changes,
        photos,
        left_out: made.left_out,
    }
}

/// What a person is told of a pack that was taken in.
///
/// # Errors
/// As the database reports.
pub fn pack_taken(
    received: &Received,
    store: &Store,
    words: &Words,
) -> Result<PackTaken, BookError> {
    let reader = store.read();
    let book = reader.load_book()?;
    let mut standing = book.standing.len();
    let mut removed = book.removed_but_changed.len();
    let (mut unread, mut missing) = (book.unread.len(), 0);
    for site in &received.head.sites {
        // A site that was removed stays so until a person settles it, on the book's page.
        let loaded = match reader.load_site(&site.id) {
            Ok(loaded) => loaded,
            Err(BookError::NotFound { .. }) => continue,
            Err(other) => return Err(other),
        };
        standing += loaded.standing.len();
        removed += loaded.removed_but_changed.len();
        // What lies in the book itself was counted already.
        unread += loaded.unread.len().saturating_sub(book.unread.len());
        missing += photos_missing(&loaded, store);
    }
    let absorbed = &received.absorbed;
    let said = match (absorbed.taken, received.photos) {
        (0, 0) => words.say("pack.nothing-new", &[]),
        (changes, photos) => words.say("pack.taken", &counts(changes, photos)),
    };
    let mut notices = Vec::new();
    for (key, count) in [
        ("notice.standing", standing),
        ("notice.removed-but-changed", removed),
        ("notice.photos-missing", missing),
        ("notice.unread", unread),
    ] {
        if count > 0 {
            notices.push(words.say(key, &[("count", Said::Count(count as i64))]));
        }
    }
    if let Some(ahead_ms) = absorbed.ahead_ms {
        let lead = span(ahead_ms, words);
        let said = [
            ("device", Said::Text(absorbed.ahead_device.as_str())),
            ("lead", Said::Text(lead.as_str())),
        ];
        notices.push(words.say("notice.clock-ahead", &said));
    }
    let first = received.head.sites.first();
    Ok(PackTaken {
        record: first.map(|site| site.id.clone()).unwrap_or_default(),
        words: said,
        changes: absorbed.taken,
        known: absorbed.known,
        photos: received.photos,
        to_settle: u32::try_from(standing + removed).unwrap_or(u32::MAX),
        notices,
    })
}

fn counts(changes: u32, photos: u32) -> [(&'static str, Said<'static>); 2] {
    [
        ("changes", Said::Count(changes.into())),
        ("photos", Said::Count(photos.into())),
    ]
}

/// Photos that records name and that are not on this phone.
fn photos_missing(loaded: &LoadedSite, store: &Store) -> usize {
    let Some(folder) = store.folder() else {
        return 0;
    };
    let trees = loaded.file.site.trees.iter();
    let looks = trees.flat_map(|tree| &tree.inspections);
    looks
        .flat_map(|look| &look.photos)
        .filter(|photo| !folder.join(PHOTOS).join(&photo.file).is_file())
        .count()
}

/// A span of time in the largest measure of which there are at least two.
fn span(ms: i64, words: &Words) -> String {
    let (key, unit) = SPANS
        .into_iter()
        .find(|(_, unit)| ms >= 2 * unit)
        .unwrap_or(("page.minutes", 60_000));
    words.say(key, &[("count", Said::Count((ms / unit).max(1)))])
}
