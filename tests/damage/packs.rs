//! Packs that are torn, forged, swollen, of a newer version or of a wrong clock: words and a way
//! on, and nothing half-taken.

use std::collections::BTreeMap;
use std::fs::{self, File};
use std::io::{Cursor, Read, Write};
use std::path::{Path, PathBuf};

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::pack::{PackAtHand, write_pack_of};
use bolewalk_core::field_book::{FieldBook, FixedClock, PackTaken};
use bolewalk_core::photo::import_photo;
use bolewalk_core::record::{Id, SiteFile};
use bolewalk_core::store::{Change, PHOTOS, Store};
use proptest::prelude::*;
use serde_json::{Value, json};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use super::store::{ana, at, property};

type Parts = BTreeMap<String, Vec<u8>>;

/// A book with one photo, and its pack.
struct Sent {
    folder: tempfile::TempDir,
    pack: PathBuf,
}

impl Sent {
    fn of(trees: u32) -> Sent {
        let folder = tempfile::tempdir().unwrap();
        let book = folder.path().join("sender");
        let mut store = Store::open(&book, "sender", at(0)).unwrap();
        let root = Path::new(env!("CARGO_MANIFEST_DIR"));
        let photo = root.join("fixtures/photos/progressive.jpg");
        let photo = import_photo(&photo, &book.join(PHOTOS)).unwrap();
        let mut file: Value = serde_json::to_value(property(trees)).unwrap();
        file["site"]["trees"][0]["inspections"][0]["photos"] = json!([{ "file": photo.file }]);
        let file: SiteFile = serde_json::from_value(file).unwrap();
        store.put_site_file(&ana(0), &file).unwrap();
        let pack = folder.path().join("pack.zip");
        let site = Id::from("s");
        let go_on = |_: u32, _: u32| true;
        write_pack_of(&store.read(), &book, "sender", &site, at(1), &pack, &go_on).unwrap();
        Sent { folder, pack }
    }

    fn bytes(&self) -> Vec<u8> {
        fs::read(&self.pack).unwrap()
    }

    /// The pack with some parts changed; head and hashes say what is in it then.
    fn forged(&self, forge: impl FnOnce(&mut Parts, &mut Value)) -> PathBuf {
        let mut parts = unzipped(&self.bytes());
        let mut head: Value = serde_json::from_slice(&parts["pack.json"]).unwrap();
        forge(&mut parts, &mut head);
        let changes = &parts["changes.jsonl"];
        head["changes"] = json!({
            "count": changes.iter().filter(|byte| **byte == b'\n').count(),
            "bytes": changes.len(),
            "blake3": blake3::hash(changes).to_hex().to_string(),
        });
        parts.insert("pack.json".into(), serde_json::to_vec(&head).unwrap());
        self.kept("forged.zip", &zipped(&parts))
    }

    /// The pack with its first change altered and added as one more.
    fn with_change(&self, alter: impl FnOnce(&mut Value)) -> PathBuf {
        self.forged(|parts, _| {
            let changes = parts.get_mut("changes.jsonl").unwrap();
            let text = String::from_utf8(changes.clone()).unwrap();
            let mut change: Value = serde_json::from_str(text.lines().next().unwrap()).unwrap();
            change["id"] = json!("019e7bd0-0000-7000-8000-000000000001");
            change["replaces"] = json!([]);
            alter(&mut change);
            changes.extend(format!("{change}\n").bytes());
        })
    }

    fn kept(&self, name: &str, bytes: &[u8]) -> PathBuf {
        let path = self.folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    }
}

fn unzipped(bytes: &[u8]) -> Parts {
    let mut zip = ZipArchive::new(Cursor::new(bytes)).unwrap();
    let mut parts = Parts::new();
    for at in 0..zip.len() {
        let mut entry = zip.by_index(at).unwrap();
        let mut bytes = Vec::new();
        entry.read_to_end(&mut bytes).unwrap();
        parts.insert(entry.name().unwrap().into_owned(), bytes);
    }
    parts
}

