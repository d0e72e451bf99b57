//! The desk command as a person runs it: what it prints and how it ends.

mod bad_input;
mod basics;
mod demo;
mod inventory;
mod packs;

use std::ffi::OsStr;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

fn bolewalk<Arg: AsRef<OsStr>>(args: &[Arg]) -> Output {
    let output = Command::new(env!("CARGO_BIN_EXE_bolewalk"))
        .args(args)
        .stdin(Stdio::null())
        .output()
        .unwrap();
    // Whatever it is given, it never panics (exit code 101).
    assert!(!err(&output).contains("panicked"), "{}", err(&output));
    output
}

fn fixture(name: &str) -> String {
    let root = PathBuf::from(env!("CARGO_MANIFEST_DIR"));
    root.join("fixtures/sites").join(name).display().to_string()
}

fn out(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).unwrap()
}

fn err(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).unwrap()
}
