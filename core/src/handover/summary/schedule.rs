//! The schedule: every tree on one line.

use crate::handover::paper::{Block, Cell, Column, Table};
use crate::handover::paper_input::{PaperDesk, TreeSeen};

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
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
                Column::of(desk.say("summary.tag"), 0.7),
                Column::of(desk.say("summary.species"), 2.5),
                Column::at_end(desk.say("summary.height"), 1.0),
                Column::at_end(desk.say("summary.girth"), 1.1),
                Column::of(desk.say("summary.work"), 4.7),
                Column::of(desk.say("summary.priority"), 2.1),
                Column::at_end(desk.say("summary.page"), 0.7),
            ],
            rows: desk.trees.iter().map(|seen| row(desk, seen)).collect(),
            rows_named: true,
        }),
    ]
}

fn row(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Cell> {
    use crate::record::Quantity;
    let height = seen.newest(|look| look.height.as_ref());
    let height = height.map(|height| desk.words.number(height.height_m, Quantity::LengthM));
    let work = desk.listed(&desk.work_short(seen));
    let priority = desk.most_urgent(seen);
    vec![
        Cell::leading_to(seen.tree.tag.as_str(), &seen.key),
        Cell::of(desk.species(seen)),
        Cell::of(height.unwrap_or_default()),
        Cell::of(desk.girth(seen).unwrap_or_default()),
        Cell::of(desk.alone(&work)),
        Cell::of(priority.map_or(String::new(), |priority| desk.words.label_of(&priority))),
        Cell::page_of(&seen.key),
    ]
}
