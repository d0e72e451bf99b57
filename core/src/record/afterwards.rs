//! What a climb leaves behind: work done or not done and why, and near misses.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Day, Id, Moment};

/// What became of a piece of work.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct WorkOutcome {
    /// Done, part done, not done.
    pub done: WorkDone,
    /// Why it was not done, or not all of it.
    pub why: Option<UndoneBecause>,
    /// What is left, in words for the client.
    pub left: Option<String>,
    /// The day.
    pub on: Option<Day>,
}

/// How far a piece of work got.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum WorkDone {
    /// All of it.
    Done,
    /// Part of it.
    PartDone,
    /// None of it.
    NotDone,
}

/// Why work was not done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum UndoneBecause {
    /// Wind, ice, thunder.
    Weather,
    /// No daylight left.
    Daylight,
    /// Too near a conductor.
    Wires,
    /// Insects, a nest, a roost.
    Animals,
    /// Found aloft: not safe to go on.
    FoundAloft,
    /// Gear was missing or failed.
    Gear,
    /// The client asked for less.
    Client,
    /// Something else.
    Other,
}

/// Something that nearly went wrong. It is for the crew to learn from, and on no client's paper.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct NearMiss {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// What happened, in the crew's words.
    #[schemars(length(min = 1, max = 2000))]
    pub what: String,
    /// When it was noted.
    pub at: Option<Moment>,
    /// Who noted it, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub by: Id,
}
