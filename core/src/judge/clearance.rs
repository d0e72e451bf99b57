//! Distances to conductors: what was measured on site first, else over the ground from the crown's
//! outline with both position errors taken off.

use crate::record::{
    DefectKind, ElectricalLevel, GroundForm, OverheadLine, Person, Quantity, Reason, WireAnswer,
    WireDistance,
};

use super::electricity::{Approach, Keep, approach};
use super::plan_case::PlanCase;
use super::rules::Rule;
use super::spread::height_cv;
use super::tree_case::TreeCase;
use super::working::Working;
use super::zone_reach::{R95_OF_R68, end_m};

/// Conductors further than this from the crown are not listed, in metres (house).
const LISTED_WITHIN_M: f64 = 50.0;
/// Altitude that counts where nobody gave one: the end of the published table, in metres.
const UNKNOWN_ALTITUDE_M: f64 = 6000.0;

/// What the wires say: answers for each line, stops, limits, gaps and remarks.
#[derive(Default)]
pub(crate) struct Wires {
    pub answers: Vec<WireAnswer>,
    pub stops: Vec<Reason>,
    pub limits: Vec<Reason>,
    pub gaps: Vec<Reason>,
    pub remarks: Vec<Reason>,
    pub working: Working,
}

/// The distance from a crown to a line.
struct Distance {
    metres: Option<f64>,
    measured: bool,
    touching: bool,
}

impl Wires {
    /// All lines of the site, for the people of a plan where there is one.
    pub(crate) fn of(case: &TreeCase, plan: Option<&PlanCase>) -> Self {
        let mut wires = Wires::default();
        for defect in case.defects() {
            if defect.kind == DefectKind::TouchingWire {
                let stop = Reason::new("stop.wire-touching-unnamed");
                wires.stops.push(stop.about(&defect.finding.id));
            }
        }
        let level = level(case, plan);
        for line in &case.site.file.site.lines {
            wires.line(case, line, level);
        }
        wires
    }

    fn line(&mut self, case: &TreeCase, line: &OverheadLine, level: ElectricalLevel) {
        let rules = case.site.rules;
        let distance = distance(case, line);
        let rule = approach(
            line.voltage_kv,
            line.voltage_between,
            level,
            UNKNOWN_ALTITUDE_M,
            rules,
        );
        if distance.metres.is_some_and(|m| m > LISTED_WITHIN_M) && !distance.touching {
            return;
        }
        let about = |code: &str| Reason::new(code).about(&line.id).text("line", &line.name);
        let said = |code: &str| match distance.metres {
            Some(m) => about(code).number("distance", m, Quantity::LengthM),
            None => about(code),
        };
        let dead = line.dead_on == Some(case.site.as_of);
        let keep_m = match rule.keep {
            Keep::AtLeast { distance_m } => Some(distance_m),
            Keep::NoContact => Some(0.0),
            Keep::AskOwner => None,
        };
        self.explain(case, line, &distance, keep_m, &rule.source);
        self.answers.push(WireAnswer {
            line: line.id.clone(),
            distance_m: distance.metres,
            measured: distance.measured,
            approach_m: keep_m,
            reason: answer_reason(&rule, &distance, dead, about, keep_m),
            source: rule.source.clone(),
        });
        if dead {
            self.remarks.push(about("remark.wire-dead-today"));
            return;
        }
        if distance.touching {
            self.stops.push(about("stop.wire-touching"));
        }
        if distance.metres.is_none() {
            self.gaps.push(about("gap.wire-distance"));
        } else if !distance.measured && accuracy_unknown(case) {
            self.gaps.push(about("gap.wire-position-accuracy"));
        }
        let Some(m) = distance.metres else { return };
        match keep_m {
            None if m < rules.number(Rule::WireConsultM) => {
                self.stops.push(said("stop.wire-voltage-unknown"));
            }
            None => {}
            Some(keep) if m < keep => {
                let stop = said("stop.wire-inside-approach");
                self.stops
                    .push(stop.number("approach", keep, Quantity::LengthM));
            }
            Some(keep) if m <= keep * rules.number(Rule::WireCautionLengths) => {
                let limit = said("cap.wire-near");
                self.limits
                    .push(limit.number("approach", keep, Quantity::LengthM));
            }
            Some(_) => {}
        }
    }
    /// The working of a distance over the ground, and of the approach distance.
    fn explain(
        &mut self,
        case: &TreeCase,
        line: &OverheadLine,
        distance: &Distance,
        keep_m: Option<f64>,
        source: &str,
    ) {
        use Quantity::{LengthM, Ratio, VoltageKv};
        if let (Some(metres), false) = (distance.metres, distance.measured) {
            let rise_m = rise_m(case, line);
            self.working
                .line(
                    "work.wire-distance",
                    "√(max(0, s - R - 2 q a)² + h²)",
                    metres,
                    LengthM,
                )
                .about(&line.id)
                .input("s", stem_to_line_m(case, line).unwrap_or(0.0), LengthM)
                .input("R", case.look().crown.map_or(0.0, |c| c.radius_m), LengthM)
                .input("q", R95_OF_R68, Ratio)
                .input(
                    "a",
                    case.tree
                        .position
                        .and_then(|at| at.accuracy_m)
                        .unwrap_or(0.0),
                    LengthM,
                )
                .input("h", rise_m, LengthM)
                .source("Plane geometry; the line's own accuracy counts as the tree's");
        }
        if let (Some(keep), Some(kv)) = (keep_m, line.voltage_kv) {
            self.working
                .line(
                    "work.wire-approach",
                    "the published rule for this voltage and qualification",
                    keep,
                    LengthM,
                )
                .about(&line.id)
                .input("voltage", kv, VoltageKv)
                .source(source);
        }
    }
}

