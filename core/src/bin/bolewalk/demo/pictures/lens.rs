//! What a lens and a sensor do to a picture.

use image::RgbImage;

use super::canvas::{Canvas, Tint};
use super::noise::grain;

impl Canvas {
    /// Softens the picture so far, as a lens does to what lies behind the sharp plane: boxes of
    /// `reach` units, twice in each direction.
    pub fn soften(&mut self, reach: f32) {
        let half = (reach * self.scale).round() as usize;
        if half == 0 {
            return;
        }
        for _ in 0..2 {
            box_rows(&mut self.pixels, self.wide, half);
            box_columns(&mut self.pixels, self.wide, half);
        }
    }

    /// Lens, sensor and developing: dark corners, grain, tone curve; `exposure` 1 is plain.
    pub fn develop(&self, exposure: f32, seed: u64) -> RgbImage {
        let mut out = vec![0_u8; self.pixels.len() * 3];
        let (mid_x, mid_y) = (self.wide as f32 / 2.0, self.high as f32 / 2.0);
        let reach2 = mid_x * mid_x + mid_y * mid_y;
        let line_at = |row: usize| &self.pixels[row * self.wide..(row + 1) * self.wide];
        for (row, bytes) in out.chunks_exact_mut(self.wide * 3).enumerate() {
            let lines = [
                line_at(row.saturating_sub(1)),
                line_at(row),
                line_at((row + 1).min(self.high - 1)),
            ];
            let dy = row as f32 - mid_y;
            let grains = grain(row, seed, self.wide);
            for ((column, bytes), grain) in bytes.chunks_exact_mut(3).enumerate().zip(grains) {
                let dx = column as f32 - mid_x;
                let light = exposure * (1.0 - 0.28 * (dx * dx + dy * dy) / reach2);
                let pixel = through_lens(lines, column);
                for (channel, byte) in pixel.into_iter().zip(bytes) {
                    *byte = toned(channel * light, *grain);
                }
            }
        }
        RgbImage::from_raw(self.wide as u32, self.high as u32, out).unwrap_or_default()
    }
}

/// A pixel with the little that a lens spreads into it from its four neighbours.
fn through_lens([above, line, below]: [&[Tint]; 3], column: usize) -> Tint {
    let left = line[column.saturating_sub(1)];
    let right = line[(column + 1).min(line.len() - 1)];
    let (here, over, under) = (line[column], above[column], below[column]);
    [0, 1, 2].map(|c| here[c] * 0.52 + (left[c] + right[c] + over[c] + under[c]) * 0.12)
}

/// Highlights roll off, shadows keep a little veil, the grain is strongest in the dark.
fn toned(light: f32, grain: f32) -> u8 {
    let x = light.max(0.0);
    let x = x * (1.0 + x * 0.35) / (1.0 + x * 0.75);
    let value = (x + 0.0012).sqrt().min(1.0);
    let contrast = value + 0.22 * (value * value * (3.0 - 2.0 * value) - value);
    let noisy = contrast + grain * (0.026 - 0.014 * value);
    (noisy * 255.0) as u8
}

fn box_rows(pixels: &mut [Tint], wide: usize, half: usize) {
    let mut line = vec![[0.0; 3]; wide];
    for row in pixels.chunks_exact_mut(wide) {
        line.copy_from_slice(row);
        let share = 1.0 / (2 * half + 1) as f32;
        let at = |i: isize| line[i.clamp(0, wide as isize - 1) as usize];
        let mut sum = [0.0_f32; 3];
        for i in -(half as isize)..=half as isize {
            let p = at(i);
            (0..3).for_each(|c| sum[c] += p[c]);
        }
        for (i, out) in row.iter_mut().enumerate() {
            *out = sum.map(|s| s * share);
            let (add, drop) = (at((i + half + 1) as isize), at(i as isize - half as isize));
            (0..3).for_each(|c| sum[c] += add[c] - drop[c]);
        }
    }
}

/// Down the columns, a whole row at a time so that memory is read in order.
fn box_columns(pixels: &mut [Tint], wide: usize, half: usize) {
    let high = pixels.len() / wide;
    let source = pixels.to_vec();
    let share = 1.0 / (2 * half + 1) as f32;
    let row_at = |i: isize| {
        let row = i.clamp(0, high as isize - 1) as usize;
        &source[row * wide..(row + 1) * wide]
    };
    let mut sums = vec![[0.0_f32; 3]; wide];
    for i in -(half as isize)..=half as isize {
        for (sum, p) in sums.iter_mut().zip(row_at(i)) {
            (0..3).for_each(|c| sum[c] += p[c]);
        }
    }
    for (i, row) in pixels.chunks_exact_mut(wide).enumerate() {
        let (add, drop) = (
            row_at((i + half + 1) as isize),
            row_at(i as isize - half as isize),
        );
        for ((out, sum), (add, drop)) in row.iter_mut().zip(&mut sums).zip(add.iter().zip(drop)) {
            *out = sum.map(|s| s * share);
            (0..3).for_each(|c| sum[c] += add[c] - drop[c]);
        }
    }
}
