//! Slabs: pieces of a paper that are never cut, made of shapes in points, y downwards.

use std::rc::Rc;

use super::look::Ink;
use super::tags::{AreaId, LeafId};
use super::typesetter::{SetLine, Setting};

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct LineStyle {
    pub ink: Ink,
    pub width_pt: f32,
    /// Dash and gap; both 0 for a full line.
    pub dash_pt: [f32; 2],
}

/// One thing drawn.
#[derive(Debug, Clone)]
pub(super) enum Shape {
    /// A line of words; `x_pt`, `y_pt` is its top left corner.
    Words {
        line: Rc<SetLine>,
        x_pt: f32,
        y_pt: f32,
        /// A rim of white, so that it reads over lines.
        halo: bool,
    },
    /// Rings or lines, filled by the even-odd rule.
    Path {
        rings: Vec<Vec<[f32; 2]>>,
        closed: bool,
        fill: Option<(Ink, f32)>,
        line: Option<LineStyle>,
    },
    /// A circle.
    Circle {
        centre: [f32; 2],
        radius_pt: f32,
        fill: Option<(Ink, f32)>,
        line: Option<LineStyle>,
    },
    /// A photo in its box: left, top, width, height.
    Photo {
        image: krilla::image::Image,
        place: [f32; 4],
    },
    /// The page number of the heading `key`, ending at `right_pt`.
    PageOf {
        key: String,
        right_pt: f32,
        y_pt: f32,
        how: Setting,
    },
    /// Shapes of which only what lies in the box (left, top, width, height) is seen.
    Clipped { place: [f32; 4], shapes: Vec<Shape> },
}

/// Whose a shape is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Owner {
    /// Content, part of the tree of tags.
    Leaf(LeafId),
    /// Ornament, or a repetition.
    Ornament,
    /// The head or foot of a page.
    PageHead,
    PageFoot,
}

/// A shape and whose it is.
#[derive(Debug, Clone)]
pub(super) struct Item {
    pub shape: Shape,
    pub owner: Owner,
}

/// A link area: left, top, width, height.
#[derive(Debug, Clone)]
pub(super) struct LinkArea {
    pub area: AreaId,
    pub place: [f32; 4],
    pub key: String,
    pub words: String,
}

/// A heading inside a slab.
#[derive(Debug, Clone)]
pub(super) struct Marked {
    pub level: u8,
    pub words: String,
    pub key: String,
    pub y_pt: f32,
}

/// A piece that is never cut.
#[derive(Debug, Clone, Default)]
pub(super) struct Slab {
    pub height_pt: f32,
    /// Room above it, left out at the top of a page.
    pub before_pt: f32,
    /// Never the last on its page while more follows.
    pub keeps_next: bool,
    /// Begins a page.
    pub new_page: bool,
    pub items: Vec<Item>,
    pub links: Vec<LinkArea>,
    pub headings: Vec<Marked>,
    /// The head repeated above it when it begins a page.
    pub head: Option<Rc<Slab>>,
}

impl Slab {
    pub fn draw(&mut self, owner: Owner, shape: Shape) {
        self.items.push(Item { shape, owner });
    }

    /// Adds what `other` holds, moved by `dx_pt`, `dy_pt`.
    pub fn take(&mut self, mut other: Slab, dx_pt: f32, dy_pt: f32) {
        for item in &mut other.items {
            item.shape.shift(dx_pt, dy_pt);
        }
        for link in &mut other.links {
            shift_box(&mut link.place, dx_pt, dy_pt);
        }
        for heading in &mut other.headings {
            heading.y_pt += dy_pt;
        }
        self.items.append(&mut other.items);
        self.links.append(&mut other.links);
        self.headings.append(&mut other.headings);
    }

    /// What lies above `height_pt`, and the rest as a slab of its own; shapes are never cut. At
    /// least one shape is in the first part, so that cutting comes to an end.
    pub fn cut_at(self, height_pt: f32) -> (Slab, Slab) {
        let bottom_of = |item: &Item| item.shape.reach()[1];
        let nearest = self.items.iter().map(bottom_of).fold(f32::MAX, f32::min);
        let limit_pt = height_pt.max(nearest) + 0.01;
        let (above, below): (Vec<_>, Vec<_>) = self
            .items
            .into_iter()
            .partition(|item| bottom_of(item) <= limit_pt);
        let tops = below.iter().map(|item| item.shape.reach()[0]);
        let from_pt = tops.fold(self.height_pt, f32::min);
        let (links, later_links) = self
            .links
            .into_iter()
            .partition(|link| link.place[1] < from_pt);
        let (headings, later_headings) = self
            .headings
            .into_iter()
            .partition(|heading| heading.y_pt < from_pt);
        let rest = Slab {
            items: below,
            links: later_links,
            headings: later_headings,
            ..Slab::default()
        };
        let mut moved = Slab {
            height_pt: self.height_pt - from_pt,
            ..Slab::default()
        };
        moved.take(rest, 0.0, -from_pt);
        let first = Slab {
            height_pt,
            items: above,
            links,
            headings,
            ..Slab::default()
        };
        (first, moved)
    }

