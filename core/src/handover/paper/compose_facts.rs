//! Names with their values, and the list of chapters.

use super::block::Cell;
use super::compose::{Composer, slab_of};
use super::compose_table::{NOTHING, link_under};
use super::look::{HAIR, LICHEN};
use super::rich::Rich;
use super::slab::{LineStyle, Owner, Shape, Slab};
use super::tags::{NodeId, Role};

impl Composer<'_> {
    pub(super) fn facts(
        &mut self,
        facts: &[(String, Rich)],
        in_two: bool,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        if facts.is_empty() {
            return Vec::new();
        }
        let table = self.tags.node(
            parent,
            Role::Table {
                summary: String::new(),
            },
        );
        let abreast = if in_two { 2 } else { 1 };
        let gutter_pt = 20.0;
        let each_pt = (width_pt - gutter_pt * (abreast as f32 - 1.0)) / abreast as f32;
        let name_pt = self.name_width_pt(facts, each_pt);
        let mut slabs = Vec::new();
        for line in facts.chunks(abreast) {
            let mut slab = Slab {
                before_pt: if slabs.is_empty() {
                    self.look.gap_pt
                } else {
                    0.0
                },
                ..Slab::default()
            };
            for (number, (name, value)) in line.iter().enumerate() {
                let x_pt = number as f32 * (each_pt + gutter_pt);
                let fact = self.fact(name, value, name_pt, each_pt, table);
                slab.height_pt = slab.height_pt.max(fact.height_pt);
                slab.take(fact, x_pt, 0.0);
            }
            let y_pt = slab.height_pt;
            for number in 0..line.len() {
                let x_pt = number as f32 * (each_pt + gutter_pt);
                slab.draw(Owner::Ornament, Shape::rule(x_pt, y_pt, each_pt, HAIR, 0.6));
            }
            slabs.push(slab);
        }
        slabs
    }

    /// As wide as the longest name, within two fifths of the fact.
    fn name_width_pt(&mut self, facts: &[(String, Rich)], each_pt: f32) -> f32 {
        let most_pt = (each_pt * 0.40).min(self.look.small_pt * 17.0);
        let how = self.small(false);
        let longest_pt = facts
            .iter()
            .filter_map(|(name, _)| {
                let lines = self.setter.set(&name.as_str().into(), how, None);
                lines.first().map(|line| line.width_pt)
            })
            .fold(0.0, f32::max);
        (longest_pt + 14.0).min(most_pt)
    }

    fn fact(
        &mut self,
        name: &str,
        value: &Rich,
        name_pt: f32,
        width_pt: f32,
        table: NodeId,
    ) -> Slab {
        let row = self.tags.node(table, Role::Row);
        let mut how = self.small(false);
        // The same line height for both, so that name and value stand on one line.
        how.leading = self.look.body_pt * self.look.leading / how.size_pt;
        let names = self.lines(&name.into(), how, name_pt - 6.0, row, Role::RowName);
        let how = self.body();
        let nothing = Rich::from(NOTHING);
        let value = if value.is_empty() { &nothing } else { value };
        let values = self.lines(value, how, width_pt - name_pt, row, Role::Cell);
        let mut slab = Slab::default();
        for (lines, x_pt) in [(names, 0.0), (values, name_pt)] {
            let mut y_pt = self.look.row_pad_pt * 0.8;
            for line in lines {
                let height_pt = line.height_pt;
                slab.take(line, x_pt, y_pt);
                y_pt += height_pt;
            }
            slab.height_pt = slab.height_pt.max(y_pt + self.look.row_pad_pt * 0.8);
        }
        slab
    }

    pub(super) fn contents(&mut self, width_pt: f32, parent: NodeId) -> Vec<Slab> {
        let contents = self.tags.node(parent, Role::Contents);
        let chapters = self.chapters.clone();
        let mut slabs = Vec::new();
        for (level, words, key) in chapters {
            if level != 1 || key.is_empty() {
                continue;
            }
            let entry = self.tags.node(contents, Role::ContentsEntry);
            let reference = self.tags.node(entry, Role::Reference);
            let cell = Cell::leading_to(words.as_str(), &key);
            let (leaf, mut link) = link_under(self.tags, reference, &cell);
            let how = self.body();
            let lines = self
                .setter
                .set(&words.as_str().into(), how, Some(width_pt - 40.0));
            let Some(line) = lines.into_iter().next() else {
                continue;
            };
            let words_pt = line.width_pt;
            let mut slab = slab_of(line, Owner::Leaf(leaf));
            let dots_pt = width_pt - 26.0 - words_pt - 8.0;
            if dots_pt > 12.0 {
                slab.draw(
                    Owner::Ornament,
                    dotted(words_pt + 8.0, slab.height_pt * 0.72, dots_pt),
                );
            }
            slab.draw(
                Owner::Leaf(leaf),
                Shape::PageOf {
                    key,
                    right_pt: width_pt,
                    y_pt: 0.0,
                    how,
                },
            );
            slab.before_pt = if slabs.is_empty() {
                self.look.gap_pt
            } else {
                2.0
            };
            link.place = [0.0, 0.0, width_pt, slab.height_pt];
            slab.links.push(link);
            slabs.push(slab);
        }
        slabs
    }
}

fn dotted(x_pt: f32, y_pt: f32, width_pt: f32) -> Shape {
    Shape::Path {
        rings: vec![vec![[x_pt, y_pt], [x_pt + width_pt, y_pt]]],
        closed: false,
        fill: None,
        line: Some(LineStyle {
            ink: LICHEN,
            width_pt: 0.6,
            dash_pt: [0.8, 3.0],
        }),
    }
}
