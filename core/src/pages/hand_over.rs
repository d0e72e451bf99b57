//! The page of what is handed over: what is still missing first, then the papers, the map
//! files, and the pack for another phone.

use serde_json::json;

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::gaps::{PageGap, site_gaps};
use super::headings::PageHeading;
use super::line::{LineState, PageLine};
use super::offer::Offer;
use super::page::PageAddress;
use crate::record::{Id, ReportFor, Site, SiteJudgement, Verdict};
use crate::words::{Said, Worded};

/// What is handed over of a site.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct HandOverPage {
    /// The site.
    pub id: Id,
    /// Its name.
    pub title: String,
    /// The page of the site.
    pub site: PageAddress,
    /// What was looked at and what was not.
    pub lines: Vec<PageLine>,
    /// What is still to check for the site as a whole.
    pub gaps: Vec<PageGap>,
    /// What the papers say on every page.
    pub cautions: Vec<String>,
    /// The papers and map files that can be written; packs for and of another phone.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// The page of what is handed over.
pub fn hand_over_page(desk: &PageDesk, site: &Site, judged: &SiteJudgement) -> HandOverPage {
    let no_trees = site.trees.is_empty();
    let usual = json!({"language": desk.words.language(), "photos": ReportFor::Mail});
    let papers = [
        CommandKind::WriteSummary,
        CommandKind::WriteClimbSheets,
        CommandKind::WriteTable,
        CommandKind::WriteGeoJson,
        CommandKind::WriteGeoPackage,
    ]
    .map(|command| desk.offer(command, &site.id, Some(&usual)));
    let packs = [CommandKind::WritePack, CommandKind::ReadPack]
        .map(|command| desk.offer(command, &site.id, None));
    HandOverPage {
        id: site.id.clone(),
        title: site.name.clone(),
        site: PageAddress::site(&site.id),
        lines: lines(desk, judged),
        gaps: site_gaps(desk, site, &judged.gaps),
        cautions: ["caution.client-guarantee", "caution.client-risk"]
            .map(|key| desk.say(key))
            .to_vec(),
        offers: papers
            .map(|offer| desk.unless(offer, no_trees, "page.add-tree-first"))
            .into_iter()
            .chain(packs)
            .collect(),
        headings: Vec::new(),
    }
}

fn lines(desk: &PageDesk, judged: &SiteJudgement) -> Vec<PageLine> {
    let count = |id: &str, label: String, count: usize, state: LineState| PageLine {
        id: id.to_owned(),
        label,
        words: desk
            .words
            .say("page.tree-count", &[("count", Said::Count(count as i64))]),
        why: String::new(),
        state,
    };
    let unseen = judged
        .trees
        .iter()
        .filter(|answer| answer.inspection.is_empty())
        .count();
    let mut lines = vec![count(
        "hand_over.trees",
        desk.say("summary.tree-count"),
        judged.trees.len(),
        LineState::Known,
    )];
    if unseen > 0 {
        let label = desk.say("summary.level-not-yet");
        lines.push(count("hand_over.unseen", label, unseen, LineState::Missing));
    }
    for verdict in [
        Verdict::Barred,
        Verdict::Incomplete,
        Verdict::Refer,
        Verdict::Limited,
        Verdict::NoStop,
    ] {
        let trees = judged.trees.iter().filter(|one| one.verdict == verdict);
        match trees.count() {
            0 => {}
            some => {
                let id = format!("hand_over.{}", verdict.key());
                let label = desk.words.label_of(&verdict);
                lines.push(count(&id, label, some, LineState::Known));
            }
        }
    }
    lines
}
