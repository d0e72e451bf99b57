//! Photos, drawings with their legend, and boxes that must not be overlooked.

use super::block::{Callout, CalloutKind, Figure, Photo};
use super::compose::{Composer, hairline, indented, slab_of, words_at};
use super::look::{HAIR, WHITE, pen_of};
use super::marks;
use super::slab::{Owner, Shape, Slab, stacked};
use super::tags::{LeafId, NodeId, Role};
use crate::draw::{LegendLine, PointSymbol};

/// Room between photos.
const GUTTER_PT: f32 = 12.0;

impl Composer<'_> {
    /// Rows of at most three photos, of one height a row.
    pub(super) fn photos(&mut self, photos: &[Photo], width_pt: f32, parent: NodeId) -> Vec<Slab> {
        photos
            .chunks(3)
            .map(|row| {
                // A third of the width each, also for fewer, so that none crowds out its record.
                let each_pt = (width_pt - GUTTER_PT * 2.0) / 3.0;
                let most_pt = self.page_pt * 0.26;
                let mut slab = Slab {
                    before_pt: self.look.gap_pt,
                    ..Slab::default()
                };
                for (number, photo) in row.iter().enumerate() {
                    let one = self.photo(photo, each_pt, most_pt, parent);
                    slab.height_pt = slab.height_pt.max(one.height_pt);
                    slab.take(one, number as f32 * (each_pt + GUTTER_PT), 0.0);
                }
                slab
            })
            .collect()
    }

    fn photo(&mut self, photo: &Photo, width_pt: f32, most_pt: f32, parent: NodeId) -> Slab {
        let height_pt = (width_pt * photo.tallness()).min(most_pt);
        let own_pt = height_pt / photo.tallness().max(0.01);
        let figure = self.tags.node(
            parent,
            Role::Figure {
                described: photo.described.clone(),
            },
        );
        let leaf = self.tags.leaf(figure);
        let mut slab = Slab {
            height_pt,
            ..Slab::default()
        };
        slab.draw(
            Owner::Leaf(leaf),
            Shape::Photo {
                image: photo.image.clone(),
                place: [0.0, 0.0, own_pt, height_pt],
            },
        );
        self.caption(&mut slab, &photo.caption, width_pt, figure);
        slab
    }

    fn caption(
        &mut self,
        slab: &mut Slab,
        words: &super::rich::Rich,
        width_pt: f32,
        figure: NodeId,
    ) {
        let mut how = self.small(false);
        how.leading = 1.3;
        let mut y_pt = slab.height_pt + 4.0;
        for line in self.lines(words, how, width_pt, figure, Role::Caption) {
            let height_pt = line.height_pt;
            slab.take(line, 0.0, y_pt);
            y_pt += height_pt;
            slab.height_pt = y_pt;
        }
    }

    /// A drawing, as large as its scale says and its place allows, with its legend.
    pub(super) fn figure(&mut self, figure: &Figure, width_pt: f32, parent: NodeId) -> Vec<Slab> {
        let drawing = &figure.drawing;
        let most_pt = figure.height_pt.min(self.page_pt * 0.92);
        let frame = marks::frame_for(drawing, width_pt, most_pt);
        let node = self.tags.node(
            parent,
            Role::Figure {
                described: drawing.described.clone(),
            },
        );
        let leaf = self.tags.leaf(node);
        let mut slab = Slab {
            height_pt: frame.height_pt,
            before_pt: self.look.gap_pt,
            ..Slab::default()
        };
        let x_pt = (width_pt - frame.width_pt) / 2.0;
        let place = [x_pt, 0.0, frame.width_pt, frame.height_pt];
        let shapes = marks::shapes_of(drawing, frame, [x_pt, 0.0], self.setter);
        slab.draw(Owner::Leaf(leaf), Shape::Clipped { place, shapes });
        if figure.framed {
            let line = Some(hairline(HAIR, 0.8));
            slab.draw(Owner::Ornament, Shape::area(place, None, line));
        }
        self.caption(&mut slab, &figure.caption, width_pt, node);
        let mut slabs = vec![slab];
        if figure.legend_columns > 0 && !drawing.legend.is_empty() {
            if let Some(first) = slabs.first_mut() {
                first.keeps_next = true;
            }
            slabs.append(&mut self.legend(
                &drawing.legend,
                figure.legend_columns,
                width_pt,
                parent,
            ));
        }
        slabs
    }

    fn legend(
        &mut self,
        legend: &[LegendLine],
        columns: u8,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let list = self.tags.node(parent, Role::Points { numbered: false });
        let columns = usize::from(columns.max(1));
        let each_pt = width_pt / columns as f32;
        let sample_pt = 20.0;
        let mut slabs = Vec::new();
        for row in legend.chunks(columns) {
            let mut slab = Slab {
                before_pt: if slabs.is_empty() {
                    self.look.gap_pt
                } else {
                    1.5
                },
                keeps_next: true,
                ..Slab::default()
            };
            for (number, line) in row.iter().enumerate() {
                let mut how = self.small(false);
                how.leading = 1.25;
                let point = self.tags.node(list, Role::Point);
                let room_pt = each_pt - sample_pt - 14.0;
                let words = &line.words.as_str().into();
                let lines = self.lines(words, how, room_pt, point, Role::PointBody);
                let text = stacked(lines);
                let x_pt = number as f32 * each_pt;
                slab.height_pt = slab.height_pt.max(text.height_pt);
                for shape in legend_sample(line, x_pt, how.size_pt * how.leading, sample_pt) {
                    slab.draw(Owner::Ornament, shape);
                }
                slab.take(text, x_pt + sample_pt + 6.0, 0.0);
            }
            slabs.push(slab);
        }
        if let Some(last) = slabs.last_mut() {
            last.keeps_next = false;
        }
        slabs
    }

    /// A box: a bar, a shape and a word, then its sentences. It may run over several pages.
    pub(super) fn callout(
        &mut self,
        callout: &Callout,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let [ground, bar, ink] = callout.kind.inks();
        let node = self.tags.node(parent, Role::Boxed);
        let (indent_pt, pad_pt) = (14.0, self.look.row_pad_pt * 2.3);
        let room_pt = width_pt - indent_pt - 10.0;
        let mut rows = Vec::new();
        if !callout.word.is_empty() {
            let how = self.setting(self.look.body_pt, true, ink);
            let mark_pt = how.size_pt * 1.25;
            let word_node = self.tags.node(node, Role::Paragraph);
            let leaf = self.tags.leaf(word_node);
            let words = callout.word.as_str().into();
            for line in self.setter.set(&words, how, Some(room_pt - mark_pt - 5.0)) {
                rows.push(head_of(callout.kind, line, leaf, mark_pt, ink));
            }
        }
        for words in &callout.lines {
            let how = self.body();
            let mut lines = self.lines(words, how, room_pt, node, Role::Paragraph);
            if let Some(first) = lines.first_mut() {
                first.before_pt = 2.0;
            }
            rows.append(&mut lines);
        }
        let count = rows.len();
        rows.into_iter()
            .enumerate()
            .map(|(at, row)| {
                let (first, last) = (at == 0, at + 1 == count);
                let above_pt = if first { pad_pt } else { row.before_pt };
                let height_pt = above_pt + row.height_pt + if last { pad_pt } else { 0.0 };
                let mut slab = Slab {
                    height_pt,
                    before_pt: if first { self.look.gap_pt * 1.2 } else { 0.0 },
                    keeps_next: first || at + 2 == count,
                    ..Slab::default()
                };
                // A hair of overlap, so that no white line shows between the rows.
                let tall_pt = height_pt + if last { 0.0 } else { 0.3 };
                let area = Shape::area([0.0, 0.0, width_pt, tall_pt], Some(ground), None);
                slab.draw(Owner::Ornament, area);
                let area = Shape::area([0.0, 0.0, 4.0, tall_pt], Some(bar), None);
                slab.draw(Owner::Ornament, area);
                slab.take(indented(row, indent_pt), 0.0, above_pt);
                slab
            })
            .collect()
    }
}