fn zipped(parts: &Parts) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default().compression_method(CompressionMethod::Deflated);
    for (name, bytes) in parts {
        zip.start_file(name.as_str(), options).unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

/// A phone that is handed a pack.
struct Receiver {
    folder: tempfile::TempDir,
    book: std::sync::Arc<FieldBook>,
}

impl Receiver {
    fn new() -> Receiver {
        let folder = tempfile::tempdir().unwrap();
        let clock = FixedClock::at(at(10)).unwrap();
        let place = folder.path().display().to_string();
        let book = FieldBook::open_with_clock(place, "receiver".to_owned(), clock).unwrap();
        Receiver { folder, book }
    }

    fn take(&self, pack: &Path) -> Result<PackTaken, BookError> {
        self.book.read_pack(pack.display().to_string())
    }

    /// The pack is refused, in these words, and nothing of it is here.
    fn refuses(&self, pack: &Path, code: &str, words: &str) {
        let error = self.take(pack).unwrap_err();
        let said = self.book.words_of(error.clone()).unwrap();
        match &error {
            BookError::Refused { faults } => {
                assert_eq!(faults[0].code, code, "{error:?}");
            }
            other => panic!("{code}: {other:?}"),
        }
        assert!(said.contains(words), "{code}: {said}");
        self.is_untouched();
    }

    fn is_untouched(&self) {
        let snapshot = rusqlite::Connection::open(self.folder.path().join("field-book.db"));
        let count = snapshot
            .unwrap()
            .query_row("SELECT count(*) FROM change", [], |row| {
                row.get::<_, u32>(0)
            });
        assert_eq!(count.unwrap(), 0);
        assert!(nothing_aside(self.folder.path()));
        let photos = fs::read_dir(self.folder.path().join(PHOTOS));
        assert_eq!(photos.map_or(0, Iterator::count), 0);
    }
}

fn nothing_aside(book: &Path) -> bool {
    let mut entries = fs::read_dir(book).unwrap().flatten();
    entries.all(|entry| !entry.file_name().to_string_lossy().starts_with(".pack-"))
}

#[test]
fn what_is_no_pack_is_said_to_be_none() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let again = "Choose the file that another phone wrote";
    let texts: [&[u8]; 4] = [b"", b"{\"format\":1}", b"%PDF-1.7", b"PK\x05\x06"];
    for bytes in texts {
        phone.refuses(&sent.kept("none.zip", bytes), "fault.pack-none", again);
    }
    let mut parts = unzipped(&sent.bytes());
    parts.remove("pack.json");
    phone.refuses(
        &sent.kept("headless.zip", &zipped(&parts)),
        "fault.pack-none",
        again,
    );
    let folder = phone.take(sent.folder.path()).unwrap_err();
    assert!(matches!(folder, BookError::Unreadable { .. }), "{folder:?}");
    let nothing = phone.take(&sent.folder.path().join("nothing.zip"));
    assert!(matches!(nothing, Err(BookError::NotFound { .. })));
}

#[test]
fn a_pack_cut_short_anywhere_is_refused_whole() {
    let (sent, phone) = (Sent::of(3), Receiver::new());
    let bytes = sent.bytes();
    for sixteenth in 1..16 {
        let cut = sent.kept("cut.zip", &bytes[..bytes.len() * sixteenth / 16]);
        phone.refuses(&cut, "fault.pack-torn", "Send it again");
    }
    phone.refuses(
        &sent.kept("cut.zip", &bytes[..bytes.len() - 1]),
        "fault.pack-torn",
        "Send it again",
    );
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    // Every byte of the zip is either watched by a hash or means nothing to us.
    #[test]
    fn whatever_is_altered_on_the_way_is_refused_or_means_nothing(
        places in prop::collection::vec((any::<prop::sample::Index>(), 1_u8..), 1..3),
    ) {
        static SENT: std::sync::LazyLock<(Sent, Vec<u8>)> = std::sync::LazyLock::new(|| {
            let sent = Sent::of(2);
            let bytes = sent.bytes();
            (sent, bytes)
        });
        let (_, whole) = &*SENT;
        let mut bytes = whole.clone();
        for (place, by) in places {
            let place = place.index(bytes.len());
            bytes[place] ^= by;
        }
        let phone = Receiver::new();
        let pack = phone.folder.path().join("altered.zip");
        fs::write(&pack, &bytes).unwrap();
        match phone.take(&pack) {
            Ok(taken) => prop_assert_eq!((taken.photos, taken.notices.len()), (1, 0)),
            Err(BookError::Refused { .. } | BookError::Newer { .. }) => phone.is_untouched(),
            Err(other) => panic!("{other:?}"),
        }
    }
}

