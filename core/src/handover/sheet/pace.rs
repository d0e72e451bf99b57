//! Distances to pace from the stem, what lies inside them, trees to be kept apart, wires.

use std::collections::BTreeSet;

use crate::handover::paper::{Block, Rich};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::record::{Id, Judgement, WireAnswer, ZoneAnswer};
use crate::words::Said;

/// Wires farther from the crown than this are left to the plan, in metres (house).
const NEAR_WIRE_M: f64 = 20.0;

pub(in crate::handover) fn blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
) -> Vec<Block> {
    let mut blocks = vec![Block::heading(3, desk.say("sheet.pace"))];
    match seen.planned_zone() {
        Some(zone) => {
            blocks.push(distances(desk, zone));
            if let Some(inside) = inside(desk, zone) {
                blocks.push(Block::text(inside));
            }
        }
        None => {
            blocks.push(Block::text(desk.say("sheet.pace-none")));
        }
    }
    let apart = apart(desk, seen);
    if !apart.is_empty() {
        let trees = desk.listed(&apart);
        let said = desk
            .words
            .say("sheet.apart", &[("trees", Said::Text(&trees))]);
        blocks.push(Block::text(Rich::new().bold(said)));
    }
    // What bars or limits the climb stands at the top already.
    let told = |wire: &WireAnswer| {
        let mut above = judgement.stops.iter().chain(&judgement.limit_caps);
        above.any(|reason| reason.about == wire.line)
    };
    let wires = judgement.wires.iter();
    let near = wires.filter(|wire| is_near(wire) && !told(wire));
    for wire in near {
        let said = desk.words.reason(&wire.reason);
        let rich = Rich::new().bold(desk.say("sheet.wires")).plain(": ");
        blocks.push(Block::text(rich.plain(said)));
    }
    blocks
}

/// Whether a wire belongs on the sheet: an unknown distance always does.
pub(super) fn is_near(wire: &WireAnswer) -> bool {
    wire.distance_m.is_none_or(|m| m <= NEAR_WIRE_M)
}

/// Distances round up: nobody stands nearer than the rule says.
fn distances(desk: &PaperDesk, zone: &ZoneAnswer) -> Block {
    let mut facts = Vec::new();
    let mut fact = |key: &str, distance_m: f64| {
        let distance = Rich::new().bold(desk.words.distance_up(distance_m));
        facts.push((desk.say(key), distance));
    };
    fact("sheet.pace-everyone", zone.keep_out_m);
    if zone.keep_out_downhill_m > zone.keep_out_m {
        fact("sheet.pace-downhill", zone.keep_out_downhill_m);
    }
    if zone.keep_out_crew_m < zone.keep_out_m {
        fact("sheet.pace-crew", zone.keep_out_crew_m);
    }
    fact("sheet.pace-lands", zone.drop_radius_m);
    Block::Facts {
        facts,
        in_two: false,
    }
}

/// What lies inside the keep-out.
fn inside(desk: &PaperDesk, zone: &ZoneAnswer) -> Option<String> {
    let mut names: Vec<String> = Vec::new();
    for inside in &zone.inside {
        let name = desk.name_of(&inside.record);
        if !name.is_empty() && !names.contains(&name) {
            names.push(name);
        }
    }
    if names.is_empty() {
        return None;
    }
    let what = desk.listed(&names);
    Some(
        desk.words
            .say("sheet.pace-inside", &[("what", Said::Text(&what))]),
    )
}

/// The tags of the trees that may not be worked on together with this one.
fn apart(desk: &PaperDesk, seen: &TreeSeen) -> Vec<String> {
    let own = &seen.tree.id;
    let conflicts = desk.input.judgement.conflicts.iter();
    let others: BTreeSet<&Id> = conflicts
        .filter_map(|pair| match (&pair.tree, &pair.other) {
            (tree, other) if tree == own => Some(other),
            (tree, other) if other == own => Some(tree),
            _ => None,
        })
        .collect();
    desk.trees
        .iter()
        .filter(|other| others.contains(&other.tree.id))
        .map(|other| other.tree.tag.clone())
        .collect()
}
