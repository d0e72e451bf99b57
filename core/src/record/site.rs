//! A client's property: outline, targets, overhead lines, permissions, rescue plan.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Day, Id};
use super::measures::number;
use super::number_field::NumberField;
use super::place::LatLon;
use super::quantity::Quantity;
use super::tree::Tree;
use super::visit::Visit;

number!(
    /// Voltage of a line.
    VOLTAGE_KV, "line.voltage_kv", VoltageKv, 0.01, 1200.0, 0.1
);
number!(
    /// Height of the lowest conductor above ground.
    LINE_HEIGHT_M, "line.height_m", LengthM, 1.0, 120.0, 0.5
);

/// A client's property.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Site {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The property's name, as the crew calls it.
    #[schemars(length(min = 1, max = 200))]
    pub name: String,
    /// The client's name.
    pub client: Option<String>,
    /// Address or directions.
    pub address: Option<String>,
    /// Rule set by its id, such as `us`.
    pub rule_set: Option<Id>,
    /// Property edge, a ring of at least three points, not crossing itself.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub outline: Vec<LatLon>,
    /// What must happen first if somebody is hurt.
    pub rescue: Option<RescuePlan>,
    /// Notes.
    pub note: Option<String>,
    /// What could be hit.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub targets: Vec<Target>,
    /// Conductors near the trees. An empty list with `no_lines_seen` unset is a gap, not a pass.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lines: Vec<OverheadLine>,
    /// Permissions asked.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub permissions: Vec<Permission>,
    /// Days on the site.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub visits: Vec<Visit>,
    /// The trees.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub trees: Vec<Tree>,
}

/// What must happen first if somebody is hurt.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct RescuePlan {
    /// Where the ambulance is met.
    pub meeting_point: Option<String>,
    /// Grid reference or coordinates to read out.
    pub grid_reference: Option<String>,
    /// Phone signal on the site.
    pub signal: Option<PhoneSignal>,
    /// The first-aider's id.
    pub first_aider: Option<Id>,
    /// The nearest unit that takes casualties.
    pub casualty_unit: Option<String>,
}

/// Phone signal on a site.
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
pub enum PhoneSignal {
    /// Good everywhere.
    Good,
    /// In places only.
    Patchy,
    /// None on the site.
    NoSignal,
}

/// What could be hit or is under the trees.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Target {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Name, as the crew calls it.
    #[schemars(length(min = 1, max = 200))]
    pub name: String,
    /// What it is.
    pub kind: TargetKind,
    /// How often somebody is there; a gap if unknown.
    pub occupancy: Option<Occupancy>,
    /// Whether it can be moved for the day.
    pub can_be_moved: Option<bool>,
    /// Whether it can be closed for the day.
    pub can_be_closed: Option<bool>,
    /// Belongs to a neighbour.
    pub neighbours: Option<bool>,
    /// How `ground` is meant.
    pub form: GroundForm,
    /// Its place on the ground: one point, a way, or a ring.
    #[schemars(length(min = 1))]
    pub ground: Vec<LatLon>,
}

/// How a list of points is meant.
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
pub enum GroundForm {
    /// A single point.
    Spot,
    /// A way, from point to point.
    Way,
    /// A ring around an area.
    Area,
}

/// What a target is.
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
pub enum TargetKind {
    /// A house or flat.
    Dwelling,
    /// Shed, garage, greenhouse.
    Outbuilding,
    /// Public or private road.
    Road,
    /// Footpath or sidewalk.
    Path,
    /// Garden, lawn, terrace.
    Garden,
    /// Parking or drive.
    Parking,
    /// Playground, pool, seats.
    Play,
    /// Fence or wall.
    Fence,
    /// Pipes, tanks, buried or ground services.
    Services,
    /// Livestock or a stable.
    Animals,
    /// Something else.
    Other,
}

/// How often a target is occupied.
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
pub enum Occupancy {
    /// Rare.
    Rare,
    /// Occasional.
    Occasional,
    /// Frequent.
    Frequent,
    /// Constant.
    Constant,
}

/// A conductor near the trees.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct OverheadLine {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Name, as the crew calls it.
    #[schemars(length(min = 1, max = 200))]
    pub name: String,
    /// What it is.
    pub kind: LineKind,
    /// Voltage in kilovolts; without it the voltage is unknown, which is a stop nearby.
    #[schemars(transform = VOLTAGE_KV.rule())]
    pub voltage_kv: Option<f64>,
    /// What the voltage is measured between; unknown counts as phase to phase.
    pub voltage_between: Option<VoltageBetween>,
    /// Height of the lowest conductor in metres.
    #[schemars(transform = LINE_HEIGHT_M.rule())]
    pub height_m: Option<f64>,
    /// Whether its owner was told, and when.
    pub owner_told: Option<Day>,
    /// Confirmed dead by its owner for the day of work.
    pub dead_on: Option<Day>,
    /// Its way over the ground.
    #[schemars(length(min = 2))]
    pub way: Vec<LatLon>,
}

/// What an overhead line is.
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
pub enum LineKind {
    /// Transmission on towers.
    Transmission,
    /// Distribution at medium voltage.
    Distribution,
    /// Low-voltage service to a building.
    Service,
    /// Telephone, cable.
    Communication,
    /// Contact line of a railway.
    Railway,
    /// Not known.
    Unknown,
}

/// What a voltage is measured between.
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
pub enum VoltageBetween {
    /// Phase to phase.
    Phases,
    /// Phase to ground.
    PhaseAndGround,
}

/// A permission that had to be asked.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Permission {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// What was asked.
    pub kind: PermissionKind,
    /// The answer; without it nobody asked yet.
    pub answer: Option<PermissionAnswer>,
    /// When it was answered.
    pub on: Option<Day>,
    /// The tree it is about, empty for the site.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub tree: Id,
    /// Conditions and reference.
    pub note: Option<String>,
}

/// What a permission is about.
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
pub enum PermissionKind {
    /// The owner's consent.
    Owner,
    /// A protected tree or area.
    ProtectedTree,
    /// The neighbour.
    Neighbour,
    /// Nesting birds.
    Nests,
    /// Bats and their roosts.
    Bats,
    /// Quarantine for pests or disease.
    Quarantine,
    /// Closing a road or a path.
    RoadClosure,
}

/// The answer to a permission.
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
pub enum PermissionAnswer {
    /// Given.
    Given,
    /// Refused.
    Refused,
    /// Looked into: not needed here.
    NotNeeded,
    /// Asked, no answer yet.
    Waiting,
}
