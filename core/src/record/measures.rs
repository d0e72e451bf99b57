//! The measures of a tree: each a value with its standard error and the method it was taken by.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::number_field::NumberField;
use super::quantity::Quantity;

macro_rules! number {
    ($(#[$doc:meta])* $name:ident, $id:literal, $quantity:ident, $min:literal, $max:literal, $step:literal) => {
        $(#[$doc])*
        pub const $name: NumberField = NumberField {
            id: $id,
            quantity: Quantity::$quantity,
            min: $min,
            max: $max,
            step: $step,
        };
    };
}
pub(crate) use number;

number!(
    /// Height of the tip above the base. No tree is known to stand taller than about 116 m (from memory).
    HEIGHT_M, "height.height_m", LengthM, 0.5, 116.0, 0.5
);
number!(
    /// Standard error of a length in metres.
    SE_M, "measure.se_m", LengthM, 0.0, 60.0, 0.1
);
number!(
    /// Girth over bark.
    GIRTH_CM, "girth.girth_cm", LengthCm, 3.0, 3500.0, 1.0
);
number!(
    /// Standard error of a length in centimetres.
    SE_CM, "measure.se_cm", LengthCm, 0.0, 500.0, 0.5
);
number!(
    /// Height at which a girth was taken.
    GIRTH_AT_M, "girth.at_height_m", LengthM, 0.0, 116.0, 0.05
);
number!(
    /// Lean from the vertical.
    LEAN_DEG, "lean.lean_deg", AngleDeg, 0.0, 80.0, 1.0
);
number!(
    /// Standard error of an angle in degrees.
    SE_DEG, "measure.se_deg", AngleDeg, 0.0, 45.0, 0.5
);
number!(
    /// A bearing from true north.
    BEARING_DEG, "measure.bearing_deg", BearingDeg, 0.0, 360.0, 5.0
);
number!(
    /// Crown radius, the largest.
    CROWN_RADIUS_M, "crown.radius_m", LengthM, 0.1, 40.0, 0.5
);
number!(
    /// Height of the crown base.
    CROWN_BASE_M, "crown.base_m", LengthM, 0.0, 100.0, 0.5
);
number!(
    /// Bark thickness.
    BARK_CM, "bark.bark_cm", LengthCm, 0.0, 60.0, 0.1
);
number!(
    /// Slope of the ground, rise over run in percent.
    SLOPE_PCT, "slope.slope_pct", Percent, 0.0, 300.0, 5.0
);

/// Height of the tip above the base, not stem length.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Height {
    /// Height in metres.
    #[schemars(transform = HEIGHT_M.rule())]
    pub height_m: f64,
    /// Standard error in metres; without it the rule set's value for the method counts.
    #[schemars(transform = SE_M.rule())]
    pub se_m: Option<f64>,
    /// How it was measured.
    pub method: Option<HeightMethod>,
}

/// How a height was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum HeightMethod {
    /// Two angles and a level distance.
    Tangent,
    /// Two percent readings and a level distance.
    Percent,
    /// Two angles and two slope distances.
    Sine,
    /// Two positions on one line.
    TwoPositions,
    /// A stick and similar triangles.
    Stick,
    /// A tape or a pole up the tree.
    Tape,
    /// By eye.
    ByEye,
    /// Taken over from another inventory.
    TakenOver,
}

/// How the distance to a tree was taken; it decides how sure a height is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DistanceBy {
    /// A tape, held level.
    Tape,
    /// Counted paces.
    Paces,
}

/// Girth over bark.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Girth {
    /// Girth in centimetres.
    #[schemars(transform = GIRTH_CM.rule())]
    pub girth_cm: f64,
    /// Standard error in centimetres; without it the rule set's value for the method counts.
    #[schemars(transform = SE_CM.rule())]
    pub se_cm: Option<f64>,
    /// How it was measured.
    pub method: Option<GirthMethod>,
    /// Height of the tape above ground in metres; without it the rule set's breast height.
    #[schemars(transform = GIRTH_AT_M.rule())]
    pub at_height_m: Option<f64>,
}

/// How a girth was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum GirthMethod {
    /// Tape around the stem.
    Tape,
    /// Diameter tape, callipers or a diameter turned into girth.
    Diameter,
    /// By eye.
    ByEye,
    /// Taken over from another inventory.
    TakenOver,
}

/// Lean of the stem from the vertical.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Lean {
    /// Lean in degrees.
    #[schemars(transform = LEAN_DEG.rule())]
    pub lean_deg: f64,
    /// Bearing from true north it leans toward.
    #[schemars(transform = BEARING_DEG.rule())]
    pub toward_deg: Option<f64>,
    /// Standard error in degrees; without it the rule set's value for the method counts.
    #[schemars(transform = SE_DEG.rule())]
    pub se_deg: Option<f64>,
    /// How it was measured.
    pub method: Option<LeanMethod>,
}

/// How a lean was measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum LeanMethod {
    /// By eye.
    ByEye,
    /// Two plumb readings at right angles.
    TwoSides,
    /// One plumb reading, seen from the side of the lean.
    OneSide,
    /// Taken over from another inventory.
    TakenOver,
}

/// The crown: its largest reach and where it begins.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Crown {
    /// Largest radius in metres.
    #[schemars(transform = CROWN_RADIUS_M.rule())]
    pub radius_m: f64,
    /// Standard error of the radius in metres; by paces ± 1 m.
    #[schemars(transform = SE_M.rule())]
    pub radius_se_m: Option<f64>,
    /// Height of the lowest live limbs in metres.
    #[schemars(transform = CROWN_BASE_M.rule())]
    pub base_m: Option<f64>,
}

/// The ground under the tree.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Slope {
    /// Rise over run in percent.
    #[schemars(transform = SLOPE_PCT.rule())]
    pub slope_pct: f64,
    /// Bearing from true north that points downhill.
    #[schemars(transform = BEARING_DEG.rule())]
    pub downhill_deg: Option<f64>,
}

/// Another stem of the same tree, from its own base or a low fork.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct OtherStem {
    /// Its height.
    pub height: Option<Height>,
    /// Its girth.
    pub girth: Option<Girth>,
    /// Its lean.
    pub lean: Option<Lean>,
}
