//! What a paper is made of: the blocks that its author strings together.

use std::sync::Arc;

use super::look::Ink;
use super::rich::Rich;
use crate::draw::{Drawing, PointSymbol};
use crate::error::BookError;

/// One block of a paper. Blocks follow each other down the page and on to the next.
#[derive(Debug, Clone)]
pub enum Block {
    /// A heading of level 1 to 3; level 1 begins a chapter. It becomes a bookmark, and `key` is
    /// what contents, cells and page numbers point to.
    Heading {
        /// 1 to 3; a level is never skipped downwards.
        level: u8,
        /// The words.
        words: String,
        /// A name of its own inside the paper; empty when nothing points here.
        key: String,
    },
    /// Running text.
    Paragraph {
        /// The words.
        words: Rich,
        /// How loud it is said.
        voice: Voice,
    },
    /// A list; with `numbered` in an order that matters.
    Points {
        /// One text a point.
        points: Vec<Rich>,
        /// 1, 2, 3 instead of bullets.
        numbered: bool,
    },
    /// Names with their values, in one or two columns.
    Facts {
        /// Name and value.
        facts: Vec<(String, Rich)>,
        /// Set two facts side by side.
        in_two: bool,
    },
    /// A table whose head is repeated on every page.
    Table(Table),
    /// Photos side by side, at most three in a row.
    Photos(Vec<Photo>),
    /// A drawing in its frame, with its legend.
    Drawn(Figure),
    /// A box that must not be overlooked.
    Callout(Callout),
    /// A verdict: its shape and its word, large.
    Verdict {
        /// The shape that stands for it.
        symbol: PointSymbol,
        /// The words.
        words: String,
    },
    /// The list of chapters with their pages.
    Contents,
    /// Blocks side by side; `left_share` of the width, 0 to 1, goes to the left ones.
    Beside {
        /// The left blocks.
        left: Vec<Block>,
        /// The right blocks.
        right: Vec<Block>,
        /// Share of the width for the left ones.
        left_share: f32,
    },
    /// Blocks kept on one page where they fit on one.
    Together(Vec<Block>),
    /// Blocks set closer: lines nearer and half the space between blocks, letters as large.
    Tight(Vec<Block>),
    /// What follows begins a page.
    NewPage,
    /// Empty room of so many points, left out at the top of a page.
    Space(f32),
}

/// How loud running text is said.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Voice {
    /// The first sentence of a chapter.
    Lead,
    /// Plain text.
    Body,
    /// Remarks and sources.
    Small,
    /// The name of the property on the cover; for readers by ear a heading of level 1.
    Title,
}

/// What kind of box it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CalloutKind {
    /// Something is barred: an octagon.
    Stop,
    /// Something needs care: a triangle.
    Caution,
    /// Something worth knowing: a plain bar.
    Note,
}

/// A box with a shape, a word and its sentences.
#[derive(Debug, Clone)]
pub struct Callout {
    /// Which kind.
    pub kind: CalloutKind,
    /// The word beside the shape, such as "Caution".
    pub word: String,
    /// One text a line.
    pub lines: Vec<Rich>,
}

/// A table.
#[derive(Debug, Clone, Default)]
pub struct Table {
    /// What the table shows, for readers who hear it.
    pub summary: String,
    /// The columns.
    pub columns: Vec<Column>,
    /// The rows; a row shorter than the head is filled with empty cells.
    pub rows: Vec<Vec<Cell>>,
    /// Whether the first cell of a row names the row.
    pub rows_named: bool,
}

/// A column of a table.
#[derive(Debug, Clone)]
pub struct Column {
    /// Its head.
    pub title: String,
    /// Its share of the width, relative to the other columns.
    pub share: f32,
    /// Whether its cells end at the right edge, as numbers do.
    pub at_end: bool,
}

/// A cell of a table.
#[derive(Debug, Clone, Default)]
pub struct Cell {
    /// Its words.
    pub words: Rich,
    /// The key of the heading that a tap on it leads to; empty for none.
    pub leads_to: String,
    /// Show the page number of that heading instead of words.
    pub shows_page: bool,
}

