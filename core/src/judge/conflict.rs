//! Trees that may not be worked on at the same time: where one is worked on, nobody may stand
//! inside the other's keep-out.

use std::cmp::Ordering;
use std::collections::BTreeSet;

use crate::measure::place::EastNorth;
use crate::record::{
    CROWN_RADIUS_M, Id, Judgement, Quantity, Reason, Tree, TreeConflict, WayOfWorking,
};

use super::case::SiteContext;
use super::zone_reach::R95_OF_R68;

/// A tree with planned work, its place and how far its work reaches.
struct Worked<'a> {
    tree: &'a Tree,
    place: EastNorth,
    r95_m: f64,
    keep_out_m: f64,
    crown_m: f64,
}

/// Every pair of trees with planned work that are too near to each other.
pub(crate) fn conflicts(site: &SiteContext, judged: &[(&Tree, &Judgement)]) -> Vec<TreeConflict> {
    let mut worked: Vec<Worked> = judged
        .iter()
        .filter_map(|(tree, judgement)| worked(site, tree, judgement))
        .map(|one| one.with_crown(site))
        .collect();
    worked.sort_by(from_the_south);
    let furthest = worked.iter().map(Worked::reach_m).fold(0.0, f64::max);
    let mut conflicts = Vec::new();
    for (place, one) in worked.iter().enumerate() {
        for other in worked.iter().skip(place + 1) {
            if other.place.north_m - one.place.north_m > one.reach_m() + furthest {
                break;
            }
            conflicts.extend(conflict(one, other));
        }
    }
    in_order(&mut conflicts);
    conflicts
}

/// The pairs in which one of the trees `changed` is, as [`conflicts`] finds them among all.
pub(crate) fn conflicts_of(
    site: &SiteContext,
    judged: &[(&Tree, &Judgement)],
    changed: &BTreeSet<Id>,
) -> Vec<TreeConflict> {
    let is_own = |(tree, _): &&(&Tree, &Judgement)| changed.contains(&tree.id);
    let own: Vec<Worked> = judged
        .iter()
        .filter(is_own)
        .filter_map(|(tree, judgement)| worked(site, tree, judgement))
        .map(|one| one.with_crown(site))
        .collect();
    let mut conflicts = Vec::new();
    if own.is_empty() {
        return conflicts;
    }
    for (tree, judgement) in judged {
        let Some(other) = worked(site, tree, judgement) else {
            continue;
        };
        // What the other's crown adds is looked up only where it can matter.
        let most_m = other.reach_m() + CROWN_RADIUS_M.max;
        let near = |one: &Worked| one.place.distance_m(other.place) <= one.reach_m() + most_m;
        if !own.iter().any(near) {
            continue;
        }
        let other = other.with_crown(site);
        // Of two that changed, each would find the other.
        let met = |one: &Worked| match changed.contains(&other.tree.id) {
            true => one.tree.id < other.tree.id,
            false => true,
        };
        for one in own.iter().filter(|one| met(one)) {
            conflicts.extend(match from_the_south(one, &other) {
                Ordering::Greater => conflict(&other, one),
                _ => conflict(one, &other),
            });
        }
    }
    conflicts
}

/// The order in which pairs are told.
pub(crate) fn in_order(pairs: &mut [TreeConflict]) {
    pairs.sort_by(|a, b| (&a.tree, &a.other).cmp(&(&b.tree, &b.other)));
}

fn from_the_south(a: &Worked, b: &Worked) -> Ordering {
    let by_place = a.place.north_m.total_cmp(&b.place.north_m);
    by_place.then_with(|| a.tree.id.cmp(&b.tree.id))
}

impl Worked<'_> {
    /// The same with the crown that was seen.
    fn with_crown(mut self, site: &SiteContext) -> Self {
        let crown = site.seen(self.tree).and_then(|seen| seen.look.crown);
        self.crown_m = crown.map_or(0.0, |crown| crown.radius_m);
        self
    }

    /// How far it can be in the way of another's own reach.
    fn reach_m(&self) -> f64 {
        self.keep_out_m + self.crown_m + self.r95_m
    }
}

/// A tree on which work is planned and not done, without its crown.
fn worked<'a>(site: &SiteContext, tree: &'a Tree, judgement: &Judgement) -> Option<Worked<'a>> {
    let idle = matches!(
        tree.way,
        None | Some(WayOfWorking::NoWork | WayOfWorking::InspectOnly)
    );
    if tree.work.is_empty() || tree.work_is_done() || idle {
        return None;
    }
    let at = tree.position?;
    let zone = judgement.zones.iter().find(|zone| zone.planned)?;
    Some(Worked {
        tree,
        place: site.plane?.metres(at.point()),
        r95_m: R95_OF_R68 * at.accuracy_m.unwrap_or(0.0),
        keep_out_m: zone.keep_out_m.max(zone.keep_out_downhill_m),
        crown_m: 0.0,
    })
}

fn conflict(one: &Worked, other: &Worked) -> Option<TreeConflict> {
    let apart_m = one.place.distance_m(other.place);
    let free_m = (apart_m - one.r95_m - other.r95_m).max(0.0);
    let needed_m = (one.keep_out_m + other.crown_m).max(other.keep_out_m + one.crown_m);
    (free_m <= needed_m).then(|| {
        let (first, second) = if one.tree.id <= other.tree.id {
            (one, other)
        } else {
            (other, one)
        };
        TreeConflict {
            tree: first.tree.id.clone(),
            other: second.tree.id.clone(),
            reason: Reason::new("conflict.keep-out-overlaps")
                .text("tree", &first.tree.tag)
                .text("other", &second.tree.tag)
                .number("apart", apart_m, Quantity::LengthM)
                .number("needed", needed_m, Quantity::LengthM),
        }
    })
}
