//! The paper or screen a drawing is laid out for: its size, its letters, its scale.

use super::drawing::{DrawnExtent, DrawnText, Spot, TextHold};
use super::spots::tenth_mm;

/// Metres in a point of 1/72 inch.
const POINT_M: f64 = 0.0254 / 72.0;

/// The steps of round scales within a power of ten, finer than the few of old rulers: a plan that
/// just misses one need not shrink by half.
const ROUND_STEPS: [f64; 10] = [1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.5, 8.0];

/// The width in points of some words at a size in points.
pub type TextWidth<'a> = &'a dyn Fn(&str, f64) -> f64;

/// The paper or screen a drawing is laid out for. A drawing never takes more than its frame; one
/// that needs less height may be lower.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DrawnFrame {
    /// Width in points (1/72 inch on paper, the reader's own points on a screen), 60 and up.
    pub width_pt: f64,
    /// Height in points, 60 and up.
    pub height_pt: f64,
    /// Size of a label's letters in points, 3 to 60; the reader's text size is already in it.
    pub text_pt: f64,
    /// Whether the scale must be a round one, as on paper; else the drawing fills the frame.
    pub round_scale: bool,
}

/// The unit of a scale bar, in the reader's system.
#[derive(Debug, Clone, PartialEq)]
pub struct BarUnit {
    /// The unit's sign, already worded: m, ft, cm, in.
    pub sign: String,
    /// Metres in one of it.
    pub unit_m: f64,
}

impl DrawnFrame {
    /// The same frame with sizes held in their ranges, so that no layout divides by nothing.
    pub(crate) fn held(self) -> Self {
        DrawnFrame {
            width_pt: self.width_pt.clamp(60.0, 20_000.0),
            height_pt: self.height_pt.clamp(60.0, 20_000.0),
            text_pt: self.text_pt.clamp(3.0, 60.0),
            round_scale: self.round_scale,
        }
    }

    /// The same frame, no higher than `needed_pt`.
    pub(crate) fn cut_to(self, needed_pt: f64) -> Self {
        DrawnFrame {
            height_pt: self.height_pt.min(needed_pt.ceil()).max(60.0),
            ..self
        }
    }

    /// The scale at which `width_m` × `height_m` fits `width_pt` × `height_pt`.
    pub(crate) fn scale_for(&self, size_m: (f64, f64), room_pt: (f64, f64)) -> f64 {
        let needed = (size_m.0 / room_pt.0.max(1.0)).max(size_m.1 / room_pt.1.max(1.0)) / POINT_M;
        let needed = needed.max(1.0);
        let ten = libm::pow(10.0, libm::floor(libm::log10(needed)));
        if !self.round_scale {
            // Rounded up to three digits, so that a centimetre more does not move every label.
            return (needed / ten * 100.0).ceil() * ten / 100.0;
        }
        ROUND_STEPS
            .into_iter()
            .map(|step| step * ten)
            .find(|scale| *scale >= needed - 1e-9 && *scale == scale.floor())
            .unwrap_or(10.0 * ten)
    }
}

/// Metres on the ground in one point of the reader at `scale`.
pub fn metres_per_point(scale: f64) -> f64 {
    scale * POINT_M
}

/// A width estimate for readers that have no font at hand: wide letters, narrow letters and the
/// rest, in a plain sans serif; on the generous side.
pub fn estimated_width_pt(words: &str, size_pt: f64) -> f64 {
    let ems: f64 = words
        .chars()
        .map(|letter| match letter {
            'i' | 'j' | 'l' | 'I' | '.' | ',' | ':' | ';' | '\'' | '|' | '!' | ' ' | '\u{a0}' => {
                0.31
            }
            'f' | 't' | 'r' | '(' | ')' | '-' => 0.40,
            'm' | 'w' | 'M' | 'W' | '@' | '%' | '–' | '—' => 0.95,
            'A'..='Z' => 0.70,
            _ if letter.is_ascii() => 0.58,
            // Wide scripts take a full square, others about a capital's width.
            _ if letter as u32 >= 0x1100 => 1.0,
            _ => 0.66,
        })
        .sum();
    ems * size_pt
}

