//! What was seen on a tree: which looks count, and the newest answer to a question.

use crate::judge::CountingLooks;
use crate::judge::rules::{Rule, RuleSet};
use crate::record::{Day, Finding, Id, Inspection, Look, PartLook, Site, Tree, WalkPart};

/// The looks at a tree that count, the newest first: those that the judgement rests on.
pub(super) struct Looks<'a> {
    /// The looks, the newest first.
    pub looks: Vec<&'a Inspection>,
    /// The inspection of the day, where one was begun.
    pub today: Option<&'a Inspection>,
}

impl<'a> Looks<'a> {
    pub(super) fn of(tree: &'a Tree, site: &Site, today: Day, rules: &RuleSet) -> Self {
        let mut dated: Vec<(Option<Day>, i64, &Inspection)> = tree
            .inspections
            .iter()
            .map(|look| {
                let at = look.at.map_or(i64::MIN, |at| at.utc_ms);
                (day_of(look, site), at, look)
            })
            .collect();
        dated.sort_by_key(|(day, at, _)| (*day, *at));
        let of_today = dated.iter().rev().find(|(day, _, _)| *day == Some(today));
        let begun = of_today.map(|(_, _, look)| *look);
        let by_day: Vec<_> = dated
            .iter()
            .map(|(day, _, look)| (*day, look.level))
            .collect();
        let counting = CountingLooks::of(&by_day, rules.number(Rule::CheckCarriesDays));
        let mut looks: Vec<&Inspection> = dated
            .iter()
            .skip(counting.first)
            .map(|(_, _, look)| *look)
            .collect();
        looks.reverse();
        Looks {
            looks,
            today: begun,
        }
    }

    /// The newest answer to a question that a later look may leave open.
    pub(super) fn newest<T>(&self, ask: impl Fn(&'a Inspection) -> Option<T>) -> Option<T> {
        self.looks.iter().copied().find_map(ask)
    }

    /// How a part was seen last.
    pub(super) fn part(&self, part: WalkPart) -> Option<&'a PartLook> {
        self.newest(|look| look.walk_round.iter().find(|at| at.part == part))
            .filter(|at| at.look != Look::NotSeen || at.hidden_by.is_some())
    }

    /// What lies in the looks, the oldest look first, so that numbers stay when more is found.
    pub(super) fn all<T>(&self, list: impl Fn(&'a Inspection) -> &'a [T]) -> Vec<&'a T> {
        self.looks
            .iter()
            .rev()
            .flat_map(|look| list(look))
            .collect()
    }
}

/// The day of an inspection's visit.
pub(super) fn day_of(look: &Inspection, site: &Site) -> Option<Day> {
    let mut visits = site.visits.iter();
    visits
        .find(|visit| !look.visit.is_empty() && visit.id == look.visit)
        .map(|visit| visit.day)
}

/// The tree, the inspection and the finding of this id.
pub(super) fn finding_of<'a>(
    site: &'a Site,
    id: &Id,
) -> Option<(&'a Tree, &'a Inspection, &'a Finding)> {
    site.trees.iter().find_map(|tree| {
        tree.inspections.iter().find_map(|look| {
            let finding = look.findings.iter().find(|finding| finding.id == *id)?;
            Some((tree, look, finding))
        })
    })
}
