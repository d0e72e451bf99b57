//! Trees of another origin at the desk: what was guessed is told, every row accounted for.

use std::fs;
use std::path::PathBuf;

use super::{bolewalk, err, out};

fn town() -> String {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    let path = root.join("fixtures/inventories/urban-trees-300.csv");
    path.display().to_string()
}

// McPherson, van Doorn & Peper 2016, Urban Tree Database: 300 rows of it; a diameter of 2.5 cm is a
// girth of 7.85 cm.
#[test]
fn a_towns_inventory_becomes_trees_that_can_be_judged_and_exported() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    let book = book.to_str().unwrap();
    let town = town();
    let import = [
        "import",
        &town,
        "--into",
        book,
        "--date",
        "2012-06-01",
        "--name",
        "Streets",
    ];
    for _ in 0..2 {
        let output = bolewalk(&import);
        assert_eq!(output.status.code(), Some(0), "{}", err(&output));
        let told = out(&output);
        assert!(told.contains("300 rows: 300 became trees"), "{told}");
        assert!(
            told.contains("“DBH (cm)” is read as stem diameter"),
            "{told}"
        );
    }
    let checked = out(&bolewalk(&["check", book]));
    assert!(
        checked.lines().any(|line| line.trim() == "300  tree"),
        "{checked}"
    );
    let judged = bolewalk(&["judge", book, "--json"]);
    let judged: serde_json::Value = serde_json::from_slice(&judged.stdout).unwrap();
    let trees = judged["judgement"]["trees"].as_array().unwrap();
    // Nobody has looked at them: a measure is no check.
    assert!(trees.iter().all(|tree| tree["verdict"] == "incomplete"));
    assert_eq!(judged["judgement"]["as_of"], "2012-06-01");
    let maps = folder.path().join("maps");
    let output = bolewalk(&["export", book, "--out", maps.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    let csv = fs::read_to_string(maps.join("trees.csv")).unwrap();
    assert!(
        csv.lines()
            .any(|line| line.contains("Acer saccharinum,2,7.85")),
        "{csv:.600}"
    );
}

#[test]
fn columns_are_named_by_hand_and_every_row_is_accounted_for() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("list.csv");
    // Windows-1252, semicolons, decimal commas, heights in feet; one row without a readable place.
    let text =
        b"Nr;Baum;Gr\xf6\xdfe;N;E\n1;Quercus rubra;65,6;47,5;8,5\n2;Acer rubrum;x;470;8,5\n;;;;\n";
    fs::write(&path, text).unwrap();
    let book = folder.path().join("book");
    let args = |map: &str| {
        bolewalk(&[
            "import",
            path.to_str().unwrap(),
            "--into",
            book.to_str().unwrap(),
            "--map",
            "tag=Nr",
            "--map",
            "species=Baum",
            "--map",
            map,
            "--map",
            "lat_deg=N",
            "--map",
            "lon_deg=E",
        ])
    };
    let wrong = args("height_m=Höhe:ft");
    assert_eq!(wrong.status.code(), Some(1));
    assert!(err(&wrong).contains("Höhe"), "{}", err(&wrong));
    assert!(!book.exists());
    let output = args("height_m=Größe:ft");
    assert_eq!(output.status.code(), Some(0), "{}", err(&output));
    let told = out(&output);
    assert!(told.contains("3 rows: "), "{told}");
    assert!(
        told.contains("1 were blank") || told.contains("1 was blank"),
        "{told}"
    );
    assert!(told.contains("line 3"), "{told}");
    // 65.6 ft is 20.0 m (0.3048 m to the foot).
    assert!(out(&bolewalk(&["judge", book.to_str().unwrap()])).contains("20.0 m"));
}

#[test]
fn what_is_for_inventories_is_refused_for_a_site_file() {
    let site = super::fixture("three-trees.json");
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book");
    let output = bolewalk(&[
        "import",
        &site,
        "--into",
        book.to_str().unwrap(),
        "--date",
        "2026-05-14",
    ]);
    assert_eq!(output.status.code(), Some(1));
    assert!(err(&output).contains("--date"), "{}", err(&output));
    assert!(!book.exists());
}
