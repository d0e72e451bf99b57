//! Whole trees in their place.

use super::bark::BarkKind;
use super::canvas::{Canvas, WIDE, mix, times, tint};
use super::foliage::{self, Leafage};
use super::house::house;
use super::limb::{Knot, Light, Skin, limb};
use super::noise::{Dice, fine};
use super::setting::{self, Sky};
use super::standing::Standing;

/// Row where the land meets the sky.
const HORIZON: f32 = 640.0;

/// A day's sun and sky.
pub fn day(dice: &mut Dice) -> (Light, Sky) {
    let shift = dice.part();
    let sky = Sky {
        cover: if dice.chance(0.3) { 0.75 } else { 0.25 },
        shift,
    };
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    let light = if sky.cover > 0.5 {
        Light::overcast(shift)
    } else {
        Light::over_shoulder(side, 0.0, shift)
    };
    (light, sky)
}

/// Sky, far trees, lawn.
pub fn open_ground(canvas: &mut Canvas, light: &Light, sky: &Sky, dice: &mut Dice) {
    let tall = dice.between(40.0, 150.0);
    canvas.backdrop(2, |small| {
        setting::sky(small, sky, HORIZON);
        setting::far_trees(small, HORIZON, tall, dice);
    });
    setting::lawn(canvas, HORIZON, light, dice);
}

/// Grass between the camera and the tree.
pub fn front_grass(canvas: &mut Canvas, light: &Light, dice: &mut Dice) {
    foliage::blades(canvas, 690.0, 912.0, 2600, light, dice);
}

