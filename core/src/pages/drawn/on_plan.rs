//! A finger on the plan of a site, and what is laid over it: degrees to the drawing's metres and back.

use super::plan::{SitePlan, site_drawing, spot, spots};
use super::{DrawnSize, frame};
use crate::draw::{
    DrawnExtent, DrawnMark, LegendLine, PointSymbol, Spot, StyleRole, SymbolShape,
    metres_per_point, plan_ground, point_under_finger, shapes_used,
};
use crate::judge::rules::Rule;
use crate::measure::place::{EastNorth, LocalPlane, rounded};
use crate::measure::position::MOST_ACCURACY_M;
use crate::pages::desk::PageDesk;
use crate::pages::entry::SensedFix;
use crate::record::{Fault, Id, LAT_DEG, LON_DEG, LatLon, Quantity, Site};
use crate::words::Said;

/// How near a tree's mark a finger has to come, in points of the screen: half the side of the
/// smallest button.
const REACH_PT: f64 = 28.0;
/// Points of a screen in a millimetre: 160 to the inch.
const POINTS_IN_MM: f64 = 160.0 / 25.4;
/// Width and height of the marks laid over a plan, in points of the screen.
const ME_PT: f64 = 22.0;
const CORNER_PT: f64 = 16.0;

/// The place under a finger on the plan.
#[derive(Debug, Clone, Copy, PartialEq, uniffi::Record)]
pub struct PlaceOnPlan {
    /// Latitude in degrees.
    pub lat_deg: f64,
    /// Longitude in degrees.
    pub lon_deg: f64,
    /// Radius that holds the true place with 68 % probability, in metres: how far a finger is off at
    /// this size, and how well the plan itself is known; house values of the rule set.
    pub accuracy_m: f64,
}

/// What is laid over a plan: drawn after its own marks, its legend after the plan's.
#[derive(Debug, Clone, PartialEq, Default, uniffi::Record)]
pub struct PlanOverlay {
    /// The marks, from the lowest to the topmost, in the metres of the plan.
    pub marks: Vec<DrawnMark>,
    /// What they mean.
    pub legend: Vec<LegendLine>,
    /// The form of every symbol that occurs in them.
    pub symbols: Vec<SymbolShape>,
    /// What was tapped, in words; empty where nothing was.
    pub words: String,
}

/// What a person is entering on a plan.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct EnteredGround {
    /// Corners in order, and whether they lie around an area.
    pub courses: Vec<(Vec<LatLon>, bool)>,
    /// Single places with the radius that holds them with 68 % probability, where it is known.
    pub places: Vec<(LatLon, Option<f64>)>,
    /// The places that were tapped on the plan.
    pub tapped: Vec<PlaceOnPlan>,
}

/// Where the plan of a site lies.
struct PlanGround {
    plane: LocalPlane,
    extent: DrawnExtent,
    /// Metres on the ground in a point of the screen.
    m_per_pt: f64,
}

impl PlanGround {
    /// Nothing where the site knows no place.
    fn of(desk: &PageDesk, size: DrawnSize) -> Option<PlanGround> {
        let SitePlan { plane, input } = SitePlan::of(desk)?;
        let (extent, scale) = plan_ground(&input, &frame(size));
        Some(PlanGround {
            plane,
            extent,
            m_per_pt: metres_per_point(scale),
        })
    }

    fn holds(&self, at: Spot) -> bool {
        let finite = at.x_m.is_finite() && at.y_m.is_finite();
        let around = DrawnExtent::around([at]);
        finite && around.is_some_and(|around| self.extent.with(around) == self.extent)
    }

    fn place(&self, at: Spot) -> LatLon {
        rounded(self.plane.degrees(EastNorth {
            east_m: at.x_m,
            north_m: at.y_m,
        }))
    }
}

/// The place under a finger at `at`; nothing where there is no plan.
///
/// # Errors
/// A fault for a spot that is no number or off the plan, and for a plan so small that a finger
/// covers more ground than a position may be off.
pub fn place_on_plan(
    desk: &PageDesk,
    size: DrawnSize,
    at: Spot,
) -> Option<Result<PlaceOnPlan, Fault>> {
    let (site, _) = desk.site?;
    let ground = PlanGround::of(desk, size)?;
    if !ground.holds(at) {
        return Some(Err(Fault::new("fault.off-the-plan", "", "", "")));
    }
    let place = ground.place(at);
    if !on_globe(place) {
        return Some(Err(Fault::new("fault.off-the-plan", "", "", "")));
    }
    let accuracy_m = accuracy_m(desk, site, ground.m_per_pt);
    if accuracy_m > MOST_ACCURACY_M {
        let said = |m: f64| desk.words.number(m, Quantity::LengthM);
        let (found, most) = (said(accuracy_m), said(MOST_ACCURACY_M));
        return Some(Err(Fault::new("fault.plan-too-small", "", found, most)));
    }
    Some(Ok(PlaceOnPlan {
        lat_deg: place.lat_deg,
        lon_deg: place.lon_deg,
        accuracy_m,
    }))
}

