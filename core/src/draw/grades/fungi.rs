//! Fruiting bodies: how many, on how many sides.

use super::super::drawing::StyleRole;
use super::sketch::{At, Sketch, oval};
use super::wood::{GROUND, Wood};
use super::{INK, by};

/// Brackets: one, several on one side, all around and at several heights.
pub fn brackets(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let places: &[(f64, f64)] = by(
        grade,
        [
            &[(0.5, 1.0)][..],
            &[(0.25, 1.0), (0.5, 1.0), (0.75, 1.0)],
            &[
                (0.2, 1.0),
                (0.5, 1.0),
                (0.8, 1.0),
                (0.3, -1.0),
                (0.6, -1.0),
                (0.9, -1.0),
                (0.4, 0.0),
                (0.7, 0.1),
            ],
        ],
    );
    for (along, across) in places {
        // On an edge it stands out; on the face it is seen from the front.
        let side = if *across < 0.0 { -1.0 } else { 1.0 };
        let half: Vec<(f64, f64)> = (0..=10)
            .map(|step| {
                let turn = std::f64::consts::PI * (f64::from(step) / 10.0 - 0.5);
                let out = side * 0.75 * libm::cos(turn);
                (along + 0.1 * libm::sin(turn), across + out)
            })
            .collect();
        sketch.area(INK, &wood.ring(&half));
    }
}

/// A crust: one spot, between two flares, around most of it.
pub fn crust(sketch: &mut Sketch, wood: &Wood, grade: u32) {
    let patches: &[(f64, f64, f64)] = by(
        grade,
        [
            &[(0.14, 0.35, 0.28)][..],
            &[(0.12, -0.55, 0.4), (0.16, 0.45, 0.45)],
            &[(0.14, -0.8, 0.5), (0.2, 0.0, 0.62), (0.14, 0.8, 0.5)],
        ],
    );
    for (along, across, half) in patches {
        let (s, t) = (*along, *across);
        let lobes = [
            (s - 0.1, t - half),
            (s + 0.02, t - half * 0.8),
            (s + 0.1, t - half * 0.3),
            (s + 0.05, t),
            (s + 0.13, t + half * 0.4),
            (s + 0.02, t + half * 0.9),
            (s - 0.1, t + half),
        ];
        sketch.area(INK, &wood.ring(&lobes));
    }
}

/// Rosettes on the ground: one, on one side, on several sides.
pub fn rosettes(sketch: &mut Sketch, grade: u32) {
    let places: &[f64] = by(
        grade,
        [
            &[0.78][..],
            &[0.5, 0.85, 0.15],
            &[0.5, 0.85, 0.15, -0.25, -0.55, -0.88],
        ],
    );
    for x in places {
        for (up, half) in [(0.0, 0.2), (0.1, 0.14), (0.19, 0.08)] {
            let fan = |grow: f64| -> Vec<At> {
                let above = |(_, y): &At| *y >= GROUND + up - 1e-9;
                let whole = oval((*x, GROUND + up), half + grow, (half + grow) * 0.7);
                whole.into_iter().filter(above).collect()
            };
            sketch.area(StyleRole::Paper, &fan(0.03));
            sketch.area(INK, &fan(0.0));
        }
    }
}

/// Clusters of stalks with caps; then white sheets under loose bark, on one side, on several.
pub fn clusters(sketch: &mut Sketch, grade: u32) {
    let sheets: &[f64] = by(grade, [&[][..], &[0.2], &[-0.27, 0.0, 0.27]]);
    for x in sheets {
        let high = if grade == 3 { 1.7 } else { 1.25 };
        let sheet = [
            (x - 0.1, 0.56),
            (x - 0.09, high - 0.15),
            (*x, high),
            (x + 0.09, high - 0.15),
            (x + 0.1, 0.56),
        ];
        sketch.area(StyleRole::Paper, &sheet);
        sketch.edge(INK, &sheet);
    }
    let middles: &[f64] = by(grade, [&[0.78][..], &[0.78], &[0.78, -0.78]]);
    for x in middles {
        for (to, up) in [(-0.14, 0.22), (0.02, 0.34), (0.16, 0.2)] {
            let top = (x + to, GROUND + up);
            sketch.line(INK, &[(*x, GROUND), top]);
            sketch.area(
                INK,
                &[
                    (top.0 - 0.1, top.1),
                    (top.0, top.1 + 0.1),
                    (top.0 + 0.1, top.1),
                ],
            );
        }
    }
}
