//! Candidate tie-in points and the plan of a climb.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::finding::AT_HEIGHT_M;
use super::id::{Day, Id};
use super::measures::{BEARING_DEG, SE_M, number};
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Diameter of the limb at its union, over bark.
    ANCHOR_DIAMETER_CM, "anchor.diameter_cm", LengthCm, 1.0, 300.0, 0.5
);
number!(
    /// Distance of the line from the union.
    FROM_UNION_CM, "anchor.from_union_cm", LengthCm, 0.0, 1000.0, 5.0
);
number!(
    /// Angle of a limb from the vertical.
    LIMB_ANGLE_DEG, "anchor.limb_angle_deg", AngleDeg, 0.0, 150.0, 5.0
);
number!(
    /// Length of a limb.
    LIMB_LENGTH_M, "anchor.limb_length_m", LengthM, 0.1, 40.0, 0.5
);
number!(
    /// Mass on the line at a load test.
    TEST_MASS_KG, "load_test.mass_kg", MassKg, 20.0, 600.0, 5.0
);

/// A candidate tie-in point.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct AnchorPoint {
    /// Id; plans refer to it.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Short name: `A`, `north fork`.
    pub name: Option<String>,
    /// Height in metres.
    #[schemars(transform = AT_HEIGHT_M.rule())]
    pub height_m: Option<f64>,
    /// Standard error of the height in metres.
    #[schemars(transform = SE_M.rule())]
    pub height_se_m: Option<f64>,
    /// Diameter at the union over bark in centimetres; a gap if not read.
    #[schemars(transform = ANCHOR_DIAMETER_CM.rule())]
    pub diameter_cm: Option<f64>,
    /// How the diameter was read.
    pub diameter_read: Option<DiameterRead>,
    /// Diameter of the parent stem at the union in centimetres.
    #[schemars(transform = ANCHOR_DIAMETER_CM.rule())]
    pub parent_diameter_cm: Option<f64>,
    /// Distance of the line from the union in centimetres.
    #[schemars(transform = FROM_UNION_CM.rule())]
    pub from_union_cm: Option<f64>,
    /// Angle of the limb from the vertical in degrees; a gap if not read.
    #[schemars(transform = LIMB_ANGLE_DEG.rule())]
    pub limb_angle_deg: Option<f64>,
    /// Bearing of the limb from the stem.
    #[schemars(transform = BEARING_DEG.rule())]
    pub limb_bearing_deg: Option<f64>,
    /// Length of the limb in metres; without it the crown radius counts.
    #[schemars(transform = LIMB_LENGTH_M.rule())]
    pub limb_length_m: Option<f64>,
    /// The union.
    pub union: Option<UnionForm>,
    /// Alive, or not.
    pub state: Option<AnchorState>,
    /// Load test.
    pub load_test: Option<LoadTest>,
    /// Notes.
    pub note: Option<String>,
}

/// How a diameter aloft was read.
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
pub enum DiameterRead {
    /// By tape aloft.
    TapeAloft,
    /// Beside something of known size.
    BesideKnownSize,
    /// On a scaled photo.
    ScaledPhoto,
    /// By eye.
    ByEye,
}

/// The form of a union.
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
pub enum UnionForm {
    /// Bark ridge raised, no included bark.
    BarkRidge,
    /// Included bark.
    IncludedBark,
    /// Cracked or opening.
    Opening,
    /// Not to be seen from here.
    NotSeen,
}

/// The state of the wood an anchor is on.
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
pub enum AnchorState {
    /// Live wood, grown from the start.
    Live,
    /// Regrowth from an old topping cut.
    Regrowth,
    /// A dead limb.
    Dead,
    /// A dead stub.
    DeadStub,
}

/// A load test: two people's weight on the line alone, nobody beneath, the anchor watched.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct LoadTest {
    /// What the anchor did.
    pub outcome: LoadTestOutcome,
    /// Mass on the line in kilograms.
    #[schemars(transform = TEST_MASS_KG.rule())]
    pub mass_kg: Option<f64>,
    /// The day.
    pub on: Option<Day>,
    /// Who watched, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub by: Id,
}

/// What an anchor did under the load test.
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
pub enum LoadTestOutcome {
    /// Held.
    Held,
    /// Moved.
    Moved,
    /// Cracked.
    Cracked,
    /// Sank.
    Sank,
}

/// A climb plan; the route follows from it.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct ClimbPlan {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The anchor, by id.
    pub anchor: Id,
    /// Rope system.
    pub system: RopeSystem,
    /// Side of ascent, bearing from the stem.
    #[schemars(transform = BEARING_DEG.rule())]
    pub ascent_side_deg: Option<f64>,
    /// Limbs to be reached.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limbs: Vec<LimbToReach>,
    /// The climber, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub climber: Id,
    /// The second person, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub second: Id,
    /// Climbed on spurs.
    pub spurs: Option<bool>,
    /// The moving-rope system is open (needs a stopper knot) or closed.
    pub open_system: Option<bool>,
    /// A stopper knot is tied at the end of the line.
    pub stopper: Option<bool>,
}

/// A limb that the climb has to reach.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct LimbToReach {
    /// Bearing from the stem.
    #[schemars(transform = BEARING_DEG.rule())]
    pub bearing_deg: f64,
    /// Height in metres.
    #[schemars(transform = AT_HEIGHT_M.rule())]
    pub height_m: Option<f64>,
}

/// A rope system.
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
pub enum RopeSystem {
    /// Moving rope: the line runs over the anchor.
    MovingRope,
    /// Stationary rope that ends at the anchor.
    StationaryCrown,
    /// Stationary rope tied at the base: the anchor carries twice.
    StationaryBase,
}