/// The shape and the word at the head of a box.
fn head_of(
    kind: CalloutKind,
    line: super::typesetter::SetLine,
    leaf: LeafId,
    mark_pt: f32,
    ink: super::look::Ink,
) -> Slab {
    let middle_pt = line.height_pt / 2.0;
    let symbol = match kind {
        CalloutKind::Stop => Some(PointSymbol::TreeBarred),
        CalloutKind::Caution => Some(PointSymbol::TreeRefer),
        CalloutKind::Note => None,
    };
    let Some(symbol) = symbol else {
        return slab_of(line, Owner::Leaf(leaf));
    };
    let mut slab = Slab {
        height_pt: line.height_pt,
        ..Slab::default()
    };
    let at = [mark_pt / 2.0, middle_pt];
    for shape in marks::symbol(symbol, at, mark_pt, 0.0, ink, Some(WHITE)) {
        slab.draw(Owner::Ornament, shape);
    }
    slab.draw(Owner::Leaf(leaf), words_at(line, mark_pt + 5.0, 0.0));
    slab
}

/// A piece of what a line of the legend explains.
fn legend_sample(line: &LegendLine, x_pt: f32, height_pt: f32, width_pt: f32) -> Vec<Shape> {
    let pen = pen_of(line.role);
    let middle_pt = height_pt / 2.0;
    if let Some(symbol) = line.symbol {
        let at = [x_pt + width_pt / 2.0, middle_pt];
        return marks::symbol(symbol, at, 10.0, 0.0, pen.line, Some(WHITE));
    }
    let style = marks::line_of(&pen);
    if pen.area.1 > 0.0 {
        let place = [x_pt + 3.0, middle_pt - 4.0, width_pt - 6.0, 8.0];
        let mut area = Shape::area(place, None, style);
        if let Shape::Path { fill, .. } = &mut area {
            *fill = Some(pen.area);
        }
        return vec![area];
    }
    vec![Shape::Path {
        rings: vec![vec![[x_pt, middle_pt], [x_pt + width_pt, middle_pt]]],
        closed: false,
        fill: None,
        line: style,
    }]
}
