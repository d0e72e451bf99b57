//! The page of the codebook: the crew's own names, what each grade looks like, the grade from which
//! a code bars climbing, and the order of the tiles.

use super::command_kind::CommandKind;
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::line::{LineState, PageRecord};
use super::offer::Offer;
use crate::judge::codebook::starter_codes;
use crate::record::{DefectCode, Id};
use crate::words::Said;

/// The codebook.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct CodebookPage {
    /// Title.
    pub title: String,
    /// What renaming, retiring and stopping mean.
    pub lead: String,
    /// What has to be settled by a person.
    pub unsettled: Vec<PageRecord>,
    /// The codes offered for findings, in the order of their tiles.
    pub codes: Vec<CodeOfBook>,
    /// The codes no longer offered; findings that have them keep them.
    pub retired: Vec<CodeOfBook>,
    /// What can be done.
    pub offers: Vec<Offer>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// A code of the codebook.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct CodeOfBook {
    /// The code.
    pub id: Id,
    /// Its name.
    pub name: String,
    /// What it means for the judgement, where it can be, from which grade the crew stops.
    pub detail: String,
    /// Its grades.
    pub grades: Vec<GradeOfCode>,
    /// What can be done.
    pub offers: Vec<Offer>,
}

/// A grade of a code.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct GradeOfCode {
    /// 1 to 3.
    pub grade: u32,
    /// Its words.
    pub words: String,
    /// The sentence that says what it looks like; that there is none yet, where it is missing.
    pub sentence: String,
    /// Whether the sentence is there: a grade without one cannot be chosen.
    pub state: LineState,
    /// Whether the crew stops from here.
    pub stops: bool,
}

/// The page of the codebook.
pub fn codebook_page(desk: &PageDesk) -> CodebookPage {
    let nobody = Id::default();
    let in_use: Vec<&DefectCode> = desk.codes.iter().filter(|code| !code.retired).collect();
    let last = in_use.len().saturating_sub(1);
    let codes = in_use.iter().enumerate();
    let retired = desk.codes.iter().filter(|code| code.retired);
    let mut offers = vec![desk.offer(CommandKind::AddCode, &nobody, None)];
    offers.extend(desk.undo_offers(&nobody));
    CodebookPage {
        title: desk.say("page.codebook"),
        lead: desk.say("page.codebook-lead"),
        unsettled: desk.unsettled_records(),
        codes: codes
            .map(|(at, code)| {
                let up = desk.offer(CommandKind::MoveCodeUp, &code.id, None);
                let down = desk.offer(CommandKind::MoveCodeDown, &code.id, None);
                let offers = vec![
                    change_offer(desk, code),
                    desk.offer(CommandKind::RetireCode, &code.id, None),
                    desk.unless(up, at == 0, "page.code-is-first"),
                    desk.unless(down, at == last, "page.code-is-last"),
                ];
                code_of(desk, code, offers)
            })
            .collect(),
        retired: retired
            .map(|code| {
                let back = desk.offer(CommandKind::BringCodeBack, &code.id, None);
                code_of(desk, code, vec![back])
            })
            .collect(),
        offers,
        headings: Vec::new(),
    }
}

/// How many codes are in use, in words.
pub(super) fn codes_count(desk: &PageDesk) -> String {
    let in_use = desk.codes.iter().filter(|code| !code.retired).count() as i64;
    desk.words
        .say("page.codes-count", &[("count", Said::Count(in_use))])
}

fn change_offer(desk: &PageDesk, code: &DefectCode) -> Offer {
    // A starter code has no words of its own: those that are shown are ready to be changed.
    let shown = DefectCode {
        name: Some(desk.code_name(code)),
        grade_1: desk.words.grade_sentence(code, 1),
        grade_2: desk.words.grade_sentence(code, 2),
        grade_3: desk.words.grade_sentence(code, 3),
        ..code.clone()
    };
    desk.offer_on(CommandKind::ChangeCode, &code.id, &shown)
}

fn code_of(desk: &PageDesk, code: &DefectCode, offers: Vec<Offer>) -> CodeOfBook {
    CodeOfBook {
        id: code.id.clone(),
        name: desk.code_name(code),
        detail: detail(desk, code),
        grades: grades(desk, code),
        offers,
    }
}

fn detail(desk: &PageDesk, code: &DefectCode) -> String {
    let words = &desk.words;
    let is_starter = starter_codes().iter().any(|known| known.id == code.id);
    let origin = if is_starter {
        "page.code-starter"
    } else {
        "page.code-own"
    };
    let kind = words.word_of(&code.kind);
    let means = (kind != desk.code_name(code))
        .then(|| words.say("page.code-means", &[("kind", Said::Text(&kind))]));
    let parts: Vec<String> = code.parts.iter().map(|part| words.word_of(part)).collect();
    let stops = code.stops_from_grade.map(|grade| {
        let grade = [("grade", Said::Count(grade.into()))];
        words.say("page.code-stops", &grade)
    });
    let parts = (!parts.is_empty()).then(|| parts.join(", "));
    let all = [Some(desk.say(origin)), means, parts, stops];
    all.into_iter().flatten().collect::<Vec<_>>().join(" · ")
}

fn grades(desk: &PageDesk, code: &DefectCode) -> Vec<GradeOfCode> {
    (1..=3)
        .map(|grade| (grade, desk.words.grade_sentence(code, grade)))
        .map(|(grade, sentence)| GradeOfCode {
            grade,
            words: desk.say(&format!("grade.{grade}")),
            state: match sentence {
                Some(_) => LineState::Known,
                None => LineState::Missing,
            },
            sentence: sentence.unwrap_or_else(|| desk.say("page.grade-without-sentence")),
            stops: code.stops_from_grade.is_some_and(|from| grade >= from),
        })
        .collect()
}
