//! Leaves and needles by the thousand, lit by where they hang in the crown.

use super::canvas::{Canvas, Tint, mix, through, times, tint};
use super::limb::Light;
use super::noise::{Dice, cloud, ramp};

/// A kind of foliage.
#[derive(Clone, Copy)]
pub struct Leafage {
    pub lit: Tint,
    pub shaded: Tint,
    /// Half length of a leaf in units.
    pub size: f32,
    /// Half width as a part of the half length.
    pub slim: f32,
}

impl Leafage {
    /// Broad leaves in summer; `hue` 0 blue-green to 1 yellow-green.
    pub fn broad(hue: f32, size: f32) -> Self {
        Leafage {
            lit: mix(tint(112, 148, 66), tint(158, 172, 72), hue),
            shaded: mix(tint(30, 52, 30), tint(44, 60, 26), hue),
            size,
            slim: 0.6,
        }
    }

    /// Dead leaves that still hang.
    pub fn dead(size: f32) -> Self {
        Leafage {
            lit: tint(168, 116, 66),
            shaded: tint(76, 48, 28),
            size,
            slim: 0.5,
        }
    }
}

/// A cloud of leaves: an ellipsoid in the crown.
#[derive(Clone, Copy)]
pub struct Clump {
    pub at: [f32; 3],
    /// Half width and half height in units.
    pub reach: [f32; 2],
    pub leaves: u32,
}

/// The crown that clumps belong to, for its light.
#[derive(Clone, Copy)]
pub struct Crown {
    pub middle: [f32; 2],
    pub reach: [f32; 2],
}

/// Draws clumps from the far side to the near one.
pub fn draw(
    canvas: &mut Canvas,
    clumps: &mut [Clump],
    crown: &Crown,
    leafage: &Leafage,
    light: &Light,
    dice: &mut Dice,
) {
    clumps.sort_by(|a, b| a.at[2].total_cmp(&b.at[2]));
    for clump in clumps.iter() {
        // Dark ones inside first, then the lit shell.
        for layer in 0..2 {
            for _ in 0..clump.leaves / 2 {
                leaf(canvas, clump, layer == 1, crown, leafage, light, dice);
            }
        }
    }
}

fn leaf(
    canvas: &mut Canvas,
    clump: &Clump,
    outer: bool,
    crown: &Crown,
    leafage: &Leafage,
    light: &Light,
    dice: &mut Dice,
) {
    let [dx, dy, dz] = [dice.bell() * 0.52, dice.bell() * 0.52, dice.bell() * 0.52];
    let (x, y) = (
        clump.at[0] + dx * clump.reach[0],
        clump.at[1] + dy * clump.reach[1],
    );
    // The shell of the clump, then that of the whole crown.
    let own = dx * light.sun[0] + dy * light.sun[1] + dz * light.sun[2];
    let (cx, cy) = (
        (x - crown.middle[0]) / crown.reach[0],
        (y - crown.middle[1]) / crown.reach[1],
    );
    let whole = cx * light.sun[0] + cy * light.sun[1];
    let mass = cloud(x / 310.0 + light.shift, y / 310.0) - 0.5;
    let facing = 0.40 + 0.46 * own + 0.34 * whole + 0.55 * mass + if outer { 0.12 } else { -0.16 };
    let part = (facing + dice.bell() * 0.12).clamp(0.0, 1.0);
    let strength = light.warm[1] * 0.70 + light.cool[1] * 0.55;
    let mut colour = mix(
        leafage.shaded,
        leafage.lit,
        part * part * (3.0 - 2.0 * part),
    );
    // A few leaves throw the sun back like mirrors, others let it through yellow.
    if outer && part > 0.6 && dice.chance(0.06) {
        colour = mix(colour, tint(222, 228, 206), 0.5);
    }
    let warmth = mix([0.92, 1.0, 1.06], [1.05, 1.0, 0.86], part);
    let size = leafage.size * dice.between(0.6, 1.25);
    let turn = dice.between(0.0, std::f32::consts::PI);
    let (sin, cos) = libm::sincosf(turn);
    let slim = leafage.slim * dice.between(0.55, 1.0);
    let colour = times(through(colour, warmth), strength);
    canvas.spot(x, y, [size, size * slim], [cos, sin], colour, 0.94);
}

