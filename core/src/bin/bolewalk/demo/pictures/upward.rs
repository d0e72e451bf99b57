//! The crown from the foot of the stem.

use super::bark::BarkKind;
use super::branching::{self, Habit, Shoot};
use super::canvas::{Canvas, HIGH, times, tint};
use super::foliage::{self, Clump, Crown, Leafage};
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::Dice;
use super::setting::Sky;

/// The view up a stem into the leaves against the light.
pub fn looking_up(canvas: &mut Canvas, dice: &mut Dice) {
    let shift = dice.part();
    let sky = Sky { cover: 0.3, shift };
    canvas.rows(0.0, HIGH, |x, y| times(sky.at(x, y, 1500.0), 1.15));
    let mut light = Light::over_shoulder(if dice.chance(0.5) { -1.0 } else { 1.0 }, 0.0, shift);
    light.sun = [light.sun[0] * 0.9, -0.80, 0.1];
    let heart = [dice.between(560.0, 640.0), dice.between(300.0, 350.0)];
    let bark = if dice.chance(0.6) {
        BarkKind::Furrowed
    } else {
        BarkKind::Plated
    };
    let mut skin = Skin::of(bark, 190.0).varied(dice);
    skin.cast = times(skin.cast, 0.72);
    let habit = Habit {
        levels: 5,
        spread: 0.5,
        shrink: 0.76,
        upward: 0.0,
        crooked: 0.55,
    };
    let mut branches = Vec::new();
    for number in 0..13 {
        let round = number as f32 / 13.0 * std::f32::consts::TAU + dice.part() * 0.6;
        let (sin, cos) = libm::sincosf(round);
        let shoot = Shoot {
            at: [
                heart[0] + cos * 24.0,
                heart[1] + 70.0 - 12.0 * number as f32,
                sin * 10.0,
            ],
            toward: [cos, sin * 0.8 - 0.15, -0.2],
            length: dice.between(120.0, 215.0),
            radius: dice.between(13.0, 22.0),
            level: 2,
        };
        branches.extend(branching::grow(shoot, &habit, dice));
    }
    let mut clumps: Vec<Clump> = branching::tips(&branches, 4)
        .into_iter()
        .map(|at| Clump {
            at,
            reach: [62.0, 54.0],
            leaves: 52,
        })
        .collect();
    while clumps.len() > 430 {
        let index = (dice.part() * clumps.len() as f32) as usize;
        clumps.swap_remove(index.min(clumps.len() - 1));
    }
    let through = Leafage {
        lit: tint(150, 176, 62),
        shaded: tint(40, 62, 26),
        ..Leafage::broad(0.6, 6.2)
    };
    let crown = Crown {
        middle: heart,
        reach: [620.0, 470.0],
    };
    let half = clumps.len() / 2;
    let (far, near) = clumps.split_at_mut(half);
    foliage::draw(canvas, far, &crown, &through, &light, dice);
    branching::draw(canvas, &branches, &skin, &light);
    foliage::draw(canvas, near, &crown, &through, &light, dice);
    let mut own = Light::overcast(shift);
    own.warm = [0.30, 0.28, 0.24];
    own.cool = [0.34, 0.36, 0.34];
    skin.tile = 330.0;
    let knots = [
        Knot {
            x: heart[0] + 24.0,
            y: 1010.0,
            radius: 250.0,
        },
        Knot {
            x: heart[0] + 14.0,
            y: 760.0,
            radius: 168.0,
        },
        Knot {
            x: heart[0] + 6.0,
            y: 540.0,
            radius: 92.0,
        },
        Knot {
            x: heart[0],
            y: heart[1] + 60.0,
            radius: 44.0,
        },
        Knot {
            x: heart[0] - 4.0,
            y: heart[1] - 60.0,
            radius: 22.0,
        },
    ];
    limb(canvas, &bent(&knots), &skin, &own);
}
