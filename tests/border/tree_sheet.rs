//! The sheet of a tree and the gaps of a page: one tap where one tap is enough, and a way on from what
//! is missing.

use bolewalk_core::pages::{CommandKind, EntryValue, InputKind, Offer, PageGap};
use bolewalk_core::record::{Id, LatLon};

use super::{Hand, choice, here, number, words};

impl Hand {
    /// Takes an offer with what it has fixed and what is entered besides.
    fn take(&self, offer: &Offer, entered: &[(&str, EntryValue)]) -> Id {
        assert!(offer.enabled, "{}: {}", offer.id, offer.why_not);
        let fixed = offer.fixed.iter();
        let fixed = fixed.map(|entry| (entry.input.as_str(), entry.value.clone()));
        let entries: Vec<_> = fixed.chain(entered.iter().cloned()).collect();
        self.made(offer.command, &Id(offer.about.clone()), &entries)
    }
}

fn gap<'g>(gaps: &'g [PageGap], words: &str) -> &'g PageGap {
    let mut found = gaps.iter().filter(|gap| gap.words == words);
    found
        .next()
        .unwrap_or_else(|| panic!("no {words}: {gaps:?}"))
}

#[test]
fn the_way_of_working_is_one_tap_and_shows_what_stands() {
    let (_folder, hand) = here();
    let (_, tree, _) = hand.site_with_tree();
    let ways = hand.tree_page(&tree).ways_of_working;
    assert_eq!(ways.len(), 8);
    assert!(ways.iter().all(|way| way.inputs.is_empty() && !way.chosen));
    let prune = ways
        .iter()
        .find(|way| way.id == "tree.change.prune")
        .unwrap();
    hand.take(prune, &[]);
    let page = hand.tree_page(&tree);
    let chosen: Vec<&str> = page
        .ways_of_working
        .iter()
        .filter(|way| way.chosen)
        .map(|way| way.id.as_str())
        .collect();
    assert_eq!(chosen, ["tree.change.prune"]);
    assert!(page.title.starts_with('7'), "nothing else is changed");
}

#[test]
fn a_permission_that_is_missing_is_noted_from_its_gap() {
    let (_folder, hand) = here();
    let (site, ..) = hand.site_with_tree();
    let page = hand.site_page(&site);
    let bats = gap(&page.gaps, "Bats: not asked yet.")
        .offer
        .as_ref()
        .unwrap();
    assert!(
        bats.inputs
            .iter()
            .all(|input| input.id != "permission.kind")
    );
    hand.take(bats, &[("permission.answer", choice("waiting"))]);
    let page = hand.site_page(&site);
    assert_eq!(page.permissions[0].words, "Bats");
    let waits = gap(&page.gaps, "Bats: asked, not answered yet.");
    let answer = [("permission.answer", choice("given"))];
    hand.take(waits.offer.as_ref().unwrap(), &answer);
    let page = hand.site_page(&site);
    assert!(page.permissions.len() == 1 && !page.gaps.iter().any(|gap| gap.words.contains("Bats")));
}

#[test]
fn a_measure_that_is_missing_is_taken_from_its_gap() {
    let (_folder, hand) = here();
    let (_, tree, _) = hand.site_with_tree();
    hand.made(CommandKind::StartFullCheck, &tree, &[]);
    let page = hand.tree_page(&tree);
    let girth = gap(&page.gaps, "Measure the girth.")
        .offer
        .as_ref()
        .unwrap();
    hand.take(girth, &[("tree.girth", number("188 cm"))]);
    let page = hand.tree_page(&tree);
    assert!(
        !page
            .gaps
            .iter()
            .any(|gap| gap.words == "Measure the girth.")
    );
}

#[test]
fn a_distance_to_a_wire_is_seen_and_can_be_removed() {
    let (_folder, hand) = here();
    let (site, tree, inspection) = hand.site_with_tree();
    let points = [42.3301, 42.3303].map(|lat_deg| LatLon {
        lat_deg,
        lon_deg: -71.12,
    });
    let points = points.to_vec();
    let line = [
        ("line.name", words("House line")),
        ("line.kind", choice("service")),
        ("line.way", EntryValue::Outline { points }),
    ];
    let line = hand.made(CommandKind::AddOverheadLine, &site, &line);
    let distance = [
        ("wire.line", choice(&line.0)),
        ("wire.distance", number("4.5 m")),
    ];
    hand.made(CommandKind::MeasureWire, &inspection, &distance);
    let page = hand.tree_page(&tree);
    assert_eq!(page.wires[0].words, "House line");
    assert!(page.wires[0].detail.ends_with("from the crown"));
    hand.take(&page.wires[0].offers[0], &[]);
    assert_eq!(hand.tree_page(&tree).wires, []);
}

#[test]
fn who_is_asked_for_a_person_is_told_to_add_people_first() {
    let (_folder, hand) = here();
    let (site, ..) = hand.site_with_tree();
    let aider = |hand: &Hand| {
        let page = hand.site_page(&site);
        let mut offers = page.offers.into_iter();
        let plan = offers.find(|one| one.command == CommandKind::WriteRescuePlan);
        let mut inputs = plan.unwrap().inputs.into_iter();
        inputs
            .find(|input| input.id == "rescue.first_aider")
            .unwrap()
    };
    let nobody = aider(&hand);
    assert!(nobody.help.contains("Add people first"), "{nobody:?}");
    let holder = |hand: &Hand| {
        let mut offers = hand.book_page().offers.into_iter();
        offers.find(|one| one.command == CommandKind::ChangeSettings)
    };
    assert!(!holder(&hand).unwrap().enabled, "there is nobody to choose");
    let ana = [("person.name", words("Ana"))];
    let ana = hand.made(CommandKind::AddPerson, &Id::default(), &ana);
    let asked = aider(&hand);
    assert!(!asked.help.contains("first"), "{asked:?}");
    assert!(matches!(asked.kind, InputKind::Choice { choices } if choices.len() == 1));
    hand.take(
        &holder(&hand).unwrap(),
        &[("settings.person", choice(&ana.0))],
    );
    assert_eq!(holder(&hand), None);
    assert!(
        hand.book_page()
            .lines
            .iter()
            .any(|line| line.words == "Ana")
    );
}
