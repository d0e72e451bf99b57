//! Killed in the middle: what was confirmed is there, what was not is not.

use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use bolewalk_core::record::{Id, Noun};
use serde_json::json;

use super::store::{ana, note, notes, open, property};

const FOLDER: &str = "BOLEWALK_KILLED_FOLDER";

fn child(test: &str, folder: &Path) -> Command {
    let mut command = Command::new(std::env::current_exe().unwrap());
    command
        .args([
            "--exact",
            &format!("damage::store_killed::{test}"),
            "--ignored",
            "--nocapture",
        ])
        .env(FOLDER, folder)
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
    command
}

fn folder_of_child() -> PathBuf {
    PathBuf::from(std::env::var_os(FOLDER).unwrap())
}

#[test]
#[ignore = "run in a process of its own by the test below"]
fn dies_in_the_middle_of_an_edit() {
    let mut store = open(&folder_of_child(), 1).unwrap();
    let _ = store.edit(&ana(1), |edit| {
        for tree in 0..50 {
            edit.set(Noun::Tree, &Id(format!("t{tree}")), "note", json!("half"))?;
        }
        std::process::abort();
    });
}

#[test]
fn an_edit_cut_short_never_was() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), 0).unwrap();
    store.put_site_file(&ana(0), &property(50)).unwrap();
    drop(store);
    let ended = child("dies_in_the_middle_of_an_edit", folder.path())
        .status()
        .unwrap();
    assert!(!ended.success());
    let store = open(folder.path(), 2).unwrap();
    assert!(store.opening().repair.is_none());
    assert!(notes(&store).is_empty());
    assert!(store.check().unwrap().is_sound());
}

#[test]
#[ignore = "run in a process of its own by the test below"]
fn edits_without_end() {
    let mut store = open(&folder_of_child(), 1).unwrap();
    for edit in 0.. {
        note(&mut store, 1, 0, &edit.to_string()).unwrap();
        println!("confirmed {edit}");
    }
}

#[test]
fn every_edit_confirmed_before_the_kill_is_there() {
    let folder = tempfile::tempdir().unwrap();
    let mut store = open(folder.path(), 0).unwrap();
    store.put_site_file(&ana(0), &property(1)).unwrap();
    drop(store);
    for round in 1_u64..4 {
        let mut running = child("edits_without_end", folder.path()).spawn().unwrap();
        let lines = BufReader::new(running.stdout.take().unwrap()).lines();
        let confirmed = lines
            .map_while(Result::ok)
            .filter_map(|line| line.strip_prefix("confirmed ").map(str::to_owned))
            .nth(usize::try_from(round * 17).unwrap())
            .unwrap();
        running.kill().unwrap();
        running.wait().unwrap();
        let store = open(folder.path(), 2).unwrap();
        let there: u64 = notes(&store)[0].parse().unwrap();
        assert!(
            there >= confirmed.parse::<u64>().unwrap(),
            "{there} < {confirmed}"
        );
        assert!(store.check().unwrap().is_sound());
    }
}
