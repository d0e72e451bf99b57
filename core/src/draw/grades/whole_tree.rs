//! What is seen on a whole tree.

use super::super::drawing::StyleRole;
use super::sketch::{At, Sketch, oval};
use super::{INK, by};
use crate::record::TreePart;

const GROUND: f64 = 0.18;

fn ground(sketch: &mut Sketch) {
    sketch.line(StyleRole::Ground, &[(-1.0, GROUND), (1.0, GROUND)]);
}

/// Stem and crown of a tree whose foot is at `x`.
fn tree(sketch: &mut Sketch, x: f64, share: f64) {
    let up = |y: f64| GROUND + y * share;
    sketch.bough(
        StyleRole::Stem,
        (x, up(0.0)),
        0.16 * share,
        (x, up(1.2)),
        0.1 * share,
    );
    sketch.area(
        StyleRole::Crown,
        &oval((x, up(1.22)), 0.55 * share, 0.58 * share),
    );
}

/// A tree that stands with its foot at one place and leans to another, with its crown.
fn leaning(sketch: &mut Sketch, foot: At, top: At, crown: f64) {
    sketch.bough(INK, foot, 0.16, top, 0.08);
    sketch.area(StyleRole::Crown, &oval(top, crown, crown));
}

/// The part in solid ink.
pub fn part(sketch: &mut Sketch, part: TreePart) {
    let crown = if part == TreePart::Crown {
        INK
    } else {
        StyleRole::Crown
    };
    sketch.area(crown, &oval((0.0, 1.36), 0.72, 0.58));
    let role = |own: TreePart| if part == own { INK } else { StyleRole::Stem };
    for side in [-1.0, 1.0] {
        sketch.bough(
            role(TreePart::Roots),
            (side * 0.08, GROUND),
            0.16,
            (side * 0.6, 0.04),
            0.06,
        );
    }
    sketch.bough(role(TreePart::Stem), (0.0, 0.42), 0.2, (0.0, 0.98), 0.18);
    sketch.bough(
        role(TreePart::Limb),
        (-0.02, 1.05),
        0.16,
        (-0.46, 1.55),
        0.07,
    );
    let other = if part == TreePart::Limb {
        INK
    } else {
        StyleRole::Stem
    };
    sketch.bough(other, (0.02, 1.05), 0.16, (0.4, 1.62), 0.07);
    if part != TreePart::Crown {
        sketch.disc(role(TreePart::Union), (0.0, 1.03), 0.15);
    }
    sketch.area(
        role(TreePart::Base),
        &[(-0.1, 0.44), (-0.24, GROUND), (0.24, GROUND), (0.1, 0.44)],
    );
    ground(sketch);
    if part == TreePart::Around {
        sketch.line(INK, &[(-1.0, 1.72), (1.0, 1.9)]);
        for (x, y) in [(0.72, 0.7), (0.84, 0.84), (0.9, 0.62), (0.66, 0.5)] {
            sketch.disc(INK, (x, y), 0.045);
        }
    }
}

/// A bent tree held by another, one lodged in it, one uprooted.
pub fn under_tension(sketch: &mut Sketch, grade: u32) {
    ground(sketch);
    match grade {
        1 => {
            tree(sketch, 0.55, 0.95);
            let bow = [
                (-0.6, GROUND),
                (-0.62, 0.7),
                (-0.45, 1.2),
                (-0.1, 1.5),
                (0.35, 1.55),
            ];
            for pair in bow.windows(2) {
                if let [from, to] = pair {
                    sketch.bough(INK, *from, 0.08, *to, 0.07);
                }
            }
        }
        2 => {
            tree(sketch, 0.55, 0.95);
            leaning(sketch, (-0.85, GROUND), (0.25, 1.5), 0.2);
        }
        _ => {
            leaning(sketch, (-0.55, 0.5), (0.65, 0.72), 0.3);
            // The root plate on edge, and the hole it left.
            sketch.bough(INK, (-0.72, 0.2), 0.2, (-0.6, 0.95), 0.14);
            sketch.area(
                INK,
                &[(-1.0, GROUND), (-0.7, GROUND), (-0.75, 0.05), (-0.95, 0.05)],
            );
            for up in [0.35, 0.6, 0.85] {
                sketch.line(INK, &[(-0.66, up), (-0.9, up + 0.06)]);
            }
        }
    }
}

