//! A tree from the side, to scale: ground, stem with its lean, crown, heights, findings, a person.

use super::callouts::{Callout, place_callouts};
use super::drawing::{Drawing, PointSymbol, Spot, StyleRole, TextHold};
use super::easel::Easel;
use super::frame::{BarUnit, DrawnFrame, TextWidth, broken_lines, frame_extent};
use super::profile_tree::{
    Span, Tree, draw_ground, draw_keep_clear, draw_person, draw_tree, finite_lines,
};

/// Height of the person drawn for scale.
pub const PERSON_M: f64 = 1.8;

/// A tree seen from one side. Right and left are those of the drawing; whoever fills this in
/// chooses the side to look from, best the one that shows the lean in full.
#[derive(Debug, Clone, PartialEq)]
pub struct ProfileInput {
    /// What the drawing shows, in words for people who do not see it.
    pub described: String,
    /// Id of the tree.
    pub about: String,
    /// Height of the top above the ground in metres, more than 0.
    pub height_m: f64,
    /// What is written beside the height.
    pub height_words: String,
    /// Lean from the vertical in degrees: to the right positive, −80 to 80.
    pub lean_deg: f64,
    /// Diameter at breast height in metres; unknown draws a stem of a thirtieth of the height.
    pub diameter_m: Option<f64>,
    /// Radius of the crown in metres; unknown draws no crown.
    pub crown_radius_m: Option<f64>,
    /// Height in metres where the crown begins; unknown takes a third of the height.
    pub crown_base_m: Option<f64>,
    /// Whether the crown is dead.
    pub dead: bool,
    /// Findings, anchors and sections at their heights.
    pub marks: Vec<ProfileMark>,
    /// What people, tools and ropes stay away from.
    pub keep_clear: Vec<KeepClearMark>,
    /// The reader's unit for the scale bar.
    pub bar_unit: BarUnit,
}

/// What a mark on the side view is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ProfileMarkKind {
    /// A finding, with its number as words.
    Finding,
    /// A tie-in point.
    TieIn,
    /// A decay section.
    SectionHeight,
}

/// A mark on the side view.
#[derive(Debug, Clone, PartialEq)]
pub struct ProfileMark {
    /// Id of what it shows.
    pub about: String,
    /// What it is.
    pub kind: ProfileMarkKind,
    /// Height above the ground in metres, 0 and up.
    pub height_m: f64,
    /// Where across the tree: −1 at its left side, 0 facing the reader, 1 at its right side.
    pub side: f64,
    /// How far from the stem's middle in metres, for what sits out in the crown; on the stem
    /// when unknown.
    pub reach_m: Option<f64>,
    /// A finding's number; empty for the others.
    pub number: String,
    /// What is written beside it; may be empty.
    pub words: String,
}

/// A conductor beside the tree.
#[derive(Debug, Clone, PartialEq)]
pub struct KeepClearMark {
    /// Its id.
    pub about: String,
    /// Where it is, in metres right of the stem's foot.
    pub offset_m: f64,
    /// Its height in metres, when known.
    pub height_m: Option<f64>,
    /// Distance in metres that everybody and everything stays away.
    pub approach_m: f64,
    /// What is written beside the line.
    pub words: String,
}

