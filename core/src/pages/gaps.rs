//! What is still to check, each gap with what closes it, where one offer plainly does.

use serde_json::{Value, json};

use super::command_kind::CommandKind as C;
use super::desk::PageDesk;
use super::looks::Looks;
use super::offer::Offer;
use super::walk::chosen;
use crate::record::{ArgValue, Id, Permission, Reason, Site, Tree, Visit};
use crate::words::Said;

/// Something still to check.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct PageGap {
    /// What is missing.
    pub words: String,
    /// What closes it, with what is known filled in; nothing where no single offer does.
    pub offer: Option<Offer>,
}

/// The gaps of a site: permissions, rescue plan, weather.
pub(super) fn site_gaps(desk: &PageDesk, site: &Site, gaps: &[Reason]) -> Vec<PageGap> {
    let offer = |gap: &Reason| {
        permission_offer(desk, site, gap)
            .or_else(|| rescue_offer(desk, site, gap))
            .or_else(|| weather_offer(desk, site, gap))
    };
    with_offers(desk, gaps, &offer)
}

/// The gaps of a tree: its own facts, the measures of the inspection of the day, permissions, weather.
pub(super) fn tree_gaps(
    desk: &PageDesk,
    site: &Site,
    tree: &Tree,
    looks: &Looks,
    gaps: &[Reason],
) -> Vec<PageGap> {
    let known = looks.today.map(|look| (&look.id, json!(look)));
    let offer = |gap: &Reason| {
        tree_offer(desk, tree, gap)
            .or_else(|| {
                known
                    .as_ref()
                    .and_then(|(id, look)| look_offer(desk, id, look, gap))
            })
            .or_else(|| permission_offer(desk, site, gap))
            .or_else(|| weather_offer(desk, site, gap))
    };
    with_offers(desk, gaps, &offer)
}

fn with_offers(
    desk: &PageDesk,
    gaps: &[Reason],
    offer: &dyn Fn(&Reason) -> Option<Offer>,
) -> Vec<PageGap> {
    gaps.iter()
        .map(|gap| PageGap {
            words: desk.words.reason(gap),
            offer: offer(gap).map(|offer| Offer {
                id: format!("{}.{}", gap.code, offer.id),
                ..offer
            }),
        })
        .collect()
}

/// A permission that nobody asked for is added with its kind filled in; one that waits is changed.
fn permission_offer(desk: &PageDesk, site: &Site, gap: &Reason) -> Option<Offer> {
    if !gap.code.starts_with("gap.permission") {
        return None;
    }
    let asked = site.permissions.iter().find(|one| one.id == gap.about);
    if let Some(permission) = asked.filter(|_| !gap.about.is_empty()) {
        return Some(desk.offer_on::<Permission>(C::ChangePermission, &gap.about, permission));
    }
    let term = gap.args.iter().find_map(|arg| match &arg.value {
        ArgValue::Term { key } => key.strip_prefix("permission-kind."),
        _ => None,
    })?;
    let id = term.replace('-', "_");
    let mut offer = desk.offer_asking(C::AddPermission, &site.id, None, &|input| {
        input != "permission.kind"
    });
    offer.id = format!("{}.{id}", offer.id);
    offer.words = desk.words.say(
        "page.note-permission",
        &[("permission", Said::Term(&format!("permission-kind.{term}")))],
    );
    offer.fixed = vec![chosen("permission.kind", &id)];
    Some(offer)
}

fn rescue_offer(desk: &PageDesk, site: &Site, gap: &Reason) -> Option<Offer> {
    let plan = json!({ "rescue": site.rescue });
    let is_rescue = gap.code.starts_with("gap.rescue-");
    is_rescue.then(|| desk.offer(C::WriteRescuePlan, &site.id, Some(&plan)))
}

/// The weather of the hour; the visit of the day, where that was not begun.
fn weather_offer(desk: &PageDesk, site: &Site, gap: &Reason) -> Option<Offer> {
    if !gap.code.starts_with("gap.weather") {
        return None;
    }
    let today = |visit: &&Visit| visit.day == desk.today;
    let Some(visit) = site.visits.iter().find(today) else {
        return Some(desk.offer(C::StartVisit, &site.id, None));
    };
    let now = visit.weather.iter().find(|at| at.hour == desk.hour);
    Some(match now {
        Some(known) => desk.offer_on(C::NoteWeather, &visit.id, known),
        None => desk.offer(C::NoteWeather, &visit.id, None),
    })
}

/// What is the tree's own.
fn tree_offer(desk: &PageDesk, tree: &Tree, gap: &Reason) -> Option<Offer> {
    let input = match gap.code.as_str() {
        "gap.species" => "tree.species",
        "gap.position" => "tree.position",
        "gap.way-of-working" => "tree.way",
        "gap.full-check" | "gap.full-check-over" => {
            return Some(desk.offer(C::StartFullCheck, &tree.id, None));
        }
        _ => return None,
    };
    let own = json!(tree);
    Some(desk.offer_asking(C::ChangeTree, &tree.id, Some(&own), &|id| id == input))
}

/// What belongs to the inspection of the day.
fn look_offer(desk: &PageDesk, id: &Id, look: &Value, gap: &Reason) -> Option<Offer> {
    let whole = |command: C| Some(desk.offer(command, id, Some(look)));
    let asked = |inputs: &[&str]| {
        let asks = |input: &str| inputs.contains(&input);
        Some(desk.offer_asking(C::RecordMeasures, id, Some(look), &asks))
    };
    match gap.code.as_str() {
        "gap.height" => whole(C::RecordHeightByAngles),
        "gap.girth" => whole(C::RecordGirth),
        "gap.lean" => whole(C::RecordLeanByEye),
        "gap.anchor" => Some(desk.offer(C::AddAnchor, id, None)),
        "gap.life" => asked(&["tree.life", "tree.dead_since"]),
        "gap.wires-asked" => asked(&["tree.wires_near"]),
        "gap.base-asked" => asked(&["tree.base_sound"]),
        "gap.beetle" => asked(&["tree.beetle_killed"]),
        "gap.dieback" => asked(&["tree.dieback"]),
        "gap.lean-new" => asked(&["tree.lean_is_new"]),
        "gap.crown-radius" | "gap.crown-base" => asked(&["tree.crown_radius", "tree.crown_base"]),
        "gap.ground-dug" => asked(&["tree.ground_dug", "tree.dug_when", "tree.dug_distance"]),
        "gap.base-mallet" => asked(&[
            "tree.base_north",
            "tree.base_east",
            "tree.base_south",
            "tree.base_west",
        ]),
        _ => None,
    }
}
