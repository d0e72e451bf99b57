//! What a person typed, chose or sensed for one input.

use serde::{Deserialize, Serialize};

use crate::record::LatLon;

/// One entry: the input it is for, and the value.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Entry {
    /// The input's id, such as `tree.girth`.
    pub input: String,
    /// What was typed, chosen or sensed.
    pub value: EntryValue,
}

/// One fix as the phone's receiver gave it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct SensedFix {
    /// Latitude in degrees.
    pub lat_deg: f64,
    /// Longitude in degrees.
    pub lon_deg: f64,
    /// Radius that holds the true place with 68 % probability, in metres, where the phone knows it.
    pub accuracy_m: Option<f64>,
    /// When, in milliseconds since 1970 UTC.
    pub at_ms: i64,
}

/// What was typed, chosen or sensed. An empty text or choice clears what was there.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Enum)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum EntryValue {
    /// A number as typed, in the reader's unit or with its own: `188`, `6 ft 2`, `1,80 m`, `NW`.
    Number {
        /// The text.
        typed: String,
    },
    /// One of the choices.
    Choice {
        /// Its id.
        id: String,
    },
    /// Several of the choices.
    Choices {
        /// Their ids.
        ids: Vec<String>,
    },
    /// A text; a day as `2026-05-14`.
    Words {
        /// The text.
        text: String,
    },
    /// Yes or no.
    YesNo {
        /// Whether yes.
        yes: bool,
    },
    /// A bearing from true north as the compass gave it, in degrees.
    Bearing {
        /// 0 to 360, clockwise.
        degrees: f64,
    },
    /// An angle as the tilt sensor gave it, in degrees.
    Tilt {
        /// Up positive.
        degrees: f64,
    },
    /// A position as the receiver gave it.
    Fix {
        /// Latitude in degrees.
        lat_deg: f64,
        /// Longitude in degrees.
        lon_deg: f64,
        /// Radius that holds the true place with 68 % probability, in metres.
        accuracy_m: Option<f64>,
    },
    /// Many fixes of one place, to be averaged.
    Fixes {
        /// The fixes, in the order in which they came.
        fixes: Vec<SensedFix>,
        /// When the person began to take them, in milliseconds since 1970 UTC; older ones are left
        /// out, for a phone hands out old fixes first.
        since_ms: i64,
    },
    /// A place tapped on the plan, as `place_on_plan` gave it.
    OnPlan {
        /// Latitude in degrees.
        lat_deg: f64,
        /// Longitude in degrees.
        lon_deg: f64,
        /// Radius that holds the true place with 68 % probability, in metres.
        accuracy_m: f64,
    },
    /// A photo by its path.
    PhotoFile {
        /// The file.
        path: String,
    },
    /// Points on the ground, in order.
    Outline {
        /// The points; a ring is not closed by repeating its first.
        points: Vec<LatLon>,
    },
}
