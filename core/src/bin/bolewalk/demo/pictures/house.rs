//! A house beside the tree.

use super::canvas::{Canvas, Tint, mix, through, times, tint};
use super::limb::Light;
use super::noise::{cloud, ramp};

/// A house of boards under a shingle roof, its gable toward the camera; `left` and `ground` are
/// its lower left corner, `wide` its gable.
pub fn house(canvas: &mut Canvas, left: f32, ground: f32, wide: f32, light: &Light, wall: Tint) {
    let tall = wide * 0.62;
    let depth = wide * 0.9;
    let (eave, ridge) = (ground - tall, ground - tall - wide * 0.42);
    let side_light = light.on([0.85, -0.1, 0.3], left, eave);
    let front_light = light.on([-0.1, -0.05, 1.0], left, eave);
    let boards = |lit: Tint| {
        move |x: f32, y: f32| {
            let board = (y / (wide * 0.035)).fract();
            let line = 1.0 - 0.28 * ramp(0.85, 1.0, board) - 0.1 * board;
            let worn = 0.92 + 0.16 * cloud(x / 400.0, y / 60.0);
            times(through(wall, lit), line * worn)
        }
    };
    // The far eave stands a little higher: the camera is at eye level.
    let back = [left + wide + depth, ground - wide * 0.02];
    let back_eave = eave + wide * 0.05;
    canvas.polygon(
        &[
            [left + wide, ground],
            back,
            [back[0], back_eave],
            [left + wide, eave],
        ],
        boards(side_light),
    );
    let gable = [
        [left, ground],
        [left + wide, ground],
        [left + wide, eave],
        [left + wide * 0.5, ridge],
        [left, eave],
    ];
    canvas.polygon(&gable, boards(front_light));
    let over = wide * 0.05;
    let roof = [
        [left + wide * 0.5, ridge - over],
        [left + wide * 0.5 + depth, ridge + wide * 0.03],
        [back[0] + over, back_eave + over],
        [left + wide + over, eave + over],
    ];
    let roof_light = light.on([0.5, -0.8, 0.3], left, ridge);
    canvas.polygon(&roof, move |x, y| {
        let course = (y / (wide * 0.03)).floor();
        let shingle = cloud(x / 180.0 + course * 0.37, course * 0.21);
        let line = 1.0 - 0.3 * ramp(0.8, 1.0, (y / (wide * 0.03)).fract());
        let slate = mix(tint(84, 78, 76), tint(124, 112, 104), shingle);
        times(through(slate, roof_light), line)
    });
    let trim = times(through(tint(228, 226, 218), front_light), 0.9);
    let eaves = |canvas: &mut Canvas, from: [f32; 2], to: [f32; 2]| {
        canvas.stroke(from, to, [wide * 0.03; 2], trim, 1.0);
    };
    eaves(
        canvas,
        [left - over, eave + over],
        [left + wide * 0.5, ridge - over * 0.5],
    );
    eaves(
        canvas,
        [left + wide * 0.5, ridge - over * 0.5],
        [left + wide + over, eave + over],
    );
    for (column, row) in [(0.16, 0.28), (0.60, 0.28), (0.38, 0.84)] {
        window(
            canvas,
            left + wide * column,
            ground - tall * (row + 0.38),
            wide * 0.22,
            trim,
        );
    }
}

fn window(canvas: &mut Canvas, left: f32, top: f32, wide: f32, trim: Tint) {
    let tall = wide * 1.25;
    let pane = |l: f32, t: f32, r: f32, b: f32| [[l, t], [r, t], [r, b], [l, b]];
    let edge = wide * 0.09;
    canvas.polygon(&pane(left, top, left + wide, top + tall), |_, _| trim);
    canvas.polygon(
        &pane(
            left + edge,
            top + edge,
            left + wide - edge,
            top + tall - edge,
        ),
        |x, y| {
            let mirror = cloud(x / 500.0, y / 500.0);
            mix(
                tint(34, 42, 48),
                tint(132, 152, 168),
                ramp(0.4, 0.75, mirror),
            )
        },
    );
    canvas.stroke(
        [left + wide * 0.5, top],
        [left + wide * 0.5, top + tall],
        [edge * 0.7; 2],
        trim,
        1.0,
    );
    canvas.stroke(
        [left, top + tall * 0.5],
        [left + wide, top + tall * 0.5],
        [edge * 0.7; 2],
        trim,
        1.0,
    );
}
