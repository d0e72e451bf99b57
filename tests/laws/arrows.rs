//! The house keeps its arrows: rooms use only rooms to their right, the pure rooms touch no disk,
//! clock or SQL, and no file outgrows what a reader can hold.

use std::fs;
use std::path::{Path, PathBuf};

/// What each room may use besides itself. The error is everybody's; the ends of the house come last.
const MAY_USE: [(&str, &[&str]); 11] = [
    ("record", &[]),
    ("measure", &["record"]),
    ("judge", &["measure", "record"]),
    ("words", &["judge", "measure", "record"]),
    ("draw", &["judge", "measure", "record"]),
    ("intake", &["record"]),
    ("photo", &["record"]),
    ("store", &["record"]),
    ("pages", &["draw", "words", "judge", "measure", "record"]),
    ("handover", &["draw", "words", "judge", "measure", "record"]),
    (
        "field_book",
        &[
            "pages", "handover", "draw", "words", "judge", "measure", "record", "store", "intake",
            "photo",
        ],
    ),
];

/// Standard mathematics differs in the last digit between machines; `libm` does not.
const TRANSCENDENTAL: [&str; 22] = [
    "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sin_cos", "sinh", "cosh", "tanh", "exp",
    "exp2", "exp_m1", "ln", "ln_1p", "log", "log2", "log10", "powf", "cbrt", "hypot",
];

/// Every Rust file below `folder`, in order.
fn sources(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut entries: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            found.extend(sources(&path));
        } else if path.extension().is_some_and(|end| end == "rs") {
            found.push(path);
        }
    }
    found
}

fn core() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("core/src")
}

/// The code of a file without comments and without its unit tests, which stand at the bottom.
fn code(path: &Path) -> String {
    let text = fs::read_to_string(path).unwrap();
    let name = path.file_name().unwrap().to_string_lossy();
    // The looks of the drawings are test code as a whole: pictures kept and compared.
    let looks = path.components().any(|part| part.as_os_str() == "looks");
    if looks || name == "tests.rs" || name.ends_with("_tests.rs") {
        return String::new();
    }
    let shipped = text
        .split_once("#[cfg(test)]\nmod tests {")
        .map_or(text.as_str(), |(before, _)| before);
    shipped
        .lines()
        .map(|line| line.split("//").next().unwrap_or_default())
        .collect::<Vec<_>>()
        .join("\n")
}

/// The rooms named by `crate::room` paths, also inside `use crate::{…}`.
fn rooms_used(code: &str) -> Vec<String> {
    let mut rooms = Vec::new();
    for (at, prefix) in code.match_indices("crate::") {
        let rest = &code[at + prefix.len()..];
        if let Some(list) = rest.strip_prefix('{') {
            let mut depth = 1;
            let mut name = String::new();
            let mut taking = true;
            for letter in list.chars() {
                match letter {
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    ',' if depth == 1 => {
                        rooms.push(std::mem::take(&mut name));
                        taking = true;
                    }
                    ':' => taking = false,
                    c if taking && depth == 1 && !c.is_whitespace() => name.push(c),
                    _ => {}
                }
                if depth == 0 {
                    break;
                }
            }
            rooms.push(name);
        } else {
            rooms.push(
                rest.chars()
                    .take_while(|c| c.is_alphanumeric() || *c == '_')
                    .collect(),
            );
        }
    }
    rooms
}

fn faults_of(check: impl Fn(&str, &Path, &str) -> Vec<String>) -> Vec<String> {
    let mut faults = Vec::new();
    for (room, _) in MAY_USE {
        for path in sources(&core().join(room)) {
            for fault in check(room, &path, &code(&path)) {
                let place = path.strip_prefix(core()).unwrap_or(&path).display();
                faults.push(format!("{place}: {fault}"));
            }
        }
    }
    faults
}

fn none(faults: &[String]) {
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));
}

