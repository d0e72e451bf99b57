//! Measures while they are taken: what would be recorded, what is missing, what a sensor spoils.

use bolewalk_core::pages::{CommandKind, Entry, EntryValue, SensedFix};
use bolewalk_core::record::Id;

use super::{Hand, choice, number, words};

fn entries(of: &[(&str, EntryValue)]) -> Vec<Entry> {
    of.iter()
        .map(|(input, value)| Entry {
            input: (*input).to_owned(),
            value: value.clone(),
        })
        .collect()
}

fn tilt(degrees: f64) -> EntryValue {
    EntryValue::Tilt { degrees }
}

fn metric(hand: &Hand) {
    let units = [("settings.units", choice("metric"))];
    hand.act(CommandKind::ChangeSettings, &Id::default(), &units)
        .unwrap();
}

/// What would be recorded, and what is open, each with its input.
fn rehearsed(
    hand: &Hand,
    command: CommandKind,
    about: &Id,
    of: &[(&str, EntryValue)],
) -> (String, Vec<(String, String)>) {
    let answer = hand
        .book
        .rehearse(command, about.0.clone(), entries(of))
        .unwrap();
    let open: Vec<_> = answer
        .open
        .into_iter()
        .map(|one| (one.input, one.words))
        .collect();
    assert_eq!(answer.ready, open.is_empty());
    (answer.words, open)
}

#[test]
fn a_height_is_said_while_it_is_taken_and_nothing_is_written() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    metric(&hand);
    let (_, tree, inspection) = hand.site_with_tree();
    let command = CommandKind::RecordHeightByAngles;
    let mut taken = vec![("height.distance", number("20 m"))];
    let (said, open) = rehearsed(&hand, command, &inspection, &taken);
    assert_eq!(said, "");
    let asked: Vec<&str> = open.iter().map(|(_, words)| words.as_str()).collect();
    assert_eq!(asked, ["Aim at the top.", "Aim at the base."]);
    taken.push(("height.up", tilt(41.0)));
    // A sensor that fails spoils its own reading only.
    taken.push(("height.down", tilt(f64::NAN)));
    let (_, open) = rehearsed(&hand, command, &inspection, &taken);
    assert_eq!(open.len(), 1, "{open:?}");
    assert!(open[0].1.contains("gave no value"), "{open:?}");
    taken.pop();
    taken.push(("height.down", tilt(-4.5)));
    // Plane trigonometry: 20 (tan 41° + tan 4.5°) = 18.96 m.
    let by_paces = rehearsed(&hand, command, &inspection, &taken).0;
    assert!(by_paces.starts_with("19.0 m ± 1.2 m"), "{by_paces}");
    taken.push(("height.distance_by", choice("tape")));
    let by_tape = rehearsed(&hand, command, &inspection, &taken).0;
    assert!(by_tape.starts_with("19.0 m ± 0.5 m"), "{by_tape}");
    let line = |hand: &Hand| {
        let mut lines = hand.tree_page(&tree).lines.into_iter();
        lines.find(|line| line.id == "tree.height").unwrap().words
    };
    assert_eq!(line(&hand), "not known yet");
    hand.act(command, &inspection, &taken).unwrap();
    assert_eq!(line(&hand), by_tape);
}

#[test]
fn a_height_from_two_positions_and_a_lean_from_two_sides() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    metric(&hand);
    let (_, _, inspection) = hand.site_with_tree();
    // Plane trigonometry: a stem of 20 m, the eye 2 m above its base, 10 m and 20 m away.
    let angle = |rise: f64, away: f64| tilt((rise / away).atan().to_degrees());
    let taken = [
        ("height.near", angle(18.0, 10.0)),
        ("height.down", angle(-2.0, 10.0)),
        ("height.apart", number("10")),
        ("height.distance_by", choice("tape")),
        ("height.far", angle(18.0, 20.0)),
    ];
    let command = CommandKind::RecordHeightFromTwoPositions;
    let said = rehearsed(&hand, command, &inspection, &taken).0;
    assert!(said.starts_with("20.0 m ± 0.9 m"), "{said}");
    // tan² θ = tan² 3° + tan² 4°: 5.0°; 53° clockwise of north.
    let taken = [
        ("lean.along", tilt(3.0)),
        ("lean.along_toward", EntryValue::Bearing { degrees: 0.0 }),
        ("lean.across", tilt(4.0)),
    ];
    let command = CommandKind::RecordLeanFromTwoSides;
    let said = rehearsed(&hand, command, &inspection, &taken).0;
    assert!(
        said.starts_with("5.0°") && said.contains("northeast"),
        "{said}"
    );
    let upright = [("lean.upright", EntryValue::YesNo { yes: true })];
    let said = rehearsed(&hand, CommandKind::RecordLeanByEye, &inspection, &upright).0;
    assert_eq!(said, "upright, by eye");
    let (_, open) = rehearsed(&hand, CommandKind::RecordLeanByEye, &inspection, &[]);
    assert_eq!(open[0].1, "Upright, or how far does it lean?");
}

