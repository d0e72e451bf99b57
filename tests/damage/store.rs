//! A damaged field book: moved aside, restored, merged with what can still be read, said so.

use std::fs;
use std::io::{Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

use bolewalk_core::error::BookError;
use bolewalk_core::record::{Id, Moment, Noun, SiteFile};
use bolewalk_core::store::{Author, DATABASE, QUARANTINE, Repair, Store};
use serde_json::json;

/// The moment `minute` minutes after a start.
pub fn at(minute: i64) -> Moment {
    Moment {
        utc_ms: 1_780_000_000_000 + minute * 60_000,
        offset_min: 0,
    }
}

/// Ana, at that minute.
pub fn ana(minute: i64) -> Author {
    Author {
        person: Id::from("ana"),
        at: at(minute),
    }
}

/// A property with so many trees.
pub fn property(trees: u32) -> SiteFile {
    let trees: Vec<_> = (0..trees)
        .map(|tree| {
            json!({"id": format!("t{tree}"), "tag": tree.to_string(), "species": "Quercus robur",
                "position": {"lat_deg": 40.1, "lon_deg": -80.0},
                "inspections": [{"id": format!("i{tree}"), "level": "triage", "visit": "v",
                    "girth": {"girth_cm": 120.5, "method": "taken_over"}}]})
        })
        .collect();
    serde_json::from_value(
        json!({"format": 1, "site": {"id": "s", "name": "Hill House",
        "visits": [{"id": "v", "day": "2026-05-14"}], "trees": trees}}),
    )
    .unwrap()
}

pub fn open(folder: &Path, minute: i64) -> Result<Store, BookError> {
    Store::open(folder, "phone", at(minute))
}

pub fn note(store: &mut Store, minute: i64, tree: u32, note: &str) -> Result<(), BookError> {
    let tree = Id(format!("t{tree}"));
    store
        .edit(&ana(minute), |edit| {
            edit.set(Noun::Tree, &tree, "note", json!(note))
        })
        .map(|_| ())
}

pub fn notes(store: &Store) -> Vec<String> {
    let site = store.read().load_site(&Id::from("s")).unwrap().file.site;
    site.trees
        .into_iter()
        .filter_map(|tree| tree.note)
        .collect()
}

/// A closed book of 400 trees with a backup, and an edit made after it.
fn closed_book(folder: &Path) -> PathBuf {
    let mut store = open(folder, 0).unwrap();
    store.put_site_file(&ana(0), &property(400)).unwrap();
    store.backup(at(1)).unwrap();
    note(&mut store, 2, 7, "after the backup").unwrap();
    folder.join(DATABASE)
}

/// The repair that opening reports; the damaged bytes must still be there.
fn repaired(store: &Store, damaged: &[u8]) -> Repair {
    let repair = store.opening().repair.clone().unwrap();
    let kept = Path::new(&repair.kept).join(DATABASE);
    assert_eq!(fs::read(kept).unwrap(), damaged);
    assert!(store.check().unwrap().is_sound());
    repair
}

fn wreck(path: &Path, place: u64, bytes: usize) -> Vec<u8> {
    let mut file = fs::File::options().write(true).open(path).unwrap();
    file.seek(SeekFrom::Start(place)).unwrap();
    file.write_all(&vec![0xA5; bytes]).unwrap();
    fs::read(path).unwrap()
}

#[test]
fn any_wrecked_page_is_found_and_nothing_that_a_backup_has_is_lost() {
    let whole = tempfile::tempdir().unwrap();
    let pages = fs::metadata(closed_book(whole.path())).unwrap().len() / 4096;
    let mut saved = 0;
    for page in [0, 1, 2, pages / 4, pages / 2, pages * 3 / 4, pages - 1] {
        let folder = tempfile::tempdir().unwrap();
        let path = closed_book(folder.path());
        let damaged = wreck(&path, page * 4096, 4096);
        let store = open(folder.path(), 10).unwrap();
        let repair = repaired(&store, &damaged);
        assert_eq!(repair.backup_ms, Some(at(1).utc_ms), "page {page}");
        let site = store.read().load_site(&Id::from("s")).unwrap().file.site;
        assert_eq!(site.trees.len(), 400);
        saved += repair.saved_changes;
    }
    // The edit made after the backup can be read in all but the first pages' damage.
    assert!(saved >= 3, "{saved}");
}

#[test]
fn without_a_backup_what_can_be_read_of_the_log_is_kept() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    fs::remove_dir_all(folder.path().join("backups")).unwrap();
    let length = fs::metadata(&path).unwrap().len();
    let damaged = wreck(&path, length / 2 / 4096 * 4096, 4096);
    let store = open(folder.path(), 10).unwrap();
    let repair = repaired(&store, &damaged);
    assert_eq!(repair.backup_ms, None);
    assert!(repair.saved_changes > 100, "{repair:?}");
}

#[test]
fn a_truncated_book_is_restored() {
    for left in [1, 100, 4096, 4096 * 20 + 17] {
        let folder = tempfile::tempdir().unwrap();
        let path = closed_book(folder.path());
        let file = fs::File::options().write(true).open(&path).unwrap();
        file.set_len(left).unwrap();
        let damaged = fs::read(&path).unwrap();
        let store = open(folder.path(), 10).unwrap();
        assert!(
            repaired(&store, &damaged).backup_ms.is_some(),
            "{left} bytes left"
        );
    }
}

