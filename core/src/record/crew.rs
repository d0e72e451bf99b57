//! People, their sign-offs, and the gear.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::anchor::RopeSystem;
use super::id::{Day, Id};
use super::measures::number;
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Mass of a climber with gear.
    CLIMBER_MASS_KG, "person.mass_with_gear_kg", MassKg, 40.0, 200.0, 1.0
);
number!(
    /// Height a trainee may climb to.
    HEIGHT_LIMIT_M, "person.height_limit_m", LengthM, 0.5, 60.0, 0.5
);
number!(
    /// Height a person's throw line reaches.
    THROW_M, "person.throw_m", LengthM, 1.0, 40.0, 1.0
);
number!(
    /// Breaking strength as marked.
    RATING_KN, "gear.rating_kn", ForceKn, 0.5, 100.0, 0.5
);
number!(
    /// Diameter of a line.
    ROPE_MM, "gear.diameter_mm", LengthMm, 1.0, 30.0, 0.1
);
number!(
    /// Length of a line.
    ROPE_LENGTH_M, "gear.length_m", LengthM, 0.5, 200.0, 1.0
);
number!(
    /// Time a knot took.
    KNOT_S, "sign_off.seconds", DurationS, 1.0, 3600.0, 5.0
);

number!(
    /// Height reached on a logged climb.
    CLIMBED_M, "logged_climb.height_m", LengthM, 0.5, 116.0, 0.5
);

/// One person of the crew.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Person {
    /// Id.
    pub id: Id,
    /// Name.
    #[schemars(length(min = 1, max = 200))]
    pub name: String,
    /// A trainee: somebody signed off stays within reach.
    #[serde(default)]
    pub trainee: bool,
    /// Mass with gear in kilograms.
    #[schemars(transform = CLIMBER_MASS_KG.rule())]
    pub mass_with_gear_kg: Option<f64>,
    /// Height limit in metres, for trainees.
    #[schemars(transform = HEIGHT_LIMIT_M.rule())]
    pub height_limit_m: Option<f64>,
    /// Height the person's throw line reaches in metres.
    #[schemars(transform = THROW_M.rule())]
    pub throw_m: Option<f64>,
    /// Qualification near electricity; unqualified unless recorded.
    pub electrical: Option<ElectricalLevel>,
    /// Sign-offs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sign_offs: Vec<SignOff>,
    /// The log of climbs, for trainees.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub climbs: Vec<LoggedClimb>,
}

/// Qualification near electricity.
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
pub enum ElectricalLevel {
    /// Not qualified.
    Unqualified,
    /// Line-clearance qualified.
    LineClearance,
}

/// A skill of one person, confirmed by a named other.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct SignOff {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The skill.
    pub skill: Skill,
    /// Which knot, by what it is for; only for knots.
    pub knot: Option<KnotUse>,
    /// Who confirmed it, by name.
    #[schemars(length(min = 1, max = 200))]
    pub by: String,
    /// The day.
    pub on: Day,
    /// Ends on this day.
    pub until: Option<Day>,
    /// Seconds it took; noted, never required.
    #[schemars(transform = KNOT_S.rule())]
    pub seconds: Option<f64>,
}

/// One climb in a person's log: where, how high, on what rope system, with whom.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct LoggedClimb {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The day.
    pub on: Day,
    /// The property and the tree, in words.
    #[schemars(length(min = 1, max = 200))]
    pub place: String,
    /// Height reached in metres.
    #[schemars(transform = CLIMBED_M.rule())]
    pub height_m: f64,
    /// The rope system.
    pub system: RopeSystem,
    /// Who stayed within reach, by name.
    #[schemars(length(min = 1, max = 200))]
    pub with_whom: String,
    /// Anything worth keeping.
    pub note: Option<String>,
}

