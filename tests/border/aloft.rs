//! The climb and afterwards: found aloft, landed elsewhere, near misses, gear, work, the next look.

use bolewalk_core::pages::{AloftPage, CommandKind, Offer, Page, PageAddress};
use bolewalk_core::record::{Id, Verdict};

use super::{Hand, choice, number, words};

fn aloft(hand: &Hand, tree: &Id) -> AloftPage {
    let address = PageAddress::Aloft { tree: tree.clone() };
    match hand.book.page(address).unwrap() {
        Page::Aloft(page) => page,
        other => panic!("{other:?}"),
    }
}

/// Takes an offer that asks nothing.
fn tap(hand: &Hand, offer: &Offer) {
    assert!(offer.inputs.is_empty() && offer.enabled, "{offer:?}");
    let (about, token) = (offer.about.clone(), offer.token.clone());
    hand.book
        .act(offer.command, about, offer.fixed.clone(), token)
        .unwrap();
}

#[test]
fn what_is_found_aloft_bars_and_is_cleared_at_one_tap() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    hand.signed_in("Ana");
    let (site, tree, _) = hand.site_with_tree();
    let hanger = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    hand.act(CommandKind::FindAloft, &tree, &hanger).unwrap();
    let page = aloft(&hand, &tree);
    assert_eq!(page.verdict, Verdict::Barred);
    assert!(!page.stops.is_empty());
    assert_eq!((page.found.len(), page.hangers.len()), (1, 1));
    tap(&hand, &page.hangers[0].offers[0]);
    let page = aloft(&hand, &tree);
    assert!(page.hangers.is_empty());
    assert_eq!(page.verdict, Verdict::Incomplete);
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    assert_eq!(aloft(&hand, &tree).hangers.len(), 1);
}

#[test]
fn the_plan_follows_the_line_to_another_anchor() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, inspection) = hand.site_with_tree();
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &[]);
    let plan = [
        ("climb.anchor", choice(anchor.as_str())),
        ("climb.system", choice("moving_rope")),
    ];
    let plan = hand.made(CommandKind::PlanClimb, &inspection, &plan);
    let refused = hand
        .act(CommandKind::LandElsewhere, &plan, &[])
        .unwrap_err();
    assert!(hand.book.words_of(refused).unwrap().contains("needed"));
    let landed = [
        ("anchor.height", number("11 m")),
        ("anchor.diameter", number("24 cm")),
    ];
    hand.act(CommandKind::LandElsewhere, &plan, &landed)
        .unwrap();
    let page = aloft(&hand, &tree);
    assert!(page.plans[0].words.contains("anchor B"), "{:?}", page.plans);
    assert_eq!(hand.tree_page(&tree).anchors.len(), 2);
    let back = [("climb.anchor", choice(anchor.as_str()))];
    hand.act(CommandKind::LandElsewhere, &plan, &back).unwrap();
    assert!(aloft(&hand, &tree).plans[0].words.contains("anchor A"));
}

#[test]
fn gear_that_took_a_shock_is_out_of_use_until_it_is_taken_back() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, _) = hand.site_with_tree();
    let rope = [
        ("gear.name", words("Blue 45")),
        ("gear.kind", choice("climbing_line")),
    ];
    hand.act(CommandKind::AddGear, &Id::default(), &rope)
        .unwrap();
    tap(&hand, &aloft(&hand, &tree).gear[0].offers[0]);
    let page = aloft(&hand, &tree);
    assert!(
        page.gear[0].detail.contains("shock load on"),
        "{:?}",
        page.gear
    );
    assert!(page.gear[0].offers.is_empty());
    assert_eq!(page.undo_gear.id, "edit.undo.gear");
    tap(&hand, &page.undo_gear);
    assert_eq!(aloft(&hand, &tree).gear[0].detail, "climbing line");
}

