//! What hangs, grows or lives on a tree.

use super::super::drawing::StyleRole;
use super::sketch::{At, Sketch, oval};
use super::wood::Wood;
use super::{INK, by};

/// A broken limb over another: thin, thick, heavy and half torn off.
pub fn hanger(sketch: &mut Sketch, grade: u32) {
    let thick = by(grade, [0.07, 0.2, 0.4]);
    let (from, to) = by(
        grade,
        [
            ((0.05, 1.75), (0.45, 0.6)),
            ((-0.1, 1.9), (0.5, 0.35)),
            ((-0.5, 1.6), (0.75, 0.15)),
        ],
    );
    sketch.bough(INK, from, thick, to, thick * 0.7);
    // Twigs at the lower end, splinters at the upper.
    for (dx, dy) in [(0.16, -0.12), (-0.1, -0.2), (0.26, 0.08)] {
        sketch.line(INK, &[to, (to.0 + dx, to.1 + dy)]);
    }
    if grade == 3 {
        for (dx, dy) in [(-0.2, 0.1), (-0.08, 0.24), (0.12, 0.26)] {
            sketch.bough(INK, from, 0.12, (from.0 + dx, from.1 + dy), 0.01);
        }
    }
}

/// Dead twigs, a dead limb as thick as a wrist, a thick one.
pub fn dead_limb(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let thick = by(grade, [0.03, 0.17, 0.36]);
    let foot = wood.at(0.5, -0.9);
    // From a stem it stands out to the left, from a limb upward.
    let tip = if wood.at(1.0, 0.0).1 > 1.4 {
        (foot.0 - 0.5, foot.1 + 0.6)
    } else {
        (foot.0 + 0.25, 1.9)
    };
    sketch.bough(INK, foot, thick, tip, thick * 0.5);
    for (share, dx, dy) in [(0.55, 0.26, 0.16), (0.75, -0.24, 0.1), (1.0, 0.12, 0.12)] {
        let from = (
            foot.0 + (tip.0 - foot.0) * share,
            foot.1 + (tip.1 - foot.1) * share,
        );
        sketch.bough(
            INK,
            from,
            thick * 0.5,
            (from.0 + dx, from.1 + dy),
            thick * 0.2,
        );
    }
}

/// Shoots from an old cut: young ones over a closed cut, heavy ones, heavy ones on a rotten head.
pub fn regrowth(sketch: &mut Sketch, on_stem: bool, wood: &Wood, grade: u32) {
    let (foot, half): (At, f64) = if on_stem {
        ((0.0, 0.8), 0.42)
    } else {
        (wood.at(0.6, -0.9), 0.3)
    };
    let thick = by(grade, [0.05, 0.18, 0.24]);
    for (step, lean) in [(-0.8, -0.4), (-0.28, -0.12), (0.28, 0.12), (0.8, 0.4)] {
        let x = foot.0 + step * half;
        let top = if grade == 1 { 1.5 } else { 2.1 };
        sketch.bough(INK, (x, foot.1), thick, (x + lean, top), thick * 0.6);
    }
    if on_stem {
        let head = [
            (-half, -0.1),
            (-half * 1.15, 0.75),
            (-half, foot.1 + 0.08),
            (half, foot.1 + 0.08),
            (half * 1.15, 0.75),
            (half, -0.1),
        ];
        sketch.area(StyleRole::Paper, &head);
        sketch.area(StyleRole::Stem, &head);
    }
    let face = oval((foot.0, foot.1 - 0.04), half * 0.7, half * 0.28);
    match grade {
        1 => (),
        2 => {
            sketch.area(StyleRole::Paper, &face);
            sketch.edge(StyleRole::Outline, &face);
        }
        _ => {
            let rotten = oval((foot.0, foot.1 - 0.16), half * 0.75, half * 0.8);
            sketch.area(StyleRole::Paper, &rotten);
            sketch.area(INK, &rotten);
        }
    }
}