/// Grass blades and low herbs over rows `from` to `to`, larger toward the camera.
pub fn blades(canvas: &mut Canvas, from: f32, to: f32, count: u32, light: &Light, dice: &mut Dice) {
    for number in 0..count {
        let part = (number as f32 + dice.part()) / count as f32;
        let y = from + (to - from) * part;
        let tall = 4.0 + 20.0 * part * part;
        let x = dice.between(-5.0, 1205.0);
        let lean = dice.bell() * tall * 0.35;
        let sun = light.through_leaves(x, y * 2.2);
        let tone = cloud(x / 500.0, y / 200.0);
        let green = mix(
            tint(62, 84, 36),
            tint(142, 150, 74),
            tone * 0.7 + dice.part() * 0.35,
        );
        let glow = light.cool[1] * 0.75 + light.warm[1] * 0.62 * sun;
        canvas.stroke(
            [x, y],
            [x + lean, y - tall],
            [1.0 + 1.6 * part, 0.5],
            times(green, glow * dice.between(0.65, 1.15)),
            0.85,
        );
    }
}

/// A tuft of grass around the foot of a stem.
pub fn blades_at(canvas: &mut Canvas, x: f32, y: f32, half: f32, light: &Light, dice: &mut Dice) {
    for _ in 0..(half * 2.2) as u32 {
        let (px, tall) = (x + dice.bell() * half * 0.5, dice.between(5.0, 13.0));
        let green = mix(tint(58, 78, 36), tint(132, 142, 72), dice.part());
        let glow = light.cool[1] * 0.75 + light.warm[1] * 0.5;
        let lean = dice.bell() * 3.0;
        let base = [px, y + dice.between(-3.0, 3.0)];
        let colour = times(green, glow * dice.between(0.6, 1.1));
        canvas.stroke(base, [px + lean, base[1] - tall], [1.5, 0.5], colour, 0.85);
    }
}

/// Fallen leaves over rows `from` to `to`.
pub fn litter(canvas: &mut Canvas, from: f32, to: f32, count: u32, light: &Light, dice: &mut Dice) {
    for _ in 0..count {
        let part = dice.part();
        let (x, y) = (dice.between(-5.0, 1205.0), from + (to - from) * part);
        let brown = mix(tint(104, 74, 44), tint(182, 140, 86), dice.part());
        let size = 1.6 + 5.5 * part;
        let sun = light.through_leaves(x, y * 2.2);
        let glow = light.cool[1] * 0.7 + light.warm[1] * 0.6 * sun;
        let slim = dice.between(0.25, 0.5);
        let (sin, cos) = libm::sincosf(dice.bell() * 0.5);
        let shadow = tint(24, 20, 14);
        canvas.spot(
            x + 1.0,
            y + size * 0.35,
            [size, size * slim],
            [cos, sin],
            shadow,
            0.4,
        );
        canvas.spot(
            x,
            y,
            [size, size * slim],
            [cos, sin],
            times(brown, glow),
            0.95,
        );
    }
}

/// A soft shadow on the ground.
pub fn shadow(canvas: &mut Canvas, x: f32, y: f32, reach: [f32; 2], depth: f32) {
    let [wide, high] = reach;
    canvas.within([x - wide, y - high, x + wide, y + high], |px, py| {
        let (u, v) = ((px - x) / wide, (py - y) / high);
        let ragged = 0.5 * (cloud(px / 400.0, py / 120.0) - 0.5);
        let cover = depth * ramp(1.0, 0.25, u * u + v * v + ragged);
        (cover > 0.0).then_some((tint(30, 38, 32), cover))
    });
}
