//! What stands around the tree: sky, ground, hedges, a house, and blurred gardens behind stems.

use super::canvas::{Canvas, HIGH, Tint, WIDE, mix, through, times, tint};
use super::foliage::{Clump, Crown, Leafage};
use super::limb::Light;
use super::noise::{Dice, cloud, fine, ramp};

/// A day's sky: clear to overcast.
#[derive(Clone, Copy)]
pub struct Sky {
    /// 0 blue, 1 covered.
    pub cover: f32,
    pub shift: f32,
}

impl Sky {
    /// Colour at a place, `horizon` being the row where it meets the land.
    pub fn at(&self, x: f32, y: f32, horizon: f32) -> Tint {
        let high = (y / horizon).clamp(0.0, 1.0);
        let blue = mix(
            tint(94, 146, 206),
            tint(190, 212, 228),
            high * high * 0.6 + high * 0.4,
        );
        let grey = mix(tint(196, 202, 208), tint(226, 228, 228), high);
        let heap = cloud(x / 2300.0 + self.shift, y / 1300.0 + self.shift * 0.37);
        let veil = ramp(0.72 - 0.5 * self.cover, 0.98 - 0.3 * self.cover, heap);
        let white = mix(
            tint(244, 244, 242),
            tint(198, 204, 212),
            ramp(0.5, 0.9, heap) * self.cover,
        );
        mix(mix(blue, grey, self.cover), white, veil * 0.85)
    }
}

/// Sky down to the horizon.
pub fn sky(canvas: &mut Canvas, sky: &Sky, horizon: f32) {
    canvas.rows(0.0, horizon + 2.0, |x, y| sky.at(x, y, horizon));
}

/// Grass from the horizon to the lower edge, its pattern shrinking with distance.
pub fn lawn(canvas: &mut Canvas, horizon: f32, light: &Light, dice: &mut Dice) {
    let (shift, dry, slope) = (dice.part(), dice.part() * 0.8, dice.between(-0.9, 0.9));
    canvas.rows(horizon, HIGH, |x, y| {
        let near = ((y - horizon) / (HIGH - horizon)).clamp(0.0, 1.0);
        let depth = 1.0 / (0.12 + near);
        let (gx, gy) = ((x - WIDE / 2.0) * depth / 900.0, depth * 1.3);
        let patch = cloud(gx * 0.7 + shift, gy * 0.6 + shift);
        let tuft = fine(gx * 3.0, gy * 5.0 + y / 90.0);
        // Rows of the mower run toward their vanishing point.
        let mown = libm::sinf((gx + slope * 0.2) * 30.0) * 0.07 * ramp(0.0, 0.3, near);
        let straw = ramp(0.45, 0.75, patch) * dry;
        let fresh = mix(
            tint(74, 92, 46),
            tint(136, 142, 80),
            patch * 0.55 + tuft * 0.5 + mown,
        );
        let green = mix(fresh, tint(166, 156, 104), straw * 0.6);
        let hazy = mix(green, tint(150, 168, 120), 0.45 * ramp(0.25, 0.0, near));
        lit_ground(hazy, x, y, light)
    });
}

/// Ground colour in sun and dapples.
pub fn lit_ground(colour: Tint, x: f32, y: f32, light: &Light) -> Tint {
    let sun = 0.62 * light.through_leaves(x * 0.8, y * 2.6);
    through(
        colour,
        [0, 1, 2].map(|i| light.cool[i] * 0.85 + light.warm[i] * sun),
    )
}

/// A far line of trees and hedges along the horizon.
pub fn far_trees(canvas: &mut Canvas, horizon: f32, tall: f32, dice: &mut Dice) {
    let shift = dice.part();
    let wide = dice.between(1500.0, 3400.0);
    canvas.within([0.0, horizon - tall * 1.6, WIDE, horizon + 6.0], |x, y| {
        let lumps = cloud(x / wide + shift, shift) * 1.2 + cloud(x / 430.0, shift + 0.3) * 0.4;
        let top = horizon - tall * (0.25 + lumps);
        let ragged = (fine(x / 160.0, y / 160.0) - 0.5) * 16.0;
        let cover = ramp(-3.0, 4.0, y - top + ragged);
        let depth = ((y - top) / tall).clamp(0.0, 1.0);
        let leafy = cloud(x / 260.0, y / 200.0) * 0.7 + fine(x / 130.0, y / 130.0) * 0.4;
        let tone = (depth * 0.55 + 0.62 - leafy * 0.75).clamp(0.0, 1.0);
        let green = mix(tint(138, 150, 112), tint(56, 74, 54), tone);
        (cover > 0.0).then_some((times(green, 0.85), cover))
    });
}

