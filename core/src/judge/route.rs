//! The route of a climb, and where a defect lies beside it.
//!
//! The route is the stem on the side of ascent up to the anchor, the limb that carries the anchor,
//! and the limbs to be reached; above it is what could fall on them. What bears the anchor is never
//! beside the route, whatever its side. An unknown side or height counts as on the route.

use crate::record::{AnchorPoint, ClimbPlan, Finding, Id, TreePart};

use super::rules::{Rule, RuleSet};

/// A limb nearer to the vertical than this goes on as a stem: its bearing says nothing (house).
const UPRIGHT_LIMB_DEG: f64 = 20.0;
/// Half the sector that belongs to a limb or a side of ascent (house).
const SECTOR_DEG: f64 = 45.0;
/// Beyond this the crown of the other half begins (house).
const OTHER_HALF_DEG: f64 = 90.0;
/// A limb to be reached is known again by bearing and height within these (house).
const SAME_LIMB_DEG: f64 = 15.0;
const SAME_LIMB_M: f64 = 1.0;

/// Where a defect lies beside a route.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Place {
    /// On the route.
    OnRoute,
    /// Under the anchor: the route hangs on it.
    UnderAnchor,
    /// Above the route: it could fall on it.
    Above,
    /// Within the rule set's distance.
    Near,
    /// Elsewhere in the tree.
    Elsewhere,
}

impl Place {
    /// On the route, above it or under the anchor.
    pub(crate) fn counts_in_full(self) -> bool {
        matches!(self, Place::OnRoute | Place::UnderAnchor | Place::Above)
    }

    /// The catalogue's word for it.
    pub(crate) fn term(self) -> &'static str {
        match self {
            Place::OnRoute => "place.on-route",
            Place::UnderAnchor => "place.under-anchor",
            Place::Above => "place.above",
            Place::Near => "place.near",
            Place::Elsewhere => "place.elsewhere",
        }
    }

    /// What is left of a factor at this place.
    pub(crate) fn weigh(self, factor: f64, rules: &RuleSet) -> f64 {
        match self {
            Place::Near => libm::pow(factor, rules.number(Rule::FindingNearPower)),
            Place::Elsewhere => libm::pow(factor, rules.number(Rule::FindingFarPower)),
            _ => factor,
        }
    }
}

/// A limb that the climb has to reach.
struct Reached {
    bearing_deg: f64,
    height_m: Option<f64>,
}

/// A route.
pub(crate) struct Route {
    anchor: Id,
    anchor_m: Option<f64>,
    /// Bearings of the side of ascent and of the limb that carries the anchor; nothing where one of
    /// them is unknown.
    sides: Option<Vec<f64>>,
    reached: Vec<Reached>,
    near_m: f64,
}

impl Route {
    /// The route to an anchor. Without a plan the ascent is on the anchor's side.
    pub(crate) fn of(
        plan: Option<&ClimbPlan>,
        anchor: Option<&AnchorPoint>,
        rules: &RuleSet,
    ) -> Self {
        let limb = anchor.and_then(|a| a.limb_bearing_deg);
        let upright = anchor
            .and_then(|a| a.limb_angle_deg)
            .is_some_and(|angle| angle <= UPRIGHT_LIMB_DEG);
        let ascent = match plan {
            Some(plan) => plan.ascent_side_deg,
            None => limb,
        };
        let sides = match (ascent, limb) {
            (Some(ascent), Some(limb)) => Some(vec![ascent, limb]),
            (Some(ascent), None) if upright => Some(vec![ascent]),
            _ => None,
        };
        let limbs = plan.iter().flat_map(|plan| plan.limbs.iter());
        Route {
            anchor: anchor.map(|a| a.id.clone()).unwrap_or_default(),
            anchor_m: anchor.and_then(|a| a.height_m),
            sides,
            reached: limbs
                .map(|limb| Reached {
                    bearing_deg: limb.bearing_deg,
                    height_m: limb.height_m,
                })
                .collect(),
            near_m: rules.number(Rule::FindingNearM),
        }
    }

    /// Whether the sides of the route are known.
    pub(crate) fn is_known(&self) -> bool {
        self.sides.is_some() && self.anchor_m.is_some()
    }