/// A finger's width at the plan's scale, and how well the plan itself is known: as its middling tree,
/// or as the house value where that is larger. Rounded up to a tenth of a metre.
fn accuracy_m(desk: &PageDesk, site: &Site, m_per_pt: f64) -> f64 {
    let finger_m = desk.rules.number(Rule::MeasurePositionTapMm) * POINTS_IN_MM * m_per_pt;
    let known = site.trees.iter().filter_map(|tree| tree.position);
    let mut known_m: Vec<f64> = known.filter_map(|at| at.accuracy_m).collect();
    known_m.sort_by(f64::total_cmp);
    let middling_m = known_m.get(known_m.len() / 2).copied().unwrap_or(0.0);
    let plan_m = middling_m.max(desk.rules.number(Rule::MeasurePositionPlanM));
    libm::ceil(libm::hypot(finger_m, plan_m) * 10.0) / 10.0
}

fn on_globe(at: LatLon) -> bool {
    let nowhere = at.lat_deg == 0.0 && at.lon_deg == 0.0;
    LAT_DEG.allows(at.lat_deg) && LON_DEG.allows(at.lon_deg) && !nowhere
}

/// The tree whose mark or tag is nearest to a finger at `at`, within its reach.
pub fn tree_on_plan(desk: &PageDesk, size: DrawnSize, at: Spot) -> Option<Id> {
    let (site, _) = desk.site?;
    let drawing = site_drawing(desk, &frame(size))?;
    let is_tree = |id: &str| site.trees.iter().any(|tree| tree.id.as_str() == id);
    point_under_finger(&drawing, at, REACH_PT, is_tree).map(Id)
}

/// Where the phone is, laid over the plan with the ring that holds it with 95 % probability. Nothing
/// of it where the fix cannot be used or lies off the plan.
pub fn me_on_plan(desk: &PageDesk, size: DrawnSize, fix: &SensedFix) -> Option<PlanOverlay> {
    let ground = PlanGround::of(desk, size)?;
    let place = LatLon {
        lat_deg: fix.lat_deg,
        lon_deg: fix.lon_deg,
    };
    let coarse = fix.accuracy_m.is_some_and(|m| m > MOST_ACCURACY_M);
    if coarse || !on_globe(place) || !ground.holds(spot(&ground.plane, place)) {
        return Some(PlanOverlay::default());
    }
    let at = spot(&ground.plane, place);
    let mut marks = Vec::new();
    ring(&mut marks, at, fix.accuracy_m);
    marks.push(symbol(at, PointSymbol::Me, ME_PT, StyleRole::Me));
    let words = desk.say("legend.me");
    let legend = vec![legend(StyleRole::Me, PointSymbol::Me, &words)];
    Some(laid_over(marks, legend, words))
}

/// What is being entered, laid over the plan: corners with the line between them, closed around an
/// area; single places with their rings. What is no place on Earth is left out.
pub fn entered_on_plan(desk: &PageDesk, entered: &EnteredGround) -> Option<PlanOverlay> {
    let plane = SitePlan::of(desk)?.plane;
    let mut marks = Vec::new();
    for (corners, closed) in &entered.courses {
        let corners: Vec<LatLon> = corners.iter().copied().filter(|at| on_globe(*at)).collect();
        course(&mut marks, spots(&plane, &corners), *closed);
    }
    for (place, accuracy_m) in entered.places.iter().filter(|(at, _)| on_globe(*at)) {
        let at = spot(&plane, *place);
        ring(&mut marks, at, *accuracy_m);
        marks.push(corner(at));
    }
    let shown = if marks.is_empty() {
        Vec::new()
    } else {
        let words = desk.say("legend.entered");
        vec![legend(StyleRole::Entered, PointSymbol::Corner, &words)]
    };
    let words = entered.tapped.iter().map(|place| in_words(desk, place));
    Some(laid_over(
        marks,
        shown,
        words.collect::<Vec<_>>().join("\n"),
    ))
}

fn laid_over(marks: Vec<DrawnMark>, legend: Vec<LegendLine>, words: String) -> PlanOverlay {
    PlanOverlay {
        symbols: shapes_used(&marks, &legend),
        marks,
        legend,
        words,
    }
}