/// Shrubs along a border.
pub fn shrubs(canvas: &mut Canvas, y: f32, size: f32, light: &Light, dice: &mut Dice) {
    shrubs_between(canvas, [-40.0, WIDE + 40.0], y, size, light, dice);
}

/// Shrubs from one place to another.
pub fn shrubs_between(
    canvas: &mut Canvas,
    span: [f32; 2],
    y: f32,
    size: f32,
    light: &Light,
    dice: &mut Dice,
) {
    let mut x = span[0];
    while x < span[1] {
        let reach = size * dice.between(0.7, 1.3);
        let mut clump = [Clump {
            at: [x, y - reach * 0.55, 0.0],
            reach: [reach, reach * 0.75],
            leaves: 130,
        }];
        let crown = Crown {
            middle: [x, y - reach * 0.5],
            reach: [reach, reach],
        };
        let leafage = Leafage::broad(dice.part(), 4.0 + size * 0.02);
        super::foliage::draw(canvas, &mut clump, &crown, &leafage, light, dice);
        x += reach * dice.between(0.7, 1.2);
    }
}

/// A garden far out of focus: a bright gap of sky, dark shrubs, blurred stems, grass, and the
/// round glints of a wide lens.
pub fn blurred_garden(canvas: &mut Canvas, bright: f32, dice: &mut Dice) {
    canvas.backdrop(4, |small| garden(small, bright, dice));
}

fn garden(canvas: &mut Canvas, bright: f32, dice: &mut Dice) {
    let (sx, sy) = (dice.part(), dice.part());
    let hedge = dice.between(180.0, 420.0);
    let edge = dice.between(500.0, 640.0);
    canvas.rows(0.0, HIGH, |x, y| {
        let soft = cloud(x / 2600.0 + sx, y / 2600.0 + sy);
        let lump = 260.0 * (cloud(x / 1500.0 + sx, sy) - 0.5);
        let leafy = mix(tint(34, 48, 30), tint(132, 148, 88), ramp(0.25, 0.85, soft));
        let airy = mix(
            tint(150, 168, 128),
            tint(226, 232, 226),
            ramp(0.4, 0.7, soft),
        );
        let grass = mix(tint(96, 108, 58), tint(168, 168, 104), soft);
        let upper = mix(airy, leafy, ramp(hedge - 150.0, hedge + 120.0, y + lump));
        times(
            mix(upper, grass, ramp(edge - 30.0, edge + 40.0, y + lump * 0.1)),
            0.9 * bright,
        )
    });
    for _ in 0..(2.0 + dice.part() * 4.0) as u32 {
        let (x, wide) = (dice.between(-20.0, WIDE), dice.between(22.0, 64.0));
        let brown = mix(tint(52, 46, 38), tint(98, 90, 76), dice.part());
        let lean = dice.bell() * 40.0;
        canvas.stroke(
            [x, edge + 20.0],
            [x + lean, -40.0],
            [wide, wide * 0.8],
            brown,
            0.75,
        );
    }
    for _ in 0..60 {
        let (x, y) = (dice.between(0.0, WIDE), dice.between(-40.0, edge));
        let size = dice.between(18.0, 70.0);
        let leafy = mix(tint(40, 56, 32), tint(164, 176, 110), dice.part());
        canvas.spot(x, y, [size, size], [1.0, 0.0], times(leafy, bright), 0.3);
    }
    for _ in 0..26 {
        let (x, y) = (dice.between(0.0, WIDE), dice.between(-40.0, hedge + 130.0));
        let size = dice.between(10.0, 30.0);
        let glint = mix(tint(206, 216, 176), tint(238, 240, 232), dice.part());
        canvas.spot(
            x,
            y,
            [size, size],
            [1.0, 0.0],
            glint,
            dice.between(0.08, 0.30),
        );
    }
    canvas.soften(9.0);
}

/// Bare soil at a place: crumbs and stones.
pub fn soil_at(x: f32, y: f32) -> Tint {
    let clod = cloud(x / 260.0, y / 190.0);
    let crumb = fine(x / 190.0, y / 150.0);
    let stone = ramp(0.80, 0.86, fine(x / 420.0 + 0.2, y / 300.0));
    let brown = mix(
        tint(58, 44, 32),
        tint(134, 106, 78),
        clod * 0.6 + crumb * 0.5 - 0.05,
    );
    mix(brown, tint(168, 160, 148), stone * 0.7)
}
