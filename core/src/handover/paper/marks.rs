//! Drawings of the [`crate::draw`] room on paper.

use std::rc::Rc;

use super::look::{BARK, Ink, Pen, WHITE, pen_of};
use super::slab::{LineStyle, Shape};
use super::typesetter::{Setting, Typesetter};
use crate::draw::{
    Drawing, DrawnMark, DrawnText, PointSymbol, Spot, StyleRole, TextHold, shape_of,
};

/// The size of a drawing on paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct FrameOnPaper {
    pub width_pt: f32,
    pub height_pt: f32,
    /// Points a metre.
    pub pt_per_m: f64,
}

/// The frame in which `drawing` is true to its scale, or smaller where that does not fit.
pub(super) fn frame_for(drawing: &Drawing, width_pt: f32, height_pt: f32) -> FrameOnPaper {
    let wide_m = drawing.extent.width_m().max(0.01);
    let tall_m = drawing.extent.height_m().max(0.01);
    let true_pt = 72.0 / 0.0254 / drawing.scale.max(0.01);
    // A tenth of a millimetre of play, so that a frame made to measure is not shrunk by rounding.
    let fits = |room_pt: f32, size_m: f64| (f64::from(room_pt) + 0.3) / size_m;
    let pt_per_m = true_pt
        .min(fits(width_pt, wide_m))
        .min(fits(height_pt, tall_m));
    FrameOnPaper {
        width_pt: (wide_m * pt_per_m) as f32,
        height_pt: (tall_m * pt_per_m) as f32,
        pt_per_m,
    }
}

/// The shapes of `drawing` in `frame`, whose top left corner is at `corner`.
pub(super) fn shapes_of(
    drawing: &Drawing,
    frame: FrameOnPaper,
    corner: [f32; 2],
    setter: &mut Typesetter,
) -> Vec<Shape> {
    let ground = Ground {
        left_m: drawing.extent.left_m,
        top_m: drawing.extent.top_m,
        pt_per_m: frame.pt_per_m,
        corner,
    };
    drawing
        .marks
        .iter()
        .flat_map(|mark| shapes_of_mark(mark, ground, setter))
        .collect()
}

/// Metres of the drawing → points of the page.
#[derive(Clone, Copy)]
struct Ground {
    left_m: f64,
    top_m: f64,
    pt_per_m: f64,
    corner: [f32; 2],
}

impl Ground {
    fn at(self, spot: Spot) -> [f32; 2] {
        let [x_pt, y_pt] = self.corner;
        [
            x_pt + ((spot.x_m - self.left_m) * self.pt_per_m) as f32,
            y_pt + ((self.top_m - spot.y_m) * self.pt_per_m) as f32,
        ]
    }

    fn all(self, spots: &[Spot]) -> Vec<[f32; 2]> {
        spots.iter().map(|spot| self.at(*spot)).collect()
    }
}

fn shapes_of_mark(mark: &DrawnMark, ground: Ground, setter: &mut Typesetter) -> Vec<Shape> {
    match mark {
        DrawnMark::Polygon { rings, role, .. } => {
            let pen = pen_of(*role);
            vec![Shape::Path {
                rings: rings.iter().map(|ring| ground.all(ring)).collect(),
                closed: true,
                fill: area_of(&pen),
                line: line_of(&pen),
            }]
        }
        DrawnMark::Polyline { spots, role, .. } => vec![Shape::Path {
            rings: vec![ground.all(spots)],
            closed: false,
            fill: None,
            line: line_of(&pen_of(*role)),
        }],
        DrawnMark::Circle {
            centre,
            radius_m,
            role,
            ..
        } => {
            let pen = pen_of(*role);
            vec![Shape::Circle {
                centre: ground.at(*centre),
                radius_pt: (*radius_m * ground.pt_per_m) as f32,
                fill: area_of(&pen),
                line: line_of(&pen),
            }]
        }
        DrawnMark::Symbol {
            at,
            symbol: which,
            size_pt,
            turn_deg,
            role,
            ..
        } => symbol(
            *which,
            ground.at(*at),
            *size_pt as f32,
            *turn_deg as f32,
            pen_of(*role).line,
            Some(WHITE),
        ),
        DrawnMark::Written { text, role, .. } => written(text, *role, ground, setter),
    }
}

