//! The page that lays this look at a tree beside the last one: what grew, leaned, thinned, what was
//! found since; a change within its uncertainty is said to be within it.

use super::compared::{ComparedFinding, findings};
use super::desk::PageDesk;
use super::headings::PageHeading;
use super::judgement::score_words;
use super::looks::{Looks, day_of};
use super::measured::{girth_words, height_words, lean_words};
use super::page::PageAddress;
use super::site::verdict_words;
use crate::judge::spread::{girth_cv, height_cv, lean_se_deg, shell_se_cm};
use crate::record::{Day, Id, Judgement, Quantity, Site, StemSection, Tree, Verdict};
use crate::words::Said;

/// Standard errors on either side of a change that hold 95 in 100 (normal distribution).
const Z95: f64 = 1.96;
/// Sections nearer in height than this are the same (house).
const SAME_HEIGHT_M: f64 = 0.5;

/// What a tree was like at an earlier visit.
#[derive(Debug)]
pub struct Earlier {
    /// The day.
    pub day: Day,
    /// The tree as it was seen until then.
    pub tree: Tree,
    /// The judgement then.
    pub judgement: Judgement,
    /// Whether it was signed then; else it is worked out anew from what is kept.
    pub signed: bool,
}

/// This look at a tree beside the last one.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ComparePage {
    /// The tree.
    pub id: Id,
    /// Tag and species.
    pub title: String,
    /// The page of the tree.
    pub tree: PageAddress,
    /// The two days; that there is no earlier look, where there is none.
    pub days: String,
    /// The day of the earlier look, to stand beside what was then; empty where there is none.
    pub then: String,
    /// The day of the newest look.
    pub now: String,
    /// The verdict then.
    pub verdict_then: Option<Verdict>,
    /// The verdict now.
    pub verdict_now: Verdict,
    /// Verdict, score, measures, walls: then, now and the change.
    pub lines: Vec<ComparedLine>,
    /// The findings: new, worse, cleared, as they were.
    pub findings: Vec<ComparedFinding>,
    /// The heading of every list of this page.
    pub headings: Vec<PageHeading>,
}

/// One line of a comparison.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ComparedLine {
    /// Stable id, such as `compare.girth`.
    pub id: String,
    /// What it is about.
    pub label: String,
    /// Then, in words.
    pub then: String,
    /// Now, in words.
    pub now: String,
    /// What became of it in a word, then the change with its interval and whether it is more than
    /// the readings can tell.
    pub change: String,
    /// What kind of change it is.
    pub kind: ChangeKind,
}

/// What kind of change a line shows.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum ChangeKind {
    /// More than the readings' own uncertainty, upward.
    Larger,
    /// More than the readings' own uncertainty, downward.
    Smaller,
    /// Within the uncertainty of the readings, or the same.
    Within,
    /// One of the two is missing: there is nothing to compare.
    Unknown,
}

/// The page that compares; `earlier` is the last visit before the newest one.
pub fn compare_page(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    answer: &Judgement,
    earlier: Option<&Earlier>,
) -> ComparePage {
    let species = desk.species(tree.species.as_deref());
    let name = [
        ("tag", Said::Text(&tree.tag)),
        ("species", Said::Text(&species)),
    ];
    let mut page = ComparePage {
        id: tree.id.clone(),
        title: desk.words.say("summary.tree-name", &name),
        tree: PageAddress::Tree {
            tree: tree.id.clone(),
        },
        days: desk.say("page.nothing-to-compare"),
        then: String::new(),
        now: String::new(),
        verdict_then: None,
        verdict_now: answer.verdict,
        lines: Vec::new(),
        findings: Vec::new(),
        headings: Vec::new(),
    };
    let Some(earlier) = earlier else {
        return page;
    };
    let now = Looks::of(tree, site, desk.today, &desk.rules);
    let then = Looks::of(&earlier.tree, site, earlier.day, &desk.rules);
    let newest = now.looks.first().and_then(|look| day_of(look, site));
    page.then = desk.words.day(earlier.day);
    page.now = desk.words.day(newest.unwrap_or(desk.today));
    let days = [
        ("then", Said::Text(&page.then)),
        ("now", Said::Text(&page.now)),
    ];
    page.days = desk.words.say("page.days-compared", &days);
    page.verdict_then = Some(earlier.judgement.verdict);
    page.lines.push(verdict_line(desk, earlier, answer));
    page.lines.extend(score_line(desk, earlier, answer));
    page.lines.extend(measure_lines(desk, &then, &now));
    page.lines.extend(wall_lines(desk, &then, &now));
    page.findings = findings(desk, &then, &now);
    page
}

