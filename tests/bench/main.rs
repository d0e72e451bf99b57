//! How long the heavy jobs take, each beside a general-purpose program that does the like, timed in
//! turn with ours on the same machine. `tests/bench/run` builds and runs it.
//!
//! | file | what it does |
//! | --- | --- |
//! | `jobs/` | one file a job: its input, ours, the peer, and whether both did the same |
//! | `row` | ours and a peer in turn → one row |
//! | `peer` | peers, or why they are not here |
//! | `times` | several runs → median and spread |
//! | `bench` | the folder that jobs work in, the demo property, the trees |
//! | `table` | rows → the table and what is skipped |
//! | `peers/` | the Python side: loads once, then answers each line with one timed run |

mod bench;
mod jobs;
mod peer;
mod row;
mod table;
mod times;

use bench::{Bench, Outcome};
use row::Row;

/// A job's name and what runs it.
type Named = (&'static str, fn(&Bench) -> Outcome<Vec<Row>>);

const JOBS: [Named; 6] = [
    ("photo", jobs::photo::rows),
    ("section", jobs::section::rows),
    ("inventory", jobs::inventory::rows),
    ("map", jobs::map_file::rows),
    ("paper", jobs::paper::rows),
    ("judgement", jobs::judgement::rows),
];

fn main() -> Outcome<()> {
    // Cargo adds options of its own, such as --bench.
    let wanted: Vec<String> = std::env::args()
        .skip(1)
        .filter(|word| !word.starts_with('-'))
        .collect();
    let names = JOBS.map(|(name, _)| name);
    if let Some(unknown) = wanted.iter().find(|word| !names.contains(&word.as_str())) {
        return Err(format!("no job {unknown}; there are: {}", names.join(", ")).into());
    }
    let bench = Bench::new()?;
    let (mut rows, mut failed) = (Vec::new(), Vec::new());
    for (name, job) in JOBS {
        if wanted.is_empty() || wanted.iter().any(|word| word == name) {
            eprintln!("{name} …");
            match job(&bench) {
                Ok(done) => rows.extend(done),
                Err(cause) => failed.push(format!("{name}: {cause}")),
            }
        }
    }
    table::print(&rows);
    // What was measured is shown before what was not.
    if failed.is_empty() {
        return Ok(());
    }
    Err(failed.join("; ").into())
}
