//! Trees of another origin: what was guessed, what was left out, and every row that became no tree.

use std::collections::BTreeMap;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::intake::{ColumnMapping, Imported, InventoryOptions, read_inventory_at};
use bolewalk_core::judge::wood::all_species;
use bolewalk_core::record::Fault;
use bolewalk_core::words::{Said, Words};

use super::{Asked, brought_in};
use crate::answer::{tell, words};
use crate::lines::Lines;

/// Values left out that are told one by one; the rest is counted. Rows are always told.
const MOST_LEFT_OUT: usize = 20;

pub fn import(asked: &Asked) -> Result<ExitCode, BookError> {
    let options = options(asked)?;
    let Imported {
        file,
        guesses,
        faults,
        left_out,
        blank_rows,
        rows,
    } = read_inventory_at(&asked.file, &options)?;
    let words = words(false);
    let mut lines = Lines::default();
    let count = |number: usize| Said::Count(number as i64);
    let said = [
        ("rows", Said::Count(i64::from(rows))),
        ("trees", count(file.site.trees.len())),
        ("refused", count(faults.len())),
        ("blank", Said::Count(i64::from(blank_rows))),
    ];
    lines.hung("", &words.say("desk.inventory-rows", &said));
    if !guesses.is_empty() {
        lines.heading(&words.say("desk.inventory-guesses", &[]));
        for guess in words.reasons(&guesses) {
            lines.hung("  - ", &guess);
        }
    }
    told(
        "desk.inventory-refused",
        &faults,
        faults.len(),
        &words,
        &mut lines,
    );
    told(
        "desk.inventory-left-out",
        &left_out,
        MOST_LEFT_OUT,
        &words,
        &mut lines,
    );
    lines.gap();
    tell(&lines.into_text())?;
    if file.site.trees.is_empty() {
        // Nothing came of it: the reasons stand above, and no book is made.
        return Err(BookError::Refused { faults });
    }
    brought_in(asked, file)
}

fn told(heading: &str, faults: &[Fault], most: usize, words: &Words, lines: &mut Lines) {
    if faults.is_empty() {
        return;
    }
    let count = [("count", Said::Count(faults.len() as i64))];
    lines.heading(&words.say(heading, &count));
    for fault in faults.iter().take(most) {
        lines.hung("  - ", &words.fault(fault));
    }
    if faults.len() > most {
        let more = [("count", Said::Count((faults.len() - most) as i64))];
        lines.hung("  - ", &words.say("paper.and-more", &more));
    }
}

/// Every mapping that cannot be read is told at once.
fn options(asked: &Asked) -> Result<InventoryOptions, BookError> {
    let mut columns = Vec::new();
    let mut faults = Vec::new();
    for text in &asked.map {
        match ColumnMapping::read(text) {
            Ok(column) => columns.push(column),
            Err(fault) => faults.push(fault),
        }
    }
    if !faults.is_empty() {
        return Err(BookError::Refused { faults });
    }
    let name = asked.name.clone().or_else(|| {
        let stem = asked.file.file_stem()?;
        Some(stem.to_string_lossy().into_owned())
    });
    let latin_names: BTreeMap<String, String> = all_species()
        .iter()
        .map(|species| {
            (
                species.common_name.to_lowercase(),
                species.latin_name.clone(),
            )
        })
        .collect();
    Ok(InventoryOptions {
        site_name: name.unwrap_or_default(),
        day: asked.date,
        columns,
        latin_names,
    })
}
