//! Values of ours beside those of general libraries: sections by sectionproperties, geodesic lines
//! and circles by PROJ and GEOS.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use bolewalk_core::judge::section::{BearingLength, Opened, Ring, Run};
use bolewalk_core::measure::place::{circle_outline, line_between, point_from};
use bolewalk_core::record::LatLon;
use serde_json::{Value, json};

/// The Python that has the libraries, put there by `tests/outside/peers/install`.
fn python() -> Option<PathBuf> {
    let home = std::env::var_os("BOLEWALK_PEERS")
        .map(PathBuf::from)
        .or_else(|| Some(PathBuf::from(std::env::var_os("XDG_CACHE_HOME")?).join("bolewalk/peers")))
        .or_else(|| Some(PathBuf::from(std::env::var_os("HOME")?).join(".cache/bolewalk/peers")));
    let python = home?.join("bin/python");
    if python.exists() {
        return Some(python);
    }
    println!("SKIPPED: the libraries to compare with are missing; tests/outside/peers/install");
    None
}

/// Puts a question to a script of `peers/` and reads its answer.
fn answer(script: &str, question: &Value) -> Option<Value> {
    let file = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("tests/outside/peers")
        .join(script);
    let mut child = Command::new(python()?)
        .arg(file)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut input = child.stdin.take().unwrap();
    input.write_all(question.to_string().as_bytes()).unwrap();
    drop(input);
    let output = child.wait_with_output().unwrap();
    assert!(output.status.success(), "{script} failed");
    Some(serde_json::from_slice(&output.stdout).unwrap())
}

fn run(pairs: &[(f64, f64)]) -> Run {
    Run::through(
        pairs
            .iter()
            .map(|&(bearing_deg, length_cm)| BearingLength {
                bearing_deg,
                length_cm,
            })
            .collect(),
    )
}

type Pairs = Vec<(f64, f64)>;

/// Outer ring, inner ring, opening as bearing and angle.
type RingValues = (Pairs, Pairs, Option<(f64, f64)>);

/// Even, off-centre, open and irregular rings.
fn rings() -> Vec<RingValues> {
    let even = |length: f64| vec![(0.0, length), (120.0, length), (240.0, length)];
    let off_centre = |radius: f64, hole: f64, offset: f64, toward: f64| -> Pairs {
        let Run::AtBearings(points) = Ring::off_centre(radius, hole, offset, toward, 360).wall
        else {
            panic!("a wall by bearings")
        };
        points
            .iter()
            .map(|point| (point.bearing_deg, point.length_cm))
            .collect()
    };
    let lobed = vec![
        (0.0, 36.0),
        (70.0, 29.0),
        (150.0, 41.0),
        (200.0, 33.0),
        (300.0, 38.0),
    ];
    let uneven = vec![(20.0, 6.0), (110.0, 14.0), (185.0, 9.0), (280.0, 4.0)];
    vec![
        (even(30.0), even(6.0), None),
        (even(45.0), even(20.0), None),
        (even(30.0), off_centre(30.0, 15.0, 10.0, 0.0), None),
        (even(40.0), off_centre(40.0, 22.0, 12.0, 215.0), None),
        (even(30.0), even(8.0), Some((90.0, 40.0))),
        (even(30.0), even(5.0), Some((310.0, 120.0))),
        (lobed.clone(), uneven.clone(), None),
        (lobed, uneven, Some((45.0, 60.0))),
    ]
}

#[test]
fn sections_agree_with_a_finite_element_library() {
    let question: Vec<Value> = rings()
        .iter()
        .map(|(outer, wall, opening)| json!({"outer": outer, "wall": wall, "opening": opening}))
        .collect();
    let Some(theirs) = answer("sections.py", &json!(question)) else {
        return;
    };
    for ((outer, wall, opening), theirs) in rings().iter().zip(theirs.as_array().unwrap()) {
        let ring = Ring {
            outer: run(outer),
            wall: run(wall),
            core: None,
            opening: opening.map(|(middle_deg, width_deg)| Opened {
                middle_deg,
                width_deg,
            }),
        };
        let ours = ring.properties(1440);
        let size = ours.inertia_xx_cm4.max(ours.inertia_yy_cm4);
        let across = ours.area_cm2.sqrt();
        // What counts as agreement: 0.2 % of the quantity's own size.
        for (name, ours, scale) in [
            ("area", ours.area_cm2, ours.area_cm2),
            ("east", ours.centroid_east_cm, across),
            ("north", ours.centroid_north_cm, across),
            ("xx", ours.inertia_xx_cm4, size),
            ("yy", ours.inertia_yy_cm4, size),
            ("xy", ours.inertia_xy_cm4, size),
            (
                "weakest",
                ours.weakest_modulus_cm3,
                ours.weakest_modulus_cm3,
            ),
        ] {
            let value = theirs[name].as_f64().unwrap();
            assert!(
                (ours - value).abs() <= 0.002 * scale,
                "{name}: ours {ours}, theirs {value} for {outer:?} {wall:?} {opening:?}"
            );
        }
    }
}

