//! Bark as tiles: relief and colour of one square metre or so, made once, looked up by all stems.

use std::sync::OnceLock;

use super::canvas::{Tint, mix, times, tint};
use super::noise::{cell, cloud, fine, ramp, speck};

/// Edge of a tile in texels; a power of two.
const TILE: usize = 512;

/// How a bark looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BarkKind {
    /// Long ridges with deep furrows between: oak, ash, locust.
    Furrowed,
    /// Flaking plates, rust in the young ones: pine.
    Plated,
    /// Smooth and grey with faint bands: beech, maple when young.
    Smooth,
    /// Pale with dark cross marks: birch.
    Pale,
    /// No bark any more: silvered wood with fine checks.
    Bare,
}

/// One point of a bark.
#[derive(Clone, Copy, Default)]
pub struct BarkPoint {
    pub colour: Tint,
    /// Slope of the relief across and along.
    pub across: f32,
    pub along: f32,
    /// 0 in the bottom of a furrow, 1 on a ridge.
    pub height: f32,
}

impl BarkKind {
    /// The point at `u` across and `v` along; both repeat at whole numbers.
    pub fn at(self, u: f32, v: f32) -> BarkPoint {
        static TILES: [OnceLock<Vec<BarkPoint>>; 5] = [const { OnceLock::new() }; 5];
        let tile = TILES[self as usize].get_or_init(|| make(self));
        look_up(tile, u, v)
    }
}

fn look_up(tile: &[BarkPoint], u: f32, v: f32) -> BarkPoint {
    let ((left, fx), (top, fy)) = (cell(u * TILE as f32), cell(v * TILE as f32));
    let mask = TILE as i32 - 1;
    let (x0, y0) = (left & mask, top & mask);
    let (x1, y1) = ((x0 + 1) & mask, (y0 + 1) & mask);
    let at = |x: i32, y: i32| &tile[y as usize * TILE + x as usize];
    let (a, b, c, d) = (at(x0, y0), at(x1, y0), at(x0, y1), at(x1, y1));
    let shares = [
        (1.0 - fx) * (1.0 - fy),
        fx * (1.0 - fy),
        (1.0 - fx) * fy,
        fx * fy,
    ];
    let blend = |f: fn(&BarkPoint) -> f32| {
        f(a) * shares[0] + f(b) * shares[1] + f(c) * shares[2] + f(d) * shares[3]
    };
    BarkPoint {
        colour: [
            blend(|p| p.colour[0]),
            blend(|p| p.colour[1]),
            blend(|p| p.colour[2]),
        ],
        across: blend(|p| p.across),
        along: blend(|p| p.along),
        height: blend(|p| p.height),
    }
}

fn make(kind: BarkKind) -> Vec<BarkPoint> {
    let heights: Vec<f32> = places().map(|(u, v)| height(kind, u, v)).collect();
    let at = |x: usize, y: usize| heights[(y % TILE) * TILE + x % TILE];
    places()
        .enumerate()
        .map(|(index, (u, v))| {
            let (x, y) = (index % TILE, index / TILE);
            BarkPoint {
                colour: colour(kind, u, v, heights[index]),
                across: (at(x + 1, y) - at(x + TILE - 1, y)) * 20.0,
                along: (at(x, y + 1) - at(x, y + TILE - 1)) * 20.0,
                height: heights[index],
            }
        })
        .collect()
}

fn places() -> impl Iterator<Item = (f32, f32)> {
    (0..TILE * TILE).map(|i| {
        let (x, y) = (i % TILE, i / TILE);
        (x as f32 / TILE as f32, y as f32 / TILE as f32)
    })
}

/// Distance to the seam between two cells of a jittered lattice, in cells; wraps at the tile.
fn seam(u: f32, v: f32, across: i32, along: i32, seed: u32) -> (f32, f32) {
    let (x, y) = (u * across as f32, v * along as f32);
    let (cx, cy) = (x.floor() as i32, y.floor() as i32);
    let (mut nearest, mut second, mut mark) = (9.0_f32, 9.0_f32, 0.0);
    for j in -1..=1 {
        for i in -1..=1 {
            let (wx, wy) = ((cx + i).rem_euclid(across), (cy + j).rem_euclid(along));
            let (px, py) = (speck(wx, wy, seed), speck(wx, wy, seed + 1));
            let dx = (cx + i) as f32 + px - x;
            let dy = (cy + j) as f32 + py - y;
            let away = dx * dx + dy * dy;
            if away < nearest {
                second = nearest;
                nearest = away;
                mark = speck(wx, wy, seed + 2);
            } else if away < second {
                second = away;
            }
        }
    }
    (second.sqrt() - nearest.sqrt(), mark)
}

