//! The look of our papers: palette, sizes, spaces, sheets. The only place that knows them.

use crate::draw::StyleRole;

/// A colour of the palette, in sRGB.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Ink(pub u8, pub u8, pub u8);

/// Bark: headings and all running text.
pub const BARK: Ink = Ink(0x3B, 0x2A, 0x20);
/// Slate: second voice, page heads, captions.
pub const SLATE: Ink = Ink(0x2F, 0x3B, 0x44);
/// Moss, the dark shade of lichen: readable as text.
pub const MOSS: Ink = Ink(0x3E, 0x4E, 0x30);
/// Lichen: rules and areas, never text.
pub const LICHEN: Ink = Ink(0x6E, 0x7F, 0x5C);
/// Signal orange: bars, marks and lines of warning, never text.
pub const SIGNAL: Ink = Ink(0xD9, 0x48, 0x0F);
/// Ember, the dark shade of signal orange: readable as text.
pub const EMBER: Ink = Ink(0x7A, 0x26, 0x05);
/// Hairlines between rows.
pub const HAIR: Ink = Ink(0xC9, 0xCD, 0xC0);
/// A breath of lichen behind boxes and head rows.
pub const LICHEN_TINT: Ink = Ink(0xF2, 0xF4, 0xEE);
/// A breath of signal orange behind what bars work.
pub const SIGNAL_TINT: Ink = Ink(0xFD, 0xF1, 0xEA);
/// Paper.
pub const WHITE: Ink = Ink(0xFF, 0xFF, 0xFF);

/// The sheet a paper is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sheet {
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 8.5 × 11 in.
    UsLetter,
}

impl Sheet {
    /// Width and height in points, upright.
    pub fn size_pt(self) -> (f32, f32) {
        match self {
            Sheet::A4 => (595.28, 841.89),
            Sheet::UsLetter => (612.0, 792.0),
        }
    }
}

/// Sizes of one kind of paper, in points.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Look {
    /// Running text.
    pub body_pt: f32,
    /// Captions, tables, page heads.
    pub small_pt: f32,
    /// The first sentence of a chapter.
    pub lead_pt: f32,
    /// Headings of level 1 to 3.
    pub heading_pt: [f32; 3],
    /// Line height as a multiple of the size.
    pub leading: f32,
    /// Space between blocks.
    pub gap_pt: f32,
    /// Space above and below the words of a row, and inside a box.
    pub row_pad_pt: f32,
    /// A short bar under headings of level 1.
    pub chapter_bar: bool,
    /// The line at the foot and the head of a page.
    pub foot_pt: f32,
    /// Margins: left, top, right, bottom.
    pub margin_pt: [f32; 4],
}

impl Look {
    /// For a client at a desk.
    pub fn summary() -> Self {
        Look {
            body_pt: 10.0,
            small_pt: 8.5,
            lead_pt: 12.0,
            heading_pt: [22.0, 13.5, 10.5],
            leading: 1.42,
            gap_pt: 8.0,
            row_pad_pt: 3.0,
            chapter_bar: true,
            foot_pt: 8.0,
            margin_pt: [62.0, 66.0, 62.0, 60.0],
        }
    }

    /// For a crew at the foot of a tree, read at arm's length: nothing under 13 points.
    pub fn climb_sheet() -> Self {
        Look {
            body_pt: 13.0,
            small_pt: 13.0,
            lead_pt: 15.0,
            heading_pt: [24.0, 14.5, 13.0],
            leading: 1.26,
            gap_pt: 6.0,
            row_pad_pt: 2.2,
            chapter_bar: false,
            foot_pt: 13.0,
            margin_pt: [40.0, 36.0, 40.0, 42.0],
        }
    }
}

impl Look {
    /// The same letters with less air between them.
    pub(super) fn tightened(self) -> Self {
        Look {
            leading: self.leading * 0.91,
            gap_pt: self.gap_pt * 0.45,
            row_pad_pt: self.row_pad_pt * 0.3,
            ..self
        }
    }
}

/// How a role of a drawing is inked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pen {
    /// Colour of lines and symbols.
    pub line: Ink,
    /// Width of lines in points; 0 draws no line.
    pub width_pt: f32,
    /// Dash and gap in points; both 0 for a full line.
    pub dash_pt: [f32; 2],
    /// Colour and opacity of areas, from 0 to 1; 0 leaves them empty.
    pub area: (Ink, f32),
}