/// The side view of a tree in `frame`.
pub fn profile(input: &ProfileInput, frame: &DrawnFrame, width: TextWidth) -> Drawing {
    let frame = frame.held();
    let tree = Tree::of(input);
    let span = Span::of(input, &tree);
    let text_pt = frame.text_pt;
    let columns_pt = callout_columns_pt(input, &frame, width);
    let height_pt = width(&input.height_words, text_pt) + 2.5 * text_pt;
    let room_pt = (
        frame.width_pt - columns_pt.0 - columns_pt.1 - height_pt,
        frame.height_pt - Easel::foot_pt(&frame) - 5.0 * text_pt,
    );
    let scale = frame.scale_for((span.right_m - span.left_m, span.top_m), room_pt);
    let m_per_pt = super::frame::metres_per_point(scale);
    let tree_pt = span.top_m / m_per_pt;
    let words_pt = callouts_pt(input, &frame, columns_pt, width);
    let frame = frame.cut_to(tree_pt.max(words_pt) + 5.0 * text_pt + Easel::foot_pt(&frame));
    let shift_m = (columns_pt.1 + height_pt - columns_pt.0) / 2.0 * m_per_pt;
    let middle = Spot::new(
        (span.left_m + span.right_m) / 2.0 + shift_m,
        span.top_m / 2.0,
    );
    let mut easel = Easel {
        frame,
        scale,
        extent: frame_extent(&frame, scale, middle, Easel::foot_pt(&frame)),
        width,
        marks: Vec::new(),
    };
    draw_ground(&mut easel, columns_pt);
    draw_tree(&mut easel, input, &tree);
    draw_keep_clear(&mut easel, input, &span);
    draw_person(&mut easel, &span);
    easel.foot(&input.bar_unit, "");
    draw_height(&mut easel, input, &tree, &span);
    draw_marks(&mut easel, input, &tree, columns_pt);
    easel.finish(&input.described, Vec::new())
}

fn draw_height(easel: &mut Easel, input: &ProfileInput, tree: &Tree, span: &Span) {
    let text_pt = easel.frame.text_pt;
    let at_m = span.dimension_m + easel.metres(1.0 * text_pt);
    let role = StyleRole::Dimension;
    let half_m = easel.metres(0.5 * text_pt);
    let (foot, top) = (Spot::new(at_m, 0.0), Spot::new(at_m, tree.height_m));
    easel.line(vec![foot, top], role, &input.about);
    for end in [foot, top] {
        let tick = vec![
            Spot::new(end.x_m - half_m, end.y_m),
            Spot::new(end.x_m + half_m, end.y_m),
        ];
        easel.line(tick, role, &input.about);
    }
    let from = Spot::new(tree.axis_m(tree.height_m), tree.height_m);
    easel.line(vec![from, top], StyleRole::Leader, &input.about);
    let beside = Spot::new(at_m + half_m, tree.height_m / 2.0);
    easel.write(
        &input.height_words,
        beside,
        TextHold::Start,
        role,
        &input.about,
    );
}

/// The most of the frame's width that a column of words takes.
const COLUMN_SHARE: f64 = 0.25;

/// Room beside the words in a column, in letters: a number's disc and the edges.
const COLUMN_RIM: f64 = 3.0;

/// The words of a call-out in the lines that its column has room for.
fn callout_lines(words: &str, text_pt: f64, column_pt: f64, width: TextWidth) -> Vec<String> {
    broken_lines(words, text_pt, column_pt - COLUMN_RIM * text_pt, width)
}

/// Height of the higher column of call-outs.
fn callouts_pt(
    input: &ProfileInput,
    frame: &DrawnFrame,
    (left_pt, right_pt): (f64, f64),
    width: TextWidth,
) -> f64 {
    let text_pt = frame.text_pt;
    let high_pt = |words: &str, column_pt: f64| {
        let lines = callout_lines(words, text_pt, column_pt, width).len();
        super::callouts::callout_pt(lines, text_pt)
    };
    let side_pt = |left: bool, column_pt: f64| -> f64 {
        let side = input.marks.iter().filter(|mark| is_left(mark) == left);
        side.map(|mark| high_pt(&mark.words, column_pt)).sum()
    };
    let lines = input.keep_clear.iter();
    let lines_pt: f64 = lines.map(|mark| high_pt(&mark.words, right_pt)).sum();
    side_pt(true, left_pt).max(side_pt(false, right_pt) + lines_pt)
}