/// The rectangle that a text takes, with what hangs below its baseline.
pub fn text_extent(text: &DrawnText, m_per_pt: f64, width: TextWidth) -> DrawnExtent {
    let wide_m = width(&text.words, text.size_pt) * m_per_pt;
    let half_m = 0.6 * text.size_pt * m_per_pt;
    let left_m = match text.hold {
        TextHold::Start => text.at.x_m,
        TextHold::Middle => text.at.x_m - wide_m / 2.0,
        TextHold::End => text.at.x_m - wide_m,
    };
    DrawnExtent {
        left_m,
        bottom_m: text.at.y_m - half_m,
        right_m: left_m + wide_m,
        top_m: text.at.y_m + half_m,
    }
}

/// The square that a symbol of `size_pt` takes around `at`.
pub fn symbol_extent(at: Spot, size_pt: f64, m_per_pt: f64) -> DrawnExtent {
    let half_m = size_pt / 2.0 * m_per_pt;
    DrawnExtent {
        left_m: at.x_m - half_m,
        bottom_m: at.y_m - half_m,
        right_m: at.x_m + half_m,
        top_m: at.y_m + half_m,
    }
}

/// `words` broken at plain spaces, never at no-break ones, into lines of at most `room_pt`; a longer single word stands alone.
pub(crate) fn broken_lines(
    words: &str,
    size_pt: f64,
    room_pt: f64,
    width: TextWidth,
) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in words.split(' ').filter(|word| !word.is_empty()) {
        let joined = lines.last().map(|line| format!("{line} {word}"));
        match (lines.last_mut(), joined) {
            (Some(line), Some(joined)) if width(&joined, size_pt) <= room_pt => *line = joined,
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// The rectangle of a whole frame at `scale`, with `middle` in the middle of the part that stands
/// `foot_pt` above the lower edge.
pub(crate) fn frame_extent(
    frame: &DrawnFrame,
    scale: f64,
    middle: Spot,
    foot_pt: f64,
) -> DrawnExtent {
    let m_per_pt = metres_per_point(scale);
    let half_m = frame.width_pt / 2.0 * m_per_pt;
    let body_half_m = (frame.height_pt - foot_pt) / 2.0 * m_per_pt;
    DrawnExtent {
        left_m: tenth_mm(middle.x_m - half_m),
        bottom_m: tenth_mm(middle.y_m - body_half_m - foot_pt * m_per_pt),
        right_m: tenth_mm(middle.x_m + half_m),
        top_m: tenth_mm(middle.y_m + body_half_m),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn frame(round_scale: bool) -> DrawnFrame {
        DrawnFrame {
            width_pt: 500.0,
            height_pt: 700.0,
            text_pt: 8.0,
            round_scale,
        }
    }

    #[test]
    fn a_paper_scale_is_the_next_round_one() {
        // 100 m across 500 points of 0.3528 mm: 1:567, so 1:600 on paper.
        let needed = frame(false).scale_for((100.0, 10.0), (500.0, 700.0));
        assert_eq!(needed, 567.0);
        assert_eq!(frame(true).scale_for((100.0, 10.0), (500.0, 700.0)), 600.0);
        assert_eq!(frame(true).scale_for((2e6, 1.0), (500.0, 700.0)), 15e6);
        assert_eq!(frame(true).scale_for((0.2, 0.1), (500.0, 700.0)), 2.0);
        assert!((metres_per_point(1_000.0) * 72.0 - 25.4).abs() < 1e-9);
    }

    #[test]
    fn words_break_at_spaces_only() {
        let lines = broken_lines("one two threefourfive", 10.0, 45.0, &estimated_width_pt);
        assert_eq!(lines, ["one two", "threefourfive"]);
        assert!(broken_lines("  ", 10.0, 45.0, &estimated_width_pt).is_empty());
    }

    #[test]
    fn a_text_hangs_at_its_hold() {
        let mut text = DrawnText {
            words: "abcd".into(),
            at: Spot::new(10.0, 5.0),
            size_pt: 10.0,
            hold: TextHold::End,
            halo: false,
        };
        let width = |words: &str, size_pt: f64| words.len() as f64 * size_pt;
        let ending = text_extent(&text, 0.1, &width);
        assert_eq!((ending.left_m, ending.right_m), (6.0, 10.0));
        text.hold = TextHold::Middle;
        let middling = text_extent(&text, 0.1, &width);
        assert_eq!((middling.left_m, middling.right_m), (8.0, 12.0));
    }
}
