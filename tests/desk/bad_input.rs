//! Bad input: a clear message with its place and what to do, the right exit code, nothing
//! half-written, never a panic.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::{Value, json};

use super::{bolewalk, err, fixture, out};

/// Where a fault is told, what its words hold, and the change that makes it.
type Case = (&'static str, &'static str, fn(&mut Value));

/// A site of one tree, changed by `change`, written into `folder`.
fn site_file(folder: &Path, change: impl FnOnce(&mut Value)) -> PathBuf {
    let mut site = json!({"format": 1, "site": {
        "name": "Hill House",
        "targets": [{"name": "Lawn", "kind": "garden", "form": "area", "ground": [
            {"lat_deg": 42.0, "lon_deg": -72.0}, {"lat_deg": 42.001, "lon_deg": -72.0},
            {"lat_deg": 42.001, "lon_deg": -72.001}]}],
        "visits": [{"id": "v", "day": "2026-05-14"}],
        "trees": [{"tag": "1", "position": {"lat_deg": 42.0, "lon_deg": -72.0},
            "inspections": [{"visit": "v", "level": "full_check", "height": {"height_m": 20.0}}]}],
    }});
    change(&mut site);
    let path = folder.join("site.json");
    fs::write(&path, site.to_string()).unwrap();
    path
}

/// Every command that reads a site file refuses it alike; gives what `judge` said.
fn refused(path: &Path) -> String {
    let path = path.to_str().unwrap();
    let aside = tempfile::tempdir().unwrap();
    let papers = aside.path().join("papers");
    let book = aside.path().join("book");
    let (papers, book) = (papers.to_str().unwrap(), book.to_str().unwrap());
    let mut told = String::new();
    for args in [
        vec!["check", path],
        vec!["import", path, "--into", book],
        vec!["summary", path, "--out", papers],
        vec!["export", path, "--out", papers],
        vec!["zones", path],
        vec!["judge", path],
    ] {
        let output = bolewalk(&args);
        assert_eq!(output.status.code(), Some(1), "{args:?}");
        assert_eq!(out(&output), "", "{args:?}");
        told = err(&output);
    }
    let left: Vec<_> = fs::read_dir(aside.path()).unwrap().collect();
    assert!(left.is_empty(), "{left:?}");
    told
}

#[test]
fn every_fault_of_a_site_file_is_told_with_its_place() {
    let folder = tempfile::tempdir().unwrap();
    let cases: [Case; 8] = [
        ("/site/trees/0/tag", "string", |site| {
            site["site"]["trees"][0]["tag"] = json!(7);
        }),
        ("/site/trees/0", "heigth", |site| {
            site["site"]["trees"][0]["heigth"] = json!(20);
        }),
        (
            "/site/trees/0/inspections/0/height/height_m",
            "116",
            |site| {
                site["site"]["trees"][0]["inspections"][0]["height"]["height_m"] = json!(400);
            },
        ),
        ("/site/trees/1/tag", "Two trees", |site| {
            let tree = site["site"]["trees"][0].clone();
            site["site"]["trees"].as_array_mut().unwrap().push(tree);
        }),
        ("/site/targets/0/ground", "crosses", |site| {
            site["site"]["targets"][0]["ground"] = json!([
                {"lat_deg": 42.0, "lon_deg": -72.0}, {"lat_deg": 42.001, "lon_deg": -72.001},
                {"lat_deg": 42.001, "lon_deg": -72.0}, {"lat_deg": 42.0, "lon_deg": -72.001}]);
        }),
        ("/site/trees/0/position", "swapped", |site| {
            site["site"]["trees"][0]["position"] = json!({"lat_deg": -72.0, "lon_deg": 42.0});
        }),
        ("/site/trees/0/position/lat_deg", "89.9", |site| {
            site["site"]["trees"][0]["position"]["lat_deg"] = json!(89.95);
        }),
        (
            "/site/trees/0/inspections/0/photos/0",
            "not there",
            |site| {
                site["site"]["trees"][0]["inspections"][0]["photos"] =
                    json!([{"file": "none.jpg"}]);
            },
        ),
    ];
    for (place, words, change) in cases {
        let told = refused(&site_file(folder.path(), change));
        assert!(told.contains(place), "{place}: {told}");
        assert!(told.contains(words), "{words}: {told}");
    }
}

#[test]
fn what_json_does_not_know_is_told_with_its_line() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("site.json");
    fs::write(&path, "{\"format\": 1,\n \"site\": {\"name\": NaN}}").unwrap();
    assert!(refused(&path).contains("line 2"));
}

