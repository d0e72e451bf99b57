//! One record a tree: facts, findings on the side view, risk, work, reach, what was not seen, next
//! look. Neither score nor verdict on a climb stands in it: a client would misread both.

use super::findings;
use super::looked::{level_words, unseen_of};
use crate::handover::paper::{Block, Callout, CalloutKind, Cell, Column, Photo, Rich, Table};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::handover::side_view;
use crate::record::{Day, Id, Quantity, RiskEntry};
use crate::words::Said;

/// So many findings stand beside the side view; more of them below it.
const FINDINGS_BESIDE: usize = 3;

/// Photos of one tree, ready to be embedded.
pub(in crate::handover) struct TreePhotos {
    pub ready: Vec<Photo>,
    /// Files that could not be read.
    pub missing: Vec<String>,
}

pub(in crate::handover) fn heading(desk: &PaperDesk) -> Vec<Block> {
    vec![Block::Heading {
        level: 1,
        words: desk.say("summary.records"),
        key: "records".into(),
    }]
}

/// What was measured and found, with drawing and photos.
pub(in crate::handover) fn seen_blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    photos: TreePhotos,
    width: crate::draw::TextWidth,
) -> Vec<Block> {
    let mut blocks = vec![Block::Heading {
        level: 2,
        words: desk.tree_name(seen),
        key: seen.key.clone(),
    }];
    if seen.looks.is_empty() {
        blocks.push(Block::Callout(Callout {
            kind: CalloutKind::Caution,
            word: desk.say("paper.caution"),
            lines: vec![desk.say("summary.not-looked-at").into()],
        }));
        return blocks;
    }
    let facts = Block::Facts {
        facts: facts(desk, seen),
        in_two: false,
    };
    let mut found = findings::list(desk, seen);
    match side_view::figure(desk, seen, width) {
        Some(view) => {
            let mut left = vec![facts];
            if seen.findings().len() <= FINDINGS_BESIDE {
                left.append(&mut found);
            }
            blocks.push(Block::Beside {
                left,
                right: vec![Block::Drawn(view)],
                left_share: 0.52,
            });
        }
        None => blocks.push(facts),
    }
    blocks.append(&mut found);
    blocks.append(&mut findings::photos(desk, photos));
    blocks
}

