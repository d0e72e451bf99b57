//! The page of a site on the day: the visit, what to close for the planned work, and why there is no plan.

use bolewalk_core::pages::{CommandKind, EntryValue, LineState};
use bolewalk_core::record::{Id, LatLon, ZoneAction};

use super::{Hand, choice, here, number, words};

fn fix(lat_deg: f64) -> EntryValue {
    EntryValue::Fix {
        lat_deg,
        lon_deg: -71.12,
        accuracy_m: Some(2.0),
    }
}

/// A drive some metres north of the tree, with people on it, that can be closed.
fn drive(hand: &Hand, site: &Id, lat_deg: f64) -> Id {
    let ground = [-71.1202, -71.1198].map(|lon_deg| LatLon { lat_deg, lon_deg });
    let entries = [
        ("target.name", words("Drive")),
        ("target.kind", choice("road")),
        ("target.occupancy", choice("occasional")),
        ("target.can_be_closed", EntryValue::YesNo { yes: true }),
        ("target.form", choice("way")),
        (
            "target.ground",
            EntryValue::Outline {
                points: ground.to_vec(),
            },
        ),
    ];
    hand.made(CommandKind::AddTarget, site, &entries)
}

#[test]
fn what_the_planned_way_asks_for_stands_by_what_to_do() {
    let (_folder, hand) = here();
    let (site, tree, inspection) = hand.site_with_tree();
    drive(&hand, &site, 42.33015);
    let size = [
        ("tree.height", number("18 m")),
        ("tree.lean", number("0")),
        ("tree.crown_radius", number("4 m")),
    ];
    hand.made(CommandKind::RecordMeasures, &inspection, &size);
    let place = [("tree.position", fix(42.33))];
    hand.made(CommandKind::ChangeTree, &tree, &place);
    let work = [("work.operation", choice("removal"))];
    hand.made(CommandKind::AddWork, &tree, &work);
    let page = hand.site_page(&site);
    assert_eq!(page.to_close, [], "no way of working is planned");
    let fell = [("tree.way", choice("fell_whole"))];
    hand.made(CommandKind::ChangeTree, &tree, &fell);
    let page = hand.site_page(&site);
    assert_eq!(page.to_close[0].action, ZoneAction::CloseOff);
    assert_eq!(page.to_close[0].words, "Close off");
    let thing = &page.to_close[0].things[0];
    assert_eq!(thing.label, "Drive");
    assert!(thing.words.contains("tree 7 is worked on"), "{thing:?}");
    assert!(thing.why.ends_with("there: 7"), "17 m away: {thing:?}");
    let look = [("tree.way", choice("inspect_only"))];
    hand.made(CommandKind::ChangeTree, &tree, &look);
    assert_eq!(hand.site_page(&site).to_close, [], "looking closes nothing");
}

#[test]
fn the_visit_is_missing_until_it_is_begun() {
    let (_folder, hand) = here();
    let none = Id::default();
    let site = hand.made(CommandKind::AddSite, &none, &[("site.name", words("Hill"))]);
    let page = hand.site_page(&site);
    assert_eq!(page.visit.len(), 1);
    assert_eq!(page.visit[0].state, LineState::Missing);
    assert!(page.visit[0].why.contains("Weather"), "{:?}", page.visit[0]);
    let note = [("visit.note", words("Gate code from the owner"))];
    hand.made(CommandKind::StartVisit, &site, &note);
    let page = hand.site_page(&site);
    assert_eq!(page.visit[0].state, LineState::Known);
    let last = page.visit.last().unwrap();
    assert_eq!(last.words, "Gate code from the owner");
}

#[test]
fn a_site_without_positions_says_why_there_is_no_plan() {
    let (_folder, hand) = here();
    let (site, tree, _) = hand.site_with_tree();
    assert!(hand.site_page(&site).no_plan.contains("position"));
    hand.made(
        CommandKind::ChangeTree,
        &tree,
        &[("tree.position", fix(42.33))],
    );
    assert_eq!(hand.site_page(&site).no_plan, "");
}
