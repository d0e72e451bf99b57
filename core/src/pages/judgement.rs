//! The page of a judgement: the verdict first, its reasons, then the number, small, and the working.

use super::anchor::margins;
use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{LineState, PageLine, PageRecord};
use super::next_measurement::next_measurement;
use super::offer::Offer;
use super::page::PageAddress;
use super::signed::{SignedAnswer, signed_words};
use super::site::verdict_words;
use super::zones::{ZoneOfTree, zones_of};
use crate::judge::rules::Rule;
use crate::record::{ClimbNeed, Id, Judgement, Quantity, Score, Site, Tree, Verdict};
use crate::words::Said;

/// A judgement.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct JudgementPage {
    /// The tree.
    pub id: Id,
    /// The tree's tag and species.
    pub title: String,
    /// The page of the tree.
    pub tree: PageAddress,
    /// What a person has to be told first.
    pub notices: Vec<String>,
    /// The verdict.
    pub verdict: Verdict,
    /// The verdict in words.
    pub verdict_words: String,
    /// Whether anybody has to climb.
    pub climb: ClimbNeed,
    /// The day it holds for, in words.
    pub day: String,
    /// What bars climbing, and who may lift it.
    pub stops: Vec<String>,
    /// What is still to check.
    pub gaps: Vec<String>,
    /// What asks for another way or a second opinion.
    pub refer_caps: Vec<String>,
    /// Within which limits.
    pub limits: Vec<String>,
    /// What a person should know besides.
    pub remarks: Vec<String>,
    /// Who may climb, and why not.
    pub climbers: Vec<PageLine>,
    /// Rope, throw, wires, when to look again.
    pub lines: Vec<PageLine>,
    /// Drop zone and keep-out, a record a way of working; the planned way first.
    pub zones: Vec<ZoneOfTree>,
    /// The score with its interval, where nothing is missing for it; shown small.
    pub score: Option<ScoreOfTree>,
    /// The margins of the parts that carry.
    pub margins: Vec<PageLine>,
    /// The one measurement that would narrow the answer most, with the offer that takes it; nothing
    /// where none would.
    pub next_measurement: Option<PageRecord>,
    /// Who signed last and when, and what has changed since; empty while nobody signed.
    pub signed: Vec<String>,
    /// The working, line by line, for a person with a calculator.
    pub working: Vec<WorkingOfTree>,
    /// What is always said.
    pub cautions: Vec<String>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// The score.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ScoreOfTree {
    /// Points with their interval, in words.
    pub words: String,
    /// What the points and the interval are, and what they are not.
    pub about: Vec<String>,
    /// Points at central values.
    pub points: u32,
    /// Low end of the interval.
    pub low: u32,
    /// High end of the interval.
    pub high: u32,
    /// How many points were lost.
    pub lost: String,
    /// What took points, and how many.
    pub shares: Vec<PageLine>,
}

/// One line of the working.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct WorkingOfTree {
    /// What is worked out.
    pub what: String,
    /// The formula, in plain signs.
    pub formula: String,
    /// The inputs with their values.
    pub inputs: String,
    /// The result with its error.
    pub result: String,
    /// The source.
    pub source: String,
}

/// The page of a judgement.
pub fn judgement_page(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    answer: &Judgement,
    signed: Option<&SignedAnswer>,
) -> JudgementPage {
    let words = &desk.words;
    let mut limits = words.reasons(&answer.limit_caps);
    for limit in words.reasons(&answer.limits) {
        if !limits.contains(&limit) {
            limits.push(limit);
        }
    }
    let species = desk.species(tree.species.as_deref());
    let title = [
        ("tag", Said::Text(&tree.tag)),
        ("species", Said::Text(&species)),
    ];
    JudgementPage {
        id: tree.id.clone(),
        title: words.say("summary.tree-name", &title),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        notices: desk.notices.clone(),
        verdict: answer.verdict,
        verdict_words: verdict_words(desk, answer),
        climb: answer.climb,
        day: words.day(answer.as_of),
        stops: words.reasons(&answer.stops),
        gaps: words.reasons(&answer.gaps),
        refer_caps: words.reasons(&answer.refer_caps),
        limits,
        remarks: words.reasons(&answer.remarks),
        climbers: climbers(desk, answer),
        lines: lines(desk, answer),
        zones: zones_of(desk, answer),
        score: answer
            .score
            .as_ref()
            .map(|score| score_of(desk, answer, score)),
        margins: margins(desk, answer),
        next_measurement: next_measurement(desk, site, tree, answer),
        signed: signed.map_or_else(Vec::new, |signed| signed_words(desk, signed, answer)),
        working: working(desk, answer),
        cautions: [
            "caution.sheet-aid",
            "caution.sheet-refuse",
            "caution.sheet-decide",
            "caution.decay-bending",
            "sheet.caution-ends",
        ]
        .map(|key| desk.say(key))
        .to_vec(),
        offers: offers(desk, site, answer, signed),
        headings: Vec::new(),
    }
}