#[test]
fn the_climbers_gear_comes_first_and_the_rest_is_folded() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let none = Id::default();
    let (_, tree, inspection) = hand.site_with_tree();
    let person = |name: &str| {
        let name = [("person.name", words(name))];
        hand.made(CommandKind::AddPerson, &none, &name)
    };
    let (ana, ben) = (person("Ana"), person("Ben"));
    let piece = |name: &str, user: Option<&Id>| {
        let mut entries = vec![("gear.name", words(name)), ("gear.kind", choice("harness"))];
        entries.extend(user.map(|user| ("gear.used_by", choice(user.as_str()))));
        hand.made(CommandKind::AddGear, &none, &entries);
    };
    piece("Shared", None);
    piece("Ana's", Some(&ana));
    piece("Ben's", Some(&ben));
    let names = |records: &[bolewalk_core::pages::PageRecord]| {
        let names = records.iter().map(|one| one.words.clone());
        names.collect::<Vec<_>>()
    };
    // Nobody climbs by a plan, and nobody holds the phone: what the crew shares comes first.
    let page = aloft(&hand, &tree);
    assert_eq!(names(&page.gear), ["Shared"]);
    assert_eq!(page.other_gear_words, "2 other pieces of gear");
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &[]);
    let plan = [
        ("climb.anchor", choice(anchor.as_str())),
        ("climb.system", choice("moving_rope")),
        ("climb.climber", choice(ben.as_str())),
    ];
    hand.made(CommandKind::PlanClimb, &inspection, &plan);
    let page = aloft(&hand, &tree);
    assert_eq!(names(&page.gear), ["Ben's"]);
    assert_eq!(names(&page.other_gear), ["Shared", "Ana's"]);
    assert!(!page.reason.is_empty(), "the verdict has its first reason");
}

/// The text of a paper, by an outside reader.
fn text_of(path: &std::path::Path) -> Option<String> {
    let read = std::process::Command::new("pdftotext")
        .arg(path)
        .arg("-")
        .output();
    Some(String::from_utf8_lossy(&read.ok()?.stdout).into_owned())
}

#[test]
fn the_client_reads_what_was_not_done_and_never_a_near_miss() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, _) = hand.site_with_tree();
    let work = hand.made(
        CommandKind::AddWork,
        &tree,
        &[("work.operation", choice("deadwood"))],
    );
    let near = [("near_miss.what", words("A saw slipped from its lanyard"))];
    hand.act(CommandKind::NoteNearMiss, &tree, &near).unwrap();
    let part_done = [("work.done", choice("part_done"))];
    assert!(
        hand.act(CommandKind::LeaveWork, &work, &part_done).is_err(),
        "a reason is asked"
    );
    let left = [
        ("work.done", choice("part_done")),
        ("work.why", choice("weather")),
        ("work.left", words("the limb over the shed")),
    ];
    hand.act(CommandKind::LeaveWork, &work, &left).unwrap();
    let next = [("inspection.next_look", words("2027-04-01"))];
    hand.act(CommandKind::SetNextLook, &tree, &next).unwrap();
    let page = aloft(&hand, &tree);
    assert_eq!(page.near_misses[0].words, "A saw slipped from its lanyard");
    assert_eq!(page.next_look.words, "April 1, 2027");
    let said = "part done (the weather), May 14, 2026: the limb over the shed";
    assert!(page.work[0].detail.starts_with(said), "{:?}", page.work);
    let summary = folder.path().join("summary.pdf");
    hand.book
        .write_summary(site.0.clone(), summary.display().to_string(), Vec::new())
        .unwrap();
    let Some(text) = text_of(&summary) else {
        println!("SKIPPED: pdftotext is not here, so the paper was not read");
        return;
    };
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(text.contains("the limb over the shed"), "{text}");
    assert!(text.contains("April 1, 2027"), "{text}");
    assert!(!text.contains("saw slipped") && !text.to_lowercase().contains("near miss"));
    hand.act(CommandKind::FinishWork, &work, &[]).unwrap();
    assert!(
        aloft(&hand, &tree).work[0]
            .detail
            .starts_with("done, May 14, 2026")
    );
}

#[test]
fn landed_elsewhere_waits_for_a_plan_and_says_so() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, inspection) = hand.site_with_tree();
    let land = |page: &AloftPage| {
        let mut offers = page.offers.iter();
        let found = offers.find(|one| one.command == CommandKind::LandElsewhere);
        found.cloned()
    };
    let waiting = land(&aloft(&hand, &tree)).unwrap();
    assert!(!waiting.enabled && waiting.inputs.is_empty());
    assert!(waiting.why_not.contains("page of the tree"), "{waiting:?}");
    let anchor = [("anchor.height", number("40 ft"))];
    let anchor = hand.made(CommandKind::AddAnchor, &inspection, &anchor);
    let plan = [
        ("climb.anchor", choice(anchor.as_str())),
        ("climb.system", choice("moving_rope")),
    ];
    hand.made(CommandKind::PlanClimb, &inspection, &plan);
    let page = aloft(&hand, &tree);
    assert!(land(&page).is_none());
    assert_eq!(page.plans[0].offers[0].command, CommandKind::LandElsewhere);
}
