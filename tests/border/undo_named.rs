//! Undo says what it takes back, redo what it does again.

use bolewalk_core::pages::{CommandKind, Offer};
use bolewalk_core::record::Id;

use super::{Hand, choice, number, words};

fn said(offers: &[Offer], command: CommandKind) -> String {
    let mut offers = offers.iter();
    let offer = offers.find(|one| one.command == command && one.id == command.id());
    offer.unwrap().words.clone()
}

#[test]
fn undo_and_redo_name_the_step_in_the_readers_language() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, inspection) = hand.site_with_tree();
    let undo = |hand: &Hand| said(&hand.tree_page(&tree).offers, CommandKind::Undo);
    let redo = |hand: &Hand| said(&hand.tree_page(&tree).offers, CommandKind::Redo);
    assert_eq!(undo(&hand), "Undo: begin an inspection, tree 7");
    assert_eq!(redo(&hand), "Redo");

    let girth = [("tree.girth", number("63 in"))];
    hand.act(CommandKind::RecordMeasures, &inspection, &girth)
        .unwrap();
    assert_eq!(undo(&hand), "Undo: girth of tree 7");
    let spanish = [("settings.language", choice("spanish"))];
    let nobody = Id::default();
    hand.act(CommandKind::ChangeSettings, &nobody, &spanish)
        .unwrap();
    assert_eq!(undo(&hand), "Deshacer: perímetro del árbol 7");
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    assert_eq!(redo(&hand), "Rehacer: perímetro del árbol 7");
    hand.act(CommandKind::Redo, &site, &[]).unwrap();
    assert_eq!(undo(&hand), "Deshacer: perímetro del árbol 7");

    // What was removed is named too, and a long name is cut.
    let long = "the oak beside the eastern gate";
    hand.act(CommandKind::ChangeTree, &tree, &[("tree.tag", words(long))])
        .unwrap();
    hand.act(CommandKind::RemoveTree, &tree, &[]).unwrap();
    let page = hand.site_page(&site);
    assert_eq!(
        said(&page.offers, CommandKind::Undo),
        "Deshacer: quitar el árbol, árbol the oak beside the…"
    );
}

#[test]
fn undo_in_the_book_names_the_person() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let nobody = Id::default();
    let undo = |hand: &Hand| said(&hand.book_page().offers, CommandKind::Undo);
    assert_eq!(undo(&hand), "Undo");
    let name = [("person.name", words("Ana"))];
    let ana = hand.made(CommandKind::AddPerson, &nobody, &name);
    assert_eq!(undo(&hand), "Undo: add a person, Ana");
    let mass = [("person.mass", number("88 kg"))];
    hand.act(CommandKind::ChangePerson, &ana, &mass).unwrap();
    assert_eq!(undo(&hand), "Undo: mass with gear of Ana");
}