pub fn broadleaf(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    Standing::usual(dice).draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

/// A crown that dies back from its top.
pub fn dieback(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let mut tree = Standing::usual(dice);
    tree.bare_above = 0.62;
    tree.habit.upward = 0.8;
    tree.leafage = Some(Leafage {
        lit: tint(156, 158, 84),
        ..Leafage::broad(0.9, 3.5)
    });
    tree.draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

/// Dead for years: no leaf, no twig, silver wood.
pub fn dead(canvas: &mut Canvas, dice: &mut Dice) {
    let shift = dice.part();
    let light = Light::overcast(shift);
    open_ground(canvas, &light, &Sky { cover: 0.9, shift }, dice);
    let mut tree = Standing::usual(dice);
    tree.leafage = None;
    tree.skin = Skin::of(BarkKind::Bare, 90.0).varied(dice);
    tree.skin.cast = [0.86, 0.84, 0.82];
    tree.tall = 820.0;
    tree.habit.levels = 5;
    tree.habit.crooked = 0.9;
    tree.habit.spread = 0.7;
    tree.draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

pub fn leaning(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let mut tree = Standing::usual(dice);
    let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
    tree.x = 600.0 - side * 150.0;
    tree.lean = side * dice.between(0.34, 0.42);
    tree.tall *= 0.94;
    tree.draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

/// A small garden tree that can be reached from the ground.
pub fn small(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    setting::shrubs(canvas, 690.0, 60.0, &light, dice);
    let mut tree = Standing::usual(dice);
    tree.tall = 430.0;
    tree.ground = 780.0;
    tree.skin = Skin::of(BarkKind::Smooth, 60.0);
    tree.leafage = Some(Leafage {
        lit: tint(170, 120, 128),
        shaded: tint(62, 44, 44),
        ..Leafage::broad(0.5, 3.2)
    });
    tree.habit.levels = 4;
    tree.draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

/// A tree over a path with a bench.
pub fn beside_path(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let mut tree = Standing::usual(dice);
    tree.x = 420.0;
    tree.ground = 770.0;
    let path = [
        [760.0, HORIZON + 6.0],
        [800.0, HORIZON + 6.0],
        [1010.0, 905.0],
        [560.0, 905.0],
    ];
    canvas.polygon(&path, |x, y| {
        let near = (y - HORIZON) / 260.0;
        let grit = fine(x / 90.0 / (0.3 + near), y / 60.0);
        let grey = mix(tint(142, 134, 122), tint(196, 188, 174), grit);
        setting::lit_ground(grey, x, y, &light)
    });
    tree.draw(canvas, &light, dice);
    bench(canvas, 860.0, 742.0, &light);
    front_grass_beside(canvas, &light, dice);
}

fn front_grass_beside(canvas: &mut Canvas, light: &Light, dice: &mut Dice) {
    // Short grass only: the path stays open.
    foliage::litter(canvas, 720.0, 900.0, 120, light, dice);
}

fn bench(canvas: &mut Canvas, x: f32, y: f32, light: &Light) {
    let wood = times(tint(136, 98, 66), light.warm[1] * 0.5 + light.cool[1] * 0.8);
    let dark = times(wood, 0.45);
    foliage::shadow(canvas, x + 50.0, y + 36.0, [80.0, 14.0], 0.6);
    for leg in [8.0, 96.0] {
        canvas.stroke(
            [x + leg, y - 24.0],
            [x + leg, y + 34.0],
            [5.0, 5.0],
            dark,
            1.0,
        );
    }
    for (up, shade) in [(-30.0, 1.0), (-18.0, 0.9), (6.0, 1.15), (12.0, 0.8)] {
        let colour = times(wood, shade);
        canvas.stroke(
            [x, y + up],
            [x + 104.0, y + up - 2.0],
            [7.0, 7.0],
            colour,
            1.0,
        );
    }
}

/// A tall tree close to a house.
pub fn beside_house(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let wall = if dice.chance(0.5) {
        tint(206, 196, 172)
    } else {
        tint(160, 172, 176)
    };
    house(canvas, 560.0, 742.0, 330.0, &light, wall);
    setting::shrubs_between(canvas, [570.0, 1160.0], 752.0, 26.0, &light, dice);
    let mut tree = Standing::usual(dice);
    tree.x = 400.0;
    tree.lean = 0.06;
    tree.tall = 735.0;
    tree.draw(canvas, &light, dice);
    front_grass(canvas, &light, dice);
}

/// Wires on poles through the edge of a crown.
pub fn beside_wires(canvas: &mut Canvas, dice: &mut Dice) {
    let (light, sky) = day(dice);
    open_ground(canvas, &light, &sky, dice);
    let pole = 985.0;
    let lines = [(212.0, 2.4), (226.0, 2.4), (300.0, 3.4), (330.0, 4.2)];
    let dark = tint(34, 34, 36);
    let wires = |canvas: &mut Canvas, front: bool| {
        for (index, (y, thick)) in lines.into_iter().enumerate() {
            if (index % 2 == 0) != front {
                continue;
            }
            let sag = |x: f32| {
                let t = (x - pole) / 1150.0;
                y - 135.0 * t * (1.0 + t) - (pole - x) * 0.03
            };
            let mut x = -20.0;
            while x < WIDE + 20.0 {
                let to = x + 30.0;
                canvas.stroke([x, sag(x)], [to, sag(to)], [thick, thick], dark, 0.95);
                x = to;
            }
        }
    };
    wires(canvas, false);
    let mut tree = Standing::usual(dice);
    tree.x = 450.0;
    tree.tall = 700.0;
    tree.draw(canvas, &light, dice);
    wires(canvas, true);
    let mut wood = Skin::of(BarkKind::Bare, 160.0);
    wood.cast = [0.62, 0.54, 0.46];
    let knots = [
        Knot {
            x: pole,
            y: 800.0,
            radius: 13.0,
        },
        Knot {
            x: pole,
            y: 480.0,
            radius: 11.5,
        },
        Knot {
            x: pole,
            y: 180.0,
            radius: 10.0,
        },
    ];
    foliage::shadow(canvas, pole + 30.0, 804.0, [60.0, 10.0], 0.5);
    limb(canvas, &knots, &wood, &light);
    canvas.stroke(
        [pole - 74.0, 222.0],
        [pole + 74.0, 216.0],
        [11.0, 11.0],
        tint(92, 78, 64),
        1.0,
    );
    for off in [-66.0, -30.0, 30.0, 66.0] {
        canvas.spot(
            pole + off,
            209.0,
            [6.0, 8.0],
            [1.0, 0.0],
            tint(116, 126, 128),
            1.0,
        );
    }
    canvas.spot(
        pole + 24.0,
        292.0,
        [17.0, 28.0],
        [1.0, 0.0],
        tint(120, 124, 126),
        1.0,
    );
    front_grass(canvas, &light, dice);
}
