//! The soil beside a stem: heaved, cracked, dug open.

use super::bark::BarkKind;
use super::canvas::{Canvas, HIGH, Tint, WIDE, mix, through, times, tint};
use super::foliage;
use super::foot::Foot;
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::{Dice, cloud, fine, ramp};
use super::setting::soil_at;

/// Soil lifted on one side of a leaning stem, cracks around it.
pub fn heave(canvas: &mut Canvas, dice: &mut Dice) {
    let mut foot = Foot::new(dice);
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    foot.lean = -side * dice.between(0.26, 0.34);
    foot.radius = 118.0;
    foot.x = 600.0 - side * 40.0;
    foot.ground = 700.0;
    foot.place(canvas, 0.25, dice);
    mound(canvas, &foot, side);
    foot.roots(canvas, 4, dice);
    torn_roots(canvas, &foot, side, dice);
    foot.stem(canvas, |_, _, _, _| {});
    foot.front(canvas, 520, 130, dice);
    gap_in_soil(canvas, &foot, side);
}

/// The lifted plate: a low hill of soil with grass on its back.
fn mound(canvas: &mut Canvas, foot: &Foot, side: f32) {
    let (cx, cy) = (foot.x + side * 215.0, foot.ground + 70.0);
    let light = foot.light;
    canvas.within([cx - 330.0, cy - 210.0, cx + 330.0, cy + 70.0], |x, y| {
        let u = (x - cx) / 320.0;
        if u * u >= 1.0 {
            return None;
        }
        let crest =
            cy - 175.0 * (1.0 - u * u) * (1.0 - u * u) - 26.0 * (cloud(x / 520.0, 0.2) - 0.5);
        let foot_row = cy + 46.0 * (1.0 - u * u).sqrt();
        let cover = ramp(crest - 2.0, crest + 3.0, y) * ramp(foot_row + 12.0, foot_row - 6.0, y);
        let deep = ((y - crest) / (foot_row - crest)).clamp(0.0, 1.0);
        let turf = ramp(0.34, 0.20, deep + 0.25 * (fine(x / 200.0, y / 200.0) - 0.5));
        let grass = mix(
            tint(70, 90, 40),
            tint(128, 138, 70),
            fine(x / 250.0, y / 110.0),
        );
        let soil = times(
            soil_at(x * 1.1, y * 1.1),
            1.0 - 0.45 * ramp(0.35, 0.6, deep),
        );
        let lit = light.on([side * 0.2 - u * 0.4, -0.7 + deep * 0.8, 0.6], x, y);
        Some((through(mix(soil, grass, turf), lit), cover))
    });
}

/// The open cracks around the plate: one gapes, finer ones run beside it.
fn gap_in_soil(canvas: &mut Canvas, foot: &Foot, side: f32) {
    let (cx, cy) = (foot.x + side * 170.0, foot.ground + 62.0);
    for (wide, drop, gape) in [(430.0, 66.0, 10.0), (250.0, 128.0, 3.0)] {
        soil_crack(canvas, [cx, cy], [wide, drop], gape);
    }
}

fn soil_crack(canvas: &mut Canvas, at: [f32; 2], reach: [f32; 2], gape: f32) {
    let ([cx, cy], [wide, drop]) = (at, reach);
    let scale = canvas.scale;
    canvas.within(
        [cx - wide, cy - 30.0, cx + wide, cy + drop + 50.0],
        |x, y| {
            let u = (x - cx) / wide;
            if u * u >= 1.0 {
                return None;
            }
            let jag = 46.0 * (cloud(x / 900.0 + gape, 0.7) - 0.5)
                + 15.0 * (cloud(x / 150.0, 0.1 + gape) - 0.5)
                + 6.0 * (fine(x / 260.0, 0.1) - 0.5);
            let row = cy + drop * (1.0 - u * u).sqrt() + jag;
            let half = gape * (1.0 - u * u) * (2.2 * cloud(x / 260.0, 0.45 + gape) - 0.25);
            let off = y - row;
            let cover = ((half - off.abs()) * scale + 0.5).clamp(0.0, 1.0);
            if cover > 0.0 && half > 0.0 {
                let depth = 0.35 + 0.8 * ramp(-0.2, 1.0, off / half.max(1.0));
                return Some((times(tint(52, 40, 30), depth), cover));
            }
            // Crumbs of raw soil along both lips, the far one standing up.
            let reach = if off < 0.0 {
                2.2 * half + 4.0
            } else {
                half + 4.0
            };
            let lip =
                ramp(half + reach, half, off.abs()) * ramp(0.3, 0.6, fine(x / 200.0, y / 160.0));
            let tone = if off < 0.0 { 0.75 } else { 0.45 };
            (lip > 0.0 && half > 0.5).then(|| (times(soil_at(x, y * 2.0), tone), lip * 0.9))
        },
    );
}