fn course(marks: &mut Vec<DrawnMark>, spots: Vec<Spot>, closed: bool) {
    let (role, about) = (StyleRole::Entered, String::new());
    if closed && spots.len() > 2 {
        let rings = vec![spots.clone()];
        marks.push(DrawnMark::Polygon { rings, role, about });
    } else if spots.len() > 1 {
        let spots = spots.clone();
        marks.push(DrawnMark::Polyline { spots, role, about });
    }
    marks.extend(spots.into_iter().map(corner));
}

fn corner(at: Spot) -> DrawnMark {
    symbol(at, PointSymbol::Corner, CORNER_PT, StyleRole::Entered)
}

fn ring(marks: &mut Vec<DrawnMark>, centre: Spot, accuracy_m: Option<f64>) {
    let known = accuracy_m.filter(|m| m.is_finite() && *m > 0.0);
    marks.extend(known.map(|radius_m| DrawnMark::Circle {
        centre,
        radius_m: radius_m * super::plan::TO_95_PERCENT,
        role: StyleRole::AccuracyRing,
        about: String::new(),
    }));
}

fn symbol(at: Spot, symbol: PointSymbol, size_pt: f64, role: StyleRole) -> DrawnMark {
    DrawnMark::Symbol {
        at,
        symbol,
        size_pt,
        turn_deg: 0.0,
        role,
        about: String::new(),
    }
}

fn legend(role: StyleRole, symbol: PointSymbol, words: &str) -> LegendLine {
    LegendLine {
        role,
        symbol: Some(symbol),
        words: words.to_owned(),
    }
}

fn in_words(desk: &PageDesk, place: &PlaceOnPlan) -> String {
    let at = format!("{:.5}, {:.5}", place.lat_deg, place.lon_deg);
    let accuracy = desk.words.number(place.accuracy_m, Quantity::LengthM);
    desk.words.say(
        "position.on-plan",
        &[("at", Said::Text(&at)), ("accuracy", Said::Text(&accuracy))],
    )
}

#[cfg(test)]
mod tests {
    use super::super::width;
    use super::*;
    use crate::draw::{PlanArea, PlanTree, plan};
    use proptest::prelude::*;

    fn ground(lat_deg: f64, lon_deg: f64, wide_m: f64, zoom: u32) -> PlanGround {
        let (extent, scale) = plan_ground(&input(wide_m), &frame(DrawnSize::at_zoom(zoom)));
        PlanGround {
            plane: LocalPlane::around(LatLon { lat_deg, lon_deg }),
            extent,
            m_per_pt: metres_per_point(scale),
        }
    }

    fn input(wide_m: f64) -> crate::draw::PlanInput {
        let centre = Spot::new(wide_m / 2.0, 0.0);
        let radius_m = wide_m / 2.0;
        crate::draw::PlanInput {
            described: String::new(),
            property: Vec::new(),
            trees: vec![PlanTree {
                id: "t".into(),
                tag: "1".into(),
                at: centre,
                accuracy_m: None,
                crown: Some(PlanArea::Circle { centre, radius_m }),
                dead: false,
                symbol: PointSymbol::TreePlain,
            }],
            zones: Vec::new(),
            targets: Vec::new(),
            overhead_lines: Vec::new(),
            distances: Vec::new(),
            merge_zones: false,
            north: "N".into(),
            bar_unit: crate::draw::BarUnit {
                sign: "m".into(),
                unit_m: 1.0,
            },
            legend: Vec::new(),
        }
    }

    #[test]
    fn the_ground_is_that_of_the_drawing() {
        for zoom in 0..4 {
            let drawing = plan(&input(130.0), &frame(DrawnSize::at_zoom(zoom)), &width).drawing;
            let (extent, scale) = plan_ground(&input(130.0), &frame(DrawnSize::at_zoom(zoom)));
            assert_eq!((drawing.extent, drawing.scale), (extent, scale));
        }
    }

    proptest! {
        /// A tapped spot and its place are each other's inverse to 2 mm, across 180° as elsewhere.
        #[test]
        fn a_place_and_its_spot_are_inverse(
            lat_deg in -75.0..75.0_f64,
            lon_deg in prop_oneof![-180.0..180.0_f64, 179.99..180.0_f64, -180.0..-179.99_f64],
            wide_m in 10.0..2_000.0_f64,
            (across, up) in (0.0..1.0_f64, 0.0..1.0_f64),
            zoom in 0..4_u32,
        ) {
            let ground = ground(lat_deg, lon_deg, wide_m, zoom);
            let extent = ground.extent;
            let at = Spot::new(
                extent.left_m + across * extent.width_m(),
                extent.bottom_m + up * extent.height_m(),
            );
            let place = ground.place(at);
            prop_assert!(LON_DEG.allows(place.lon_deg), "{place:?}");
            let back = spot(&ground.plane, place);
            prop_assert!(back.distance_m(at) < 0.002, "{at:?} {back:?}");
            prop_assert_eq!(ground.place(back), place);
        }
    }
}
