//! What was seen on one tree at one visit.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::afterwards::NearMiss;
use super::anchor::{AnchorPoint, ClimbPlan};
use super::finding::Finding;
use super::id::{Day, Id, Moment};
use super::measures::{BARK_CM, Crown, Girth, Height, Lean, OtherStem, Slope, number};
use super::number_field::NumberField;
use super::photo::Photo;
use super::quantity::Quantity;
use super::risk::RiskEntry;
use super::stem_section::{MalletSound, StemSection};

number!(
    /// Share of the crown lost to dieback.
    DIEBACK_PCT, "inspection.dieback_pct", Percent, 0.0, 100.0, 5.0
);
number!(
    /// Distance from the crown's outline to a conductor, measured on site.
    WIRE_DISTANCE_M, "wire.distance_m", LengthM, 0.0, 200.0, 0.5
);

/// What was seen on one tree at one visit.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Inspection {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The visit, by id; without it the inspection has no date, which is a gap.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub visit: Id,
    /// The moment it was begun.
    pub at: Option<Moment>,
    /// How closely the tree was looked at.
    pub level: InspectionLevel,
    /// Who looked, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub by: Id,
    /// Alive, dying or dead; a gap if nobody said.
    pub life: Option<LifeState>,
    /// When a dead tree died, as far as known.
    pub dead_since: Option<Day>,
    /// Killed by beetles, as far as known.
    pub beetle_killed: Option<bool>,
    /// Share of the crown lost to dieback in percent.
    #[schemars(transform = DIEBACK_PCT.rule())]
    pub dieback_pct: Option<f64>,
    /// Whether there are wires near, as triage asks it.
    pub wires_near: Option<bool>,
    /// Whether base and roots look sound, as triage asks it.
    pub base_sound: Option<bool>,
    /// Height.
    pub height: Option<Height>,
    /// Girth over bark.
    pub girth: Option<Girth>,
    /// Bark thickness in centimetres; without it the species' share counts.
    #[schemars(transform = BARK_CM.rule())]
    pub bark_cm: Option<f64>,
    /// Lean.
    pub lean: Option<Lean>,
    /// Whether the lean is newer than the last look.
    pub lean_is_new: Option<bool>,
    /// Crown.
    pub crown: Option<Crown>,
    /// The ground.
    pub slope: Option<Slope>,
    /// Ground dug or filled, or roots cut, inside the critical root radius.
    pub ground_dug: Option<GroundDug>,
    /// The base sounded with a mallet, north, east, south, west; empty where not sounded.
    pub base_mallet: Option<BaseSounding>,
    /// More stems of the same tree.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub other_stems: Vec<OtherStem>,
    /// Notes.
    pub note: Option<String>,
    /// When to look again.
    pub next_look: Option<Day>,
    /// Distances to conductors measured on site.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub wires: Vec<WireDistance>,
    /// Which parts were really looked at.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub walk_round: Vec<PartLook>,
    /// Defects.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub findings: Vec<Finding>,
    /// Decay measurements.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sections: Vec<StemSection>,
    /// Candidate tie-in points.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub anchors: Vec<AnchorPoint>,
    /// Climb plans.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub plans: Vec<ClimbPlan>,
    /// Photos.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<Photo>,
    /// Risk for the client, as a named assessor entered it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub risks: Vec<RiskEntry>,
    /// What nearly went wrong; for the crew only.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub near_misses: Vec<NearMiss>,
}

/// How closely a tree was looked at.
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
pub enum InspectionLevel {
    /// A stop seen at first sight.
    StopOnSight,
    /// Triage.
    Triage,
    /// The full check.
    FullCheck,
    /// The same tree again that day.
    SameDay,
}

/// Whether a tree lives.
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
pub enum LifeState {
    /// Alive.
    Alive,
    /// Dying.
    Dying,
    /// Dead.
    Dead,
}

/// Ground dug or filled, or roots cut, near the stem.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct GroundDug {
    /// Whether it was.
    pub dug: bool,
    /// When, as far as known.
    pub when: Option<Day>,
    /// Nearest distance to the stem in metres.
    #[schemars(transform = WIRE_DISTANCE_M.rule())]
    pub distance_m: Option<f64>,
    /// Who cleared it, by id, after looking into the roots.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub cleared_by: Id,
}

/// What the mallet said on four sides of the base.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct BaseSounding {
    /// North side.
    pub north: Option<MalletSound>,
    /// East side.
    pub east: Option<MalletSound>,
    /// South side.
    pub south: Option<MalletSound>,
    /// West side.
    pub west: Option<MalletSound>,
}

/// Distance from the crown to a conductor, measured on site.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct WireDistance {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The line, by id.
    pub line: Id,
    /// Nearest distance from the crown's outline in metres.
    #[schemars(transform = WIRE_DISTANCE_M.rule())]
    pub distance_m: Option<f64>,
    /// Whether the tree touches it.
    pub touching: Option<bool>,
}

/// One part of the walk-round.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct PartLook {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The part.
    pub part: WalkPart,
    /// Whether it was seen.
    pub look: Look,
    /// What hid it: ivy, leaves, a wall.
    pub hidden_by: Option<String>,
}

/// The parts of the walk-round, in their order.
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
pub enum WalkPart {
    /// Wires, from a distance.
    Wires,
    /// Hangers, from a distance.
    Hangers,
    /// Insects, from a distance.
    Insects,
    /// Roots.
    Roots,
    /// Base, with a mallet on four sides.
    Base,
    /// Stem, north side.
    StemNorth,
    /// Stem, east side.
    StemEast,
    /// Stem, south side.
    StemSouth,
    /// Stem, west side.
    StemWest,
    /// Unions.
    Unions,
    /// Crown.
    Crown,
}

impl WalkPart {
    /// Every part, in the order of the walk.
    pub const ALL: [WalkPart; 11] = [
        WalkPart::Wires,
        WalkPart::Hangers,
        WalkPart::Insects,
        WalkPart::Roots,
        WalkPart::Base,
        WalkPart::StemNorth,
        WalkPart::StemEast,
        WalkPart::StemSouth,
        WalkPart::StemWest,
        WalkPart::Unions,
        WalkPart::Crown,
    ];
}

/// Whether a part was seen.
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
pub enum Look {
    /// Seen.
    Seen,
    /// Part seen.
    PartSeen,
    /// Not seen.
    NotSeen,
}
