//! A crowded site: the worst pairs are worded and the others counted, a tree is looked for and not
//! scrolled to, and what is done is no longer in the way.

use std::path::Path;

use bolewalk_core::pages::{CommandKind, InputKind, Offer};
use bolewalk_core::record::Id;

use super::{Hand, choice, refused, words};

/// Trees to be felled, 8 m apart: their keep-outs (twice their length) overlap many times over.
fn grove(folder: &Path, trees: u32) -> String {
    let trees: Vec<serde_json::Value> = (1..=trees)
        .map(|tag| {
            serde_json::json!({"tag": format!("A{tag}"), "species": "Acer rubrum",
                "way": "fell_whole", "work": [{"operation": "removal"}],
                "position": {"lat_deg": 42.33 + f64::from(tag) * 0.000_072, "lon_deg": -71.12},
                "inspections": [{"visit": "2026-05-14", "level": "full_check", "life": "alive",
                    "height": {"height_m": 12}, "lean": {"lean_deg": 0},
                    "crown": {"radius_m": 3}}]})
        })
        .collect();
    let file = serde_json::json!({"format": 1, "site": {"name": "Grove", "rule_set": "us",
        "visits": [{"day": "2026-05-14"}], "trees": trees}});
    let path = folder.join("grove.json");
    std::fs::write(&path, file.to_string()).unwrap();
    path.display().to_string()
}

fn permission_of(offers: &[Offer]) -> Offer {
    let mut offers = offers.iter();
    let offer = offers.find(|one| one.command == CommandKind::AddPermission);
    offer.unwrap().clone()
}

#[test]
fn the_worst_pairs_are_worded_and_the_others_counted() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let site = hand.book.import_site_file(grove(folder.path(), 20));
    let site = site.unwrap().record;
    let page = hand.site_page(&site);
    assert_eq!(page.conflicts.len(), 13);
    let (last, worst) = page.conflicts.split_last().unwrap();
    assert!(last.starts_with("and ") && last.contains("more"), "{last}");
    // The nearest neighbours lack the most: 0.000072° of latitude are 8 m, 26 ft.
    for pair in worst {
        assert!(pair.contains("26 ft"), "{pair}");
    }
    let tree = &page.trees[0];
    let lines = hand.tree_page(&tree.id).lines;
    let apart = lines.iter().find(|line| line.id == "tree.apart").unwrap();
    assert!(apart.words.starts_with("A2, A3, "), "{}", apart.words);
}

#[test]
fn what_is_done_is_no_longer_in_the_way() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let site = hand.book.import_site_file(grove(folder.path(), 2));
    let site = site.unwrap().record;
    let page = hand.site_page(&site);
    assert_eq!(page.conflicts.len(), 1);
    let tree = page.trees[0].id.clone();
    let work = hand.tree_page(&tree).work[0].id.clone();
    hand.act(CommandKind::FinishWork, &work, &[]).unwrap();
    assert!(hand.site_page(&site).conflicts.is_empty());
    let lines = hand.tree_page(&tree).lines;
    let closed = lines.iter().find(|line| line.id == "tree.keep_out");
    assert!(closed.unwrap().words.contains("nothing to close"));
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    assert_eq!(hand.site_page(&site).conflicts.len(), 1);
}

#[test]
fn the_tree_of_a_permission_is_looked_for_among_many() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let site = hand.book.import_site_file(grove(folder.path(), 20));
    let site = site.unwrap().record;
    let offer = permission_of(&hand.site_page(&site).offers);
    let input = offer.inputs.iter().find(|one| one.id == "permission.tree");
    let InputKind::Search { first, .. } = &input.unwrap().kind else {
        panic!("{input:?}");
    };
    assert_eq!(first.len(), 6);
    let found = hand
        .book
        .suggest("permission.tree".to_owned(), "a13".to_owned());
    let found = found.unwrap();
    assert_eq!(found[0].words, "A13");

    let kind = ("permission.kind", choice("protected_tree"));
    let tapped = [kind.clone(), ("permission.tree", choice(&found[0].id))];
    hand.made(CommandKind::AddPermission, &site, &tapped);
    let typed = [kind.clone(), ("permission.tree", words(" a14 "))];
    let second = hand.made(CommandKind::AddPermission, &site, &typed);
    let shown = hand.site_page(&site).permissions;
    assert!(shown[0].words.ends_with("A13") && shown[1].words.ends_with("A14"));
    // What is chosen stands in the search when the permission is changed.
    let change = &shown[1].offers[0];
    let input = change.inputs.iter().find(|one| one.id == "permission.tree");
    let InputKind::Search { chosen, .. } = &input.unwrap().kind else {
        panic!("{input:?}");
    };
    assert_eq!(chosen, "A14");
    let unknown = [("permission.tree", words("B1"))];
    let outcome = hand.act(CommandKind::ChangePermission, &second, &unknown);
    assert_eq!(refused(outcome), "fault.not-a-choice");
}

#[test]
fn a_few_trees_are_all_shown() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, _) = hand.site_with_tree();
    let offer = permission_of(&hand.site_page(&site).offers);
    let input = offer.inputs.iter().find(|one| one.id == "permission.tree");
    let InputKind::Choice { choices } = &input.unwrap().kind else {
        panic!("{input:?}");
    };
    let ids: Vec<Id> = choices.iter().map(|one| Id(one.id.clone())).collect();
    assert_eq!(ids, [tree]);
}
