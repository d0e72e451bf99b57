//! Packs at the desk: a property goes from one field book to another.

use std::fs;

use super::{bolewalk, err, fixture, out};

#[test]
fn a_property_goes_to_another_book_as_a_pack_and_twice_is_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).display().to_string();
    let (one, other, pack) = (path("one"), path("other"), path("pack.zip"));
    let imported = bolewalk(&["import", &fixture("three-trees.json"), "--into", &one]);
    assert_eq!(imported.status.code(), Some(0), "{}", err(&imported));
    let packed = bolewalk(&["pack", &one, "--out", &pack]);
    assert_eq!(packed.status.code(), Some(0), "{}", err(&packed));
    assert!(out(&packed).contains("Packed: "), "{}", out(&packed));
    let import = ["import", &pack, "--into", &other];
    let taken = bolewalk(&import);
    assert_eq!(taken.status.code(), Some(0), "{}", err(&taken));
    assert!(out(&taken).contains("Taken in: "), "{}", out(&taken));
    let again = bolewalk(&import);
    assert!(out(&again).contains("Nothing new"), "{}", out(&again));
    let judged = |book: &str| out(&bolewalk(&["judge", book, "--json"]));
    assert_eq!(judged(&one), judged(&other));
    assert_eq!(bolewalk(&["check", &other]).status.code(), Some(0));
}

#[test]
fn a_torn_pack_makes_no_book_and_a_site_file_makes_no_pack() {
    let folder = tempfile::tempdir().unwrap();
    let path = |name: &str| folder.path().join(name).display().to_string();
    let (one, other, pack) = (path("one"), path("other"), path("pack.zip"));
    let site_file = fixture("three-trees.json");
    let no_book = bolewalk(&["pack", &site_file, "--out", &pack]);
    assert_eq!(no_book.status.code(), Some(1), "{}", out(&no_book));
    bolewalk(&["import", &site_file, "--into", &one]);
    bolewalk(&["pack", &one, "--out", &pack]);
    let bytes = fs::read(&pack).unwrap();
    fs::write(&pack, &bytes[..bytes.len() / 2]).unwrap();
    let torn = bolewalk(&["import", &pack, "--into", &other]);
    assert_eq!(torn.status.code(), Some(1), "{}", out(&torn));
    assert!(err(&torn).contains("Send it again"), "{}", err(&torn));
    assert!(!folder.path().join("other").exists());
}
