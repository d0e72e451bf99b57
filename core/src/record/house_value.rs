//! A value of the rule set that the crew has changed.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Day, Id};

/// A value of the rule set that the crew has changed, with who and why.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct HouseValue {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The rule set, such as `us`.
    pub rule_set: Id,
    /// The row of the rule set.
    pub row: String,
    /// The value in the row's unit.
    pub value: f64,
    /// Who decided it, by name.
    #[schemars(length(min = 1, max = 200))]
    pub by: String,
    /// When.
    pub on: Option<Day>,
    /// Why.
    pub why: Option<String>,
}
