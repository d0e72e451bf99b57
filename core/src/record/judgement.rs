//! What the core works out: verdict, stops, gaps, caps, score, margins, zones, reasons.

use serde::{Deserialize, Serialize};

use super::anchor::RopeSystem;
use super::id::{Day, Id};
use super::place::LatLon;
use super::quantity::Quantity;
use super::reason::{Arg, Reason};
use super::risk::{CombinedLikelihood, RiskRating};
use super::tree::WayOfWorking;

/// The verdict on a climb. Order: the worst first.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// Do not climb.
    Barred,
    /// Not judged: still to check.
    Incomplete,
    /// Do not climb yet: another way, or a second opinion.
    Refer,
    /// Only within these limits.
    Limited,
    /// No stop found today.
    NoStop,
}

/// Whether anybody has to climb.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum ClimbNeed {
    /// The work needs a climber.
    Needed,
    /// Nobody needs to climb.
    NotNeeded,
    /// Not decided yet.
    Undecided,
}

/// The judgement of one tree.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Judgement {
    /// The tree.
    pub tree: Id,
    /// Its tag.
    pub tag: String,
    /// The inspection it rests on; empty where there is none.
    pub inspection: Id,
    /// The rule set.
    pub rule_set: Id,
    /// Version of the method.
    pub method_version: u32,
    /// The day it was made for; it ends with that day.
    pub as_of: Day,
    /// Whether anybody has to climb.
    pub climb: ClimbNeed,
    /// The verdict.
    pub verdict: Verdict,
    /// Facts that bar climbing whatever the rest says.
    pub stops: Vec<Reason>,
    /// What was not looked at or measured.
    pub gaps: Vec<Reason>,
    /// What holds the verdict at refer.
    pub refer_caps: Vec<Reason>,
    /// What holds the verdict at limited.
    pub limit_caps: Vec<Reason>,
    /// The limits of the day and the place, and the causes that cost points.
    pub limits: Vec<Reason>,
    /// What a person should know besides.
    pub remarks: Vec<Reason>,
    /// The score, where nothing is missing for it.
    pub score: Option<Score>,
    /// The climb plan judged; empty where there is none.
    pub plan: Id,
    /// The anchor judged; empty where there is none.
    pub anchor: Id,
    /// Margins of the parts that carry.
    pub margins: Vec<PartMargin>,
    /// Who may climb, and why not.
    pub climbers: Vec<ClimberAnswer>,
    /// Rope needed, where a plan is known.
    pub rope: Option<RopeNeed>,
    /// Zones, a line per way of working; the planned way first.
    pub zones: Vec<ZoneAnswer>,
    /// Distances to conductors.
    pub wires: Vec<WireAnswer>,
    /// Risk ratings from what assessors entered.
    pub risks: Vec<RiskAnswer>,
    /// The one measurement that would narrow the answer most.
    pub next_measurement: Option<NextMeasurement>,
    /// When to look again.
    pub next_look: Option<Day>,
    /// The working, line by line.
    pub working: Vec<WorkingLine>,
}

/// The score: points out of 100 at central values, with its interval.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Score {
    /// At central values, whole points rounded down.
    pub points: u32,
    /// 10 % end, whole points rounded down.
    pub low: u32,
    /// 90 % end, whole points rounded down.
    pub high: u32,
    /// Points lost by cause; they add up to 100 − points.
    pub shares: Vec<ScoreShare>,
}

/// Points lost to one cause.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct ScoreShare {
    /// The cause.
    pub cause: Reason,
    /// Its factor, 0 to 1.
    pub factor: f64,
    /// Whole points lost.
    pub points: u32,
}

/// The margin of one part: strength over load.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct PartMargin {
    /// The part: `margin.anchor`, `margin.rescue`, `margin.slip`, `margin.section`, `margin.base`.
    pub part: String,
    /// The record it belongs to.
    pub about: Id,
    /// At central values.
    pub central: f64,
    /// 10 % end.
    pub low: f64,
    /// 90 % end.
    pub high: f64,
    /// Section modulus left in the worst direction in percent, for sections.
    pub modulus_left_pct: Option<f64>,
}

/// Whether one person may climb this tree by this plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct ClimberAnswer {
    /// The person.
    pub person: Id,
    /// Name.
    pub name: String,
    /// Whether sign-offs and gear allow it.
    pub may: bool,
    /// Whether this person counts as second for an aerial rescue here.
    pub may_rescue: bool,
    /// Why not, or within which limits.
    pub reasons: Vec<Reason>,
}

