//! Photo records against exiftool: what we write it reads and calls valid, what it writes we read.

use std::path::Path;
use std::process::Command;

use bolewalk_core::photo::{
    CameraDirection, ExifEntry, North, PhotoGapKind, import_photo, photo_files, read_facts,
    write_exif_jpeg,
};
use bolewalk_core::record::{Moment, Position, PositionMethod};
use image::RgbImage;

/// The outside tool's answer, or nothing with a line that says how to get it.
fn exiftool(arguments: &[&str], folder: &Path) -> Option<String> {
    let run = Command::new("exiftool")
        .args(arguments)
        .current_dir(folder)
        .output();
    match run {
        Ok(output) => Some(
            String::from_utf8_lossy(&output.stdout).into_owned()
                + &String::from_utf8_lossy(&output.stderr),
        ),
        Err(_) => {
            println!("SKIPPED: exiftool is missing; apt-get install libimage-exiftool-perl");
            None
        }
    }
}

/// A picture with a red upper left quarter, so that its orientation can be seen.
fn cornered(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        if x < width / 2 && y < height / 2 {
            image::Rgb([210, 30, 30])
        } else {
            image::Rgb([60, 120, 60])
        }
    })
}

fn entry(lat_deg: f64, lon_deg: f64) -> ExifEntry {
    ExifEntry {
        taken: Moment {
            utc_ms: 1_777_903_872_250,
            offset_min: -240,
        },
        position: Some(Position {
            lat_deg,
            lon_deg,
            accuracy_m: Some(4.25),
            method: Some(PositionMethod::PhotoRecord),
        }),
        altitude_m: Some(31.5),
        direction: Some(CameraDirection {
            bearing_deg: 221.25,
            north: North::True,
        }),
        model: "test picture".to_owned(),
        description: "stem".to_owned(),
    }
}

/// The 300 places: the corners of every quadrant, values that round to 60 seconds, and a spread
/// over the globe by the golden angle.
fn places() -> Vec<(f64, f64)> {
    let mut places = vec![
        (42.3314, -71.1211),
        (-33.999_999_99, 151.999_999_99),
        (0.000_001, -0.000_001),
        (89.9, 180.0),
        (-89.9, -180.0),
        (12.0 + 59.999_999 / 60.0, 10.0 + 59.999_99 / 3600.0),
    ];
    let mut turn = 0.0_f64;
    while places.len() < 300 {
        let part = places.len() as f64 / 300.0;
        turn = (turn + 137.507_764_050_037_85) % 360.0;
        places.push((-89.0 + 178.0 * part, turn - 180.0));
    }
    places
}

#[test]
fn three_hundred_positions_are_read_by_exiftool_as_written() {
    let folder = tempfile::tempdir().unwrap();
    let picture = cornered(16, 12);
    let places = places();
    for (number, &(lat_deg, lon_deg)) in places.iter().enumerate() {
        let jpeg = write_exif_jpeg(&picture, 80, &entry(lat_deg, lon_deg)).unwrap();
        let ours = read_facts(&jpeg).position.unwrap();
        assert!((ours.lat_deg - lat_deg).abs() <= 1e-7);
        assert!((ours.lon_deg - lon_deg).abs() <= 1e-7);
        std::fs::write(folder.path().join(format!("{number:03}.jpg")), jpeg).unwrap();
    }
    let arguments = [
        "-n",
        "-csv",
        "-csvDelim",
        ";",
        "-GPSLatitude",
        "-GPSLongitude",
        "-GPSAltitude",
        "-GPSHPositioningError",
        "-GPSImgDirection",
        "-GPSImgDirectionRef",
        ".",
    ];
    let Some(table) = exiftool(&arguments, folder.path()) else {
        return;
    };
    let mut worst_deg = 0.0_f64;
    let mut rows = 0;
    let column = |head: &str, name: &str| head.split(';').position(|c| c == name).unwrap();
    let head = table.lines().next().unwrap();
    for line in table.lines().skip(1).filter(|line| line.contains(".jpg;")) {
        let cells: Vec<&str> = line.split(';').collect();
        let number: usize = cells[0].trim_start_matches("./")[..3].parse().unwrap();
        let value = |name: &str| cells[column(head, name)].parse::<f64>().unwrap();
        worst_deg = worst_deg
            .max((value("GPSLatitude") - places[number].0).abs())
            .max((value("GPSLongitude") - places[number].1).abs());
        assert_eq!(value("GPSAltitude"), 31.5);
        assert_eq!(value("GPSHPositioningError"), 4.25);
        assert_eq!(value("GPSImgDirection"), 221.25);
        assert_eq!(cells[column(head, "GPSImgDirectionRef")], "T");
        rows += 1;
    }
    assert_eq!(rows, 300, "{table}");
    assert!(worst_deg <= 1e-7, "{worst_deg}");
}

