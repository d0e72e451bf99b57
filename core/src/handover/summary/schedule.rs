//! The schedule: every tree on one line.

use crate::handover::paper::{Block, Cell, Column, Table};
use crate::handover::paper_input::{PaperDesk, TreeSeen};

/// All columns together, in the shares that each gets of the width.
const WHOLE: f32 = 12.8;
/// What a letter of an entry and one of a column's bold head take of it.
const LETTER: f32 = 0.14;
const HEAD_LETTER: f32 = 0.15;

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
    let girths = desk.trees.iter().filter_map(|seen| desk.girth(seen));
    let priorities = desk.trees.iter().map(|seen| priority(desk, seen));
    let (species, height) = (2.5, 1.0);
    let tag = share(&desk.say("summary.tag"), [], 0.7);
    let girth = share(&desk.say("summary.girth"), girths, 1.1);
    let urgency = share(&desk.say("summary.priority"), priorities, 1.5);
    let page = share(&desk.say("summary.page"), [], 0.7);
    let work = WHOLE - tag - species - height - girth - urgency - page;
    vec![
        Block::NewPage,
        Block::Heading {
            level: 1,
            words: desk.say("summary.schedule"),
            key: "schedule".into(),
        },
        Block::Table(Table {
            summary: desk.say("summary.schedule-table"),
            columns: vec![
                Column::of(desk.say("summary.tag"), tag),
                Column::of(desk.say("summary.species"), species),
                Column::at_end(desk.say("summary.height"), height),
                Column::at_end(desk.say("summary.girth"), girth),
                Column::of(desk.say("summary.work"), work),
                Column::of(desk.say("summary.priority"), urgency),
                Column::at_end(desk.say("summary.page"), page),
            ],
            rows: desk.trees.iter().map(|seen| row(desk, seen)).collect(),
            rows_named: true,
        }),
    ]
}

/// What a column needs so that neither its head nor an entry breaks.
fn share(head: &str, entries: impl IntoIterator<Item = String>, least: f32) -> f32 {
    let letters = |text: &str| text.chars().count() as f32;
    let widest = entries.into_iter().map(|entry| letters(&entry) * LETTER);
    widest.fold(least.max(letters(head) * HEAD_LETTER), f32::max)
}

/// How soon the most urgent work is wanted.
fn priority(desk: &PaperDesk, seen: &TreeSeen) -> String {
    let priority = desk.most_urgent(seen);
    priority.map_or(String::new(), |priority| desk.words.label_of(&priority))
}

fn row(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Cell> {
    use crate::record::Quantity;
    let height = seen.newest(|look| look.height.as_ref());
    let height = height.map(|height| desk.words.number(height.height_m, Quantity::LengthM));
    let work = desk.listed(&desk.work_short(seen));
    vec![
        Cell::leading_to(seen.tree.tag.as_str(), &seen.key),
        Cell::of(desk.species(seen)),
        Cell::of(height.unwrap_or_default()),
        Cell::of(desk.girth(seen).unwrap_or_default()),
        Cell::of(desk.alone(&work)),
        Cell::of(priority(desk, seen)),
        Cell::page_of(&seen.key),
    ]
}
