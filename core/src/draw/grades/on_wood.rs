//! Defects on wood, whichever part it is.

use super::super::drawing::StyleRole;
use super::sketch::{Sketch, oval};
use super::wood::{GROUND, Wood};
use super::{INK, by};

/// A closed seam, an open crack, a crack right through.
pub fn crack(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    match grade {
        1 => {
            sketch.line(INK, &wood.ring(&[(0.3, 0.0), (0.5, 0.06), (0.72, -0.02)]));
            for along in [0.38, 0.5, 0.62] {
                sketch.line(INK, &wood.ring(&[(along, -0.14), (along, 0.16)]));
            }
        }
        2 => sketch.area(
            INK,
            &wood.ring(&[(0.12, 0.0), (0.5, 0.55), (0.9, 0.0), (0.5, -0.4)]),
        ),
        _ => sketch.area(
            INK,
            &wood.ring(&[
                (-0.05, -0.1),
                (0.2, 0.1),
                (0.35, -0.3),
                (0.6, -0.05),
                (0.75, -0.35),
                (1.05, -0.15),
                (1.05, 0.35),
                (0.75, 0.3),
                (0.6, 0.55),
                (0.35, 0.3),
                (0.2, 0.6),
                (-0.05, 0.4),
            ]),
        ),
    }
}

/// Soft wood, a cavity, an open hollow.
pub fn cavity(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let middle = (0.5, 0.0);
    match grade {
        1 => {
            sketch.edge(StyleRole::Outline, &wood.oval(middle, 0.11, 0.3));
            for (along, across) in [(0.45, -0.1), (0.52, 0.12), (0.55, -0.12), (0.47, 0.1)] {
                sketch.disc(INK, wood.at(along, across), 0.02);
            }
        }
        2 => {
            sketch.area(StyleRole::Paper, &wood.oval(middle, 0.26, 0.66));
            sketch.area(INK, &wood.oval(middle, 0.21, 0.52));
        }
        _ => sketch.area(INK, &wood.oval(middle, 0.42, 0.84)),
    }
}

/// A charred scar, a burnt pocket, a base burnt out to a shell.
pub fn burnt_base(sketch: &mut Sketch, grade: u32) {
    let (high, half) = by(grade, [(0.95, 0.1), (1.05, 0.26), (1.75, 0.4)]);
    if grade == 1 {
        let ring = [(-half, GROUND), (0.0, high), (half, GROUND)];
        sketch.area(StyleRole::Paper, &ring);
        for up in [0.6, 0.7, 0.8] {
            sketch.line(INK, &[(-half * 0.6, up), (half * 0.6, up - 0.08)]);
        }
    } else {
        let ring = [
            (-half, GROUND),
            (-half * 0.7, high - 0.25),
            (0.0, high),
            (half * 0.7, high - 0.25),
            (half, GROUND),
        ];
        sketch.area(INK, &ring);
    }
}

/// A strip of bark gone, with splinters, on several sides with wood blown out.
pub fn lightning(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let strip = |sketch: &mut Sketch, across: f64, half: f64| {
        let zigzag = [(1.05, 0.1), (0.7, -0.08), (0.4, 0.1), (-0.05, -0.05)];
        let left = zigzag
            .iter()
            .map(|(along, to)| (*along, across + to - half));
        let right = zigzag.iter().rev();
        let right = right.map(|(along, to)| (*along, across + to + half));
        let ring: Vec<(f64, f64)> = left.chain(right).collect();
        sketch.area(INK, &wood.ring(&ring));
    };
    match grade {
        1 => strip(sketch, 0.0, 0.05),
        2 => {
            strip(sketch, 0.0, 0.17);
            for (along, side) in [(0.25, 1.0), (0.45, -1.0), (0.6, 1.0), (0.75, -1.0)] {
                let splinter = [(along, side * 0.1), (along + 0.14, side * 0.5)];
                sketch.line(INK, &wood.ring(&splinter));
            }
        }
        _ => {
            strip(sketch, -0.5, 0.17);
            strip(sketch, 0.5, 0.17);
            sketch.area(INK, &wood.oval((0.45, 0.0), 0.2, 0.42));
        }
    }
}

/// A wound that closes, a wound on firm wood, a large one with soft wood beneath.
pub fn wound(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let (long, wide) = by(grade, [(0.1, 0.22), (0.26, 0.42), (0.42, 0.8)]);
    if grade == 1 {
        // A thick rim of wound wood.
        sketch.area(INK, &wood.oval((0.5, 0.0), long * 1.4, wide * 1.4));
    }
    sketch.area(StyleRole::Paper, &wood.oval((0.5, 0.0), long, wide));
    sketch.edge(StyleRole::Outline, &wood.oval((0.5, 0.0), long, wide));
    if grade >= 2 {
        for across in [-0.5, 0.0, 0.5] {
            let across = across * wide;
            sketch.line(
                StyleRole::Outline,
                &wood.ring(&[(0.5 - long * 0.7, across), (0.5 + long * 0.7, across)]),
            );
        }
    }
    if grade == 3 {
        sketch.area(INK, &wood.oval((0.4, -0.2), 0.12, 0.32));
        sketch.area(INK, &wood.oval((0.68, 0.25), 0.09, 0.26));
    }
}

/// A swelling that takes more and more of the girth; at last with a crack.
pub fn canker(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let (long, wide) = by(grade, [(0.12, 0.35), (0.24, 0.75), (0.38, 1.3)]);
    let middle = (0.5, by(grade, [0.95, 0.75, 0.35]));
    sketch.area(StyleRole::Stem, &wood.oval(middle, long, wide));
    for share in [1.0, 0.66, 0.33] {
        sketch.edge(INK, &wood.oval(middle, long * share, wide * share));
    }
    if grade == 3 {
        sketch.area(
            INK,
            &wood.ring(&[(0.18, 0.35), (0.5, 0.62), (0.82, 0.35), (0.5, 0.08)]),
        );
    }
}

/// Something without a picture of its own: where it is, and how much of the part it takes.
pub fn something(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let half = by(grade, [0.16, 0.36, 0.66]);
    sketch.disc(StyleRole::Paper, wood.at(0.5, 0.0), half);
    sketch.edge(StyleRole::Outline, &oval(wood.at(0.5, 0.0), half, half));
    sketch.disc(INK, wood.at(0.5, 0.0), half * 0.45);
}
