//! The findings of one tree: numbered as on the side view, in a sentence each, with their photos.

use super::record::TreePhotos;
use crate::handover::paper::{Block, Rich};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::record::{Finding, Quantity};
use crate::words::Said;

pub(in crate::handover) fn list(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Block> {
    let mut blocks = vec![Block::heading(3, desk.say("summary.findings"))];
    let findings = seen.findings();
    if findings.is_empty() {
        blocks.push(Block::text(desk.say("summary.findings-none")));
    } else {
        blocks.push(Block::Points {
            points: findings
                .iter()
                .map(|finding| sentence(desk, finding))
                .collect(),
            numbered: true,
        });
    }
    blocks
}

/// The photos, and the names of those that could not be read.
pub(in crate::handover) fn photos(desk: &PaperDesk, photos: TreePhotos) -> Vec<Block> {
    let mut blocks = Vec::new();
    if !photos.ready.is_empty() {
        blocks.push(Block::Photos(photos.ready));
    }
    for file in &photos.missing {
        let said = desk
            .words
            .say("summary.photo-missing", &[("file", Said::Text(file))]);
        blocks.push(Block::small(said));
    }
    blocks
}

/// Name and place in bold, then what its grade means, then the note.
fn sentence(desk: &PaperDesk, finding: &Finding) -> Rich {
    let name = desk.code_name(&finding.code);
    let mut rich = Rich::new()
        .bold(name)
        .plain(", ")
        .plain(place(desk, finding))
        .plain(". ");
    let meaning = finding
        .grade
        .zip(desk.codes.code(&finding.code))
        .and_then(|(grade, code)| desk.words.grade_sentence(code, grade));
    if let Some(meaning) = meaning {
        rich = rich.plain(meaning);
    }
    if let Some(note) = &finding.note {
        rich = rich.plain(" ").plain(note);
    }
    rich
}

/// Part, height and side.
pub(in crate::handover) fn place(desk: &PaperDesk, finding: &Finding) -> String {
    let words = desk.words;
    let part = words.word_of(&finding.part);
    let height = finding
        .height_m
        .map(|height_m| words.number(height_m, Quantity::LengthM));
    let side = finding.side_deg.map(|side_deg| words.side(side_deg));
    let place = match (&height, &side) {
        (Some(height), Some(side)) => words.say(
            "summary.finding-both",
            &[("height", Said::Text(height)), ("side", Said::Text(side))],
        ),
        (Some(height), None) => {
            words.say("summary.finding-height", &[("height", Said::Text(height))])
        }
        (None, Some(side)) => words.say("summary.finding-side", &[("side", Said::Text(side))]),
        (None, None) => return part,
    };
    words.say(
        "summary.finding-place",
        &[("part", Said::Text(&part)), ("place", Said::Text(&place))],
    )
}
