//! Peers: a Python library kept loaded, or a command; or why they are not here.

use std::ffi::OsStr;
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};

use serde_json::Value;

use crate::bench::Outcome;
use crate::times::timed;

/// A peer that is not on this machine.
pub struct Lacking {
    pub reason: String,
    /// What would install it.
    pub command: String,
}

/// A peer, or why it is not here.
pub type Found = Result<Peer, Lacking>;

/// A program that does a job once each time it is asked.
pub struct Peer {
    /// Name and version.
    pub name: String,
    once: Box<dyn FnMut() -> Outcome<(f64, Value)>>,
}

impl Peer {
    /// The seconds of one run, and what came of it.
    pub fn run(&mut self) -> Outcome<(f64, Value)> {
        (self.once)()
    }
}

/// The libraries' answer or their absence, as `peers/warm.py` writes them.
fn next_answer(from: &mut impl BufRead, script: &str) -> Outcome<Value> {
    let mut line = String::new();
    if from.read_line(&mut line)? == 0 {
        return Err(format!("{script} ended early; its own words stand above").into());
    }
    Ok(serde_json::from_str(&line)?)
}

/// A script of `peers/` that stays loaded: its start and its imports are not timed.
struct Warm {
    child: Child,
    ask: ChildStdin,
    answers: BufReader<ChildStdout>,
    script: &'static str,
}

impl Warm {
    fn once(&mut self) -> Outcome<(f64, Value)> {
        self.ask.write_all(b"\n")?;
        self.ask.flush()?;
        let answer = next_answer(&mut self.answers, self.script)?;
        let seconds = answer["seconds"].as_f64().ok_or("a run without a time")?;
        Ok((seconds, answer["made"].clone()))
    }
}

impl Drop for Warm {
    fn drop(&mut self) {
        // Ours alone; it has nothing that a sudden end could hurt.
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A Python library, driven by a script of `peers/`.
pub fn library(script: &'static str, arguments: &[&OsStr]) -> Outcome<Found> {
    let install = "tests/outside/peers/install";
    let python = std::env::var_os("BOLEWALK_PEERS")
        .map(|home| PathBuf::from(home).join("bin/python"))
        .filter(|python| python.exists());
    let Some(python) = python else {
        return Ok(Err(Lacking {
            reason: format!("the libraries to compare with are missing ({script})"),
            command: install.into(),
        }));
    };
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bench/peers");
    let mut child = Command::new(python)
        .arg(here.join(script))
        .args(arguments)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()?;
    let ask = child.stdin.take().ok_or("no way to ask")?;
    let mut answers = BufReader::new(child.stdout.take().ok_or("no way to answer")?);
    let first = next_answer(&mut answers, script)?;
    let mut warm = Warm {
        child,
        ask,
        answers,
        script,
    };
    let word = |key: &str| first[key].as_str().unwrap_or_default().to_owned();
    if first.get("lacking").is_some() {
        return Ok(Err(Lacking {
            reason: word("lacking"),
            command: word("install"),
        }));
    }
    Ok(Ok(Peer {
        name: word("peer"),
        once: Box::new(move || warm.once()),
    }))
}

/// GDAL's converter of map files as a command: its start is timed. `result` looks at what came of
/// a run; what an earlier run wrote to `writes` is removed before.
pub fn ogr2ogr(
    arguments: Vec<PathBuf>,
    writes: PathBuf,
    result: impl Fn(&Path) -> Outcome<Value> + 'static,
) -> Outcome<Found> {
    let Ok(asked) = Command::new("ogr2ogr").arg("--version").output() else {
        return Ok(Err(Lacking {
            reason: "ogr2ogr is missing".into(),
            command: "apt-get install gdal-bin".into(),
        }));
    };
    let said = String::from_utf8_lossy(&asked.stdout).into_owned();
    let version = said.split(',').next().unwrap_or_default().trim();
    let once = move || {
        if writes.exists() {
            std::fs::remove_file(&writes)?;
        }
        let mut command = Command::new("ogr2ogr");
        command.arg("-f").arg("GPKG").arg(&writes).args(&arguments);
        let (seconds, ()) = timed(|| succeeded(&mut command))?;
        Ok((seconds, result(&writes)?))
    };
    Ok(Ok(Peer {
        name: format!("ogr2ogr, {version}"),
        once: Box::new(once),
    }))
}

/// Runs a command to its end; what it says counts only when it fails.
pub fn succeeded(command: &mut Command) -> Outcome<()> {
    let output = command.output()?;
    if output.status.success() {
        return Ok(());
    }
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    Err(format!("{:?} failed: {said}", command.get_program()).into())
}