/// The skills, in training order.
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
pub enum Skill {
    /// Inspection of a tree before the climb.
    Inspection,
    /// Gear check.
    GearCheck,
    /// Electrical awareness.
    ElectricalAwareness,
    /// First aid.
    FirstAid,
    /// Knots, each by what it is for.
    Knot,
    /// Friction hitches.
    FrictionHitch,
    /// Moving rope, low and slow.
    MovingRope,
    /// Throw line.
    ThrowLine,
    /// Moving out on limbs.
    LimbWalk,
    /// Aerial rescue; before anyone counts as second.
    AerialRescue,
    /// Stationary rope.
    StationaryRope,
    /// Chainsaw aloft with two attachments.
    ChainsawAloft,
    /// Spurs, on removals only.
    Spurs,
    /// Rigging.
    Rigging,
}

impl Skill {
    /// Every skill in training order.
    pub const IN_ORDER: [Skill; 14] = [
        Skill::Inspection,
        Skill::GearCheck,
        Skill::ElectricalAwareness,
        Skill::FirstAid,
        Skill::Knot,
        Skill::FrictionHitch,
        Skill::MovingRope,
        Skill::ThrowLine,
        Skill::LimbWalk,
        Skill::AerialRescue,
        Skill::StationaryRope,
        Skill::ChainsawAloft,
        Skill::Spurs,
        Skill::Rigging,
    ];
}

/// What a knot is for.
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
pub enum KnotUse {
    /// Stops the end of a line.
    Stopper,
    /// Ends a line at a connector.
    Termination,
    /// Joins two lines.
    Joining,
    /// Holds midline.
    Midline,
    /// Grips a line and slides.
    Gripping,
    /// Ties to a stem or a post.
    Anchoring,
    /// Ties tools for lifting.
    Lifting,
}

impl KnotUse {
    /// Every use, in the order of the record.
    pub const ALL: [KnotUse; 7] = [
        KnotUse::Stopper,
        KnotUse::Termination,
        KnotUse::Joining,
        KnotUse::Midline,
        KnotUse::Gripping,
        KnotUse::Anchoring,
        KnotUse::Lifting,
    ];
}

/// One piece of gear.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Gear {
    /// Id.
    pub id: Id,
    /// Name or mark on it.
    #[schemars(length(min = 1, max = 200))]
    pub name: String,
    /// What it is.
    pub kind: GearKind,
    /// Rating in kilonewtons.
    #[schemars(transform = RATING_KN.rule())]
    pub rating_kn: Option<f64>,
    /// Diameter of a line in millimetres.
    #[schemars(transform = ROPE_MM.rule())]
    pub diameter_mm: Option<f64>,
    /// Length of a line in metres.
    #[schemars(transform = ROPE_LENGTH_M.rule())]
    pub length_m: Option<f64>,
    /// First use.
    pub first_use: Option<Day>,
    /// Last check.
    pub last_check: Option<Day>,
    /// Next check due; without it the rule set's interval from the last check.
    pub next_check: Option<Day>,
    /// Why it is out of use, if it is.
    pub out_of_use: Option<String>,
    /// Loaded by a shock since the last check.
    pub shock_loaded: Option<bool>,
    /// Connectors: self-closing and double-locking.
    pub double_locking: Option<bool>,
    /// Helmets: with a chin strap.
    pub chin_strap: Option<bool>,
    /// Who uses it, by id; empty for everybody.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub used_by: Id,
}

/// What a piece of gear is.
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
pub enum GearKind {
    /// Climbing line.
    ClimbingLine,
    /// Lanyard.
    Lanyard,
    /// Second lanyard or line, for two attachments.
    SecondAttachment,
    /// Harness.
    Harness,
    /// Helmet.
    Helmet,
    /// Connector.
    Connector,
    /// Hitch cord.
    HitchCord,
    /// Friction saver.
    FrictionSaver,
    /// Throw line and weight.
    ThrowLine,
    /// Rescue kit.
    RescueKit,
    /// First-aid kit.
    FirstAidKit,
    /// Spurs.
    Spurs,
    /// Rigging line.
    RiggingLine,
    /// Rigging block.
    RiggingBlock,
    /// Chainsaw for use aloft.
    TopHandledSaw,
}
