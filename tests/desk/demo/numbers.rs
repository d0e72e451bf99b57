//! The demo's numbers, redone, and what it leaves alone.

use super::*;

// Metric and imperial agree to the printed digit: 0.3048 m to the foot (NIST SP 811).
#[test]
fn metric_and_imperial_tell_the_same() {
    let demo = Demo::made();
    let judged = demo.judged();
    let imperial = demo.run(&["judge", "--imperial"]);
    let metric = demo.run(&["judge"]);
    for tree in trees(&judged) {
        let Some(zone) = tree["zones"].get(0).filter(|zone| zone["planned"] == true) else {
            continue;
        };
        let keep_m = zone["keep_out_m"].as_f64().unwrap();
        let up = |value: f64, step: f64| (value / step - 1e-9).ceil() * step;
        let tag = tree["tag"].as_str().unwrap();
        let row = |text: &str| {
            let mut lines = text.lines();
            let found = lines.find(|line| line.split_whitespace().next() == Some(tag));
            found.unwrap_or_default().to_owned()
        };
        let metres = format!("{:.1} m", up(keep_m, 0.1));
        assert!(
            row(&metric).contains(&metres),
            "{tag}: {metres}: {}",
            row(&metric)
        );
        let feet = format!("{:.0} ft", up(keep_m / 0.3048, 1.0));
        assert!(
            row(&imperial).contains(&feet),
            "{tag}: {feet}: {}",
            row(&imperial)
        );
    }
    assert!(
        !imperial.contains(" kg") && !imperial.contains(" cm"),
        "{imperial}"
    );
}

// OSHA's barrier as the rule set has it: crown reach, one piece, 20 ft (6.1 m) beyond.
#[test]
fn keep_out_distances_follow_their_published_rules() {
    let judged = Demo::made().judged();
    let planned = |tag: &str| {
        let tree = trees(&judged).iter().find(|tree| tree["tag"] == tag);
        tree.unwrap()["zones"][0]["keep_out_m"].as_f64().unwrap()
    };
    assert!((planned("01") - (8.5 + 1.2 + 6.1)).abs() < 1e-9);
    assert!((planned("12") - (6.5 + 1.0 + 6.1)).abs() < 1e-9);
    // 29 CFR 1910.266: two tree lengths; 22.5 m by the tangent method (5 %), 9° of lean, 95 % end.
    let length =
        22.5 * (1.644_854 * (1.0_f64 + 0.05 * 0.05).ln().sqrt()).exp() / 9.0_f64.to_radians().cos();
    assert!((planned("11") - 2.0 * length).abs() < 1e-6);
}

// The score and the lengths can be redone from the inputs that are printed (method, section 7).
#[test]
fn the_working_can_be_redone_with_a_calculator() {
    let judged = Demo::made().judged();
    let mut redone = 0;
    for tree in trees(&judged) {
        for line in tree["working"].as_array().unwrap() {
            assert!(!line["source"].as_str().unwrap().is_empty(), "{line}");
            assert!(!line["formula"].as_str().unwrap().is_empty(), "{line}");
            let of = |name: &str| {
                let inputs = line["inputs"].as_array().unwrap();
                let input = inputs.iter().find(|input| input["name"] == name).unwrap();
                input["value"]["value"].as_f64().unwrap()
            };
            let value = line["value"].as_f64().unwrap();
            let again = match line["what"].as_str().unwrap() {
                "work.score" => 100.0 * of("f") * of("p") * of("h"),
                "work.stem-length" => of("H95") / of("θ").to_radians().cos(),
                "work.anchor-force" => of("m") * of("g") * of("s") * of("k") / 1000.0,
                "work.anchor-stress" => {
                    let d_m = of("d") / 100.0;
                    32.0 * of("M") / (std::f64::consts::PI * d_m * d_m * d_m) / 1000.0
                }
                "work.rope-length" => of("legs") * of("A") + of("reserve"),
                _ => continue,
            };
            assert!(
                (value - again).abs() < 1e-6 * value.abs().max(1.0),
                "{line}"
            );
            redone += 1;
        }
    }
    assert!(redone > 60, "{redone}");
    let told = Demo::made().run(&["judge", "--explain", "04"]);
    for words in [
        "S = 100 · f · p · h",
        "source: Wagener 1963",
        "Ines Marrow: may climb",
    ] {
        assert!(told.contains(words), "{words}");
    }
}

#[test]
fn the_data_for_other_programs_keep_their_form() {
    let judged = Demo::made().judged();
    assert_eq!(judged["format"], 1);
    assert_eq!(judged["site_name"], "Hobnail Farm");
    assert_eq!(judged["judgement"]["as_of"], "2026-05-19");
    let fields: BTreeSet<&str> = trees(&judged)[0]
        .as_object()
        .unwrap()
        .keys()
        .map(String::as_str)
        .collect();
    for field in [
        "tag",
        "verdict",
        "climb",
        "stops",
        "gaps",
        "refer_caps",
        "limit_caps",
        "limits",
        "score",
        "margins",
        "climbers",
        "rope",
        "zones",
        "wires",
        "risks",
        "next_look",
        "working",
    ] {
        assert!(fields.contains(field), "{field}");
    }
    // The same input gives the same bytes.
    let again = Demo::made();
    assert_eq!(
        again.run(&["judge", "--json"]),
        again.run(&["judge", "--json"])
    );
    let at_ten: Value =
        serde_json::from_str(&again.run(&["judge", "--json", "--hour", "10"])).unwrap();
    assert_eq!(at_ten["hour"], 10);
}

#[test]
fn another_day_is_another_answer() {
    // An answer ends with its day (method, section 7): a year on, every climb is to be checked anew.
    let told = Demo::made().run(&["judge", "--json", "--date", "2027-05-19"]);
    let judged: Value = serde_json::from_str(&told).unwrap();
    for tree in trees(&judged) {
        let verdict = tree["verdict"].as_str().unwrap();
        assert!(
            ["barred", "incomplete"].contains(&verdict),
            "{}",
            tree["tag"]
        );
    }
}

#[test]
fn nothing_is_replaced_that_the_demo_did_not_make() {
    let folder = tempfile::tempdir().unwrap();
    let place = folder.path().join("mine");
    // Somebody else's file.
    fs::create_dir(&place).unwrap();
    fs::write(place.join("letter.txt"), "dear").unwrap();
    // Somebody's own field book.
    let book = folder.path().join("book");
    let site = crate::desk::fixture("three-trees.json");
    bolewalk(&["import", &site, "--into", book.to_str().unwrap()]);
    for place in [&place, &book] {
        let before: Vec<_> = fs::read_dir(place)
            .unwrap()
            .map(|e| e.unwrap().path())
            .collect();
        let output = bolewalk(&["demo", place.to_str().unwrap(), "--yes"]);
        assert_eq!(output.status.code(), Some(1));
        assert!(
            err(&output).contains("Name another folder"),
            "{}",
            err(&output)
        );
        for path in before {
            assert!(path.exists());
        }
    }
    // An earlier demo, and nobody to be asked.
    let earlier = folder.path().join("earlier");
    earlier_demo(&earlier);
    let output = bolewalk(&["demo", earlier.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("--yes"), "{}", err(&output));
}
