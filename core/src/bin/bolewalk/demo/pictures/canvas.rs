//! A picture in linear light, and the pens that draw on it.

/// Red, green and blue in linear light; 1 is white paper in the sun.
pub type Tint = [f32; 3];

/// Width of the drawing in its own units, whatever the pixels.
pub const WIDE: f32 = 1200.0;
/// Height of the drawing in its own units.
pub const HIGH: f32 = 900.0;

/// A colour as people read it, 0 to 255, in linear light (gamma 2).
pub fn tint(red: u8, green: u8, blue: u8) -> Tint {
    [red, green, blue].map(|c| (f32::from(c) / 255.0) * (f32::from(c) / 255.0))
}

pub fn mix(a: Tint, b: Tint, part: f32) -> Tint {
    [0, 1, 2].map(|i| a[i] + (b[i] - a[i]) * part)
}

pub fn times(a: Tint, factor: f32) -> Tint {
    a.map(|c| c * factor)
}

/// Channel by channel.
pub fn through(a: Tint, b: Tint) -> Tint {
    [a[0] * b[0], a[1] * b[1], a[2] * b[2]]
}

/// The drawing: coordinates are 1200 × 900 units, x to the right, y down.
pub struct Canvas {
    pub(super) wide: usize,
    pub(super) high: usize,
    /// Pixels a unit.
    pub scale: f32,
    pub(super) pixels: Vec<Tint>,
}

impl Canvas {
    /// A black canvas, `wide` pixels across, three quarters as high.
    pub fn new(wide: u32) -> Self {
        let wide = wide.max(4) as usize;
        let high = wide * 3 / 4;
        Canvas {
            wide,
            high,
            scale: wide as f32 / WIDE,
            pixels: vec![[0.0; 3]; wide * high],
        }
    }

    /// Sets every pixel within rows `from` to `to` (units) by its place.
    pub fn rows(&mut self, from: f32, to: f32, shade: impl Fn(f32, f32) -> Tint) {
        let per = 1.0 / self.scale;
        let first = ((from * self.scale).max(0.0) as usize).min(self.high);
        let last = ((to * self.scale).ceil().max(0.0) as usize).min(self.high);
        for row in first..last {
            let y = (row as f32 + 0.5) * per;
            for (column, pixel) in self.pixels[row * self.wide..(row + 1) * self.wide]
                .iter_mut()
                .enumerate()
            {
                *pixel = shade((column as f32 + 0.5) * per, y);
            }
        }
    }

    /// Goes through the pixels of a box (units); `shade` gives colour and coverage, or nothing.
    pub fn within(
        &mut self,
        corners: [f32; 4],
        mut shade: impl FnMut(f32, f32) -> Option<(Tint, f32)>,
    ) {
        let per = 1.0 / self.scale;
        let [left, top, right, bottom] = corners.map(|c| c * self.scale);
        if right < 0.0 || bottom < 0.0 || left > self.wide as f32 || top > self.high as f32 {
            return;
        }
        let (x0, y0) = (left.max(0.0) as usize, top.max(0.0) as usize);
        let x1 = (right.ceil().max(0.0) as usize + 1).min(self.wide);
        let y1 = (bottom.ceil().max(0.0) as usize + 1).min(self.high);
        for row in y0..y1 {
            let y = (row as f32 + 0.5) * per;
            for column in x0..x1 {
                if let Some((colour, cover)) = shade((column as f32 + 0.5) * per, y) {
                    lay(&mut self.pixels[row * self.wide + column], colour, cover);
                }
            }
        }
    }

    /// A filled ellipse with axes `long` and `short` (units), its long axis along (`cos`, `sin`).
    pub fn spot(
        &mut self,
        x: f32,
        y: f32,
        axes: [f32; 2],
        along: [f32; 2],
        colour: Tint,
        cover: f32,
    ) {
        let [long, short] = axes.map(|a| (a * self.scale).max(0.3));
        let (x, y) = (x * self.scale, y * self.scale);
        let reach = long.max(short) + 0.7;
        let x0 = (x - reach).max(0.0) as usize;
        let x1 = ((x + reach).ceil().max(0.0) as usize).min(self.wide);
        let y0 = (y - reach).max(0.0) as usize;
        let y1 = ((y + reach).ceil().max(0.0) as usize).min(self.high);
        let [cos, sin] = along;
        let (per_long, per_short) = (1.0 / long, 1.0 / short);
        for row in y0..y1 {
            let dy = row as f32 + 0.5 - y;
            for column in x0..x1 {
                let dx = column as f32 + 0.5 - x;
                let (u, v) = (
                    (dx * cos + dy * sin) * per_long,
                    (dy * cos - dx * sin) * per_short,
                );
                let inside = 1.0 - (u * u + v * v);
                // About a pixel of soft edge on the short axis.
                let edge = (inside * short * 0.5 + 0.5).min(1.0);
                if edge > 0.0 {
                    lay(
                        &mut self.pixels[row * self.wide + column],
                        colour,
                        cover * edge,
                    );
                }
            }
        }
    }