fn height(kind: BarkKind, u: f32, v: f32) -> f32 {
    let (bend_u, bend_v) = (cloud(u, v) - 0.5, cloud(u + 0.37, v + 0.71) - 0.5);
    let grain = cloud(u * 4.0, v);
    match kind {
        BarkKind::Furrowed => {
            let (ridge, _) = seam(u + bend_u * 0.16, v + bend_v * 0.2, 11, 3, 5);
            let (crack, _) = seam(u + bend_u * 0.05, v + bend_v * 0.1, 22, 14, 9);
            let ridge = ramp(-0.03, 0.5, ridge);
            ridge * (0.62 + 0.16 * ramp(0.0, 0.2, crack) + 0.22 * grain) + 0.10 * fine(u * 2.0, v)
        }
        BarkKind::Plated => {
            let (plate, mark) = seam(u + bend_u * 0.26, v + bend_v * 0.34, 9, 3, 21);
            let (flake, lift) = seam(u + bend_u * 0.3, v + bend_v * 0.3, 16, 15, 25);
            let plate = ramp(-0.06, 0.34, plate);
            let scale = 0.30 * lift * ramp(-0.02, 0.12, flake);
            plate * (0.46 + 0.12 * mark + scale + 0.16 * grain)
        }
        BarkKind::Smooth => {
            let bands = cloud(u * 0.5, v * 6.0 + bend_v * 0.4);
            0.6 + 0.10 * bands + 0.10 * cloud(u, v) + 0.05 * fine(u * 2.0, v * 2.0)
        }
        BarkKind::Pale => 0.75 - 0.35 * cross_marks(u, v) + 0.05 * cloud(u, v * 3.0),
        BarkKind::Bare => {
            let checks = cloud(u * 7.0 + bend_u * 0.3, v * 0.5 + 0.3);
            0.7 * ramp(0.16, 0.42, checks) + 0.2 * cloud(u * 8.0, v) + 0.1 * fine(u * 3.0, v * 0.5)
        }
    }
}

/// 1 inside a dark cross mark of pale bark.
fn cross_marks(u: f32, v: f32) -> f32 {
    let lines = cloud(u * 1.0 + 0.2, v * 9.0);
    let scars = cloud(u * 1.0, v * 2.0 + 0.5);
    (ramp(0.68, 0.80, lines) + ramp(0.74, 0.82, scars)).min(1.0)
}

fn colour(kind: BarkKind, u: f32, v: f32, height: f32) -> Tint {
    let patch = cloud(u * 1.0 + 0.61, v * 1.0 + 0.13);
    let shade = 0.78 + 0.44 * cloud(u * 3.0 + 0.11, v * 2.0);
    let base = match kind {
        BarkKind::Furrowed => mix(
            tint(62, 52, 43),
            mix(tint(136, 124, 108), tint(118, 110, 101), patch),
            ramp(0.08, 0.82, height),
        ),
        BarkKind::Plated => {
            let flaked = ramp(
                0.40,
                0.75,
                cloud(u * 2.0 + 0.3, v * 2.0 + 0.7) + 0.3 * (height - 0.6),
            );
            let plate = mix(tint(126, 112, 100), tint(150, 112, 88), flaked);
            mix(tint(66, 51, 42), plate, ramp(0.05, 0.66, height))
        }
        BarkKind::Smooth => mix(tint(112, 108, 99), tint(152, 149, 139), patch),
        BarkKind::Pale => mix(
            mix(tint(222, 216, 204), tint(196, 186, 170), patch),
            tint(44, 39, 36),
            cross_marks(u, v),
        ),
        BarkKind::Bare => mix(
            tint(92, 82, 70),
            tint(178, 168, 152),
            ramp(0.2, 0.8, height),
        ),
    };
    let lichen = match kind {
        BarkKind::Bare | BarkKind::Pale => 0.0,
        _ => ramp(0.60, 0.72, cloud(u + 0.8, v + 0.4)) * ramp(0.4, 0.7, fine(u, v)) * 0.55,
    };
    mix(times(base, shade), tint(158, 165, 138), lichen)
}