fn area_of(pen: &Pen) -> Option<(Ink, f32)> {
    (pen.area.1 > 0.0).then_some(pen.area)
}

/// The line of a pen, where it has one.
pub(super) fn line_of(pen: &Pen) -> Option<LineStyle> {
    (pen.width_pt > 0.0).then_some(LineStyle {
        ink: pen.line,
        width_pt: pen.width_pt,
        dash_pt: pen.dash_pt,
    })
}

/// A point symbol of `size_pt` around `middle`, turned clockwise; a rim of `rim` keeps it apart
/// from what lies beneath.
pub(super) fn symbol(
    which: PointSymbol,
    middle: [f32; 2],
    size_pt: f32,
    turn_deg: f32,
    ink: Ink,
    rim: Option<Ink>,
) -> Vec<Shape> {
    let form = shape_of(which);
    let (sin, cos) = turn_deg.to_radians().sin_cos();
    let place = |spots: &[Spot]| -> Vec<[f32; 2]> {
        spots
            .iter()
            .map(|spot| {
                let (x, y) = (spot.x_m as f32 * size_pt, -spot.y_m as f32 * size_pt);
                [middle[0] + x * cos - y * sin, middle[1] + x * sin + y * cos]
            })
            .collect()
    };
    let filled: Vec<_> = form.filled.iter().map(|ring| place(ring)).collect();
    let lines: Vec<_> = form.lines.iter().map(|line| place(line)).collect();
    let stroke = |ink, width_pt| {
        Some(LineStyle {
            ink,
            width_pt,
            dash_pt: [0.0, 0.0],
        })
    };
    let path = |rings: Vec<Vec<[f32; 2]>>, closed, fill, line| Shape::Path {
        rings,
        closed,
        fill,
        line,
    };
    let mut shapes = Vec::new();
    if let Some(rim) = rim {
        // Only the outer ring gets the rim: one around a slot would close the slot.
        let outer: Vec<_> = filled.iter().take(1).cloned().collect();
        if !outer.is_empty() {
            shapes.push(path(outer, true, None, stroke(rim, size_pt * 0.16)));
        }
        if !lines.is_empty() {
            shapes.push(path(
                lines.clone(),
                false,
                None,
                stroke(rim, size_pt * 0.24),
            ));
        }
    }
    if !filled.is_empty() {
        shapes.push(path(filled, true, Some((ink, 1.0)), None));
    }
    if !lines.is_empty() {
        shapes.push(path(lines, false, None, stroke(ink, size_pt * 0.1)));
    }
    shapes
}

fn written(
    text: &DrawnText,
    role: StyleRole,
    ground: Ground,
    setter: &mut Typesetter,
) -> Vec<Shape> {
    let ink = match role {
        StyleRole::Label | StyleRole::ScaleBar | StyleRole::North => BARK,
        other => match pen_of(other).line {
            // Orange and lichen are no inks for words.
            super::look::SIGNAL => super::look::EMBER,
            super::look::LICHEN => super::look::MOSS,
            ink => ink,
        },
    };
    let how = Setting {
        size_pt: text.size_pt as f32,
        bold: role == StyleRole::OnSymbol,
        ink,
        leading: 1.0,
    };
    let [x_pt, y_pt] = ground.at(text.at);
    setter
        .set(&text.words.as_str().into(), how, None)
        .into_iter()
        .take(1)
        .map(|line| {
            let lead_pt = match text.hold {
                TextHold::Start => 0.0,
                TextHold::Middle => line.width_pt / 2.0,
                TextHold::End => line.width_pt,
            };
            let baseline_pt = y_pt + 0.35 * how.size_pt;
            Shape::Words {
                x_pt: x_pt - lead_pt,
                y_pt: baseline_pt - line.baseline_pt,
                line: Rc::new(line),
                halo: text.halo,
            }
        })
        .collect()
}
