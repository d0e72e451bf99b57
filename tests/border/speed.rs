//! A large site is read from what was kept: its pages are the same after a restart. The times are
//! printed, not judged.

use std::time::Instant;

use bolewalk_core::pages::{CommandKind, TreePage};
use bolewalk_core::record::Id;

use super::{Hand, choice, long_row, words};

const TREES: u32 = 5000;

#[test]
fn a_large_site_shows_the_same_after_an_edit_and_a_restart() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let file = long_row(folder.path(), TREES);
    let mut began = Instant::now();
    let mut timed = |what: &str| {
        println!("{TREES} trees, {what}: {:?}", began.elapsed());
        began = Instant::now();
    };
    let site = hand.book.import_site_file(file).unwrap().record;
    timed("import");
    let page = hand.site_page(&site);
    timed("first page of the site");
    let tree = Id(page.trees[400].id.0.clone());
    let start = [("inspection.level", choice("triage"))];
    hand.act(CommandKind::StartInspection, &tree, &start)
        .unwrap();
    timed("an edit that all trees see");
    hand.act(
        CommandKind::ChangeTree,
        &tree,
        &[("tree.note", words("by the gate"))],
    )
    .unwrap();
    timed("an edit of one tree");
    let before = hand.site_page(&site);
    timed("page of the site");
    let found = hand.search_trees(&site, "4999");
    timed("search by tag");
    let maples = hand.search_trees(&site, "red MAPLE");
    timed("search by species");
    let book = hand.book_page();
    timed("page of the book");
    let line = hand.tree_page(&tree);
    timed("page of a tree");
    drop(hand);
    let hand = Hand::at(&folder.path().join("book"));
    timed("opening");
    let again = hand.tree_page(&tree);
    timed("page of a tree after a restart");
    let after = hand.site_page(&site);
    assert_eq!(found.trees.len(), 1);
    assert_eq!(maples.trees.len(), TREES as usize);
    assert_eq!(book.sites[0].trees, TREES);
    assert_eq!(before.trees, after.trees);
    assert_eq!(before.trees.len(), TREES as usize);
    let said = |page: &TreePage| -> Vec<String> {
        page.gaps.iter().map(|gap| gap.words.clone()).collect()
    };
    assert_eq!(said(&line), said(&again));
    assert_eq!(line.lines, again.lines);
}
