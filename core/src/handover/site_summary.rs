//! The site summary: what a client gets, who knows nothing of trees. It carries neither score nor
//! verdict on a climb.

use std::collections::VecDeque;
use std::path::Path;

use rayon::prelude::*;

use super::aside::write_aside;
use super::paper::{Block, Look, Paper, PaperFacts, Photo, Rich, WordWidths};
use super::paper_input::{HowFar, PaperDesk, PaperInput, TreeSeen};
use super::summary::record::TreePhotos;
use super::summary::{close, cover, inside, looked, plan, record, schedule};
use crate::error::BookError;
use crate::record::Id;
use crate::words::Said;

/// Photos copied at a time, so that the work can be stopped in between.
const COPIED_AT_ONCE: usize = 8;

/// Writes the site summary to `path`: aside first, then renamed. `how_far` is told what is done of
/// how much; answering no stops the work, and nothing is left behind.
///
/// # Errors
/// [`BookError::Stopped`]; [`BookError::DiskFull`] and [`BookError::Unwritable`] for the file;
/// [`BookError::Defect`] for a fault of the program. A photo that cannot be read is named in the
/// paper and left out.
pub fn site_summary(input: &PaperInput, path: &Path, how_far: HowFar) -> Result<(), BookError> {
    write_aside(path, &site_summary_bytes(input, how_far)?)
}

/// The bytes of the site summary; the same input gives the same bytes.
///
/// # Errors
/// As [`site_summary`], but for the file.
pub fn site_summary_bytes(input: &PaperInput, how_far: HowFar) -> Result<Vec<u8>, BookError> {
    let desk = PaperDesk::of(input);
    let widths = WordWidths::load()?;
    let width = |words: &str, size_pt: f64| widths.width_pt(words, size_pt);
    // Copying a photo takes about as long as laying out and writing a few pages.
    let photo_count: usize = desk.trees.iter().map(|seen| seen.photos().len()).sum();
    let (photos, rest) = (photo_count as u32, desk.trees.len() as u32 + 10);
    let of = photos + rest;
    let mut copies = copied_photos(&desk, &|done| how_far(done, of))?;
    let mut blocks = cover::blocks(&desk);
    blocks.append(&mut looked::blocks(&desk));
    blocks.append(&mut plan::blocks(&desk, &width));
    blocks.append(&mut close::blocks(&desk));
    blocks.append(&mut schedule::blocks(&desk));
    blocks.push(Block::NewPage);
    let mut heading = record::heading(&desk);
    for (number, seen) in desk.trees.iter().enumerate() {
        let copies = copies.pop_front().unwrap_or_default();
        let photos = embedded(&desk, seen, copies);
        if number > 0 {
            blocks.push(Block::Space(14.0));
        }
        // A record that fits on a page is not torn apart; the first has the heading over it.
        let mut record = std::mem::take(&mut heading);
        record.append(&mut record::seen_blocks(&desk, seen, photos, &width));
        let mut last = record::last_blocks(&desk, seen);
        let mut inside = inside::blocks(&desk, seen, &width);
        if inside.is_empty() {
            record.append(&mut last);
            blocks.push(Block::Together(record));
        } else {
            // With a section it takes more than a page: the break may come before or after it.
            blocks.push(Block::Together(record));
            blocks.append(&mut inside);
            blocks.push(Block::Together(last));
        }
    }
    paper(&desk, blocks, &|page, pages| {
        desk.words.say(
            "paper.page",
            &[
                ("page", Said::Count(i64::from(page))),
                ("pages", Said::Count(i64::from(pages))),
            ],
        )
    })
    .print(&|done, steps| {
        let share = f64::from(done) / f64::from(steps.max(1));
        how_far(photos + (share * f64::from(rest)) as u32, of)
    })
}

fn paper<'a>(
    desk: &PaperDesk,
    blocks: Vec<Block>,
    page_words: &'a dyn Fn(u32, u32) -> String,
) -> Paper<'a> {
    let site = &desk.input.file.site;
    let title = desk.say("summary.title");
    Paper {
        facts: PaperFacts {
            title: format!("{title}: {}", site.name),
            subject: desk
                .words
                .say("summary.subject", &[("site", Said::Text(&site.name))]),
            author: String::new(),
            language: desk.say("paper.language"),
            made: desk.input.made,
            id: format!("summary-{}-{}", site.id, desk.input.made.utc_ms),
            sheet: desk.input.sheet,
            look: Look::summary(),
        },
        head: [site.name.clone(), title],
        foot: desk.say("summary.foot"),
        page_words,
        blocks,
    }
}

/// A copy of a photo for paper, or why there is none.
type PaperCopy = Result<Vec<u8>, BookError>;

/// The copies of every tree's photos, made in parallel.
fn copied_photos(
    desk: &PaperDesk,
    how_far: &dyn Fn(u32) -> bool,
) -> Result<VecDeque<Vec<PaperCopy>>, BookError> {
    let wanted: Vec<_> = desk.trees.iter().flat_map(TreeSeen::photos).collect();
    let mut made = Vec::with_capacity(wanted.len());
    for some in wanted.chunks(COPIED_AT_ONCE) {
        if !how_far(made.len() as u32) {
            return Err(BookError::Stopped);
        }
        let copy = desk.input.photo;
        made.par_extend(some.par_iter().map(|photo| copy(photo)));
    }
    let mut made = made.into_iter();
    Ok(desk
        .trees
        .iter()
        .map(|seen| made.by_ref().take(seen.photos().len()).collect())
        .collect())
}

/// The photos of one tree with their words.
fn embedded(desk: &PaperDesk, seen: &TreeSeen, copies: Vec<PaperCopy>) -> TreePhotos {
    let mut photos = TreePhotos {
        ready: Vec::new(),
        missing: Vec::new(),
    };
    for (photo, copy) in seen.photos().into_iter().zip(copies) {
        let number = number_of(seen, &photo.finding);
        let (described, caption) = photo_words(desk, seen, photo, number);
        match copy.and_then(|jpeg| Photo::from_jpeg(jpeg, &described, caption)) {
            Ok(ready) => photos.ready.push(ready),
            Err(_) => photos.missing.push(photo.file.clone()),
        }
    }
    photos
}

/// The number of a finding in its tree's list.
fn number_of(seen: &TreeSeen, finding: &Id) -> Option<usize> {
    if finding.is_empty() {
        return None;
    }
    let at = seen.findings().iter().position(|own| own.id == *finding)?;
    Some(at + 1)
}

/// What a photo shows, for people who do not see it, and the line under it.
fn photo_words(
    desk: &PaperDesk,
    seen: &TreeSeen,
    photo: &crate::record::Photo,
    number: Option<usize>,
) -> (String, Rich) {
    let words = desk.words;
    let tag = ("tag", Said::Text(&seen.tree.tag));
    let own = photo.caption.clone().unwrap_or_default();
    let Some(number) = number else {
        let described = words.say("summary.photo-described", &[tag]);
        let described = if own.is_empty() {
            described
        } else {
            format!("{described}: {own}")
        };
        return (described, own.into());
    };
    let findings = seen.findings();
    let code = findings
        .get(number - 1)
        .map_or(String::new(), |finding| desk.code_name(&finding.code));
    let number = number as i64;
    let described = words.say(
        "summary.photo-finding",
        &[
            tag,
            ("number", Said::Count(number)),
            ("code", Said::Text(&code)),
        ],
    );
    let said = if own.is_empty() { code } else { own };
    let caption = words.say(
        "summary.photo-caption",
        &[
            ("number", Said::Count(number)),
            ("caption", Said::Text(&said)),
        ],
    );
    (described, caption.into())
}
