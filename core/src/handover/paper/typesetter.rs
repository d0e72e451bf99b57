//! Words → lines of glyphs of a given width. Only our own faces are used, so that a paper looks the
//! same, byte for byte, on every machine.

use std::borrow::Cow;
use std::sync::Arc;

use krilla::text::{GlyphId, KrillaGlyph};
use parley::style::{FontFamily, FontFamilyName, FontWeight, LineHeight, StyleProperty};
use parley::{Layout, LayoutContext};

use super::fonts::{FAMILIES, Faces};
use super::look::Ink;
use super::rich::Rich;
use crate::error::BookError;

/// How a text is set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Setting {
    pub size_pt: f32,
    pub bold: bool,
    pub ink: Ink,
    /// Line height as a multiple of the size.
    pub leading: f32,
}

/// Glyphs of one face and size.
#[derive(Debug, Clone)]
pub(super) struct GlyphRun {
    pub face: usize,
    pub size_pt: f32,
    /// From the start of its line.
    pub x_pt: f32,
    pub glyphs: Vec<KrillaGlyph>,
}

/// One line of a text.
#[derive(Debug, Clone)]
pub(super) struct SetLine {
    /// The whole text that the glyphs point into.
    pub text: Arc<str>,
    pub runs: Vec<GlyphRun>,
    /// Without the space at its end.
    pub width_pt: f32,
    /// From the top of the line.
    pub baseline_pt: f32,
    pub height_pt: f32,
    pub ink: Ink,
}

/// Sets words in lines.
pub(super) struct Typesetter {
    faces: Faces,
    layouts: LayoutContext<()>,
}

impl Typesetter {
    pub fn new() -> Result<Self, BookError> {
        Ok(Typesetter {
            faces: Faces::load()?,
            layouts: LayoutContext::new(),
        })
    }

    /// The faces for the PDF, by the number that a run carries.
    pub fn printed_faces(&self) -> &[krilla::text::Font] {
        &self.faces.printed
    }

    /// The lines of `words` in `width_pt` points; unbroken without a width. Line breaks in the
    /// words stay. Empty words give no line.
    pub fn set(&mut self, words: &Rich, how: Setting, width_pt: Option<f32>) -> Vec<SetLine> {
        let words = self.printable(words);
        if words.is_empty() {
            return Vec::new();
        }
        let layout = self.lay_out(&words, how, width_pt);
        let text: Arc<str> = words.text.as_str().into();
        layout
            .lines()
            .map(|line| self.line(&line, &text, how))
            .collect()
    }

    /// `words` with every character replaced by one that our faces can print.
    fn printable(&self, words: &Rich) -> Rich {
        let mut kept = Rich::new();
        let mut bold = words.bold.iter().peekable();
        for (at, character) in words.text.char_indices() {
            while bold.next_if(|range| range.end <= at).is_some() {}
            let Some(printed) = self.faces.printable(character) else {
                continue;
            };
            let start = kept.text.len();
            kept.text.push(printed);
            if bold.peek().is_some_and(|range| range.start <= at) {
                match kept.bold.last_mut() {
                    Some(last) if last.end == start => last.end = kept.text.len(),
                    _ => kept.bold.push(start..kept.text.len()),
                }
            }
        }
        kept.text.truncate(kept.text.trim_end().len());
        let end = kept.text.len();
        kept.bold.retain_mut(|range| {
            range.end = range.end.min(end);
            range.start < range.end
        });
        kept
    }

    fn lay_out(&mut self, words: &Rich, how: Setting, width_pt: Option<f32>) -> Layout<()> {
        let families: Vec<_> = FAMILIES
            .iter()
            .map(|name| FontFamilyName::Named(Cow::Borrowed(*name)))
            .collect();
        let mut builder =
            self.layouts
                .ranged_builder(&mut self.faces.context, &words.text, 1.0, false);
        builder.push_default(StyleProperty::FontFamily(FontFamily::List(Cow::Owned(
            families,
        ))));
        builder.push_default(StyleProperty::FontSize(how.size_pt));
        builder.push_default(StyleProperty::LineHeight(LineHeight::Absolute(
            how.size_pt * how.leading,
        )));
        builder.push_default(StyleProperty::OverflowWrap(
            parley::style::OverflowWrap::Anywhere,
        ));
        if how.bold {
            builder.push_default(StyleProperty::FontWeight(FontWeight::BOLD));
        }
        for range in &words.bold {
            builder.push(StyleProperty::FontWeight(FontWeight::BOLD), range.clone());
        }
        let mut layout = builder.build(&words.text);
        layout.break_all_lines(width_pt);
        layout
    }

