//! What can be done on a tree's page. What belongs to an inspection waits until one is begun.

use super::command_kind::CommandKind as C;
use super::desk::PageDesk;
use super::looks::Looks;
use super::offer::Offer;
use super::walk::{chosen, id_of};
use crate::record::{Id, Tree, WayOfWorking};

/// The offers of a tree's page.
pub(super) fn tree_offers(desk: &PageDesk, tree: &Tree, looks: &Looks) -> Vec<Offer> {
    let mut offers = vec![
        desk.offer(C::StartInspection, &tree.id, None),
        desk.offer_on(C::ChangeTree, &tree.id, tree),
        desk.offer(C::AddWork, &tree.id, None),
    ];
    offers.extend(same_weather(desk));
    offers.extend(inspection_offers(desk, looks));
    offers.push(desk.offer(C::RemoveTree, &tree.id, None));
    if let Some((site, _)) = desk.site {
        offers.extend(desk.undo_offers(&site.id));
    }
    offers
}

/// The ways in: a stop on sight, triage, the full check. Once one is begun it goes on.
pub(super) fn doors(desk: &PageDesk, tree: &Tree, looks: &Looks) -> Vec<Offer> {
    let mut seen = looks.today.and_then(|look| serde_json::to_value(look).ok());
    if let Some(fields) = seen.as_mut().and_then(|seen| seen.as_object_mut()) {
        fields.extend(
            tree.species
                .as_ref()
                .map(|name| ("species".to_owned(), name.as_str().into())),
        );
    }
    vec![
        desk.offer(C::StopOnSight, &tree.id, None),
        desk.offer(C::RecordTriage, &tree.id, seen.as_ref()),
        desk.offer(C::StartFullCheck, &tree.id, None),
    ]
}

/// The ways of working, a tap each.
pub(super) fn ways_of_working(desk: &PageDesk, tree: &Tree) -> Vec<Offer> {
    WayOfWorking::IN_ORDER
        .into_iter()
        .map(|way| {
            let id = id_of(&way);
            let mut offer = desk.offer_asking(C::ChangeTree, &tree.id, None, &|_| false);
            offer.id = format!("{}.{id}", C::ChangeTree.id());
            offer.words = desk.words.label_of(&way);
            offer.fixed = vec![chosen("tree.way", &id)];
            offer.chosen = tree.way == Some(way);
            offer
        })
        .collect()
}

/// The weather as it was noted last today, at one tap.
fn same_weather(desk: &PageDesk) -> Option<Offer> {
    let (site, _) = desk.site?;
    let visit = site.visits.iter().find(|visit| visit.day == desk.today)?;
    let noted = |before: bool| {
        let mut hours = visit.weather.iter();
        hours.any(|at| {
            if before {
                at.hour < desk.hour
            } else {
                at.hour == desk.hour
            }
        })
    };
    (noted(true) && !noted(false)).then(|| desk.offer(C::SameWeather, &visit.id, None))
}

fn inspection_offers(desk: &PageDesk, looks: &Looks) -> Vec<Offer> {
    let begun = looks.today;
    let id = begun.map_or_else(Id::default, |look| look.id.clone());
    let waits = |offer: Offer| desk.unless(offer, begun.is_none(), "page.start-inspection-first");
    let plain = |command: C| waits(desk.offer(command, &id, None));
    let no_line = desk.site.is_none_or(|(site, _)| site.lines.is_empty());
    let no_target = desk.site.is_none_or(|(site, _)| site.targets.is_empty());
    let no_anchor = begun.is_none_or(|look| look.anchors.is_empty());
    let known = begun.and_then(|look| serde_json::to_value(look).ok());
    let with_known = |command: C| desk.offer(command, &id, known.as_ref());
    let full_check = with_known(C::RecordFullCheck);
    let measures = with_known(C::RecordMeasures);
    let girth = with_known(C::RecordGirth);
    vec![
        waits(full_check),
        waits(measures),
        plain(C::RecordHeightByAngles),
        plain(C::RecordHeightFromTwoPositions),
        plain(C::RecordLeanFromTwoSides),
        plain(C::RecordLeanByEye),
        waits(girth),
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
