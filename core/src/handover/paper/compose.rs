//! Blocks → slabs: headings, running text, lists, facts, boxes.

use std::rc::Rc;

use super::block::{Block, Voice};
use super::look::{BARK, Ink, Look, MOSS, SIGNAL, SLATE};
use super::rich::Rich;
use super::slab::{LineStyle, Marked, Owner, Shape, Slab, stacked};
use super::tags::{NodeId, Role, Tags};
use super::typesetter::{SetLine, Setting, Typesetter};

/// Turns blocks into slabs of a width.
pub(super) struct Composer<'a> {
    pub setter: &'a mut Typesetter,
    pub tags: &'a mut Tags,
    pub look: Look,
    /// Height of a whole page, which nothing unbreakable may exceed.
    pub page_pt: f32,
    /// Level, words and key of every heading of the paper.
    pub chapters: Vec<(u8, String, String)>,
}

impl Composer<'_> {
    /// The slabs of `block` in `width_pt` points, its tags under `parent`.
    pub fn compose(&mut self, block: &Block, width_pt: f32, parent: NodeId) -> Vec<Slab> {
        match block {
            Block::Heading { level, words, key } => {
                self.heading(*level, words, key, width_pt, parent)
            }
            Block::Paragraph { words, voice } => self.paragraph(words, *voice, width_pt, parent),
            Block::Points { points, numbered } => self.points(points, *numbered, width_pt, parent),
            Block::Facts { facts, in_two } => self.facts(facts, *in_two, width_pt, parent),
            Block::Table(table) => self.table(table, width_pt, parent),
            Block::Photos(photos) => self.photos(photos, width_pt, parent),
            Block::Drawn(figure) => self.figure(figure, width_pt, parent),
            Block::Callout(callout) => self.callout(callout, width_pt, parent),
            Block::Verdict { symbol, words } => self.verdict(*symbol, words, width_pt, parent),
            Block::Contents => self.contents(width_pt, parent),
            Block::Beside {
                left,
                right,
                left_share,
            } => self.beside(left, right, *left_share, width_pt, parent),
            Block::Together(blocks) => {
                let mut slabs = self.compose_all(blocks, width_pt, parent);
                let last = slabs.len().saturating_sub(1);
                for slab in slabs.iter_mut().take(last) {
                    slab.keeps_next = true;
                }
                slabs
            }
            Block::Tight(blocks) => {
                let usual = self.look;
                self.look = usual.tightened();
                let slabs = self.compose_all(blocks, width_pt, parent);
                self.look = usual;
                slabs
            }
            Block::NewPage => vec![Slab {
                new_page: true,
                keeps_next: true,
                ..Slab::default()
            }],
            Block::Space(height_pt) => vec![Slab {
                before_pt: *height_pt,
                ..Slab::default()
            }],
        }
    }

    /// The slabs of `blocks`, one below the other.
    pub fn compose_all(&mut self, blocks: &[Block], width_pt: f32, parent: NodeId) -> Vec<Slab> {
        blocks
            .iter()
            .flat_map(|block| self.compose(block, width_pt, parent))
            .collect()
    }

    pub fn setting(&self, size_pt: f32, bold: bool, ink: Ink) -> Setting {
        Setting {
            size_pt,
            bold,
            ink,
            leading: self.look.leading,
        }
    }

    pub fn body(&self) -> Setting {
        self.setting(self.look.body_pt, false, BARK)
    }

    pub fn small(&self, bold: bool) -> Setting {
        self.setting(self.look.small_pt, bold, SLATE)
    }

    fn heading(
        &mut self,
        level: u8,
        words: &str,
        key: &str,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let size_pt = match level {
            1 => self.look.heading_pt[0],
            2 => self.look.heading_pt[1],
            _ => self.look.heading_pt[2],
        };
        let how = Setting {
            leading: 1.22,
            ..self.setting(size_pt, true, if level == 3 { MOSS } else { BARK })
        };
        let role = Role::Heading {
            level,
            words: words.to_owned(),
        };
        let mut slab = stacked(self.lines(&words.into(), how, width_pt, parent, role));
        slab.before_pt = self.look.gap_pt * if level == 3 { 1.5 } else { 2.0 };
        slab.keeps_next = true;
        if level == 1 && self.look.chapter_bar {
            let y_pt = slab.height_pt + 5.0;
            slab.draw(Owner::Ornament, Shape::rule(0.0, y_pt, 34.0, SIGNAL, 2.2));
            slab.height_pt = y_pt + 5.0;
        }
        slab.headings.push(Marked {
            level,
            words: words.to_owned(),
            key: key.to_owned(),
            y_pt: 0.0,
        });
        vec![slab]
    }

    fn paragraph(
        &mut self,
        words: &Rich,
        voice: Voice,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let how = match voice {
            Voice::Body => self.body(),
            Voice::Small => self.small(false),
            Voice::Lead => self.setting(self.look.lead_pt, false, SLATE),
            Voice::Title => Setting {
                leading: 1.15,
                ..self.setting(self.look.heading_pt[0] * 1.5, true, BARK)
            },
        };
        let role = match voice {
            Voice::Title => Role::Heading {
                level: 1,
                words: words.text.clone(),
            },
            _ => Role::Paragraph,
        };
        let mut slabs = self.lines(words, how, width_pt, parent, role);
        if let Some(first) = slabs.first_mut() {
            first.before_pt = self.look.gap_pt;
        }
        hold_ends_together(&mut slabs);
        slabs
    }

    /// The lines of `words` as slabs, as one piece of content of its own node.
    pub fn lines(
        &mut self,
        words: &Rich,
        how: Setting,
        width_pt: f32,
        parent: NodeId,
        role: Role,
    ) -> Vec<Slab> {
        let lines = self.setter.set(words, how, Some(width_pt));
        if lines.is_empty() {
            return Vec::new();
        }
        let node = self.tags.node(parent, role);
        let leaf = self.tags.leaf(node);
        lines
            .into_iter()
            .map(|line| slab_of(line, Owner::Leaf(leaf)))
            .collect()
    }

    fn beside(
        &mut self,
        left: &[Block],
        right: &[Block],
        left_share: f32,
        width_pt: f32,
        parent: NodeId,
    ) -> Vec<Slab> {
        let gutter_pt = 18.0;
        let left_pt = (width_pt - gutter_pt) * left_share.clamp(0.1, 0.9);
        let right_pt = width_pt - gutter_pt - left_pt;
        let left = stacked(self.compose_all(left, left_pt, parent));
        let right = stacked(self.compose_all(right, right_pt, parent));
        let height_pt = left.height_pt.max(right.height_pt);
        let mut slab = Slab {
            height_pt,
            before_pt: self.look.gap_pt,
            ..Slab::default()
        };
        slab.take(left, 0.0, 0.0);
        slab.take(right, left_pt + gutter_pt, 0.0);
        vec![slab]
    }
}

