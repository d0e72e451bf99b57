//! Anchor, rope and the side of ascent.

use crate::handover::paper::{Block, Callout, CalloutKind, Rich};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::record::{AnchorPoint, Judgement, LoadTestOutcome, Quantity};
use crate::words::Said;

pub(in crate::handover) fn blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
) -> Vec<Block> {
    let mut blocks = vec![Block::heading(3, desk.say("sheet.anchor"))];
    let anchor = anchor_of(seen, judgement);
    let mut looks = seen.looks.iter();
    let plan = looks.find_map(|look| look.plans.iter().find(|plan| plan.id == judgement.plan));
    let Some(anchor) = anchor else {
        blocks.push(Block::text(Rich::new().bold(desk.say("sheet.anchor-none"))));
        return blocks;
    };
    let mut facts = Vec::new();
    let mut fact = |key: &str, value: Rich| facts.push((desk.say(key), value));
    fact("sheet.anchor-place", place(desk, anchor).into());
    if let Some(rope) = &judgement.rope {
        let length = desk.words.distance_up(rope.length_m);
        let key = if rope.stopper_needed {
            "sheet.rope-stopper"
        } else {
            "sheet.rope-length"
        };
        fact("sheet.system", desk.words.word_of(&rope.system).into());
        let said = desk.words.say(key, &[("length", Said::Text(&length))]);
        fact("sheet.rope", Rich::new().bold(said));
        let throw = desk.words.distance_up(rope.throw_m);
        let said = desk
            .words
            .say("sheet.throw-to", &[("height", Said::Text(&throw))]);
        fact("sheet.throw", said.into());
    } else if let Some(plan) = plan {
        fact("sheet.system", desk.words.word_of(&plan.system).into());
    }
    if let Some(side) = plan.and_then(|plan| plan.ascent_side_deg) {
        let side = desk.words.side(side);
        let said = desk
            .words
            .say("sheet.ascent-side", &[("side", Said::Text(&side))]);
        fact("sheet.ascent", said.into());
    }
    if let Some(test) = &anchor.load_test {
        let said = match test.outcome {
            LoadTestOutcome::Held => Rich::from(desk.say("sheet.load-test-held")),
            _ => Rich::new().bold(desk.say("sheet.load-test-failed")),
        };
        fact("sheet.load-test", said);
    }
    blocks.push(Block::Facts {
        facts,
        in_two: false,
    });
    blocks
}

/// The anchor that was judged.
fn anchor_of<'a>(seen: &TreeSeen<'a>, judgement: &Judgement) -> Option<&'a AnchorPoint> {
    let mut anchors = seen.looks.iter().copied().flat_map(|look| &look.anchors);
    anchors.find(|anchor| anchor.id == judgement.anchor)
}

/// What comes before leaving the ground: the load test first where it was not done.
pub(in crate::handover) fn before(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
) -> Block {
    let tested = anchor_of(seen, judgement).is_some_and(|anchor| anchor.load_test.is_some());
    let mut lines: Vec<Rich> = Vec::new();
    if !tested {
        lines.push(Rich::new().bold(desk.say("sheet.before-load-test")));
    }
    lines.push(desk.say("sheet.before-look-again").into());
    Block::Callout(Callout {
        kind: CalloutKind::Note,
        word: desk.say("sheet.before"),
        lines,
    })
}

fn place(desk: &PaperDesk, anchor: &AnchorPoint) -> String {
    let words = desk.words;
    let name = anchor.name.clone();
    let name = name.unwrap_or_else(|| desk.say("sheet.anchor-nameless"));
    let Some(height_m) = anchor.height_m else {
        return name;
    };
    let height = words.number(height_m, Quantity::LengthM);
    let args = [("name", Said::Text(&name)), ("height", Said::Text(&height))];
    match anchor.limb_bearing_deg {
        Some(bearing_deg) => {
            let side = words.side(bearing_deg);
            let [name, height] = args;
            words.say(
                "sheet.anchor-at-side",
                &[name, height, ("side", Said::Text(&side))],
            )
        }
        None => words.say("sheet.anchor-at", &args),
    }
}