/// Widths of the columns of call-outs at the left (findings) and at the right (the rest).
fn callout_columns_pt(input: &ProfileInput, frame: &DrawnFrame, width: TextWidth) -> (f64, f64) {
    let column = |left: bool| {
        let side = input.marks.iter().filter(|mark| is_left(mark) == left);
        let words = side.map(|mark| width(&mark.words, frame.text_pt) + COLUMN_RIM * frame.text_pt);
        words.fold(0.0, f64::max).min(COLUMN_SHARE * frame.width_pt)
    };
    let lines = input
        .keep_clear
        .iter()
        .map(|mark| width(&mark.words, frame.text_pt) + COLUMN_RIM * frame.text_pt);
    let right = column(false).max(lines.fold(0.0, f64::max).min(COLUMN_SHARE * frame.width_pt));
    (column(true), right)
}

fn is_left(mark: &ProfileMark) -> bool {
    mark.kind == ProfileMarkKind::Finding
}

fn draw_marks(
    easel: &mut Easel,
    input: &ProfileInput,
    tree: &Tree,
    (left_pt, right_pt): (f64, f64),
) {
    let text_pt = easel.frame.text_pt;
    let width = easel.width;
    let lines_of = |words: &str, column_pt: f64| callout_lines(words, text_pt, column_pt, width);
    let (mut left, mut right) = (Vec::new(), Vec::new());
    for mark in &input.marks {
        let at = mark_spot(mark, tree);
        let callout = |column_pt: f64, role: StyleRole| Callout {
            about: mark.about.clone(),
            at,
            number: mark.number.clone(),
            lines: lines_of(&mark.words, column_pt),
            role,
        };
        match mark.kind {
            ProfileMarkKind::Finding => left.push(callout(left_pt, StyleRole::Finding)),
            ProfileMarkKind::TieIn => right.push(callout(right_pt, StyleRole::TieIn)),
            ProfileMarkKind::SectionHeight => {
                right.push(callout(right_pt, StyleRole::SectionHeight));
            }
        }
    }
    for mark in finite_lines(input).filter(|mark| !mark.words.is_empty()) {
        let high_m = mark.height_m.unwrap_or(tree.height_m * 0.75);
        right.push(Callout {
            about: mark.about.clone(),
            at: Spot::new(mark.offset_m, high_m),
            number: String::new(),
            lines: lines_of(&mark.words, right_pt),
            role: StyleRole::OverheadLine,
        });
    }
    draw_places(easel, input, tree);
    place_callouts(easel, &left, true, left_pt);
    place_callouts(easel, &right, false, right_pt);
}

fn mark_spot(mark: &ProfileMark, tree: &Tree) -> Spot {
    let height_m = if mark.height_m.is_finite() {
        mark.height_m.clamp(0.0, tree.height_m)
    } else {
        0.0
    };
    let side = if mark.side.is_finite() {
        mark.side.clamp(-1.0, 1.0)
    } else {
        0.0
    };
    let reach_m = mark
        .reach_m
        .filter(|reach_m| reach_m.is_finite())
        .unwrap_or(tree.half_m(height_m))
        .clamp(0.0, 80.0);
    Spot::new(tree.axis_m(height_m) + side * reach_m, height_m)
}

/// The marks at their own places on the tree.
fn draw_places(easel: &mut Easel, input: &ProfileInput, tree: &Tree) {
    let text_pt = easel.frame.text_pt;
    for mark in &input.marks {
        let at = mark_spot(mark, tree);
        match mark.kind {
            ProfileMarkKind::SectionHeight => {
                let half_m = tree.half_m(at.y_m) + easel.metres(0.6 * text_pt);
                let axis_m = tree.axis_m(at.y_m);
                let across = vec![
                    Spot::new(axis_m - half_m, at.y_m),
                    Spot::new(axis_m + half_m, at.y_m),
                ];
                easel.line(across, StyleRole::SectionHeight, &mark.about);
            }
            ProfileMarkKind::TieIn => easel.symbol(
                at,
                PointSymbol::TieIn,
                1.3 * text_pt,
                0.0,
                StyleRole::TieIn,
                &mark.about,
            ),
            ProfileMarkKind::Finding => easel.symbol(
                at,
                PointSymbol::Cross,
                0.7 * text_pt,
                45.0,
                StyleRole::Finding,
                &mark.about,
            ),
        }
    }
}
