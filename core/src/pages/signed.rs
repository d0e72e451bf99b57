//! What a signature on a judgement is worth now: who signed, what it said, and what has changed
//! since.

use super::desk::PageDesk;
use crate::record::{Judgement, Moment, Reason, Verdict};
use crate::words::Said;

/// A signature on the judgement of a tree.
#[derive(Debug, Clone, PartialEq)]
pub struct SignedAnswer {
    /// Who signed, by name.
    pub by: String,
    /// When.
    pub at: Moment,
    /// What was signed; nothing where this version cannot read it.
    pub judgement: Option<Judgement>,
}

impl SignedAnswer {
    /// Whether this very judgement was signed.
    pub(super) fn is_of(&self, answer: &Judgement) -> bool {
        self.judgement.as_ref() == Some(answer)
    }
}

/// Who signed and when, and what has changed since, a sentence each.
pub(super) fn signed_words(
    desk: &PageDesk,
    signed: &SignedAnswer,
    answer: &Judgement,
) -> Vec<String> {
    let at = desk.words.moment(signed.at);
    let by = [
        ("by", Said::Text(signed.by.as_str())),
        ("at", Said::Text(at.as_str())),
    ];
    let mut said = vec![desk.words.say("page.signed-by", &by)];
    match &signed.judgement {
        None => said.push(desk.say("page.signed-unread")),
        Some(_) if signed.is_of(answer) => said.push(desk.say("page.signed-same")),
        Some(then) => {
            said.push(desk.say("page.signed-changed"));
            said.extend(changes(desk, then, answer));
        }
    }
    said
}

fn changes(desk: &PageDesk, then: &Judgement, now: &Judgement) -> Vec<String> {
    let mut said = Vec::new();
    if then.verdict != now.verdict {
        let verdict = |of: Verdict| desk.words.word_of(&of);
        let (then, now) = (verdict(then.verdict), verdict(now.verdict));
        let both = [
            ("then", Said::Text(then.as_str())),
            ("now", Said::Text(now.as_str())),
        ];
        said.push(desk.words.say("page.signed-verdict", &both));
    }
    if then.as_of != now.as_of {
        let day = [("day", Said::Day(then.as_of))];
        said.push(desk.words.say("page.signed-ended", &day));
    }
    let (before, after) = (holding(then), holding(now));
    let tell = |key: &str, reason: &Reason| {
        let what = desk.words.reason(reason);
        desk.words.say(key, &[("what", Said::Text(what.as_str()))])
    };
    let new = after.iter().filter(|one| !before.contains(one));
    said.extend(new.map(|one| tell("page.signed-new", one)));
    let gone = before.iter().filter(|one| !after.contains(one));
    said.extend(gone.map(|one| tell("page.signed-gone", one)));
    if said.is_empty() {
        said.push(desk.say("page.signed-values"));
    }
    said
}

/// What a verdict rests on.
fn holding(answer: &Judgement) -> Vec<&Reason> {
    [
        &answer.stops,
        &answer.gaps,
        &answer.refer_caps,
        &answer.limit_caps,
        &answer.limits,
    ]
    .into_iter()
    .flatten()
    .collect()
}
