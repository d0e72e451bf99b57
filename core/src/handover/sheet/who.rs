//! Who may climb this tree by this plan, and who counts as second.

use crate::handover::paper::{Block, Rich};
use crate::handover::paper_input::PaperDesk;
use crate::record::{ClimberAnswer, Judgement};
use crate::words::Said;

pub(in crate::handover) fn blocks(
    desk: &PaperDesk,
    judgement: &Judgement,
    with_reasons: bool,
) -> Vec<Block> {
    let climbers = &judgement.climbers;
    let mut blocks = vec![Block::heading(3, desk.say("sheet.who"))];
    let may = names(climbers, |climber| climber.may);
    let seconds = names(climbers, |climber| climber.may_rescue);
    let mut points: Vec<Rich> = Vec::new();
    if !may.is_empty() && may == seconds {
        points.push(line(desk, "sheet.who-climbs-and-seconds", &may));
        points.append(&mut reasons(desk, climbers, with_reasons));
        blocks.push(Block::points(points));
        return blocks;
    }
    points.push(if may.is_empty() {
        Rich::new().bold(desk.say("sheet.who-nobody"))
    } else {
        line(desk, "sheet.who-climbs", &may)
    });
    points.push(if seconds.is_empty() {
        Rich::new().bold(desk.say("sheet.who-no-second"))
    } else {
        line(desk, "sheet.who-seconds", &seconds)
    });
    points.append(&mut reasons(desk, climbers, with_reasons));
    blocks.push(Block::points(points));
    blocks
}

/// Why somebody may not climb: the first of their reasons.
fn reasons(desk: &PaperDesk, climbers: &[ClimberAnswer], wanted: bool) -> Vec<Rich> {
    climbers
        .iter()
        .filter(|climber| wanted && !climber.may)
        .filter_map(|climber| {
            let reason = desk.words.reasons(&climber.reasons).into_iter().next()?;
            let said = desk.words.say(
                "sheet.who-not",
                &[
                    ("name", Said::Text(&climber.name)),
                    ("reason", Said::Text(&reason)),
                ],
            );
            Some(said.into())
        })
        .collect()
}

fn names(climbers: &[ClimberAnswer], counts: impl Fn(&ClimberAnswer) -> bool) -> Vec<String> {
    climbers
        .iter()
        .filter(|climber| counts(climber))
        .map(|climber| climber.name.clone())
        .collect()
}

fn line(desk: &PaperDesk, key: &str, names: &[String]) -> Rich {
    let names = desk.listed(names);
    desk.words.say(key, &[("names", Said::Text(&names))]).into()
}
