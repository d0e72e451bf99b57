//! What lies under a finger.

use super::drawing::{Drawing, DrawnMark, Spot};
use super::frame::metres_per_point;
use super::lines::{distance_to_line_m, inside_rings, pieces};

/// The id of what lies under `at`, with a finger's reach of `reach_pt` points: the nearest symbol
/// or text, else the nearest line, else the topmost area; nothing where nothing can be tapped.
pub fn under_finger(drawing: &Drawing, at: Spot, reach_pt: f64) -> Option<String> {
    let reach_m = reach_pt * metres_per_point(drawing.scale);
    let tappable = || {
        drawing
            .marks
            .iter()
            .rev()
            .filter(|mark| !about(mark).is_empty())
    };
    nearest(tappable(), reach_m, |mark| point_distance_m(mark, at))
        .or_else(|| nearest(tappable(), reach_m, |mark| line_distance_m(mark, at)))
        .or_else(|| {
            tappable()
                .find(|mark| covers(mark, at))
                .map(|mark| about(mark).to_owned())
        })
}

/// The id of the nearest symbol or text within a finger's reach whose id is `wanted`, whatever else
/// lies there.
pub fn point_under_finger(
    drawing: &Drawing,
    at: Spot,
    reach_pt: f64,
    wanted: impl Fn(&str) -> bool,
) -> Option<String> {
    let reach_m = reach_pt * metres_per_point(drawing.scale);
    let marks = drawing.marks.iter().rev();
    let wanted = marks.filter(|mark| wanted(about(mark)));
    nearest(wanted, reach_m, |mark| point_distance_m(mark, at))
}

fn nearest<'a>(
    marks: impl Iterator<Item = &'a DrawnMark>,
    reach_m: f64,
    distance_m: impl Fn(&DrawnMark) -> Option<f64>,
) -> Option<String> {
    marks
        .filter_map(|mark| distance_m(mark).map(|away_m| (away_m, mark)))
        .filter(|(away_m, _)| *away_m <= reach_m)
        .min_by(|one, other| one.0.total_cmp(&other.0))
        .map(|(_, mark)| about(mark).to_owned())
}

fn about(mark: &DrawnMark) -> &str {
    match mark {
        DrawnMark::Polygon { about, .. }
        | DrawnMark::Polyline { about, .. }
        | DrawnMark::Circle { about, .. }
        | DrawnMark::Symbol { about, .. }
        | DrawnMark::Written { about, .. } => about,
    }
}

fn point_distance_m(mark: &DrawnMark, at: Spot) -> Option<f64> {
    match mark {
        DrawnMark::Symbol { at: place, .. } => Some(place.distance_m(at)),
        DrawnMark::Written { text, .. } => Some(text.at.distance_m(at)),
        _ => None,
    }
}

fn line_distance_m(mark: &DrawnMark, at: Spot) -> Option<f64> {
    let DrawnMark::Polyline { spots, .. } = mark else {
        return None;
    };
    pieces(spots, false)
        .into_iter()
        .map(|piece| distance_to_line_m(at, piece))
        .min_by(f64::total_cmp)
}

fn covers(mark: &DrawnMark, at: Spot) -> bool {
    match mark {
        DrawnMark::Polygon { rings, .. } => inside_rings(at, rings),
        DrawnMark::Circle {
            centre, radius_m, ..
        } => centre.distance_m(at) <= *radius_m,
        _ => false,
    }
}