#[test]
fn rooms_use_only_rooms_to_their_right() {
    let names: Vec<&str> = MAY_USE.iter().map(|(room, _)| *room).collect();
    none(&faults_of(|room, _, code| {
        let allowed = MAY_USE.iter().find(|(name, _)| *name == room).unwrap().1;
        rooms_used(code)
            .into_iter()
            .filter(|used| {
                names.contains(&used.as_str()) && used != room && !allowed.contains(&used.as_str())
            })
            .map(|used| format!("{room} may not use {used}"))
            .collect()
    }));
}

#[test]
fn an_arrow_the_other_way_is_seen() {
    let code =
        "use crate::{error::BookError, store::{Log, Row}, record};\nlet a = crate::draw::x();";
    assert_eq!(rooms_used(code), ["error", "store", "record", "draw"]);
}

#[test]
fn every_room_of_the_core_is_in_the_order() {
    let mut folders: Vec<String> = fs::read_dir(core())
        .unwrap()
        .map(|entry| entry.unwrap())
        .filter(|entry| entry.path().is_dir() && entry.file_name() != "bin")
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .collect();
    folders.sort();
    let mut rooms: Vec<String> = MAY_USE.iter().map(|(room, _)| (*room).to_owned()).collect();
    rooms.sort();
    assert_eq!(folders, rooms);
}

#[test]
fn pure_rooms_touch_neither_disk_nor_clock_nor_unordered_maps() {
    let barred = [
        "std::fs",
        "std::time",
        "std::net",
        "std::env",
        "HashMap",
        "HashSet",
        "Utc::now",
        "Local::now",
        "File::",
    ];
    none(&faults_of(|room, _, code| {
        if !["record", "measure", "judge", "draw"].contains(&room) {
            return Vec::new();
        }
        barred
            .iter()
            .filter(|word| code.contains(**word))
            .map(|word| format!("{word} in a pure room"))
            .collect()
    }));
}

#[test]
fn sql_stays_in_the_store_and_the_geopackage() {
    none(&faults_of(|room, path, code| {
        let geopackage = room == "handover" && path.to_string_lossy().contains("geopackage");
        if room == "store" || geopackage || !code.contains("rusqlite") {
            return Vec::new();
        }
        vec!["SQL outside the store".to_owned()]
    }));
}

#[test]
fn measures_and_judgement_take_their_mathematics_from_libm() {
    none(&faults_of(|room, _, code| {
        if !["measure", "judge"].contains(&room) {
            return Vec::new();
        }
        TRANSCENDENTAL
            .iter()
            .filter(|name| {
                code.contains(&format!(".{name}(")) || code.contains(&format!("f64::{name}"))
            })
            .map(|name| format!("std's {name} instead of libm's"))
            .collect()
    }));
}

/// Files that were too long when this law was written, still to be split, with what they may not exceed.
const STILL_LONG: [(&str, usize); 2] = [
    ("judge/section/ring.rs", 560),
    ("judge/wood/species.rs", 410),
];

#[test]
fn no_file_is_over_400_lines() {
    let mut long = Vec::new();
    for folder in ["core/src", "tests"] {
        for path in sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)) {
            let lines = fs::read_to_string(&path).unwrap().lines().count();
            let most = STILL_LONG
                .iter()
                .find(|(file, _)| path.ends_with(file))
                .map_or(400, |(_, most)| *most);
            if lines > most {
                long.push(format!("{} has {lines} lines", path.display()));
            }
        }
    }
    none(&long);
}

#[test]
fn the_licence_is_the_published_text() {
    // blake3 of the Apache License 2.0 as published (sha256 cfc7749b96f63bd3…).
    let text = fs::read(Path::new(env!("CARGO_MANIFEST_DIR")).join("LICENSE")).unwrap();
    assert_eq!(
        blake3::hash(&text).to_hex().as_str(),
        "83cb3a2fcf829b6138e095b083016c34ddcdfa07b68d38782722c14fcf85ace6"
    );
}
