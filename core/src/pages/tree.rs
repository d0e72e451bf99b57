//! The page of a tree: what is known, what is missing and why it matters, and the inspection of
//! the day.

use super::command_kind::CommandKind;
use super::compare::days_compared;
use super::desk::PageDesk;
use super::gaps::{PageGap, tree_gaps};
use super::headings::PageHeading;
use super::line::{PageLine, PagePhoto, PageRecord};
use super::looks::{Looks, day_of};
use super::offer::Offer;
use super::page::PageAddress;
use super::site::{first_reason, verdict_words};
use super::tree_lines::tree_lines;
use super::tree_offers::{doors, tree_offers, ways_of_working};
use super::tree_records::{
    anchor_records, finding_records, photo_records, plan_records, risk_records, section_records,
    wire_records, work_records,
};
use super::walk::{PartOfWalk, asked_again, walk_round};
use crate::record::{ClimbNeed, Id, Judgement, Site, Tree, Verdict};
use crate::words::Said;

/// A tree.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct TreePage {
    /// The tree.
    pub id: Id,
    /// The site.
    pub site: Id,
    /// The page of the site.
    pub site_page: PageAddress,
    /// Tag and species.
    pub title: String,
    /// What a person has to be told first.
    pub notices: Vec<String>,
    /// The verdict of the day.
    pub verdict: Verdict,
    /// The verdict in words.
    pub verdict_words: String,
    /// Whether anybody has to climb.
    pub climb: ClimbNeed,
    /// The first reason for the verdict.
    pub reason: String,
    /// What is still to check, in the order to be checked.
    pub gaps: Vec<PageGap>,
    /// The page of the judgement.
    pub judgement: PageAddress,
    /// The page for the climb and for afterwards.
    pub aloft: PageAddress,
    /// The page that compares with the last visit; nothing before there are two.
    pub compare: Option<PageAddress>,
    /// The inspection of the day; empty while none was begun.
    pub inspection: Id,
    /// The ways in: a stop on sight, triage, the full check.
    pub doors: Vec<Offer>,
    /// The ways of working, a tap each.
    pub ways_of_working: Vec<Offer>,
    /// What is asked when the same tree is climbed again, a tap each; empty where no earlier full
    /// check stands.
    pub again: Vec<PartOfWalk>,
    /// What is known of the tree, and what is missing.
    pub lines: Vec<PageLine>,
    /// The walk-round, in its order, without the parts that are asked again.
    pub walk_round: Vec<PartOfWalk>,
    /// The distances to wires, measured on site.
    pub wires: Vec<PageRecord>,
    /// The findings.
    pub findings: Vec<PageRecord>,
    /// The stem sections, each with its readings.
    pub sections: Vec<PageRecord>,
    /// The anchors.
    pub anchors: Vec<PageRecord>,
    /// The climb plans.
    pub plans: Vec<PageRecord>,
    /// The photos.
    pub photos: Vec<PagePhoto>,
    /// The work wanted.
    pub work: Vec<PageRecord>,
    /// The notes: the tree's own, then those of its looks, the newest first.
    pub notes: Vec<PageLine>,
    /// The risk ratings entered.
    pub risks: Vec<PageRecord>,
    /// Every look at the tree, the newest first.
    pub history: Vec<PageRecord>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// The page of a tree.
pub fn tree_page(desk: &PageDesk, site: &Site, tree: &Tree, answer: &Judgement) -> TreePage {
    let looks = Looks::of(tree, site, desk.today, &desk.rules);
    let again = asked_again(desk, tree, &looks);
    let mut walk_round = walk_round(desk, &looks);
    // A part is asked in one place.
    walk_round.retain(|at| again.iter().all(|asked| asked.part != at.part));
    let species = desk.species(tree.species.as_deref());
    TreePage {
        id: tree.id.clone(),
        site: site.id.clone(),
        site_page: PageAddress::site(&site.id),
        title: desk.words.say(
            "summary.tree-name",
            &[
                ("tag", Said::Text(&tree.tag)),
                ("species", Said::Text(&species)),
            ],
        ),
        notices: desk.notices.clone(),
        verdict: answer.verdict,
        verdict_words: verdict_words(desk, answer),
        climb: answer.climb,
        reason: first_reason(answer).map_or_else(String::new, |first| desk.words.reason(first)),
        gaps: tree_gaps(desk, site, tree, &looks, &answer.gaps),
        judgement: PageAddress::Judgement {
            tree: tree.id.clone(),
        },
        aloft: PageAddress::Aloft {
            tree: tree.id.clone(),
        },
        compare: days_compared(site, tree).map(|_| PageAddress::Compare {
            tree: tree.id.clone(),
        }),
        inspection: looks.today.map_or_else(Id::default, |look| look.id.clone()),
        lines: tree_lines(desk, tree, &looks, answer),
        doors: doors(desk, tree, &looks),
        ways_of_working: ways_of_working(desk, tree),
        again,
        walk_round,
        wires: wire_records(desk, site, &looks),
        findings: finding_records(desk, &looks),
        sections: section_records(desk, &looks),
        anchors: anchor_records(desk, &looks, answer),
        plans: plan_records(desk, &looks),
        photos: photo_records(desk, &looks.all(|look| &look.photos)),
        work: work_records(desk, tree),
        notes: notes(desk, tree, &looks),
        risks: risk_records(desk, site, &looks, answer),
        history: history(desk, site, tree),
        offers: tree_offers(desk, tree, &looks),
        headings: Vec::new(),
    }
}

/// The tree's own notes, then what was noted at each look that counts.
fn notes(desk: &PageDesk, tree: &Tree, looks: &Looks) -> Vec<PageLine> {
    let at_looks = looks.looks.iter().filter_map(|look| {
        let mut line = desk.note("inspection.note", look.note.as_ref())?;
        if let Some(at) = look.at {
            line.label = desk.words.moment(at);
        }
        Some(line)
    });
    let own = desk.note("tree.note", tree.note.as_ref());
    own.into_iter().chain(at_looks).collect()
}

/// Every look at the tree, the newest first.
fn history(desk: &PageDesk, site: &Site, tree: &Tree) -> Vec<PageRecord> {
    let mut looks: Vec<_> = tree.inspections.iter().collect();
    looks.sort_by_key(|look| {
        let at = look.at.map_or(i64::MIN, |at| at.utc_ms);
        std::cmp::Reverse((day_of(look, site), at))
    });
    looks
        .into_iter()
        .map(|look| PageRecord {
            id: look.id.clone(),
            words: match (day_of(look, site), look.at) {
                (_, Some(at)) => desk.words.moment(at),
                (Some(day), None) => desk.words.day(day),
                (None, None) => desk.say("page.no-date"),
            },
            detail: {
                let level = desk.words.word_of(&look.level);
                match look.by.is_empty() {
                    true => level,
                    false => format!("{level} · {}", desk.person(&look.by)),
                }
            },
            go_to: None,
            offers: vec![desk.offer(CommandKind::RemoveInspection, &look.id, None)],
        })
        .collect()
}
