//! Drop zone and keep-out distance of a tree, a line per way of working (method §8; reference
//! sheet §1). Radii are from the stem; only the outlines carry the position error.

use super::falling::{downhill_factor, piece_reach_m, stem_length_m};
use super::rules::{Rule, RuleSet};
use crate::measure::place::{circumscribed_factor, point_from, rounded};
use crate::record::{
    Height, HeightMethod, Inspection, LatLon, Position, Quantity, Reason, Slope, Tree,
    WayOfWorking, ZoneAnswer,
};

/// The zones that can be worked out, the planned way first, and what is missing for the others.
#[derive(Debug, Clone, PartialEq)]
pub struct Zones {
    /// A line per way of working.
    pub lines: Vec<ZoneAnswer>,
    /// What is missing: without a height or a crown nothing is guessed.
    pub gaps: Vec<Reason>,
}

/// Ratio of the 95 % to the 68 % radius of a circular Gaussian error (reference sheet §9.5).
const R95_OF_R68: f64 = 1.6215;
/// Normal quantile of the 95 % end.
const Z95: f64 = 1.644_854;

const WAYS: [WayOfWorking; 5] = [
    WayOfWorking::FellWhole,
    WayOfWorking::FellShortened,
    WayOfWorking::SectionFreeDrop,
    WayOfWorking::SectionRigged,
    WayOfWorking::Prune,
];

/// Works out the zones of a tree as it was seen.
pub fn zones(tree: &Tree, seen: &Inspection, rules: &RuleSet) -> Zones {
    let reach = Reach::of(tree, seen, rules);
    let mut gaps = reach.gaps();
    let mut lines: Vec<ZoneAnswer> = WAYS
        .into_iter()
        .filter_map(|way| {
            let bounds = reach.bounds(way, rules)?;
            Some(line(tree, seen, way, bounds, rules))
        })
        .collect();
    // Where no way is planned, or it needs no zone of its own, felling stands first.
    lines.sort_by_key(|line| !line.planned);
    if let Some(way) = tree.way
        && WAYS.contains(&way)
        && !lines.iter().any(|line| line.planned)
    {
        let way = way_key(way);
        gaps.push(Reason::new("gap.zone-of-planned-way").term("way", way));
    }
    Zones { lines, gaps }
}

/// How far the parts of a tree reach, as far as they are known.
struct Reach {
    /// The larger of stem length and crown reach over all stems, at the 95 % end of the height.
    length_m: Option<f64>,
    crown_m: Option<f64>,
    piece_m: Option<f64>,
    /// Height of the highest cut, else of the tip.
    cut_m: Option<f64>,
    /// Length of what remains after shortening.
    rest_m: Option<f64>,
}

impl Reach {
    fn of(tree: &Tree, seen: &Inspection, rules: &RuleSet) -> Self {
        let crown_m = seen.crown.map(|crown| crown.radius_m);
        let own = seen
            .height
            .zip(seen.lean)
            .map(|(height, lean)| stem_length_m(height_end_m(height, rules), lean.lean_deg));
        // Another stem that nobody measured leaves the whole reach unknown.
        let others: Option<Vec<f64>> = seen
            .other_stems
            .iter()
            .map(|stem| {
                let height = stem.height?;
                let lean = stem.lean?;
                Some(stem_length_m(height_end_m(height, rules), lean.lean_deg))
            })
            .collect();
        let stems = own
            .zip(others)
            .map(|(own, others)| others.into_iter().fold(own, f64::max));
        let largest = |list: &mut dyn Iterator<Item = f64>| list.reduce(f64::max);
        let cut_m = largest(&mut tree.work.iter().filter_map(|work| work.cut_height_m));
        Reach {
            length_m: stems.zip(crown_m).map(|(stem, crown)| stem.max(crown)),
            crown_m,
            piece_m: largest(&mut tree.work.iter().filter_map(|work| work.piece_length_m)),
            cut_m: cut_m.or(seen.height.map(|height| height_end_m(height, rules))),
            rest_m: cut_m
                .zip(seen.lean)
                .map(|(cut, lean)| stem_length_m(cut, lean.lean_deg)),
        }
    }

    fn gaps(&self) -> Vec<Reason> {
        let mut gaps = Vec::new();
        if self.length_m.is_none() {
            gaps.push(Reason::new("gap.zone-needs-height-and-lean"));
        }
        if self.crown_m.is_none() {
            gaps.push(Reason::new("gap.zone-needs-crown"));
        }
        if self.piece_m.is_none() {
            gaps.push(Reason::new("gap.zone-needs-piece"));
        }
        gaps
    }

