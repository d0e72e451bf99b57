//! Why: the reasons of every tree, and what to do about them.

use bolewalk_core::record::{
    ClimbNeed, Judgement, OtherAccess, Reason, SiteFile, SiteJudgement, Tree, Verdict,
};
use bolewalk_core::words::{Said, Words};

use super::names;
use crate::lines::Lines;

/// Gaps that are told for one tree; the rest is counted.
const MOST_GAPS: usize = 4;

pub fn told(file: &SiteFile, judgement: &SiteJudgement, words: &Words, lines: &mut Lines) {
    lines.heading(&words.say("desk.why", &[]));
    for judged in &judgement.trees {
        tree(file, judged, words, lines);
    }
}

fn tree(file: &SiteFile, judged: &Judgement, words: &Words, lines: &mut Lines) {
    let species =
        names::tree(file, &judged.tree).map_or(String::new(), |tree| names::species(tree, words));
    let mut answer = answer(judged, words);
    let reached = names::tree(file, &judged.tree).and_then(|tree| otherwise(tree, words));
    if let Some(reached) = reached {
        answer = format!("{answer} ({reached})");
    }
    let head = words.say(
        "desk.why-tree",
        &[
            ("tag", Said::Text(&judged.tag)),
            ("species", Said::Text(&species)),
            ("answer", Said::Text(&answer)),
        ],
    );
    lines.gap();
    lines.hung("  ", &head);
    for (lead, reasons) in parts(judged) {
        for said in once(words.reasons(&reasons)) {
            lines.hung(lead, &said);
        }
    }
    if judged.climb == ClimbNeed::NotNeeded {
        return;
    }
    if let Some(score) = judged
        .score
        .as_ref()
        .filter(|_| judged.verdict == Verdict::Refer && judged.refer_caps.is_empty())
    {
        let low = [("low", Said::Count(i64::from(score.low)))];
        lines.hung("    ! ", &words.say("desk.refer-by-score", &low));
    }
    let gaps = once(words.reasons(&judged.gaps));
    let left = gaps.len().saturating_sub(MOST_GAPS);
    // A line that says "and one more" takes the room of that one.
    let told = if left <= 1 { gaps.len() } else { MOST_GAPS };
    for gap in gaps.iter().take(told) {
        lines.hung("    ? ", gap);
    }
    if told < gaps.len() {
        let more = [
            ("count", Said::Count(left as i64)),
            ("tag", Said::Text(&judged.tag)),
        ];
        lines.hung("    ? ", &words.say("desk.why-more", &more));
    }
    if let Some(next) = &judged.next_measurement {
        lines.hung("    > ", &words.reason(&next.what));
    }
}

/// How else the work is done, as far as anybody looked.
fn otherwise(tree: &Tree, words: &Words) -> Option<String> {
    let ways = tree.other_access.iter().flatten();
    let ways: Vec<String> = ways
        .filter(|way| **way != OtherAccess::NoOther)
        .map(|way| words.word_of(way))
        .collect();
    (!ways.is_empty()).then(|| ways.join(", "))
}

/// The verdict; that nobody needs to climb stands before it.
pub fn answer(judged: &Judgement, words: &Words) -> String {
    match (judged.climb, judged.verdict) {
        (ClimbNeed::NotNeeded, Verdict::Barred) => format!(
            "{}; {}",
            words.word_of(&judged.verdict),
            words.say("desk.not-needed", &[])
        ),
        (ClimbNeed::NotNeeded, _) => words.word_of(&judged.climb),
        _ => words.word_of(&judged.verdict),
    }
}

fn parts(judged: &Judgement) -> [(&'static str, Vec<Reason>); 3] {
    let limits = if judged.climb == ClimbNeed::NotNeeded {
        Vec::new()
    } else {
        judged
            .limit_caps
            .iter()
            .chain(&judged.limits)
            .cloned()
            .collect()
    };
    [
        ("    x ", judged.stops.clone()),
        ("    ! ", judged.refer_caps.clone()),
        ("    - ", limits),
    ]
}

/// The same sentence is told once.
fn once(said: Vec<String>) -> Vec<String> {
    let mut kept: Vec<String> = Vec::new();
    for sentence in said {
        if !kept.contains(&sentence) {
            kept.push(sentence);
        }
    }
    kept
}
