//! Words in a column at the edge of a drawing, each on a line to what it names.

use super::drawing::{PointSymbol, Spot, StyleRole, TextHold};
use super::easel::Easel;

/// Words for one place.
pub(crate) struct Callout {
    pub about: String,
    /// What the line leads to.
    pub at: Spot,
    /// Number in a disc before the words; may be empty.
    pub number: String,
    pub lines: Vec<String>,
    pub role: StyleRole,
}

/// Height of a line of words, in letters.
const LINE: f64 = 1.25;

/// Height in points of a call-out of so many lines, with the room to the next.
pub(crate) fn callout_pt(lines: usize, text_pt: f64) -> f64 {
    (LINE * lines.max(1) as f64 + 0.45) * text_pt
}

/// Writes `callouts` in a column at the left or right edge, each as near to the height of its
/// place as its neighbours let it, in the order of their heights.
pub(crate) fn place_callouts(easel: &mut Easel, callouts: &[Callout], left: bool, column_pt: f64) {
    let text_pt = easel.frame.text_pt;
    let mut ordered: Vec<&Callout> = callouts
        .iter()
        .filter(|callout| !callout.lines.is_empty() || !callout.number.is_empty())
        .collect();
    // Stable: equal heights keep the order of the input.
    ordered.sort_by(|one, other| other.at.y_m.total_cmp(&one.at.y_m));
    let body = easel.body();
    let line_m = easel.metres(LINE * text_pt);
    let heights: Vec<f64> = ordered
        .iter()
        .map(|callout| easel.metres(callout_pt(callout.lines.len(), text_pt)))
        .collect();
    let wanted: Vec<f64> = ordered.iter().map(|callout| callout.at.y_m).collect();
    let middles = spread(&wanted, &heights, body.bottom_m, body.top_m);
    let edge_m = easel.metres(0.6 * text_pt);
    let inner_m = easel.metres(column_pt) - edge_m;
    for (callout, middle_m) in ordered.into_iter().zip(middles) {
        let x_m = if left {
            body.left_m + edge_m
        } else {
            body.right_m - inner_m
        };
        let joint_m = if left { body.left_m + inner_m } else { x_m };
        let end = if left {
            text_end_m(easel, callout, x_m).min(joint_m)
        } else {
            x_m - easel.metres(0.3 * text_pt)
        };
        easel.line(
            vec![Spot::new(end, middle_m), callout.at],
            StyleRole::Leader,
            &callout.about,
        );
        write_callout(easel, callout, Spot::new(x_m, middle_m), line_m);
    }
}

/// Where the words of a call-out at the left end.
fn text_end_m(easel: &Easel, callout: &Callout, x_m: f64) -> f64 {
    let text_pt = easel.frame.text_pt;
    let longest_pt = callout
        .lines
        .iter()
        .map(|line| (easel.width)(line, text_pt))
        .fold(0.0, f64::max);
    let disc_pt = if callout.number.is_empty() {
        0.0
    } else {
        1.9 * text_pt
    };
    x_m + easel.metres(disc_pt + longest_pt + 0.3 * text_pt)
}

fn write_callout(easel: &mut Easel, callout: &Callout, at: Spot, line_m: f64) {
    let text_pt = easel.frame.text_pt;
    let mut x_m = at.x_m;
    if !callout.number.is_empty() {
        let disc_m = easel.metres(0.8 * text_pt);
        let disc = Spot::new(x_m + disc_m, at.y_m);
        let size_pt = 1.6 * text_pt;
        easel.symbol(
            disc,
            PointSymbol::Finding,
            size_pt,
            0.0,
            callout.role,
            &callout.about,
        );
        let small_pt = 0.9 * text_pt;
        easel.write_on_symbol(&callout.number, disc, small_pt, &callout.about);
        x_m += easel.metres(1.9 * text_pt);
    }
    let first_m = at.y_m + line_m * (callout.lines.len().saturating_sub(1)) as f64 / 2.0;
    for (turn, line) in callout.lines.iter().enumerate() {
        let place = Spot::new(x_m, first_m - line_m * turn as f64);
        easel.write(line, place, TextHold::Start, callout.role, &callout.about);
    }
}

/// The middles of boxes of the given heights, in order from the top, none over another, each near
/// where it wants to be. Boxes that do not all fit are pushed together evenly from the top.
fn spread(wanted: &[f64], heights: &[f64], bottom: f64, top: f64) -> Vec<f64> {
    let total: f64 = heights.iter().sum();
    let squeeze = if total > 0.0 {
        ((top - bottom) / total).min(1.0)
    } else {
        1.0
    };
    let heights: Vec<f64> = heights.iter().map(|height| height * squeeze).collect();
    // From the top down none above its limit, then from the bottom up none below.
    let mut limit = top;
    let mut middles: Vec<f64> = Vec::new();
    for (wish, height) in wanted.iter().zip(&heights) {
        let middle = wish.min(limit - height / 2.0);
        limit = middle - height / 2.0;
        middles.push(middle);
    }
    let mut floor = bottom;
    for (middle, height) in middles.iter_mut().zip(&heights).rev() {
        *middle = middle.max(floor + height / 2.0);
        floor = *middle + height / 2.0;
    }
    middles
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2_000))]
        #[test]
        fn callouts_never_overlap_and_stay_in_the_column(
            mut wanted in prop::collection::vec(-2.0..30.0f64, 0..12),
            height in 0.2..4.0f64,
        ) {
            wanted.sort_by(|one, other| other.total_cmp(one));
            let heights = vec![height; wanted.len()];
            let middles = spread(&wanted, &heights, 0.0, 25.0);
            let fits = height * wanted.len() as f64 <= 25.0;
            let own = if fits { height } else { 25.0 / wanted.len() as f64 };
            for pair in middles.windows(2) {
                prop_assert!(pair[0] - pair[1] >= own - 1e-9);
            }
            for middle in &middles {
                prop_assert!(*middle >= own / 2.0 - 1e-9 && *middle <= 25.0 - own / 2.0 + 1e-9);
            }
        }
    }

    #[test]
    fn a_callout_with_room_stands_where_it_wants() {
        assert_eq!(spread(&[12.0, 3.0], &[1.0, 1.0], 0.0, 20.0), [12.0, 3.0]);
        assert_eq!(spread(&[3.0, 3.0], &[2.0, 2.0], 0.0, 20.0), [3.0, 1.0]);
    }
}
