//! Counted: the taps of a stop on sight, a triage, a full check and the same tree again. A tap on an
//! offer, a choice, a tile, a sensor's button or the confirm counts one, as does a drag on a dial and
//! every key typed; the system camera's own buttons do not count, nor what is offered ready.

use std::cell::Cell;
use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::AtomicU32;

use bolewalk_core::field_book::{FieldBook, FixedClock};
use bolewalk_core::pages::{
    CommandKind, Entry, EntryValue, InputKind, Offer, PageAddress, PartOfWalk, TreePage,
};
use bolewalk_core::record::{Id, Look, Moment, Verdict};

use super::{Hand, choice, number, words};

/// Fingers on a screen: takes offers as a shell does, and counts.
struct Fingers<'h> {
    hand: &'h Hand,
    taps: Cell<u32>,
}

impl<'h> Fingers<'h> {
    fn of(hand: &'h Hand) -> Fingers<'h> {
        let taps = Cell::new(0);
        Fingers { hand, taps }
    }

    fn tap(&self) {
        self.taps.set(self.taps.get() + 1);
    }

    fn counted(&self) -> u32 {
        self.taps.replace(0)
    }

    /// Opens an offer, fills inputs one by one, confirms; an offer that asks nothing is one tap.
    fn take(&self, offer: &Offer, filled: &[(&str, EntryValue)]) -> Option<PageAddress> {
        assert!(offer.enabled, "{}: {}", offer.id, offer.why_not);
        self.tap();
        let mut entries: Vec<Entry> = offer.fixed.clone();
        for input in &offer.inputs {
            if let Some(current) = input.current.clone() {
                entries.push(Entry {
                    input: input.id.clone(),
                    value: current,
                });
            }
        }
        for (id, value) in filled {
            let input = offer.inputs.iter().find(|input| input.id == *id);
            let input = input.unwrap_or_else(|| panic!("{} asks for no {id}", offer.id));
            if !matches!(input.kind, InputKind::Fix) {
                // A position comes by itself once the sheet is open.
                self.tap();
            }
            entries.retain(|entry| entry.input != *id);
            entries.push(Entry {
                input: (*id).to_owned(),
                value: value.clone(),
            });
        }
        if !offer.inputs.is_empty() {
            self.tap();
        }
        let book = &self.hand.book;
        let about = offer.about.clone();
        let done = book.act(offer.command, about, entries, offer.token.clone());
        done.unwrap_or_else(|error| panic!("{}: {error:?}", offer.id))
            .go_to
    }
}

/// A hand on a phone whose clock can be set.
fn with_clock(folder: &Path) -> (Hand, Arc<FixedClock>) {
    let clock = FixedClock::at(super::MORNING).unwrap();
    let path = folder.display().to_string();
    let book = FieldBook::open_with_clock(path, "phone-1".to_owned(), clock.clone());
    let hand = Hand {
        book: book.unwrap(),
        taps: AtomicU32::new(0),
    };
    (hand, clock)
}

fn offer<'o>(offers: &'o [Offer], id: &str) -> &'o Offer {
    let mut found = offers.iter().filter(|offer| offer.id == id);
    found.next().unwrap_or_else(|| panic!("no {id}"))
}

fn part<'p>(parts: &'p [PartOfWalk], name: &str) -> &'p PartOfWalk {
    let mut parts = parts.iter();
    parts
        .find(|part| part.words == name)
        .unwrap_or_else(|| panic!("no {name}"))
}

fn photo() -> EntryValue {
    let root = env!("CARGO_MANIFEST_DIR");
    EntryValue::PhotoFile {
        path: format!("{root}/fixtures/photos/progressive.jpg"),
    }
}

fn yes(yes: bool) -> EntryValue {
    EntryValue::YesNo { yes }
}

fn tilt(degrees: f64) -> EntryValue {
    EntryValue::Tilt { degrees }
}

/// A hand at a site where an oak was entered before, so that its species is at hand.
fn at_site(hand: &Hand) -> Id {
    let none = Id::default();
    let units = [("settings.units", choice("metric"))];
    hand.act(CommandKind::ChangeSettings, &none, &units)
        .unwrap();
    let site = hand.made(CommandKind::AddSite, &none, &[("site.name", words("Hill"))]);
    let oak = [
        ("tree.tag", words("1")),
        ("tree.species", choice("Quercus rubra")),
    ];
    hand.act(CommandKind::AddTree, &site, &oak).unwrap();
    hand.act(CommandKind::StartVisit, &site, &[]).unwrap();
    site
}

/// Adds a tree with its tag and position offered ready, and goes to its page.
fn added(fingers: &Fingers, site: &Id, filled: &[(&str, EntryValue)]) -> Id {
    let page = fingers.hand.site_page(site);
    let here = EntryValue::Fix {
        lat_deg: 42.33,
        lon_deg: -71.12,
        accuracy_m: Some(4.0),
    };
    let mut filled = filled.to_vec();
    filled.push(("tree.position", here));
    let next = fingers.take(offer(&page.offers, "tree.add"), &filled);
    let Some(PageAddress::Tree { tree }) = next else {
        panic!("a new tree leads to {next:?}");
    };
    tree
}

