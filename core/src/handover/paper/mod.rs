//! Our own paper: blocks are composed into slabs, slabs flow on pages, and only then the pages are
//! written, so that page numbers, links and bookmarks are known. Every paper is a tagged PDF that
//! keeps PDF/UA-1 and PDF/A-2a, and the same paper gives the same bytes.

mod block;
mod compose;
mod compose_facts;
mod compose_figure;
mod compose_list;
mod compose_table;
mod flow;
mod fonts;
mod look;
mod marks;
mod paint;
mod rich;
mod slab;
mod tags;
mod typesetter;
mod write;

pub use block::{Block, Callout, CalloutKind, Cell, Column, Figure, Photo, Table, Voice};
pub use look::{Look, Sheet};
pub use rich::Rich;
pub use typesetter::WordWidths;

use compose::{Composer, slab_of};
use flow::{Frame, Page, laid_on_pages};
use look::HAIR;
use slab::{Item, Owner, Shape, Slab};
use tags::Tags;
use typesetter::Typesetter;
use write::Standing;

use crate::error::BookError;
use crate::record::Moment;

/// What is said of a paper as a whole.
#[derive(Debug, Clone)]
pub struct PaperFacts {
    /// Its title.
    pub title: String,
    /// One sentence on what it is; may be empty.
    pub subject: String,
    /// Who made it; may be empty.
    pub author: String,
    /// The language of its words (RFC 3066), such as `en-US`.
    pub language: String,
    /// The moment it was made, from the one clock of the field book.
    pub made: Moment,
    /// An id of its own; the same paper made again keeps it.
    pub id: String,
    /// The sheet.
    pub sheet: Sheet,
    /// Sizes and spaces.
    pub look: Look,
}

/// A paper.
pub struct Paper<'a> {
    /// What is said of it as a whole.
    pub facts: PaperFacts,
    /// The line at the head of every page but the first, left and right.
    pub head: [String; 2],
    /// The line at the foot of every page, left.
    pub foot: String,
    /// Words for "page n of m".
    pub page_words: &'a dyn Fn(u32, u32) -> String,
    /// Its blocks.
    pub blocks: Vec<Block>,
}

impl Paper<'_> {
    /// The bytes of the PDF. `how_far` is told what is done of how much, and stops the work by
    /// answering no.
    ///
    /// # Errors
    /// [`BookError::Stopped`] when stopped; [`BookError::Defect`] when a link leads nowhere or
    /// a file would not keep the standards.
    pub fn print(&self, how_far: &dyn Fn(u32, u32) -> bool) -> Result<Vec<u8>, BookError> {
        let mut setter = Typesetter::new()?;
        let mut tags = Tags::new();
        let pages = self.lay_out(&mut setter, &mut tags, how_far)?;
        let standings = standings_of(&pages);
        let pages = self.with_heads_and_feet(pages, &mut setter);
        let steps = self.blocks.len() as u32;
        let count = pages.len() as u32;
        write::written(
            &self.facts,
            pages,
            &standings,
            tags,
            &mut setter,
            &mut |done, _| how_far(steps + done as u32, steps + count),
        )
    }

    fn lay_out(
        &self,
        setter: &mut Typesetter,
        tags: &mut Tags,
        how_far: &dyn Fn(u32, u32) -> bool,
    ) -> Result<Vec<Page>, BookError> {
        let (frame, width_pt) = frame_of(&self.facts);
        let mut composer = Composer {
            setter,
            tags,
            look: self.facts.look,
            page_pt: frame.height_pt,
            chapters: chapters_in(&self.blocks),
        };
        let mut slabs = Vec::new();
        // Pages are not counted yet; a page a block is near enough for a bar.
        let of = 2 * self.blocks.len() as u32;
        for (number, block) in self.blocks.iter().enumerate() {
            if !how_far(number as u32, of) {
                return Err(BookError::Stopped);
            }
            slabs.append(&mut composer.compose(block, width_pt, Tags::ROOT));
        }
        Ok(laid_on_pages(slabs, frame))
    }

    fn with_heads_and_feet(&self, mut pages: Vec<Page>, setter: &mut Typesetter) -> Vec<Page> {
        let (frame, width_pt) = frame_of(&self.facts);
        let (_, sheet_pt) = self.facts.sheet.size_pt();
        let [_, top_pt, _, bottom_pt] = self.facts.look.margin_pt;
        let count = pages.len() as u32;
        for (number, page) in pages.iter_mut().enumerate() {
            let left_pt = frame.left_pt;
            let foot_pt = sheet_pt - bottom_pt * 0.62;
            let page_words = (self.page_words)(number as u32 + 1, count);
            let foot = [self.foot.as_str(), page_words.as_str()];
            let mut items = self.line_of_two(foot, width_pt, Owner::PageFoot, setter);
            for item in &mut items {
                item.shape.shift(left_pt, foot_pt);
            }
            page.items.append(&mut items);
            if number == 0 || self.head.iter().all(String::is_empty) {
                continue;
            }
            let head = [self.head[0].as_str(), self.head[1].as_str()];
            let mut items = self.line_of_two(head, width_pt, Owner::PageHead, setter);
            let rule = Shape::rule(0.0, 14.0, width_pt, HAIR, 0.6);
            items.push(Item {
                shape: rule,
                owner: Owner::PageHead,
            });
            for item in &mut items {
                item.shape.shift(left_pt, top_pt * 0.44);
            }
            items.append(&mut page.items);
            page.items = items;
        }
        pages
    }

    /// Two texts on one line, the second at the right edge.
    fn line_of_two(
        &self,
        words: [&str; 2],
        width_pt: f32,
        owner: Owner,
        setter: &mut Typesetter,
    ) -> Vec<Item> {
        let how = typesetter::Setting {
            size_pt: self.facts.look.foot_pt,
            bold: false,
            ink: look::SLATE,
            leading: 1.3,
        };
        let mut slab = Slab::default();
        for (number, words) in words.into_iter().enumerate() {
            let line = setter.set(&words.into(), how, None).into_iter().next();
            if let Some(line) = line {
                let x_pt = if number == 0 {
                    0.0
                } else {
                    width_pt - line.width_pt
                };
                slab.take(slab_of(line, owner), x_pt, 0.0);
            }
        }
        slab.items
    }
}

