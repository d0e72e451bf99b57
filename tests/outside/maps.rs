//! Map files beside GDAL, which reads all three, and its GeoPackage validator.

use std::path::{Path, PathBuf};
use std::process::Command;

use bolewalk_core::handover::{csv_text, geojson_text, write_csv, write_geojson, write_geopackage};
use bolewalk_core::judge::judge_site;
use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::record::{SiteFile, SiteJudgement, Verdict};
use bolewalk_core::words::{Language, UnitSystem, Words};
use serde_json::Value;

const DAY: &str = "2026-05-14";

fn words(units: UnitSystem) -> Words {
    Words::new(Language::English, units)
}

/// The small property with one tree more that nobody gave a position and whose tag and note would
/// be formulas in a spreadsheet.
fn property() -> SiteFile {
    let text = include_str!("../../fixtures/papers/larch-hollow.json");
    let mut file: SiteFile = serde_json::from_str(text).unwrap();
    let mut lost = file.site.trees[0].clone();
    lost.id = "lost".into();
    lost.tag = "=1+1".into();
    lost.note = Some("\"quoted\", and\nover two lines; é".into());
    lost.position = None;
    file.site.trees.push(lost);
    bolewalk_core::intake::fill_ids(&mut file);
    file
}

/// The same property moved east until 180° runs through its house.
fn across_180() -> SiteFile {
    let mut file = property();
    let house = file.site.targets[0].ground.clone();
    let middle = (house[0].lon_deg + house[1].lon_deg) / 2.0;
    let turn = |lon_deg: &mut f64| {
        let moved = ((*lon_deg + 180.0 - middle) * 1e8).round() / 1e8;
        *lon_deg = if moved > 180.0 { moved - 360.0 } else { moved };
    };
    let site = &mut file.site;
    let targets = site
        .targets
        .iter_mut()
        .flat_map(|target| &mut target.ground);
    let lines = site.lines.iter_mut().flat_map(|line| &mut line.way);
    for at in site.outline.iter_mut().chain(targets).chain(lines) {
        turn(&mut at.lon_deg);
    }
    for at in site.trees.iter_mut().filter_map(|t| t.position.as_mut()) {
        turn(&mut at.lon_deg);
    }
    file
}

fn judged(file: &SiteFile) -> SiteJudgement {
    let rules = RuleSet::shipped(&"us".into()).unwrap();
    judge_site(file, &rules, DAY.parse().unwrap(), Some(9))
}

/// What a program of GDAL prints, or nothing where it is not installed.
fn gdal(program: &str, arguments: &[&str]) -> Option<String> {
    let Ok(output) = Command::new(program).args(arguments).output() else {
        println!("SKIPPED: gdal is missing; apt-get install gdal-bin");
        return None;
    };
    let complaints = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(
        output.status.success(),
        "{program} {arguments:?}: {complaints}"
    );
    assert_eq!(complaints, "", "{program} {arguments:?}");
    Some(String::from_utf8(output.stdout).unwrap())
}

/// A layer of a file as GDAL reads it.
fn features(path: &Path, more: &[&str]) -> Option<Vec<Value>> {
    let path = path.to_str().unwrap();
    let mut arguments = vec!["-f", "GeoJSON", "/vsistdout/", path];
    arguments.extend(["-lco", "COORDINATE_PRECISION=9"]);
    arguments.extend(more);
    let text = gdal("ogr2ogr", &arguments)?;
    let read: Value = serde_json::from_str(&text).unwrap();
    Some(read["features"].as_array().unwrap().clone())
}

fn written(file: &SiteFile, folder: &Path) -> (PathBuf, PathBuf, SiteJudgement) {
    let judgement = judged(file);
    let (package, map) = (folder.join("trees.gpkg"), folder.join("trees.geojson"));
    let words = words(UnitSystem::Metric);
    write_geopackage(file, &judgement, words, &package).unwrap();
    write_geojson(file, &judgement, words, &map).unwrap();
    (package, map, judgement)
}

