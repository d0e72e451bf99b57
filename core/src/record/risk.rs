//! Risk for the client, as a named assessor entered it; never derived from the score.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::Id;
use super::measures::number;
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Time frame of a risk rating.
    TIME_FRAME_MONTHS, "risk.time_frame_months", DurationMonths, 1.0, 120.0, 1.0
);

/// Risk to one target.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct RiskEntry {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The target, by id.
    pub target: Id,
    /// The part of the tree that could fail, in words.
    pub part: Option<String>,
    /// The assessor, by name.
    #[schemars(length(min = 1, max = 200))]
    pub assessor: String,
    /// Level of assessment: 1 limited visual, 2 basic, 3 advanced.
    #[schemars(range(min = 1, max = 3))]
    pub level: u32,
    /// Time frame in months.
    #[schemars(transform = TIME_FRAME_MONTHS.rule())]
    pub time_frame_months: f64,
    /// Likelihood of failure.
    pub failure: FailureLikelihood,
    /// Likelihood of impact.
    pub impact: ImpactLikelihood,
    /// Consequences.
    pub consequences: Consequences,
}

/// Likelihood of failure.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum FailureLikelihood {
    /// Improbable.
    Improbable,
    /// Possible.
    Possible,
    /// Probable.
    Probable,
    /// Imminent.
    Imminent,
}

/// Likelihood of impact.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum ImpactLikelihood {
    /// Very low.
    VeryLow,
    /// Low.
    Low,
    /// Medium.
    Medium,
    /// High.
    High,
}

/// Consequences of an impact.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum Consequences {
    /// Negligible.
    Negligible,
    /// Minor.
    Minor,
    /// Significant.
    Significant,
    /// Severe.
    Severe,
}

/// Likelihood of failure and impact together.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum CombinedLikelihood {
    /// Unlikely.
    Unlikely,
    /// Somewhat likely.
    SomewhatLikely,
    /// Likely.
    Likely,
    /// Very likely.
    VeryLikely,
}

/// A risk rating.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum RiskRating {
    /// Low.
    Low,
    /// Moderate.
    Moderate,
    /// High.
    High,
    /// Extreme.
    Extreme,
}
