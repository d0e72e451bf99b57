//! The stem from close by: bark, cavity, wound, crack.

use super::bark::BarkKind;
use super::canvas::{Canvas, Tint, mix, times, tint};
use super::limb::{Light, Skin, Surface, stem};
use super::noise::{Dice, cloud, fine, ramp};
use super::setting::blurred_garden;

/// A stem that fills half the picture, and its light.
struct Close {
    skin: Skin,
    light: Light,
    middle: f32,
    radius: f32,
    slant: f32,
}

impl Close {
    fn new(canvas: &mut Canvas, bark: BarkKind, dice: &mut Dice) -> Self {
        blurred_garden(canvas, dice.between(0.8, 1.1), dice);
        let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
        let tile = if bark == BarkKind::Plated {
            470.0
        } else {
            430.0
        };
        Close {
            skin: Skin::of(bark, tile).varied(dice),
            light: Light::over_shoulder(side, 0.55, dice.part()),
            middle: dice.between(570.0, 640.0),
            radius: dice.between(285.0, 320.0),
            slant: dice.between(-0.03, 0.03),
        }
    }

    fn draw(&self, canvas: &mut Canvas, mark: impl Fn(f32, f32, f32, &mut Surface)) {
        let shape = |y: f32| {
            let off = (y - 450.0) * self.slant;
            let swell = 10.0 * (cloud(0.3, y / 2600.0) - 0.5) + (y - 450.0) * 0.035;
            [self.middle + off, self.radius + swell]
        };
        stem(canvas, [-2.0, 902.0], &self.skin, &self.light, shape, mark);
    }
}

fn bark_of(dice: &mut Dice) -> BarkKind {
    match (dice.part() * 4.0) as u32 {
        0 => BarkKind::Plated,
        1 => BarkKind::Smooth,
        _ => BarkKind::Furrowed,
    }
}

pub fn bark(canvas: &mut Canvas, dice: &mut Dice) {
    let kind = match (dice.part() * 5.0) as u32 {
        0 => BarkKind::Pale,
        1 => BarkKind::Plated,
        2 => BarkKind::Smooth,
        _ => BarkKind::Furrowed,
    };
    let close = Close::new(canvas, kind, dice);
    close.draw(canvas, |_, _, _, _| {});
}

/// How far out of an opening's edge a place lies (under 1: inside), and the way outward.
fn from_opening(x: f32, y: f32, middle: [f32; 2], reach: [f32; 2], ragged: f32) -> (f32, [f32; 2]) {
    let (dx, dy) = ((x - middle[0]) / reach[0], (y - middle[1]) / reach[1]);
    let away = (dx * dx + dy * dy).sqrt().max(1e-3);
    let edge = away + ragged * (cloud(x / 800.0 + 0.2, y / 800.0) - 0.5);
    (edge, [dx / away, dy / away])
}

/// A swollen roll of woundwood around an opening: `t` 0 at its inner edge, 1 at its outer one.
fn woundwood(surface: &mut Surface, outward: [f32; 2], t: f32, strength: f32, young: Tint) {
    let tilt = (2.0 * t - 1.0) * 1.25 * strength;
    surface.n[0] += outward[0] * tilt;
    surface.n[1] += outward[1] * tilt;
    let skin = ramp(1.0, 0.45, t) * strength;
    surface.colour = mix(surface.colour, young, skin * 0.8);
    surface.open = surface.open + (1.0 - surface.open) * skin * 0.7;
}

/// An opening into a hollow stem, rolled edges, brown rot inside.
pub fn cavity(canvas: &mut Canvas, dice: &mut Dice) {
    let kind = bark_of(dice);
    let close = Close::new(canvas, kind, dice);
    let middle = [
        close.middle + dice.between(-50.0, 50.0),
        dice.between(420.0, 490.0),
    ];
    let reach = [dice.between(86.0, 112.0), dice.between(165.0, 210.0)];
    close.draw(canvas, |x, y, _, surface| {
        let (edge, outward) = from_opening(x, y, middle, reach, 0.42);
        if edge < 1.0 {
            hollow(x, y, edge, outward, close.light.sun[0], surface);
        } else if edge < 1.42 {
            let young = times(tint(126, 112, 94), 0.8 + 0.4 * fine(x / 260.0, y / 190.0));
            woundwood(surface, outward, (edge - 1.0) / 0.42, 1.0, young);
        }
    });
}

fn hollow(x: f32, y: f32, edge: f32, outward: [f32; 2], sun: f32, surface: &mut Surface) {
    // The far wall catches light low down and opposite the sun; the roof stays black.
    let wall = 0.5 + 0.5 * (outward[1] * 0.8 - outward[0] * sun * 0.9);
    let depth = ramp(1.0, 0.55, edge);
    let cubes = fine(x / 520.0 + 0.1, y / 330.0) * 0.6 + cloud(x / 210.0, y / 520.0) * 0.6;
    let rot = mix(tint(52, 30, 18), tint(150, 96, 56), cubes);
    let reached = (0.06 + 0.62 * wall * (1.0 - depth * 0.85)).clamp(0.02, 0.8);
    surface.colour = rot;
    surface.n = [-outward[0] * 0.6, -outward[1] * 0.6 - 0.2, 0.6];
    surface.open = reached * if edge > 0.93 { 0.55 } else { 1.0 };
}

