//! Climb sheets for the crew: one page a tree, readable at arm's length, in the order needed at the
//! foot of the tree. No sampling words, no forces, no formulas.

use std::path::Path;

use super::aside::write_aside;
use super::paper::{Block, Look, PageCounter, Paper, PaperFacts};
use super::paper_input::{HowFar, PaperDesk, PaperInput, TreeSeen};
use super::sheet::{anchor, cautions, pace, rescue, verdict, who};
use crate::error::BookError;
use crate::record::{ClimbNeed, Judgement, Verdict};
use crate::words::Said;

/// Writes the climb sheets to `path`: aside first, then renamed. `how_far` is told what is done of
/// how much; answering no stops the work, and nothing is left behind.
///
/// # Errors
/// [`BookError::Stopped`]; [`BookError::DiskFull`] and [`BookError::Unwritable`] for the file;
/// [`BookError::Defect`] for a fault of the program.
pub fn climb_sheets(input: &PaperInput, path: &Path, how_far: HowFar) -> Result<(), BookError> {
    write_aside(path, &climb_sheets_bytes(input, how_far)?)
}

/// The bytes of the climb sheets; the same input gives the same bytes.
///
/// # Errors
/// As [`climb_sheets`], but for the file.
pub fn climb_sheets_bytes(input: &PaperInput, how_far: HowFar) -> Result<Vec<u8>, BookError> {
    let desk = PaperDesk::of(input);
    let facts = facts(&desk);
    let mut counter = PageCounter::new(&facts)?;
    let of = desk.trees.len() as u32 * 2;
    let mut blocks = Vec::new();
    for (number, seen) in desk.trees.iter().enumerate() {
        if !how_far(number as u32, of) {
            return Err(BookError::Stopped);
        }
        let Some(judgement) = seen.judgement else {
            continue;
        };
        let mut sheet = on_one_page(&desk, seen, judgement, &mut counter);
        blocks.push(Block::NewPage);
        blocks.append(&mut sheet);
    }
    let page_words = |page: u32, pages: u32| {
        desk.words.say(
            "paper.page",
            &[
                ("page", Said::Count(i64::from(page))),
                ("pages", Said::Count(i64::from(pages))),
            ],
        )
    };
    let foot = desk.words.say(
        "sheet.foot",
        &[
            ("site", Said::Text(&input.file.site.name)),
            ("day", Said::Day(input.judgement.as_of)),
        ],
    );
    let paper = Paper {
        facts,
        head: [String::new(), String::new()],
        foot,
        page_words: &page_words,
        blocks,
    };
    paper.print(&|done, steps| {
        let share = f64::from(done) / f64::from(steps.max(1));
        how_far(of / 2 + (share * f64::from(of / 2)) as u32, of)
    })
}

fn facts(desk: &PaperDesk) -> PaperFacts {
    let site = &desk.input.file.site;
    let day = ("day", Said::Day(desk.input.judgement.as_of));
    PaperFacts {
        title: format!("{}: {}", desk.say("sheet.title"), site.name),
        subject: desk.words.say("sheet.subject", &[day]),
        author: String::new(),
        language: desk.say("paper.language"),
        made: desk.input.made,
        id: format!("sheets-{}-{}", site.id, desk.input.made.utc_ms),
        sheet: desk.input.sheet,
        look: Look::climb_sheet(),
    }
}

/// How much of what may be shortened is printed.
#[derive(Clone, Copy)]
struct Fullness {
    most_gaps: usize,
    with_asides: bool,
    tight: bool,
}

/// The fullest sheet that fits on one page. Stops, limits, distances and the rescue plan are never
/// shortened: a tree with more of them than a page holds takes a second page.
fn on_one_page(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
    counter: &mut PageCounter,
) -> Vec<Block> {
    let steps = [
        (12, true, false),
        (6, true, false),
        (6, true, true),
        (4, false, true),
        (2, false, true),
        (0, false, true),
    ];
    let mut sheet = Vec::new();
    for (most_gaps, with_asides, tight) in steps {
        let fullness = Fullness {
            most_gaps,
            with_asides,
            tight,
        };
        sheet = blocks(desk, seen, judgement, fullness);
        if counter.pages(&sheet) <= 1 {
            break;
        }
    }
    sheet
}

fn blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
    fullness: Fullness,
) -> Vec<Block> {
    let mut blocks = vec![
        Block::Heading {
            level: 1,
            words: title(desk, seen),
            key: seen.key.clone(),
        },
        Block::text(under_title(desk, seen)),
        verdict::verdict(desk, judgement),
    ];
    blocks.append(&mut verdict::reasons(desk, judgement, fullness.most_gaps));
    let barred_without_plan = judgement.verdict == Verdict::Barred && judgement.anchor.is_empty();
    let mut pace = pace::blocks(desk, seen, judgement);
    let mut rescue = rescue::blocks(desk);
    let (left, right) = if judgement.climb == ClimbNeed::NotNeeded || barred_without_plan {
        (pace, rescue)
    } else {
        let mut left = who::blocks(desk, judgement, fullness.with_asides);
        left.append(&mut anchor::blocks(desk, seen, judgement));
        pace.append(&mut rescue);
        (left, pace)
    };
    blocks.push(Block::Beside {
        left,
        right,
        left_share: 0.5,
    });
    // Never on a barred or a doubtful tree: a load test makes up for no doubt.
    if judgement.climb != ClimbNeed::NotNeeded && judgement.verdict > Verdict::Refer {
        blocks.push(anchor::before(desk, seen, judgement));
    }
    if fullness.with_asides {
        blocks.append(&mut verdict::remarks(desk, judgement));
    }
    blocks.append(&mut cautions::blocks(desk, seen, judgement));
    if fullness.tight {
        return vec![Block::Tight(blocks)];
    }
    blocks
}

fn title(desk: &PaperDesk, seen: &TreeSeen) -> String {
    let species = desk.species(seen);
    desk.words.say(
        "sheet.tree",
        &[
            ("tag", Said::Text(&seen.tree.tag)),
            ("species", Said::Text(&species)),
        ],
    )
}

fn under_title(desk: &PaperDesk, seen: &TreeSeen) -> String {
    let way = match seen.tree.way {
        Some(way) => desk.words.word_of(&way),
        None => desk.say("sheet.way-open"),
    };
    let way = desk.alone(&way);
    match desk.height(seen) {
        Some(height) => desk.words.say(
            "sheet.under-tree",
            &[("way", Said::Text(&way)), ("height", Said::Text(&height))],
        ),
        None => way,
    }
}
