//! One row of a rule set, and the bands that go by voltage or altitude.

use serde::{Deserialize, Serialize};

use crate::record::Quantity;

/// How sure the source of a value is.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum RuleLabel {
    /// Read in the published work itself.
    Confirmed,
    /// Read where another work quotes or sums up the published one.
    SecondHand,
    /// Recalled, not read.
    Memory,
    /// Used in the trade, no published source found.
    CommonPractice,
    /// A house value: chosen by the method or the crew.
    House,
}

/// One row of a rule set.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
#[serde(deny_unknown_fields)]
pub struct RuleRow {
    /// The row's id, such as `zone.fell.everyone_lengths`.
    pub id: String,
    /// The value in the base unit of its quantity.
    pub value: f64,
    /// What it measures.
    pub quantity: Quantity,
    /// The published work it is from, or that it is a house value.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
    /// Smallest value a crew may set; without it the value stays.
    pub min: Option<f64>,
    /// Largest value a crew may set; without it the value stays.
    pub max: Option<f64>,
    /// What the value means.
    #[serde(default)]
    pub note: String,
    /// Who of the crew changed it, by name.
    #[serde(default, skip_deserializing)]
    pub changed_by: Option<String>,
}

/// What stands in for a row that is not there: no comparison with it holds.
pub(super) static MISSING: RuleRow = RuleRow {
    id: String::new(),
    value: f64::NAN,
    quantity: Quantity::Ratio,
    source: String::new(),
    label: RuleLabel::Memory,
    min: None,
    max: None,
    note: String::new(),
    changed_by: None,
};

/// Least approach distance of line-clearance qualified people for a band of voltages.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ApproachBand {
    /// Phase-to-phase voltage above which the band begins, in kilovolts.
    pub over_kv: f64,
    /// Phase-to-phase voltage up to and including which it holds, in kilovolts.
    pub to_kv: f64,
    /// Distance for phase-to-ground exposure in metres; nothing means no contact at all.
    pub phase_to_ground_m: Option<f64>,
    /// Distance for phase-to-phase exposure in metres; nothing means no contact at all.
    pub phase_to_phase_m: Option<f64>,
    /// The published work.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
}

/// Factor on the approach distances of qualified people for a band of altitudes.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AltitudeBand {
    /// Altitude up to and including which it holds, in metres.
    pub to_m: f64,
    /// The factor, 1 or more.
    pub factor: f64,
    /// The published work.
    pub source: String,
    /// How sure that source is.
    pub label: RuleLabel,
}