// Reference sheet §9.3: 42.3314 N is 42/1 19/1 53.04; 71.1211 W is 71/1 7/1 15.96.
#[test]
fn the_worked_example_stands_in_the_file() {
    let folder = tempfile::tempdir().unwrap();
    let jpeg = write_exif_jpeg(&cornered(16, 12), 80, &entry(42.3314, -71.1211)).unwrap();
    std::fs::write(folder.path().join("a.jpg"), jpeg).unwrap();
    let Some(text) = exiftool(
        &[
            "-s",
            "-c",
            "%d %d %.4f",
            "-GPS:GPSLatitude",
            "-GPS:GPSLongitude",
            "-GPS:GPSLatitudeRef",
            "-GPS:GPSLongitudeRef",
            "-GPS:GPSDateStamp",
            "-GPS:GPSTimeStamp",
            "-DateTimeOriginal",
            "-OffsetTimeOriginal",
            "a.jpg",
        ],
        folder.path(),
    ) else {
        return;
    };
    for wanted in [
        "42 19 53.0400",
        "71 7 15.9600",
        "North",
        "West",
        "2026:05:04",
        "14:11:12",
        "2026:05:04 10:11:12",
        "-04:00",
    ] {
        assert!(text.contains(wanted), "{wanted} in\n{text}");
    }
}

#[test]
fn exiftool_calls_our_files_valid() {
    let folder = tempfile::tempdir().unwrap();
    let mut bare = entry(-33.5, 151.25);
    bare.position = None;
    bare.altitude_m = None;
    bare.direction = None;
    let mut below = entry(52.0, 4.75);
    below.altitude_m = Some(-4.0);
    below.direction = Some(CameraDirection {
        bearing_deg: 359.999,
        north: North::Magnetic,
    });
    for (name, entry) in [
        ("full", entry(42.3314, -71.1211)),
        ("bare", bare),
        ("low", below),
    ] {
        let jpeg = write_exif_jpeg(&cornered(64, 48), 80, &entry).unwrap();
        std::fs::write(folder.path().join(format!("{name}.jpg")), jpeg).unwrap();
        let file = format!("{name}.jpg");
        let arguments = ["-validate", "-warning", "-error", "-a", file.as_str()];
        let Some(text) = exiftool(&arguments, folder.path()) else {
            return;
        };
        assert!(text.contains(": OK"), "{name}: {text}");
        assert_eq!(text.lines().count(), 1, "{name}: {text}");
    }
}

