//! What is kept: over a restart, over damage, over undo.

use bolewalk_core::pages::{CommandKind, DrawingAddress, EntryValue};
use bolewalk_core::record::{Id, Verdict};

use super::{Hand, choice, number, words};

#[test]
fn a_restart_keeps_everything() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, inspection) = hand.site_with_tree();
    let entries = [
        ("tree.height", number("60 ft")),
        ("tree.lean", EntryValue::Tilt { degrees: 4.5 }),
        ("tree.lean_toward", EntryValue::Bearing { degrees: 200.0 }),
    ];
    hand.act(CommandKind::RecordMeasures, &inspection, &entries)
        .unwrap();
    let before = (hand.tree_page(&tree), hand.site_page(&site));
    drop(hand);
    let hand = Hand::at(folder.path());
    let after = (hand.tree_page(&tree), hand.site_page(&site));
    let lines = |page: &bolewalk_core::pages::TreePage| page.lines.clone();
    assert_eq!(lines(&before.0), lines(&after.0));
    let words = |page: &bolewalk_core::pages::TreePage| {
        page.gaps
            .iter()
            .map(|gap| gap.words.clone())
            .collect::<Vec<_>>()
    };
    assert_eq!(words(&before.0), words(&after.0));
    assert_eq!(before.1.trees, after.1.trees);
    let shown = |id: &str| {
        let mut lines = after.0.lines.iter();
        lines.find(|line| line.id == id).unwrap().words.clone()
    };
    assert_eq!(shown("tree.height"), "60 ft");
    assert_eq!(shown("tree.lean"), "4.5° toward the south");
}

#[test]
fn a_book_wrecked_between_two_openings_says_so_on_its_page() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    hand.site_with_tree();
    hand.book.backup().unwrap();
    let health = hand.book_page().health;
    let kept = health
        .iter()
        .find(|line| line.id == "book.backups")
        .unwrap();
    assert_eq!(kept.words, "May 14, 2026");
    assert!(kept.why.contains("Nothing is deleted"), "{kept:?}");
    drop(hand);
    std::fs::write(folder.path().join("field-book.db"), vec![7; 30_000]).unwrap();
    let hand = Hand::at(folder.path());
    let page = hand.book_page();
    assert!(
        page.notices[0].contains("Share the damaged files"),
        "{:?}",
        page.notices
    );
    let mut offers = page.offers.iter();
    let share = offers.find(|one| one.command == CommandKind::WriteDamaged);
    assert_eq!(share.unwrap().words, "Share the damaged files");
    assert_eq!(page.sites.len(), 1);
}

#[test]
fn what_was_done_is_taken_back_and_done_again() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, inspection) = hand.site_with_tree();
    let finding = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    hand.act(CommandKind::AddFinding, &inspection, &finding)
        .unwrap();
    assert_eq!(hand.tree_page(&tree).verdict, Verdict::Barred);
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    let page = hand.tree_page(&tree);
    assert!(page.findings.is_empty());
    assert_eq!(page.verdict, Verdict::Incomplete);
    hand.act(CommandKind::Redo, &site, &[]).unwrap();
    assert_eq!(hand.tree_page(&tree).verdict, Verdict::Barred);
    assert!(hand.act(CommandKind::Redo, &site, &[]).is_err());
}

#[test]
fn an_edit_shows_at_once_in_the_verdict_that_was_kept() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, _) = hand.site_with_tree();
    let other = hand.made(CommandKind::AddTree, &site, &[("tree.tag", words("8"))]);
    assert_eq!(hand.site_page(&site).trees.len(), 2);
    let dead = [
        ("tree.life", choice("dead")),
        ("tree.wires_near", EntryValue::YesNo { yes: false }),
    ];
    let page = hand.tree_page(&tree);
    hand.act(CommandKind::RecordMeasures, &page.inspection, &dead)
        .unwrap();
    let page = hand.site_page(&site);
    let of = |id: &Id| page.trees.iter().find(|line| line.id == *id).unwrap();
    assert_eq!(of(&tree).verdict, Verdict::Barred, "{:?}", of(&tree));
    assert_eq!(of(&other).verdict, Verdict::Incomplete);
}

#[test]
fn drawings_are_drawn_from_what_was_taken_or_say_what_is_missing() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, inspection) = hand.site_with_tree();
    let plan = || DrawingAddress::SitePlan { site: site.clone() };
    let error = hand.book.drawing(plan(), 0, 100).unwrap_err();
    let said = hand.book.words_of(error).unwrap();
    assert!(said.contains("Take a position"), "{said}");
    let here = EntryValue::Fix {
        lat_deg: 42.33,
        lon_deg: -71.12,
        accuracy_m: Some(4.0),
    };
    let fix = [("tree.position", here), ("tree.way", choice("prune"))];
    hand.act(CommandKind::ChangeTree, &tree, &fix).unwrap();
    let measures = [
        ("tree.height", number("18 m")),
        ("tree.crown_radius", number("5 m")),
    ];
    hand.act(CommandKind::RecordMeasures, &inspection, &measures)
        .unwrap();
    let work = [
        ("work.operation", choice("deadwood")),
        ("work.piece_length", number("2 m")),
    ];
    hand.made(CommandKind::AddWork, &tree, &work);
    let section = [
        ("section.height", number("1 m")),
        ("section.girth", number("200 cm")),
    ];
    let section = hand.made(CommandKind::AddSection, &inspection, &section);
    for which in [
        plan(),
        DrawingAddress::TreeSide { tree: tree.clone() },
        DrawingAddress::TreeZones { tree },
        DrawingAddress::SectionThrough { section },
    ] {
        for zoom in [0, 2] {
            let drawing = hand.book.drawing(which.clone(), zoom, 100).unwrap();
            assert!(drawing.marks.len() > 3, "{which:?}");
            assert!(!drawing.described.is_empty());
        }
    }
}