    /// Whether a height is at or below the anchor; an unknown one counts as below.
    pub(crate) fn is_below(&self, height_m: Option<f64>) -> bool {
        match (height_m, self.anchor_m) {
            (Some(height), Some(anchor)) => height <= anchor,
            _ => true,
        }
    }

    /// Where a finding lies.
    pub(crate) fn place(&self, finding: &Finding) -> Place {
        match finding.part {
            TreePart::Roots | TreePart::Base => Place::UnderAnchor,
            TreePart::Stem if self.is_below(finding.height_m) => Place::UnderAnchor,
            // The top of the same stem can come down on any side of it.
            TreePart::Stem => Place::Above,
            _ if self.is_anchors(finding) => Place::OnRoute,
            TreePart::Union if self.is_below(finding.height_m) => Place::UnderAnchor,
            _ => self.place_in_crown(finding),
        }
    }

    fn is_anchors(&self, finding: &Finding) -> bool {
        !finding.anchor.is_empty() && finding.anchor == self.anchor
    }

    fn place_in_crown(&self, finding: &Finding) -> Place {
        let (Some(side), Some(height), Some(sides), Some(anchor_m)) = (
            finding.side_deg,
            finding.height_m,
            &self.sides,
            self.anchor_m,
        ) else {
            return Place::OnRoute;
        };
        if self.reached.iter().any(|limb| limb.is_at(side, height)) {
            return Place::OnRoute;
        }
        let reached = self.reached.iter().map(|limb| limb.bearing_deg);
        let off_deg = sides
            .iter()
            .copied()
            .chain(reached)
            .map(|bearing| turn_between(bearing, side))
            .fold(180.0, f64::min);
        if off_deg <= SECTOR_DEG {
            Place::Above
        } else if off_deg <= OTHER_HALF_DEG
            || (finding.part == TreePart::Union && height - anchor_m <= self.near_m)
        {
            Place::Near
        } else {
            Place::Elsewhere
        }
    }
}

impl Reached {
    fn is_at(&self, side_deg: f64, height_m: f64) -> bool {
        turn_between(self.bearing_deg, side_deg) <= SAME_LIMB_DEG
            && self
                .height_m
                .is_none_or(|height| (height - height_m).abs() <= SAME_LIMB_M)
    }
}

/// The smaller turn between two bearings, 0 to 180 degrees.
pub(crate) fn turn_between(one_deg: f64, other_deg: f64) -> f64 {
    let turn = (one_deg - other_deg).rem_euclid(360.0);
    turn.min(360.0 - turn)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn finding(part: &str, height_m: Option<f64>, side_deg: Option<f64>) -> Finding {
        let mut json = serde_json::json!({"code": "wound", "part": part});
        json["height_m"] = height_m.into();
        json["side_deg"] = side_deg.into();
        serde_json::from_value(json).unwrap()
    }

    fn route() -> Route {
        let anchor: AnchorPoint = serde_json::from_str(
            r#"{"id":"a","height_m":12.0,"limb_bearing_deg":90.0,"limb_angle_deg":40.0}"#,
        )
        .unwrap();
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        Route::of(None, Some(&anchor), &rules)
    }

    // Method, section 5, with the house sectors named above.
    #[test]
    fn what_bears_the_anchor_counts_in_full_on_every_side() {
        let route = route();
        assert_eq!(
            route.place(&finding("roots", None, Some(270.0))),
            Place::UnderAnchor
        );
        let stem = finding("stem", Some(3.0), Some(270.0));
        assert_eq!(route.place(&stem), Place::UnderAnchor);
        let top = finding("stem", Some(15.0), Some(270.0));
        assert_eq!(route.place(&top), Place::Above);
    }

    #[test]
    fn in_the_crown_the_side_decides_and_an_unknown_one_is_on_the_route() {
        let route = route();
        let crown = |height, side| route.place(&finding("limb", height, side));
        assert_eq!(crown(Some(14.0), Some(100.0)), Place::Above);
        assert_eq!(crown(Some(14.0), Some(170.0)), Place::Near);
        assert_eq!(crown(Some(14.0), Some(270.0)), Place::Elsewhere);
        assert_eq!(crown(None, Some(270.0)), Place::OnRoute);
        assert_eq!(crown(Some(14.0), None), Place::OnRoute);
    }

    #[test]
    fn bearings_meet_across_north() {
        assert_eq!(turn_between(350.0, 10.0), 20.0);
    }
}
