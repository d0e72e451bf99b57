//! The tree of a side view, the person and the wires beside it.

use super::drawing::{PointSymbol, Spot, StyleRole};
use super::easel::Easel;
use super::profile::{KeepClearMark, PERSON_M, ProfileInput};
use super::silhouette::person_outline;

/// The tree with its sizes held in their ranges.
pub(crate) struct Tree {
    pub height_m: f64,
    pub lean: f64,
    pub diameter_m: f64,
    pub crown: Option<(f64, f64)>,
}

impl Tree {
    pub fn of(input: &ProfileInput) -> Tree {
        let held = |value: Option<f64>, fallback: f64, least: f64, most: f64| {
            value
                .filter(|value| value.is_finite())
                .unwrap_or(fallback)
                .clamp(least, most)
        };
        let height_m = held(Some(input.height_m), 1.0, 0.5, 200.0);
        let lean_deg = held(Some(input.lean_deg), 0.0, -80.0, 80.0);
        Tree {
            height_m,
            lean: libm::tan(lean_deg.to_radians()),
            diameter_m: held(input.diameter_m, height_m / 30.0, 0.02, 12.0),
            crown: input
                .crown_radius_m
                .filter(|r| r.is_finite() && *r > 0.0)
                .map(|radius_m| {
                    let base_m = held(input.crown_base_m, height_m / 3.0, 0.0, 0.95 * height_m);
                    (radius_m.min(80.0), base_m)
                }),
        }
    }

    /// The middle of the stem at a height.
    pub fn axis_m(&self, height_m: f64) -> f64 {
        height_m * self.lean
    }

    /// Half the stem's width at a height: a stem tapers with the power 0.8 of what is above (the
    /// same house taper as in the judgement), with a flare over the lowest half metre.
    pub fn half_m(&self, height_m: f64) -> f64 {
        let breast_m = 1.3f64.min(self.height_m / 2.0);
        let above = (self.height_m - height_m).max(0.0) / (self.height_m - breast_m);
        let flare = 1.0 + 0.35 * (1.0 - height_m / 0.5).max(0.0);
        0.5 * self.diameter_m * libm::pow(above, 0.8) * flare
    }
}

/// What has to be seen, from left to right.
pub(crate) struct Span {
    pub left_m: f64,
    pub right_m: f64,
    pub top_m: f64,
    pub person_m: f64,
    /// Where the height is drawn, beside everything else.
    pub dimension_m: f64,
}

impl Span {
    pub fn of(input: &ProfileInput, tree: &Tree) -> Span {
        let reach_m = tree.crown.map_or(tree.diameter_m, |(radius_m, _)| radius_m);
        let crown_m = tree.crown.map_or(0.0, |(_, base_m)| {
            tree.axis_m((base_m + tree.height_m) / 2.0)
        });
        let top_m = tree.axis_m(tree.height_m);
        let mut left_m = (crown_m - reach_m).min(top_m).min(-tree.diameter_m);
        let mut right_m = (crown_m + reach_m).max(top_m).max(tree.diameter_m);
        let mut highest_m = tree.height_m;
        for mark in finite_lines(input) {
            left_m = left_m.min(mark.offset_m - mark.approach_m);
            right_m = right_m.max(mark.offset_m + mark.approach_m);
            highest_m = highest_m.max(mark.height_m.map_or(0.0, |h| h + mark.approach_m));
        }
        // The person stands on the side away from the lean, clear of crown and lines.
        let person_m = left_m - 0.6;
        Span {
            left_m: left_m - 1.1,
            right_m,
            top_m: highest_m,
            person_m,
            dimension_m: right_m,
        }
    }
}

pub(crate) fn finite_lines(input: &ProfileInput) -> impl Iterator<Item = &KeepClearMark> {
    input.keep_clear.iter().filter(|mark| {
        mark.offset_m.abs() < 500.0
            && (0.0..200.0).contains(&mark.approach_m)
            && mark
                .height_m
                .is_none_or(|height_m| (0.0..500.0).contains(&height_m))
    })
}

/// The ground, between the columns of words.
pub(crate) fn draw_ground(easel: &mut Easel, (left_pt, right_pt): (f64, f64)) {
    let left_m = easel.extent.left_m + easel.metres(left_pt);
    let right_m = easel.extent.right_m - easel.metres(right_pt);
    easel.line(
        vec![Spot::new(left_m, 0.0), Spot::new(right_m, 0.0)],
        StyleRole::Ground,
        "",
    );
}

pub(crate) fn draw_tree(easel: &mut Easel, input: &ProfileInput, tree: &Tree) {
    if let Some((radius_m, base_m)) = tree.crown {
        let role = if input.dead {
            StyleRole::DeadCrown
        } else {
            StyleRole::Crown
        };
        easel.area(
            vec![crown_outline(tree, radius_m, base_m)],
            role,
            &input.about,
        );
    }
    easel.area(vec![stem_outline(tree)], StyleRole::Stem, &input.about);
}