fn looked_at(page: &TreePage, name: &str) -> Option<Look> {
    part(&page.walk_round, name).look
}

#[test]
fn a_stop_on_sight_takes_three_taps_and_every_tile_bars() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let site = at_site(&hand);
    let fingers = Fingers::of(&hand);
    let tree = added(&fingers, &site, &[]);
    fingers.counted();
    let page = hand.tree_page(&tree);
    let door = offer(&page.doors, "stop.on_sight");
    let InputKind::Choice { choices } = &door.inputs[0].kind else {
        panic!("{:?}", door.inputs[0].kind);
    };
    let tiles: Vec<String> = choices.iter().map(|tile| tile.id.clone()).collect();
    assert_eq!(tiles[..3], ["hanger", "dead-tree", "touching-wire"]);
    fingers.take(door, &[("on_sight.what", choice("hanger"))]);
    let taps = fingers.counted();
    println!("stop on sight: {taps} taps of at most 3");
    assert!(taps <= 3);
    assert_eq!(hand.tree_page(&tree).verdict, Verdict::Barred);
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    let page = hand.tree_page(&tree);
    assert_eq!(page.verdict, Verdict::Incomplete, "one undo takes it back");
    assert!(page.history.is_empty());
    for tile in tiles {
        let door = hand.tree_page(&tree).doors;
        fingers.take(
            offer(&door, "stop.on_sight"),
            &[("on_sight.what", choice(&tile))],
        );
        assert_eq!(hand.tree_page(&tree).verdict, Verdict::Barred, "{tile}");
        hand.act(CommandKind::Undo, &site, &[]).unwrap();
    }
}

#[test]
fn a_triage_takes_ten_taps_from_the_list_of_trees() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let site = at_site(&hand);
    let fingers = Fingers::of(&hand);
    let tree = added(&fingers, &site, &[]);
    let page = hand.tree_page(&tree);
    let triage = [
        ("tree.species", choice("Quercus rubra")),
        ("triage.size", choice("large")),
        ("tree.wires_near", yes(false)),
        ("tree.life", choice("alive")),
        ("tree.base_sound", yes(true)),
        ("tree.way", choice("prune")),
    ];
    fingers.take(offer(&page.doors, "triage.record"), &triage);
    let taps = fingers.counted();
    println!("triage: {taps} taps of at most 10");
    assert!(taps <= 10);
    let page = hand.tree_page(&tree);
    assert!(page.title.contains("northern red oak"), "{}", page.title);
    let mut lines = page.lines.iter();
    let height = lines.find(|line| line.id == "tree.height").unwrap();
    assert_eq!(height.words, "16.0 m ± 3.0 m · by eye");
    let open: Vec<&str> = page.gaps.iter().map(|gap| gap.words.as_str()).collect();
    assert_eq!(open.len(), 1, "only the full check is left: {open:?}");
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    assert!(
        hand.tree_page(&tree).history.is_empty(),
        "one undo takes the triage back"
    );
}

/// The full check of a typical tree; its site, the tree, the taps.
fn full_check(hand: &Hand) -> (Id, Id, u32) {
    let site = at_site(hand);
    let fingers = Fingers::of(hand);
    let species = ("tree.species", choice("Quercus rubra"));
    let tree = added(&fingers, &site, &[species, ("tree.way", choice("prune"))]);
    let page = || hand.tree_page(&tree);
    fingers.take(offer(&page().doors, "full_check.start"), &[]);
    // Girth, height and lean on one sheet; distance and girth by a drag each, two aims.
    let measures = [
        ("tree.life", choice("alive")),
        ("tree.girth", number("188")),
        ("height.distance", number("20")),
        ("height.up", tilt(41.0)),
        ("height.down", tilt(-4.5)),
        ("lean.upright", yes(true)),
    ];
    fingers.take(offer(&page().offers, "full_check.record"), &measures);
    let mut names: Vec<String> = page().walk_round.into_iter().map(|one| one.words).collect();
    assert_eq!(names.len(), 11);
    for name in names.drain(..) {
        let page = page();
        let mut seen = part(&page.walk_round, &name).offers.iter();
        let seen = seen.find(|offer| offer.id.ends_with(".seen")).unwrap();
        fingers.take(seen, &[]);
        assert_eq!(looked_at(&hand.tree_page(&tree), &name), Some(Look::Seen));
    }
    let findings = [
        (
            "Crown",
            "finding.add.crown",
            "dead-limb",
            Some(("finding.part", choice("limb"))),
        ),
        (
            "Base, with a mallet on four sides",
            "finding.add.base",
            "wound",
            None,
        ),
    ];
    for (name, id, code, place) in findings {
        let page = page();
        let walked = page
            .walk_round
            .iter()
            .find(|one| one.offers.iter().any(|o| o.id == id));
        let walked = walked.unwrap_or_else(|| panic!("{name}"));
        let mut filled = vec![("finding.code", choice(code))];
        filled.extend(place);
        filled.extend([("finding.grade", choice("1")), ("photo.file", photo())]);
        fingers.take(offer(&walked.offers, id), &filled);
    }
    fingers.take(
        offer(&page().offers, "photo.add"),
        &[("photo.file", photo())],
    );
    let anchor = [
        ("anchor.height", number("12")),
        ("anchor.diameter", number("22")),
        ("anchor.diameter_read", choice("by_eye")),
        ("anchor.union", choice("bark_ridge")),
        ("anchor.state", choice("live")),
    ];
    fingers.take(offer(&page().offers, "anchor.add"), &anchor);
    (site, tree.clone(), fingers.counted())
}

