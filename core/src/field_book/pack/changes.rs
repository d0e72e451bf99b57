//! The changes of a pack: each read and looked at before anything is kept.

use std::collections::BTreeSet;
use std::io::{Read, Seek};

use crate::error::BookError;
use crate::intake::Pack;
use crate::record::{Fault, Id, Moment, Noun};
use crate::store::Change;

/// After so many lines the work tells how far it is.
pub const LINES_A_STEP: u64 = 1_000;
/// How many faults are told at once.
const TOLD: usize = 20;
/// A change from further ahead than this is not taken: ten years, in milliseconds (house). The
/// log's time never goes back, so that one such change would carry every later one along.
const FARTHEST_AHEAD_MS: i64 = 3_653 * 86_400_000;

/// Looks every change over: is it one, of a site of the pack, of a time that can be. `step` is
/// called now and then.
pub fn look_over(
    pack: &mut Pack<impl Read + Seek>,
    at: Moment,
    step: &dyn Fn() -> Result<(), BookError>,
) -> Result<(), BookError> {
    let sites: BTreeSet<Id> = pack
        .head()
        .sites
        .iter()
        .map(|site| site.id.clone())
        .collect();
    let mut faults = Vec::new();
    let looked = pack.each_change(&mut |line, text| {
        if line % LINES_A_STEP == 0 {
            step()?;
        }
        match read(line, text) {
            Ok(change) => faults.extend(fault_of(&change, line, &sites, at)),
            Err(BookError::Refused { faults: found }) => faults.extend(found),
            Err(other) => return Err(other),
        }
        if faults.len() < TOLD {
            return Ok(());
        }
        Err(BookError::Refused {
            faults: std::mem::take(&mut faults),
        })
    });
    looked?;
    if faults.is_empty() {
        return Ok(());
    }
    Err(BookError::Refused { faults })
}

/// A line as a change.
///
/// # Errors
/// `Refused` with the line for what is none.
pub fn read(line: u64, text: &str) -> Result<Change, BookError> {
    serde_json::from_str(text).map_err(|cause| {
        let place = format!("line {line}");
        BookError::refused(Fault::new("fault.change", place, cause, "a change"))
    })
}

fn fault_of(change: &Change, line: u64, sites: &BTreeSet<Id>, at: Moment) -> Option<Fault> {
    let number = usize::try_from(line).unwrap_or(usize::MAX);
    if let Some(fault) = change.fault(number) {
        return Some(fault);
    }
    let place = format!("line {line}");
    if let Some(site) = &change.site
        && !sites.contains(&Id::from(site.as_str()))
    {
        return Some(Fault::new("fault.pack-other-site", place, site, ""));
    }
    let photo = Noun::Photo.place().table;
    if change.noun == photo
        && change.field == "file"
        && let Some(file) = change.value.as_str()
        && !is_plain_name(file)
    {
        return Some(Fault::new("fault.pack-path", place, file, ""));
    }
    if change.logical_ms().saturating_sub(at.utc_ms) > FARTHEST_AHEAD_MS {
        let day = Moment {
            utc_ms: change.logical_ms(),
            offset_min: at.offset_min,
        };
        let found = day.local().map_or(String::new(), |at| at.day.to_string());
        return Some(Fault::new("fault.change-too-far-ahead", place, found, ""));
    }
    None
}

/// Whether a name stays in the folder of the photos, on every system.
fn is_plain_name(name: &str) -> bool {
    let mut letters = name.bytes();
    !name.starts_with('.')
        && !name.is_empty()
        && letters
            .all(|letter| letter.is_ascii_alphanumeric() || matches!(letter, b'.' | b'-' | b'_'))
}