#[test]
fn a_name_that_leads_out_of_the_pack_is_refused_and_written_nowhere() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    for name in [
        "../outside.jpg",
        "/outside.jpg",
        "photos/../../outside.jpg",
        "..\\outside.jpg",
    ] {
        let mut parts = unzipped(&sent.bytes());
        parts.insert(name.to_owned(), b"x".to_vec());
        let pack = sent.kept("slip.zip", &zipped(&parts));
        phone.refuses(&pack, "fault.pack-path", "leads out of the pack");
    }
    let forged = sent.forged(|parts, head| {
        head["photos"][0]["file"] = json!("../../outside.jpg");
        parts.insert("x".into(), Vec::new());
    });
    let error = phone.take(&forged).unwrap_err();
    assert!(matches!(error, BookError::Refused { .. }), "{error:?}");
    phone.is_untouched();
    let outside = phone.folder.path().parent().unwrap().join("outside.jpg");
    assert!(!outside.exists() && !Path::new("/outside.jpg").exists());
}

#[test]
fn what_swells_beyond_all_measure_is_refused_unread() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let swells = "unpacks to more than a pack can hold";
    for name in ["pack.json", "changes.jsonl", "notes.txt"] {
        let mut parts = unzipped(&sent.bytes());
        parts.insert(name.to_owned(), vec![b' '; 60_000_000]);
        let pack = sent.kept("bomb.zip", &zipped(&parts));
        assert!(fs::metadata(&pack).unwrap().len() < 1_000_000);
        phone.refuses(&pack, "fault.pack-swells", swells);
    }
    let mut parts = unzipped(&sent.bytes());
    parts.extend((0..22_000).map(|number| (format!("notes/{number}"), Vec::new())));
    let pack = sent.kept("many.zip", &zipped(&parts));
    phone.refuses(&pack, "fault.pack-swells", swells);
}

#[test]
fn entries_that_share_bytes_are_refused() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in unzipped(&sent.bytes()) {
        zip.start_file(name, SimpleFileOptions::default()).unwrap();
        zip.write_all(&bytes).unwrap();
    }
    zip.shallow_copy_file("changes.jsonl", "once-more.jsonl")
        .unwrap();
    let pack = sent.kept("shared.zip", &zip.finish().unwrap().into_inner());
    phone.refuses(
        &pack,
        "fault.pack-altered",
        "let the other phone write it again",
    );
}

#[test]
fn a_file_of_two_gigabytes_is_refused_by_its_size() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let path = sent.folder.path().join("film.zip");
    // A hole of that length: no byte of it is on the disk.
    File::create(&path).unwrap().set_len(2_000_000_000).unwrap();
    let began = std::time::Instant::now();
    phone.refuses(&path, "fault.pack-too-large", "up to 1800 MB");
    assert!(began.elapsed().as_secs() < 5);
}

#[test]
fn a_part_that_is_not_what_the_head_says_is_refused() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let altered = "altered, or damaged on its way";
    let mut parts = unzipped(&sent.bytes());
    let changes = parts.get_mut("changes.jsonl").unwrap();
    let text = String::from_utf8(changes.clone()).unwrap();
    *changes = text.replace("Hill House", "Hell House").into_bytes();
    let pack = sent.kept("altered.zip", &zipped(&parts));
    phone.refuses(&pack, "fault.pack-altered", altered);

    let photo = |parts: &Parts| {
        let mut names = parts.keys().filter(|name| name.starts_with("photos/"));
        names.next().unwrap().clone()
    };
    let mut parts = unzipped(&sent.bytes());
    let name = photo(&parts);
    let last = parts.get_mut(&name).unwrap().last_mut().unwrap();
    *last ^= 1;
    let pack = sent.kept("altered.zip", &zipped(&parts));
    phone.refuses(&pack, "fault.pack-altered", altered);
    parts.remove(&name);
    let pack = sent.kept("missing.zip", &zipped(&parts));
    phone.refuses(&pack, "fault.pack-missing", "does not hold it");
    let unlisted = sent.forged(|_, head| head["photos"] = json!([]));
    phone.refuses(&unlisted, "fault.pack-unlisted", "not on its list");
    let headed = sent.forged(|_, head| head["sites"] = json!("all"));
    phone.refuses(&headed, "fault.pack-head", "head of the pack");
}

