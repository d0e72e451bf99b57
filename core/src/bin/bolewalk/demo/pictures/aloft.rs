//! Unions up in the crown, and what is seen behind them.

use super::bark::BarkKind;
use super::canvas::{Canvas, HIGH, WIDE, mix, times, tint};
use super::foliage::{self, Clump, Crown, Leafage};
use super::limb::{Knot, Light, Skin, Surface, bent, limb, stem};
use super::noise::{Dice, cloud, fine, ramp};
use super::setting::Sky;

/// Leaves and sky out of focus behind a crown.
pub fn behind(canvas: &mut Canvas, light: &Light, open: f32, dice: &mut Dice) {
    canvas.backdrop(4, |small| far_crown(small, light, open, dice));
}

fn far_crown(canvas: &mut Canvas, light: &Light, open: f32, dice: &mut Dice) {
    let sky = Sky {
        cover: 0.35,
        shift: dice.part(),
    };
    canvas.rows(0.0, HIGH, |x, y| times(sky.at(x, y, 1000.0), 1.05));
    let crown = whole_picture();
    for (size, count, reach) in [(26.0, 34, 150.0), (13.0, 60, 110.0)] {
        let mut clumps: Vec<Clump> = (0..count)
            .map(|_| Clump {
                at: [dice.between(-40.0, 1240.0), dice.between(-30.0, 930.0), 0.0],
                reach: [
                    dice.between(0.6, 1.0) * reach,
                    dice.between(0.5, 0.8) * reach,
                ],
                leaves: (70.0 * (1.0 - open)) as u32,
            })
            .collect();
        let leafage = Leafage::broad(dice.part(), size);
        foliage::draw(canvas, &mut clumps, &crown, &leafage, light, dice);
    }
    for _ in 0..5 {
        let (x, y) = (dice.between(0.0, WIDE), dice.between(200.0, HIGH));
        let to = [x + dice.bell() * 260.0, y - dice.between(200.0, 500.0)];
        canvas.stroke(
            [x, y],
            to,
            [dice.between(10.0, 26.0), 4.0],
            tint(64, 58, 50),
            0.8,
        );
    }
    canvas.soften(6.0);
}

fn whole_picture() -> Crown {
    Crown {
        middle: [WIDE / 2.0, HIGH / 2.0],
        reach: [WIDE / 2.0, HIGH / 2.0],
    }
}

/// A few sharp leaves in front, at `places`.
pub fn near_leaves(canvas: &mut Canvas, places: &[[f32; 2]], light: &Light, dice: &mut Dice) {
    let mut clumps: Vec<Clump> = places
        .iter()
        .map(|&[x, y]| Clump {
            at: [x, y, dice.part()],
            reach: [dice.between(90.0, 150.0), dice.between(60.0, 110.0)],
            leaves: 110,
        })
        .collect();
    let leafage = Leafage::broad(dice.part(), 13.0);
    foliage::draw(canvas, &mut clumps, &whole_picture(), &leafage, light, dice);
}

/// Sun from either side.
pub fn light_of(dice: &mut Dice, dapple: f32) -> Light {
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    Light::over_shoulder(side, dapple, dice.part())
}

/// Two stems of a size pressed together, bark between them.
pub fn codominant(canvas: &mut Canvas, dice: &mut Dice) {
    let light = light_of(dice, 0.5);
    behind(canvas, &light, 0.2, dice);
    let bark = if dice.chance(0.6) {
        BarkKind::Furrowed
    } else {
        BarkKind::Smooth
    };
    let mut skin = Skin::of(bark, 300.0).varied(dice);
    skin.moss = 0.3;
    let crotch = dice.between(235.0, 275.0);
    let union = dice.between(600.0, 650.0);
    let shift = dice.part();
    let seam = move |y: f32| 600.0 + 30.0 * (cloud(shift, y / 1500.0) - 0.5);
    let half = 128.0;
    // Two stems all the way down; below the union their backs melt into one.
    for side in [1.0, -1.0] {
        let shape = |y: f32| {
            let apart = (crotch - y).max(0.0);
            let one = ramp(union - 60.0, union + 260.0, y);
            let wide = half - 14.0 * ramp(union, crotch, y) - apart * 0.05 - 24.0 * one;
            let middle = seam(y) + side * (wide * 0.985 + apart * 0.30 + apart * apart * 0.0004);
            [middle, wide]
        };
        stem(
            canvas,
            [-2.0, 902.0],
            &skin,
            &light,
            shape,
            |x, y, u, surface| {
                let one = ramp(union - 40.0, union + 170.0, y);
                let whole = (u + side) * 0.5;
                surface.n[0] += (whole - u) * one;
                surface.n[2] += ((1.0 - whole * whole).sqrt() - (1.0 - u * u).sqrt()) * one;
                // The inner edge is no edge where the two are one.
                if u * side < 0.0 {
                    surface.open /= 1.0 - 0.5 * u * u * u * u * one;
                }
                included(
                    x - seam(y),
                    y,
                    ramp(crotch - 60.0, crotch + 30.0, y) * (1.0 - one),
                    surface,
                );
            },
        );
    }
    near_leaves(canvas, &[[60.0, 120.0], [1150.0, 260.0]], &light, dice);
}