/// The pen for `role`. Roles that may lie over each other differ by width or dashes as well as by
/// colour, so that a black print still tells them apart.
pub fn pen_of(role: StyleRole) -> Pen {
    let pen = |line, width_pt, dash_pt, area| Pen {
        line,
        width_pt,
        dash_pt,
        area,
    };
    let full = [0.0, 0.0];
    let empty = (WHITE, 0.0);
    match role {
        StyleRole::PropertyEdge => pen(BARK, 1.4, [8.0, 3.0], empty),
        StyleRole::Crown => pen(LICHEN, 0.6, full, (LICHEN, 0.22)),
        StyleRole::DeadCrown => pen(BARK, 0.6, [1.5, 1.5], (BARK, 0.08)),
        StyleRole::DropZone => pen(SIGNAL, 0.8, full, (SIGNAL, 0.07)),
        StyleRole::KeepOutEveryone => pen(SIGNAL, 1.2, [5.0, 2.5], empty),
        StyleRole::KeepOutCrew => pen(SIGNAL, 0.7, [1.5, 2.0], empty),
        StyleRole::Target => pen(SLATE, 0.8, full, (SLATE, 0.14)),
        StyleRole::OverheadLine => pen(SLATE, 1.4, [10.0, 2.0], empty),
        StyleRole::ApproachStrip => pen(SLATE, 0.4, [2.0, 2.0], (SLATE, 0.07)),
        StyleRole::AccuracyRing => pen(SLATE, 0.4, [1.0, 1.5], empty),
        StyleRole::Tree | StyleRole::Label | StyleRole::Defect => pen(BARK, 0.8, full, (BARK, 1.0)),
        StyleRole::Leader => pen(SLATE, 0.35, full, empty),
        StyleRole::ScaleBar | StyleRole::North => pen(BARK, 0.8, full, (BARK, 1.0)),
        StyleRole::SheetEdge => pen(SLATE, 0.6, [3.0, 3.0], empty),
        StyleRole::Outline | StyleRole::Ground => pen(SLATE, 0.9, full, (SLATE, 0.10)),
        StyleRole::Bark => pen(BARK, 1.0, full, (BARK, 0.55)),
        StyleRole::SoundWood => pen(BARK, 0.5, full, (Ink(0xE8, 0xDC, 0xC8), 1.0)),
        StyleRole::Decay => pen(BARK, 0.8, [2.0, 1.5], (Ink(0x8A, 0x7B, 0x6B), 1.0)),
        StyleRole::Opening => pen(BARK, 0.8, full, (WHITE, 1.0)),
        StyleRole::Reading => pen(SLATE, 0.9, full, (SLATE, 1.0)),
        StyleRole::WeakestDirection => pen(SIGNAL, 1.2, full, (SIGNAL, 1.0)),
        StyleRole::Finding => pen(EMBER, 0.8, full, (EMBER, 1.0)),
        StyleRole::Stem => pen(BARK, 0.8, full, (BARK, 0.30)),
        StyleRole::TieIn => pen(MOSS, 1.2, full, (MOSS, 1.0)),
        StyleRole::Dimension => pen(SLATE, 0.6, full, (SLATE, 1.0)),
        StyleRole::SectionHeight => pen(BARK, 0.8, [3.0, 2.0], empty),
        StyleRole::KeepClear => pen(SIGNAL, 1.0, [4.0, 2.0], empty),
        StyleRole::Me => pen(SLATE, 0.8, full, (SLATE, 1.0)),
        StyleRole::Entered => pen(BARK, 1.6, full, (SIGNAL, 0.2)),
        StyleRole::OnSymbol | StyleRole::Paper => pen(WHITE, 0.0, full, (WHITE, 1.0)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast ratio as WCAG 2.1 defines them.
    fn contrast(one: Ink, other: Ink) -> f64 {
        let channel = |byte: u8| {
            let share = f64::from(byte) / 255.0;
            if share <= 0.040_45 {
                share / 12.92
            } else {
                ((share + 0.055) / 1.055).powf(2.4)
            }
        };
        let light =
            |ink: Ink| 0.2126 * channel(ink.0) + 0.7152 * channel(ink.1) + 0.0722 * channel(ink.2);
        let (a, b) = (light(one), light(other));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn every_ink_that_carries_words_has_seven_to_one() {
        for ink in [BARK, SLATE, MOSS, EMBER] {
            for ground in [WHITE, LICHEN_TINT, SIGNAL_TINT] {
                assert!(contrast(ink, ground) >= 7.0, "{ink:?} on {ground:?}");
            }
        }
        for ground in [BARK, SLATE, MOSS, EMBER] {
            assert!(contrast(WHITE, ground) >= 7.0, "white on {ground:?}");
        }
    }

    #[test]
    fn a_sheet_for_arms_length_has_nothing_small() {
        let look = Look::climb_sheet();
        assert!(look.small_pt >= 13.0 && look.body_pt >= 13.0 && look.foot_pt >= 13.0);
    }
}