/// Which visit the newest one is compared with: the days of the looks at a tree, the newest first.
pub fn days_compared(site: &Site, tree: &Tree) -> Option<(Day, Day)> {
    let mut days: Vec<Day> = tree
        .inspections
        .iter()
        .filter_map(|look| day_of(look, site))
        .collect();
    days.sort_unstable();
    days.dedup();
    let now = days.pop()?;
    Some((days.pop()?, now))
}

/// A tree as it was seen up to a day.
pub fn seen_until(site: &Site, tree: &Tree, day: Day) -> Tree {
    let mut then = tree.clone();
    then.inspections
        .retain(|look| day_of(look, site).is_some_and(|of| of <= day));
    then
}

fn verdict_line(desk: &PageDesk, earlier: &Earlier, answer: &Judgement) -> ComparedLine {
    let then = verdict_words(desk, &earlier.judgement);
    let how = if earlier.signed {
        "page.judged-signed"
    } else {
        "page.judged-anew"
    };
    let (kind, change) = verdict_change(earlier.judgement.verdict, answer.verdict);
    ComparedLine {
        id: "compare.verdict".to_owned(),
        label: desk.say("page.verdict"),
        then: format!("{then} · {}", desk.say(how)),
        now: verdict_words(desk, answer),
        change: desk.say(change),
        kind,
    }
}

/// What became of a verdict, and the entry that says it. What was not judged is neither better nor
/// worse than what was.
fn verdict_change(then: Verdict, now: Verdict) -> (ChangeKind, &'static str) {
    let open = Verdict::Incomplete;
    match now.cmp(&then) {
        std::cmp::Ordering::Equal => (ChangeKind::Within, "page.unchanged"),
        _ if then == open => (ChangeKind::Unknown, "page.not-judged-then"),
        _ if now == open => (ChangeKind::Unknown, "page.not-judged-now"),
        std::cmp::Ordering::Less => (ChangeKind::Smaller, "page.verdict-lower"),
        std::cmp::Ordering::Greater => (ChangeKind::Larger, "page.verdict-better"),
    }
}

/// Scores then and now with their intervals, where both have one.
fn score_line(desk: &PageDesk, earlier: &Earlier, answer: &Judgement) -> Option<ComparedLine> {
    let (then, now) = (earlier.judgement.score.as_ref()?, answer.score.as_ref()?);
    let said = |score: &crate::record::Score| score_words(desk, score);
    let kind = if now.low > then.high {
        ChangeKind::Larger
    } else if now.high < then.low {
        ChangeKind::Smaller
    } else {
        ChangeKind::Within
    };
    Some(ComparedLine {
        id: "compare.score".to_owned(),
        label: desk.say("page.score-label"),
        then: said(then),
        now: said(now),
        change: desk.say(match kind {
            ChangeKind::Larger => "page.score-higher",
            ChangeKind::Smaller => "page.score-lower",
            ChangeKind::Within | ChangeKind::Unknown => "page.intervals-overlap",
        }),
        kind,
    })
}

/// A value with its standard error and words.
struct Read {
    value: f64,
    se: f64,
    words: String,
}

fn measure_lines(desk: &PageDesk, then: &Looks, now: &Looks) -> Vec<ComparedLine> {
    let (words, rules) = (&desk.words, &desk.rules);
    let girth = |looks: &Looks| {
        looks.newest(|look| look.girth).map(|girth| Read {
            value: girth.girth_cm,
            se: girth.girth_cm * girth_cv(&girth, rules),
            words: girth_words(words, &girth),
        })
    };
    let height = |looks: &Looks| {
        looks.newest(|look| look.height).map(|height| Read {
            value: height.height_m,
            se: height.height_m * height_cv(&height, rules),
            words: height_words(words, &height),
        })
    };
    let lean = |looks: &Looks| {
        looks.newest(|look| look.lean).map(|lean| Read {
            value: lean.lean_deg,
            se: lean_se_deg(&lean, rules),
            words: lean_words(words, &lean),
        })
    };
    let label = |input: &str| desk.say(&format!("input.{input}"));
    vec![
        compared(
            desk,
            "compare.girth",
            label("tree.girth"),
            girth(then),
            girth(now),
            Quantity::LengthCm,
        ),
        compared(
            desk,
            "compare.height",
            label("tree.height"),
            height(then),
            height(now),
            Quantity::LengthM,
        ),
        compared(
            desk,
            "compare.lean",
            label("tree.lean"),
            lean(then),
            lean(now),
            Quantity::AngleDeg,
        ),
    ]
}

