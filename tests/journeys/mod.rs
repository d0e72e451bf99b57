//! Runs every journey on the core, through the exported object alone.

mod entered;
mod screen;
mod steps;
mod walker;

use std::path::{Path, PathBuf};

use steps::Journey;
use walker::Walker;

fn root() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR"))
}

fn run(path: &Path) {
    let text = std::fs::read_to_string(path).unwrap();
    let journey: Journey = toml::from_str(&text).unwrap_or_else(|e| panic!("{e}"));
    assert_eq!(journey.format, 1);
    let mut walker = Walker::begin(&journey);
    for (number, step) in journey.step.iter().enumerate() {
        if let Err(fault) = walker.step(step) {
            let name = path.file_name().unwrap().to_string_lossy();
            panic!(
                "{name}, step {} {step:?}:\n{fault}\n\non the page:\n{}",
                number + 1,
                walker.shown()
            );
        }
    }
}

#[test]
fn every_journey_comes_to_its_end() {
    let mut paths: Vec<PathBuf> = std::fs::read_dir(root().join("tests/journeys"))
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|end| end == "toml"))
        .collect();
    paths.sort();
    assert!(!paths.is_empty());
    for path in paths {
        run(&path);
    }
}

#[test]
fn a_journey_that_sees_what_is_not_there_fails() {
    let journey: Journey = toml::from_str(
        "format = 1\ntitle = \"t\"\nclock = \"2026-05-14T09:10:00-04:00\"\n\
         [[step]]\nopen = \"book\"\nsee = \"a dragon\"\n",
    )
    .unwrap();
    let mut walker = Walker::begin(&journey);
    assert!(walker.step(&journey.step[0]).is_err());
}