    /// A straight stroke that tapers from width `from` to `to` (units).
    pub fn stroke(
        &mut self,
        start: [f32; 2],
        end: [f32; 2],
        width: [f32; 2],
        colour: Tint,
        cover: f32,
    ) {
        let scale = self.scale;
        let ([x0, y0], [x1, y1]) = (start, end);
        let (dx, dy) = (x1 - x0, y1 - y0);
        let length2 = (dx * dx + dy * dy).max(1e-6);
        let reach = width[0].max(width[1]) * 0.5 + 1.0 / scale;
        let corners = [
            x0.min(x1) - reach,
            y0.min(y1) - reach,
            x0.max(x1) + reach,
            y0.max(y1) + reach,
        ];
        self.within(corners, |x, y| {
            let t = (((x - x0) * dx + (y - y0) * dy) / length2).clamp(0.0, 1.0);
            let (ox, oy) = (x - x0 - dx * t, y - y0 - dy * t);
            let away = (ox * ox + oy * oy).sqrt();
            let half = (width[0] + (width[1] - width[0]) * t) * 0.5;
            // A thread thinner than a pixel pales instead of breaking up.
            let wide = (half * 2.0 * scale).min(1.0);
            let edge = ((half - away) * scale + 0.5).clamp(0.0, 1.0).min(1.0) * wide.max(0.25);
            (edge > 0.0).then_some((colour, edge * cover))
        });
    }

    /// A filled polygon (units), each pixel by its place; edges are smoothed across.
    pub fn polygon(&mut self, points: &[[f32; 2]], shade: impl Fn(f32, f32) -> Tint) {
        let per = 1.0 / self.scale;
        let low = points.iter().map(|p| p[1]).fold(f32::MAX, f32::min) * self.scale;
        let high = points.iter().map(|p| p[1]).fold(f32::MIN, f32::max) * self.scale;
        let first = low.max(0.0) as usize;
        let last = (high.ceil().max(0.0) as usize).min(self.high);
        let mut cuts: Vec<f32> = Vec::new();
        for row in first..last {
            let y = (row as f32 + 0.5) * per;
            cuts.clear();
            for (index, from) in points.iter().enumerate() {
                let to = points[(index + 1) % points.len()];
                if (from[1] <= y) != (to[1] <= y) {
                    let t = (y - from[1]) / (to[1] - from[1]);
                    cuts.push((from[0] + (to[0] - from[0]) * t) * self.scale);
                }
            }
            cuts.sort_by(f32::total_cmp);
            for pair in cuts.chunks_exact(2) {
                let (left, right) = (pair[0].max(0.0), pair[1].min(self.wide as f32));
                let mut column = left as usize;
                while (column as f32) < right {
                    let cover = (right.min(column as f32 + 1.0) - left.max(column as f32)).max(0.0);
                    let colour = shade((column as f32 + 0.5) * per, y);
                    lay(&mut self.pixels[row * self.wide + column], colour, cover);
                    column += 1;
                }
            }
        }
    }

    /// Fills the canvas from a drawing made `coarse` times smaller: what lies behind the sharp
    /// plane needs no more, and comes out soft by itself.
    pub fn backdrop(&mut self, coarse: usize, draw: impl FnOnce(&mut Canvas)) {
        let mut small = Canvas::new((self.wide / coarse) as u32);
        draw(&mut small);
        let (across, down) = (
            small.wide as f32 / self.wide as f32,
            small.high as f32 / self.high as f32,
        );
        let place = |i: usize, per: f32, count: usize| {
            let at = ((i as f32 + 0.5) * per - 0.5).clamp(0.0, count as f32 - 1.001);
            (at as usize, at - at.floor())
        };
        let columns: Vec<(usize, f32)> = (0..self.wide)
            .map(|i| place(i, across, small.wide))
            .collect();
        for (row, line) in self.pixels.chunks_exact_mut(self.wide).enumerate() {
            let (top, fy) = place(row, down, small.high);
            let upper = &small.pixels[top * small.wide..(top + 1) * small.wide];
            let lower = &small.pixels[(top + 1) * small.wide..(top + 2) * small.wide];
            for (pixel, &(left, fx)) in line.iter_mut().zip(&columns) {
                let above = mix(upper[left], upper[left + 1], fx);
                let below = mix(lower[left], lower[left + 1], fx);
                *pixel = mix(above, below, fy);
            }
        }
    }
}

fn lay(pixel: &mut Tint, colour: Tint, cover: f32) {
    for (under, over) in pixel.iter_mut().zip(colour) {
        *under += (over - *under) * cover;
    }
}
