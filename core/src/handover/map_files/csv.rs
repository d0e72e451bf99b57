//! The trees as a table (RFC 4180), in the reader's units, which the headers name.

use std::path::Path;

use super::layer::{Column, Kind, Row, Value, tenth_up};
use super::trees::trees;
use crate::error::BookError;
use crate::handover::write_aside;
use crate::record::{LatLon, Quantity, SiteFile, SiteJudgement};
use crate::words::{UnitSystem, Words};

/// Metres in a foot, centimetres in an inch: exact, NIST Special Publication 811 (2008).
const M_PER_FT: f64 = 0.3048;
const CM_PER_IN: f64 = 2.54;

/// The trees of a site as a table: UTF-8, commas, lines that end in CR LF, a header. Numbers have a
/// decimal point and no unit of their own: the header names it (`height_m`, or `height_ft` for a
/// reader in feet). Distances that people keep are rounded up to a tenth. A cell that a spreadsheet
/// would take for a formula begins with an apostrophe; empty means not observed.
///
/// # Errors
/// [`BookError::Defect`] where the table cannot be put together.
pub fn csv_text(
    file: &SiteFile,
    judgement: &SiteJudgement,
    words: Words,
) -> Result<String, BookError> {
    let layer = trees(file, judgement, words);
    let units = words.units();
    let mut table = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer(Vec::new());
    let defect = |cause: &dyn std::fmt::Display| BookError::Defect {
        detail: cause.to_string(),
    };
    let mut header: Vec<String> = layer.columns.iter().map(|c| titled(c, units)).collect();
    header.extend(["lat_deg", "lon_deg"].map(str::to_owned));
    table
        .write_record(&header)
        .map_err(|cause| defect(&cause))?;
    for (row, tree) in layer.rows.iter().zip(&file.site.trees) {
        let at = tree.position.map(|position| position.point());
        let cells = cells(row, layer.columns, at, units);
        table.write_record(&cells).map_err(|cause| defect(&cause))?;
    }
    let bytes = table.into_inner().map_err(|cause| defect(&cause))?;
    String::from_utf8(bytes).map_err(|cause| defect(&cause))
}

/// Writes [`csv_text`] to a file, aside first and then renamed.
///
/// # Errors
/// [`BookError::DiskFull`], [`BookError::Unwritable`]; what was at `path` before stays.
pub fn write_csv(
    file: &SiteFile,
    judgement: &SiteJudgement,
    words: Words,
    path: &Path,
) -> Result<(), BookError> {
    write_aside(path, csv_text(file, judgement, words)?.as_bytes())
}

/// The tree's columns, then where it stands.
fn cells(row: &Row, columns: &[Column], at: Option<LatLon>, units: UnitSystem) -> Vec<String> {
    let mut cells: Vec<String> = columns
        .iter()
        .zip(&row.values)
        .map(|(column, value)| cell(column, value, units))
        .collect();
    for degrees in [at.map(|at| at.lat_deg), at.map(|at| at.lon_deg)] {
        cells.push(degrees.map_or_else(String::new, |degrees| degrees.to_string()));
    }
    cells
}

fn cell(column: &Column, value: &Value, units: UnitSystem) -> String {
    match (value, column.kind) {
        (Value::Missing, _) => String::new(),
        (Value::Text(text), _) => harmless(text),
        (Value::Yes(answer), _) => if *answer { "yes" } else { "no" }.to_owned(),
        (Value::Day(day), _) => day.to_string(),
        (Value::Number(number), Kind::Reach(quantity)) => match factor(quantity, units) {
            Some((_, _, factor)) => tenth_up(number / factor).to_string(),
            None => number.to_string(),
        },
        (Value::Number(number), Kind::Number(quantity)) => match factor(quantity, units) {
            Some((_, _, factor)) => (libm::round(number / factor * 100.0) / 100.0).to_string(),
            None => number.to_string(),
        },
        (Value::Number(number), _) => number.to_string(),
    }
}

/// The column's name with the reader's unit in it.
fn titled(column: &Column, units: UnitSystem) -> String {
    let unit = match column.kind {
        Kind::Number(quantity) | Kind::Reach(quantity) => factor(quantity, units),
        Kind::Text | Kind::Yes | Kind::Day => None,
    };
    unit.and_then(|(metric, own, _)| Some(format!("{}{own}", column.name.strip_suffix(metric)?)))
        .unwrap_or_else(|| column.name.to_owned())
}

/// The endings of a column's name in both systems, and base units in one of the reader's; nothing
/// where the reader's unit is the base unit.
fn factor(quantity: Quantity, units: UnitSystem) -> Option<(&'static str, &'static str, f64)> {
    match (quantity, units) {
        (Quantity::LengthM, UnitSystem::Imperial) => Some(("_m", "_ft", M_PER_FT)),
        (Quantity::LengthCm, UnitSystem::Imperial) => Some(("_cm", "_in", CM_PER_IN)),
        _ => None,
    }
}

/// Text that a spreadsheet would take for a formula gets an apostrophe in front.
fn harmless(text: &str) -> String {
    let begins = text.trim_start().chars().next();
    if matches!(
        begins,
        Some('=' | '+' | '-' | '@' | '＝' | '＋' | '－' | '＠')
    ) || text.starts_with(['\t', '\r', '\n'])
    {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_are_made_harmless_and_numbers_left_alone() {
        for text in ["=1+1", "+1", "-5", "@a", " =1", "\tx", "＝1"] {
            assert!(harmless(text).starts_with('\''), "{text}");
        }
        assert_eq!(harmless("oak, 5-7 m"), "oak, 5-7 m");
        let column = Column {
            name: "x",
            kind: Kind::Number(Quantity::AngleDeg),
        };
        let value = Value::Number(-3.5);
        assert_eq!(cell(&column, &value, UnitSystem::Metric), "-3.5");
    }

    #[test]
    fn headers_name_the_readers_unit() {
        let column = Column {
            name: "keep_out_m",
            kind: Kind::Reach(Quantity::LengthM),
        };
        assert_eq!(titled(&column, UnitSystem::Metric), "keep_out_m");
        assert_eq!(titled(&column, UnitSystem::Imperial), "keep_out_ft");
        // 11.6 m is 38.06 ft: never rounded down.
        let value = Value::Number(11.6);
        assert_eq!(cell(&column, &value, UnitSystem::Imperial), "38.1");
    }
}