    fn bounds(&self, way: WayOfWorking, rules: &RuleSet) -> Option<Bounds> {
        match way {
            WayOfWorking::FellWhole => Some(Bounds::felling(self.length_m?, rules)),
            WayOfWorking::FellShortened => {
                // What was taken off came down too: the larger of the two counts.
                let rest = Bounds::felling(self.rest_m?.max(self.crown_m?), rules);
                Some(rest.or_larger(self.free_drop(rules)?))
            }
            WayOfWorking::SectionFreeDrop => self.free_drop(rules),
            WayOfWorking::SectionRigged => self.rigged(rules),
            WayOfWorking::Prune => self.prune(rules),
            WayOfWorking::InspectOnly | WayOfWorking::PlatformOrCrane | WayOfWorking::NoWork => {
                None
            }
        }
    }

    fn free_drop(&self, rules: &RuleSet) -> Option<Bounds> {
        let (crown, piece, cut) = (self.crown_m?, self.piece_m?, self.cut_m?);
        let thrown = piece_reach_m(
            cut,
            rules.number(Rule::ZonePieceHoldM),
            piece,
            rules.number(Rule::ZonePieceSpeedMs),
        );
        let drop_m = thrown.max(crown + piece);
        let beyond = Bounds::new(
            drop_m,
            crown + rules.number(Rule::ZoneRemovalM),
            Rule::ZoneRemovalM,
        )
        .reason("zone.removal", &[("crown", crown)]);
        let lengths = rules.number(Rule::ZonePieceLengths);
        let pieces = Bounds::new(drop_m, crown + lengths * piece, Rule::ZonePieceLengths)
            .reason("zone.pieces", &[("crown", crown), ("piece", piece)]);
        let flight = Bounds::new(drop_m, thrown, Rule::ZonePieceSpeedMs)
            .reason("zone.flight", &[("cut", cut), ("piece", piece)]);
        Some(beyond.or_larger(pieces).or_larger(flight))
    }

    fn rigged(&self, rules: &RuleSet) -> Option<Bounds> {
        let (crown, piece) = (self.crown_m?, self.piece_m?);
        let swing = crown + rules.number(Rule::ZoneSwingPieces) * piece;
        let keep_out = swing + rules.number(Rule::ZoneBeyondDropM);
        let bounds = Bounds::new(swing, keep_out, Rule::ZoneBeyondDropM);
        Some(bounds.reason("zone.swing", &[("crown", crown), ("piece", piece)]))
    }

    fn prune(&self, rules: &RuleSet) -> Option<Bounds> {
        let (crown, piece) = (self.crown_m?, self.piece_m?);
        let drop_m = crown + piece;
        let barrier = crown + rules.number(Rule::ZonePruneBarrierM);
        let barrier = Bounds::new(drop_m, barrier, Rule::ZonePruneBarrierM)
            .reason("zone.prune-barrier", &[("crown", crown)]);
        let beyond = drop_m + rules.number(Rule::ZoneBeyondDropM);
        let beyond = Bounds::new(drop_m, beyond, Rule::ZoneBeyondDropM)
            .reason("zone.beyond-drop", &[("crown", crown), ("piece", piece)]);
        Some(barrier.or_larger(beyond))
    }
}

/// The radii of one way of working and the rule that fixed them.
struct Bounds {
    drop_m: f64,
    everyone_m: f64,
    crew_m: f64,
    fixed_by: Rule,
    reason: Reason,
}

impl Bounds {
    fn new(drop_m: f64, keep_out_m: f64, fixed_by: Rule) -> Self {
        Bounds {
            drop_m,
            everyone_m: keep_out_m,
            crew_m: keep_out_m,
            fixed_by,
            reason: Reason::new("zone.fell"),
        }
    }

    fn felling(length_m: f64, rules: &RuleSet) -> Self {
        let everyone = rules.number(Rule::ZoneFellEveryoneLengths);
        let mut bounds = Bounds::new(length_m, everyone * length_m, Rule::ZoneFellEveryoneLengths)
            .reason("zone.fell", &[("length", length_m)]);
        bounds.reason = bounds.reason.number("lengths", everyone, Quantity::Ratio);
        bounds.crew_m = rules.number(Rule::ZoneFellCrewLengths) * length_m;
        bounds
    }

    fn reason(mut self, code: &str, lengths: &[(&str, f64)]) -> Self {
        self.reason = lengths
            .iter()
            .fold(Reason::new(code), |reason, (name, value)| {
                reason.number(name, *value, Quantity::LengthM)
            });
        self
    }

    /// Where two rules apply the larger distance counts, tier by tier.
    fn or_larger(self, other: Bounds) -> Bounds {
        let (mut larger, smaller) = if other.everyone_m > self.everyone_m {
            (other, self)
        } else {
            (self, other)
        };
        larger.drop_m = larger.drop_m.max(smaller.drop_m);
        larger.crew_m = larger.crew_m.max(smaller.crew_m);
        larger
    }
}

