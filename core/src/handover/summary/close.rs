//! What to close, move or guard while work goes on, and the permissions.

use crate::handover::paper::{Block, Cell, Column, Rich, Table, Voice};
use crate::handover::paper_input::PaperDesk;
use crate::judge::to_close::{ToClose, to_close};
use crate::record::{Permission, ZoneAction};
use crate::words::Said;

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
    let mut blocks = vec![
        Block::NewPage,
        Block::Heading {
            level: 1,
            words: desk.say("summary.close"),
            key: "close".into(),
        },
    ];
    let rows = rows(desk);
    if rows.is_empty() {
        blocks.push(Block::text(desk.say("summary.close-nothing")));
    } else {
        blocks.push(Block::Paragraph {
            words: desk.say("summary.close-lead").into(),
            voice: Voice::Lead,
        });
        blocks.push(Block::Table(Table {
            summary: desk.say("summary.close-table"),
            columns: vec![
                Column::of(desk.say("summary.close-what"), 2.2),
                Column::of(desk.say("summary.close-do"), 3.6),
                Column::of(desk.say("summary.close-for"), 3.4),
            ],
            rows,
            rows_named: true,
        }));
    }
    blocks.extend(done(desk));
    blocks.push(Block::heading(2, desk.say("summary.permissions")));
    blocks.push(permissions(desk));
    blocks
}

/// The trees on which the work is done: nothing is closed for them any more.
fn done(desk: &PaperDesk) -> Option<Block> {
    let done = desk.trees.iter().filter(|seen| seen.tree.work_is_done());
    let tags: Vec<String> = done.map(|seen| seen.tree.tag.clone()).collect();
    if tags.is_empty() {
        return None;
    }
    let trees = desk.listed(&tags);
    let said = [("trees", Said::Text(trees.as_str()))];
    Some(Block::text(desk.words.say("summary.close-done", &said)))
}

/// What lies inside the ground to be kept clear around the trees that are worked on.
fn rows(desk: &PaperDesk) -> Vec<Vec<Cell>> {
    let zones = desk
        .trees
        .iter()
        .filter_map(|seen| Some((&seen.tree.id, seen.zone_to_close()?)));
    to_close(zones)
        .iter()
        .map(|thing| row(desk, thing))
        .collect()
}

fn add<T: PartialEq>(list: &mut Vec<T>, one: T) {
    if !list.contains(&one) {
        list.push(one);
    }
}

fn row(desk: &PaperDesk, thing: &ToClose) -> Vec<Cell> {
    let (mut actions, mut for_trees, mut landing) = (Vec::new(), Vec::new(), Vec::new());
    for asked in &thing.asked {
        let tag = desk.tag_of(&asked.tree).to_owned();
        add(&mut actions, action_words(desk, asked.action));
        add(&mut for_trees, tag.clone());
        if asked.in_drop_zone {
            add(&mut landing, tag);
        }
    }
    let mut trees = desk.listed(&for_trees);
    if !landing.is_empty() {
        let lands = desk.listed(&landing);
        trees.push('\n');
        trees.push_str(
            &desk
                .words
                .say("summary.close-lands", &[("trees", Said::Text(&lands))]),
        );
    }
    let record = &thing.record;
    let name = if *record == desk.input.file.site.id {
        desk.say("summary.close-edge")
    } else {
        desk.name_of(record)
    };
    vec![
        Cell::of(name),
        Cell::of(actions.join("\n")),
        Cell::of(trees),
    ]
}

/// What must be done, as a client reads it.
pub(in crate::handover) fn action_words(desk: &PaperDesk, action: ZoneAction) -> String {
    desk.say(match action {
        ZoneAction::EmptyRooms => "summary.action-empty-rooms",
        ZoneAction::CloseOff => "summary.action-close-off",
        ZoneAction::MoveAway => "summary.action-move-away",
        ZoneAction::Guard => "summary.action-guard",
        ZoneAction::Protect => "summary.action-protect",
        ZoneAction::AskNeighbour => "summary.action-ask-neighbour",
        ZoneAction::CallLineOwner => "summary.action-call-line-owner",
    })
}

fn permissions(desk: &PaperDesk) -> Block {
    let permissions = &desk.input.file.site.permissions;
    if permissions.is_empty() {
        return Block::text(desk.say("summary.permissions-none"));
    }
    let rows = permissions
        .iter()
        .map(|permission| {
            let about = if permission.tree.is_empty() {
                desk.say("summary.permission-site")
            } else {
                desk.tag_of(&permission.tree).to_owned()
            };
            vec![
                Cell::of(desk.words.label_of(&permission.kind)),
                Cell::of(about),
                Cell::of(state(desk, permission)),
            ]
        })
        .collect();
    Block::Table(Table {
        summary: desk.say("summary.permissions-table"),
        columns: vec![
            Column::of(desk.say("summary.permission"), 2.6),
            Column::of(desk.say("summary.permission-for"), 1.6),
            Column::of(desk.say("summary.permission-state"), 5.0),
        ],
        rows,
        rows_named: true,
    })
}

fn state(desk: &PaperDesk, permission: &Permission) -> Rich {
    let mut said = match (permission.answer, permission.on) {
        (None, _) => desk.say("summary.permission-not-asked"),
        (Some(answer), None) => desk.words.word_of(&answer),
        (Some(answer), Some(day)) => {
            let answer = desk.words.word_of(&answer);
            desk.words.say(
                "summary.permission-on",
                &[("answer", Said::Text(&answer)), ("day", Said::Day(day))],
            )
        }
    };
    if let Some(note) = &permission.note {
        said = desk.words.say(
            "summary.work-note",
            &[("work", Said::Text(&said)), ("note", Said::Text(note))],
        );
    }
    desk.alone(&said).into()
}
