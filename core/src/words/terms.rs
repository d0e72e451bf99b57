//! The words of every choice in the record: entry `<enum>.<variant>` in the catalogue, both in
//! kebab case, such as `way-of-working.section-rigged`.

use super::catalogue::{Language, Words};
use super::units::UnitSystem;
use crate::judge::rules::RuleLabel;
use crate::record::*;

/// A choice that the catalogue has a word for.
pub trait Worded {
    /// The catalogue entry, such as `way-of-working.section-rigged`.
    fn key(&self) -> String;
}

impl Words {
    /// The word of a choice: `section down, rigged`.
    pub fn word_of(&self, choice: &impl Worded) -> String {
        self.say(&choice.key(), &[])
    }

    /// A choice with its first letter large, to begin a line or a label.
    pub fn label_of(&self, choice: &impl Worded) -> String {
        capitalised(&self.word_of(choice))
    }

    /// An entry that stands by itself: on a button, at the head of a line.
    pub fn label(&self, key: &str) -> String {
        capitalised(&self.say(key, &[]))
    }
}

/// The text with its first letter large.
pub(super) fn capitalised(text: &str) -> String {
    let mut letters = text.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// `WayOfWorking` becomes `way-of-working`.
fn kebab(name: &str) -> String {
    let mut kebab = String::with_capacity(name.len() + 4);
    for letter in name.chars() {
        if letter.is_ascii_uppercase() && !kebab.is_empty() {
            kebab.push('-');
        }
        kebab.push(letter.to_ascii_lowercase());
    }
    kebab
}

macro_rules! worded {
    ($($choice:ident { $($variant:ident),+ $(,)? })+) => {
        $(impl Worded for $choice {
            fn key(&self) -> String {
                let variant = match self {
                    $($choice::$variant => stringify!($variant),)+
                };
                format!("{}.{}", kebab(stringify!($choice)), kebab(variant))
            }
        })+

        /// Every entry that the choices of the record need.
        pub fn all_term_keys() -> Vec<String> {
            vec![$($($choice::$variant.key(),)+)+]
        }
    };
}

worded! {
    RuleLabel {
        Confirmed, SecondHand, Memory, CommonPractice, House,
    }
    DiameterRead { TapeAloft, BesideKnownSize, ScaledPhoto, ByEye }
    UnionForm { BarkRidge, IncludedBark, Opening, NotSeen }
    AnchorState { Live, Regrowth, Dead, DeadStub }
    LoadTestOutcome { Held, Moved, Cracked, Sank }
    RopeSystem { MovingRope, StationaryCrown, StationaryBase }
    DefectKind { SoilMovement, RootsCut, GirdlingRoots, Decay, FireHollow, BracketUnnamed, Kretzschmaria, Meripilus, Phaeolus, Heterobasidion, Inonotus, Ganoderma, Armillaria, BracketOther, StemCrack, UnionCrack, IncludedBark, LimbCrack, LightningStrip, UnderTension, Hanger, DeadLimb, Dieback, ToppingRegrowth, Wound, Canker, Climbers, StingingInsects, NestOrRoost, TouchingWire, Other }
    ElectricalLevel { Unqualified, LineClearance }
    Skill { Inspection, GearCheck, ElectricalAwareness, FirstAid, Knot, FrictionHitch, MovingRope, ThrowLine, LimbWalk, AerialRescue, StationaryRope, ChainsawAloft, Spurs, Rigging }
    KnotUse { Stopper, Termination, Joining, Midline, Gripping, Anchoring, Lifting }
    GearKind { ClimbingLine, Lanyard, SecondAttachment, Harness, Helmet, Connector, HitchCord, FrictionSaver, ThrowLine, RescueKit, FirstAidKit, Spurs, RiggingLine, RiggingBlock, TopHandledSaw }
    TreePart { Roots, Base, Stem, Union, Limb, Crown, Around }
    InspectionLevel { StopOnSight, Triage, FullCheck, SameDay }
    LifeState { Alive, Dying, Dead }
    WalkPart { Wires, Hangers, Insects, Roots, Base, StemNorth, StemEast, StemSouth, StemWest, Unions, Crown }
    Look { Seen, PartSeen, NotSeen }
    Verdict { Barred, Incomplete, Refer, Limited, NoStop }
    ClimbNeed { Needed, NotNeeded, Undecided }
    ZoneAction { EmptyRooms, CloseOff, MoveAway, Guard, Protect, AskNeighbour, CallLineOwner }
    HeightMethod { Tangent, Percent, Sine, TwoPositions, Stick, Tape, ByEye, TakenOver }
    DistanceBy { Tape, Paces }
    GirthMethod { Tape, Diameter, ByEye, TakenOver }
    LeanMethod { ByEye, TwoSides, OneSide, TakenOver }
    PositionMethod { PhoneFix, AveragedFixes, Survey, Map, PhotoRecord, TakenOver }
    FailureLikelihood { Improbable, Possible, Probable, Imminent }
    ImpactLikelihood { VeryLow, Low, Medium, High }
    Consequences { Negligible, Minor, Significant, Severe }
    CombinedLikelihood { Unlikely, SomewhatLikely, Likely, VeryLikely }
    RiskRating { Low, Moderate, High, Extreme }
    PhoneSignal { Good, Patchy, NoSignal }
    GroundForm { Spot, Way, Area }
    TargetKind { Dwelling, Outbuilding, Road, Path, Garden, Parking, Play, Fence, Services, Animals, Other }
    Occupancy { Rare, Occasional, Frequent, Constant }
    LineKind { Transmission, Distribution, Service, Communication, Railway, Unknown }
    VoltageBetween { Phases, PhaseAndGround }
    PermissionKind { Owner, ProtectedTree, Neighbour, Nests, Bats, Quarantine, RoadClosure }
    PermissionAnswer { Given, Refused, NotNeeded, Waiting }
    ShellMethod { Drill, Core, Probe, SectionPicture }
    MalletSound { Sound, Dull, Hollow, NotSounded }
    WayOfWorking { InspectOnly, Prune, SectionFreeDrop, SectionRigged, FellWhole, FellShortened, PlatformOrCrane, NoWork }
    OtherAccess { Ground, Platform, Crane, NeighbouringTree, NoOther }
    Operation { Deadwood, CrownThinning, CrownRaising, CrownReduction, LimbRemoval, Clearance, StructuralPruning, Bracing, HangerRemoval, Removal, HabitatStem, Inspection }
    WorkDone { Done, PartDone, NotDone }
    UndoneBecause { Weather, Daylight, Wires, Animals, FoundAloft, Gear, Client, Other }
    Priority { Immediate, Soon, Season, Routine }
    Daylight { Day, Dusk, Dark }
    UnitSystem { Metric, Imperial }
    ReportFor { Mail, Print }
    Language { English, Spanish }
    Theme { FollowPhone, Light, Dark, BrightSun }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_choice_has_a_word() {
        for language in Language::ALL {
            let words = Words::new(language, UnitSystem::Metric);
            let missing: Vec<String> = all_term_keys()
                .into_iter()
                .filter(|key| !words.has(key))
                .collect();
            assert_eq!(missing, Vec::<String>::new(), "{language:?}");
        }
    }

    #[test]
    fn the_five_verdicts_are_worded_as_the_method_says() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let said = [
            (Verdict::NoStop, "no stop found today"),
            (Verdict::Limited, "only within these limits"),
            (
                Verdict::Refer,
                "do not climb yet: another way, or a second opinion",
            ),
            (Verdict::Barred, "do not climb"),
            (Verdict::Incomplete, "not judged: still to check"),
        ];
        for (verdict, expected) in said {
            assert_eq!(words.word_of(&verdict), expected);
        }
    }

    #[test]
    fn a_label_begins_large() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        assert_eq!(words.label_of(&Verdict::Barred), "Do not climb");
        assert_eq!(capitalised(""), "");
    }
}