#[test]
fn a_newer_site_file_is_left_to_a_newer_version() {
    let folder = tempfile::tempdir().unwrap();
    let path = site_file(folder.path(), |site| site["format"] = json!(2));
    assert!(refused(&path).contains("newer version"));
}

#[test]
fn a_photo_that_is_no_picture_keeps_the_whole_file_out() {
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("a.jpg"), "no picture").unwrap();
    let path = site_file(folder.path(), |site| {
        site["site"]["trees"][0]["inspections"][0]["photos"] = json!([{"file": "a.jpg"}]);
    });
    let book = folder.path().join("book");
    let output = bolewalk(&[
        "import".as_ref(),
        path.as_os_str(),
        "--into".as_ref(),
        book.as_ref(),
    ]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("a.jpg"), "{}", err(&output));
    // The book that was made for it holds nothing.
    let judged = bolewalk(&["judge".as_ref(), book.as_os_str()]);
    assert_eq!(judged.status.code(), Some(1));
}

#[test]
fn a_folder_that_cannot_be_written_is_named() {
    let folder = tempfile::tempdir().unwrap();
    // A file in the place of a folder can be written into by nobody, not even by the root user.
    let file = folder.path().join("file");
    fs::write(&file, "").unwrap();
    let out_of_reach = file.join("papers");
    for command in ["summary", "export"] {
        let site = fixture("three-trees.json");
        let output = bolewalk(&[command, &site, "--out", out_of_reach.to_str().unwrap()]);
        assert_eq!(output.status.code(), Some(1));
        assert!(
            err(&output).contains("cannot be written"),
            "{}",
            err(&output)
        );
    }
    let demo = bolewalk(&["demo", out_of_reach.to_str().unwrap()]);
    assert_eq!(demo.status.code(), Some(1));
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn a_newer_book_ends_with_1_and_a_wrecked_one_with_3() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    let path = book.to_str().unwrap();
    let output = bolewalk(&["import", &fixture("three-trees.json"), "--into", path]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    let database = book.join("field-book.db");
    let conn = rusqlite::Connection::open(&database).unwrap();
    conn.pragma_update(None, "user_version", 9_999).unwrap();
    drop(conn);
    let commands: [&[&str]; 4] = [
        &["judge", path],
        &["summary", path, "--out", path],
        &["export", path, "--out", path],
        &["check", path],
    ];
    let newer = fs::read(&database).unwrap();
    for args in commands {
        let output = bolewalk(args);
        assert_eq!(output.status.code(), Some(1), "{args:?}: {}", err(&output));
        assert!(err(&output).contains("newer version"), "{}", err(&output));
    }
    assert_eq!(fs::read(&database).unwrap(), newer);
    for args in commands {
        fs::write(&database, vec![7_u8; 20_000]).unwrap();
        let output = bolewalk(args);
        assert_eq!(output.status.code(), Some(3), "{args:?}: {}", err(&output));
        assert!(!book.join("site-summary.pdf").exists());
    }
    assert!(book.join("quarantine").is_dir());
}

#[test]
fn a_book_that_is_not_there_is_not_made() {
    let folder = tempfile::tempdir().unwrap();
    for command in ["judge", "check"] {
        let output = bolewalk(&[command, folder.path().to_str().unwrap()]);
        assert_eq!(output.status.code(), Some(1));
    }
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn an_unknown_tree_or_property_is_named_and_wrong_usage_ends_with_2() {
    let site = fixture("three-trees.json");
    let output = bolewalk(&["judge", &site, "--explain", "oak 77"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("oak 77"));
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().to_str().unwrap();
    assert!(
        bolewalk(&["import", &site, "--into", book])
            .status
            .success()
    );
    let output = bolewalk(&["judge", book, "--site", "Elsewhere"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("Elsewhere"));
    for args in [
        vec!["judge"],
        vec!["judge", &site, "--date", "14.5.2026"],
        vec!["judge", &site, "--json", "--explain", "1"],
        vec!["summary", &site, "--a4", "--letter"],
        vec!["export", &site],
    ] {
        assert_eq!(bolewalk(&args).status.code(), Some(2), "{args:?}");
    }
}

#[cfg(unix)]
#[test]
fn a_reader_who_has_read_enough_may_leave() {
    use std::process::{Command, Stdio};
    let mut child = Command::new(env!("CARGO_BIN_EXE_bolewalk"))
        .args(["rules"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert!(output.status.success());
    assert_eq!(err(&output), "");
}