/// The inward fold of included bark, with its swollen ears on both sides.
fn included(off: f32, y: f32, depth: f32, surface: &mut Surface) {
    if depth <= 0.0 {
        return;
    }
    let away = off.abs() + 5.0 * (fine(0.3, y / 160.0) - 0.5);
    let half = 7.0 * depth + 1.0;
    if away < half {
        let dark = mix(tint(16, 12, 10), surface.colour, 0.12);
        surface.colour = mix(surface.colour, dark, depth);
        surface.open *= 1.0 - 0.7 * depth;
    } else if away < 62.0 {
        let t = (away - half) / (62.0 - half);
        // The bark rolls into the fold, then stands up as an ear.
        surface.n[0] += off.signum() * depth * (ramp(0.25, 0.85, t) * 1.3 - 0.9) * (1.0 - t * 0.4);
        surface.open *= 1.0 - 0.65 * depth * ramp(0.32, 0.0, t);
        let wrinkle = fine(away / 260.0, (y + away * 0.8) / 110.0);
        surface.open *= 1.0 - 0.35 * depth * ramp(0.55, 0.75, wrinkle) * (1.0 - t);
    }
}

/// A sound union wide enough to tie in over, a throw line across it.
pub fn anchor(canvas: &mut Canvas, dice: &mut Dice) {
    let light = light_of(dice, 0.45);
    behind(canvas, &light, 0.35, dice);
    let bark = if dice.chance(0.5) {
        BarkKind::Furrowed
    } else {
        BarkKind::Smooth
    };
    let skin = Skin::of(bark, 240.0).varied(dice);
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    let at = |x: f32, y: f32, radius: f32| Knot {
        x: 600.0 + side * x,
        y,
        radius,
    };
    let main = [
        at(-150.0, 940.0, 138.0),
        at(-130.0, 560.0, 122.0),
        at(-150.0, 260.0, 98.0),
        at(-190.0, -60.0, 84.0),
    ];
    let bough = [
        at(-95.0, 590.0, 96.0),
        at(-20.0, 480.0, 88.0),
        at(150.0, 330.0, 74.0),
        at(400.0, 130.0, 62.0),
        at(640.0, -30.0, 54.0),
    ];
    limb(canvas, &bent(&bough), &skin, &light);
    limb(canvas, &bent(&main), &skin, &light);
    // The line lies in the crotch: one leg in front of the limb, one behind it.
    let cord = times(tint(226, 128, 52), light.warm[1] * 0.55 + 0.25);
    let over = [600.0 + side * 2.0, 402.0];
    let front = [600.0 + side * 52.0, 620.0];
    canvas.stroke(
        [over[0] + 3.0, over[1] + 4.0],
        [front[0] + 5.0, front[1]],
        [7.0; 2],
        tint(30, 24, 20),
        0.5,
    );
    canvas.stroke(over, front, [5.0; 2], cord, 1.0);
    canvas.stroke(front, [front[0] + side * 6.0, 910.0], [5.0; 2], cord, 1.0);
    let back = [600.0 + side * 84.0, 498.0];
    canvas.stroke(
        back,
        [back[0] + side * 4.0, 910.0],
        [4.6; 2],
        times(cord, 0.6),
        1.0,
    );
    near_leaves(canvas, &[[1120.0, 520.0], [70.0, 90.0]], &light, dice);
}
