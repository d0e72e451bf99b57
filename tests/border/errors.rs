//! Every kind of error can be met through the border, and each has words that say what to do.

use std::fs::OpenOptions;
use std::io::{Seek, SeekFrom, Write};
use std::path::Path;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::{words_of_error, words_of_shell};
use bolewalk_core::pages::{CommandKind, PageAddress};
use bolewalk_core::record::Id;

use super::{Hand, choice, words};

/// Writes over bytes of the book's file, as a newer version or a failing disk would.
fn overwrite(folder: &Path, at: u64, bytes: &[u8]) {
    let path = folder.join("field-book.db");
    let mut file = OpenOptions::new().write(true).open(path).unwrap();
    file.seek(SeekFrom::Start(at)).unwrap();
    file.write_all(bytes).unwrap();
}

fn said(hand: &Hand, error: &BookError, word: &str) {
    let words = hand.book.words_of(error.clone()).unwrap();
    assert!(words.contains(word), "{words}");
}

#[test]
fn what_does_not_fit_is_refused_at_its_input() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, _, inspection) = hand.site_with_tree();
    let entries = [
        ("tree.height", super::number("400 m")),
        ("tree.girth", super::number("wide")),
    ];
    let error = hand.act(CommandKind::RecordMeasures, &inspection, &entries);
    let error = error.unwrap_err();
    let BookError::Refused { faults } = &error else {
        panic!("{error:?}");
    };
    let places: Vec<&str> = faults.iter().map(|fault| fault.place.as_str()).collect();
    assert_eq!(places, ["tree.height", "tree.girth"], "every fault at once");
    said(&hand, &error, "nothing was changed");
    // At its input a fault stands by itself.
    let height = hand.book.words_of_fault(faults[0].clone()).unwrap();
    assert!(
        height.contains("400 m") && !height.contains("nothing was changed"),
        "{height}"
    );
    said(&hand, &error, &height);
}

#[test]
fn what_is_not_there_is_not_found() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let tree = Id::from("no-such");
    let error = hand.book.page(PageAddress::Tree { tree }).unwrap_err();
    assert!(matches!(error, BookError::NotFound { .. }), "{error:?}");
    said(&hand, &error, "There is no tree");
}

// The format stands at byte 60 of the file (SQLite, 'Database File Format', offset 60).
#[test]
fn a_newer_book_is_left_alone() {
    let folder = tempfile::tempdir().unwrap();
    drop(Hand::at(folder.path()));
    overwrite(folder.path(), 60, &999_u32.to_be_bytes());
    let before = std::fs::read(folder.path().join("field-book.db")).unwrap();
    let error = Hand::on(folder.path(), "phone-1").map(|_| ()).unwrap_err();
    assert!(matches!(error, BookError::Newer { found: 999, .. }));
    let after = std::fs::read(folder.path().join("field-book.db")).unwrap();
    assert_eq!(before, after);
    let other = tempfile::tempdir().unwrap();
    said(&Hand::at(other.path()), &error, "Update this app");
}

#[test]
fn damage_met_on_the_way_is_repaired_and_told() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, _, _) = hand.site_with_tree();
    hand.book.backup().unwrap();
    drop(hand);
    let hand = Hand::at(folder.path());
    // Every page after the first is wrecked under the open book.
    overwrite(folder.path(), 4096, &vec![0x5a; 200 * 4096]);
    let path = folder.path().join("summary.pdf").display().to_string();
    let error = hand
        .book
        .write_summary(site.0.clone(), path, vec![])
        .unwrap_err();
    let BookError::Damaged { kept, .. } = &error else {
        panic!("{error:?}");
    };
    assert!(Path::new(kept).is_dir());
    said(&hand, &error, "Nothing was deleted");
    let page = hand.book_page();
    assert!(
        page.notices[0].contains("was damaged"),
        "{:?}",
        page.notices
    );
    assert_eq!(page.sites.len(), 1, "the backup is in its place");
    assert_eq!(hand.site_page(&site).trees.len(), 1);
}