/// A photo, ready to be embedded.
#[derive(Debug, Clone)]
pub struct Photo {
    pub(super) image: krilla::image::Image,
    /// What it shows, for people who do not see it.
    pub described: String,
    /// The line under it; may be empty.
    pub caption: Rich,
}

/// A drawing with its place on paper.
#[derive(Debug, Clone)]
pub struct Figure {
    /// The drawing; its own words describe it.
    pub drawing: Arc<Drawing>,
    /// Largest height in points.
    pub height_pt: f32,
    /// The line under it; may be empty.
    pub caption: Rich,
    /// Set the legend in so many columns; 0 leaves it out.
    pub legend_columns: u8,
    /// A hairline around it.
    pub framed: bool,
}

impl Photo {
    /// A photo from the bytes of a JPEG file in grey or RGB.
    ///
    /// # Errors
    /// [`BookError::Unreadable`] when the bytes are no JPEG.
    pub fn from_jpeg(jpeg: Vec<u8>, described: &str, caption: Rich) -> Result<Self, BookError> {
        let image = krilla::image::Image::from_jpeg(jpeg.into(), false).map_err(|reason| {
            BookError::Unreadable {
                place: described.to_owned(),
                reason,
            }
        })?;
        Ok(Photo {
            image,
            described: described.to_owned(),
            caption,
        })
    }

    /// Height divided by width.
    pub(super) fn tallness(&self) -> f32 {
        let (width, height) = self.image.size();
        height as f32 / (width.max(1)) as f32
    }
}

impl Cell {
    /// A cell with `words`.
    pub fn of(words: impl Into<Rich>) -> Self {
        Cell {
            words: words.into(),
            ..Cell::default()
        }
    }

    /// A cell whose words lead to the heading `key`.
    pub fn leading_to(words: impl Into<Rich>, key: &str) -> Self {
        Cell {
            words: words.into(),
            leads_to: key.to_owned(),
            shows_page: false,
        }
    }

    /// A cell that shows the page of the heading `key`.
    pub fn page_of(key: &str) -> Self {
        Cell {
            words: Rich::new(),
            leads_to: key.to_owned(),
            shows_page: true,
        }
    }
}

impl Column {
    /// A column whose words begin at its left edge.
    pub fn of(title: impl Into<String>, share: f32) -> Self {
        Column {
            title: title.into(),
            share,
            at_end: false,
        }
    }

    /// A column whose words end at its right edge.
    pub fn at_end(title: impl Into<String>, share: f32) -> Self {
        Column {
            title: title.into(),
            share,
            at_end: true,
        }
    }
}

impl Block {
    /// A heading that nothing points to.
    pub fn heading(level: u8, words: impl Into<String>) -> Self {
        Block::Heading {
            level,
            words: words.into(),
            key: String::new(),
        }
    }

    /// Plain running text.
    pub fn text(words: impl Into<Rich>) -> Self {
        Block::Paragraph {
            words: words.into(),
            voice: Voice::Body,
        }
    }

    /// A remark in small letters.
    pub fn small(words: impl Into<Rich>) -> Self {
        Block::Paragraph {
            words: words.into(),
            voice: Voice::Small,
        }
    }

    /// A list with bullets.
    pub fn points(points: impl IntoIterator<Item = impl Into<Rich>>) -> Self {
        Block::Points {
            points: points.into_iter().map(Into::into).collect(),
            numbered: false,
        }
    }
}

impl CalloutKind {
    /// Ground, bar and ink of the box.
    pub(super) fn inks(self) -> [Ink; 3] {
        use super::look::{BARK, EMBER, LICHEN, LICHEN_TINT, SIGNAL, SIGNAL_TINT, SLATE};
        match self {
            CalloutKind::Stop => [SIGNAL_TINT, SIGNAL, EMBER],
            CalloutKind::Caution => [LICHEN_TINT, SIGNAL, BARK],
            CalloutKind::Note => [LICHEN_TINT, LICHEN, SLATE],
        }
    }
}