/// Risk, work, reach, what was not seen, next look.
pub(in crate::handover) fn last_blocks(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Block> {
    let mut blocks = risk(desk, seen);
    blocks.append(&mut closing(desk, seen));
    blocks
}

fn facts(desk: &PaperDesk, seen: &TreeSeen) -> Vec<(String, Rich)> {
    let not_measured = || desk.alone(&desk.say("summary.not-measured"));
    let mut facts = Vec::new();
    let mut fact = |key: &str, value: String| facts.push((desk.say(key), Rich::from(value)));
    fact(
        "summary.height",
        desk.height(seen).unwrap_or_else(not_measured),
    );
    fact(
        "summary.girth",
        desk.girth(seen).unwrap_or_else(not_measured),
    );
    fact(
        "summary.spread",
        spread(desk, seen).unwrap_or_else(not_measured),
    );
    fact(
        "summary.lean",
        lean(desk, seen).unwrap_or_else(not_measured),
    );
    fact("summary.life", desk.alone(&life(desk, seen)));
    fact("summary.seen-on", seen_on(desk, seen));
    fact("summary.level", level_words(desk, seen.level()));
    facts
}

fn spread(desk: &PaperDesk, seen: &TreeSeen) -> Option<String> {
    let crown = seen.newest(|look| look.crown.as_ref())?;
    let radius = desk.words.number(crown.radius_m, Quantity::LengthM);
    Some(
        desk.words
            .say("summary.spread-value", &[("radius", Said::Text(&radius))]),
    )
}

fn lean(desk: &PaperDesk, seen: &TreeSeen) -> Option<String> {
    let lean = seen.newest(|look| look.lean.as_ref())?;
    if lean.lean_deg == 0.0 {
        return Some(desk.say("summary.lean-upright"));
    }
    let said = desk.words.number(lean.lean_deg, Quantity::AngleDeg);
    Some(match lean.toward_deg {
        Some(toward_deg) => desk.words.say(
            "summary.lean-toward",
            &[
                ("lean", Said::Text(&said)),
                ("side", Said::Text(&desk.words.side(toward_deg))),
            ],
        ),
        None => said,
    })
}

fn life(desk: &PaperDesk, seen: &TreeSeen) -> String {
    let mut said = match seen.newest(|look| look.life) {
        Some(life) => desk.words.word_of(&life),
        None => desk.say("summary.unknown"),
    };
    if let Some(share) = seen.newest(|look| look.dieback_pct) {
        let dieback = desk.words.say(
            "summary.dieback",
            &[("share", Said::Number(share, Quantity::Percent))],
        );
        said = desk.listed(&[said, dieback]);
    }
    said
}

fn seen_on(desk: &PaperDesk, seen: &TreeSeen) -> String {
    let Some(look) = seen.main_look() else {
        return desk.say("summary.unknown");
    };
    let day = match desk.visit(&look.visit) {
        Some(visit) => desk.words.day(visit.day),
        None => desk.say("summary.unknown"),
    };
    if look.by.is_empty() {
        return day;
    }
    let who = desk.person(&look.by);
    desk.words.say(
        "summary.seen-on-by",
        &[("day", Said::Text(&day)), ("who", Said::Text(&who))],
    )
}

/// Risk per target as a named assessor entered it; every other target is *not assessed*.
fn risk(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Block> {
    let entries: Vec<&RiskEntry> = seen.looks.iter().flat_map(|look| &look.risks).collect();
    if entries.is_empty() {
        return Vec::new();
    }
    let mut blocks = vec![Block::heading(3, desk.say("summary.risk"))];
    let left_out = left_out(desk, seen, &entries);
    blocks.push(Block::Table(Table {
        summary: desk.say("summary.risk-table"),
        columns: vec![
            Column::of(desk.say("summary.risk-target"), 1.7),
            Column::of(desk.say("summary.risk-part"), 1.9),
            Column::of(desk.say("summary.risk-likelihood"), 1.8),
            Column::of(desk.say("summary.risk-consequences"), 1.6),
            Column::of(desk.say("summary.risk-rating"), 1.2),
            Column::of(desk.say("summary.risk-assessor"), 2.6),
        ],
        rows: entries
            .iter()
            .map(|entry| risk_row(desk, seen, entry))
            .collect(),
        rows_named: true,
    }));
    if !left_out.is_empty() {
        blocks.push(Block::small(not_assessed(desk, &left_out)));
    }
    blocks
}

/// The targets inside the zone that nobody assessed.
fn left_out(desk: &PaperDesk, seen: &TreeSeen, entries: &[&RiskEntry]) -> Vec<String> {
    near(desk, seen)
        .into_iter()
        .filter(|target| entries.iter().all(|entry| entry.target != *target))
        .map(|target| desk.name_of(&target))
        .collect()
}

/// That nobody assessed any risk: a line among the last facts.
fn no_risk(desk: &PaperDesk, seen: &TreeSeen) -> Option<(String, Rich)> {
    let mut looks = seen.looks.iter();
    if looks.any(|look| !look.risks.is_empty()) {
        return None;
    }
    let left_out = left_out(desk, seen, &[]);
    let said = if left_out.is_empty() {
        desk.say("summary.risk-not-assessed")
    } else {
        not_assessed(desk, &left_out)
    };
    Some((desk.say("summary.risk"), said.into()))
}

fn not_assessed(desk: &PaperDesk, targets: &[String]) -> String {
    let targets = desk.listed(targets);
    desk.words.say(
        "summary.risk-targets-not-assessed",
        &[("targets", Said::Text(&targets))],
    )
}

/// The targets inside the zone of the planned way.
fn near(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Id> {
    let inside = seen
        .planned_zone()
        .filter(|_| !seen.tree.work_is_done())
        .map(|zone| &zone.inside);
    let mut targets: Vec<Id> = inside
        .into_iter()
        .flatten()
        .map(|inside| inside.record.clone())
        .filter(|record| desk.target(record).is_some())
        .collect();
    targets.sort();
    targets.dedup();
    targets
}

fn risk_row(desk: &PaperDesk, seen: &TreeSeen, entry: &RiskEntry) -> Vec<Cell> {
    let words = desk.words;
    let answers = seen.judgement.map(|judgement| &judgement.risks);
    let answer = answers
        .into_iter()
        .flatten()
        .find(|answer| answer.entry == entry.id && answer.target == entry.target);
    let likelihood = words.say(
        "summary.risk-likelihood-value",
        &[
            ("failure", Said::Text(&words.word_of(&entry.failure))),
            ("impact", Said::Text(&words.word_of(&entry.impact))),
        ],
    );
    let level = format!("risk.level-{}", entry.level);
    let assessor = words.say(
        "summary.risk-assessor-value",
        &[
            ("assessor", Said::Text(&entry.assessor)),
            ("level", Said::Term(&level)),
            (
                "months",
                Said::Number(entry.time_frame_months, Quantity::DurationMonths),
            ),
        ],
    );
    let rating = answer.map_or(Rich::new(), |answer| {
        Rich::new().bold(words.label_of(&answer.rating))
    });
    vec![
        Cell::of(desk.name_of(&entry.target)),
        Cell::of(desk.alone(entry.part.as_deref().unwrap_or_default())),
        Cell::of(desk.alone(&likelihood)),
        Cell::of(words.label_of(&entry.consequences)),
        Cell::of(rating),
        Cell::of(assessor),
    ]
}

/// Work, reach, what was not seen, next look.
fn closing(desk: &PaperDesk, seen: &TreeSeen) -> Vec<Block> {
    let work = desk.work_lines(seen);
    let work = if work.is_empty() {
        desk.alone(&desk.say("summary.no-work"))
    } else {
        work.join("\n")
    };
    let next: Option<Day> = seen
        .newest(|look| look.next_look)
        .or_else(|| seen.judgement.and_then(|judgement| judgement.next_look));
    let next = match next {
        Some(day) => desk.words.day(day),
        None => desk.alone(&desk.say("summary.next-look-open")),
    };
    let mut facts: Vec<(String, Rich)> = no_risk(desk, seen).into_iter().collect();
    facts.push((desk.say("summary.record-work"), Rich::from(work)));
    facts.push((desk.say("summary.reach"), desk.reach(seen).into()));
    if !seen.looks.is_empty() {
        facts.push((
            desk.say("summary.record-unseen"),
            unseen_of(desk, seen).into(),
        ));
    }
    facts.push((desk.say("summary.next-look"), next.into()));
    vec![Block::Together(vec![
        Block::Space(4.0),
        Block::Facts {
            facts,
            in_two: false,
        },
    ])]
}
