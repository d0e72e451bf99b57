//! The faces carried inside the program, and what of a text they can print.

use parley::fontique::{Blob, Collection, CollectionOptions, SourceCache};
use parley::{FontContext, FontData};

use crate::error::BookError;

/// The face of running text.
const REGULAR: &[u8] = include_bytes!("../../../fonts/NotoSans-Regular.ttf");
/// The face of headings and emphasis.
const BOLD: &[u8] = include_bytes!("../../../fonts/NotoSans-Bold.ttf");
/// Arrows and signs of mathematics.
const SIGNS: &[u8] = include_bytes!("../../../fonts/NotoSansMath-Regular.ttf");
/// Ticks, boxes and other plain forms.
const FORMS: &[u8] = include_bytes!("../../../fonts/NotoSansSymbols2-Regular.ttf");

/// The families in the order in which they are asked for a character.
pub(super) const FAMILIES: [&str; 3] = ["Noto Sans", "Noto Sans Math", "Noto Sans Symbols2"];

/// Printed where no face has the character.
const NO_SUCH_CHARACTER: char = '□';

/// The faces, as the layout and the PDF need them.
pub(super) struct Faces {
    /// For the layout: our faces and no others.
    pub context: FontContext,
    blobs: Vec<Blob<u8>>,
    /// For the PDF, in the order of the faces.
    pub printed: Vec<krilla::text::Font>,
    /// All characters that some face has, in rising order.
    coverage: Vec<u32>,
}

impl Faces {
    /// Loads the faces carried inside the program; nothing is asked of the system.
    pub fn load() -> Result<Self, BookError> {
        let mut collection = Collection::new(CollectionOptions {
            shared: false,
            system_fonts: false,
        });
        let (mut blobs, mut printed, mut coverage) = (Vec::new(), Vec::new(), Vec::new());
        for bytes in [REGULAR, BOLD, SIGNS, FORMS] {
            let blob = Blob::new(std::sync::Arc::new(bytes));
            for (_, fonts) in collection.register_fonts(blob.clone(), None) {
                for charmap in fonts.iter().filter_map(|font| {
                    let index = font.charmap_index();
                    index.charmap(bytes)
                }) {
                    coverage.extend((0x20..0x3000).filter(|c| charmap.map(*c).is_some()));
                }
            }
            blobs.push(blob);
            printed.push(krilla::text::Font::new(bytes.into(), 0).ok_or_else(|| {
                BookError::Defect {
                    detail: "a face of the paper cannot be read".into(),
                }
            })?);
        }
        coverage.sort_unstable();
        coverage.dedup();
        Ok(Faces {
            context: FontContext {
                collection,
                source_cache: SourceCache::default(),
            },
            blobs,
            printed,
            coverage,
        })
    }

    /// The number of the face that the layout chose.
    pub fn number_of(&self, font: &FontData) -> Option<usize> {
        self.blobs.iter().position(|b| b.id() == font.data.id())
    }

    /// Whether some face has `character`.
    pub fn has(&self, character: char) -> bool {
        self.coverage.binary_search(&u32::from(character)).is_ok()
    }

    /// What is printed for `character`: itself, a plainer one of the same meaning, nothing for
    /// marks that only steer a screen, or □.
    pub fn printable(&self, character: char) -> Option<char> {
        match character {
            '\n' => Some('\n'),
            '\t' => Some(' '),
            // Narrow and figure spaces keep figures together; ours is the plain one that does.
            '\u{2007}' | '\u{2009}' | '\u{200A}' | '\u{202F}' => Some('\u{A0}'),
            '\u{2000}'..='\u{2006}' | '\u{2008}' => Some(' '),
            '\u{AD}' | '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' => None,
            '\u{2060}'..='\u{206F}' | '\u{FEFF}' | '\u{FE00}'..='\u{FE0F}' => None,
            c if c.is_control() => None,
            c if self.has(c) => Some(c),
            _ => Some(NO_SUCH_CHARACTER),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_signs_of_the_trade_are_there() {
        let faces = Faces::load().unwrap();
        for sign in "±°×≤≥–—…→✓✗▲■●²³½¼′″€£ñéüßçœŁΩжΔ□".chars()
        {
            assert_eq!(faces.printable(sign), Some(sign), "{sign}");
        }
    }

    #[test]
    fn what_no_face_has_is_shown_as_a_box_and_steering_marks_vanish() {
        let faces = Faces::load().unwrap();
        assert_eq!(faces.printable('木'), Some('□'));
        assert_eq!(faces.printable('\u{1F333}'), Some('□'));
        assert_eq!(faces.printable('\u{2068}'), None);
        assert_eq!(faces.printable('\u{202F}'), Some('\u{A0}'));
        assert_eq!(faces.printable('\u{7}'), None);
    }
}
