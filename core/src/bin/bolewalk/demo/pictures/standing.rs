//! One broadleaf tree: grown, leafed, drawn with its shadow.

use super::bark::BarkKind;
use super::branching::{self, Branch, Habit, Shoot};
use super::canvas::Canvas;
use super::foliage::{self, Clump, Crown, Leafage};
use super::limb::{Knot, Light, Skin, bent, limb};
use super::noise::Dice;

/// One standing tree.
pub struct Standing {
    /// Foot of the stem.
    pub x: f32,
    /// Row of its foot.
    pub ground: f32,
    /// Height in units.
    pub tall: f32,
    /// Sideways lean of the whole tree, as a slope.
    pub lean: f32,
    /// Bark of stem and branches.
    pub skin: Skin,
    /// Leaves, none on a dead tree.
    pub leafage: Option<Leafage>,
    /// How it branches.
    pub habit: Habit,
    /// Part of the height above which twigs are bare, over 1 for none.
    pub bare_above: f32,
}

impl Standing {
    /// A broadleaf tree as most are.
    pub fn usual(dice: &mut Dice) -> Self {
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
    pub fn draw(&self, canvas: &mut Canvas, light: &Light, dice: &mut Dice) -> Crown {
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
