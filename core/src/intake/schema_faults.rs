//! Turns what a schema check found into faults: one for every slip, each with its place, what was
//! found and what is allowed.

use jsonschema::{ValidationError, error::ValidationErrorKind};
use serde_json::Value;

use crate::record::Fault;

/// Every fault that the schema finds in `value`, in the order of their places.
pub(super) fn schema_faults(schema: &Value, value: &Value) -> Result<Vec<Fault>, String> {
    let validator = jsonschema::validator_for(schema).map_err(|error| error.to_string())?;
    let mut faults = Vec::new();
    for error in validator.iter_errors(value) {
        unfold(&error, &mut faults);
    }
    faults.sort_by(|a, b| a.place.cmp(&b.place).then_with(|| a.code.cmp(&b.code)));
    faults.dedup();
    Ok(faults)
}

/// An optional record is "a record or null": only the record's own faults help a person.
fn unfold(error: &ValidationError<'_>, faults: &mut Vec<Fault>) {
    match error.kind() {
        ValidationErrorKind::AnyOf { context } => {
            let meant = context.iter().filter(|branch| !only_wants_null(branch));
            for inner in meant.flatten() {
                unfold(inner, faults);
            }
        }
        ValidationErrorKind::OneOfNotValid { context } => unfold_choice(error, context, faults),
        ValidationErrorKind::AdditionalProperties { unexpected } => {
            let place = error.instance_path().to_string();
            for name in unexpected {
                faults.push(Fault::new(
                    "fault.unknown-field",
                    format!("{place}/{name}"),
                    name,
                    "",
                ));
            }
        }
        kind => faults.push(plain_fault(error, kind)),
    }
}

fn only_wants_null(branch: &[ValidationError<'_>]) -> bool {
    matches!(branch, [one] if matches!(one.kind(), ValidationErrorKind::Type { .. })
        && one.to_string().contains("\"null\""))
}

fn unfold_choice(
    error: &ValidationError<'_>,
    context: &[Vec<ValidationError<'static>>],
    faults: &mut Vec<Fault>,
) {
    let allowed: Vec<String> = context
        .iter()
        .flatten()
        .filter_map(|inner| match inner.kind() {
            ValidationErrorKind::Constant { expected_value } => Some(plain(expected_value)),
            ValidationErrorKind::Enum { options } => options
                .as_array()
                .map(|all| all.iter().map(plain).collect::<Vec<_>>().join(", ")),
            _ => None,
        })
        .collect();
    faults.push(Fault::new(
        "fault.not-a-choice",
        error.instance_path().to_string(),
        plain(error.instance()),
        allowed.join(", "),
    ));
}

fn plain_fault(error: &ValidationError<'_>, kind: &ValidationErrorKind) -> Fault {
    let place = error.instance_path().to_string();
    let found = plain(error.instance());
    match kind {
        ValidationErrorKind::Minimum { limit } => {
            Fault::new("fault.too-small", place, found, plain(limit))
        }
        ValidationErrorKind::Maximum { limit } => {
            Fault::new("fault.too-large", place, found, plain(limit))
        }
        ValidationErrorKind::Required { property } => {
            Fault::new("fault.missing-field", place, "", plain(property))
        }
        ValidationErrorKind::Type { .. } => {
            let wanted = error.to_string();
            let wanted = wanted.rsplit("type").next().unwrap_or_default();
            Fault::new(
                "fault.wrong-type",
                place,
                found,
                wanted.trim().replace('"', ""),
            )
        }
        ValidationErrorKind::Pattern { .. } => {
            Fault::new("fault.not-a-day", place, found, "2026-05-14")
        }
        ValidationErrorKind::Enum { options } => {
            Fault::new("fault.not-a-choice", place, found, plain(options))
        }
        ValidationErrorKind::Constant { expected_value } => {
            Fault::new("fault.not-a-choice", place, found, plain(expected_value))
        }
        ValidationErrorKind::MinItems { limit } => Fault::new(
            "fault.too-few",
            place,
            count(error.instance()),
            limit.to_string(),
        ),
        ValidationErrorKind::MaxItems { limit } => Fault::new(
            "fault.too-many",
            place,
            count(error.instance()),
            limit.to_string(),
        ),
        ValidationErrorKind::MinLength { limit } => {
            Fault::new("fault.too-short", place, found, limit.to_string())
        }
        ValidationErrorKind::MaxLength { limit } => {
            Fault::new("fault.too-long", place, found, limit.to_string())
        }
        _ => Fault::new("fault.does-not-fit", place, found, error.to_string()),
    }
}

fn plain(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => other.to_string(),
    }
}

fn count(value: &Value) -> usize {
    value.as_array().map_or(0, Vec::len)
}
