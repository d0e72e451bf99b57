//! Two visits beside each other, and the stem section's page.

use bolewalk_core::field_book::{FieldBook, FixedClock};
use bolewalk_core::pages::{
    ChangeKind, CommandKind, ComparePage, DrawingAddress, EntryValue, FindingFate, Page,
    PageAddress,
};
use bolewalk_core::record::{Id, MalletSound, Moment, Verdict};

use super::{Hand, MORNING, choice, number, words};

fn compared(hand: &Hand, tree: &Id) -> ComparePage {
    let address = PageAddress::Compare { tree: tree.clone() };
    match hand.book.page(address).unwrap() {
        Page::Compare(page) => page,
        other => panic!("{other:?}"),
    }
}

fn finding(hand: &Hand, look: &Id, code: &str, part: &str, grade: &str) -> Id {
    let entries = [
        ("finding.code", choice(code)),
        ("finding.part", choice(part)),
        ("finding.grade", choice(grade)),
    ];
    hand.made(CommandKind::AddFinding, look, &entries)
}

fn measures(hand: &Hand, look: &Id, girth: &str, lean: &str) {
    let entries = [
        ("tree.life", choice("alive")),
        ("tree.girth", number(girth)),
        ("tree.girth_method", choice("tape")),
        ("tree.lean", number(lean)),
        ("tree.lean_method", choice("two_sides")),
    ];
    hand.act(CommandKind::RecordMeasures, look, &entries)
        .unwrap();
}

#[test]
fn a_change_within_its_uncertainty_is_said_to_be_within_it() {
    let folder = tempfile::tempdir().unwrap();
    let clock = FixedClock::at(MORNING).unwrap();
    let path = folder.path().display().to_string();
    let book = FieldBook::open_with_clock(path, "phone-1".to_owned(), clock.clone()).unwrap();
    let hand = Hand {
        book,
        taps: std::sync::atomic::AtomicU32::new(0),
    };
    let units = [("settings.units", choice("metric"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &units)
        .unwrap();
    let none = Id::default();
    let site = hand.made(CommandKind::AddSite, &none, &[("site.name", words("Hill"))]);
    let tree = hand.made(CommandKind::AddTree, &site, &[("tree.tag", words("7"))]);
    let first = hand.made(CommandKind::StartFullCheck, &tree, &[]);
    assert_eq!(hand.tree_page(&tree).compare, None);
    assert!(compared(&hand, &tree).days.contains("no earlier visit"));
    measures(&hand, &first, "200 cm", "3");
    finding(&hand, &first, "decay", "stem", "1");
    finding(&hand, &first, "wound", "base", "1");
    finding(&hand, &first, "hanger", "crown", "2");
    clock
        .set_to(Moment {
            utc_ms: MORNING.utc_ms + 365 * 86_400_000,
            ..MORNING
        })
        .unwrap();
    let second = hand.made(CommandKind::StartFullCheck, &tree, &[]);
    // Tape: 1 % of the girth at each visit. 1.96 √(2² + 2.02²) = 5.6 cm.
    measures(&hand, &second, "202 cm", "12");
    finding(&hand, &second, "decay", "stem", "2");
    finding(&hand, &second, "dead-limb", "limb", "1");
    let base = [("walk.part", choice("base")), ("walk.look", choice("seen"))];
    hand.act(CommandKind::LookAtPart, &second, &base).unwrap();
    let page = compared(&hand, &tree);
    assert_eq!(page.days, "May 14, 2026 and May 14, 2027");
    let line = |id: &str| page.lines.iter().find(|line| line.id == id).unwrap();
    let girth = line("compare.girth");
    assert_eq!(girth.kind, ChangeKind::Within);
    assert!(
        girth
            .change
            .ends_with("tell: +2.0 cm (−3.6 cm to +7.6 cm)."),
        "{}",
        girth.change
    );
    let lean = line("compare.lean");
    assert_eq!(lean.kind, ChangeKind::Larger, "{lean:?}");
    assert!(lean.change.starts_with("Larger: +9.0° ("), "{lean:?}");
    assert_eq!(line("compare.height").kind, ChangeKind::Unknown);
    assert_eq!(line("compare.height").change, "Read at neither look.");
    assert_eq!(
        (page.then.as_str(), page.now.as_str()),
        ("May 14, 2026", "May 14, 2027")
    );
    assert_eq!(page.verdict_then, Some(Verdict::Barred), "a hanger then");
    assert!(line("compare.verdict").then.contains("worked out anew"));
    let fates: Vec<(String, FindingFate)> = page
        .findings
        .iter()
        .map(|one| (one.words.clone(), one.fate))
        .collect();
    let expected = [
        ("dead limb or top", FindingFate::Newly),
        ("decay or cavity", FindingFate::Worse),
        ("old wound, bark lost", FindingFate::NotFound),
        ("hanger", FindingFate::NotLookedAt),
    ];
    let expected: Vec<_> = expected
        .iter()
        .map(|(name, fate)| ((*name).to_owned(), *fate))
        .collect();
    assert_eq!(fates, expected);
    hand.act(CommandKind::SignJudgement, &tree, &[])
        .unwrap_err();
}

#[test]
fn a_section_shows_where_it_is_weakest_while_it_is_read() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, look) = hand.site_with_tree();
    let size = [
        ("section.height", number("1 m")),
        ("section.girth", number("200 cm")),
    ];
    let section = hand.made(CommandKind::AddSection, &look, &size);
    let page = || {
        let address = PageAddress::StemSection {
            section: section.clone(),
        };
        match hand.book.page(address).unwrap() {
            Page::StemSection(page) => page,
            other => panic!("{other:?}"),
        }
    };
    assert!(page().weakest.contains("show where it is weakest"));
    let drawing =
        |page: &bolewalk_core::pages::StemSectionPage| -> DrawingAddress { page.drawing.clone() };
    let plain = hand
        .book
        .drawing(drawing(&page()), 0, 100)
        .unwrap()
        .marks
        .len();
    for (side, wall) in [(0.0, "25 cm"), (120.0, "25 cm"), (240.0, "4 cm")] {
        let reading = [
            ("reading.bearing", EntryValue::Bearing { degrees: side }),
            ("reading.shell", number(wall)),
            ("reading.method", choice("drill")),
        ];
        hand.act(CommandKind::ReadWall, &section, &reading).unwrap();
    }
    let read = page();
    assert!(
        read.weakest.starts_with("Weakest toward the "),
        "{}",
        read.weakest
    );
    assert_eq!(read.readings.len(), 3);
    let marks = hand
        .book
        .drawing(drawing(&read), 0, 100)
        .unwrap()
        .marks
        .len();
    assert!(
        marks > plain + 3,
        "the walls and the weakest direction are drawn"
    );
    let south = &read.clock[4];
    let hollow = south
        .offers
        .iter()
        .find(|one| one.id == "section.sound.south.hollow")
        .unwrap();
    assert!(hollow.inputs.is_empty());
    let (about, token) = (hollow.about.clone(), hollow.token.clone());
    hand.book
        .act(hollow.command, about, hollow.fixed.clone(), token)
        .unwrap();
    let sounded = page();
    assert_eq!(sounded.clock[4].sound, Some(MalletSound::Hollow));
    assert_eq!(sounded.clock[0].sound, None);
    let leads = hand.tree_page(&tree).sections[0].go_to.clone();
    assert_eq!(leads, Some(PageAddress::StemSection { section }));
}