/// Counts the pages that some blocks would take, for authors who must fit one.
pub struct PageCounter {
    setter: Typesetter,
    facts: PaperFacts,
}

impl PageCounter {
    /// A counter for papers of these facts.
    ///
    /// # Errors
    /// [`BookError::Defect`] when a face carried inside the program cannot be read.
    pub fn new(facts: &PaperFacts) -> Result<Self, BookError> {
        Ok(PageCounter {
            setter: Typesetter::new()?,
            facts: facts.clone(),
        })
    }

    /// The pages that `blocks` would take by themselves.
    pub fn pages(&mut self, blocks: &[Block]) -> usize {
        let (frame, width_pt) = frame_of(&self.facts);
        let mut tags = Tags::new();
        let mut composer = Composer {
            setter: &mut self.setter,
            tags: &mut tags,
            look: self.facts.look,
            page_pt: frame.height_pt,
            chapters: chapters_in(blocks),
        };
        let slabs = composer.compose_all(blocks, width_pt, Tags::ROOT);
        laid_on_pages(slabs, frame).len()
    }
}

/// The part of a page that blocks fill, and its width.
fn frame_of(facts: &PaperFacts) -> (Frame, f32) {
    let (width_pt, height_pt) = facts.sheet.size_pt();
    let [left_pt, top_pt, right_pt, bottom_pt] = facts.look.margin_pt;
    let frame = Frame {
        left_pt,
        top_pt,
        height_pt: height_pt - top_pt - bottom_pt,
    };
    (frame, width_pt - left_pt - right_pt)
}

/// Level, words and key of every heading.
fn chapters_in(blocks: &[Block]) -> Vec<(u8, String, String)> {
    let mut found = Vec::new();
    for block in blocks {
        match block {
            Block::Heading { level, words, key } => {
                found.push((*level, words.clone(), key.clone()));
            }
            Block::Together(inner) | Block::Tight(inner) => found.append(&mut chapters_in(inner)),
            _ => {}
        }
    }
    found
}

fn standings_of(pages: &[Page]) -> Vec<Standing> {
    let mut standings = Vec::new();
    for (page, laid) in pages.iter().enumerate() {
        for heading in &laid.headings {
            standings.push(Standing {
                level: heading.level,
                words: heading.words.clone(),
                key: heading.key.clone(),
                page,
                at: [0.0, heading.y_pt],
            });
        }
    }
    standings
}

#[cfg(test)]
mod tests;
