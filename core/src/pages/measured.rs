//! Measures in words: the value with its standard error, and how it was taken.

use crate::record::{Girth, Height, Lean, Quantity};
use crate::words::{Said, Words};

/// A height: `19.0 m ± 0.5 m · two angles and a level distance`.
pub fn height_words(words: &Words, height: &Height) -> String {
    let value = words.measure_with_se(height.height_m, height.se_m, Quantity::LengthM);
    match height.method {
        Some(method) => format!("{value} · {}", words.word_of(&method)),
        None => value,
    }
}

/// A girth: `188 cm · tape around the stem`.
pub fn girth_words(words: &Words, girth: &Girth) -> String {
    let value = words.girth(girth.girth_cm);
    match girth.method {
        Some(method) => format!("{value} · {}", words.word_of(&method)),
        None => value,
    }
}

/// A lean: `4.5° toward the south`; upright where it is none.
pub fn lean_words(words: &Words, lean: &Lean) -> String {
    if lean.lean_deg == 0.0 {
        return words.say("summary.lean-upright", &[]);
    }
    let value = words.measure_with_se(lean.lean_deg, lean.se_deg, Quantity::AngleDeg);
    toward(words, value, lean.toward_deg)
}

/// A value with the side it points to.
pub(super) fn toward(words: &Words, value: String, bearing_deg: Option<f64>) -> String {
    match bearing_deg {
        Some(bearing) => words.say(
            "page.toward",
            &[
                ("value", Said::Text(&value)),
                ("side", Said::Text(&words.side(bearing))),
            ],
        ),
        None => value,
    }
}
