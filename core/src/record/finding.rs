//! One defect: its code, its place on the tree, its grade.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Day, Id};
use super::measures::{BEARING_DEG, number};
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Height on the tree.
    AT_HEIGHT_M, "finding.height_m", LengthM, 0.0, 116.0, 0.5
);
number!(
    /// Ratio of limb to parent diameter at a union.
    ASPECT_RATIO, "finding.aspect_ratio", Ratio, 0.01, 2.0, 0.05
);

/// One defect.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Finding {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The codebook's code, by id.
    pub code: Id,
    /// Part of the tree.
    pub part: TreePart,
    /// Grade 1 to 3; without it the finding is a gap, read as grade 3 meanwhile.
    #[schemars(range(min = 1, max = 3))]
    pub grade: Option<u32>,
    /// Height on the tree in metres.
    #[schemars(transform = AT_HEIGHT_M.rule())]
    pub height_m: Option<f64>,
    /// Side of the tree, bearing from the stem's centre.
    #[schemars(transform = BEARING_DEG.rule())]
    pub side_deg: Option<f64>,
    /// The anchor whose limb it is on, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub anchor: Id,
    /// Ratio of limb to parent diameter, at unions.
    #[schemars(transform = ASPECT_RATIO.rule())]
    pub aspect_ratio: Option<f64>,
    /// Who cleared it, by id; only for codes that can be cleared.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub cleared_by: Id,
    /// When it was cleared.
    pub cleared_on: Option<Day>,
    /// Notes.
    pub note: Option<String>,
    /// Found by the climber aloft, not from the ground.
    pub aloft: Option<bool>,
}

/// Part of a tree that a finding is on.
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
pub enum TreePart {
    /// Roots and the ground over them.
    Roots,
    /// Base and root flare.
    Base,
    /// Stem.
    Stem,
    /// Union.
    Union,
    /// A limb.
    Limb,
    /// Crown.
    Crown,
    /// Around the tree: insects, nests, wires.
    Around,
}
