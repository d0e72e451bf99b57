//! A full disk and a folder that cannot be written: no corruption, and nothing half-written.

use std::fs;

use bolewalk_core::error::BookError;

use super::store::{ana, at, note, notes, open, property};

#[test]
fn a_full_disk_leaves_everything_as_it_was() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), 0).unwrap();
    store.put_site_file(&ana(0), &property(20)).unwrap();
    // SQLite raises the bound to the present size: no page more can be had.
    store.bound_pages(1).unwrap();
    let mut full = None;
    let mut kept = 0;
    for minute in 1..2_000 {
        match note(
            &mut store,
            minute,
            3,
            &format!("{minute} {}", "long ".repeat(40)),
        ) {
            Ok(()) => kept = minute,
            Err(fault) => {
                full = Some(fault);
                break;
            }
        }
    }
    let place = folder.path().join("field-book.db").display().to_string();
    assert_eq!(full, Some(BookError::DiskFull { place }));
    assert!(notes(&store)[0].starts_with(&format!("{kept} ")));
    assert!(store.check().unwrap().is_sound());
    assert!(store.opening().repair.is_none());
    store.bound_pages(0).unwrap();
    note(&mut store, 3_000, 3, "room again").unwrap();
    assert_eq!(notes(&store), ["room again"]);
    // Logical time goes on after the failed edit.
    let again = open(folder.path(), 3_001);
    assert!(again.unwrap().check().unwrap().is_sound());
}

#[test]
fn a_folder_that_cannot_be_made_is_said_so() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("file");
    fs::write(&file, b"in the way").unwrap();
    let fault = open(&file.join("book"), 0).unwrap_err();
    assert!(matches!(fault, BookError::Unwritable { .. }), "{fault:?}");
    assert_eq!(fs::read(&file).unwrap(), b"in the way");
}

/// Not even an administrator can make a file here.
#[cfg(target_os = "linux")]
#[test]
fn a_read_only_folder_is_said_so() {
    let fault = open(std::path::Path::new("/proc/sys"), 0).unwrap_err();
    assert!(matches!(fault, BookError::Unwritable { .. }), "{fault:?}");
}

#[test]
fn a_backup_that_cannot_be_written_leaves_no_half_one() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), 0).unwrap();
    store.put_site_file(&ana(0), &property(5)).unwrap();
    fs::write(folder.path().join("backups"), b"in the way").unwrap();
    let fault = store.backup(at(1)).unwrap_err();
    assert!(matches!(fault, BookError::Unwritable { .. }), "{fault:?}");
    fs::remove_file(folder.path().join("backups")).unwrap();
    let backup = store.backup(at(2)).unwrap();
    let names: Vec<_> = fs::read_dir(backup.parent().unwrap()).unwrap().collect();
    assert_eq!(names.len(), 1);
}
