//! The lines of a site's trees. What many of them share is worded once: a large site has few
//! species, few verdicts and few first reasons.

use std::collections::BTreeMap;

use super::desk::PageDesk;
use super::page::PageAddress;
use super::site::{TreeOfSite, first_reason, verdict_words};
use crate::record::{ClimbNeed, Judgement, Reason, Tree, Verdict};
use crate::words::Search;

/// Words at hand.
struct Lines<'d, 'a> {
    desk: &'d PageDesk<'a>,
    species: BTreeMap<Option<&'a str>, String>,
    verdicts: BTreeMap<(Verdict, bool), String>,
    reasons: BTreeMap<&'a str, String>,
}

/// The trees whose tag or species fits the search, in walking order.
pub(super) fn tree_lines(desk: &PageDesk, search: &str) -> Vec<TreeOfSite> {
    let search = Search::of(search);
    let mut lines = Lines {
        desk,
        species: BTreeMap::new(),
        verdicts: BTreeMap::new(),
        reasons: BTreeMap::new(),
    };
    let mut found = Vec::new();
    for (tree, answer) in desk.trees() {
        let species = lines.species(tree);
        if search.is_empty() || search.fits(&[&tree.tag, &species]) {
            found.push(lines.line(tree, answer, species));
        }
    }
    found
}

impl<'a> Lines<'_, 'a> {
    /// A tree with its verdict and the first reason for it.
    fn line(&mut self, tree: &'a Tree, answer: &'a Judgement, species: String) -> TreeOfSite {
        TreeOfSite {
            id: tree.id.clone(),
            tag: tree.tag.clone(),
            species,
            verdict: answer.verdict,
            climb: answer.climb,
            words: self.verdict(answer),
            reason: first_reason(answer).map_or_else(String::new, |first| self.reason(first)),
            go_to: PageAddress::Tree {
                tree: tree.id.clone(),
            },
        }
    }

    fn species(&mut self, tree: &'a Tree) -> String {
        let name = tree.species.as_deref();
        let desk = self.desk;
        let words = self.species.entry(name);
        words.or_insert_with(|| desk.species(name)).clone()
    }

    fn verdict(&mut self, answer: &Judgement) -> String {
        let desk = self.desk;
        let not_needed = answer.climb == ClimbNeed::NotNeeded;
        let words = self.verdicts.entry((answer.verdict, not_needed));
        words.or_insert_with(|| verdict_words(desk, answer)).clone()
    }

    /// A reason without arguments says the same of every tree.
    fn reason(&mut self, reason: &'a Reason) -> String {
        let desk = self.desk;
        if !reason.args.is_empty() {
            return desk.words.reason(reason);
        }
        let words = self.reasons.entry(&reason.code);
        words.or_insert_with(|| desk.words.reason(reason)).clone()
    }
}
