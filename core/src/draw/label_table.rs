//! The places tried for a label, and what each costs.

use super::drawing::{DrawnExtent, DrawnText, Spot, TextHold};
use super::frame::{TextWidth, text_extent};
use super::labels::{LabelGround, LabelWish};
use super::lines::{line_meets_extent, lines_cross};

/// Bearings tried right beside a point, the pleasing ones first.
const BESIDE_DEG: [f64; 8] = [90.0, 45.0, 270.0, 315.0, 135.0, 225.0, 0.0, 180.0];
/// Directions and rings tried on a leader.
const LEADER_WAYS: u32 = 16;
const LEADER_RINGS: u32 = 9;

/// A place tried for a label, with what it takes and costs.
pub(crate) struct Candidate {
    pub text: DrawnText,
    pub taken: DrawnExtent,
    pub leader: Option<(Spot, Spot)>,
    pub cost: f64,
}

/// The labels placed so far.
pub(crate) struct Table<'a> {
    pub ground: &'a LabelGround,
    pub m_per_pt: f64,
    pub width: TextWidth<'a>,
    pub boxes: Vec<DrawnExtent>,
    pub leaders: Vec<(Spot, Spot)>,
}

impl Table<'_> {
    /// The cheapest free place for a label.
    pub fn best(&self, wish: &LabelWish) -> Option<Candidate> {
        let mut best: Option<Candidate> = None;
        for (rank, place) in wish.places.iter().enumerate() {
            let aside = 0.4 * rank as f64;
            for (turn, bearing_deg) in beside_bearings(wish).into_iter().enumerate() {
                let cost = aside + 0.05 * turn as f64;
                self.consider(wish, *place, (bearing_deg, 0.0), cost, &mut best);
            }
            for step in 0..LEADER_RINGS * LEADER_WAYS {
                let (ring, way) = (step / LEADER_WAYS, step % LEADER_WAYS);
                let cost = aside + 1.0 + 0.5 * f64::from(ring);
                if !wish.may_lead || best.as_ref().is_some_and(|best| best.cost <= cost) {
                    break;
                }
                let bearing_deg = leader_bearing(wish, way);
                let out_pt = wish.size_pt * (1.0 + 1.1 * f64::from(ring));
                self.consider(wish, *place, (bearing_deg, out_pt), cost, &mut best);
            }
        }
        best
    }

    fn consider(
        &self,
        wish: &LabelWish,
        place: Spot,
        (bearing_deg, out_pt): (f64, f64),
        cost: f64,
        best: &mut Option<Candidate>,
    ) {
        let candidate = self.candidate(wish, place, bearing_deg, out_pt);
        let Some(extra) = self.price(&candidate) else {
            return;
        };
        let cost = cost + extra;
        if best.as_ref().is_none_or(|best| cost < best.cost) {
            *best = Some(Candidate { cost, ..candidate });
        }
    }

    /// The label in a direction, begun `out_pt` further out than beside its point.
    fn candidate(&self, wish: &LabelWish, place: Spot, bearing_deg: f64, out_pt: f64) -> Candidate {
        let reach_m = (wish.clear_pt + out_pt) * self.m_per_pt;
        let end = place.towards(bearing_deg, reach_m);
        let (east_m, north_m) = (end.x_m - place.x_m, end.y_m - place.y_m);
        let sideways = east_m.abs() > 0.35 * reach_m;
        let hold = match (sideways, east_m > 0.0) {
            (false, _) => TextHold::Middle,
            (true, true) => TextHold::Start,
            (true, false) => TextHold::End,
        };
        // Over and under its point a text needs half its own height more.
        let lift_m = if sideways {
            0.0
        } else {
            0.5 * wish.size_pt * self.m_per_pt * north_m.signum()
        };
        let text = DrawnText {
            words: wish.words.clone(),
            at: Spot::new(end.x_m, end.y_m + lift_m),
            size_pt: wish.size_pt,
            hold,
            halo: true,
        };
        let taken = text_extent(&text, self.m_per_pt, self.width);
        let leader = (out_pt > 0.0).then(|| {
            let from = place.towards(bearing_deg, 0.8 * wish.clear_pt * self.m_per_pt);
            let to = place.towards(bearing_deg, reach_m - 0.15 * wish.size_pt * self.m_per_pt);
            (from, to)
        });
        Candidate {
            text,
            taken,
            leader,
            cost: 0.0,
        }
    }

    /// What a place costs beyond its distance; nothing when it is not free.
    fn price(&self, candidate: &Candidate) -> Option<f64> {
        let taken = candidate.taken;
        let inside = self.ground.bounds.is_none_or(|bounds| {
            bounds.holds(Spot {
                x_m: taken.left_m,
                y_m: taken.bottom_m,
            }) && bounds.holds(Spot {
                x_m: taken.right_m,
                y_m: taken.top_m,
            })
        });
        let free = inside
            && !self.boxes.iter().any(|other| other.overlaps(taken))
            && !self.ground.taken.iter().any(|other| other.overlaps(taken))
            && !self
                .ground
                .discs
                .iter()
                .any(|disc| disc_meets(*disc, taken))
            && !self
                .leaders
                .iter()
                .any(|line| line_meets_extent(*line, taken));
        if !free {
            return None;
        }
        let struck = |line: &&(Spot, Spot)| line_meets_extent(**line, taken);
        let under = self.ground.lines.iter().filter(struck).count() as f64;
        Some(1.2 * under.min(3.0) + self.leader_price(candidate.leader)?)
    }

    fn leader_price(&self, leader: Option<(Spot, Spot)>) -> Option<f64> {
        let Some(leader) = leader else {
            return Some(0.0);
        };
        if self
            .boxes
            .iter()
            .any(|taken| line_meets_extent(leader, *taken))
        {
            return None;
        }
        let crossed = self
            .leaders
            .iter()
            .filter(|other| lines_cross(**other, leader))
            .count();
        // Its own symbol is among those under a leader's foot.
        let symbols = self.ground.taken.iter();
        let over = symbols
            .filter(|taken| line_meets_extent(leader, **taken))
            .count()
            .saturating_sub(1);
        Some(1.2 * over as f64 + 4.0 * crossed as f64)
    }
}

fn beside_bearings(wish: &LabelWish) -> Vec<f64> {
    match wish.outward_deg {
        Some(outward_deg) => [0.0, 25.0, -25.0, 50.0, -50.0, 75.0, -75.0]
            .iter()
            .map(|turn| outward_deg + turn)
            .collect(),
        None => BESIDE_DEG.to_vec(),
    }
}

/// The direction of a leader: all around, or fanned out around the bearing it must keep to.
fn leader_bearing(wish: &LabelWish, way: u32) -> f64 {
    let share = f64::from(way) / f64::from(LEADER_WAYS);
    match wish.outward_deg {
        Some(outward_deg) => {
            let side = if way.is_multiple_of(2) { 80.0 } else { -80.0 };
            outward_deg + side * share
        }
        None => 22.5 + 360.0 * share,
    }
}

fn disc_meets((middle, radius_m): (Spot, f64), extent: DrawnExtent) -> bool {
    let nearest = Spot {
        x_m: middle.x_m.clamp(extent.left_m, extent.right_m),
        y_m: middle.y_m.clamp(extent.bottom_m, extent.top_m),
    };
    nearest.distance_m(middle) < radius_m
}
