//! What happens first if somebody is hurt.

use crate::handover::paper::{Block, Rich};
use crate::handover::paper_input::PaperDesk;

pub(in crate::handover) fn blocks(desk: &PaperDesk) -> Vec<Block> {
    let mut blocks = vec![Block::heading(3, desk.say("sheet.rescue"))];
    let Some(plan) = &desk.input.file.site.rescue else {
        blocks.push(Block::text(Rich::new().bold(desk.say("sheet.rescue-none"))));
        return blocks;
    };
    let aider = plan.first_aider.as_ref().filter(|id| !id.is_empty());
    let entries = [
        ("sheet.meeting-point", plan.meeting_point.clone()),
        ("sheet.grid-reference", plan.grid_reference.clone()),
        (
            "sheet.signal",
            plan.signal.map(|signal| desk.words.word_of(&signal)),
        ),
        ("sheet.first-aider", aider.map(|id| desk.person(id))),
        ("sheet.casualty-unit", plan.casualty_unit.clone()),
    ];
    let facts = entries
        .into_iter()
        .map(|(key, value)| {
            // What was left out stays visible: a gap is never a pass.
            let value = value.unwrap_or_else(|| desk.say("sheet.rescue-not-noted"));
            (desk.say(key), Rich::from(value))
        })
        .collect();
    blocks.push(Block::Facts {
        facts,
        in_two: false,
    });
    blocks
}
