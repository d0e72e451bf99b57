//! How a site fits its frame: what must be seen, at which scale, on how much paper.

use super::drawing::{DrawnExtent, Spot};
use super::easel::Easel;
use super::frame::{DrawnFrame, frame_extent, metres_per_point};
use super::plan_input::{PlanArea, PlanInput, PlanTarget};

/// The rectangle in metres that the plan of the whole site fills in `frame`, and its scale, without
/// laying it out.
pub fn plan_ground(input: &PlanInput, frame: &DrawnFrame) -> (DrawnExtent, f64) {
    let (input, frame) = (input.finite(), frame.held());
    let whole = whole_extent(&input);
    let scale = scale_around(whole, &frame);
    let frame = cut_frame(&frame, scale, whole);
    let foot_pt = Easel::foot_pt(&frame);
    (frame_extent(&frame, scale, whole.middle(), foot_pt), scale)
}

/// What a plan of the whole site must show: property, trees, crowns, zones and the places of
/// targets. Lines, roads and outlines that run on are cut at its edge.
pub(crate) fn whole_extent(input: &PlanInput) -> DrawnExtent {
    let trees = input.trees.iter().flat_map(|tree| {
        let crown = tree.crown.as_ref().map(PlanArea::reach);
        crown.unwrap_or_default().into_iter().chain([tree.at])
    });
    let distances = input.distances.iter().map(|distance| {
        distance
            .from
            .towards(distance.bearing_deg, distance.distance_m)
    });
    let site = input
        .property
        .iter()
        .flatten()
        .copied()
        .chain(trees)
        .chain(input.zones.iter().flat_map(|zone| zone.area.reach()))
        .chain(input.targets.iter().filter_map(target_spot))
        .chain(distances);
    let lines = input
        .overhead_lines
        .iter()
        .flat_map(|line| line.course.iter().copied());
    DrawnExtent::around(site)
        .or_else(|| DrawnExtent::around(lines))
        .unwrap_or(DrawnExtent {
            left_m: -5.0,
            bottom_m: -5.0,
            right_m: 5.0,
            top_m: 5.0,
        })
}

/// Room for a tag at the edge of the site, in letters.
const RIM_LETTERS: f64 = 3.0;

/// The largest scale at which `whole` fits, with room for a tag at its edge.
pub(crate) fn scale_around(whole: DrawnExtent, frame: &DrawnFrame) -> f64 {
    let rim_pt = RIM_LETTERS * frame.text_pt;
    frame.scale_for(
        (whole.width_m().max(2.0), whole.height_m().max(2.0)),
        (
            frame.width_pt - 2.0 * rim_pt,
            frame.height_pt - Easel::foot_pt(frame) - 2.0 * rim_pt,
        ),
    )
}

/// Size of a tree's symbol in points.
pub(crate) fn tree_pt(frame: &DrawnFrame) -> f64 {
    1.15 * frame.text_pt
}

/// No higher than the site needs, with its rim and the foot.
pub(crate) fn cut_frame(frame: &DrawnFrame, scale: f64, whole: DrawnExtent) -> DrawnFrame {
    let rim_pt = 2.0 * RIM_LETTERS * frame.text_pt;
    frame.cut_to(whole.height_m() / metres_per_point(scale) + rim_pt + Easel::foot_pt(frame))
}

/// Where the symbol of a target stands: its point, else the middle of its outline.
pub(crate) fn target_spot(target: &PlanTarget) -> Option<Spot> {
    target
        .at
        .or_else(|| DrawnExtent::around(target.outline.iter().copied()).map(DrawnExtent::middle))
}