/// A large pruning wound, half closed.
pub fn wound(canvas: &mut Canvas, dice: &mut Dice) {
    let kind = if dice.chance(0.5) {
        BarkKind::Smooth
    } else {
        BarkKind::Furrowed
    };
    let close = Close::new(canvas, kind, dice);
    let middle = [
        close.middle + dice.between(-40.0, 40.0),
        dice.between(410.0, 470.0),
    ];
    let reach = [dice.between(120.0, 140.0), dice.between(130.0, 155.0)];
    // Direction of each opened ray, how far out it reaches and how far in it begins.
    let rays: Vec<[f32; 4]> = (0..5)
        .map(|_| {
            let (sin, cos) = libm::sincosf(dice.between(0.0, std::f32::consts::TAU));
            let start = dice.between(0.05, 0.45);
            [cos, sin, start, start + dice.between(0.15, 0.5)]
        })
        .collect();
    close.draw(canvas, |x, y, _, surface| {
        let (edge, outward) = from_opening(x, y, middle, reach, 0.10);
        if edge < 1.0 {
            cut_face(x, y, edge, outward, &rays, surface);
        } else if edge < 1.36 {
            let young = times(tint(138, 126, 106), 0.8 + 0.4 * fine(x / 300.0, y / 300.0));
            woundwood(surface, outward, (edge - 1.0) / 0.36, 1.1, young);
        }
    });
}

/// Weathered end grain: rings, rays that opened, dark stain from the middle.
fn cut_face(
    x: f32,
    y: f32,
    edge: f32,
    outward: [f32; 2],
    rays: &[[f32; 4]],
    surface: &mut Surface,
) {
    let ring = (edge * 19.0 + 1.2 * cloud(x / 600.0, y / 600.0)).fract();
    let line = 1.0 - 0.22 * ramp(0.6, 0.95, ring);
    let grain = 0.84 + 0.3 * fine(x / 160.0, y / 160.0);
    let weathered = mix(
        tint(168, 142, 104),
        tint(140, 126, 108),
        cloud(x / 500.0, y / 500.0),
    );
    let stained = mix(weathered, tint(74, 56, 42), ramp(0.62, 0.1, edge) * 0.75);
    let mut check = 0.0_f32;
    for ray in rays {
        let along = outward[0] * ray[0] + outward[1] * ray[1];
        let crooked = 7.0 * (cloud(x / 330.0 + ray[0], y / 330.0) - 0.5);
        let off = ((outward[0] * ray[1] - outward[1] * ray[0]) * edge * 130.0 + crooked).abs();
        let reached = ramp(ray[2], ray[2] + 0.12, edge) * ramp(ray[3], ray[3] - 0.15, edge);
        if along > 0.0 {
            check = check.max(ramp(2.4 * reached + 0.2, 0.3, off) * reached);
        }
    }
    surface.colour = times(mix(stained, tint(26, 20, 16), check), line * grain);
    surface.n = [outward[0] * -0.10, 0.05, 1.0];
    surface.open = 1.0 - 0.45 * ramp(0.9, 1.0, edge);
}

/// A long crack through bark and wood.
pub fn crack(canvas: &mut Canvas, dice: &mut Dice) {
    let kind = if dice.chance(0.6) {
        BarkKind::Furrowed
    } else {
        BarkKind::Smooth
    };
    let close = Close::new(canvas, kind, dice);
    let shift = dice.part();
    let base = close.middle + dice.between(-60.0, 40.0);
    close.draw(canvas, |x, y, _, surface| {
        let path = base
            + 110.0 * (cloud(shift, y / 1900.0) - 0.5)
            + 16.0 * (cloud(shift + 0.3, y / 330.0) - 0.5);
        let open = ramp(60.0, 330.0, y) * ramp(900.0, 600.0, y);
        let half = 1.5 + 7.5 * open * (0.6 + 0.8 * cloud(shift + 0.6, y / 500.0));
        let off = x - path;
        let torn = 9.0 * (fine(x / 220.0, y / 420.0) - 0.5);
        let away = off.abs() + torn * 0.5;
        if away < half {
            surface.colour = tint(20, 15, 12);
            surface.open = 0.35 + 0.3 * ramp(half * 0.4, half, away);
        } else if away < half + (5.0 + 9.0 * fine(shift, y / 300.0)) * open {
            // Fresh wood at the lips, splintered along the grain.
            let fibre = fine(x / 60.0, y / 900.0);
            surface.colour = mix(tint(104, 84, 62), tint(170, 146, 112), fibre);
            surface.n[0] += off.signum() * 0.35;
            surface.open = 0.95;
        } else if away < half + 60.0 {
            let t = (away - half - 13.0) / 47.0;
            surface.n[0] += off.signum() * (2.0 * t - 1.0) * 0.7 * (0.3 + open);
        }
    });
}