#[test]
fn lines_and_circles_on_the_ground_agree_with_proj_and_geos() {
    let at = |lat_deg: f64, lon_deg: f64| LatLon { lat_deg, lon_deg };
    let places = [
        at(0.0, 0.0),
        at(37.64, -121.0),
        at(52.1, 7.3),
        at(-33.9, 151.2),
        at(64.8, 179.9995),
        at(-45.0, -179.999),
        at(84.0, 12.0),
    ];
    let reaches = [
        (0.0, 3.05),
        (33.0, 25.0),
        (141.5, 480.0),
        (270.0, 12_500.0),
        (359.0, 1.0e6),
    ];
    let (mut lines, mut points, mut circles) = (Vec::new(), Vec::new(), Vec::new());
    let (mut our_lines, mut our_points, mut radii) = (Vec::new(), Vec::new(), Vec::new());
    for place in places {
        for (azimuth, reach) in reaches {
            let end = point_from(place, azimuth, reach);
            points.push(json!([place.lat_deg, place.lon_deg, azimuth, reach]));
            our_points.push(end);
            lines.push(json!([
                place.lat_deg,
                place.lon_deg,
                end.lat_deg,
                end.lon_deg
            ]));
            our_lines.push(line_between(place, end));
        }
        for radius in [6.1, 30.0, 85.0] {
            let outline: Vec<[f64; 2]> = circle_outline(place, radius, 72)
                .iter()
                .map(|corner| [corner.lat_deg, corner.lon_deg])
                .collect();
            circles.push(json!({"lat": place.lat_deg, "lon": place.lon_deg,
                "radius": radius, "outline": outline}));
            radii.push(radius);
        }
    }
    let question = json!({"lines": lines, "points": points, "circles": circles});
    let Some(theirs) = answer("places.py", &question) else {
        return;
    };
    let number = |value: &Value| value.as_f64().unwrap();
    let turn_off = |a: f64, b: f64| ((a - b + 540.0).rem_euclid(360.0) - 180.0).abs();

    for (ours, theirs) in our_lines.iter().zip(theirs["lines"].as_array().unwrap()) {
        assert!(
            (ours.distance_m - number(&theirs[0])).abs() < 1e-6,
            "{ours:?} {theirs}"
        );
        // A line of 3 m turns by the last digits of its ends: 1e-6 m across in its length.
        let slack = 1e-9 + (1e-6 / ours.distance_m).to_degrees();
        assert!(
            turn_off(ours.azimuth_deg, number(&theirs[1])) < slack,
            "{ours:?} {theirs}"
        );
        assert!(
            turn_off(ours.azimuth_at_end_deg, number(&theirs[2])) < slack,
            "{ours:?} {theirs}"
        );
    }
    for (ours, theirs) in our_points.iter().zip(theirs["points"].as_array().unwrap()) {
        assert!(
            (ours.lat_deg - number(&theirs[0])).abs() < 1e-11,
            "{ours:?} {theirs}"
        );
        assert!(
            turn_off(ours.lon_deg, number(&theirs[1])) < 1e-10,
            "{ours:?} {theirs}"
        );
    }
    for (radius, theirs) in radii.iter().zip(theirs["circles"].as_array().unwrap()) {
        assert_eq!(theirs["valid"], true, "{radius} {theirs}");
        // Corners are rounded to 1e-8°, about 1 mm; the ring may not cut the circle by more.
        assert!(
            number(&theirs["nearest"]) > radius - 0.002,
            "{radius} {theirs}"
        );
        assert!(
            number(&theirs["farthest"]) < radius * 1.001 + 0.002,
            "{radius} {theirs}"
        );
        assert!(
            number(&theirs["uncovered"]) < 0.004 * radius,
            "{radius} {theirs}"
        );
        let regular = 72.0 * radius * radius * (std::f64::consts::PI / 72.0).tan();
        for area in ["area", "geodesic_area"] {
            assert!(
                (number(&theirs[area]) / regular - 1.0).abs() < 5e-4,
                "{radius} {theirs}"
            );
        }
    }
}
