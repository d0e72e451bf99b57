//! The foot of the tree: root flare, bracket, heaved soil, cut roots.

mod roots;

use super::bark::BarkKind;
use super::canvas::{Canvas, HIGH, Tint, WIDE, mix, through, times, tint};
use super::foliage;
use super::limb::{Knot, Light, Skin, Surface, bent, limb, stem};
use super::noise::{Dice, cloud, fine, ramp};
use super::setting::{blurred_garden, lit_ground, soil_at};

pub use roots::{cut_roots, heave};

/// The lower metre and a half of a stem on its ground.
struct Foot {
    skin: Skin,
    light: Light,
    x: f32,
    /// Row where stem and soil meet.
    ground: f32,
    radius: f32,
    lean: f32,
}

impl Foot {
    fn new(dice: &mut Dice) -> Self {
        let bark = if dice.chance(0.65) {
            BarkKind::Furrowed
        } else {
            BarkKind::Smooth
        };
        let side = if dice.chance(0.5) { -1.0 } else { 1.0 };
        let mut skin = Skin::of(bark, 300.0);
        skin.moss = 0.75;
        Foot {
            skin: skin.varied(dice),
            light: Light::over_shoulder(side, 0.6, dice.part()),
            x: dice.between(560.0, 640.0),
            ground: 690.0,
            radius: dice.between(150.0, 175.0),
            lean: 0.0,
        }
    }

    /// Garden behind, near ground in grass and litter.
    fn place(&self, canvas: &mut Canvas, bare: f32, dice: &mut Dice) {
        blurred_garden(canvas, 0.85, dice);
        let light = self.light;
        canvas.within([0.0, 520.0, WIDE, HIGH], |x, y| {
            let near = (y - 520.0) / 380.0;
            let cover = ramp(0.0, 0.16, near);
            let patch = cloud(x / 760.0 + 0.1, y / 300.0);
            let grass = mix(
                tint(64, 82, 38),
                tint(126, 134, 70),
                fine(x / 330.0, y / 200.0),
            );
            let soil = soil_at(x, y);
            let open = ramp(0.62 - 0.6 * bare, 0.72 - 0.3 * bare, patch);
            let ground = mix(grass, soil, open.max(bare * 0.3));
            Some((lit_ground(ground, x, y, &light), cover))
        });
        let side = -self.light.sun[0].signum();
        foliage::shadow(
            canvas,
            self.x + side * 190.0,
            self.ground + 35.0,
            [self.radius * 2.7, 95.0],
            0.7,
        );
        let count = (700.0 * (1.0 - bare)) as u32;
        foliage::blades(canvas, 560.0, self.ground + 10.0, count, &self.light, dice);
    }

    /// Roots that run out over the ground, to both sides and toward the camera.
    fn roots(&self, canvas: &mut Canvas, count: usize, dice: &mut Dice) {
        let mut skin = self.skin;
        skin.tile = 210.0;
        for number in 0..count {
            let part = (number as f32 + 0.5) / count as f32 * 2.0 - 1.0;
            let reach = dice.between(1.7, 2.5) * self.radius;
            let fall = 70.0 * (1.0 - part * part) + dice.between(14.0, 40.0);
            let start = self.radius * part * 1.02;
            let thick = self.radius * dice.between(0.20, 0.29);
            let at = |t: f32, down: f32, radius: f32| Knot {
                x: self.x + start + part * reach * t,
                y: self.ground + down,
                radius,
            };
            let knots = [
                at(-0.14, -64.0, thick * 1.2),
                at(0.08, -8.0, thick),
                at(0.40, fall * 0.55, thick * 0.62),
                at(0.72, fall * 0.9, thick * 0.36),
                at(1.0, fall + 14.0, thick * 0.10),
            ];
            let dark = [knots[1].x, knots[2].x + part * 30.0];
            foliage::shadow(
                canvas,
                (dark[0] + dark[1]) / 2.0,
                self.ground + fall * 0.6 + thick * 0.6,
                [(dark[1] - dark[0]).abs() * 0.6 + 60.0, thick * 0.9],
                0.55,
            );
            limb(canvas, &bent(&knots), &skin, &self.light);
        }
    }

    fn shape(&self) -> impl Fn(f32) -> [f32; 2] {
        let (x, ground, radius, lean) = (self.x, self.ground, self.radius, self.lean);
        move |y: f32| {
            let up = (ground - y).max(-60.0);
            let flare = 0.62 * libm::expf(-up / 95.0) + 0.10 * libm::expf(-up / 400.0);
            [x + lean * up, radius * (0.92 + flare)]
        }
    }

    fn stem(&self, canvas: &mut Canvas, mark: impl Fn(f32, f32, f32, &mut Surface)) {
        let ground = self.ground;
        stem(
            canvas,
            [-2.0, ground + 34.0],
            &self.skin,
            &self.light,
            self.shape(),
            |x, y, u, surface| {
                // Buttresses fold the foot, the more the lower.
                let low = libm::expf(-(ground - y).max(0.0) / 150.0);
                let fold = u * 7.5 + 1.4 * cloud(u * 0.3, 0.4);
                surface.n[0] += libm::sinf(fold) * 0.75 * low;
                surface.open *= 1.0 - 0.42 * low * ramp(0.55, 0.95, libm::cosf(fold + 0.4));
                surface.open *= 1.0 - 0.5 * ramp(ground - 14.0, ground + 30.0, y);
                mark(x, y, u, surface);
            },
        );
    }

    fn front(&self, canvas: &mut Canvas, grass: u32, leaves: u32, dice: &mut Dice) {
        foliage::litter(canvas, self.ground + 14.0, 905.0, leaves, &self.light, dice);
        foliage::blades(canvas, self.ground + 26.0, 925.0, grass, &self.light, dice);
    }
}

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