fn fix(east: f64, accuracy_m: f64, at_ms: i64) -> SensedFix {
    SensedFix {
        lat_deg: 42.33,
        lon_deg: -71.12 + east * 1e-5,
        accuracy_m: Some(accuracy_m),
        at_ms,
    }
}

#[test]
fn fixes_are_averaged_live_and_never_better_than_the_best_of_one_go() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    metric(&hand);
    let (_, tree, _) = hand.site_with_tree();
    let average = |fixes: &[SensedFix]| {
        let about = tree.0.clone();
        hand.book.average(about, fixes.to_vec(), 1000).unwrap()
    };
    let none = average(&[]);
    assert_eq!((none.at, none.used), (None, 0));
    assert!(none.words.contains("wait"), "{}", none.words);
    let mut fixes: Vec<SensedFix> = (0..40)
        .map(|at| fix(f64::from(at % 3), 5.0, 1000 + i64::from(at) * 1000))
        .collect();
    // Sheet of check values 9.5: fixes that follow each other share their error.
    assert_eq!(average(&fixes).accuracy_m, Some(5.0));
    fixes.push(fix(0.0, 5.0, 1000 + 3 * 3_600_000));
    // A later go is independent: 5 m over √2.
    let accuracy_m = average(&fixes).accuracy_m.unwrap();
    assert!(
        (accuracy_m - 5.0 / 2f64.sqrt()).abs() < 1e-9,
        "{accuracy_m}"
    );
    let odd = |lat_deg: f64, lon_deg: f64| SensedFix {
        lat_deg,
        lon_deg,
        ..fix(0.0, 5.0, 2000)
    };
    fixes.extend([
        odd(0.0, 0.0),
        odd(f64::NAN, 1.0),
        fix(0.0, 3000.0, 2000),
        fix(0.0, 4.0, 1),
    ]);
    let mean = average(&fixes);
    assert_eq!(mean.used, 41);
    assert_eq!(mean.left_out.len(), 4, "{:?}", mean.left_out);
    let value = EntryValue::Fixes {
        fixes,
        since_ms: 1000,
    };
    hand.act(CommandKind::ChangeTree, &tree, &[("tree.position", value)])
        .unwrap();
    let mut lines = hand.tree_page(&tree).lines.into_iter();
    let line = lines.find(|line| line.id == "tree.position").unwrap();
    assert_eq!(line.words, "42.33000, -71.11999 ± 3.5 m");
}

#[test]
fn what_is_no_fix_is_refused_in_words_and_a_position_can_be_typed() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (_, tree, _) = hand.site_with_tree();
    let single = |lat_deg: f64, lon_deg: f64, accuracy_m: f64| EntryValue::Fix {
        lat_deg,
        lon_deg,
        accuracy_m: Some(accuracy_m),
    };
    let many = |fixes: Vec<SensedFix>| EntryValue::Fixes { fixes, since_ms: 0 };
    for (value, told) in [
        (single(0.0, 0.0, 5.0), "0, 0"),
        (single(f64::NAN, -71.0, 5.0), "no position on Earth"),
        (single(42.0, -71.0, 5000.0), "too far off"),
        (many(Vec::new()), "no position yet"),
        (many(vec![fix(0.0, -1.0, 5)]), "no position yet"),
        (words("under the big oak"), "Write it like"),
    ] {
        let refused = hand.act(CommandKind::ChangeTree, &tree, &[("tree.position", value)]);
        let said = hand.book.words_of(refused.unwrap_err()).unwrap();
        assert!(said.contains(told), "{said}");
    }
    let typed = [("tree.position", words("42° 19′ 48″ N, 71° 7′ 12″ W"))];
    hand.act(CommandKind::ChangeTree, &tree, &typed).unwrap();
    let mut lines = hand.tree_page(&tree).lines.into_iter();
    let line = lines.find(|line| line.id == "tree.position").unwrap();
    assert_eq!(line.words, "42.33000, -71.12000");
}