    /// The same shapes as an ornament: no content, no links, no bookmarks.
    pub fn as_ornament(&self) -> Slab {
        Slab {
            height_pt: self.height_pt,
            items: self
                .items
                .iter()
                .map(|item| Item {
                    shape: item.shape.clone(),
                    owner: Owner::Ornament,
                })
                .collect(),
            ..Slab::default()
        }
    }
}

/// One slab out of many, on top of each other.
pub(super) fn stacked(slabs: Vec<Slab>) -> Slab {
    let mut whole = Slab::default();
    for slab in slabs {
        if whole.height_pt > 0.0 {
            whole.height_pt += slab.before_pt;
        } else {
            whole.before_pt = slab.before_pt;
        }
        let (top_pt, height_pt) = (whole.height_pt, slab.height_pt);
        whole.take(slab, 0.0, top_pt);
        whole.height_pt = top_pt + height_pt;
    }
    whole
}

impl Shape {
    /// A box: left, top, width, height.
    pub fn area(place: [f32; 4], fill: Option<Ink>, line: Option<LineStyle>) -> Shape {
        let [x, y, width, height] = place;
        Shape::Path {
            rings: vec![vec![
                [x, y],
                [x + width, y],
                [x + width, y + height],
                [x, y + height],
            ]],
            closed: true,
            fill: fill.map(|ink| (ink, 1.0)),
            line,
        }
    }

    /// A level line.
    pub fn rule(x_pt: f32, y_pt: f32, width_pt: f32, ink: Ink, pen_pt: f32) -> Shape {
        Shape::Path {
            rings: vec![vec![[x_pt, y_pt], [x_pt + width_pt, y_pt]]],
            closed: false,
            fill: None,
            line: Some(LineStyle {
                ink,
                width_pt: pen_pt,
                dash_pt: [0.0, 0.0],
            }),
        }
    }

    /// Top and bottom.
    pub fn reach(&self) -> [f32; 2] {
        let around = |[top, bottom]: [f32; 2], y: f32| [top.min(y), bottom.max(y)];
        match self {
            Shape::Words { line, y_pt, .. } => [*y_pt, y_pt + line.height_pt],
            Shape::Path { rings, .. } => rings
                .iter()
                .flatten()
                .fold([f32::MAX, f32::MIN], |reach, [_, y]| around(reach, *y)),
            Shape::Circle {
                centre: [_, y],
                radius_pt,
                ..
            } => [y - radius_pt, y + radius_pt],
            Shape::Photo {
                place: [_, y, _, height],
                ..
            }
            | Shape::Clipped {
                place: [_, y, _, height],
                ..
            } => [*y, y + height],
            Shape::PageOf { y_pt, how, .. } => [*y_pt, y_pt + how.size_pt * how.leading],
        }
    }

    pub fn shift(&mut self, dx_pt: f32, dy_pt: f32) {
        match self {
            Shape::Words { x_pt, y_pt, .. } => {
                *x_pt += dx_pt;
                *y_pt += dy_pt;
            }
            Shape::Path { rings, .. } => {
                for [x, y] in rings.iter_mut().flatten() {
                    *x += dx_pt;
                    *y += dy_pt;
                }
            }
            Shape::Circle { centre: [x, y], .. } => {
                *x += dx_pt;
                *y += dy_pt;
            }
            Shape::Photo { place, .. } => shift_box(place, dx_pt, dy_pt),
            Shape::PageOf { right_pt, y_pt, .. } => {
                *right_pt += dx_pt;
                *y_pt += dy_pt;
            }
            Shape::Clipped { place, shapes } => {
                shift_box(place, dx_pt, dy_pt);
                for shape in shapes {
                    shape.shift(dx_pt, dy_pt);
                }
            }
        }
    }
}

fn shift_box([x, y, _, _]: &mut [f32; 4], dx_pt: f32, dy_pt: f32) {
    *x += dx_pt;
    *y += dy_pt;
}
