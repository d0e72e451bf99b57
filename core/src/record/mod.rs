//! The nouns of the field book: plain records, their ranges and their units.

mod afterwards;
mod anchor;
mod codebook;
mod crew;
mod fault;
mod finding;
mod house_value;
mod id;
mod inspection;
mod judgement;
mod measures;
mod noun;
mod number_field;
mod pack;
mod phone;
mod photo;
mod place;
mod quantity;
mod reason;
mod risk;
mod site;
mod site_file;
mod stem_section;
mod tree;
mod visit;

pub use afterwards::{NearMiss, UndoneBecause, WorkDone, WorkOutcome};
pub use anchor::{
    ANCHOR_DIAMETER_CM, AnchorPoint, AnchorState, ClimbPlan, DiameterRead, FROM_UNION_CM,
    LIMB_ANGLE_DEG, LIMB_LENGTH_M, LimbToReach, LoadTest, LoadTestOutcome, RopeSystem,
    TEST_MASS_KG, UnionForm,
};
pub use codebook::{DefectCode, DefectKind};
pub use crew::{
    CLIMBED_M, CLIMBER_MASS_KG, ElectricalLevel, Gear, GearKind, HEIGHT_LIMIT_M, KNOT_S, KnotUse,
    LoggedClimb, Person, RATING_KN, ROPE_LENGTH_M, ROPE_MM, SignOff, Skill, THROW_M,
};
pub use fault::Fault;
pub use finding::{ASPECT_RATIO, AT_HEIGHT_M, Finding, TreePart};
pub use house_value::HouseValue;
pub use id::{Day, Id, LocalHour, Moment};
pub use inspection::{
    BaseSounding, DIEBACK_PCT, GroundDug, Inspection, InspectionLevel, LifeState, Look, PartLook,
    WIRE_DISTANCE_M, WalkPart, WireDistance,
};
pub use judgement::{
    ClimbNeed, ClimberAnswer, Judgement, NextMeasurement, PartMargin, RiskAnswer, RopeNeed, Score,
    ScoreShare, SiteJudgement, TreeConflict, Verdict, WireAnswer, WorkingLine, ZoneAction,
    ZoneAffected, ZoneAnswer,
};
pub use measures::{
    BARK_CM, BEARING_DEG, CROWN_BASE_M, CROWN_RADIUS_M, Crown, DistanceBy, GIRTH_AT_M, GIRTH_CM,
    Girth, GirthMethod, HEIGHT_M, Height, HeightMethod, LEAN_DEG, Lean, LeanMethod, OtherStem,
    SE_CM, SE_DEG, SE_M, SLOPE_PCT, Slope,
};
pub use noun::{Noun, NounPlace};
pub use number_field::{NumberField, NumberRule};
pub use pack::{
    PACK_CHANGES, PACK_FORMAT, PACK_HEAD, PACK_LARGEST, PACK_MOST_PHOTOS, PACK_PHOTOS, PackHead,
    PackedChanges, PackedPhoto, PackedSite, hash_of_photo,
};
pub use phone::{TEXT_SIZE_PCT, Theme};
pub use photo::{Photo, ReportFor};
pub use place::{ACCURACY_M, LAT_DEG, LON_DEG, LatLon, Position, PositionMethod};
pub use quantity::Quantity;
pub use reason::{Arg, ArgValue, Reason};
pub use risk::{
    CombinedLikelihood, Consequences, FailureLikelihood, ImpactLikelihood, RiskEntry, RiskRating,
    TIME_FRAME_MONTHS,
};
pub use site::{
    GroundForm, LINE_HEIGHT_M, LineKind, Occupancy, OverheadLine, Permission, PermissionAnswer,
    PermissionKind, PhoneSignal, RescuePlan, Site, Target, TargetKind, VOLTAGE_KV, VoltageBetween,
};
pub use site_file::{SITE_FILE_FORMAT, SiteFile};
pub use stem_section::{
    DIAMETER_CM, DRILL_ANGLE_DEG, MalletSound, OPENING_CM, Opening, SHELL_CM, ShellMethod,
    ShellReading, StemSection,
};
pub use tree::{
    CUT_HEIGHT_M, Operation, OtherAccess, PIECE_LENGTH_M, PIECE_MASS_KG, Priority, Tree,
    WayOfWorking, Work,
};
pub use visit::{
    Daylight, HOUR, HUMIDITY_PCT, TEMPERATURE_C, THUNDER_MIN, Visit, WIND_FORCE, WIND_MS,
    WeatherHour,
};

/// Every number field; each has a reason in the catalogue, `<id>.why`.
pub const NUMBER_FIELDS: &[&NumberField] = &[
    &LAT_DEG,
    &LON_DEG,
    &ACCURACY_M,
    &ANCHOR_DIAMETER_CM,
    &FROM_UNION_CM,
    &LIMB_ANGLE_DEG,
    &LIMB_LENGTH_M,
    &TEST_MASS_KG,
    &CLIMBER_MASS_KG,
    &HEIGHT_LIMIT_M,
    &THROW_M,
    &RATING_KN,
    &ROPE_MM,
    &ROPE_LENGTH_M,
    &KNOT_S,
    &CLIMBED_M,
    &AT_HEIGHT_M,
    &ASPECT_RATIO,
    &DIEBACK_PCT,
    &WIRE_DISTANCE_M,
    &HEIGHT_M,
    &SE_M,
    &GIRTH_CM,
    &SE_CM,
    &GIRTH_AT_M,
    &LEAN_DEG,
    &SE_DEG,
    &BEARING_DEG,
    &CROWN_RADIUS_M,
    &CROWN_BASE_M,
    &BARK_CM,
    &SLOPE_PCT,
    &TIME_FRAME_MONTHS,
    &VOLTAGE_KV,
    &LINE_HEIGHT_M,
    &DIAMETER_CM,
    &SHELL_CM,
    &DRILL_ANGLE_DEG,
    &OPENING_CM,
    &PIECE_LENGTH_M,
    &PIECE_MASS_KG,
    &CUT_HEIGHT_M,
    &HOUR,
    &WIND_MS,
    &WIND_FORCE,
    &TEMPERATURE_C,
    &HUMIDITY_PCT,
    &THUNDER_MIN,
    &TEXT_SIZE_PCT,
];