fn torn_roots(canvas: &mut Canvas, foot: &Foot, side: f32, dice: &mut Dice) {
    let mut skin = Skin::of(BarkKind::Bare, 150.0);
    skin.cast = [0.46, 0.36, 0.28];
    for _ in 0..9 {
        let x = foot.x + side * dice.between(120.0, 420.0);
        let y = foot.ground + dice.between(20.0, 84.0);
        let long = dice.between(40.0, 105.0);
        let knots = [
            Knot {
                x,
                y: y - 22.0,
                radius: dice.between(4.0, 9.0),
            },
            Knot {
                x: x + side * long * 0.5,
                y: y + dice.between(-14.0, 16.0),
                radius: 4.5,
            },
            Knot {
                x: x + side * long,
                y: y + dice.between(6.0, 40.0),
                radius: 2.0,
            },
        ];
        limb(canvas, &bent(&knots), &skin, &foot.light);
    }
}

/// A trench dug along the stem, with roots cut off in its wall.
pub fn cut_roots(canvas: &mut Canvas, dice: &mut Dice) {
    let mut foot = Foot::new(dice);
    foot.ground = 610.0;
    foot.radius = 140.0;
    foot.place(canvas, 0.35, dice);
    foot.roots(canvas, 4, dice);
    foot.stem(canvas, |_, _, _, _| {});
    foliage::blades(canvas, 600.0, 690.0, 500, &foot.light, dice);
    let light = foot.light;
    let edge = |x: f32| 706.0 + 26.0 * (cloud(x / 900.0, 0.55) - 0.5) + 8.0 * fine(x / 220.0, 0.3);
    canvas.within([0.0, 670.0, WIDE, HIGH], |x, y| {
        let top = edge(x);
        let cover = ramp(top - 1.5, top + 1.5, y);
        let down = (y - top) / (HIGH - top);
        let soil = soil_at(x * 0.8, y * 0.8);
        let turf = ramp(0.10, 0.03, down + 0.05 * fine(x / 150.0, y / 90.0));
        let layer = mix(soil, tint(168, 132, 88), ramp(0.3, 0.55, down) * 0.5);
        let colour = mix(layer, tint(52, 46, 26), turf);
        let lit = light.on([0.0, 0.1, 0.95], x, y);
        Some((times(through(colour, lit), 0.8 - 0.45 * down), cover))
    });
    for number in 0..15 {
        let x = 90.0 + 72.0 * number as f32 + dice.between(-40.0, 40.0);
        let near = 1.0 - ((x - foot.x).abs() / 620.0).min(1.0);
        let radius = 4.0 + 27.0 * near * near * dice.between(0.3, 1.0) + dice.between(0.0, 5.0);
        let y = edge(x) + dice.between(34.0, 120.0);
        root_end(canvas, x, y, radius, &light, dice);
    }
}

/// A cut root in the wall of a trench: bark ring, pale wood, a little shadow.
fn root_end(canvas: &mut Canvas, x: f32, y: f32, radius: f32, light: &Light, dice: &mut Dice) {
    let lit = light.on([0.1, 0.0, 1.0], x, y);
    let shade = |c: Tint| through(c, lit);
    let flat = dice.between(0.8, 1.0);
    canvas.spot(
        x + 3.0,
        y + radius * 0.5,
        [radius * 1.3, radius],
        [1.0, 0.0],
        tint(22, 16, 12),
        0.6,
    );
    canvas.spot(
        x,
        y,
        [radius * 1.16, radius * 1.16 * flat],
        [1.0, 0.0],
        shade(tint(96, 66, 46)),
        1.0,
    );
    let ragged = dice.part();
    canvas.within(
        [x - radius, y - radius, x + radius, y + radius],
        |px, py| {
            let (dx, dy) = ((px - x) / radius, (py - y) / (radius * flat));
            let wave = 0.22 * (cloud(px / 200.0 + ragged, py / 200.0) - 0.5);
            let away = (dx * dx + dy * dy).sqrt() + wave;
            let ring = 1.0 - 0.18 * ramp(0.5, 1.0, (away * 4.0 + ragged).fract());
            let saw = fine(px / 260.0, (py + px * 0.3) / 40.0);
            let wood = mix(
                tint(206, 176, 128),
                tint(150, 116, 80),
                saw * 0.7 + away * 0.3,
            );
            let dirt = ramp(0.55, 0.75, cloud(px / 160.0 + ragged, py / 160.0));
            let colour = mix(wood, tint(92, 70, 50), dirt * 0.6);
            let cover = ramp(1.0, 0.9, away);
            (cover > 0.0).then_some((times(shade(colour), ring * 0.85), cover))
        },
    );
    for _ in 0..(radius * 0.4) as u32 {
        let (sin, cos) = libm::sincosf(dice.between(0.0, std::f32::consts::TAU));
        let from = [x + cos * radius, y + sin * radius * flat];
        let to = [
            from[0] + cos * 9.0 + dice.bell() * 5.0,
            from[1] + 8.0 + sin * 8.0,
        ];
        canvas.stroke(from, to, [1.6, 0.5], shade(tint(120, 90, 62)), 0.8);
    }
}