/// The thinnest wall read of each section that was read at both looks, or at either.
fn wall_lines(desk: &PageDesk, then: &Looks, now: &Looks) -> Vec<ComparedLine> {
    let before = then.all(|look| &look.sections);
    let mut lines = Vec::new();
    for section in now.all(|look| &look.sections) {
        let same = before.iter().rev().find(|one| {
            (one.height_m - section.height_m).abs() <= SAME_HEIGHT_M && one.id != section.id
        });
        let Some(now) = thinnest(desk, section) else {
            continue;
        };
        let height = desk.words.number(section.height_m, Quantity::LengthM);
        let label = desk
            .words
            .say("page.thinnest-wall", &[("height", Said::Text(&height))]);
        let then = same.and_then(|one| thinnest(desk, one));
        let id = format!("compare.wall.{}", section.id);
        lines.push(compared(
            desk,
            &id,
            label,
            then,
            Some(now),
            Quantity::LengthCm,
        ));
    }
    lines
}

fn thinnest(desk: &PageDesk, section: &StemSection) -> Option<Read> {
    let readings = section.readings.iter();
    let least = readings.min_by(|one, other| one.shell_cm.total_cmp(&other.shell_cm))?;
    let se = shell_se_cm(least, &desk.rules);
    let wall = desk
        .words
        .measure_with_se(least.shell_cm, Some(se), Quantity::LengthCm);
    Some(Read {
        value: least.shell_cm,
        se,
        words: super::measured::toward(&desk.words, wall, Some(least.bearing_deg)),
    })
}

fn compared(
    desk: &PageDesk,
    id: &str,
    label: String,
    then: Option<Read>,
    now: Option<Read>,
    quantity: Quantity,
) -> ComparedLine {
    let missing = || desk.say("page.missing");
    let (kind, change) = match (&then, &now) {
        (Some(then), Some(now)) => change(desk, then, now, quantity),
        (None, None) => (ChangeKind::Unknown, desk.say("page.change-unread")),
        _ => (ChangeKind::Unknown, desk.say("page.change-read-once")),
    };
    ComparedLine {
        id: id.to_owned(),
        label,
        then: then.map_or_else(missing, |read| read.words),
        now: now.map_or_else(missing, |read| read.words),
        change,
        kind,
    }
}

/// A change with its 95 % interval; the errors of two visits are independent.
fn change(desk: &PageDesk, then: &Read, now: &Read, quantity: Quantity) -> (ChangeKind, String) {
    let by = now.value - then.value;
    let half = Z95 * libm::hypot(then.se, now.se);
    let kind = if by.abs() <= half {
        ChangeKind::Within
    } else if by > 0.0 {
        ChangeKind::Larger
    } else {
        ChangeKind::Smaller
    };
    let key = match kind {
        ChangeKind::Larger => "page.change-larger",
        ChangeKind::Smaller => "page.change-smaller",
        ChangeKind::Within | ChangeKind::Unknown => "page.change-within",
    };
    let [by, low, high] = desk.words.change(by, half, quantity);
    let said = [
        ("by", Said::Text(&by)),
        ("low", Said::Text(&low)),
        ("high", Said::Text(&high)),
    ];
    (kind, desk.words.say(key, &said))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_was_not_judged_is_neither_better_nor_worse() {
        use Verdict as V;
        let kind = |then, now| verdict_change(then, now).0;
        assert_eq!(kind(V::Incomplete, V::Refer), ChangeKind::Unknown);
        assert_eq!(kind(V::NoStop, V::Incomplete), ChangeKind::Unknown);
        assert_eq!(kind(V::Incomplete, V::Barred), ChangeKind::Unknown);
        assert_eq!(kind(V::Incomplete, V::Incomplete), ChangeKind::Within);
        assert_eq!(kind(V::Refer, V::Limited), ChangeKind::Larger);
        assert_eq!(kind(V::Limited, V::Barred), ChangeKind::Smaller);
    }
}