#[test]
fn an_empty_or_missing_database_beside_backups_is_no_new_book() {
    for is_missing in [false, true] {
        let folder = tempfile::tempdir().unwrap();
        let path = closed_book(folder.path());
        fs::remove_file(&path).unwrap();
        if !is_missing {
            fs::write(&path, b"").unwrap();
        }
        let store = open(folder.path(), 10).unwrap();
        let repair = store.opening().repair.clone().unwrap();
        assert_eq!(repair.backup_ms, Some(at(1).utc_ms));
        assert_eq!(store.read().load_book().unwrap().sites[0].trees, 400);
    }
}

#[test]
fn an_empty_file_alone_is_a_new_book() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join(DATABASE), b"").unwrap();
    let store = open(folder.path(), 0).unwrap();
    assert!(store.opening().new && store.opening().repair.is_none());
}

#[test]
fn a_file_that_is_no_database_is_kept_aside() {
    let folder = tempfile::tempdir().unwrap();
    let text = b"a shopping list, long enough to be no header of anything at all, bread, oil, rope";
    fs::write(folder.path().join(DATABASE), text).unwrap();
    let store = open(folder.path(), 0).unwrap();
    let repair = repaired(&store, text);
    assert_eq!((repair.backup_ms, repair.saved_changes), (None, 0));
}

#[test]
fn a_wrecked_backup_is_passed_over_for_an_older_sound_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    let newer = open(folder.path(), 3).unwrap().backup(at(3)).unwrap();
    let length = fs::metadata(&newer).unwrap().len();
    wreck(&newer, length / 2 / 4096 * 4096, 4096);
    wreck(&path, 0, 4096);
    let store = open(folder.path(), 10).unwrap();
    let repair = store.opening().repair.clone().unwrap();
    assert_eq!(repair.backup_ms, Some(at(1).utc_ms));
}

#[test]
fn damage_met_later_is_reported_and_mended() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    let mut store = open(folder.path(), 5).unwrap();
    let length = fs::metadata(&path).unwrap().len();
    wreck(
        &path,
        4096 * 10,
        usize::try_from(length).unwrap() - 4096 * 12,
    );
    let site = Id::from("s");
    let read = store
        .snapshot()
        .and_then(|snapshot| snapshot.read().load_site(&site).map(|_| ()));
    let fault = read.unwrap_err();
    let BookError::Damaged { detail, place, .. } = fault else {
        panic!("{fault:?}");
    };
    assert_eq!(place, path.display().to_string());
    store.mend(&detail, at(6)).unwrap();
    assert!(store.opening().repair.is_some());
    assert_eq!(store.read().load_book().unwrap().sites[0].trees, 400);
    note(&mut store, 7, 3, "goes on").unwrap();
}

#[test]
fn a_newer_book_is_left_untouched() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    let mut bytes = fs::read(&path).unwrap();
    bytes[60..64].copy_from_slice(&77_u32.to_be_bytes());
    fs::write(&path, &bytes).unwrap();
    let fault = open(folder.path(), 10).unwrap_err();
    assert!(
        matches!(fault, BookError::Newer { found: 77, .. }),
        "{fault:?}"
    );
    assert_eq!(fs::read(&path).unwrap(), bytes);
    assert!(!folder.path().join(QUARANTINE).exists());
    assert!(!folder.path().join(format!("{DATABASE}-wal")).exists());
}

#[test]
fn a_database_of_another_program_is_left_untouched() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    let mut bytes = fs::read(&path).unwrap();
    // 0x47504B47 is the application id of a GeoPackage (OGC 12-128r18, requirement 2).
    bytes[68..72].copy_from_slice(&0x4750_4B47_u32.to_be_bytes());
    fs::write(&path, &bytes).unwrap();
    let fault = open(folder.path(), 10).unwrap_err();
    assert!(matches!(fault, BookError::Unreadable { .. }), "{fault:?}");
    assert_eq!(fs::read(&path).unwrap(), bytes);
}

#[test]
fn a_snapshot_stays_while_edits_go_on() {
    let folder = tempfile::tempdir().unwrap();
    closed_book(folder.path());
    let mut store = open(folder.path(), 5).unwrap();
    let snapshot = store.snapshot().unwrap();
    note(&mut store, 6, 8, "later").unwrap();
    let then = snapshot.read().load_site(&Id::from("s")).unwrap().file.site;
    assert_eq!(
        then.trees.into_iter().filter_map(|tree| tree.note).count(),
        1
    );
    assert_eq!(notes(&store).len(), 2);
}

#[test]
fn what_a_lost_database_left_behind_is_not_played_into_the_restored_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = closed_book(folder.path());
    let mut store = open(folder.path(), 3).unwrap();
    note(&mut store, 4, 9, "only in the log of writes").unwrap();
    let rest = fs::read(folder.path().join(format!("{DATABASE}-wal"))).unwrap();
    drop(store);
    fs::remove_file(&path).unwrap();
    fs::write(folder.path().join(format!("{DATABASE}-wal")), &rest).unwrap();
    let store = open(folder.path(), 10).unwrap();
    let repair = store.opening().repair.clone().unwrap();
    let kept = Path::new(&repair.kept).join(format!("{DATABASE}-wal"));
    assert_eq!(fs::read(kept).unwrap(), rest);
    assert!(store.check().unwrap().is_sound() && notes(&store).is_empty());
}
