//! Defects of a fork.

use super::super::drawing::StyleRole;
use super::sketch::Sketch;
use super::{INK, by};

/// An old closed crack, an open one, a fork that opens.
pub fn crack(sketch: &mut Sketch, grade: u32) {
    match grade {
        1 => {
            sketch.line(INK, &[(0.0, 1.05), (0.03, 0.8), (-0.02, 0.55)]);
            for up in [0.62, 0.74, 0.86, 0.98] {
                sketch.line(INK, &[(-0.09, up), (0.09, up)]);
            }
        }
        2 => sketch.area(
            INK,
            &[(-0.09, 1.26), (0.09, 1.26), (0.06, 0.75), (0.0, 0.4)],
        ),
        _ => {
            // Two halves that come apart.
            for side in [-1.0, 1.0] {
                let half = [
                    (side * 0.36, -0.1),
                    (side * 0.5, 0.7),
                    (side * 1.05, 2.1),
                    (side * 0.6, 2.1),
                    (side * 0.14, 0.85),
                    (0.0, 0.2),
                    (0.0, -0.1),
                ];
                sketch.area(StyleRole::Stem, &half);
            }
            let gap = [
                (-0.28, 1.2),
                (-0.14, 0.85),
                (0.0, 0.1),
                (0.14, 0.85),
                (0.28, 1.2),
                (0.0, 0.9),
            ];
            sketch.area(INK, &gap);
        }
    }
}

/// A ridge of bark that stands up in the fork and runs down both its sides.
pub fn bark_ridge(sketch: &mut Sketch) {
    let crest = [(-0.16, 1.12), (0.0, 1.34), (0.16, 1.12), (0.0, 1.02)];
    sketch.area(INK, &crest);
    for side in [-1.0, 1.0] {
        sketch.bough(INK, (0.0, 1.08), 0.09, (side * 0.3, 0.74), 0.04);
    }
}

/// Bark drawn in: a little, with swellings, deep with a ridge turned down and rot.
pub fn included_bark(sketch: &mut Sketch, grade: u32) {
    let down = by(grade, [0.85, 0.6, 0.25]);
    let half = by(grade, [0.02, 0.035, 0.05]);
    if grade >= 2 {
        for side in [-1.0, 1.0] {
            let swelling = [
                (side * 0.42, 1.0),
                (side * 0.62, 0.85),
                (side * 0.62, 0.6),
                (side * 0.4, 0.4),
            ];
            sketch.area(StyleRole::Stem, &swelling);
            sketch.line(INK, &swelling);
        }
    }
    sketch.area(
        INK,
        &[
            (-half * 2.0, 1.12),
            (half * 2.0, 1.12),
            (half, down),
            (-half, down),
        ],
    );
    if grade == 3 {
        sketch.line(INK, &[(-0.36, 0.5), (0.0, 1.0), (0.36, 0.5)]);
        sketch.area(
            INK,
            &[(-0.12, 0.45), (0.12, 0.45), (0.16, 0.2), (-0.16, 0.2)],
        );
    }
}
