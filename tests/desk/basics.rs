//! Site files and field books at the desk: checked, brought in, judged, their rules and schema.

use super::{bolewalk, err, fixture, out};

#[test]
fn a_sound_site_file_ends_with_0_and_promises_nothing() {
    let output = bolewalk(&["check", &fixture("three-trees.json")]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    assert!(out(&output).contains("not that any tree may be climbed"));
}

#[test]
fn a_faulty_site_file_ends_with_1_and_tells_every_fault() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("site.json");
    let text = r#"{"format":1,"site":{"name":"H","trees":[{"tag":"1","inspections":[
        {"level":"full_check","height":{"height_m":400},"photos":[{"file":"a.jpg"}]}]},
        {"tag":"2","way":"chop"}]}}"#;
    std::fs::write(&path, text).unwrap();
    let output = bolewalk(&["check", path.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    let told = err(&output);
    assert!(
        told.contains("/site/trees/0/inspections/0/height/height_m"),
        "{told}"
    );
    assert!(told.contains("/site/trees/1/way"), "{told}");
}

#[test]
fn wrong_usage_ends_with_2_and_a_missing_file_with_1() {
    assert_eq!(bolewalk(&["chop"]).status.code(), Some(2));
    let output = bolewalk(&["check", "nowhere.json"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("nowhere.json"));
}

#[test]
fn importing_twice_changes_nothing_and_the_book_is_sound() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    let book = book.to_str().unwrap();
    let file = fixture("three-trees.json");
    for _ in 0..2 {
        let output = bolewalk(&["import", &file, "--into", book, "--by", "Ana"]);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    }
    let output = bolewalk(&["check", book]);
    assert_eq!(
        output.status.code(),
        Some(0),
        "{}{}",
        out(&output),
        err(&output)
    );
    let told = out(&output);
    assert!(told.lines().any(|line| line.trim() == "3  tree"), "{told}");
    assert!(
        told.lines().any(|line| line.trim() == "1  finding"),
        "{told}"
    );
}

#[test]
fn a_wrecked_field_book_ends_with_3_and_keeps_the_files() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    std::fs::create_dir(&book).unwrap();
    std::fs::write(book.join("field-book.db"), vec![7_u8; 20_000]).unwrap();
    let output = bolewalk(&["check", book.to_str().unwrap()]);
    assert_eq!(
        output.status.code(),
        Some(3),
        "{}{}",
        out(&output),
        err(&output)
    );
    assert!(book.join("quarantine").is_dir());
}

// Plane trigonometry and ANSI Z133-2017 as summarised: 20 ± 0.4 m at 10° of lean; the 95 % end of
// the height is 20.66 m, the stem 20.98 m, twice that 41.96 m; printed distances round up.
#[test]
fn zones_name_their_rule_and_their_source() {
    let output = bolewalk(&["zones", &fixture("three-trees.json"), "--tag", "1"]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    let told = out(&output);
    assert!(told.contains("nobody within 42"), "{told}");
    assert!(told.contains("29 CFR 1910.266"), "{told}");
    let imperial = out(&bolewalk(&[
        "zones",
        &fixture("three-trees.json"),
        "--imperial",
    ]));
    assert!(imperial.contains(" ft"), "{imperial}");
    assert!(imperial.contains("no inspection"), "{imperial}");
}

#[test]
fn the_judgement_of_a_site_file_fits_the_page_in_both_systems_of_units() {
    let metric = bolewalk(&["judge", &fixture("three-trees.json")]);
    assert_eq!(metric.status.code(), Some(0), "{}", err(&metric));
    let metric = out(&metric);
    for line in metric.lines() {
        assert!(line.chars().count() <= 100, "{line}");
    }
    // A hanger over the route bars (method, section 3); a tree nobody looked at is a gap.
    assert!(metric.contains("A hanger over the route"), "{metric}");
    assert!(metric.contains("not judged: still to check"), "{metric}");
    let imperial = out(&bolewalk(&[
        "judge",
        &fixture("three-trees.json"),
        "--imperial",
    ]));
    assert!(imperial.contains(" ft") && !imperial.contains("20.0 m"));
    assert_eq!(
        bolewalk(&["judge", &fixture("three-trees.json"), "--hour", "24"])
            .status
            .code(),
        Some(2)
    );
}

#[test]
fn the_schema_is_json_and_the_rules_name_their_sources() {
    let schema: serde_json::Value = serde_json::from_slice(&bolewalk(&["schema"]).stdout).unwrap();
    assert_eq!(schema["title"], "Bolewalk site file, format 1");
    let rules: Vec<serde_json::Value> =
        serde_json::from_slice(&bolewalk(&["rules", "--json"]).stdout).unwrap();
    assert!(rules.len() > 100);
    assert!(
        rules
            .iter()
            .all(|row| !row["source"].as_str().unwrap().is_empty())
    );
}
