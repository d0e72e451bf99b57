//! The border as a shell meets it.

use std::path::Path;
use std::sync::Arc;

use super::*;
use crate::error::BookError;
use crate::pages::{BookPage, CommandKind, Entry, EntryValue, Page, PageAddress};

fn book_at(folder: &Path) -> Arc<FieldBook> {
    FieldBook::open(folder.display().to_string(), "phone".to_owned()).unwrap()
}

fn words(input: &str, text: &str) -> Entry {
    Entry {
        input: input.to_owned(),
        value: EntryValue::Words {
            text: text.to_owned(),
        },
    }
}

fn page(book: &FieldBook) -> BookPage {
    match book.page(PageAddress::book()).unwrap() {
        Page::Book(page) => page,
        other => panic!("{other:?}"),
    }
}

#[test]
fn two_quick_taps_make_one_site_and_a_restart_keeps_it() {
    let folder = tempfile::tempdir().unwrap();
    let book = book_at(folder.path());
    let offer = page(&book).offers.remove(0);
    let act = |book: &FieldBook| {
        let entries = vec![words("site.name", "Hill House")];
        book.act(offer.command, String::new(), entries, offer.token.clone())
            .unwrap()
    };
    let first = act(&book);
    let second = act(&book);
    assert!(!first.done_before && second.done_before);
    assert_eq!(first.record, second.record);
    drop(book);
    let book = book_at(folder.path());
    assert!(act(&book).done_before, "not even after a restart");
    let sites = page(&book).sites;
    assert_eq!(sites.len(), 1);
    assert_eq!(sites[0].name, "Hill House");
    assert_eq!(sites[0].words, "no trees yet");
}

#[test]
fn a_tree_needs_a_tag_of_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let book = book_at(folder.path());
    let add = |command, about: &str, entries, token: &str| {
        book.act(command, about.to_owned(), entries, token.to_owned())
    };
    let name = vec![words("site.name", "Hill House")];
    let site = add(CommandKind::AddSite, "", name, "1").unwrap().record.0;
    let none = add(CommandKind::AddTree, &site, Vec::new(), "2").unwrap_err();
    let said = book.words_of(none).unwrap();
    assert!(said.contains("Tag: This is needed."), "{said}");
    let seven = || vec![words("tree.tag", "7")];
    add(CommandKind::AddTree, &site, seven(), "3").unwrap();
    let twice = add(CommandKind::AddTree, &site, seven(), "4").unwrap_err();
    assert!(matches!(twice, BookError::Refused { .. }));
    assert_eq!(page(&book).sites[0].trees, 1);
}