/// The rope a plan needs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct RopeNeed {
    /// Rope system.
    pub system: RopeSystem,
    /// Shortest line in metres that reaches the ground, with reserve.
    pub length_m: f64,
    /// Height to throw to in metres.
    pub throw_m: f64,
    /// Whether a stopper knot is needed.
    pub stopper_needed: bool,
}

/// Drop zone and keep-out distance of one way of working.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct ZoneAnswer {
    /// The way of working.
    pub way: WayOfWorking,
    /// Whether it is the planned way.
    pub planned: bool,
    /// Where something may land: radius from the stem in metres.
    pub drop_radius_m: f64,
    /// Where nobody stands but those with a task: radius from the stem in metres.
    pub keep_out_m: f64,
    /// Where crew with a task keep out of: radius from the stem in metres.
    pub keep_out_crew_m: f64,
    /// Downhill radius of the keep-out in metres, larger than `keep_out_m` on a slope.
    pub keep_out_downhill_m: f64,
    /// The rule that fixed the keep-out distance, with its numbers.
    pub rule: Reason,
    /// The published source, or that it is a house value.
    pub source: String,
    /// The drop zone on the ground, position error included; empty without a position.
    pub drop_outline: Vec<LatLon>,
    /// The keep-out on the ground, position error included; empty without a position.
    pub keep_out_outline: Vec<LatLon>,
    /// What lies inside and what to do about it.
    pub inside: Vec<ZoneAffected>,
    /// What is missing to make this line complete.
    pub gaps: Vec<Reason>,
}

/// Something inside a keep-out or a drop zone.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct ZoneAffected {
    /// The target, line or tree.
    pub record: Id,
    /// What must be done.
    pub action: ZoneAction,
    /// Whether it lies in the drop zone, not only in the keep-out.
    pub in_drop_zone: bool,
    /// The sentence.
    pub reason: Reason,
}

/// What must be done about something inside a zone.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum ZoneAction {
    /// Rooms emptied, or another way.
    EmptyRooms,
    /// Closed while work goes on.
    CloseOff,
    /// Moved away.
    MoveAway,
    /// Guarded by a person.
    Guard,
    /// Covered or otherwise protected.
    Protect,
    /// The neighbour's consent and presence.
    AskNeighbour,
    /// The owner of the line is called.
    CallLineOwner,
}

/// The distance to one conductor.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct WireAnswer {
    /// The line.
    pub line: Id,
    /// Distance from the crown in metres, errors taken off; nothing where unknown.
    pub distance_m: Option<f64>,
    /// Whether it was measured on site.
    pub measured: bool,
    /// The approach distance in metres for the crew's qualification; nothing where unknown.
    pub approach_m: Option<f64>,
    /// The sentence with the rule.
    pub reason: Reason,
    /// The published source.
    pub source: String,
}

/// Risk to one target from what an assessor entered.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct RiskAnswer {
    /// The entry.
    pub entry: Id,
    /// The target.
    pub target: Id,
    /// Likelihood of failure and impact.
    pub likelihood: CombinedLikelihood,
    /// The rating.
    pub rating: RiskRating,
}

/// The one measurement that would narrow the answer most.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct NextMeasurement {
    /// What to measure and how.
    pub what: Reason,
    /// What it costs in seconds.
    pub cost_s: f64,
    /// Share of the score's spread it would take away, in percent.
    pub gain_pct: f64,
}

/// One line of the working, for a person with a calculator.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct WorkingLine {
    /// What is worked out: catalogue entry, such as `work.stem-length`.
    pub what: String,
    /// The record it belongs to, empty for the tree.
    pub about: Id,
    /// The formula, in plain signs.
    pub formula: String,
    /// The inputs with their values.
    pub inputs: Vec<Arg>,
    /// The result in its base unit.
    pub value: f64,
    /// What the result measures.
    pub quantity: Quantity,
    /// Standard error or spread of the result, where known, in the same unit.
    pub se: Option<f64>,
    /// The published source, or that it is a house value.
    pub source: String,
}

/// Two trees that may not be worked on at the same time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct TreeConflict {
    /// One tree.
    pub tree: Id,
    /// The other tree.
    pub other: Id,
    /// The sentence.
    pub reason: Reason,
}

/// The judgement of a whole site.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct SiteJudgement {
    /// The site.
    pub site: Id,
    /// The day it was made for.
    pub as_of: Day,
    /// The trees, in walking order.
    pub trees: Vec<Judgement>,
    /// Which trees may not be worked on together.
    pub conflicts: Vec<TreeConflict>,
    /// What is missing for the site as a whole: rescue plan, permissions, weather.
    pub gaps: Vec<Reason>,
    /// Stops of the day for every tree.
    pub stops: Vec<Reason>,
}
