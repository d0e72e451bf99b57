//! Long work holds up nobody, tells how far it is, and can be stopped.

use std::sync::Arc;
use std::thread;
use std::time::{Duration, Instant};

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::MapFileKind;
use bolewalk_core::pages::{CommandKind, Entry, EntryValue};

use super::{Hand, long_row, words};

#[test]
fn a_summary_is_stopped_while_others_go_on_working() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let file = long_row(folder.path(), 150);
    let site = hand.book.import_site_file(file).unwrap().record;
    hand.site_page(&site);
    let path = folder.path().join("summary.pdf");
    let book = Arc::clone(&hand.book);
    let (at, about) = (path.display().to_string(), site.0.clone());
    let writer = thread::spawn(move || book.write_summary(about, at, vec![]));
    let began = Instant::now();
    while !hand.book.how_far().unwrap().running {
        assert!(began.elapsed() < Duration::from_secs(60));
        thread::yield_now();
    }
    let second = folder.path().join("second.pdf").display().to_string();
    let busy = hand.book.write_climb_sheets(site.0.clone(), second, vec![]);
    assert!(matches!(busy, Err(BookError::Busy { .. })), "{busy:?}");
    // Edits and pages go on meanwhile.
    hand.act(CommandKind::AddTree, &site, &[("tree.tag", words("new"))])
        .unwrap();
    hand.book_page();
    hand.book.stop_work().unwrap();
    let outcome = writer.join().unwrap();
    assert_eq!(outcome, Err(BookError::Stopped));
    assert!(!path.exists(), "nothing is left behind");
    assert!(!hand.book.how_far().unwrap().running);
}

#[test]
fn both_papers_are_written_and_the_end_is_told() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let file = long_row(folder.path(), 3);
    let done = hand.book.import_site_file(file.clone()).unwrap();
    let again = hand.book.import_site_file(file).unwrap();
    assert_eq!(again.changes, 0, "the same file again changes nothing");
    for (name, write) in [
        (
            "summary.pdf",
            bolewalk_core::field_book::FieldBook::write_summary as fn(&_, _, _, _) -> _,
        ),
        (
            "sheets.pdf",
            bolewalk_core::field_book::FieldBook::write_climb_sheets,
        ),
    ] {
        let path = folder.path().join(name);
        write(
            &hand.book,
            done.record.0.clone(),
            path.display().to_string(),
            vec![],
        )
        .unwrap();
        assert!(std::fs::read(&path).unwrap().starts_with(b"%PDF-"));
        let far = hand.book.how_far().unwrap();
        assert!(!far.running && far.done == far.of);
    }
    let backup = hand.book.backup().unwrap();
    assert!(std::path::Path::new(&backup).is_file());
}

#[test]
fn a_paper_is_in_the_language_that_was_chosen_for_it() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let site = hand.book.import_site_file(long_row(folder.path(), 1));
    let site = site.unwrap().record;
    let path = folder.path().join("resumen.pdf").display().to_string();
    let chosen = |input: &str, id: &str| Entry {
        input: input.to_owned(),
        value: EntryValue::Choice { id: id.to_owned() },
    };
    let entries = vec![
        chosen("site_summary.language", "spanish"),
        chosen("site_summary.photos", "print"),
    ];
    let write = |entries| {
        hand.book
            .write_summary(site.0.clone(), path.clone(), entries)
    };
    write(entries).unwrap();
    // ISO 32000-1, 14.9.2: the document's language is in its catalogue.
    let pdf = std::fs::read(&path).unwrap();
    let says = |words: &[u8]| pdf.windows(words.len()).any(|part| part == words);
    assert!(
        says(b"/Lang (es)") || says(b"/Lang(es)"),
        "no Spanish paper"
    );
    let odd = write(vec![chosen("site_summary.language", "latin")]);
    assert!(matches!(odd, Err(BookError::Refused { .. })), "{odd:?}");
}

#[test]
fn every_map_file_is_written_from_the_hand_over_page() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let file = long_row(folder.path(), 3);
    let site = hand.book.import_site_file(file).unwrap().record;
    // RFC 4180 table; RFC 7946 collection; OGC GeoPackage 1.3, application id at byte 68.
    for (kind, name, at, begins) in [
        (MapFileKind::Csv, "trees.csv", 0, &b"tag,"[..]),
        (MapFileKind::GeoJson, "map.geojson", 0, &b"{"[..]),
        (MapFileKind::GeoPackage, "map.gpkg", 68, &b"GPKG"[..]),
    ] {
        let path = folder.path().join(name);
        let to = path.display().to_string();
        hand.book.write_map_file(site.0.clone(), kind, to).unwrap();
        let bytes = std::fs::read(&path).unwrap();
        assert!(bytes[at..].starts_with(begins), "{kind:?}");
    }
    let nowhere = folder.path().join("no/such/map.gpkg").display().to_string();
    let error = hand
        .book
        .write_map_file(site.0, MapFileKind::GeoPackage, nowhere)
        .unwrap_err();
    assert!(matches!(error, BookError::Unwritable { .. }), "{error:?}");
}
