//! Rows → the table, its notes, and what is skipped.

use std::thread::available_parallelism;

use comfy_table::{CellAlignment, ContentArrangement, Table, presets};

use crate::row::{Beside, Row};
use crate::times::three_digits;

pub fn print(rows: &[Row]) {
    println!("{}", machine());
    println!("{}", table(rows));
    println!(
        "Median of the runs (shortest–longest). Ratio: the peer's median over ours; more than 1, ours is the faster."
    );
    for row in rows.iter().filter(|row| !row.note.is_empty()) {
        println!("- {}: {}", row.job, row.note);
    }
    for row in rows {
        if let Beside::Lacking(lacking) = &row.beside {
            println!("SKIPPED: {}; {}", lacking.reason, lacking.command);
        }
    }
}

/// What else kept the machine busy: figures of a busy one are no figures of a phone.
fn machine() -> String {
    let cores = available_parallelism().map_or(1, usize::from);
    let load = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    match load.split(' ').next().filter(|load| !load.is_empty()) {
        Some(load) => format!("{cores} cores, load {load} at the end"),
        None => format!("{cores} cores"),
    }
}

fn table(rows: &[Row]) -> Table {
    let mut table = Table::new();
    table
        .load_style(presets::UTF8_HORIZONTAL_ONLY)
        .set_content_arrangement(ContentArrangement::Dynamic)
        .set_width(100)
        .set_header(["Job", "Ours", "Peer", "Its time", "Ratio"]);
    for row in rows {
        let ours = row.ours.words();
        let [peer, time, ratio] = match &row.beside {
            Beside::Timed { peer, times } => {
                let ratio = times.median_s() / row.ours.median_s();
                [
                    peer.clone(),
                    times.words(),
                    format!("{} ×", three_digits(ratio)),
                ]
            }
            Beside::Lacking(_) => ["SKIPPED, see below".into(), String::new(), String::new()],
            Beside::NoneExists => ["no peer exists".into(), String::new(), String::new()],
        };
        table.add_row([row.job.clone(), ours, peer, time, ratio]);
    }
    for column in [1, 3, 4] {
        if let Some(column) = table.column_mut(column) {
            column.set_cell_alignment(CellAlignment::Right);
        }
    }
    table
}
