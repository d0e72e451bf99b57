//! The judgement of a whole site on one day: its trees in walking order, and which of them may not
//! be worked on together.

use rayon::prelude::*;

use crate::error::BookError;
use crate::record::{Day, Judgement, SiteFile, SiteJudgement, Tree};

use super::case::SiteContext;
use super::conflict::conflicts;
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
    let mut trees: Vec<&Tree> = site.file.site.trees.iter().collect();
    // Trees without a place in the walk come last, in the order they were recorded.
    trees.sort_by_key(|tree| tree.walk_order.unwrap_or(u32::MAX));
    // On every core; the order stays.
    let judged: Vec<Judgement> = trees.par_iter().map(|tree| of_tree(tree)).collect();
    let crowns = trees.iter().map(|tree| {
        let seen = (!tree.work.is_empty()).then(|| site.seen(tree)).flatten();
        let crown = seen.and_then(|seen| seen.look.crown);
        crown.map_or(0.0, |crown| crown.radius_m)
    });
    let laid: Vec<_> = trees
        .iter()
        .copied()
        .zip(&judged)
        .zip(crowns)
        .map(|((tree, judgement), crown_m)| (tree, judgement, crown_m))
        .collect();
    SiteJudgement {
        site: site.file.site.id.clone(),
        as_of: site.as_of,
        conflicts: conflicts(site, &laid),
        gaps: gaps::of_site(site),
        stops: stops::site_stops(site),
        trees: judged,
    }
}
