//! Two phones: what they entered in two ways stands side by side, and the lower verdict counts.

use std::path::{Path, PathBuf};

use bolewalk_core::pages::{CommandKind, LineState};
use bolewalk_core::record::{Id, Verdict};
use bolewalk_core::store::{Change, Store};
use serde_json::json;

use super::{Hand, MORNING, choice, words};

/// The whole log of a book that is not open.
fn log_of(folder: &Path) -> Vec<Change> {
    let store = Store::open(folder, "reader", MORNING).unwrap();
    let page = store.read().changes_since(0, 100_000).unwrap();
    page.changes
}

fn absorb(folder: &Path, changes: &[Change]) {
    let mut store = Store::open(folder, "phone-1", MORNING).unwrap();
    store.absorb(changes, MORNING).unwrap();
}

/// The folders of two phones with the same book, and what was made in it.
fn on_two_phones<T>(folder: &Path, make: impl FnOnce(&Hand) -> T) -> ([PathBuf; 2], T) {
    let [one, other] = ["one", "other"].map(|phone| folder.join(phone));
    let made = make(&Hand::at(&one));
    std::fs::create_dir_all(&other).unwrap();
    std::fs::copy(one.join("field-book.db"), other.join("field-book.db")).unwrap();
    ([one, other], made)
}

#[test]
fn the_lower_verdict_counts_until_a_person_settles_it() {
    let folder = tempfile::tempdir().unwrap();
    let ([one, other], (site, tree, inspection)) =
        on_two_phones(folder.path(), Hand::site_with_tree);
    let life = |state: &str| [("tree.life", choice(state))];
    let theirs = Hand::on(&other, "phone-2").unwrap();
    theirs
        .act(CommandKind::RecordMeasures, &inspection, &life("dead"))
        .unwrap();
    drop(theirs);
    let hand = Hand::at(&one);
    hand.act(CommandKind::RecordMeasures, &inspection, &life("alive"))
        .unwrap();
    assert_eq!(hand.tree_page(&tree).verdict, Verdict::Incomplete);
    drop(hand);
    absorb(&one, &log_of(&other));

    let hand = Hand::at(&one);
    // A dead tree of which nobody knows since when is barred: that verdict counts.
    assert_eq!(hand.tree_page(&tree).verdict, Verdict::Barred);
    let page = hand.site_page(&site);
    assert!(
        page.notices[0].contains("in two ways"),
        "{:?}",
        page.notices
    );
    let alive = page
        .unsettled
        .iter()
        .find(|record| record.words.contains("alive"))
        .unwrap();
    let offer = &alive.offers[0];
    let about = Id(offer.about.clone());
    hand.act(offer.command, &about, &[]).unwrap();
    let page = hand.site_page(&site);
    assert!(page.unsettled.is_empty() && page.notices.is_empty());
    let page = hand.tree_page(&tree);
    assert_eq!(page.verdict, Verdict::Incomplete);
    let line = page.lines.iter().find(|line| line.id == "tree.life");
    assert_eq!(line.unwrap().words, "alive");
}

#[test]
fn what_a_newer_version_entered_is_a_gap() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, _) = hand.site_with_tree();
    let other = hand.made(CommandKind::AddTree, &site, &[("tree.tag", words("8"))]);
    drop(hand);
    let mut change = log_of(folder.path())
        .into_iter()
        .find(|change| change.record == tree.0 && change.field == "tag")
        .unwrap();
    change.id = "0196cd00-0000-7000-8000-000000000001".to_owned();
    change.field = "way".to_owned();
    change.value = json!("by_balloon");
    change.replaces = Vec::new();
    absorb(folder.path(), &[change]);
    let hand = Hand::at(folder.path());
    let page = hand.tree_page(&tree);
    assert!(
        page.notices[0].contains("newer version"),
        "{:?}",
        page.notices
    );
    assert!(
        page.gaps
            .iter()
            .any(|gap| gap.words.contains("newer version"))
    );
    let line = page
        .lines
        .iter()
        .find(|line| line.id == "tree.way")
        .unwrap();
    assert_eq!(line.state, LineState::Missing);
    let gaps = hand.tree_page(&other).gaps;
    assert!(
        !gaps.iter().any(|gap| gap.words.contains("newer version")),
        "{gaps:?}"
    );
}

#[test]
fn a_removal_against_a_change_is_settled_by_a_person() {
    let folder = tempfile::tempdir().unwrap();
    let ([one, other], (site, tree, inspection)) =
        on_two_phones(folder.path(), Hand::site_with_tree);
    let hand = Hand::at(&one);
    hand.act(CommandKind::RemoveTree, &tree, &[]).unwrap();
    drop(hand);
    let theirs = Hand::on(&other, "phone-2").unwrap();
    theirs.book.bound_pages(0).unwrap();
    let look = [
        ("walk.part", choice("roots")),
        ("walk.look", choice("seen")),
    ];
    for _ in 0..3 {
        theirs
            .act(CommandKind::LookAtPart, &inspection, &look)
            .unwrap();
    }
    let life = [("tree.life", choice("alive"))];
    theirs
        .act(CommandKind::RecordMeasures, &inspection, &life)
        .unwrap();
    drop(theirs);
    absorb(&one, &log_of(&other));
    let hand = Hand::at(&one);
    let page = hand.site_page(&site);
    assert!(page.trees.is_empty());
    let keep = page
        .unsettled
        .iter()
        .flat_map(|record| &record.offers)
        .find(|offer| offer.command == CommandKind::KeepRemoved)
        .unwrap();
    hand.act(keep.command, &Id(keep.about.clone()), &[])
        .unwrap();
    assert_eq!(hand.site_page(&site).trees.len(), 1);
    assert_eq!(hand.tree_page(&tree).walk_round.len(), 11);
}

#[test]
fn what_two_phones_say_of_a_person_is_settled_on_the_page_of_the_book() {
    let folder = tempfile::tempdir().unwrap();
    let ([one, other], ana) = on_two_phones(folder.path(), |hand| hand.add_person("Ana"));
    let mass = |typed: &str| [("person.mass", super::number(typed))];
    let theirs = Hand::on(&other, "phone-2").unwrap();
    theirs
        .act(CommandKind::ChangePerson, &ana, &mass("95 kg"))
        .unwrap();
    drop(theirs);
    let hand = Hand::at(&one);
    hand.act(CommandKind::ChangePerson, &ana, &mass("88 kg"))
        .unwrap();
    drop(hand);
    absorb(&one, &log_of(&other));

    let hand = Hand::at(&one);
    let page = hand.book_page();
    assert!(page.notices[0].contains("in two ways"), "{page:?}");
    let lighter = page.unsettled.iter().find(|one| one.words.contains("88"));
    let offer = &lighter.unwrap().offers[0];
    hand.act(offer.command, &Id(offer.about.clone()), &[])
        .unwrap();
    let page = hand.book_page();
    assert!(page.unsettled.is_empty() && page.notices.is_empty());
    // 88 kg are 194 lb (NIST SP 811: 0.45359237 kg in a pound).
    let people = hand.people_page().people;
    assert!(people[0].detail.contains("194 lb"), "{}", people[0].detail);
}