fn line(
    tree: &Tree,
    seen: &Inspection,
    way: WayOfWorking,
    bounds: Bounds,
    rules: &RuleSet,
) -> ZoneAnswer {
    let factor = seen.slope.map_or(1.0, |slope| slope_factor(slope, rules));
    let outline = |radius_m: f64| {
        tree.position
            .map(|at| outline(at, radius_m, seen.slope, factor, rules))
            .unwrap_or_default()
    };
    let gap = match tree.position {
        None => Some("gap.zone-needs-position"),
        Some(at) if at.accuracy_m.is_none() => Some("gap.zone-position-accuracy"),
        Some(_) => None,
    };
    ZoneAnswer {
        way,
        planned: tree.way == Some(way),
        drop_radius_m: bounds.drop_m,
        keep_out_m: bounds.everyone_m,
        keep_out_crew_m: bounds.crew_m,
        keep_out_downhill_m: bounds.everyone_m * factor,
        source: rules.row(bounds.fixed_by).source.clone(),
        rule: bounds.reason,
        drop_outline: outline(bounds.drop_m),
        keep_out_outline: outline(bounds.everyone_m),
        inside: Vec::new(),
        gaps: gap.map(Reason::new).into_iter().collect(),
    }
}

/// The outline on the ground: outside the circle everywhere, grown by the 95 % position radius,
/// wider in the downhill half; all round where nobody said which way is down.
fn outline(
    at: Position,
    radius_m: f64,
    slope: Option<Slope>,
    factor: f64,
    rules: &RuleSet,
) -> Vec<LatLon> {
    let grown_m = radius_m + at.accuracy_m.map_or(0.0, |r68| R95_OF_R68 * r68);
    let corners = rules.number(Rule::ZoneOutlinePoints).max(32.0) as u32;
    let downhill_deg = slope.and_then(|slope| slope.downhill_deg);
    (0..corners)
        .map(|corner| {
            let azimuth_deg = f64::from(corner) * 360.0 / f64::from(corners);
            let wide = downhill_deg.is_none_or(|down| turn_between(azimuth_deg, down) <= 90.0);
            let reach_m = grown_m * if wide { factor } else { 1.0 };
            rounded(point_from(
                at.point(),
                azimuth_deg,
                reach_m * circumscribed_factor(corners),
            ))
        })
        .collect()
}

fn turn_between(one_deg: f64, other_deg: f64) -> f64 {
    let turn = (one_deg - other_deg).rem_euclid(360.0);
    turn.min(360.0 - turn)
}

fn slope_factor(slope: Slope, rules: &RuleSet) -> f64 {
    downhill_factor(
        slope.slope_pct / 100.0,
        rules.number(Rule::ZoneSlopeShare),
        rules.number(Rule::ZoneSlopeMost),
    )
}

/// The 95 % end of a height in metres; a height without a standard error has its method's.
fn height_end_m(height: Height, rules: &RuleSet) -> f64 {
    let share = height.se_m.map_or_else(
        || rules.number(method_rule(height.method)),
        |se| se / height.height_m,
    );
    // Lognormal with that coefficient of variation.
    let spread = libm::sqrt(libm::log(1.0 + share * share));
    height.height_m * libm::exp(Z95 * spread)
}

fn method_rule(method: Option<HeightMethod>) -> Rule {
    match method {
        Some(HeightMethod::Tangent) => Rule::MeasureHeightTangentCv,
        Some(HeightMethod::Percent) => Rule::MeasureHeightPercentCv,
        Some(HeightMethod::Sine) => Rule::MeasureHeightSineCv,
        Some(HeightMethod::TwoPositions) => Rule::MeasureHeightTwoPositionsCv,
        Some(HeightMethod::Stick) => Rule::MeasureHeightStickCv,
        Some(HeightMethod::Tape) => Rule::MeasureHeightTapeCv,
        Some(HeightMethod::TakenOver) => Rule::MeasureHeightTakenOverCv,
        // Nobody said how: read as the least certain way.
        Some(HeightMethod::ByEye) | None => Rule::MeasureHeightByEyeCv,
    }
}

fn way_key(way: WayOfWorking) -> &'static str {
    match way {
        WayOfWorking::InspectOnly => "way-of-working.inspect-only",
        WayOfWorking::Prune => "way-of-working.prune",
        WayOfWorking::SectionFreeDrop => "way-of-working.section-free-drop",
        WayOfWorking::SectionRigged => "way-of-working.section-rigged",
        WayOfWorking::FellWhole => "way-of-working.fell-whole",
        WayOfWorking::FellShortened => "way-of-working.fell-shortened",
        WayOfWorking::PlatformOrCrane => "way-of-working.platform-or-crane",
        WayOfWorking::NoWork => "way-of-working.no-work",
    }
}

#[cfg(test)]
#[path = "zone_tests.rs"]
mod tests;
