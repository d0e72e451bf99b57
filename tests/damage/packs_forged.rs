//! Packs whose parts are not what they say: forged, of a newer version, of a wrong clock.

use std::fs;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::pack::PackAtHand;
use bolewalk_core::record::SiteFile;
use bolewalk_core::store::{Change, Store};
use serde_json::json;

use super::packs::{Parts, Receiver, Sent, unzipped, zipped};
use super::store::{ana, at};

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
fn a_photo_record_cannot_name_a_file_outside_the_photos() {
    let (sent, phone) = (Sent::of(1), Receiver::new());
    for file in [
        "../field-book.db",
        "/etc/hostname",
        "a\\b.jpg",
        ".hidden",
        "",
    ] {
        let pack = sent.with_change(|change| {
            change["noun"] = json!("photo");
            change["record"] = json!("p");
            change["field"] = json!("file");
            change["value"] = json!(file);
        });
        phone.refuses(&pack, "fault.pack-path", "leads out of the pack");
    }
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