#[test]
fn a_photo_that_is_no_photo_is_refused_though_its_hash_is_right() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let pack = sent.forged(|parts, head| {
        let file = format!("{}.jpg", blake3::hash(b"MZ no photo").to_hex());
        parts.insert(format!("photos/{file}"), b"MZ no photo".to_vec());
        let photos = head["photos"].as_array_mut().unwrap();
        photos.push(json!({"file": file, "bytes": 11}));
    });
    phone.refuses(&pack, "fault.photo-unknown-kind", "photos/");
}

#[test]
fn a_line_that_is_no_change_is_named() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    for (field, value) in [
        ("hlc", json!("yesterday")),
        ("noun", json!("")),
        ("replaces", json!({"all": true})),
        ("id", json!("x".repeat(65))),
    ] {
        let pack = sent.with_change(|change| change[field] = value);
        phone.refuses(&pack, "fault.change", "line ");
    }
    let deep = format!("{}1{}", "[".repeat(5_000), "]".repeat(5_000));
    let pack = sent.forged(|parts, _| {
        let changes = parts.get_mut("changes.jsonl").unwrap();
        changes.extend(format!("{deep}\n").bytes());
    });
    phone.refuses(&pack, "fault.change", "line ");
}

#[test]
fn a_known_change_with_other_content_is_refused() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let twice = sent.forged(|parts, _| {
        let changes = parts.get_mut("changes.jsonl").unwrap();
        let text = String::from_utf8(changes.clone()).unwrap();
        let line = text
            .lines()
            .find(|line| line.contains("Hill House"))
            .unwrap();
        changes.extend(format!("{}\n", line.replace("Hill House", "Mine")).bytes());
    });
    phone.refuses(&twice, "fault.change-differs", "with other content");
}

#[test]
fn entries_about_another_property_are_refused() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let other = sent.with_change(|change| change["site"] = json!("another"));
    phone.refuses(&other, "fault.pack-other-site", "does not name");

    // A tree whose id is that of a tree of another property here.
    let mine: SiteFile = serde_json::from_value(json!({"format": 1,
        "site": {"id": "mine", "name": "Mine", "trees": [{"id": "t0", "tag": "1"}]}}))
    .unwrap();
    let folder = tempfile::tempdir().unwrap();
    let mut store = Store::open(folder.path(), "receiver", at(10)).unwrap();
    store.put_site_file(&ana(10), &mine).unwrap();
    let before = store.read().load_book().unwrap();
    let go_on = |_: u32, _: u32| true;
    let pack = PackAtHand::look_over(&sent.pack, folder.path(), at(11), &go_on).unwrap();
    match pack.take_in(&mut store, &go_on) {
        Err(BookError::Refused { faults }) => assert_eq!(faults[0].code, "fault.record-elsewhere"),
        other => panic!("{other:?}"),
    }
    assert_eq!(store.read().load_book().unwrap(), before);
}

#[test]
fn a_pack_of_a_newer_version_says_to_update() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let newer = sent.forged(|_, head| {
        head["format"] = json!(2);
        head["photos"] = json!("of another form");
    });
    let error = phone.take(&newer).unwrap_err();
    let found = BookError::Newer {
        place: "pack.json".to_owned(),
        found: 2,
        known: 1,
    };
    assert_eq!(error, found);
    assert!(
        phone
            .book
            .words_of(error)
            .unwrap()
            .contains("Update this app")
    );
    phone.is_untouched();
}