/// A few strands, one side hidden, hidden all around.
pub fn climbers(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let strands: &[f64] = by(
        grade,
        [
            &[0.4][..],
            &[0.2, 0.55, 0.9],
            &[-0.95, -0.6, -0.25, 0.1, 0.45, 0.8, 1.05],
        ],
    );
    for (number, across) in strands.iter().enumerate() {
        let wave = |step: u32| across + if step.is_multiple_of(2) { 0.08 } else { -0.08 };
        let strand: Vec<(f64, f64)> = (0..=8)
            .map(|step| (f64::from(step) / 8.0, wave(step)))
            .collect();
        sketch.line(INK, &wood.ring(&strand));
        let leaves = if grade == 1 { 4 } else { 8 };
        for leaf in 0..leaves {
            let shift = if number % 2 == 0 { 0.0 } else { 0.5 };
            let (x, y) = wood.at((f64::from(leaf) + 0.3 + shift) / f64::from(leaves), *across);
            let half = if grade == 1 { 0.08 } else { 0.1 };
            sketch.area(
                INK,
                &[(x, y + half), (x + half, y), (x, y - half), (x - half, y)],
            );
        }
    }
}

/// A rope that stands for the climber's way.
fn route(sketch: &mut Sketch, wood: &Wood) {
    let x = wood.at(0.5, 0.0).0 - 0.2;
    sketch.line(StyleRole::TieIn, &[(x, 2.0), (x, 0.0)]);
}

fn flying(sketch: &mut Sketch, (x, y): At, many: u32) {
    for step in 0..many {
        let turn = 2.4 * f64::from(step);
        let away = 0.24 + 0.05 * f64::from(step);
        sketch.disc(
            INK,
            (x + away * libm::cos(turn), y + away * libm::sin(turn)),
            0.035,
        );
    }
}

/// In and out at one place, a nest away from the rope, a nest at it.
pub fn insects(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    match grade {
        1 => {
            sketch.disc(INK, wood.at(0.55, 0.3), 0.07);
            flying(sketch, wood.at(0.55, 0.9), 4);
        }
        _ => {
            route(sketch, wood);
            let on_route = wood.at(0.5, 0.0).0 - 0.2;
            let (middle, half) = by(
                grade,
                [
                    ((0.7, 1.5), 0.18),
                    ((0.7, 1.5), 0.18),
                    ((on_route, 1.0), 0.34),
                ],
            );
            sketch.area(INK, &oval(middle, half, half * 1.25));
            for up in [-0.5, 0.0, 0.5] {
                let y = middle.1 + up * half;
                let x = half * 0.7;
                sketch.line(StyleRole::Paper, &[(middle.0 - x, y), (middle.0 + x, y)]);
            }
            flying(sketch, middle, by(grade, [0, 3, 9]));
        }
    }
}

/// Signs, a nest away from the rope, a nest at it.
pub fn nest(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    if grade == 1 {
        let (x, y) = wood.at(0.55, 0.2);
        sketch.disc(INK, (x, y), 0.07);
        for (dx, dy) in [(-0.05, -0.2), (0.04, -0.32), (-0.02, -0.45)] {
            sketch.line(INK, &[(x + dx, y + dy), (x + dx, y + dy - 0.07)]);
        }
        return;
    }
    route(sketch, wood);
    let rope = wood.at(0.5, 0.0).0 - 0.2;
    let ((x, y), half) = if grade == 2 {
        ((0.72, 1.55), 0.26)
    } else {
        ((rope, 1.05), 0.42)
    };
    let bowl = [
        (x - half, y),
        (x - half * 0.7, y - half * 0.6),
        (x + half * 0.7, y - half * 0.6),
        (x + half, y),
    ];
    sketch.area(INK, &bowl);
    for egg in [-0.5, 0.0, 0.5] {
        sketch.area(
            INK,
            &oval((x + egg * half, y + half * 0.1), half * 0.2, half * 0.3),
        );
    }
}