/// A line of words as a slab.
pub(super) fn slab_of(line: SetLine, owner: Owner) -> Slab {
    let mut slab = Slab {
        height_pt: line.height_pt,
        ..Slab::default()
    };
    slab.draw(owner, words_at(line, 0.0, 0.0));
    slab
}

/// A line of words with its top left corner at a place.
pub(super) fn words_at(line: SetLine, x_pt: f32, y_pt: f32) -> Shape {
    Shape::Words {
        line: Rc::new(line),
        x_pt,
        y_pt,
        halo: false,
    }
}

/// The slab moved to the right.
pub(super) fn indented(slab: Slab, by_pt: f32) -> Slab {
    let mut moved = Slab {
        height_pt: slab.height_pt,
        before_pt: slab.before_pt,
        keeps_next: slab.keeps_next,
        ..Slab::default()
    };
    moved.take(slab, by_pt, 0.0);
    moved
}

/// No single line of a text alone at the foot or the top of a page.
pub(super) fn hold_ends_together(lines: &mut [Slab]) {
    let count = lines.len();
    for (at, line) in lines.iter_mut().enumerate() {
        if count > 1 && (at == 0 || at + 2 == count) {
            line.keeps_next = true;
        }
    }
}

/// A thin full line.
pub(super) fn hairline(ink: Ink, width_pt: f32) -> LineStyle {
    LineStyle {
        ink,
        width_pt,
        dash_pt: [0.0, 0.0],
    }
}
