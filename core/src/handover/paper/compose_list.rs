//! Lists, and the verdict with its shape.

use super::compose::{Composer, hold_ends_together, indented, slab_of};
use super::look::{BARK, EMBER, LICHEN, WHITE};
use super::marks;
use super::rich::Rich;
use super::slab::{Marked, Owner, Slab, stacked};
use super::tags::{NodeId, Role};
use super::typesetter::Setting;
use crate::draw::PointSymbol;

impl Composer<'_> {
    pub(super) fn points(
        &mut self,
        points: &[Rich],
        numbered: bool,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let list = self.tags.node(parent, Role::Points { numbered });
        let indent_pt = self.look.body_pt * if numbered { 1.9 } else { 1.3 };
        let mut slabs = Vec::new();
        for (number, words) in points.iter().enumerate() {
            let point = self.tags.node(list, Role::Point);
            let label = if numbered {
                format!("{}.", number + 1)
            } else {
                "•".to_owned()
            };
            let label_node = self.tags.node(point, Role::PointMark);
            let label_leaf = self.tags.leaf(label_node);
            let mark = Setting {
                ink: if numbered { BARK } else { LICHEN },
                ..self.setting(self.look.body_pt, true, BARK)
            };
            let label = self.setter.set(&label.as_str().into(), mark, None);
            let how = self.body();
            let lines = self.lines(words, how, width_pt - indent_pt, point, Role::PointBody);
            let mut item: Vec<Slab> = lines
                .into_iter()
                .map(|line| indented(line, indent_pt))
                .collect();
            if let (Some(first), Some(label)) = (item.first_mut(), label.into_iter().next()) {
                first.before_pt = if number == 0 {
                    self.look.gap_pt * 0.75
                } else {
                    self.look.gap_pt * 0.35
                };
                let label = slab_of(label, Owner::Leaf(label_leaf));
                let mut with_label = Slab {
                    height_pt: first.height_pt,
                    before_pt: first.before_pt,
                    ..Slab::default()
                };
                with_label.take(label, 0.0, 0.0);
                with_label.take(std::mem::take(first), 0.0, 0.0);
                *first = with_label;
            }
            hold_ends_together(&mut item);
            slabs.append(&mut item);
        }
        slabs
    }

    pub(super) fn verdict(
        &mut self,
        symbol: PointSymbol,
        words: &str,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let size_pt = self.look.heading_pt[0].max(30.0);
        let barred = matches!(symbol, PointSymbol::TreeBarred | PointSymbol::TreeRefer);
        let ink = if barred { EMBER } else { BARK };
        let mark_pt = size_pt * 1.35;
        let indent_pt = mark_pt + 12.0;
        let how = Setting {
            leading: 1.12,
            ..self.setting(size_pt, true, ink)
        };
        let role = Role::Heading {
            level: 2,
            words: words.to_owned(),
        };
        let lines = self.lines(&words.into(), how, width_pt - indent_pt, parent, role);
        let text = stacked(lines);
        let mut slab = Slab {
            before_pt: self.look.gap_pt,
            height_pt: text.height_pt.max(mark_pt) + 4.0,
            ..Slab::default()
        };
        let top_pt = (slab.height_pt - text.height_pt) / 2.0;
        let middle = [mark_pt / 2.0, slab.height_pt / 2.0];
        for shape in marks::symbol(symbol, middle, mark_pt, 0.0, ink, Some(WHITE)) {
            slab.draw(Owner::Ornament, shape);
        }
        slab.take(text, indent_pt, top_pt);
        slab.headings.push(Marked {
            level: 2,
            words: words.to_owned(),
            key: String::new(),
            y_pt: 0.0,
        });
        vec![slab]
    }
}
