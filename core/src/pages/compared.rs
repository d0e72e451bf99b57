//! Findings then and now: which are new, worse, cleared, or were not found again.

use super::desk::PageDesk;
use super::looks::Looks;
use super::page::PageAddress;
use super::tree_records::finding_detail;
use crate::record::{Finding, Id, Look, TreePart, WalkPart};

/// Findings nearer in height than this are the same (house).
const SAME_HEIGHT_M: f64 = 2.0;
/// Findings nearer in bearing than this are on the same side (house).
const SAME_SIDE_DEG: f64 = 60.0;

/// A finding then and now.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ComparedFinding {
    /// The finding: that of now, or of then where there is none now.
    pub id: Id,
    /// What it is.
    pub words: String,
    /// Grade and place then; empty where it was not there.
    pub then: String,
    /// Grade and place now; empty where it is not there.
    pub now: String,
    /// What became of it, in words.
    pub change: String,
    /// What became of it.
    pub fate: FindingFate,
    /// The page of the finding.
    pub go_to: PageAddress,
}

/// What became of a finding.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, serde::Serialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum FindingFate {
    /// Not there at the last look.
    Newly,
    /// Graver than then.
    Worse,
    /// As it was.
    Unchanged,
    /// Less grave than then.
    Better,
    /// Cleared by a named person.
    Cleared,
    /// Looked for there, and not found again.
    NotFound,
    /// Nobody looked there again.
    NotLookedAt,
}

/// Every finding of either look, the new and the worse first.
pub(super) fn findings(desk: &PageDesk, then: &Looks, now: &Looks) -> Vec<ComparedFinding> {
    let before = then.all(|look| &look.findings);
    let after = now.all(|look| &look.findings);
    let mut matched: Vec<&Id> = Vec::new();
    let mut compared = Vec::new();
    for finding in &after {
        let mut old = before.iter().filter(|old| !matched.contains(&&old.id));
        let old = old.find(|old| is_same(old, finding));
        matched.extend(old.map(|old| &old.id));
        compared.push(finding_line(desk, old.copied(), Some(finding), now));
    }
    for old in before.iter().filter(|old| !matched.contains(&&old.id)) {
        compared.push(finding_line(desk, Some(old), None, now));
    }
    compared.sort_by_key(|one| one.fate);
    compared
}

/// One and the same record, or one code at one place of the tree.
fn is_same(old: &Finding, new: &Finding) -> bool {
    let near = |one: Option<f64>, other: Option<f64>, least: f64| match (one, other) {
        (Some(one), Some(other)) => (one - other).abs() <= least,
        _ => true,
    };
    let side = |one: Option<f64>, other: Option<f64>| match (one, other) {
        (Some(one), Some(other)) => {
            let apart = (one - other).abs() % 360.0;
            apart.min(360.0 - apart) <= SAME_SIDE_DEG
        }
        _ => true,
    };
    old.id == new.id
        || (old.code == new.code
            && old.part == new.part
            && near(old.height_m, new.height_m, SAME_HEIGHT_M)
            && side(old.side_deg, new.side_deg))
}

fn finding_line(
    desk: &PageDesk,
    then: Option<&Finding>,
    now: Option<&Finding>,
    looks: &Looks,
) -> ComparedFinding {
    let fate = fate(then, now, looks);
    let detail = |finding: Option<&Finding>| {
        finding.map_or_else(String::new, |finding| finding_detail(desk, finding))
    };
    let shown = now.or(then);
    let id = shown.map_or_else(Id::default, |finding| finding.id.clone());
    ComparedFinding {
        words: shown.map_or_else(String::new, |finding| desk.code_words(&finding.code)),
        then: detail(then),
        now: detail(now),
        change: desk.say(match fate {
            FindingFate::Newly => "page.finding-new",
            FindingFate::Worse => "page.finding-worse",
            FindingFate::Unchanged => "page.finding-unchanged",
            FindingFate::Better => "page.finding-better",
            FindingFate::Cleared => "page.finding-cleared",
            FindingFate::NotFound => "page.finding-not-found",
            FindingFate::NotLookedAt => "page.finding-not-looked-at",
        }),
        fate,
        go_to: PageAddress::Finding {
            finding: id.clone(),
        },
        id,
    }
}

fn fate(then: Option<&Finding>, now: Option<&Finding>, looks: &Looks) -> FindingFate {
    let cleared = |finding: &Finding| !finding.cleared_by.is_empty();
    // Without a grade a finding counts as the gravest.
    let grade = |finding: &Finding| finding.grade.unwrap_or(3);
    match (then, now) {
        (_, Some(now)) if cleared(now) => FindingFate::Cleared,
        (None, Some(_)) => FindingFate::Newly,
        (Some(then), Some(now)) => match grade(now).cmp(&grade(then)) {
            std::cmp::Ordering::Greater => FindingFate::Worse,
            std::cmp::Ordering::Equal => FindingFate::Unchanged,
            std::cmp::Ordering::Less => FindingFate::Better,
        },
        (Some(then), None) if cleared(then) => FindingFate::Cleared,
        (Some(then), None) if looked_at(looks, then) => FindingFate::NotFound,
        (_, None) => FindingFate::NotLookedAt,
    }
}

/// Whether the part that a finding is on was seen now.
fn looked_at(looks: &Looks, finding: &Finding) -> bool {
    let parts: &[WalkPart] = match finding.part {
        TreePart::Roots => &[WalkPart::Roots],
        TreePart::Base => &[WalkPart::Base],
        TreePart::Stem => &[
            WalkPart::StemNorth,
            WalkPart::StemEast,
            WalkPart::StemSouth,
            WalkPart::StemWest,
        ],
        TreePart::Union => &[WalkPart::Unions],
        TreePart::Limb | TreePart::Crown => &[WalkPart::Crown],
        TreePart::Around => &[WalkPart::Wires, WalkPart::Insects],
    };
    let seen = |part: &WalkPart| looks.part(*part).is_some_and(|at| at.look == Look::Seen);
    parts.iter().all(seen)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn finding(id: &str, more: &str) -> Finding {
        let text = format!(r#"{{"id":"{id}","code":"decay","part":"stem"{more}}}"#);
        serde_json::from_str(&text).unwrap()
    }

    #[test]
    fn one_code_at_one_place_is_one_finding() {
        let old = finding("a", r#","height_m":3,"side_deg":350"#);
        assert!(is_same(
            &old,
            &finding("b", r#","height_m":4,"side_deg":20"#)
        ));
        assert!(is_same(&old, &finding("b", "")), "nobody said where");
        assert!(!is_same(
            &old,
            &finding("b", r#","height_m":9,"side_deg":350"#)
        ));
        assert!(!is_same(
            &old,
            &finding("b", r#","height_m":3,"side_deg":180"#)
        ));
        let looks = Looks {
            looks: Vec::new(),
            today: None,
        };
        let grade = |grade: u32| finding("b", &format!(r#","grade":{grade}"#));
        let ungraded = finding("a", "");
        let fate = |then: &Finding, now: &Finding| fate(Some(then), Some(now), &looks);
        assert_eq!(
            fate(&grade(1), &ungraded),
            FindingFate::Worse,
            "counts as the gravest"
        );
        assert_eq!(fate(&grade(2), &grade(1)), FindingFate::Better);
        assert_eq!(fate(&grade(2), &grade(2)), FindingFate::Unchanged);
        let missing = super::fate(Some(&old), None, &looks);
        assert_eq!(missing, FindingFate::NotLookedAt);
    }
}
