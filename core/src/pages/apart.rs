//! Trees that may not be worked on at the same time: the worst pairs on the page of the site, all of
//! a tree's own on its page.

use super::desk::PageDesk;
use super::line::PageLine;
use crate::record::{ArgValue, SiteJudgement, Tree, TreeConflict};
use crate::words::Said;

/// So many pairs are worded on the page of a site (house): what a crew can talk over at the gate.
const PAIRS: usize = 12;
/// So many trees are named on the page of a tree (house).
const TREES: usize = 40;

/// The pairs that lack the most distance, the worst first; how many more there are, and where.
pub(super) fn worst_pairs(desk: &PageDesk, judged: &SiteJudgement) -> Vec<String> {
    let mut pairs: Vec<&TreeConflict> = judged.conflicts.iter().collect();
    let more = pairs.len().saturating_sub(PAIRS);
    worst_first(&mut pairs, PAIRS);
    let mut said: Vec<String> = pairs
        .into_iter()
        .map(|pair| desk.words.reason(&pair.reason))
        .collect();
    if more > 0 {
        let count = [("count", Said::Count(more as i64))];
        said.push(desk.words.say("page.apart-more", &count));
    }
    said
}

/// The trees that may not be worked on together with one; nothing where there is none.
pub(super) fn apart_line(desk: &PageDesk, tree: &Tree) -> Option<PageLine> {
    let (site, judged) = desk.site?;
    let is_own = |pair: &&TreeConflict| pair.tree == tree.id || pair.other == tree.id;
    let mut pairs: Vec<&TreeConflict> = judged.conflicts.iter().filter(is_own).collect();
    let more = pairs.len().saturating_sub(TREES);
    worst_first(&mut pairs, TREES);
    let tags = pairs.into_iter().filter_map(|pair| {
        let id = match pair.tree == tree.id {
            true => &pair.other,
            false => &pair.tree,
        };
        let other = site.trees.iter().find(|one| one.id == *id)?;
        Some(other.tag.clone())
    });
    let mut named: Vec<String> = tags.collect();
    if more > 0 {
        let count = [("count", Said::Count(more as i64))];
        named.push(desk.words.say("paper.and-more", &count));
    }
    let label = desk.say("page.apart");
    (!named.is_empty()).then(|| PageLine::known("tree.apart", label, named.join(", ")))
}

/// Keeps the worst, the one that lacks the most distance first; equal ones in their order.
fn worst_first(pairs: &mut Vec<&TreeConflict>, most: usize) {
    let by_lack = |one: &&TreeConflict, other: &&TreeConflict| {
        let by_id = || (&one.tree, &one.other).cmp(&(&other.tree, &other.other));
        lacking_m(other).total_cmp(&lacking_m(one)).then_with(by_id)
    };
    if pairs.len() > most {
        // Of many thousands only the worst are put in order.
        pairs.select_nth_unstable_by(most, by_lack);
        pairs.truncate(most);
    }
    pairs.sort_by(by_lack);
}

/// What the distance between two trees lacks, in metres.
fn lacking_m(pair: &TreeConflict) -> f64 {
    let number = |name: &str| {
        let mut args = pair.reason.args.iter();
        args.find_map(|arg| match arg.value {
            ArgValue::Number { value, .. } if arg.name == name => Some(value),
            _ => None,
        })
    };
    number("needed").unwrap_or(0.0) - number("apart").unwrap_or(0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{Quantity, Reason};

    fn pair(tree: &str, apart_m: f64, needed_m: f64) -> TreeConflict {
        TreeConflict {
            tree: tree.into(),
            other: "z".into(),
            reason: Reason::new("conflict.keep-out-overlaps")
                .number("apart", apart_m, Quantity::LengthM)
                .number("needed", needed_m, Quantity::LengthM),
        }
    }

    #[test]
    fn the_pair_that_lacks_the_most_distance_comes_first_and_equals_keep_their_order() {
        let all = [
            pair("a", 20.0, 25.0),
            pair("b", 4.0, 30.0),
            pair("d", 9.0, 14.0),
            pair("c", 9.0, 14.0),
        ];
        let tags = |most: usize| {
            let mut pairs: Vec<&TreeConflict> = all.iter().collect();
            worst_first(&mut pairs, most);
            let tags: Vec<&str> = pairs.iter().map(|one| one.tree.as_str()).collect();
            tags.concat()
        };
        assert_eq!(tags(9), "bacd");
        assert_eq!(tags(2), "ba");
    }
}
