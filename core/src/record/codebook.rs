//! The crew's own defect codes.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::finding::TreePart;
use super::id::Id;

/// One code of the codebook. Its meaning for the judgement is its kind, which renaming leaves.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct DefectCode {
    /// Id; starter codes have fixed ones.
    pub id: Id,
    /// The crew's name for it; starter codes without one are worded by the catalogue (`code.<id>`).
    pub name: Option<String>,
    /// What it means for the judgement.
    pub kind: DefectKind,
    /// The parts it can be on.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<TreePart>,
    /// One sentence for grade 1.
    pub grade_1: Option<String>,
    /// One sentence for grade 2.
    pub grade_2: Option<String>,
    /// One sentence for grade 3.
    pub grade_3: Option<String>,
    /// The grade from which the crew bars climbing; the method's own stops hold besides.
    #[schemars(range(min = 1, max = 3))]
    pub stops_from_grade: Option<u32>,
    /// No longer offered.
    #[serde(default)]
    pub retired: bool,
    /// Order on the tiles.
    pub order: Option<u32>,
}

/// What a defect means for the judgement.
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
pub enum DefectKind {
    /// Heave, mound or soil crack.
    SoilMovement,
    /// Roots cut or ground dug.
    RootsCut,
    /// Girdling roots.
    GirdlingRoots,
    /// Decay or cavity.
    Decay,
    /// Base hollowed by fire.
    FireHollow,
    /// A bracket or fungus not named.
    BracketUnnamed,
    /// Kretzschmaria.
    Kretzschmaria,
    /// Meripilus.
    Meripilus,
    /// Phaeolus.
    Phaeolus,
    /// Heterobasidion.
    Heterobasidion,
    /// Inonotus.
    Inonotus,
    /// Ganoderma.
    Ganoderma,
    /// Armillaria.
    Armillaria,
    /// Another fungus, named, that is none of the above.
    BracketOther,
    /// Crack in a stem.
    StemCrack,
    /// Crack in, or opening of, a union.
    UnionCrack,
    /// Included bark or codominant stems.
    IncludedBark,
    /// Crack in a limb.
    LimbCrack,
    /// Fresh lightning strip.
    LightningStrip,
    /// Uprooted, lodged, split or under tension.
    UnderTension,
    /// Hanger.
    Hanger,
    /// Dead limb or top.
    DeadLimb,
    /// Dieback.
    Dieback,
    /// Regrowth from an old topping cut.
    ToppingRegrowth,
    /// Old wound, bark lost.
    Wound,
    /// Canker, swelling, ridge.
    Canker,
    /// Ivy or other climbers.
    Climbers,
    /// Bees, wasps, hornets.
    StingingInsects,
    /// A protected nest or roost.
    NestOrRoost,
    /// Touching a wire.
    TouchingWire,
    /// Something else.
    Other,
}