#[test]
fn photos_tagged_by_exiftool_are_read_in_all_eight_orientations() {
    let folder = tempfile::tempdir().unwrap();
    // Stored wide: orientations 5 to 8 stand tall.
    let plain = folder.path().join("plain.jpg");
    cornered(64, 48).save(&plain).unwrap();
    for code in 1..=8_u8 {
        let name = format!("o{code}.jpg");
        let orientation = format!("-Orientation#={code}");
        let arguments = [
            orientation.as_str(),
            "-GPSLatitude=42.3314",
            "-GPSLatitudeRef=N",
            "-GPSLongitude=71.1211",
            "-GPSLongitudeRef=W",
            "-GPSAltitude=12.5",
            "-GPSAltitudeRef#=1",
            "-GPSImgDirection=87.5",
            "-GPSImgDirectionRef=M",
            "-GPSHPositioningError=5",
            "-DateTimeOriginal=2026:05:04 10:11:12",
            "-OffsetTimeOriginal=-04:00",
            "-o",
            name.as_str(),
            "plain.jpg",
        ];
        if exiftool(&arguments, folder.path()).is_none() {
            return;
        }
        let photos = folder.path().join("photos");
        let photo = import_photo(&folder.path().join(&name), &photos).unwrap();
        let facts = &photo.facts;
        assert_eq!(facts.turn.to_exif(), code);
        assert_eq!(facts.gaps, []);
        let place = facts.position.unwrap();
        assert!((place.lat_deg - 42.3314).abs() < 1e-7);
        assert!((place.lon_deg + 71.1211).abs() < 1e-7);
        assert_eq!(place.accuracy_m, Some(5.0));
        assert_eq!(facts.altitude_m, Some(-12.5));
        let direction = facts.direction.unwrap();
        assert_eq!(
            (direction.bearing_deg, direction.north),
            (87.5, North::Magnetic)
        );
        assert_eq!(facts.taken.unwrap().utc_ms, 1_777_903_872_000);
        let tall = code > 4;
        let size = if tall { (48, 64) } else { (64, 48) };
        assert_eq!((photo.width_px, photo.height_px), size);
        // Where the stored upper left corner belongs (Exif 2.32 §4.6.4: row 0, column 0).
        let (at_right, at_bottom) = match code {
            1 | 5 => (false, false),
            2 | 6 => (true, false),
            3 | 7 => (true, true),
            _ => (false, true),
        };
        let view = image::open(photo_files(&photos, &photo.file).view)
            .unwrap()
            .to_rgb8();
        let x = if at_right { size.0 - 6 } else { 6 };
        let y = if at_bottom { size.1 - 6 } else { 6 };
        let [red, green, _] = view.get_pixel(x, y).0;
        assert!(red > 150 && green < 90, "orientation {code}: {red} {green}");
    }
}

#[test]
fn copies_carry_no_place_by_exiftools_reading() {
    let folder = tempfile::tempdir().unwrap();
    let source = folder.path().join("a.jpg");
    let jpeg = write_exif_jpeg(&cornered(640, 480), 80, &entry(42.3314, -71.1211)).unwrap();
    std::fs::write(&source, jpeg).unwrap();
    let photos = folder.path().join("photos");
    let photo = import_photo(&source, &photos).unwrap();
    let files = photo_files(&photos, &photo.file);
    for copy in [files.view, files.small] {
        let path = copy.display().to_string();
        let Some(text) = exiftool(&["-ee", "-G1", "-a", &path], folder.path()) else {
            return;
        };
        assert!(text.contains("[JFIF]"), "{text}");
        assert!(!text.contains("GPS") && !text.contains("IFD"), "{text}");
    }
}

#[test]
fn a_position_that_exiftool_left_without_its_letter_is_a_gap() {
    let folder = tempfile::tempdir().unwrap();
    let jpeg = write_exif_jpeg(&cornered(64, 48), 80, &entry(42.3314, -71.1211)).unwrap();
    std::fs::write(folder.path().join("a.jpg"), jpeg).unwrap();
    let arguments = ["-GPSLatitudeRef=", "-o", "b.jpg", "a.jpg"];
    if exiftool(&arguments, folder.path()).is_none() {
        return;
    }
    let facts = read_facts(&std::fs::read(folder.path().join("b.jpg")).unwrap());
    assert_eq!(facts.position, None);
    assert_eq!(facts.gaps[0].kind, PhotoGapKind::PositionWithoutHemisphere);
    assert!(facts.taken.is_some());
}
