//! A published inventory as other people's file: every row accounted for, every value compared with
//! what the file says, counted by this test alone.
//! Urban tree database, USDA Forest Service Research Data Archive, RDS-2016-0005 (McPherson, van
//! Doorn & Peper 2016).

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::time::Instant;

use bolewalk_core::handover::csv_text;
use bolewalk_core::intake::{InventoryOptions, read_inventory, read_inventory_at, read_site_file};
use bolewalk_core::record::{GirthMethod, HeightMethod, SiteFile, SiteJudgement, Tree};
use bolewalk_core::words::{Language, UnitSystem, Words};

/// The rows of the table by their key.
fn table(path: &Path) -> BTreeMap<String, BTreeMap<String, String>> {
    let mut reader = csv::Reader::from_path(path).unwrap();
    let rows = reader.deserialize::<BTreeMap<String, String>>();
    rows.map(|row| row.unwrap())
        .map(|row| (row["DbaseID"].clone(), row))
        .collect()
}

fn number(row: &BTreeMap<String, String>, column: &str) -> f64 {
    row[column].trim().parse().unwrap()
}

fn options() -> InventoryOptions {
    InventoryOptions {
        site_name: "Street trees".into(),
        day: Some("2016-01-15".parse().unwrap()),
        ..Default::default()
    }
}

/// One tree beside its row; returns how many of its values were left out.
fn compare(tree: &Tree, row: &BTreeMap<String, String>) -> usize {
    let seen = tree.inspections.first();
    let at = tree.position.unwrap();
    assert_eq!(
        (at.lat_deg, at.lon_deg),
        (number(row, "Lat"), number(row, "Long"))
    );
    assert_eq!(at.accuracy_m, None, "the city's place is not the tree's");
    assert_eq!(tree.species.as_deref(), Some(row["ScientificName"].trim()));
    assert!(tree.tag.starts_with(row["TreeID"].trim()), "{}", tree.tag);
    let mut left_out = 0;
    let mut check = |read: Option<f64>, wanted: f64, least: f64, within: f64| {
        if wanted < 0.0 {
            assert_eq!(read, None, "below zero is missing");
        } else if wanted < least {
            assert_eq!(read, None, "less than can be meant");
            left_out += 1;
        } else {
            let read = read.unwrap();
            assert!((read - wanted).abs() <= within, "{read} {wanted}");
        }
    };
    // The least that a record allows: height 0.5 m, girth 3 cm, crown radius 0.1 m.
    let height = seen.and_then(|seen| seen.height);
    check(
        height.map(|h| h.height_m),
        number(row, "TreeHt (m)"),
        0.5,
        0.0,
    );
    let girth = seen.and_then(|seen| seen.girth);
    let around = number(row, "DBH (cm)") * std::f64::consts::PI;
    check(girth.map(|g| g.girth_cm), around, 3.0, 1e-6);
    let crown = seen.and_then(|seen| seen.crown);
    let radius = number(row, "AvgCdia (m)") / 2.0;
    check(crown.map(|c| c.radius_m), radius, 0.1, 1e-9);
    assert!(height.is_none_or(|h| h.method == Some(HeightMethod::TakenOver)));
    assert!(girth.is_none_or(|g| g.method == Some(GirthMethod::TakenOver)));
    left_out
}

fn every_row_becomes_a_tree(path: &Path) -> usize {
    let rows = table(path);
    let begun = Instant::now();
    let read = read_inventory_at(path, &options()).unwrap();
    println!("{} rows in {:?}", read.rows, begun.elapsed());

    let trees = &read.file.site.trees;
    assert_eq!(read.rows as usize, rows.len());
    assert_eq!(
        trees.len() + read.faults.len() + read.blank_rows as usize,
        rows.len()
    );
    assert!(read.faults.is_empty(), "{:?}", read.faults);
    let tags: BTreeSet<&str> = trees.iter().map(|tree| tree.tag.as_str()).collect();
    assert_eq!(tags.len(), trees.len());
    let left_out: usize = trees
        .iter()
        .map(|tree| compare(tree, &rows[tree.id.as_str()]))
        .sum();
    assert_eq!(read.left_out.len(), left_out);
    let lines = read.left_out.iter().all(|f| f.place.starts_with("line "));
    assert!(lines, "{:?}", read.left_out);
    assert!(left_out > 0, "some stems are too thin to be meant");
    rows.len()
}