/// Bare twigs without leaves.
fn bare(sketch: &mut Sketch, foot: At, tip: At, thick: f64) {
    sketch.bough(INK, foot, thick, tip, thick * 0.4);
    for (share, side) in [(0.45, 1.0), (0.6, -1.0), (0.8, 1.0)] {
        let from = (
            foot.0 + (tip.0 - foot.0) * share,
            foot.1 + (tip.1 - foot.1) * share,
        );
        let (dx, dy) = (tip.0 - foot.0, tip.1 - foot.1);
        let to = (
            from.0 + 0.3 * (dx * 0.7 + side * dy * 0.7),
            from.1 + 0.3 * (dy * 0.7 - side * dx * 0.7),
        );
        sketch.bough(INK, from, thick * 0.5, to, thick * 0.3);
    }
}

/// Dead twigs, dead limbs, a dead top.
pub fn dead_limbs(sketch: &mut Sketch, grade: u32) {
    ground(sketch);
    tree(sketch, 0.0, 0.95);
    match grade {
        1 => {
            for (foot, tip) in [((0.3, 1.2), (0.7, 1.4)), ((-0.3, 1.5), (-0.6, 1.8))] {
                bare(sketch, foot, tip, 0.03);
            }
        }
        2 => {
            bare(sketch, (0.05, 0.9), (0.85, 1.35), 0.09);
            bare(sketch, (-0.05, 1.1), (-0.8, 1.7), 0.09);
        }
        _ => {
            bare(sketch, (0.0, 0.9), (0.0, 1.98), 0.2);
            bare(sketch, (0.05, 0.8), (0.9, 1.3), 0.16);
        }
    }
}

/// Bare tips in a fifth, in half, in more than half of the crown.
pub fn dieback(sketch: &mut Sketch, grade: u32) {
    ground(sketch);
    sketch.bough(StyleRole::Stem, (0.0, GROUND), 0.16, (0.0, 1.2), 0.1);
    let top = by(grade, [1.66, 1.32, 0.9]);
    let living: Vec<At> = oval((0.0, 1.28), 0.62, 0.62)
        .into_iter()
        .map(|(x, y)| (x, y.min(top)))
        .collect();
    sketch.area(StyleRole::Crown, &living);
    let tips: &[(f64, f64)] = by(
        grade,
        [
            &[(-0.18, 1.88), (0.12, 1.92)][..],
            &[(-0.5, 1.65), (-0.18, 1.88), (0.12, 1.92), (0.5, 1.66)],
            &[
                (-0.62, 1.25),
                (-0.5, 1.65),
                (-0.18, 1.88),
                (0.12, 1.92),
                (0.5, 1.66),
                (0.62, 1.2),
            ],
        ],
    );
    for (x, y) in tips {
        let foot = (x * 0.3, top.min(y - 0.3));
        bare(sketch, foot, (*x, *y), 0.05);
    }
}

/// Twigs touch a wire, limbs lie on it, the tree leans on it with burn marks.
pub fn touching_wire(sketch: &mut Sketch, grade: u32) {
    ground(sketch);
    sketch.bough(StyleRole::Stem, (0.78, GROUND), 0.07, (0.78, 1.75), 0.06);
    sketch.line(StyleRole::Stem, &[(0.58, 1.66), (0.98, 1.66)]);
    let wire = [(-1.0, 1.5), (-0.1, 1.5), (0.78, 1.66)];
    match grade {
        1 => {
            tree(sketch, -0.35, 0.72);
            for x in [-0.5, -0.36, -0.22] {
                sketch.line(INK, &[(x * 0.8 - 0.08, 1.3), (x, 1.53)]);
            }
        }
        2 => {
            tree(sketch, -0.35, 0.72);
            sketch.bough(INK, (-0.35, 0.95), 0.16, (0.3, 1.68), 0.08);
            sketch.bough(INK, (-0.4, 0.95), 0.16, (-0.75, 1.64), 0.08);
        }
        _ => {
            leaning(sketch, (-0.9, GROUND), (0.1, 1.66), 0.26);
            let burn: Vec<At> = (0..16)
                .map(|step| {
                    let far = if step % 2 == 0 { 0.3 } else { 0.12 };
                    let turn = std::f64::consts::TAU * f64::from(step) / 16.0;
                    (far * libm::cos(turn), 1.54 + far * libm::sin(turn))
                })
                .collect();
            sketch.area(INK, &burn);
        }
    }
    sketch.line(StyleRole::OverheadLine, &wire);
}