#[test]
fn what_this_version_does_not_know_is_kept_and_passed_on() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    let pack = sent.forged(|parts, _| {
        let changes = parts.get_mut("changes.jsonl").unwrap();
        for (id, noun, field, value) in [
            ("1", "balloon", "gas", json!("helium")),
            ("2", "tree", "aura", json!({"colour": "green"})),
            ("3", "tree", "way", json!("by_balloon")),
        ] {
            let change = json!({"id": format!("newer-{id}"), "hlc": "6a16e6c000000000",
                "device": "sender", "person": "ana", "edit": "e", "site": "s", "noun": noun,
                "record": "t0", "field": field, "value": value, "replaces": []});
            changes.extend(format!("{change}\n").bytes());
        }
    });
    let taken = phone.take(&pack).unwrap();
    assert!(
        taken
            .notices
            .iter()
            .any(|one| one.contains("newer version")),
        "{taken:?}"
    );
    let on = phone.folder.path().join("on.zip").display().to_string();
    phone.book.write_pack("s".to_owned(), on.clone()).unwrap();
    let parts = unzipped(&fs::read(on).unwrap());
    let text = String::from_utf8(parts["changes.jsonl"].clone()).unwrap();
    for id in ["newer-1", "newer-2", "newer-3"] {
        let line = text.lines().find(|line| line.contains(id)).unwrap();
        serde_json::from_str::<Change>(line).unwrap();
    }
}

#[test]
fn a_clock_set_ahead_is_told_and_one_beyond_belief_is_refused() {
    let sent = Sent::of(1);
    // RFC 9562: the first 48 bits of a UUID of version 7 are milliseconds since 1970.
    let ahead = |days: i64| {
        let utc_ms = (at(10).utc_ms + days * 86_400_000) as u64;
        sent.with_change(|change| {
            change["hlc"] = json!(format!("{:08x}00000000", utc_ms / 1000));
            let id = format!("{utc_ms:012x}");
            let id = format!("{}-{}-7000-8000-000000000001", &id[..8], &id[8..]);
            change["id"] = json!(id);
        })
    };
    let phone = Receiver::new();
    let taken = phone.take(&ahead(3)).unwrap();
    let told = taken.notices.join(" ");
    assert!(
        told.contains("“sender” has its date or time set 3 days ahead"),
        "{told}"
    );
    Receiver::new().refuses(
        &ahead(3_660),
        "fault.change-too-far-ahead",
        "more than ten years",
    );
}

#[test]
fn a_full_disk_in_the_middle_leaves_neither_changes_nor_photos() {
    let sent = Sent::of(400);
    let folder = tempfile::tempdir().unwrap();
    let mut store = Store::open(folder.path(), "receiver", at(10)).unwrap();
    let go_on = |_: u32, _: u32| true;
    let look_over = || PackAtHand::look_over(&sent.pack, folder.path(), at(11), &go_on).unwrap();
    store.bound_pages(1).unwrap();
    let full = look_over().take_in(&mut store, &go_on);
    assert!(matches!(full, Err(BookError::DiskFull { .. })), "{full:?}");
    assert_eq!(store.check().unwrap().changes, 0);
    assert_eq!(fs::read_dir(folder.path().join(PHOTOS)).unwrap().count(), 0);
    assert!(nothing_aside(folder.path()));
    store.bound_pages(0).unwrap();
    let received = look_over().take_in(&mut store, &go_on).unwrap();
    assert_eq!(received.photos, 1);
    assert!(store.check().unwrap().is_sound());
}

#[test]
fn work_that_is_stopped_leaves_nothing_and_the_rest_of_a_sudden_end_goes() {
    let sent = Sent::of(3);
    let folder = tempfile::tempdir().unwrap();
    let mut store = Store::open(folder.path(), "receiver", at(10)).unwrap();
    let rest = folder.path().join(".pack-rest");
    fs::create_dir(&rest).unwrap();
    fs::write(rest.join("half.jpg"), b"half").unwrap();
    for last in 0..2 {
        let stop = |done: u32, _: u32| done < last;
        let stopped = PackAtHand::look_over(&sent.pack, folder.path(), at(11), &stop);
        assert!(matches!(stopped, Err(BookError::Stopped)), "{last}");
    }
    assert!(!folder.path().join(PHOTOS).exists());
    let go_on = |_: u32, _: u32| true;
    let pack = PackAtHand::look_over(&sent.pack, folder.path(), at(11), &go_on).unwrap();
    pack.take_in(&mut store, &go_on).unwrap();
    assert!(!rest.exists() && nothing_aside(folder.path()));
}