#[test]
fn species_are_found_as_they_are_typed_and_the_last_used_lead() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(folder.path());
    let (site, tree, _) = hand.site_with_tree();
    let found = |typed: &str| -> Vec<String> {
        let input = "tree.species".to_owned();
        let choices = hand.book.suggest(input, typed.to_owned()).unwrap();
        choices.into_iter().map(|choice| choice.id).collect()
    };
    assert!(found("").is_empty());
    let pick = |id: &str| [("tree.species", choice(id))];
    hand.act(CommandKind::ChangeTree, &tree, &pick("Tilia cordata"))
        .unwrap();
    let tag = ("tree.tag", words("8"));
    let [species] = pick("Quercus rubra");
    hand.act(CommandKind::AddTree, &site, &[tag, species])
        .unwrap();
    assert_eq!(found(""), ["Quercus rubra", "Tilia cordata"]);
    assert_eq!(found("lidnen")[0], "Tilia cordata", "two letters swapped");
    assert!(
        hand.book
            .suggest("tree.tag".to_owned(), String::new())
            .is_err()
    );
    assert!(hand.tree_page(&tree).title.contains("littleleaf linden"));
}

#[test]
fn the_edge_and_targets_come_in_from_a_map_file_or_its_faults_are_told() {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    let (site, _, _) = hand.site_with_tree();
    let import = |name: &str, text: &str| {
        let path = folder.path().join(name);
        std::fs::write(&path, text).unwrap();
        hand.book
            .import_ground(site.0.clone(), path.display().to_string())
    };
    let shape = |kind: &str, at: &str, properties: &str| {
        format!(
            r#"{{"type":"Feature","properties":{properties},"geometry":{{"type":"{kind}","coordinates":{at}}}}}"#
        )
    };
    let ring = "[[[-71.122,42.331],[-71.120,42.331],[-71.120,42.332],[-71.122,42.331]]]";
    let way = "[[-71.122,42.3305],[-71.120,42.3305]]";
    let text = format!(
        r#"{{"type":"FeatureCollection","features":[{},{}]}}"#,
        shape("LineString", way, r#"{"name":"Mill Lane"}"#),
        shape("Polygon", ring, "{}"),
    );
    let done = import("ground.geojson", &text).unwrap();
    assert_eq!(
        done.words,
        "The property edge and one target were brought in."
    );
    let page = hand.site_page(&site);
    assert_eq!(page.targets.len(), 1);
    assert!(page.targets[0].words.contains("Mill Lane"));
    assert!(
        page.targets[0].detail.contains("not known"),
        "a gap, never a guess"
    );
    assert!(page.lines.iter().any(|line| line.words == "3 corners"));
    hand.act(CommandKind::Undo, &site, &[]).unwrap();
    assert!(
        hand.site_page(&site).targets.is_empty(),
        "one undo takes all of it back"
    );
    let metres = shape("Point", "[330000,4687000]", "{}");
    for (name, text, told) in [
        ("a.json", "not a map", "not valid JSON"),
        ("b.json", r#"{"type":"Nothing"}"#, "not a GeoJSON file"),
        ("c.json", metres.as_str(), "not in degrees"),
    ] {
        let said = hand.book.words_of(import(name, text).unwrap_err()).unwrap();
        assert!(said.contains(told), "{said}");
    }
    let nowhere = hand
        .book
        .import_ground(site.0.clone(), "/no/such/file".to_owned());
    assert!(nowhere.is_err());
}
