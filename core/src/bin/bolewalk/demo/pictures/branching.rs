//! Grows the branches of a tree in depth, level by level.

use super::canvas::Canvas;
use super::limb::{Knot, Light, Skin, limb};
use super::noise::Dice;

/// How a tree branches.
#[derive(Clone, Copy)]
pub struct Habit {
    /// Forks from stem to twig.
    pub levels: u32,
    /// Typical angle between mother and daughter, in radians.
    pub spread: f32,
    /// Length of a daughter as a part of the mother's.
    pub shrink: f32,
    /// Pull toward the light, 0 to 1; below 0 the twigs weep.
    pub upward: f32,
    /// How crooked, 0 to 1.
    pub crooked: f32,
}

/// A piece of branch in depth; z toward the camera.
#[derive(Clone, Copy)]
pub struct Branch {
    pub from: [f32; 3],
    pub to: [f32; 3],
    pub radius: [f32; 2],
    pub level: u32,
}

/// A branch about to grow: where, which way, how long and thick.
#[derive(Clone, Copy)]
pub struct Shoot {
    pub at: [f32; 3],
    pub toward: [f32; 3],
    pub length: f32,
    pub radius: f32,
    pub level: u32,
}

/// All branches that grow from a shoot, mother before daughter.
pub fn grow(shoot: Shoot, habit: &Habit, dice: &mut Dice) -> Vec<Branch> {
    let mut grown = Vec::new();
    extend(shoot, habit, dice, &mut grown);
    grown
}

fn extend(shoot: Shoot, habit: &Habit, dice: &mut Dice, grown: &mut Vec<Branch>) {
    let pieces = if shoot.level < 2 { 5 } else { 3 };
    let (mut at, mut toward) = (shoot.at, unit(shoot.toward));
    let end_radius = shoot.radius * 0.72;
    for piece in 0..pieces {
        let part = |p: i32| p as f32 / pieces as f32;
        let to = [0, 1, 2].map(|i| at[i] + toward[i] * shoot.length / pieces as f32);
        let radius = |p: i32| shoot.radius + (end_radius - shoot.radius) * part(p);
        grown.push(Branch {
            from: at,
            to,
            radius: [radius(piece), radius(piece + 1)],
            level: shoot.level,
        });
        at = to;
        let wobble = habit.crooked * 0.35;
        toward = unit([
            toward[0] + dice.bell() * wobble * 0.5,
            toward[1] + dice.bell() * wobble * 0.35 - habit.upward * 0.07,
            toward[2] + dice.bell() * wobble * 0.5,
        ]);
        // Side shoots along the way keep the crown from being hollow.
        if shoot.level > 0 && piece + 1 < pieces && shoot.level < habit.levels && dice.chance(0.55)
        {
            let side = Shoot {
                at,
                toward: aside(toward, habit.spread * 1.25, dice),
                length: shoot.length * habit.shrink * dice.between(0.45, 0.8),
                radius: radius(piece) * 0.45,
                level: (shoot.level + 2).min(habit.levels),
            };
            extend(side, habit, dice, grown);
        }
    }
    if shoot.level >= habit.levels {
        return;
    }
    let daughters = if dice.chance(0.45) { 3 } else { 2 };
    for number in 0..daughters {
        let leader = if number == 0 { 0.45 } else { 1.0 };
        let daughter = Shoot {
            at,
            toward: aside(
                toward,
                habit.spread * leader * dice.between(0.7, 1.25),
                dice,
            ),
            length: shoot.length * habit.shrink * dice.between(0.78, 1.12),
            radius: end_radius * if number == 0 { 0.84 } else { 0.62 },
            level: shoot.level + 1,
        };
        extend(daughter, habit, dice, grown);
    }
}

/// A direction at `angle` from `toward`, to any side.
fn aside(toward: [f32; 3], angle: f32, dice: &mut Dice) -> [f32; 3] {
    let any = unit([dice.bell(), dice.bell() * 0.7, dice.bell()]);
    let along = any[0] * toward[0] + any[1] * toward[1] + any[2] * toward[2];
    let side = unit([0, 1, 2].map(|i| any[i] - toward[i] * along));
    let (sin, cos) = libm::sincosf(angle);
    unit([0, 1, 2].map(|i| toward[i] * cos + side[i] * sin))
}

pub fn unit(v: [f32; 3]) -> [f32; 3] {
    let length = (v[0] * v[0] + v[1] * v[1] + v[2] * v[2]).sqrt().max(1e-6);
    v.map(|c| c / length)
}

/// Draws branches from the far side to the near one.
pub fn draw(canvas: &mut Canvas, branches: &[Branch], skin: &Skin, light: &Light) {
    let mut order: Vec<&Branch> = branches.iter().collect();
    order.sort_by(|a, b| a.to[2].total_cmp(&b.to[2]));
    for branch in order {
        let knots = [0, 1].map(|i| {
            let place = if i == 0 { branch.from } else { branch.to };
            Knot {
                x: place[0],
                y: place[1],
                radius: branch.radius[i].max(0.35),
            }
        });
        if branch.radius[0] < 1.1 {
            let mut colour = skin
                .bark
                .at(branch.from[0] * 0.01, branch.from[1] * 0.01)
                .colour;
            let lit = light.on([0.0, -0.3, 0.6], knots[0].x, knots[0].y);
            (0..3).for_each(|i| colour[i] *= lit[i] * 0.7 * skin.cast[i]);
            let ends = knots.map(|k| [k.x, k.y]);
            let widths = knots.map(|k| k.radius * 2.0);
            canvas.stroke(ends[0], ends[1], widths, colour, 1.0);
        } else {
            limb(canvas, &knots, skin, light);
        }
    }
}

/// Where leaves hang: the ends of the finest branches.
pub fn tips(branches: &[Branch], from_level: u32) -> Vec<[f32; 3]> {
    branches
        .iter()
        .filter(|branch| branch.level >= from_level)
        .map(|branch| branch.to)
        .collect()
}
