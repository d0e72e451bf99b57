//! The judgement of a whole site on one day: its trees in walking order, and which of them may not
//! be worked on together.

use std::collections::{BTreeMap, BTreeSet};

use rayon::prelude::*;

use crate::error::BookError;
use crate::record::{Day, Id, Judgement, SiteFile, SiteJudgement, Tree};

use super::case::SiteContext;
use super::conflict::{conflicts, conflicts_of, in_order};
use super::gaps;
use super::judge_tree::judge_tree;
use super::rules::RuleSet;
use super::stops;

/// Judges every tree of a site for the day `as_of`. `hour` (0 to 23) picks the weather; without it
/// the worst hour of the day counts. `rules` already carries the crew's own house values
/// ([`RuleSet::with_house_values`]). The same input gives the same answer to the byte.
pub fn judge_site(
    file: &SiteFile,
    rules: &RuleSet,
    as_of: Day,
    hour: Option<u32>,
) -> SiteJudgement {
    judge_context(&SiteContext::new(file, rules, as_of, hour))
}

/// The rule set of a site file with the crew's own values laid over it.
///
/// # Errors
/// `NotFound` for a rule set that does not ship; `Refused` for a house value that does not fit.
pub fn rules_for(file: &SiteFile) -> Result<RuleSet, BookError> {
    let id = file.site.rule_set.clone().unwrap_or_default();
    RuleSet::shipped(&id)?.with_house_values(&file.house_values)
}

/// The same for a context that is already there.
pub fn judge_context(site: &SiteContext) -> SiteJudgement {
    judge_context_by(site, &|tree| judge_tree(site, tree))
}

/// The same with the judgement of each tree as `of_tree` gives it: worked out anew, or kept from
/// before. It is asked from several threads.
pub fn judge_context_by(
    site: &SiteContext,
    of_tree: &(dyn Fn(&Tree) -> Judgement + Sync),
) -> SiteJudgement {
    let trees = in_walking_order(site);
    // On every core; the order stays.
    let judged: Vec<Judgement> = trees.par_iter().map(|tree| of_tree(tree)).collect();
    let laid: Vec<_> = trees.iter().copied().zip(&judged).collect();
    SiteJudgement {
        site: site.file.site.id.clone(),
        as_of: site.as_of,
        conflicts: conflicts(site, &laid),
        gaps: gaps::of_site(site),
        stops: stops::site_stops(site),
        trees: judged,
    }
}

/// The same where only the trees `changed` are others than they were for the judgement `before`, or
/// are new or gone: they are judged, and set against the trees around them; all else stands.
pub fn judge_again(
    site: &SiteContext,
    before: SiteJudgement,
    changed: &BTreeSet<Id>,
) -> SiteJudgement {
    let SiteJudgement {
        conflicts: mut pairs,
        trees: answers,
        ..
    } = before;
    let stands = |answer: &Judgement| !changed.contains(&answer.tree);
    let answers = answers.into_iter().filter(stands);
    let mut answers: BTreeMap<Id, Judgement> = answers
        .map(|answer| (answer.tree.clone(), answer))
        .collect();
    let trees = in_walking_order(site);
    let judged: Vec<Judgement> = trees
        .iter()
        .map(|tree| {
            let stood = answers.remove(&tree.id);
            stood.unwrap_or_else(|| judge_tree(site, tree))
        })
        .collect();
    let laid: Vec<_> = trees.iter().copied().zip(&judged).collect();
    pairs.retain(|pair| !changed.contains(&pair.tree) && !changed.contains(&pair.other));
    pairs.extend(conflicts_of(site, &laid, changed));
    in_order(&mut pairs);
    SiteJudgement {
        site: site.file.site.id.clone(),
        as_of: site.as_of,
        conflicts: pairs,
        gaps: gaps::of_site(site),
        stops: stops::site_stops(site),
        trees: judged,
    }
}

/// Trees without a place in the walk come last, in the order they were recorded.
fn in_walking_order<'a>(site: &SiteContext<'a>) -> Vec<&'a Tree> {
    let mut trees: Vec<&Tree> = site.file.site.trees.iter().collect();
    trees.sort_by_key(|tree| tree.walk_order.unwrap_or(u32::MAX));
    trees
}