#[test]
fn three_hundred_published_trees_become_trees() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    let path = folder.join("fixtures/inventories/urban-trees-300.csv");
    assert_eq!(every_row_becomes_a_tree(&path), 300);
}

#[test]
fn all_published_trees_become_trees_in_time() {
    let Some(path) = std::env::var_os("BOLEWALK_TREES_CSV").map(PathBuf::from) else {
        println!(
            "SKIPPED: the whole Urban tree database (RDS-2016-0005) is not here; \
             set BOLEWALK_TREES_CSV to its table of trees"
        );
        return;
    };
    assert_eq!(every_row_becomes_a_tree(&path), 14_487);
}

#[test]
fn the_guesses_are_told_in_words_and_the_trees_are_a_site_file() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    let path = folder.join("fixtures/inventories/urban-trees-300.csv");
    let read = read_inventory_at(&path, &options()).unwrap();
    let words = Words::new(Language::English, UnitSystem::Metric);
    let told = words.reasons(&read.guesses).join("\n");
    for line in [
        "The columns are separated by commas; the text is in UTF-8.",
        "Column “TreeID” is read as the tag.",
        "Column “DbaseID” is read as the unique key.",
        "Column “ScientificName” is read as the species.",
        "Column “TreeHt (m)” is read as height in m.",
        "Column “DBH (cm)” is read as stem diameter in cm.",
        "Column “AvgCdia (m)” is read as crown diameter in m.",
        "Column “Long” is read as longitude.",
    ] {
        assert!(told.contains(line), "{line} is not in\n{told}");
    }
    assert!(!told.contains(['⟦', '{']), "{told}");
    let text = serde_json::to_vec(&read.file).unwrap();
    let again = read_site_file(&text, &BTreeSet::new()).unwrap();
    assert_eq!(again, read.file);
    let undated = InventoryOptions {
        day: None,
        ..options()
    };
    let undated = read_inventory_at(&path, &undated).unwrap();
    assert!(undated.file.site.visits.is_empty());
    assert!(undated.file.site.trees.iter().all(|tree| {
        let mut seen = tree.inspections.iter();
        seen.all(|seen| seen.visit.is_empty())
    }));
}

#[test]
fn our_own_table_is_read_back_in_both_systems() {
    let text = include_str!("../../fixtures/papers/larch-hollow.json");
    let judged = include_str!("../../fixtures/papers/larch-hollow-judged.json");
    let mut file: SiteFile = serde_json::from_str(text).unwrap();
    file.site.trees[0].tag = "=1+1".into();
    file.site.trees[1].position = None;
    let judgement: SiteJudgement = serde_json::from_str(judged).unwrap();
    // Imperial cells have two digits: 0.005 ft and 0.005 in.
    for (units, m, cm) in [
        (UnitSystem::Metric, 1e-9, 1e-9),
        (UnitSystem::Imperial, 0.0016, 0.013),
    ] {
        let table = csv_text(&file, &judgement, Words::new(Language::English, units)).unwrap();
        let read = read_inventory(table.as_bytes(), &options()).unwrap();
        assert_eq!(read.faults, []);
        assert_eq!(read.left_out, []);
        assert_eq!(read.file.site.trees.len(), file.site.trees.len());
        for (read, tree) in read.file.site.trees.iter().zip(&file.site.trees) {
            assert_eq!((&read.tag, &read.species), (&tree.tag, &tree.species));
            let place = |tree: &Tree| tree.position.map(|at| at.point());
            assert_eq!(place(read), place(tree));
            let measures = |tree: &Tree| {
                let mut looks = tree.inspections.iter().rev();
                let height = looks.clone().find_map(|look| look.height);
                let girth = looks.find_map(|look| look.girth);
                [
                    height.map(|h| h.height_m / m),
                    girth.map(|g| g.girth_cm / cm),
                ]
            };
            for (read, tree) in measures(read).into_iter().zip(measures(tree)) {
                assert_eq!(read.is_some(), tree.is_some());
                assert!((read.unwrap_or(0.0) - tree.unwrap_or(0.0)).abs() <= 1.0);
            }
        }
    }
}