#[test]
fn a_full_disk_changes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, _, _) = hand.site_with_tree();
    hand.book.bound_pages(1).unwrap();
    let tag = [("tree.tag", words("8"))];
    let error = hand.act(CommandKind::AddTree, &site, &tag).unwrap_err();
    assert!(matches!(error, BookError::DiskFull { .. }), "{error:?}");
    said(&hand, &error, "Free some space");
    assert_eq!(hand.site_page(&site).trees.len(), 1);
    hand.book.bound_pages(0).unwrap();
    hand.act(CommandKind::AddTree, &site, &tag).unwrap();
    assert_eq!(hand.site_page(&site).trees.len(), 2);
}

#[test]
fn what_cannot_be_written_or_read_is_told_apart() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let file = folder.path().join("file");
    std::fs::write(&file, b"in the way").unwrap();
    let error = Hand::on(&file.join("book"), "phone-1")
        .map(|_| ())
        .unwrap_err();
    assert!(matches!(error, BookError::Unwritable { .. }), "{error:?}");
    said(&hand, &error, "choose another");
    let place = folder.path().display().to_string();
    let error = hand.book.import_site_file(place).unwrap_err();
    assert!(matches!(error, BookError::Unreadable { .. }), "{error:?}");
    said(&hand, &error, "cannot be read");
}

#[test]
fn a_book_that_another_program_writes_to_is_busy() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, _, _) = hand.site_with_tree();
    let other = rusqlite::Connection::open(folder.path().join("field-book.db")).unwrap();
    other.execute_batch("BEGIN IMMEDIATE").unwrap();
    let tag = [("tree.tag", words("8"))];
    let error = hand.act(CommandKind::AddTree, &site, &tag).unwrap_err();
    assert!(matches!(error, BookError::Busy { .. }), "{error:?}");
    said(&hand, &error, "try again");
    other.execute_batch("ROLLBACK").unwrap();
    hand.act(CommandKind::AddTree, &site, &tag).unwrap();
}

#[test]
fn what_a_shell_must_not_do_is_a_defect() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, _, _) = hand.site_with_tree();
    let error = hand
        .act(
            CommandKind::AddTree,
            &site,
            &[("tree.colour", words("red"))],
        )
        .unwrap_err();
    assert!(matches!(error, BookError::Defect { .. }), "{error:?}");
    said(&hand, &error, "as they were last saved");
    let long = hand.act(CommandKind::WriteSummary, &site, &[]);
    assert!(matches!(long, Err(BookError::Defect { .. })));
}

#[test]
fn a_book_that_does_not_open_is_explained_in_the_phones_language() {
    let folder = tempfile::tempdir().unwrap();
    drop(Hand::at(folder.path()));
    overwrite(folder.path(), 60, &999_u32.to_be_bytes());
    let newer = Hand::on(folder.path(), "phone-1").map(|_| ()).unwrap_err();
    let file = folder.path().join("field-book.db");
    let in_the_way = Hand::on(&file, "phone-1").map(|_| ()).unwrap_err();
    assert!(
        matches!(in_the_way, BookError::Unwritable { .. }),
        "{in_the_way:?}"
    );
    let full = BookError::DiskFull {
        place: "the book".to_owned(),
    };
    let damaged = BookError::Damaged {
        place: "the book".to_owned(),
        detail: "a page".to_owned(),
        kept: String::new(),
    };
    for (error, english, spanish) in [
        (newer, "Update this app", "Actualizar"),
        (in_the_way, "choose another", "elegir otra"),
        (full, "Free some space", "Liberar"),
        (damaged, "Nothing was deleted", "No se ha borrado"),
    ] {
        let said = |tag: &str| words_of_error(error.clone(), tag.to_owned()).unwrap();
        assert!(said("en-GB").contains(english), "{}", said("en-GB"));
        assert!(said("es-MX").contains(spanish), "{}", said("es-MX"));
        assert_eq!(
            said("pt-BR"),
            said("en"),
            "no word is lacking in any language"
        );
    }
}

#[test]
fn the_words_of_the_shell_follow_the_readers_language() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let english = words_of_shell("en-US".to_owned()).unwrap();
    assert_eq!(hand.book.shell_words().unwrap(), english);
    let spanish = [("settings.language", choice("spanish"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &spanish)
        .unwrap();
    let now = hand.book.shell_words().unwrap();
    assert_eq!(now, words_of_shell("es_ES".to_owned()).unwrap());
    assert_eq!(
        (english.keep.as_str(), now.keep.as_str()),
        ("Save", "Guardar")
    );
}