/// An egg: widest at two fifths of its depth, its middle on the leaning stem.
fn crown_outline(tree: &Tree, radius_m: f64, base_m: f64) -> Vec<Spot> {
    let depth_m = tree.height_m - base_m;
    (0..72)
        .map(|step| {
            let turn = (5.0 * f64::from(step)).to_radians();
            let (across, up) = (libm::sin(turn), -libm::cos(turn));
            let share = if up < 0.0 {
                0.4 * (1.0 + up)
            } else {
                0.4 + 0.6 * up
            };
            let height_m = base_m + share * depth_m;
            Spot::new(tree.axis_m(height_m) + radius_m * across, height_m)
        })
        .collect()
}

fn stem_outline(tree: &Tree) -> Vec<Spot> {
    let heights: Vec<f64> = [0.0, 0.15, 0.3, 0.5]
        .into_iter()
        .filter(|height_m| *height_m < tree.height_m / 2.0)
        .chain((1..=16).map(|step| tree.height_m * (0.5 + f64::from(step)) / 16.5))
        .filter(|height_m| *height_m <= tree.height_m)
        .collect();
    let mut heights = heights;
    heights.sort_by(f64::total_cmp);
    let side = |sign: f64| {
        move |height_m: &f64| {
            Spot::new(
                tree.axis_m(*height_m) + sign * tree.half_m(*height_m),
                *height_m,
            )
        }
    };
    let right = heights.iter().map(side(1.0));
    let left = heights.iter().rev().map(side(-1.0));
    right.chain(left).collect()
}

pub(crate) fn draw_keep_clear(easel: &mut Easel, input: &ProfileInput, span: &Span) {
    for mark in finite_lines(input) {
        if let Some(height_m) = mark.height_m {
            let wire = Spot::new(mark.offset_m, height_m);
            easel.circle(wire, mark.approach_m, StyleRole::ApproachStrip, &mark.about);
            let size_pt = easel.frame.text_pt;
            let role = StyleRole::OverheadLine;
            easel.symbol(wire, PointSymbol::Cross, size_pt, 0.0, role, &mark.about);
        }
        // The near side of the strip holds at every height, as the distance is a level one.
        let towards_tree_m = -mark.approach_m * sign(mark.offset_m);
        let edge_m = mark.offset_m + towards_tree_m;
        easel.line(
            vec![Spot::new(edge_m, 0.0), Spot::new(edge_m, span.top_m)],
            StyleRole::KeepClear,
            &mark.about,
        );
        if mark.height_m.is_none() {
            easel.line(
                vec![
                    Spot::new(mark.offset_m, 0.0),
                    Spot::new(mark.offset_m, span.top_m),
                ],
                StyleRole::OverheadLine,
                &mark.about,
            );
        }
    }
}

fn sign(value: f64) -> f64 {
    if value < 0.0 { -1.0 } else { 1.0 }
}

pub(crate) fn draw_person(easel: &mut Easel, span: &Span) {
    let outline = person_outline(PERSON_M)
        .into_iter()
        .map(|spot| Spot::new(span.person_m + spot.x_m, spot.y_m))
        .collect();
    easel.area(vec![outline], StyleRole::Outline, "");
}

#[cfg(test)]
mod tests {
    use super::*;

    fn leaning() -> Tree {
        Tree {
            height_m: 20.0,
            lean: libm::tan(10f64.to_radians()),
            diameter_m: 0.5,
            crown: Some((4.0, 6.0)),
        }
    }

    #[test]
    fn a_stem_has_its_diameter_at_breast_height_and_a_flare_below() {
        let tree = leaning();
        assert!((tree.half_m(1.3) - 0.25).abs() < 1e-12);
        assert!(tree.half_m(0.0) > 1.3 * tree.half_m(1.3));
        assert_eq!(tree.half_m(20.0), 0.0);
    }

    #[test]
    fn the_crown_is_as_wide_and_as_deep_as_measured() {
        let outline = crown_outline(&leaning(), 4.0, 6.0);
        let lowest = outline.iter().map(|spot| spot.y_m).fold(f64::MAX, f64::min);
        let highest = outline.iter().map(|spot| spot.y_m).fold(0.0, f64::max);
        assert_eq!((lowest, highest), (6.0, 20.0));
        let widest = outline
            .iter()
            .map(|spot| (spot.x_m - spot.y_m * leaning().lean).abs())
            .fold(0.0, f64::max);
        assert!((widest - 4.0).abs() < 1e-3);
    }
}
