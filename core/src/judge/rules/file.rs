//! Reading a rule set's file: every fault at once, with its place.

use std::collections::BTreeMap;

use serde::Deserialize;

use super::row::{AltitudeBand, ApproachBand, RuleLabel, RuleRow};
use super::{Rule, RuleSet};
use crate::error::BookError;
use crate::record::{Fault, Id};

/// The format of rule set files that this version writes and reads.
const FORMAT: u32 = 1;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RuleFile {
    format: u32,
    id: String,
    name: String,
    row: Vec<RuleRow>,
    #[serde(default)]
    approach_band: Vec<ApproachBand>,
    #[serde(default)]
    altitude_band: Vec<AltitudeBand>,
}

pub(super) fn read(text: &str) -> Result<RuleSet, BookError> {
    let file: RuleFile = toml::from_str(text).map_err(|error| {
        let line = error
            .span()
            .and_then(|span| text.get(..span.start))
            .map_or(1, |before| before.matches('\n').count() + 1);
        BookError::refused(Fault::new(
            "fault.syntax",
            format!("line {line}"),
            error.message(),
            "a rule set in TOML",
        ))
    })?;
    if file.format > FORMAT {
        return Err(BookError::Newer {
            place: format!("rule set {}", file.id),
            found: file.format,
            known: FORMAT,
        });
    }
    let mut faults = band_faults(&file);
    let rows = sorted_rows(file.row, &mut faults);
    if !faults.is_empty() {
        return Err(BookError::Refused { faults });
    }
    Ok(RuleSet {
        id: Id(file.id),
        name: file.name,
        rows,
        approach_bands: file.approach_band,
        altitude_bands: file.altitude_band,
    })
}

/// The rows in the order of [`Rule::ALL`]; what is missing, unknown, doubled or wrong is a fault.
fn sorted_rows(rows: Vec<RuleRow>, faults: &mut Vec<Fault>) -> Vec<RuleRow> {
    let mut by_rule = BTreeMap::new();
    for row in rows {
        let place = format!("/row/{}", row.id);
        row_faults(&row, &place, faults);
        let Some(rule) = Rule::of_id(&row.id) else {
            faults.push(Fault::new(
                "fault.unknown-rule",
                place,
                &row.id,
                "a rule of this version",
            ));
            continue;
        };
        if let Some(earlier) = by_rule.insert(rule, row) {
            faults.push(Fault::new(
                "fault.doubled",
                place,
                earlier.id,
                "each row once",
            ));
        }
    }
    let mut sorted = Vec::with_capacity(Rule::ALL.len());
    for rule in Rule::ALL {
        match by_rule.remove(rule) {
            Some(row) => sorted.push(row),
            None => faults.push(Fault::new(
                "fault.missing",
                format!("/row/{}", rule.id()),
                "",
                "a row with value, quantity, source and label",
            )),
        }
    }
    sorted
}

fn row_faults(row: &RuleRow, place: &str, faults: &mut Vec<Fault>) {
    if row.source.trim().is_empty() {
        faults.push(Fault::new(
            "fault.missing",
            format!("{place}/source"),
            "",
            "the published work, or that it is a house value",
        ));
    }
    let low = row.min.unwrap_or(f64::NEG_INFINITY);
    let high = row.max.unwrap_or(f64::INFINITY);
    if !(row.value.is_finite() && low <= row.value && row.value <= high) {
        faults.push(Fault::new(
            "fault.out-of-range",
            format!("{place}/value"),
            row.value,
            format!("{low} to {high}"),
        ));
    }
    let editable = row.min.is_some() && row.max.is_some();
    if row.label == RuleLabel::House && !editable {
        faults.push(Fault::new(
            "fault.missing",
            format!("{place}/min"),
            "",
            "min and max: a house value may be changed",
        ));
    }
}

/// Bands must follow each other without a gap and never get smaller.
fn band_faults(file: &RuleFile) -> Vec<Fault> {
    let mut faults = Vec::new();
    for pair in file.approach_band.windows(2) {
        let [lower, upper] = pair else { continue };
        let grows = lower.phase_to_ground_m <= upper.phase_to_ground_m
            && lower.phase_to_phase_m <= upper.phase_to_phase_m;
        if lower.to_kv != upper.over_kv || !grows {
            faults.push(Fault::new(
                "fault.bands",
                format!("/approach_band/over {} kV", upper.over_kv),
                upper.over_kv,
                format!("begins at {} kV and is no smaller", lower.to_kv),
            ));
        }
    }
    for pair in file.altitude_band.windows(2) {
        let [lower, upper] = pair else { continue };
        if lower.to_m >= upper.to_m || lower.factor > upper.factor {
            faults.push(Fault::new(
                "fault.bands",
                format!("/altitude_band/to {} m", upper.to_m),
                upper.to_m,
                format!("more than {} m and no smaller", lower.to_m),
            ));
        }
    }
    faults
}

#[cfg(test)]
mod tests {
    use super::*;

    const US: &str = include_str!("../../../data/rulesets/us.toml");

    fn faults_of(text: &str) -> Vec<Fault> {
        match read(text) {
            Err(BookError::Refused { faults }) => faults,
            other => panic!("not refused: {other:?}"),
        }
    }

    #[test]
    fn a_missing_an_unknown_and_a_sourceless_row_are_all_named_at_once() {
        let text = US
            .replace("id = \"stop.wind_force\"", "id = \"stop.wind\"")
            .replacen("source = \"Bolewalk house value\"", "source = \" \"", 1);
        let faults = faults_of(&text);
        let places: Vec<_> = faults.iter().map(|f| f.place.as_str()).collect();
        assert!(places.contains(&"/row/stop.wind_force"));
        assert!(places.contains(&"/row/stop.wind"));
        assert!(places.contains(&"/row/measure.height.tangent_cv/source"));
    }

    #[test]
    fn a_syntax_error_has_its_line_and_a_newer_format_is_left_alone() {
        let broken = US.replacen("value = 1.37", "value = ", 1);
        assert_eq!(faults_of(&broken)[0].place, "line 10");
        let newer = US.replacen("format = 1", "format = 2", 1);
        assert!(matches!(
            read(&newer),
            Err(BookError::Newer {
                found: 2,
                known: 1,
                ..
            })
        ));
    }

    #[test]
    fn bands_with_a_gap_or_that_shrink_are_refused() {
        let gap = US.replacen("over_kv = 15.0", "over_kv = 16.0", 1);
        assert_eq!(faults_of(&gap)[0].code, "fault.bands");
        let shrinks = US.replacen("phase_to_ground_m = 0.84", "phase_to_ground_m = 0.5", 1);
        assert_eq!(faults_of(&shrinks)[0].code, "fault.bands");
    }
}