fn answer_reason(
    rule: &Approach,
    distance: &Distance,
    dead: bool,
    about: impl Fn(&str) -> Reason,
    keep_m: Option<f64>,
) -> Reason {
    let code = match (dead, distance.metres, rule.keep) {
        (true, ..) => "wire.dead-today",
        (_, None, _) => "wire.distance-unknown",
        (_, _, Keep::AskOwner) => "wire.ask-owner",
        (_, _, Keep::NoContact) => "wire.no-contact",
        (_, Some(_), Keep::AtLeast { .. }) => "wire.keep",
    };
    let mut reason = about(code).term(
        "level",
        match rule.level {
            ElectricalLevel::Unqualified => "electrical-level.unqualified",
            ElectricalLevel::LineClearance => "electrical-level.line-clearance",
        },
    );
    if let Some(m) = distance.metres {
        reason = reason.number("distance", m, Quantity::LengthM);
    }
    match keep_m {
        Some(keep) => reason.number("approach", keep, Quantity::LengthM),
        None => reason,
    }
}

/// Qualified only where climber and second both are; unqualified unless recorded.
fn level(case: &TreeCase, plan: Option<&PlanCase>) -> ElectricalLevel {
    let qualified = |person: &Person| person.electrical == Some(ElectricalLevel::LineClearance);
    let named = plan.and_then(|plan| plan.climber.zip(plan.second));
    let all = match named {
        Some((climber, second)) => qualified(climber) && qualified(second),
        None => {
            let people = case.site.people();
            !people.is_empty() && people.into_iter().all(qualified)
        }
    };
    if all {
        ElectricalLevel::LineClearance
    } else {
        ElectricalLevel::Unqualified
    }
}

fn accuracy_unknown(case: &TreeCase) -> bool {
    case.tree.position.is_none_or(|at| at.accuracy_m.is_none())
}

fn distance(case: &TreeCase, line: &OverheadLine) -> Distance {
    let mine = |wire: &&WireDistance| wire.line == line.id;
    let entries: Vec<_> = case.look().wires.iter().filter(mine).collect();
    let touching = entries.iter().any(|wire| wire.touching == Some(true));
    let taped = entries.iter().filter_map(|wire| wire.distance_m);
    if let Some(metres) = taped.reduce(f64::min) {
        return Distance {
            metres: Some(metres),
            measured: true,
            touching,
        };
    }
    Distance {
        metres: from_the_map(case, line),
        measured: false,
        touching,
    }
}

/// Over the ground from the crown's outline. Nobody keeps the accuracy of a line: the tree's is
/// taken off twice.
fn from_the_map(case: &TreeCase, line: &OverheadLine) -> Option<f64> {
    let at = case.tree.position?;
    let crown = case.look().crown?;
    let errors_m = 2.0 * R95_OF_R68 * at.accuracy_m.unwrap_or(0.0);
    let level_m = (stem_to_line_m(case, line)? - crown.radius_m - errors_m).max(0.0);
    Some(libm::hypot(level_m, rise_m(case, line)))
}

fn stem_to_line_m(case: &TreeCase, line: &OverheadLine) -> Option<f64> {
    let at = case.tree.position?;
    let plane = case.site.plane?;
    super::ground::distance_m(&plane, at.point(), GroundForm::Way, &line.way)
}

/// How far a line hangs above the tip: only where both heights are known.
fn rise_m(case: &TreeCase, line: &OverheadLine) -> f64 {
    let height = case.look().height;
    line.height_m.zip(height).map_or(0.0, |(line_m, height)| {
        let tip_m = end_m(height.height_m, height_cv(&height, case.site.rules));
        (line_m - tip_m).max(0.0)
    })
}