    fn line(&self, line: &parley::Line<'_, ()>, text: &Arc<str>, how: Setting) -> SetLine {
        let (mut x_pt, mut end_of_ink_pt) = (0.0, 0.0);
        let mut runs = Vec::new();
        for run in line.runs() {
            let size_pt = run.font_size();
            let start_pt = x_pt;
            let mut glyphs: Vec<KrillaGlyph> = Vec::new();
            for cluster in run.visual_clusters() {
                let range = cluster.text_range();
                let letters = text.get(range.clone()).unwrap_or_default();
                if letters == "\n" {
                    continue;
                }
                if cluster.is_ligature_continuation() {
                    if let Some(glyph) = glyphs.last_mut() {
                        glyph.text_range.end = range.end;
                    }
                    continue;
                }
                for glyph in cluster.glyphs() {
                    glyphs.push(KrillaGlyph::new(
                        GlyphId::new(glyph.id),
                        glyph.advance / size_pt,
                        glyph.x / size_pt,
                        glyph.y / size_pt,
                        0.0,
                        range.clone(),
                        None,
                    ));
                    x_pt += glyph.advance;
                }
                if !letters.trim().is_empty() {
                    end_of_ink_pt = x_pt;
                }
            }
            if let (Some(face), false) = (self.faces.number_of(run.font()), glyphs.is_empty()) {
                runs.push(GlyphRun {
                    face,
                    size_pt,
                    x_pt: start_pt,
                    glyphs,
                });
            }
        }
        let height_pt = how.size_pt * how.leading;
        SetLine {
            text: text.clone(),
            runs,
            width_pt: end_of_ink_pt,
            // The letters stand a little above the middle of their line: 0.35 is half the height
            // of a capital.
            baseline_pt: height_pt / 2.0 + how.size_pt * 0.357,
            height_pt,
            ink: how.ink,
        }
    }
}

/// Measures words in our face, for drawings that are laid out for paper.
pub struct WordWidths(std::cell::RefCell<Typesetter>);

impl WordWidths {
    /// Loads the faces.
    ///
    /// # Errors
    /// [`BookError::Defect`] when a face carried inside the program cannot be read.
    pub fn load() -> Result<Self, BookError> {
        Ok(WordWidths(std::cell::RefCell::new(Typesetter::new()?)))
    }

    /// The width in points of `words` on one line at `size_pt`.
    pub fn width_pt(&self, words: &str, size_pt: f64) -> f64 {
        let how = Setting {
            size_pt: size_pt as f32,
            bold: false,
            ink: Ink::default(),
            leading: 1.0,
        };
        let lines = match self.0.try_borrow_mut() {
            Ok(mut setter) => setter.set(&words.into(), how, None),
            Err(_) => Vec::new(),
        };
        lines.iter().map(|line| f64::from(line.width_pt)).sum()
    }
}

#[cfg(test)]
mod tests {
    use super::super::look::BARK;
    use super::*;

    const HOW: Setting = Setting {
        size_pt: 10.0,
        bold: false,
        ink: BARK,
        leading: 1.4,
    };

    #[test]
    fn lines_keep_their_width_and_all_words() {
        let mut setter = Typesetter::new().unwrap();
        let words = Rich::from("The stem leans toward the drive and ").bold("nobody stands there");
        let lines = setter.set(&words, HOW, Some(90.0));
        assert!(lines.len() >= 3);
        assert!(lines.iter().all(|line| line.width_pt <= 90.0));
        let glyphs: usize = lines
            .iter()
            .flat_map(|line| &line.runs)
            .map(|run| run.glyphs.len())
            .sum();
        assert_eq!(glyphs, words.text.chars().count());
        assert!(lines.iter().flat_map(|l| &l.runs).any(|run| run.face == 1));
    }

    #[test]
    fn a_word_longer_than_the_line_is_broken() {
        let mut setter = Typesetter::new().unwrap();
        let lines = setter.set(&"x".repeat(60).into(), HOW, Some(80.0));
        assert!(lines.len() > 1 && lines.iter().all(|line| line.width_pt <= 80.0));
    }

    #[test]
    fn no_glyph_is_missing_whatever_is_typed() {
        let mut setter = Typesetter::new().unwrap();
        let lines = setter.set(&"木 ≤ 7\u{202F}m ✓ e\u{301} 🌳\u{7}".into(), HOW, None);
        let ids: Vec<u32> = lines
            .iter()
            .flat_map(|line| &line.runs)
            .flat_map(|run| &run.glyphs)
            .map(|glyph| glyph.glyph_id.to_u32())
            .collect();
        assert!(!ids.is_empty() && ids.iter().all(|id| *id != 0));
    }

    #[test]
    fn figures_have_one_width() {
        let mut setter = Typesetter::new().unwrap();
        let width = |setter: &mut Typesetter, s: &str| setter.set(&s.into(), HOW, None)[0].width_pt;
        assert_eq!(width(&mut setter, "111"), width(&mut setter, "808"));
    }
}