/// Every point of a geometry, as longitude and latitude.
fn points(coordinates: &Value) -> Vec<(f64, f64)> {
    let list = coordinates.as_array().unwrap();
    match list.first().and_then(Value::as_f64) {
        Some(lon) => vec![(lon, list[1].as_f64().unwrap())],
        None => list.iter().flat_map(points).collect(),
    }
}

#[test]
fn both_maps_hold_the_same_trees_with_their_values() {
    let folder = tempfile::tempdir().unwrap();
    let file = property();
    let (package, map, judgement) = written(&file, folder.path());
    let only_trees = ["-where", "layer='trees'"];
    for (path, more) in [(&package, &["trees"][..]), (&map, &only_trees[..])] {
        let Some(read) = features(path, more) else {
            return;
        };
        assert_eq!(read.len(), file.site.trees.len());
        for ((feature, tree), judged) in read.iter().zip(&file.site.trees).zip(&judgement.trees) {
            let values = &feature["properties"];
            assert_eq!(values["tag"], tree.tag.as_str());
            let code = serde_json::to_value(judged.verdict).unwrap();
            assert_eq!(values["verdict"], code);
            let height = tree.inspections.last().and_then(|look| look.height);
            assert_eq!(
                values["height_m"].as_f64(),
                height.map(|height| height.height_m)
            );
            let keep_out = values["keep_out_m"].as_f64();
            let zone = judged.zones.first();
            assert_eq!(keep_out.is_some(), zone.is_some());
            if let (Some(read), Some(zone)) = (keep_out, zone) {
                assert!(read >= zone.keep_out_m && read < zone.keep_out_m + 0.1);
            }
            assert!(values.get("score").is_none());
            match tree.position {
                Some(at) => {
                    assert_eq!(feature["geometry"]["type"], "Point");
                    assert_eq!(
                        points(&feature["geometry"]["coordinates"]),
                        [(at.lon_deg, at.lat_deg)]
                    );
                    assert_eq!(values["accuracy_m"].as_f64(), at.accuracy_m);
                }
                None => assert!(feature["geometry"].is_null()),
            }
        }
        let lost = &read.last().unwrap()["properties"];
        assert_eq!(lost["note"], "\"quoted\", and\nover two lines; é");
    }
    assert!(
        judgement
            .trees
            .iter()
            .any(|tree| tree.verdict != Verdict::NoStop)
    );
}

#[test]
fn every_layer_has_its_geometry_and_extent() {
    let folder = tempfile::tempdir().unwrap();
    let file = property();
    let (package, map, judgement) = written(&file, folder.path());
    let zones = judgement.trees.iter().filter_map(|tree| tree.zones.first());
    let drawn = zones
        .filter(|zone| !zone.keep_out_outline.is_empty())
        .count();
    assert!(drawn > 0);
    let expected = [
        ("trees", "Point", file.site.trees.len()),
        ("zones", "Multi Polygon", 2 * drawn),
        ("targets", "Unknown (any)", file.site.targets.len()),
        ("lines", "Multi Line String", file.site.lines.len()),
        ("outline", "Multi Polygon", 1),
    ];
    for (layer, form, count) in expected {
        let arguments = ["-so", package.to_str().unwrap(), layer];
        let Some(said) = gdal("ogrinfo", &arguments) else {
            return;
        };
        assert!(said.contains(&format!("Geometry: {form}\n")), "{said}");
        assert!(
            said.contains(&format!("Feature Count: {count}\n")),
            "{said}"
        );
        assert!(said.contains("ID[\"EPSG\",4326]]"), "{said}");
        let wanted = format!("layer='{layer}'");
        let read = features(&map, &["-where", &wanted]).unwrap();
        assert_eq!(read.len(), count, "{layer}");
    }
    // The outline's own corners are its extent; a spatial filter goes through the index.
    let outline = gdal("ogrinfo", &["-so", package.to_str().unwrap(), "outline"]).unwrap();
    assert!(
        outline.contains("Extent: (-72.600000, 44.500000) - (-72.598868, 44.500630)"),
        "{outline}"
    );
    let first = file.site.trees[0].position.unwrap();
    let around = [first.lon_deg, first.lat_deg, first.lon_deg, first.lat_deg];
    let mut filter = vec!["trees".to_owned(), "-spat".to_owned()];
    filter.extend((0..4).map(|n| (around[n] + if n < 2 { -1e-6 } else { 1e-6 }).to_string()));
    let filter: Vec<&str> = filter.iter().map(String::as_str).collect();
    let found = features(&package, &filter).unwrap();
    assert_eq!(found.len(), 1);
    assert_eq!(
        found[0]["properties"]["tag"],
        file.site.trees[0].tag.as_str()
    );
    assert_eq!(judgement.trees.len(), file.site.trees.len());
}

