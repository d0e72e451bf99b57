//! Defects of the ground and the roots.

use super::super::drawing::StyleRole;
use super::sketch::{At, Sketch};
use super::wood::GROUND;
use super::{INK, by};

/// A hairline crack, soil lifted by a hand's width, the root plate lifting.
pub fn soil(sketch: &mut Sketch, grade: u32) {
    // The tree turns about the foot of its flare on the right.
    let turn = by(grade, [0.0_f64, 3.0, 16.0]).to_radians();
    let turned = |(x, y): At| -> At {
        let (dx, dy) = (x - 0.5, y - GROUND);
        (
            0.5 + dx * libm::cos(turn) + dy * libm::sin(turn),
            GROUND - dx * libm::sin(turn) + dy * libm::cos(turn),
        )
    };
    let stem = [
        (-0.36, 2.4),
        (-0.4, 1.0),
        (-0.5, 0.68),
        (-0.7, GROUND),
        (0.5, GROUND),
        (0.45, 0.68),
        (0.4, 1.0),
        (0.36, 2.4),
    ];
    if grade == 3 {
        let plate = [(-0.95, GROUND), (-0.8, 0.25), (0.3, 0.2), (0.5, GROUND)].map(turned);
        sketch.area(StyleRole::Stem, &plate);
    }
    match grade {
        1 => {
            let ground = [(-1.0, GROUND), (0.5, GROUND)];
            sketch.line(StyleRole::Ground, &ground);
            let crack = [(-0.82, GROUND), (-0.74, 0.36), (-0.84, 0.22), (-0.76, 0.06)];
            sketch.line(INK, &crack);
        }
        2 => {
            let lifted = [(-0.72, 0.72), (-0.5, 0.7), (0.5, GROUND)];
            sketch.line(StyleRole::Ground, &lifted);
            sketch.line(StyleRole::Ground, &[(-1.0, GROUND), (-0.94, GROUND)]);
            let crack = [(-0.96, GROUND), (-0.72, 0.72), (-0.66, 0.4), (-0.8, 0.04)];
            sketch.area(INK, &crack);
        }
        _ => {
            sketch.line(StyleRole::Ground, &[(-1.0, GROUND), (-0.96, GROUND)]);
            // The gap between the plate and the ground that it left.
            let gap = [
                (-0.98, GROUND),
                turned((-0.92, GROUND - 0.06)),
                turned((-0.8, 0.25)),
                turned((0.3, 0.2)),
                (0.2, 0.14),
                (-0.6, 0.1),
                (-0.95, 0.3),
            ];
            sketch.area(INK, &gap);
        }
    }
    sketch.area(StyleRole::Stem, &stem.map(turned));
    sketch.line(StyleRole::Ground, &[(0.5, GROUND), (1.0, GROUND)]);
}

/// Small roots cut, thick ones on one side, main roots or a trench on more than one.
pub fn cut_roots(sketch: &mut Sketch, grade: u32) {
    match grade {
        1 => {
            for (from, to) in [(0.55, (0.75, 0.2)), (0.62, (0.92, 0.22))] {
                sketch.line(INK, &[(from, 0.42), to]);
                let end: At = to;
                sketch.line(
                    INK,
                    &[(end.0 - 0.06, end.1 - 0.04), (end.0 + 0.06, end.1 + 0.04)],
                );
            }
        }
        2 => {
            let spade = [(0.62, GROUND), (0.66, 0.05), (0.86, 0.05), (0.9, GROUND)];
            sketch.area(INK, &spade);
        }
        _ => {
            for side in [-1.0, 1.0] {
                let trench = [
                    (side * 0.56, GROUND),
                    (side * 0.62, 0.08),
                    (side * 0.92, 0.08),
                    (side * 0.98, GROUND),
                ];
                sketch.area(INK, &trench);
            }
        }
    }
}

/// A root that lies across a fifth, two fifths, most of the base.
pub fn girdling_roots(sketch: &mut Sketch, grade: u32) {
    let left = by(grade, [0.26, -0.08, -0.62]);
    let thick = by(grade, [0.08, 0.16, 0.2]);
    let over = [
        (1.0, GROUND - 0.05),
        (0.7, GROUND + 0.12),
        (left, 0.78),
        (left - 0.06, 0.78 + thick),
        (0.72, GROUND + 0.14 + thick),
        (1.0, GROUND + thick),
    ];
    sketch.area(StyleRole::Paper, &over);
    sketch.area(INK, &over);
    if grade == 3 {
        let other = [
            (-1.0, GROUND),
            (-0.6, 0.68),
            (0.3, 0.62),
            (0.3, 0.7),
            (-0.6, 0.86),
            (-1.0, 0.64),
        ];
        sketch.area(INK, &other);
    }
}
