//! A site that was added or removed is taken back, or comes back, from the page of the book.

use std::path::Path;

use bolewalk_core::error::BookError;
use bolewalk_core::pages::{CommandKind, EntryValue, PageAddress};
use bolewalk_core::record::{Id, Verdict};

use super::{Hand, choice, here, long_row, words};

/// A site with a tree, a finding that bars climbing, and a photo.
fn site_with_photo(hand: &Hand) -> (Id, Id) {
    let (site, tree, inspection) = hand.site_with_tree();
    let finding = [
        ("finding.code", choice("hanger")),
        ("finding.part", choice("crown")),
        ("finding.grade", choice("2")),
    ];
    hand.made(CommandKind::AddFinding, &inspection, &finding);
    let root = env!("CARGO_MANIFEST_DIR");
    let path = format!("{root}/fixtures/photos/progressive.jpg");
    let shot = [("photo.file", EntryValue::PhotoFile { path })];
    hand.made(CommandKind::AddPhoto, &inspection, &shot);
    (site, tree)
}

/// Whether the page of the book offers to undo and to redo.
fn offered(hand: &Hand) -> (bool, bool) {
    let page = hand.book_page();
    let of = |command: CommandKind| {
        let mut offers = page.offers.iter();
        offers.find(|offer| offer.command == command).unwrap()
    };
    let (undo, redo) = (of(CommandKind::Undo), of(CommandKind::Redo));
    assert!(undo.about.is_empty() && redo.about.is_empty());
    (undo.enabled, redo.enabled)
}

fn sites(hand: &Hand) -> usize {
    hand.book_page().sites.len()
}

fn redo(hand: &Hand) -> Result<(), BookError> {
    hand.act(CommandKind::Redo, &Id::default(), &[]).map(|_| ())
}

#[test]
fn a_removed_site_comes_back_with_trees_findings_and_photos() {
    let (folder, hand) = here();
    let (site, tree) = site_with_photo(&hand);
    let before = (hand.site_page(&site), hand.tree_page(&tree));
    hand.act(CommandKind::RemoveSite, &site, &[]).unwrap();
    assert_eq!(sites(&hand), 0);
    let gone = hand.book.page(PageAddress::site(&site)).unwrap_err();
    assert!(matches!(gone, BookError::NotFound { .. }), "{gone:?}");
    drop(hand);

    // Also after a restart.
    let hand = Hand::at(&folder.path().join("book"));
    assert_eq!(offered(&hand), (true, false));
    hand.undo();
    let after = (hand.site_page(&site), hand.tree_page(&tree));
    assert_eq!(after.0.trees, before.0.trees);
    assert_eq!(after.1.lines, before.1.lines);
    assert_eq!(after.1.verdict, Verdict::Barred);
    let findings = |page: &bolewalk_core::pages::TreePage| {
        let words = page.findings.iter().map(|one| one.words.clone());
        words.collect::<Vec<_>>()
    };
    assert_eq!(findings(&after.1), findings(&before.1));
    assert_eq!(after.1.photos.len(), 1);
    let photo = &after.1.photos[0];
    assert!(Path::new(&photo.small_path).is_file(), "{photo:?}");
    assert!(Path::new(&photo.view_path).is_file(), "{photo:?}");

    assert!(offered(&hand).1);
    redo(&hand).unwrap();
    assert_eq!(sites(&hand), 0);
    hand.undo();
    assert_eq!(hand.tree_page(&tree).lines, before.1.lines);
}

#[test]
fn a_site_that_was_just_added_is_taken_back_and_added_again() {
    let (_folder, hand) = here();
    assert_eq!(offered(&hand), (false, false));
    let name = [("site.name", words("Hill"))];
    let site = hand.made(CommandKind::AddSite, &Id::default(), &name);
    let on_its_page = hand.act(CommandKind::Undo, &site, &[]);
    assert!(on_its_page.is_err(), "no page takes itself away");
    hand.undo();
    assert_eq!(sites(&hand), 0);
    assert_eq!(offered(&hand), (false, true));
    redo(&hand).unwrap();
    assert_eq!(hand.site_page(&site).title, "Hill");
}

#[test]
fn a_site_worked_on_since_is_not_taken_away_with_its_making() {
    let (_folder, hand) = here();
    let gear = [
        ("gear.name", words("Blue line")),
        ("gear.kind", choice("climbing_line")),
    ];
    hand.made(CommandKind::AddGear, &Id::default(), &gear);
    let (site, _, _) = hand.site_with_tree();
    // The last edit of the book is then that of the gear.
    hand.undo();
    assert_eq!((sites(&hand), offered(&hand)), (1, (false, true)));
    // With nothing left on the site its making can be taken back.
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    hand.undo();
    assert_eq!(sites(&hand), 0);
}

#[test]
fn a_removal_is_not_done_again_over_later_work() {
    let (_folder, hand) = here();
    let (site, _, _) = hand.site_with_tree();
    hand.act(CommandKind::RemoveSite, &site, &[]).unwrap();
    hand.undo();
    hand.made(CommandKind::AddTree, &site, &[("tree.tag", words("8"))]);
    assert!(!offered(&hand).1);
    assert!(redo(&hand).is_err());
    assert_eq!(hand.site_page(&site).trees.len(), 2);
}

#[test]
fn an_imported_site_is_taken_back_whole() {
    let (folder, hand) = here();
    let path = long_row(folder.path(), 12);
    let site = hand.book.import_site_file(path).unwrap().record;
    hand.undo();
    assert_eq!(sites(&hand), 0);
    redo(&hand).unwrap();
    assert_eq!(hand.site_page(&site).trees.len(), 12);
}
