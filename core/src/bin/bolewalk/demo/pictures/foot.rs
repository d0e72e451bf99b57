//! The lower metre and a half of a stem on its ground.

use super::bark::BarkKind;
use super::canvas::{Canvas, HIGH, WIDE, mix, tint};
use super::foliage;
use super::limb::{Knot, Light, Skin, Surface, bent, limb, stem};
use super::noise::{Dice, cloud, fine, ramp};
use super::setting::{blurred_garden, lit_ground, soil_at};

/// The lower metre and a half of a stem on its ground.
pub struct Foot {
    pub skin: Skin,
    pub light: Light,
    pub x: f32,
    /// Row where stem and soil meet.
    pub ground: f32,
    pub radius: f32,
    pub lean: f32,
}

impl Foot {
    /// A foot in the middle of the picture.
    pub fn new(dice: &mut Dice) -> Self {
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
    pub fn place(&self, canvas: &mut Canvas, bare: f32, dice: &mut Dice) {
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
    pub fn roots(&self, canvas: &mut Canvas, count: usize, dice: &mut Dice) {
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

    /// The stem with its buttresses; `mark` as for any stem.
    pub fn stem(&self, canvas: &mut Canvas, mark: impl Fn(f32, f32, f32, &mut Surface)) {
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
                // The foot is round and sinks into soil and moss.
                let soil = ground + 8.0 + 26.0 * (1.0 - u * u).sqrt()
                    - 34.0 * (cloud(x / 620.0, 0.35) - 0.3)
                    - 10.0 * fine(x / 160.0, 0.6);
                surface.open *= 1.0 - 0.55 * ramp(soil - 44.0, soil, y);
                surface.there = ramp(soil + 2.0, soil - 3.0, y);
                mark(x, y, u, surface);
            },
        );
    }

    /// Litter and grass between the camera and the stem.
    pub fn front(&self, canvas: &mut Canvas, grass: u32, leaves: u32, dice: &mut Dice) {
        foliage::litter(canvas, self.ground + 14.0, 905.0, leaves, &self.light, dice);
        foliage::blades(canvas, self.ground + 26.0, 925.0, grass, &self.light, dice);
    }
}
