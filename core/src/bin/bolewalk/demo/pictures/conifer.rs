//! A conifer with drooping whorls.

use super::bark::BarkKind;
use super::canvas::{Canvas, mix, times, tint};
use super::foliage;
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::{Dice, cloud};
use super::whole::{day, front_grass, open_ground};

/// A spruce or pine with drooping whorls.
pub fn conifer(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let (x, ground, tall) = (dice.between(570.0, 630.0), 800.0, 750.0);
    foliage::shadow(
        canvas,
        x - light.sun[0] * 120.0,
        ground + 12.0,
        [220.0, 40.0],
        0.6,
    );
    let mut skin = Skin::of(BarkKind::Plated, 80.0);
    skin.cast = [0.8, 0.76, 0.74];
    let at = |up: f32, radius: f32| Knot {
        x: x + 6.0 * (cloud(up / 900.0, 0.3) - 0.5),
        y: ground - up,
        radius,
    };
    let knots = [
        at(-3.0, 30.0),
        at(40.0, 21.0),
        at(300.0, 15.0),
        at(tall, 1.5),
    ];
    limb(canvas, &bent(&knots), &skin, &light);
    let mut sprays: Vec<[f32; 5]> = Vec::new();
    let whorls = 34;
    for whorl in 0..whorls {
        let part = (whorl as f32 + dice.part() * 0.7) / whorls as f32;
        let y = ground - tall * (0.12 + 0.87 * part);
        let reach = 215.0 * libm::powf(1.0 - part, 0.82) * dice.between(0.82, 1.1) + 8.0;
        for _ in 0..8 {
            let (sin, cos) = libm::sincosf(dice.between(0.0, std::f32::consts::TAU));
            let long = reach * dice.between(0.7, 1.05);
            sprays.push([y, cos * long, sin * long, long, part]);
        }
    }
    // From the far side to the near one, low before high.
    sprays.sort_by(|a, b| a[2].total_cmp(&b[2]).then(b[0].total_cmp(&a[0])));
    for spray in sprays {
        bough(canvas, x, spray, &light, dice);
    }
    front_grass(canvas, &light, dice);
}

fn bough(canvas: &mut Canvas, x: f32, spray: [f32; 5], light: &Light, dice: &mut Dice) {
    let [y, dx, dz, long, part] = spray;
    let steps = (long / 6.5).max(3.0) as usize;
    let side = dx / long;
    for step in 1..=steps {
        let t = step as f32 / steps as f32;
        let droop = long * (0.10 * t + 0.30 * t * t - 0.26 * t * t * t) * (1.25 - part);
        let (px, py) = (x + dx * t, y + droop - dz * 0.10 * t);
        let facing = 0.30 + 0.34 * side * light.sun[0] * 1.3 + 0.24 * dz / long + 0.30 * t;
        for _ in 0..3 {
            let part = (facing + dice.bell() * 0.16 - 0.08).clamp(0.0, 1.0);
            let green = mix(tint(18, 34, 26), tint(106, 126, 78), part * part);
            let strength = light.warm[1] * 0.62 + light.cool[1] * 0.6;
            let (ox, oy) = (dice.bell() * 6.0, dice.bell() * 3.5 + 4.0);
            let hang = dice.between(0.15, 0.9) * if side < 0.0 { -1.0 } else { 1.0 };
            let (sin, cos) = libm::sincosf(hang);
            canvas.spot(
                px + ox,
                py + oy,
                [dice.between(5.0, 11.0), dice.between(1.2, 2.4)],
                [cos, sin.abs()],
                times(green, strength),
                0.92,
            );
        }
    }
}
