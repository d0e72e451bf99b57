//! What was looked at, and what was not.

use crate::handover::paper::{Block, Cell, Column, Rich, Table, Voice};
use crate::handover::paper_input::PaperDesk;
use crate::record::InspectionLevel;
use crate::words::Said;

/// The levels as the client reads them, the closest look first.
const LEVELS: [(Option<InspectionLevel>, &str); 5] = [
    (Some(InspectionLevel::FullCheck), "summary.level-full-check"),
    (Some(InspectionLevel::Triage), "summary.level-triage"),
    (Some(InspectionLevel::SameDay), "summary.level-same-day"),
    (
        Some(InspectionLevel::StopOnSight),
        "summary.level-stop-on-sight",
    ),
    (None, "summary.level-not-yet"),
];

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
    let mut blocks = vec![
        Block::NewPage,
        Block::Heading {
            level: 1,
            words: desk.say("summary.looked"),
            key: "looked".into(),
        },
        Block::Paragraph {
            words: desk.say("summary.looked-lead").into(),
            voice: Voice::Lead,
        },
        Block::Table(levels(desk)),
        Block::heading(2, desk.say("summary.unseen")),
    ];
    blocks.append(&mut unseen(desk));
    blocks.push(Block::Together(vec![
        Block::heading(2, desk.say("summary.not-done")),
        Block::points([
            desk.say("summary.not-done-roots"),
            desk.say("summary.not-done-wood"),
            desk.say("summary.not-done-risk"),
        ]),
    ]));
    blocks
}

/// The words for how closely a tree was looked at.
pub(in crate::handover) fn level_words(desk: &PaperDesk, level: Option<InspectionLevel>) -> String {
    let key = LEVELS.iter().find(|(known, _)| *known == level);
    desk.say(key.map_or("summary.level-not-yet", |(_, key)| key))
}

fn levels(desk: &PaperDesk) -> Table {
    let rows = LEVELS
        .iter()
        .filter_map(|(level, key)| {
            let tags: Vec<String> = desk
                .trees
                .iter()
                .filter(|tree| tree.level() == *level)
                .map(|tree| tree.tree.tag.clone())
                .collect();
            let count = desk
                .words
                .number(tags.len() as f64, crate::record::Quantity::Count);
            (!tags.is_empty()).then(|| {
                vec![
                    Cell::of(desk.say(key)),
                    Cell::of(count),
                    Cell::of(desk.listed(&tags)),
                ]
            })
        })
        .collect();
    Table {
        summary: desk.say("summary.looked-table"),
        columns: vec![
            Column::of(desk.say("summary.looked-level"), 3.6),
            Column::at_end(desk.say("summary.looked-count"), 0.7),
            Column::of(desk.say("summary.looked-which"), 4.4),
        ],
        rows,
        rows_named: true,
    }
}

fn unseen(desk: &PaperDesk) -> Vec<Block> {
    // Trees with the same parts unseen share a line.
    let mut lines: Vec<(Vec<String>, Vec<String>)> = Vec::new();
    for tree in &desk.trees {
        let parts = desk.unseen_parts(tree);
        if tree.level() != Some(InspectionLevel::FullCheck) || parts.is_empty() {
            continue;
        }
        let tag = tree.tree.tag.clone();
        match lines.iter_mut().find(|(_, own)| *own == parts) {
            Some((tags, _)) => tags.push(tag),
            None => lines.push((vec![tag], parts)),
        }
    }
    let points: Vec<Rich> = lines
        .iter()
        .map(|(tags, parts)| {
            Rich::new()
                .bold(desk.listed(tags))
                .plain(": ")
                .plain(desk.listed_parts(parts))
        })
        .collect();
    if points.is_empty() {
        return vec![Block::text(desk.say("summary.unseen-none"))];
    }
    vec![
        Block::text(desk.say("summary.unseen-lead")),
        Block::points(points),
    ]
}

/// The parts of one tree that could not be seen, as its record says it.
pub(in crate::handover) fn unseen_of(
    desk: &PaperDesk,
    seen: &crate::handover::paper_input::TreeSeen,
) -> String {
    if seen.level() != Some(InspectionLevel::FullCheck) {
        return desk.say("summary.record-unseen-all");
    }
    let parts = desk.unseen_parts(seen);
    if parts.is_empty() {
        desk.say("summary.record-unseen-none")
    } else {
        let parts = desk.listed_parts(&parts);
        desk.words
            .say("caution.sheet-not-seen", &[("parts", Said::Text(&parts))])
    }
}
