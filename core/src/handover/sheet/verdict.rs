//! Verdict, stops, gaps and limits: the first things on a climb sheet.

use crate::draw::PointSymbol;
use crate::handover::paper::{Block, Callout, CalloutKind, Rich};
use crate::handover::paper_input::PaperDesk;
use crate::record::{ClimbNeed, Judgement, Reason, Verdict};
use crate::words::Said;

/// The verdict with its shape.
pub(in crate::handover) fn verdict(desk: &PaperDesk, judgement: &Judgement) -> Block {
    // A stop shows even where nobody would climb.
    if judgement.climb == ClimbNeed::NotNeeded && judgement.verdict != Verdict::Barred {
        return Block::Verdict {
            symbol: PointSymbol::TreePlain,
            words: desk.words.label_of(&judgement.climb),
        };
    }
    Block::Verdict {
        symbol: match judgement.verdict {
            Verdict::Barred => PointSymbol::TreeBarred,
            Verdict::Incomplete => PointSymbol::TreeIncomplete,
            Verdict::Refer => PointSymbol::TreeRefer,
            Verdict::Limited => PointSymbol::TreeLimited,
            Verdict::NoStop => PointSymbol::TreeNoStop,
        },
        words: desk.words.label_of(&judgement.verdict),
    }
}

/// Stops first, then what must be settled, limits, and what is still to check. `most_gaps` gaps are
/// printed, and how many more there are; stops and limits are never cut.
pub(in crate::handover) fn reasons(
    desk: &PaperDesk,
    judgement: &Judgement,
    most_gaps: usize,
) -> Vec<Block> {
    let mut blocks = Vec::new();
    if judgement.climb == ClimbNeed::NotNeeded && judgement.verdict == Verdict::Barred {
        blocks.push(Block::text(
            Rich::new().bold(desk.say("sheet.nobody-climbs")),
        ));
    }
    let mut stops = said(desk, &judgement.stops);
    for stop in said(desk, &desk.input.judgement.stops) {
        if !stops.contains(&stop) {
            stops.push(stop);
        }
    }
    push(
        &mut blocks,
        CalloutKind::Stop,
        desk.say("sheet.stops"),
        stops,
    );
    let mut refer = said(desk, &judgement.refer_caps);
    if judgement.verdict == Verdict::Refer && refer.is_empty() {
        refer.push(desk.say("sheet.refer-together").into());
    }
    push(
        &mut blocks,
        CalloutKind::Stop,
        desk.say("sheet.refer"),
        refer,
    );
    let mut limits = said(desk, &judgement.limit_caps);
    for limit in said(desk, &judgement.limits) {
        if !limits.contains(&limit) {
            limits.push(limit);
        }
    }
    push(
        &mut blocks,
        CalloutKind::Caution,
        desk.say(limits_heading(judgement.verdict)),
        limits,
    );
    let gaps = gaps(desk, judgement, most_gaps);
    push(&mut blocks, CalloutKind::Note, desk.say("sheet.gaps"), gaps);
    blocks
}

/// What the limits are to a climber who reads the verdict above them.
fn limits_heading(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::NoStop => "sheet.mind",
        Verdict::Limited => "sheet.limits",
        Verdict::Refer | Verdict::Incomplete | Verdict::Barred => "sheet.besides",
    }
}

/// What a person should know besides.
pub(in crate::handover) fn remarks(desk: &PaperDesk, judgement: &Judgement) -> Vec<Block> {
    let mut blocks = Vec::new();
    let remarks = said(desk, &judgement.remarks);
    push(
        &mut blocks,
        CalloutKind::Note,
        desk.say("sheet.remarks"),
        remarks,
    );
    blocks
}

fn gaps(desk: &PaperDesk, judgement: &Judgement, most: usize) -> Vec<Rich> {
    let mut gaps = said(desk, &judgement.gaps);
    for gap in said(desk, &desk.input.judgement.gaps) {
        if !gaps.contains(&gap) {
            gaps.push(gap);
        }
    }
    // A line that says how many more takes as much room as one more gap.
    if gaps.len() > most + 1 {
        let more = (gaps.len() - most) as i64;
        gaps.truncate(most);
        gaps.push(
            desk.words
                .say("sheet.more-gaps", &[("count", Said::Count(more))])
                .into(),
        );
    }
    gaps
}

fn said(desk: &PaperDesk, reasons: &[Reason]) -> Vec<Rich> {
    let mut said: Vec<Rich> = Vec::new();
    for words in desk.words.reasons(reasons) {
        let words = Rich::from(words);
        if !said.contains(&words) {
            said.push(words);
        }
    }
    said
}

fn push(blocks: &mut Vec<Block>, kind: CalloutKind, word: String, lines: Vec<Rich>) {
    if !lines.is_empty() {
        blocks.push(Block::Callout(Callout { kind, word, lines }));
    }
}
