//! A decay measurement at one height of the stem.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::finding::AT_HEIGHT_M;
use super::id::Id;
use super::measures::{BARK_CM, BEARING_DEG, GIRTH_CM, SE_CM, number};
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Diameter over bark.
    DIAMETER_CM, "section.diameter_cm", LengthCm, 1.0, 1200.0, 1.0
);
number!(
    /// Sound wall under the bark.
    SHELL_CM, "section.shell_cm", LengthCm, 0.0, 600.0, 0.5
);
number!(
    /// Angle of the drill off the radius.
    DRILL_ANGLE_DEG, "section.drill_angle_deg", AngleDeg, 0.0, 60.0, 1.0
);
number!(
    /// Width of an opening along the bark.
    OPENING_CM, "section.opening_cm", LengthCm, 0.0, 1500.0, 1.0
);

/// A decay measurement at one height.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct StemSection {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Height above ground in metres.
    #[schemars(transform = AT_HEIGHT_M.rule())]
    pub height_m: f64,
    /// Girth over bark in centimetres.
    #[schemars(transform = GIRTH_CM.rule())]
    pub girth_cm: Option<f64>,
    /// Diameter over bark in centimetres, where no girth was taken.
    #[schemars(transform = DIAMETER_CM.rule())]
    pub diameter_cm: Option<f64>,
    /// Bark thickness in centimetres.
    #[schemars(transform = BARK_CM.rule())]
    pub bark_cm: Option<f64>,
    /// The mallet clock: eight points from north, clockwise, 45° apart.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schemars(length(max = 8))]
    pub mallet: Vec<MalletSound>,
    /// An opening of the stem.
    pub opening: Option<Opening>,
    /// Readings of the sound wall.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub readings: Vec<ShellReading>,
    /// Notes.
    pub note: Option<String>,
}

/// An opening of the stem.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Opening {
    /// Bearing of its middle.
    #[schemars(transform = BEARING_DEG.rule())]
    pub bearing_deg: f64,
    /// Width along the bark in centimetres.
    #[schemars(transform = OPENING_CM.rule())]
    pub width_cm: f64,
}

/// One reading of the sound wall.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct ShellReading {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Bearing from the stem's centre.
    #[schemars(transform = BEARING_DEG.rule())]
    pub bearing_deg: f64,
    /// Sound wood in centimetres without bark, along the reading's path.
    #[schemars(transform = SHELL_CM.rule())]
    pub shell_cm: f64,
    /// Standard error in centimetres; without it the rule set's value for the method counts.
    #[schemars(transform = SE_CM.rule())]
    pub se_cm: Option<f64>,
    /// How it was read.
    pub method: Option<ShellMethod>,
    /// Angle of a drill off the radius in degrees.
    #[schemars(transform = DRILL_ANGLE_DEG.rule())]
    pub drill_angle_deg: Option<f64>,
}

/// How a sound wall was read.
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
pub enum ShellMethod {
    /// Resistance drill.
    Drill,
    /// Increment core.
    Core,
    /// A rod or tape in the cavity.
    Probe,
    /// Sonic or other section picture.
    SectionPicture,
}

/// What the mallet said.
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
pub enum MalletSound {
    /// Sound.
    Sound,
    /// Dull.
    Dull,
    /// Hollow.
    Hollow,
    /// Not sounded.
    NotSounded,
}
