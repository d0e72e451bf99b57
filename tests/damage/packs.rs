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
use bolewalk_core::store::{PHOTOS, Store};
use proptest::prelude::*;
use serde_json::{Value, json};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, ZipArchive, ZipWriter};

use super::store::{ana, at, property};

pub type Parts = BTreeMap<String, Vec<u8>>;

/// A book with one photo, and its pack.
pub struct Sent {
    pub folder: tempfile::TempDir,
    pub pack: PathBuf,
}

impl Sent {
    pub fn of(trees: u32) -> Sent {
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

    pub fn bytes(&self) -> Vec<u8> {
        fs::read(&self.pack).unwrap()
    }

    /// The pack with some parts changed; head and hashes say what is in it then.
    pub fn forged(&self, forge: impl FnOnce(&mut Parts, &mut Value)) -> PathBuf {
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
    pub fn with_change(&self, alter: impl FnOnce(&mut Value)) -> PathBuf {
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

    pub fn kept(&self, name: &str, bytes: &[u8]) -> PathBuf {
        let path = self.folder.path().join(name);
        fs::write(&path, bytes).unwrap();
        path
    }
}

pub fn unzipped(bytes: &[u8]) -> Parts {
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

pub fn zipped(parts: &Parts) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default().compression_method(CompressionMethod::Deflated);
    for (name, bytes) in parts {
        zip.start_file(name.as_str(), options).unwrap();
        zip.write_all(bytes).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

/// A phone that is handed a pack.
pub struct Receiver {
    pub folder: tempfile::TempDir,
    pub book: std::sync::Arc<FieldBook>,
}

impl Receiver {
    pub fn new() -> Receiver {
        let folder = tempfile::tempdir().unwrap();
        let clock = FixedClock::at(at(10)).unwrap();
        let place = folder.path().display().to_string();
        let book = FieldBook::open_with_clock(place, "receiver".to_owned(), clock).unwrap();
        Receiver { folder, book }
    }

    pub fn take(&self, pack: &Path) -> Result<PackTaken, BookError> {
        self.book.read_pack(pack.display().to_string())
    }

    /// The pack is refused, in these words, and nothing of it is here.
    pub fn refuses(&self, pack: &Path, code: &str, words: &str) {
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

    pub fn is_untouched(&self) {
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
        "Let the other phone write it again",
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
