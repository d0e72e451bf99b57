//! Trees that may not be worked on at the same time: where one is worked on, nobody may stand
//! inside the other's keep-out.

use crate::measure::place::EastNorth;
use crate::record::{Judgement, Quantity, Reason, Tree, TreeConflict, WayOfWorking};

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
pub(crate) fn conflicts(
    site: &SiteContext,
    judged: &[(&Tree, &Judgement, f64)],
) -> Vec<TreeConflict> {
    let mut worked: Vec<Worked> = judged
        .iter()
        .filter_map(|(tree, judgement, crown_m)| worked(site, tree, judgement, *crown_m))
        .collect();
    worked.sort_by(|a, b| {
        let by_place = a.place.north_m.total_cmp(&b.place.north_m);
        by_place.then_with(|| a.tree.id.cmp(&b.tree.id))
    });
    let reach = |one: &Worked| one.keep_out_m + one.crown_m + one.r95_m;
    let furthest = worked.iter().map(reach).fold(0.0, f64::max);
    let mut conflicts = Vec::new();
    for (place, one) in worked.iter().enumerate() {
        for other in worked.iter().skip(place + 1) {
            if other.place.north_m - one.place.north_m > reach(one) + furthest {
                break;
            }
            conflicts.extend(conflict(one, other));
        }
    }
    conflicts.sort_by(|a, b| (&a.tree, &a.other).cmp(&(&b.tree, &b.other)));
    conflicts
}

fn worked<'a>(
    site: &SiteContext,
    tree: &'a Tree,
    judgement: &Judgement,
    crown_m: f64,
) -> Option<Worked<'a>> {
    let idle = matches!(
        tree.way,
        None | Some(WayOfWorking::NoWork | WayOfWorking::InspectOnly)
    );
    if tree.work.is_empty() || idle {
        return None;
    }
    let at = tree.position?;
    let zone = judgement.zones.iter().find(|zone| zone.planned)?;
    Some(Worked {
        tree,
        place: site.plane?.metres(at.point()),
        r95_m: R95_OF_R68 * at.accuracy_m.unwrap_or(0.0),
        keep_out_m: zone.keep_out_m.max(zone.keep_out_downhill_m),
        crown_m,
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