#[test]
fn a_site_across_180_is_cut_there() {
    let folder = tempfile::tempdir().unwrap();
    let file = across_180();
    let (package, map, judgement) = written(&file, folder.path());
    let mut cut = 0;
    for layer in ["zones", "targets", "lines", "outline"] {
        let wanted = format!("layer='{layer}'");
        for (path, more) in [(&package, vec![layer]), (&map, vec!["-where", &wanted])] {
            let Some(read) = features(path, &more) else {
                return;
            };
            for feature in &read {
                let geometry = &feature["geometry"];
                let parts = match geometry["type"].as_str().unwrap() {
                    "MultiPolygon" | "MultiLineString" => {
                        geometry["coordinates"].as_array().unwrap().clone()
                    }
                    _ => vec![geometry["coordinates"].clone()],
                };
                cut += usize::from(parts.len() > 1);
                for part in parts {
                    let lons: Vec<f64> = points(&part).iter().map(|at| at.0).collect();
                    let least = lons.iter().copied().fold(f64::MAX, f64::min);
                    let most = lons.iter().copied().fold(f64::MIN, f64::max);
                    assert!(most - least < 0.01, "{layer}: {lons:?}");
                    assert!(least >= -180.0 && most <= 180.0, "{layer}: {lons:?}");
                }
            }
        }
    }
    assert!(
        cut >= 6,
        "the house, the outline and a zone in both files: {cut}"
    );
    // Moving a property does not change how far anybody keeps out.
    let here = judged(&property());
    for (one, other) in here.trees.iter().zip(&judgement.trees) {
        assert_eq!(one.zones.len(), other.zones.len());
        for (one, other) in one.zones.iter().zip(&other.zones) {
            assert!((one.keep_out_m - other.keep_out_m).abs() < 1e-9);
        }
    }
}

#[test]
fn the_validator_finds_nothing_wrong() {
    let folder = tempfile::tempdir().unwrap();
    let python = ["/usr/bin/python3", "python3"].into_iter().find(|python| {
        let probe = ["-c", "import osgeo_utils.samples.validate_gpkg"];
        let output = Command::new(python).args(probe).output();
        output.is_ok_and(|output| output.status.success())
    });
    let Some(python) = python else {
        println!("SKIPPED: the validator of GeoPackages is missing; apt-get install python3-gdal");
        return;
    };
    for (file, name) in [(property(), "here"), (across_180(), "across")] {
        let folder = folder.path().join(name);
        std::fs::create_dir(&folder).unwrap();
        let (package, _, _) = written(&file, &folder);
        let output = Command::new(python)
            .args(["-m", "osgeo_utils.samples.validate_gpkg"])
            .arg(&package)
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stdout).into_owned()
            + &String::from_utf8_lossy(&output.stderr);
        assert!(output.status.success(), "{said}");
        assert!(
            !said.contains("Error") && !said.contains("Warning"),
            "{said}"
        );
    }
}

