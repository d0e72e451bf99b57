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
    if with_reasons {
        for climber in climbers.iter().filter(|climber| !climber.may) {
            let Some(reason) = climber.reasons.first() else {
                continue;
            };
            let reason = desk.words.reason(reason);
            let said = desk.words.say(
                "sheet.who-not",
                &[
                    ("name", Said::Text(&climber.name)),
                    ("reason", Said::Text(&reason)),
                ],
            );
            points.push(said.into());
        }
    }
    blocks.push(Block::points(points));
    blocks
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
