//! A broken limb in the crown.

use super::aloft::{behind, light_of, near_leaves};
use super::bark::BarkKind;
use super::branching::{self, Habit, Shoot};
use super::canvas::{Canvas, mix, times, tint};
use super::foliage::{self, Clump, Crown, Leafage};
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::Dice;

/// A broken limb that still hangs by its fibres.
pub fn hanger(canvas: &mut Canvas, dice: &mut Dice) {
    let light = light_of(dice, 0.2);
    behind(canvas, &light, 0.55, dice);
    let skin = Skin::of(BarkKind::Furrowed, 150.0).varied(dice);
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    let at = |x: f32, y: f32, radius: f32| Knot {
        x: 600.0 + side * x,
        y,
        radius,
    };
    let main = [
        at(-330.0, 930.0, 92.0),
        at(-300.0, 500.0, 80.0),
        at(-285.0, -40.0, 64.0),
    ];
    let bough = [
        at(-310.0, 420.0, 46.0),
        at(-160.0, 300.0, 36.0),
        at(20.0, 236.0, 31.0),
        at(118.0, 210.0, 29.0),
    ];
    limb(canvas, &bent(&bough), &skin, &light);
    limb(canvas, &bent(&main), &skin, &light);
    let habit = Habit {
        levels: 4,
        spread: 0.75,
        shrink: 0.78,
        upward: -0.4,
        crooked: 0.6,
    };
    let fall = Shoot {
        at: [600.0 + side * 165.0, 300.0, 10.0],
        toward: [side * 0.12, 1.0, 0.1],
        length: 170.0,
        radius: 25.0,
        level: 1,
    };
    let broken = branching::grow(fall, &habit, dice);
    torn_end(canvas, [600.0 + side * 122.0, 212.0], side, &light, dice);
    branching::draw(canvas, &broken, &skin, &light);
    let mut clumps: Vec<Clump> = branching::tips(&broken, 3)
        .into_iter()
        .map(|at| Clump {
            at,
            reach: [30.0, 34.0],
            leaves: 9,
        })
        .collect();
    let crown = Crown {
        middle: [600.0 + side * 170.0, 560.0],
        reach: [220.0, 260.0],
    };
    foliage::draw(
        canvas,
        &mut clumps,
        &crown,
        &Leafage::dead(9.0),
        &light,
        dice,
    );
    let green = [
        [600.0 - side * 420.0, 110.0],
        [600.0 - side * 60.0, 60.0],
        [600.0 - side * 500.0, 330.0],
    ];
    near_leaves(canvas, &green, &light, dice);
}

/// Splintered wood at the break and the strips of fibre that hold the limb.
fn torn_end(canvas: &mut Canvas, at: [f32; 2], side: f32, light: &Light, dice: &mut Dice) {
    let glow = light.warm[1] * 0.62 + light.cool[1] * 0.5;
    canvas.spot(
        at[0],
        at[1],
        [15.0, 29.0],
        [1.0, 0.2 * side],
        times(tint(206, 166, 112), glow),
        1.0,
    );
    for _ in 0..64 {
        let wood = mix(tint(164, 118, 70), tint(240, 212, 160), dice.part());
        let from = [at[0] + dice.bell() * 5.0, at[1] + dice.bell() * 14.0];
        let long = dice.between(12.0, 58.0);
        let to = [
            from[0] + side * long,
            from[1] + dice.bell() * 9.0 + long * 0.25,
        ];
        canvas.stroke(
            from,
            to,
            [dice.between(2.0, 5.0), 0.6],
            times(wood, glow),
            1.0,
        );
    }
    for _ in 0..18 {
        let wood = mix(tint(176, 128, 78), tint(236, 206, 152), dice.part());
        let start = [
            at[0] + side * dice.between(2.0, 20.0),
            at[1] + dice.between(4.0, 24.0),
        ];
        let end = [
            at[0] + side * dice.between(30.0, 58.0),
            at[1] + dice.between(86.0, 128.0),
        ];
        let bend = [
            (start[0] + end[0]) / 2.0 + side * 10.0,
            (start[1] + end[1]) / 2.0,
        ];
        canvas.stroke(start, bend, [4.0, 3.4], times(wood, glow), 1.0);
        canvas.stroke(bend, end, [3.4, 2.0], times(wood, glow * 0.9), 1.0);
    }
    for _ in 0..46 {
        let wood = mix(tint(176, 128, 78), tint(240, 214, 164), dice.part());
        let from = [
            at[0] + side * dice.between(26.0, 60.0),
            at[1] + dice.between(92.0, 112.0),
        ];
        let to = [
            from[0] + dice.bell() * 5.0 - side * 5.0,
            from[1] - dice.between(10.0, 58.0),
        ];
        canvas.stroke(
            from,
            to,
            [dice.between(3.0, 6.0), 0.6],
            times(wood, glow),
            1.0,
        );
    }
}
