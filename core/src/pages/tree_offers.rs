//! What can be done on a tree's page. What belongs to an inspection waits until one is begun.

use super::command_kind::CommandKind as C;
use super::desk::PageDesk;
use super::looks::Looks;
use super::offer::Offer;
use crate::record::{Id, Tree};

/// The offers of a tree's page.
pub(super) fn tree_offers(desk: &PageDesk, tree: &Tree, looks: &Looks) -> Vec<Offer> {
    let mut offers = vec![
        desk.offer(C::StartInspection, &tree.id, None),
        desk.offer_on(C::ChangeTree, &tree.id, tree),
        desk.offer(C::AddWork, &tree.id, None),
    ];
    offers.extend(inspection_offers(desk, looks));
    offers.push(desk.offer(C::RemoveTree, &tree.id, None));
    if let Some((site, _)) = desk.site {
        offers.extend(desk.undo_offers(&site.id));
    }
    offers
}

fn inspection_offers(desk: &PageDesk, looks: &Looks) -> Vec<Offer> {
    let begun = looks.today;
    let id = begun.map_or_else(Id::default, |look| look.id.clone());
    let waits = |offer: Offer| desk.unless(offer, begun.is_none(), "page.start-inspection-first");
    let plain = |command: C| waits(desk.offer(command, &id, None));
    let no_line = desk.site.is_none_or(|(site, _)| site.lines.is_empty());
    let no_target = desk.site.is_none_or(|(site, _)| site.targets.is_empty());
    let no_anchor = begun.is_none_or(|look| look.anchors.is_empty());
    let measures = match begun {
        Some(look) => desk.offer_on(C::RecordMeasures, &id, look),
        None => desk.offer(C::RecordMeasures, &id, None),
    };
    vec![
        waits(measures),
        plain(C::RecordHeightByAngles),
        plain(C::LookAtPart),
        desk.unless(plain(C::MeasureWire), no_line, "page.add-line-first"),
        plain(C::AddFinding),
        plain(C::AddSection),
        plain(C::AddAnchor),
        desk.unless(plain(C::PlanClimb), no_anchor, "page.add-anchor-first"),
        plain(C::AddPhoto),
        desk.unless(plain(C::AddRisk), no_target, "page.add-target-first"),
    ]
}