#[test]
fn a_full_check_takes_forty_five_taps() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, taps) = full_check(&hand);
    println!("full check: {taps} taps of at most 45");
    assert!(taps <= 45);
    let page = hand.tree_page(&tree);
    assert_eq!(
        (page.findings.len(), page.photos.len(), page.anchors.len()),
        (2, 3, 1)
    );
    let shown: Vec<bool> = page
        .photos
        .iter()
        .map(|one| one.finding.is_empty())
        .collect();
    assert_eq!(shown, [false, false, true]);
    assert!(page.again.is_empty(), "the check itself still goes on");
    let no_all = |offers: &[Offer]| offers.iter().all(|one| !one.words.contains("All"));
    assert!(no_all(&page.offers) && no_all(&page.doors));
}

#[test]
fn the_same_tree_again_that_day_takes_six_taps() {
    let folder = tempfile::tempdir().unwrap();
    let (hand, clock) = with_clock(folder.path());
    let (site, tree, _) = full_check(&hand);
    let visit = {
        let page = hand.site_page(&site);
        Id(offer(&page.offers, "weather.note").about.clone())
    };
    let calm = [
        ("weather.wind_force", number("2")),
        ("weather.no_thunder", yes(true)),
        ("weather.ice", yes(false)),
        ("weather.wet_bark", yes(false)),
        ("weather.light", choice("day")),
    ];
    hand.act(CommandKind::NoteWeather, &visit, &calm).unwrap();
    clock
        .set_to(Moment {
            utc_ms: super::MORNING.utc_ms + 4 * 3_600_000,
            ..super::MORNING
        })
        .unwrap();
    let fingers = Fingers::of(&hand);
    let asked = hand.tree_page(&tree).again.len();
    assert_eq!(asked, 5);
    for at in 0..asked {
        let page = hand.tree_page(&tree);
        let mut seen = page.again[at].offers.iter();
        let seen = seen.find(|offer| offer.id.ends_with(".seen")).unwrap();
        fingers.take(seen, &[]);
    }
    let page = hand.tree_page(&tree);
    let twice = |part: &PartOfWalk| page.again.iter().any(|asked| asked.part == part.part);
    assert!(!page.walk_round.iter().any(twice), "a part is asked once");
    assert_eq!(page.again.len() + page.walk_round.len(), 11);
    fingers.take(offer(&page.offers, "weather.same"), &[]);
    let taps = fingers.counted();
    println!("same day again: {taps} taps of at most 6");
    assert!(taps <= 6);
    let page = hand.tree_page(&tree);
    assert!(page.again.iter().all(|part| part.today), "{:?}", page.again);
    assert_eq!(page.history.len(), 2, "one look for the five parts");
    assert_eq!(
        page.findings.len(),
        2,
        "the rest stands from the earlier look"
    );
    let site = hand.site_page(&site);
    assert!(site.visit.iter().any(|line| line.words.contains("1:00 PM")));
}

#[test]
fn a_stop_on_sight_lies_over_yesterdays_full_check() {
    let folder = tempfile::tempdir().unwrap();
    let (hand, clock) = with_clock(folder.path());
    let (_, tree, _) = full_check(&hand);
    let tomorrow = Moment {
        utc_ms: super::MORNING.utc_ms + 86_400_000,
        ..super::MORNING
    };
    clock.set_to(tomorrow).unwrap();
    let hanger = [("on_sight.what", choice("hanger"))];
    hand.act(CommandKind::StopOnSight, &tree, &hanger).unwrap();
    let page = hand.tree_page(&tree);
    assert_eq!(page.verdict, Verdict::Barred);
    assert_eq!(page.findings.len(), 3, "those of yesterday, and the hanger");
    let mut lines = page.lines.iter();
    let girth = lines.find(|line| line.id == "tree.girth").unwrap();
    assert!(girth.words.starts_with("188 cm"), "{girth:?}");
}
