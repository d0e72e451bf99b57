//! The lasting record of a tree, and what is to be done to it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::afterwards::{WorkDone, WorkOutcome};
use super::id::Id;
use super::inspection::Inspection;
use super::measures::number;
use super::number_field::NumberField;
use super::place::Position;
use super::quantity::Quantity;

number!(
    /// Longest piece that falls or swings.
    PIECE_LENGTH_M, "work.piece_length_m", LengthM, 0.1, 60.0, 0.5
);
number!(
    /// Mass of the heaviest piece.
    PIECE_MASS_KG, "work.piece_mass_kg", MassKg, 0.1, 50_000.0, 5.0
);
number!(
    /// Height above ground of the highest cut.
    CUT_HEIGHT_M, "work.cut_height_m", LengthM, 0.0, 116.0, 0.5
);

/// The lasting record of a tree.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Tree {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The tag on the tree or the number on the plan; unique on the site.
    #[schemars(length(min = 1, max = 40))]
    pub tag: String,
    /// Species by its Latin name, or a genus (`Quercus`); a gap if unknown.
    pub species: Option<String>,
    /// Where it stands; a gap if unknown.
    pub position: Option<Position>,
    /// The planned way of working; a gap if not decided.
    pub way: Option<WayOfWorking>,
    /// How else the work could be done, as far as anybody looked.
    pub other_access: Option<Vec<OtherAccess>>,
    /// Order in which the crew walks.
    pub walk_order: Option<u32>,
    /// Notes.
    pub note: Option<String>,
    /// What is to be done.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub work: Vec<Work>,
    /// What was seen, one a visit.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub inspections: Vec<Inspection>,
}

/// How the work on a tree is done.
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
pub enum WayOfWorking {
    /// Nothing is cut.
    InspectOnly,
    /// Parts of the crown are cut.
    Prune,
    /// Taken down from the top, pieces falling free.
    SectionFreeDrop,
    /// Taken down from the top, pieces lowered on a line.
    SectionRigged,
    /// Felled in one piece.
    FellWhole,
    /// Felled after the crown was shortened.
    FellShortened,
    /// From a platform or by crane; nobody climbs.
    PlatformOrCrane,
    /// No work.
    NoWork,
}

impl WayOfWorking {
    /// Every way, what leaves most of the tree first.
    pub const IN_ORDER: [WayOfWorking; 8] = [
        WayOfWorking::InspectOnly,
        WayOfWorking::Prune,
        WayOfWorking::SectionFreeDrop,
        WayOfWorking::SectionRigged,
        WayOfWorking::FellWhole,
        WayOfWorking::FellShortened,
        WayOfWorking::PlatformOrCrane,
        WayOfWorking::NoWork,
    ];
}

/// How a tree could be worked on without climbing it.
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
pub enum OtherAccess {
    /// From the ground.
    Ground,
    /// From a platform.
    Platform,
    /// By crane.
    Crane,
    /// From a neighbouring tree.
    NeighbouringTree,
    /// Looked into: no other way.
    NoOther,
}

/// One piece of work on a tree.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Work {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// What is done, in the terms of pruning standards.
    pub operation: Operation,
    /// How soon.
    pub priority: Option<Priority>,
    /// Longest piece in metres; a gap where pieces fall.
    #[schemars(transform = PIECE_LENGTH_M.rule())]
    pub piece_length_m: Option<f64>,
    /// Heaviest piece in kilograms.
    #[schemars(transform = PIECE_MASS_KG.rule())]
    pub piece_mass_kg: Option<f64>,
    /// Height of the highest cut in metres.
    #[schemars(transform = CUT_HEIGHT_M.rule())]
    pub cut_height_m: Option<f64>,
    /// Whether a chainsaw is used aloft.
    pub chainsaw_aloft: Option<bool>,
    /// The specification in the client's words.
    pub note: Option<String>,
    /// What became of it; nothing while it is still to do.
    pub outcome: Option<WorkOutcome>,
}

impl Tree {
    /// Whether all the work that was wanted is done. Its zone need not be kept clear any more.
    pub fn work_is_done(&self) -> bool {
        let done = |work: &Work| {
            let outcome = work.outcome.as_ref();
            outcome.is_some_and(|outcome| outcome.done == WorkDone::Done)
        };
        !self.work.is_empty() && self.work.iter().all(done)
    }
}

/// What is done to a tree, in the terms of pruning standards.
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
pub enum Operation {
    /// Removal of dead, dying and broken limbs.
    Deadwood,
    /// Thinning of the crown.
    CrownThinning,
    /// Raising of the crown.
    CrownRaising,
    /// Reduction of the crown.
    CrownReduction,
    /// Reduction or removal of one limb.
    LimbRemoval,
    /// Clearance from a building, a light or a line.
    Clearance,
    /// Pruning of a young tree for structure.
    StructuralPruning,
    /// Bracing of a weak union.
    Bracing,
    /// Removal of a hanger.
    HangerRemoval,
    /// Removal of the tree.
    Removal,
    /// Kept as a standing stem for wildlife.
    HabitatStem,
    /// Another look, or a closer one.
    Inspection,
}

/// How soon work is due.
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
pub enum Priority {
    /// Now: nobody leaves it like this.
    Immediate,
    /// Within weeks.
    Soon,
    /// This season.
    Season,
    /// When convenient.
    Routine,
}
