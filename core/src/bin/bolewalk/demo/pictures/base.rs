//! The foot of the tree: root flare and bracket.

use super::canvas::{Canvas, Tint, mix, through, times, tint};
use super::foot::Foot;
use super::limb::Light;
use super::noise::{Dice, cloud, fine, ramp};

/// A sound foot with its flare.
pub fn flare(canvas: &mut Canvas, dice: &mut Dice) {
    let foot = Foot::new(dice);
    foot.place(canvas, 0.15, dice);
    foot.roots(canvas, 5, dice);
    foot.stem(canvas, |_, _, _, _| {});
    foot.front(canvas, 900, 170, dice);
}

/// Shelves of a bracket fungus low on the stem.
pub fn bracket(canvas: &mut Canvas, dice: &mut Dice) {
    let foot = Foot::new(dice);
    foot.place(canvas, 0.2, dice);
    foot.roots(canvas, 4, dice);
    foot.stem(canvas, |_, _, _, _| {});
    let x = dice.between(-60.0, 20.0);
    let shelves = [
        [x + dice.between(20.0, 60.0), -206.0, 62.0],
        [x - dice.between(60.0, 90.0), -148.0, 82.0],
        [x + dice.between(80.0, 110.0), -112.0, 100.0],
        [x, -40.0, 150.0],
    ];
    for [x, up, wide] in shelves {
        let wide = wide * dice.between(0.85, 1.1);
        shelf(
            canvas,
            foot.x + x,
            foot.ground + up,
            wide,
            &foot.light,
            dice,
        );
    }
    foot.front(canvas, 700, 150, dice);
}

/// One shelf: zoned and dusty above, a pale growing margin, pores below.
fn shelf(canvas: &mut Canvas, x: f32, y: f32, wide: f32, light: &Light, dice: &mut Dice) {
    let shift = dice.part();
    let high = wide * 0.40;
    let slant = dice.between(-0.10, 0.10);
    let lit = light.on([light.sun[0] * 0.35, -0.62, 0.62], x, y);
    let below = times(light.cool, 0.85);
    let shade_x = x - light.sun[0].signum() * wide * 0.16;
    canvas.within(
        [x - wide * 1.4, y - high, x + wide * 1.4, y + wide],
        |px, py| {
            let (u, v) = (
                (px - shade_x) / (wide * 1.15),
                (py - y - high * 0.95) / (high * 1.25),
            );
            let cover = 0.8 * ramp(1.0, 0.25, u * u + v * v);
            (cover > 0.0).then_some((tint(20, 17, 14), cover))
        },
    );
    let scale = canvas.scale;
    canvas.within(
        [
            x - wide * 1.2,
            y - high * 1.2,
            x + wide * 1.2,
            y + high * 1.6,
        ],
        |px, py| {
            let ragged = 0.30 * (cloud(px / 620.0 + shift, 0.3 + shift) - 0.5)
                + 0.05 * (fine(px / 420.0 + shift, 0.2) - 0.5);
            let u = (px - x) / wide;
            if u * u >= 1.0 {
                return None;
            }
            let arc = (1.0 - u * u).sqrt();
            let tilt = slant * (px - x);
            let back = y + tilt - high * 0.30 * arc;
            let lip = y + tilt + high * (0.62 + ragged) * arc;
            let low = lip + high * (0.40 + ragged * 0.5) * arc.min(0.8);
            if py < back || py > low {
                return None;
            }
            let cover = ((py - back).min(low - py) * scale + 0.3).clamp(0.0, 1.0);
            // The margin is thick and rounds over from top to pores.
            let round = ramp(lip - high * 0.16, low, py);
            let t = ((py - back) / (lip - back)).clamp(0.0, 1.0);
            let out = (u * u + t * t * 0.96).sqrt().min(1.0);
            let top = through(cap(px, py, out, shift), lit);
            let pores = mix(
                tint(202, 184, 152),
                tint(150, 128, 98),
                fine(px / 60.0, py / 60.0),
            );
            let under = through(pores, mix(lit, below, ramp(0.3, 0.95, round)));
            Some((mix(top, under, ramp(0.25, 0.6, round)), cover))
        },
    );
}

/// Upper side of a shelf, `out` 0 at the bark and 1 at the margin.
fn cap(x: f32, y: f32, out: f32, shift: f32) -> Tint {
    let warped = out + 0.09 * (cloud(x / 400.0, y / 400.0) - 0.5);
    let rings = 0.5 + 0.5 * libm::sinf(warped * (24.0 + 9.0 * shift));
    let zone = 0.55 * cloud(warped * 0.8 + shift, shift) + 0.35 * rings;
    let brown = mix(tint(58, 42, 32), tint(138, 106, 78), zone);
    let dusty = mix(brown, tint(126, 108, 88), 0.55 * fine(x / 170.0, y / 110.0));
    let margin = ramp(0.80, 0.97, warped);
    let grown = mix(dusty, tint(196, 168, 124), margin * 0.85);
    times(grown, 0.74 + 0.5 * cloud(x / 260.0, y / 160.0))
}
