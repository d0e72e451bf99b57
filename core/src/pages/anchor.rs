//! The page of an anchor: its readings, its load test, its margins.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{LineState, PageLine};
use super::offer::Offer;
use super::page::PageAddress;
use crate::record::{AnchorPoint, Id, Inspection, Judgement, Quantity, Site, Tree};
use crate::words::Said;

/// An anchor.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct AnchorPage {
    /// The anchor.
    pub id: Id,
    /// Its name and its tree.
    pub title: String,
    /// The page of its tree.
    pub tree: PageAddress,
    /// Its readings, and what is missing.
    pub lines: Vec<PageLine>,
    /// Its margins, where the judgement rests on this anchor.
    pub margins: Vec<PageLine>,
    /// What the judgement says about it.
    pub reasons: Vec<String>,
    /// What holds for every anchor.
    pub cautions: Vec<String>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// The page of an anchor; nothing for one that is not on the site.
pub fn anchor_page(desk: &PageDesk, site: &Site, id: &Id) -> Option<AnchorPage> {
    let (tree, look, anchor) = anchor_of(site, id)?;
    let (_, answer) = desk.tree(&tree.id)?;
    let name = desk.anchor_name(anchor);
    let judged = answer.anchor == *id;
    Some(AnchorPage {
        id: id.clone(),
        title: desk.words.say(
            "page.anchor-on",
            &[
                ("anchor", Said::Text(&name)),
                ("tag", Said::Text(&tree.tag)),
            ],
        ),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        lines: lines(desk, anchor),
        margins: if judged {
            margins(desk, answer)
        } else {
            Vec::new()
        },
        reasons: reasons(desk, answer, id),
        cautions: [
            "caution.anchor-scope",
            "caution.anchor-not",
            "caution.anchor-aloft",
        ]
        .map(|key| desk.say(key))
        .to_vec(),
        offers: offers(desk, site, look, anchor),
        headings: Vec::new(),
    })
}

/// The tree, the inspection and the anchor of this id.
pub fn anchor_of<'a>(
    site: &'a Site,
    id: &Id,
) -> Option<(&'a Tree, &'a Inspection, &'a AnchorPoint)> {
    site.trees.iter().find_map(|tree| {
        tree.inspections.iter().find_map(|look| {
            let anchor = look.anchors.iter().find(|anchor| anchor.id == *id)?;
            Some((tree, look, anchor))
        })
    })
}

fn lines(desk: &PageDesk, anchor: &AnchorPoint) -> Vec<PageLine> {
    let words = &desk.words;
    let number = |value: Option<f64>, quantity| value.map(|value| words.number(value, quantity));
    let height = anchor
        .height_m
        .map(|height_m| words.measure_with_se(height_m, anchor.height_se_m, Quantity::LengthM));
    let read = anchor.diameter_read.map(|read| words.word_of(&read));
    let diameter = number(anchor.diameter_cm, Quantity::LengthCm).map(|diameter| match read {
        Some(read) => format!("{diameter} · {read}"),
        None => diameter,
    });
    let test = anchor.load_test.as_ref().map(|test| {
        let outcome = words.word_of(&test.outcome);
        let mass = test.mass_kg.map(|kg| words.number(kg, Quantity::MassKg));
        let day = test.on.map(|day| words.day(day));
        let parts = [Some(outcome), mass, day];
        parts.into_iter().flatten().collect::<Vec<_>>().join(" · ")
    });
    let mut lines = vec![
        desk.line("anchor.height", "anchor.height.why", height),
        desk.line("anchor.diameter", "anchor.diameter_cm.why", diameter),
        desk.line(
            "anchor.parent_diameter",
            "anchor.parent_diameter.why",
            number(anchor.parent_diameter_cm, Quantity::LengthCm),
        ),
        desk.line(
            "anchor.from_union",
            "anchor.from_union_cm.why",
            number(anchor.from_union_cm, Quantity::LengthCm),
        ),
        desk.line(
            "anchor.limb_angle",
            "anchor.limb_angle_deg.why",
            number(anchor.limb_angle_deg, Quantity::AngleDeg),
        ),
        desk.line(
            "anchor.limb_bearing",
            "measure.bearing_deg.why",
            anchor.limb_bearing_deg.map(|bearing| words.side(bearing)),
        ),
        desk.line(
            "anchor.limb_length",
            "anchor.limb_length_m.why",
            number(anchor.limb_length_m, Quantity::LengthM),
        ),
        desk.line(
            "anchor.union",
            "anchor.union.why",
            anchor.union.map(|union| words.word_of(&union)),
        ),
        desk.line(
            "anchor.state",
            "anchor.state.why",
            anchor.state.map(|state| words.word_of(&state)),
        ),
        desk.line("load_test.outcome", "load_test.outcome.why", test),
    ];
    lines.extend(desk.note("anchor.note", anchor.note.as_ref()));
    lines
}

/// Margins with their interval, rounded down.
pub(super) fn margins(desk: &PageDesk, answer: &Judgement) -> Vec<PageLine> {
    answer
        .margins
        .iter()
        .map(|margin| PageLine {
            id: margin.part.clone(),
            label: desk.say(&margin.part),
            words: desk.words.say(
                "page.margin",
                &[
                    (
                        "central",
                        Said::Text(&desk.words.margin_down(margin.central)),
                    ),
                    ("low", Said::Text(&desk.words.margin_down(margin.low))),
                    ("high", Said::Text(&desk.words.margin_down(margin.high))),
                ],
            ),
            why: match margin.part.as_str() {
                "margin.section" | "margin.base" => desk.say("caution.decay-bending"),
                _ => String::new(),
            },
            state: LineState::Known,
        })
        .collect()
}

/// What the judgement says about this anchor.
fn reasons(desk: &PageDesk, answer: &Judgement, id: &Id) -> Vec<String> {
    let lists = [
        &answer.stops,
        &answer.gaps,
        &answer.refer_caps,
        &answer.limit_caps,
        &answer.limits,
        &answer.remarks,
    ];
    let mut said: Vec<String> = Vec::new();
    for reason in lists.into_iter().flatten().filter(|one| one.about == *id) {
        let words = desk.words.reason(reason);
        if !said.contains(&words) {
            said.push(words);
        }
    }
    said
}

fn offers(desk: &PageDesk, site: &Site, look: &Inspection, anchor: &AnchorPoint) -> Vec<Offer> {
    let id = &anchor.id;
    let plan = serde_json::json!({ "anchor": id });
    let mut offers = vec![
        desk.offer_on(CommandKind::ChangeAnchor, id, anchor),
        desk.offer_on(CommandKind::TestAnchor, id, anchor),
        desk.offer(CommandKind::PlanClimb, &look.id, Some(&plan)),
        desk.offer(CommandKind::RemoveAnchor, id, None),
    ];
    offers.extend(desk.undo_offers(&site.id));
    offers
}