fn climbers(desk: &PageDesk, answer: &Judgement) -> Vec<PageLine> {
    answer
        .climbers
        .iter()
        .map(|climber| {
            let key = match (climber.may, climber.may_rescue) {
                (true, true) => "page.may-climb-and-rescue",
                (true, false) => "page.may-climb",
                (false, true) => "page.may-rescue",
                (false, false) => "page.may-not",
            };
            PageLine {
                id: climber.person.0.clone(),
                label: climber.name.clone(),
                words: desk.say(key),
                why: desk.words.reasons(&climber.reasons).join("\n"),
                state: if climber.may {
                    LineState::Known
                } else {
                    LineState::Missing
                },
            }
        })
        .collect()
}

fn lines(desk: &PageDesk, answer: &Judgement) -> Vec<PageLine> {
    let words = &desk.words;
    let mut lines = Vec::new();
    if let Some(rope) = &answer.rope {
        let length = words.distance_up(rope.length_m);
        let key = if rope.stopper_needed {
            "sheet.rope-stopper"
        } else {
            "sheet.rope-length"
        };
        let said = words.say(key, &[("length", Said::Text(&length))]);
        lines.push(PageLine::known(
            "judgement.rope",
            desk.say("sheet.rope"),
            said,
        ));
        let throw = words.distance_up(rope.throw_m);
        let said = words.say("sheet.throw-to", &[("height", Said::Text(&throw))]);
        lines.push(PageLine::known(
            "judgement.throw",
            desk.say("sheet.throw"),
            said,
        ));
    }
    for wire in &answer.wires {
        lines.push(PageLine {
            id: wire.line.0.clone(),
            label: desk.say("sheet.wires"),
            words: words.reason(&wire.reason),
            why: wire.source.clone(),
            state: match wire.distance_m {
                Some(_) => LineState::Known,
                None => LineState::Missing,
            },
        });
    }
    let label = desk.say("summary.next-look");
    lines.push(match answer.next_look {
        Some(day) => PageLine::known("judgement.next_look", label, words.day(day)),
        None => {
            let open = desk.say("summary.next-look-open");
            PageLine::missing("judgement.next_look", label, open, String::new())
        }
    });
    lines
}

fn score_of(desk: &PageDesk, answer: &Judgement, score: &Score) -> ScoreOfTree {
    let points = |points: u32| desk.words.number(points.into(), Quantity::Points);
    ScoreOfTree {
        words: score_words(desk, score),
        about: vec![
            interval_words(desk, answer, score),
            desk.say("page.score-what"),
        ],
        lost: desk.words.say(
            "page.points-lost",
            &[("points", Said::Text(&points(100 - score.points.min(100))))],
        ),
        points: score.points,
        low: score.low,
        high: score.high,
        shares: score
            .shares
            .iter()
            .map(|share| PageLine {
                id: share.cause.code.clone(),
                label: desk.words.reason(&share.cause),
                words: points(share.points),
                why: String::new(),
                state: LineState::Known,
            })
            .collect(),
    }
}

/// Points with their interval: `53 of 100, from 43 to 63`.
pub(super) fn score_words(desk: &PageDesk, score: &Score) -> String {
    let key = if score.low == score.high {
        "page.score-one"
    } else {
        "page.score"
    };
    let said = [
        ("points", Said::Count(score.points.into())),
        ("low", Said::Count(score.low.into())),
        ("high", Said::Count(score.high.into())),
    ];
    desk.words.say(key, &said)
}

/// What the interval is; where it has no width, why.
fn interval_words(desk: &PageDesk, answer: &Judgement, score: &Score) -> String {
    if score.low < score.high {
        return desk.say("page.score-range");
    }
    let full = desk.rules.number(Rule::MarginFullAt);
    let carries = |part: &str| matches!(part, "margin.anchor" | "margin.section" | "margin.base");
    let mut margins = answer.margins.iter().filter(|one| carries(&one.part));
    // Beyond the full margin more strength gives no more points.
    if margins.all(|one| one.low >= full) {
        desk.say("page.score-one-value-full")
    } else {
        desk.say("page.score-one-value")
    }
}

fn working(desk: &PageDesk, answer: &Judgement) -> Vec<WorkingOfTree> {
    answer
        .working
        .iter()
        .map(|line| WorkingOfTree {
            what: desk.say(&line.what),
            formula: line.formula.clone(),
            inputs: line
                .inputs
                .iter()
                .map(|input| format!("{} = {}", input.name, desk.words.arg_value(&input.value)))
                .collect::<Vec<_>>()
                .join(", "),
            result: desk
                .words
                .measure_with_se(line.value, line.se, line.quantity),
            source: line.source.clone(),
        })
        .collect()
}

fn offers(
    desk: &PageDesk,
    site: &Site,
    answer: &Judgement,
    signed: Option<&SignedAnswer>,
) -> Vec<Offer> {
    let sign = desk.offer(CommandKind::SignJudgement, &answer.tree, None);
    let nothing = answer.inspection.is_empty();
    let sign = desk.unless(sign, nothing, "fault.nothing-to-sign");
    let sign = desk.unless(sign, desk.holder_name().is_none(), "fault.nobody-signs");
    let is_signed = signed.is_some_and(|signed| signed.is_of(answer));
    let mut offers = vec![desk.unless(sign, is_signed, "fault.signed-already")];
    offers.extend(desk.undo_offers(&site.id));
    offers
}