#[test]
fn a_geopackage_can_be_edited_by_others() {
    // The triggers of the index must fire: GDAL brings the functions that they call.
    let folder = tempfile::tempdir().unwrap();
    let (package, _, _) = written(&property(), folder.path());
    let path = package.to_str().unwrap();
    let sql = "UPDATE trees SET note = 'seen' WHERE tag = 'T-01'";
    if gdal("ogrinfo", &[path, "-sql", sql]).is_none() {
        return;
    }
    let sql = "DELETE FROM zones WHERE zone = 'drop'";
    gdal("ogrinfo", &[path, "-sql", sql]).unwrap();
    let left = features(&package, &["zones"]).unwrap();
    assert!(!left.is_empty());
    assert!(left.iter().all(|f| f["properties"]["zone"] == "keep_out"));
    let seen = features(&package, &["trees"]).unwrap();
    assert_eq!(seen[0]["properties"]["note"], "seen");
}

#[test]
fn the_table_is_read_in_both_systems() {
    let folder = tempfile::tempdir().unwrap();
    let file = property();
    let judgement = judged(&file);
    for (units, height, girth, factor) in [
        (UnitSystem::Metric, "height_m", "girth_cm", (1.0, 1.0)),
        (
            UnitSystem::Imperial,
            "height_ft",
            "girth_in",
            (0.3048, 2.54),
        ),
    ] {
        let path = folder.path().join(format!("{height}.csv"));
        write_csv(&file, &judgement, words(units), &path).unwrap();
        let more = ["-oo", "AUTODETECT_TYPE=YES"];
        let Some(read) = features(&path, &more) else {
            return;
        };
        assert_eq!(read.len(), file.site.trees.len());
        for (row, tree) in read.iter().zip(&file.site.trees) {
            let row = &row["properties"];
            let looks = || tree.inspections.iter();
            let tall = looks().find_map(|look| Some(look.height?.height_m / factor.0));
            let thick = looks().find_map(|look| Some(look.girth?.girth_cm / factor.1));
            for (column, expected) in [(height, tall), (girth, thick)] {
                let read = row[column].as_f64();
                assert_eq!(read.is_some(), expected.is_some(), "{column}: {row}");
                let off = (read.unwrap_or_default() - expected.unwrap_or_default()).abs();
                assert!(off <= 0.005 + 1e-9, "{column}: {row} {expected:?}");
            }
        }
        let lost = &read.last().unwrap()["properties"];
        assert_eq!(lost["tag"], "'=1+1");
        assert_eq!(lost["note"], "\"quoted\", and\nover two lines; é");
        assert!(lost["lat_deg"].is_null());
    }
}

#[test]
fn the_same_site_gives_the_same_bytes() {
    let folder = tempfile::tempdir().unwrap();
    let file = property();
    let judgement = judged(&file);
    let words = words(UnitSystem::Metric);
    let packages: Vec<Vec<u8>> = ["a.gpkg", "b.gpkg"]
        .iter()
        .map(|name| {
            let path = folder.path().join(name);
            write_geopackage(&file, &judgement, words, &path).unwrap();
            std::fs::read(path).unwrap()
        })
        .collect();
    assert!(packages[0] == packages[1]);
    let left = std::fs::read_dir(folder.path()).unwrap().count();
    assert_eq!(left, 2, "nothing half-written stays behind");
    let text = geojson_text(&file, &judgement, words);
    assert_eq!(text, geojson_text(&file, &judged(&file), words));
    let table = csv_text(&file, &judgement, words).unwrap();
    assert_eq!(table, csv_text(&file, &judged(&file), words).unwrap());
    assert!(table.ends_with("\r\n") && !table.starts_with('\u{feff}'));
}

#[test]
fn a_folder_that_is_not_there_is_named() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("none").join("trees.gpkg");
    let file = property();
    let error = write_geopackage(&file, &judged(&file), words(UnitSystem::Metric), &path);
    let said = error.unwrap_err().to_string();
    assert!(said.contains("trees.gpkg"), "{said}");
}
