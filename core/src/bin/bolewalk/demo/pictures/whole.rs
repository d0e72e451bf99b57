//! Whole trees in their place.

mod beside;

use super::bark::BarkKind;
use super::branching::{self, Branch, Habit, Shoot};
use super::canvas::{Canvas, WIDE, mix, times, tint};
use super::foliage::{self, Clump, Crown, Leafage};
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::{Dice, cloud, fine};
use super::setting::{self, Sky};

pub use beside::{beside_house, beside_path, beside_wires};

/// Row where the land meets the sky.
const HORIZON: f32 = 640.0;

/// One standing tree.
struct Standing {
    /// Foot of the stem.
    x: f32,
    ground: f32,
    /// Height in units.
    tall: f32,
    /// Sideways lean of the whole tree, as a slope.
    lean: f32,
    skin: Skin,
    leafage: Option<Leafage>,
    habit: Habit,
    /// Part of the height above which twigs are bare, over 1 for none.
    bare_above: f32,
}

impl Standing {
    fn usual(dice: &mut Dice) -> Self {
        let bark = if dice.chance(0.7) {
            BarkKind::Furrowed
        } else {
            BarkKind::Smooth
        };
        let mut skin = Skin::of(bark, 64.0);
        skin.cast = [0.92, 0.88, 0.82];
        skin.relief = 0.8;
        Standing {
            x: dice.between(560.0, 640.0),
            ground: 792.0,
            tall: dice.between(690.0, 740.0),
            lean: dice.between(-0.03, 0.03),
            skin: skin.varied(dice),
            leafage: Some(Leafage::broad(dice.part(), 3.7)),
            habit: Habit {
                levels: 5,
                spread: dice.between(0.55, 0.72),
                shrink: 0.79,
                upward: 0.5,
                crooked: 0.55,
            },
            bare_above: 2.0,
        }
    }

    /// Grows and draws the tree; gives its crown.
    fn draw(&self, canvas: &mut Canvas, light: &Light, dice: &mut Dice) -> Crown {
        let bole = self.tall * 0.25;
        let radius = self.tall * 0.031;
        let top = [self.x + self.lean * bole, self.ground - bole, 0.0];
        let mut branches: Vec<Branch> = Vec::new();
        let leader = self.tall * 0.17;
        for number in 0..7 {
            let round = number as f32 * 2.4 + dice.part();
            let (sin, cos) = libm::sincosf(round);
            // The leader first, then limbs from high to low, the lower the flatter.
            let low = number as f32 / 6.0;
            let out = if number == 0 {
                0.10
            } else {
                self.habit.spread * (0.9 + 0.9 * low)
            };
            let up = leader * (1.0 - low) * dice.between(0.5, 1.0);
            let shoot = Shoot {
                at: [top[0] + self.lean * up, top[1] - up, 0.0],
                toward: [self.lean * 1.3 + out * cos, -1.0, out * sin],
                length: self.tall
                    * if number == 0 {
                        0.22
                    } else {
                        0.165 + 0.04 * low
                    },
                radius: radius * if number == 0 { 0.66 } else { 0.42 },
                level: 1,
            };
            branches.extend(branching::grow(shoot, &self.habit, dice));
        }
        branches.push(Branch {
            from: top,
            to: [top[0] + self.lean * leader, top[1] - leader, 0.0],
            radius: [radius * 0.86, radius * 0.62],
            level: 0,
        });
        let crown = crown_of(&branches);
        foliage::shadow(
            canvas,
            self.x - light.sun[0] * 150.0,
            self.ground + 22.0,
            [crown.reach[0] * 1.05, 62.0],
            if light.warm[0] > 0.8 { 0.62 } else { 0.35 },
        );
        let (mut far, mut near) = (Vec::new(), Vec::new());
        if let Some(leafage) = &self.leafage {
            for tip in branching::tips(&branches, self.habit.levels - 1) {
                let up = (self.ground - tip[1]) / self.tall;
                if up > self.bare_above + dice.bell() * 0.05 {
                    continue;
                }
                let reach = self.tall * dice.between(0.026, 0.052);
                let clump = Clump {
                    at: tip,
                    reach: [reach * 1.15, reach],
                    leaves: (120.0 * leafage_share(leafage, reach)) as u32,
                };
                if tip[2] < 0.0 {
                    far.push(clump)
                } else {
                    near.push(clump)
                }
            }
            thin_out(&mut far, 190, dice);
            thin_out(&mut near, 190, dice);
            foliage::draw(canvas, &mut far, &crown, leafage, light, dice);
        }
        branching::draw(canvas, &branches, &self.skin, light);
        self.bole(canvas, light, bole, radius);
        foliage::blades_at(canvas, self.x, self.ground + 8.0, radius * 2.0, light, dice);
        if let Some(leafage) = &self.leafage {
            foliage::draw(canvas, &mut near, &crown, leafage, light, dice);
        }
        crown
    }

    fn bole(&self, canvas: &mut Canvas, light: &Light, bole: f32, radius: f32) {
        let at = |up: f32, wide: f32| Knot {
            x: self.x + self.lean * up,
            y: self.ground - up,
            radius: radius * wide,
        };
        let knots = [
            at(-6.0, 1.6),
            at(bole * 0.07, 1.28),
            at(bole * 0.2, 1.08),
            at(bole * 0.6, 0.95),
            at(bole * 1.05, 0.86),
        ];
        limb(canvas, &bent(&knots), &self.skin, light);
    }
}

/// Leaves a clump needs to look full, by leaf and clump size.
fn leafage_share(leafage: &Leafage, reach: f32) -> f32 {
    (reach / 30.0) * (reach / 30.0) * (3.7 / leafage.size)
}

fn thin_out(clumps: &mut Vec<Clump>, most: usize, dice: &mut Dice) {
    while clumps.len() > most {
        let index = (dice.part() * clumps.len() as f32) as usize;
        clumps.swap_remove(index.min(clumps.len() - 1));
    }
}

fn crown_of(branches: &[Branch]) -> Crown {
    let bound = |axis: usize, pick: fn(f32, f32) -> f32, start: f32| {
        branches.iter().map(|b| b.to[axis]).fold(start, pick)
    };
    let (left, right) = (bound(0, f32::min, f32::MAX), bound(0, f32::max, f32::MIN));
    let (top, low) = (bound(1, f32::min, f32::MAX), bound(1, f32::max, f32::MIN));
    Crown {
        middle: [(left + right) / 2.0, (top + low) / 2.0],
        reach: [(right - left) / 2.0 + 30.0, (low - top) / 2.0 + 30.0],
    }
}

fn day(dice: &mut Dice) -> (Light, Sky) {
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
fn open_ground(canvas: &mut Canvas, light: &Light, sky: &Sky, dice: &mut Dice) {
    let tall = dice.between(40.0, 150.0);
    canvas.backdrop(2, |small| {
        setting::sky(small, sky, HORIZON);
        setting::far_trees(small, HORIZON, tall, dice);
    });
    setting::lawn(canvas, HORIZON, light, dice);
}

fn front_grass(canvas: &mut Canvas, light: &Light, dice: &mut Dice) {
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
