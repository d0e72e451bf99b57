//! `bolewalk rules`: a rule set, row by row, each with its source.

use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::judge::rules::{RuleLabel, RuleRow, RuleSet};
use bolewalk_core::record::Id;

use super::answer::tell;

pub fn rules(id: &str, only: Option<&str>, json: bool) -> Result<ExitCode, BookError> {
    let set = RuleSet::shipped(&Id::from(id))?;
    let rows: Vec<&RuleRow> = set
        .rows()
        .iter()
        .filter(|row| only.is_none_or(|part| row.id.contains(part)))
        .collect();
    if json {
        let text = serde_json::to_string_pretty(&rows).map_err(|cause| BookError::Defect {
            detail: cause.to_string(),
        })?;
        tell(&text)?;
        return Ok(ExitCode::SUCCESS);
    }
    tell(&format!("{} ({})", set.name(), set.id()))?;
    for row in &rows {
        tell("")?;
        tell(&format!("{} = {}", row.id, amount(row)))?;
        tell(&format!("    {}: {}", label(row.label), row.source))?;
        if !row.note.is_empty() {
            tell(&format!("    {}", row.note))?;
        }
    }
    tell(&format!(
        "\n{} rows. House values can be changed by the crew; local codes come first.",
        rows.len()
    ))?;
    Ok(ExitCode::SUCCESS)
}

fn amount(row: &RuleRow) -> String {
    let unit = row.quantity.unit_symbol();
    let value = row.value;
    match unit {
        "" => value.to_string(),
        "%" | "°" => format!("{value}{unit}"),
        _ => format!("{value} {unit}"),
    }
}

fn label(label: RuleLabel) -> &'static str {
    match label {
        RuleLabel::Confirmed => "confirmed",
        RuleLabel::SecondHand => "second-hand",
        RuleLabel::Memory => "from memory, unconfirmed",
        RuleLabel::CommonPractice => "common practice, no source",
        RuleLabel::House => "house value",
    }
}
