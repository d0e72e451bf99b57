//! Shapes → the surface of a page.

use krilla::color::rgb;
use krilla::geom::{Path, PathBuilder, Point, Rect, Size, Transform};
use krilla::num::NormalizedF32;
use krilla::paint::{Fill, FillRule, LineCap, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;

use super::look::{Ink, WHITE};
use super::slab::{LineStyle, Shape};
use super::typesetter::{SetLine, Typesetter};
use super::write::Standing;

/// Draws on one page.
pub(super) struct Painter<'a, 'd> {
    pub surface: &'a mut Surface<'d>,
    pub setter: &'a mut Typesetter,
    pub standings: &'a [Standing],
}

impl Painter<'_, '_> {
    pub fn draw(&mut self, shape: &Shape) {
        match shape {
            Shape::Words {
                line,
                x_pt,
                y_pt,
                halo,
            } => {
                if *halo {
                    self.words(line, *x_pt, *y_pt, true);
                }
                self.words(line, *x_pt, *y_pt, false);
            }
            Shape::Path {
                rings,
                closed,
                fill,
                line,
            } => {
                if let Some(path) = path_of(rings, *closed) {
                    self.path(&path, *fill, *line);
                }
            }
            Shape::Circle {
                centre,
                radius_pt,
                fill,
                line,
            } => {
                if let Some(path) = circle(*centre, *radius_pt) {
                    self.path(&path, *fill, *line);
                }
            }
            Shape::Photo { image, place } => {
                let [x, y, width, height] = *place;
                if let Some(size) = Size::from_wh(width, height) {
                    self.surface
                        .push_transform(&Transform::from_translate(x, y));
                    self.surface.draw_image(image.clone(), size);
                    self.surface.pop();
                }
            }
            Shape::PageOf {
                key,
                right_pt,
                y_pt,
                how,
            } => {
                let page = self.standings.iter().find(|at| at.key == *key);
                let number = page.map_or(String::new(), |at| (at.page + 1).to_string());
                let lines = self.setter.set(&number.as_str().into(), *how, None);
                for line in lines {
                    self.words(&line, right_pt - line.width_pt, *y_pt, false);
                }
            }
            Shape::Clipped { place, shapes } => {
                let [x, y, width, height] = *place;
                let mut path = PathBuilder::new();
                if let Some(rect) = Rect::from_xywh(x, y, width, height) {
                    path.push_rect(rect);
                }
                let Some(path) = path.finish() else {
                    return;
                };
                self.surface.push_clip_path(&path, &FillRule::NonZero);
                for shape in shapes {
                    self.draw(shape);
                }
                self.surface.pop();
            }
        }
    }

    fn words(&mut self, line: &SetLine, x_pt: f32, y_pt: f32, as_rim: bool) {
        for run in &line.runs {
            let Some(face) = self.setter.printed_faces().get(run.face).cloned() else {
                continue;
            };
            let ink = if as_rim { WHITE } else { line.ink };
            let rim = LineStyle {
                ink: WHITE,
                width_pt: run.size_pt * 0.24,
                dash_pt: [0.0, 0.0],
            };
            self.surface.set_fill(Some(fill_of((ink, 1.0))));
            self.surface.set_stroke(as_rim.then(|| stroke_of(rim)));
            // The rim is drawn as outlines, so that the words are in the page only once.
            self.surface.draw_glyphs(
                Point::from_xy(x_pt + run.x_pt, y_pt + line.baseline_pt),
                &run.glyphs,
                face,
                &line.text,
                run.size_pt,
                as_rim,
            );
        }
        self.surface.set_stroke(None);
    }

    fn path(&mut self, path: &Path, fill: Option<(Ink, f32)>, line: Option<LineStyle>) {
        if fill.is_none() && line.is_none() {
            return;
        }
        self.surface.set_fill(fill.map(fill_of));
        self.surface.set_stroke(line.map(stroke_of));
        self.surface.draw_path(path);
        self.surface.set_stroke(None);
    }
}

fn colour(ink: Ink) -> rgb::Color {
    rgb::Color::new(ink.0, ink.1, ink.2)
}

fn fill_of((ink, opacity): (Ink, f32)) -> Fill {
    Fill {
        paint: colour(ink).into(),
        opacity: NormalizedF32::new(opacity).unwrap_or(NormalizedF32::ONE),
        rule: FillRule::EvenOdd,
    }
}

fn stroke_of(line: LineStyle) -> Stroke {
    let dashed = line.dash_pt.iter().any(|length| *length > 0.0);
    Stroke {
        paint: colour(line.ink).into(),
        width: line.width_pt,
        miter_limit: 4.0,
        line_cap: LineCap::Butt,
        line_join: LineJoin::Round,
        opacity: NormalizedF32::ONE,
        dash: dashed.then(|| StrokeDash {
            array: line.dash_pt.to_vec(),
            offset: 0.0,
        }),
    }
}

fn path_of(rings: &[Vec<[f32; 2]>], closed: bool) -> Option<Path> {
    let mut path = PathBuilder::new();
    for ring in rings {
        let mut points = ring.iter();
        let Some([x, y]) = points.next() else {
            continue;
        };
        path.move_to(*x, *y);
        for [x, y] in points {
            path.line_to(*x, *y);
        }
        if closed {
            path.close();
        }
    }
    path.finish()
}

/// A circle of four Bézier arcs, at most 0.03 % of the radius from the true one.
fn circle([x, y]: [f32; 2], radius: f32) -> Option<Path> {
    const K: f32 = 0.552_284_8;
    let (r, k) = (radius, radius * K);
    let mut path = PathBuilder::new();
    path.move_to(x + r, y);
    path.cubic_to(x + r, y + k, x + k, y + r, x, y + r);
    path.cubic_to(x - k, y + r, x - r, y + k, x - r, y);
    path.cubic_to(x - r, y - k, x - k, y - r, x, y - r);
    path.cubic_to(x + k, y - r, x + r, y - k, x + r, y);
    path.close();
    path.finish()
}
