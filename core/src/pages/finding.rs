//! The page of a finding: its place, and its grade by the sentences of its code.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::drawn::DrawingAddress;
use super::headings::PageHeading;
use super::line::{PageLine, PagePhoto};
use super::looks::finding_of;
use super::narrowed::graded;
use super::offer::Offer;
use super::page::PageAddress;
use super::tree_records::photo_records;
use crate::record::{DefectCode, Finding, Id, Quantity, Site};
use crate::words::Said;

/// A finding.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct FindingPage {
    /// The finding.
    pub id: Id,
    /// Its code and its tree.
    pub title: String,
    /// The page of its tree.
    pub tree: PageAddress,
    /// Its place and what else is known of it.
    pub lines: Vec<PageLine>,
    /// The grades of its code, each with its sentence.
    pub grades: Vec<GradeTile>,
    /// Its photos.
    pub photos: Vec<PagePhoto>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A grade of the finding's code.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct GradeTile {
    /// 1 to 3.
    pub grade: u32,
    /// Its words.
    pub words: String,
    /// The sentence that says what it looks like.
    pub sentence: String,
    /// What it looks like at the part that the finding is on.
    pub drawing: DrawingAddress,
    /// Whether the finding has it.
    pub chosen: bool,
}

/// The page of a finding; nothing for one that is not on the site.
pub fn finding_page(desk: &PageDesk, site: &Site, id: &Id) -> Option<FindingPage> {
    let (tree, look, finding) = finding_of(site, id)?;
    let code = desk.codes.iter().find(|code| code.id == finding.code);
    let name = desk.code_words(&finding.code);
    let shown: Vec<_> = look.photos.iter().filter(|p| p.finding == *id).collect();
    Some(FindingPage {
        id: id.clone(),
        title: desk.words.say(
            "page.finding-on",
            &[
                ("finding", Said::Text(&name)),
                ("tag", Said::Text(&tree.tag)),
            ],
        ),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        lines: lines(desk, finding),
        grades: code.map_or_else(Vec::new, |code| tiles(desk, code, finding)),
        photos: photo_records(desk, &shown),
        offers: offers(desk, finding, code, &look.id, site),
        headings: Vec::new(),
    })
}

fn lines(desk: &PageDesk, finding: &Finding) -> Vec<PageLine> {
    let number = |value: Option<f64>, quantity: Quantity| {
        value.map(|value| desk.words.number(value, quantity))
    };
    let grade = finding
        .grade
        .map(|grade| desk.say(&format!("grade.{grade}")));
    let mut lines = vec![
        desk.line(
            "finding.part",
            "finding.part.why",
            Some(desk.words.word_of(&finding.part)),
        ),
        desk.line("finding.grade", "finding.grade.why", grade),
        desk.line(
            "finding.height",
            "finding.height_m.why",
            number(finding.height_m, Quantity::LengthM),
        ),
        desk.line(
            "finding.side",
            "measure.bearing_deg.why",
            finding.side_deg.map(|side_deg| desk.words.side(side_deg)),
        ),
    ];
    if let Some(ratio) = number(finding.aspect_ratio, Quantity::Ratio) {
        lines.push(desk.line("finding.aspect_ratio", "", Some(ratio)));
    }
    if !finding.cleared_by.is_empty() {
        let by = desk.person(&finding.cleared_by);
        let cleared = match finding.cleared_on {
            Some(day) => desk.words.say(
                "page.signed-off",
                &[("by", Said::Text(&by)), ("day", Said::Day(day))],
            ),
            None => by,
        };
        lines.push(desk.line("finding.cleared_by", "", Some(cleared)));
    }
    lines.extend(desk.note("finding.note", finding.note.as_ref()));
    lines
}

/// A grade without a sentence cannot be chosen.
fn tiles(desk: &PageDesk, code: &DefectCode, finding: &Finding) -> Vec<GradeTile> {
    (1..=3)
        .filter_map(|grade| {
            Some(GradeTile {
                grade,
                words: desk.say(&format!("grade.{grade}")),
                sentence: desk.words.grade_sentence(code, grade)?,
                drawing: DrawingAddress::Grade {
                    code: code.id.clone(),
                    part: Some(finding.part),
                    grade,
                },
                chosen: finding.grade == Some(grade),
            })
        })
        .collect()
}

fn offers(
    desk: &PageDesk,
    finding: &Finding,
    code: Option<&DefectCode>,
    inspection: &Id,
    site: &Site,
) -> Vec<Offer> {
    let id = &finding.id;
    let mut grade = desk.offer_on(CommandKind::GradeFinding, id, finding);
    if let Some(code) = code {
        for input in &mut grade.inputs {
            graded(&desk.words, input, code, Some(finding.part));
        }
    }
    let mut offers = vec![
        grade,
        desk.offer_on(CommandKind::ChangeFinding, id, finding),
        desk.offer(
            CommandKind::AddPhoto,
            inspection,
            Some(&serde_json::json!({"finding": id})),
        ),
        desk.offer_on(CommandKind::ClearFinding, id, finding),
        desk.offer(CommandKind::RemoveFinding, id, None),
    ];
    offers.extend(desk.undo_offers(&site.id));
    offers
}
