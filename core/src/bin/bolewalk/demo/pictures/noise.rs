//! Cheap noise: a small generator, and one tile of cloudy noise that all pictures look up.

use std::sync::OnceLock;

/// Edge of the noise tile in texels; a power of two.
const TILE: usize = 512;

/// A splitmix generator: the same seed gives the same picture on every machine.
#[derive(Clone)]
pub struct Dice(u64);

impl Dice {
    pub fn new(seed: u64) -> Self {
        // Scattered first: neighbouring seeds must not share a stretch of one stream.
        let mut z = seed.wrapping_add(0x1234_5678_9abc_def1);
        z = (z ^ (z >> 32)).wrapping_mul(0xd6e8_feb8_6659_fd93);
        z = (z ^ (z >> 32)).wrapping_mul(0xd6e8_feb8_6659_fd93);
        Dice(z ^ (z >> 32))
    }

    /// 0 to under 1.
    pub fn part(&mut self) -> f32 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 40) as f32 / (1_u64 << 24) as f32
    }

    /// Between two bounds.
    pub fn between(&mut self, low: f32, high: f32) -> f32 {
        low + (high - low) * self.part()
    }

    /// Roughly normal with standard deviation 1, never beyond ±3.
    pub fn bell(&mut self) -> f32 {
        (self.part() + self.part() + self.part() - 1.5) * 2.0
    }

    /// True with a chance of `part`.
    pub fn chance(&mut self, part: f32) -> bool {
        self.part() < part
    }
}

/// White noise in 0 to 1 at a lattice point.
pub fn speck(x: i32, y: i32, seed: u32) -> f32 {
    let mut h = (x as u32).wrapping_mul(0x8da6_b343)
        ^ (y as u32).wrapping_mul(0xd816_3841)
        ^ seed.wrapping_mul(0xcb1a_b31f);
    h = (h ^ (h >> 15)).wrapping_mul(0x2c1b_3c6d);
    h = (h ^ (h >> 12)).wrapping_mul(0x297a_2d39);
    ((h ^ (h >> 15)) >> 8) as f32 / (1_u32 << 24) as f32
}

/// A sensor's noise, −0.5 to 0.5, for `wide` neighbours in `row`; at most 4096.
pub fn grain(row: usize, seed: u64, wide: usize) -> &'static [f32] {
    const LONG: usize = 1 << 14;
    static GRAIN: OnceLock<Vec<f32>> = OnceLock::new();
    let all = GRAIN.get_or_init(|| {
        let mut dice = Dice::new(977);
        (0..LONG + 4096).map(|_| dice.part() - 0.5).collect()
    });
    // Rows start far apart, so that the eye finds no repetition.
    let start = (row.wrapping_mul(7919) ^ (seed as usize).wrapping_mul(104_729)) % LONG;
    &all[start..start + wide.min(4096)]
}

/// Cloudy noise (six octaves) in about 0 to 1, mean 0.5; repeats at every whole number.
pub fn cloud(x: f32, y: f32) -> f32 {
    static CLOUD: OnceLock<Vec<f32>> = OnceLock::new();
    look_up(CLOUD.get_or_init(|| octaves(6, 4)), x, y)
}

/// Fine noise (two octaves) in about 0 to 1; repeats at every whole number.
pub fn fine(x: f32, y: f32) -> f32 {
    static FINE: OnceLock<Vec<f32>> = OnceLock::new();
    look_up(FINE.get_or_init(|| octaves(2, 64)), x, y)
}

fn look_up(tile: &[f32], x: f32, y: f32) -> f32 {
    let ((left, fx), (top, fy)) = (cell(x * TILE as f32), cell(y * TILE as f32));
    let mask = TILE as i32 - 1;
    let (x0, y0) = (left & mask, top & mask);
    let (x1, y1) = ((x0 + 1) & mask, (y0 + 1) & mask);
    let at = |x: i32, y: i32| tile[y as usize * TILE + x as usize];
    let upper = at(x0, y0) + (at(x1, y0) - at(x0, y0)) * fx;
    let lower = at(x0, y1) + (at(x1, y1) - at(x0, y1)) * fx;
    upper + (lower - upper) * fy
}

/// Whole part (rounded down) and the rest; the platform's own floor is a slow call.
pub fn cell(value: f32) -> (i32, f32) {
    let toward_zero = value as i32;
    let whole = toward_zero - i32::from(value < toward_zero as f32);
    (whole, value - whole as f32)
}

/// Value noise of `count` octaves, the coarsest with `coarsest` cells over the tile's edge.
fn octaves(count: u32, coarsest: i32) -> Vec<f32> {
    let mut tile = vec![0.0; TILE * TILE];
    let mut total = 0.0;
    for octave in 0..count {
        let cells = coarsest << octave;
        let weight = 1.0 / (1 << octave) as f32;
        total += weight;
        let step = TILE as i32 / cells;
        for (index, value) in tile.iter_mut().enumerate() {
            let (x, y) = ((index % TILE) as i32, (index / TILE) as i32);
            let (cx, cy) = (x / step, y / step);
            let fx = smooth((x % step) as f32 / step as f32);
            let fy = smooth((y % step) as f32 / step as f32);
            let at = |cx: i32, cy: i32| speck(cx % cells, cy % cells, 71 + octave);
            let upper = at(cx, cy) + (at(cx + 1, cy) - at(cx, cy)) * fx;
            let lower = at(cx, cy + 1) + (at(cx + 1, cy + 1) - at(cx, cy + 1)) * fx;
            *value += weight * (upper + (lower - upper) * fy);
        }
    }
    // Spread out, since averaging octaves pulls toward the middle.
    for value in &mut tile {
        *value = (0.5 + (*value / total - 0.5) * 1.5).clamp(0.0, 1.0);
    }
    tile
}

fn smooth(t: f32) -> f32 {
    t * t * (3.0 - 2.0 * t)
}

/// 0 below `low`, 1 above `high`, smooth between; `low` may be the larger.
pub fn ramp(low: f32, high: f32, value: f32) -> f32 {
    smooth(((value - low) / (high - low)).clamp(0.0, 1.0))
}
