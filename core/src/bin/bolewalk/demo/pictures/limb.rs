//! Round wood in light: limbs along a bent line, and upright stems row by row.

use super::bark::BarkKind;
use super::canvas::{Canvas, Tint, mix, through, times, tint};
use super::noise::{Dice, cloud, ramp};

/// Sun and sky.
#[derive(Clone, Copy)]
pub struct Light {
    /// Direction toward the sun: x right, y down, z toward the camera; length 1.
    pub sun: [f32; 3],
    /// Colour and strength of the sun.
    pub warm: Tint,
    /// Colour and strength of the open sky.
    pub cool: Tint,
    /// How much of the sun leaves above take away, 0 to 1.
    pub dapple: f32,
    /// Shifts the pattern of dapples.
    pub shift: f32,
}

impl Light {
    /// Sun over the left (`side` −1) or right (+1) shoulder.
    pub fn over_shoulder(side: f32, dapple: f32, shift: f32) -> Self {
        Light {
            sun: [0.58 * side, -0.55, 0.60],
            warm: [1.18, 1.06, 0.86],
            cool: [0.34, 0.38, 0.44],
            dapple,
            shift,
        }
    }

    /// Even light under cloud.
    pub fn overcast(shift: f32) -> Self {
        Light {
            sun: [-0.2, -0.85, 0.48],
            warm: [0.40, 0.41, 0.42],
            cool: [0.52, 0.54, 0.57],
            dapple: 0.0,
            shift,
        }
    }

    /// Light on a surface with normal `n` at a place of the picture.
    pub fn on(&self, n: [f32; 3], x: f32, y: f32) -> Tint {
        let facing = n[0] * self.sun[0] + n[1] * self.sun[1] + n[2] * self.sun[2];
        let sun = facing.max(0.0) * self.through_leaves(x, y);
        // The sky comes from above, some light back from the grass.
        let open = 0.72 - 0.28 * n[1];
        [0, 1, 2].map(|i| self.warm[i] * sun + self.cool[i] * open)
    }

    /// Part of the sun that comes through the leaves at a place.
    pub fn through_leaves(&self, x: f32, y: f32) -> f32 {
        if self.dapple <= 0.0 {
            return 1.0;
        }
        let leaves = cloud(x / 700.0 + self.shift, y / 700.0 - self.shift * 0.7);
        1.0 - self.dapple * ramp(0.60, 0.46, leaves)
    }
}

/// What a stem's skin is made of and how large its bark shows.
#[derive(Clone, Copy)]
pub struct Skin {
    pub bark: BarkKind,
    /// Units that one bark tile covers along the stem.
    pub tile: f32,
    /// How strongly the relief shows, about 1.
    pub relief: f32,
    /// Tints the bark.
    pub cast: Tint,
    /// Shifts the bark, so that no two stems are alike.
    pub shift: [f32; 2],
    /// Green of algae and moss on the shaded side and low down, 0 to 1.
    pub moss: f32,
}

impl Skin {
    pub fn of(bark: BarkKind, tile: f32) -> Self {
        Skin {
            bark,
            tile,
            relief: 1.0,
            cast: [1.0; 3],
            shift: [0.0; 2],
            moss: 0.25,
        }
    }

    /// The same bark at another place and in another tone.
    pub fn varied(mut self, dice: &mut Dice) -> Self {
        self.shift = [dice.part(), dice.part()];
        let (bright, warm) = (dice.between(0.86, 1.14), dice.between(-0.06, 0.06));
        self.cast = through(
            self.cast,
            [bright * (1.0 + warm), bright, bright * (1.0 - warm)],
        );
        self
    }

    /// Colour and relief at `around` (radians from the middle of the visible side, times radius)
    /// and `along`, both in units.
    fn point(&self, around: f32, along: f32) -> super::bark::BarkPoint {
        let mut point = self.bark.at(
            around / self.tile + self.shift[0],
            along / self.tile + self.shift[1],
        );
        point.colour = through(point.colour, self.cast);
        point
    }
}

/// A place on a limb's middle line with the radius there, in units.
#[derive(Clone, Copy)]
pub struct Knot {
    pub x: f32,
    pub y: f32,
    pub radius: f32,
}

/// A bend through `knots`, finely divided.
pub fn bent(knots: &[Knot]) -> Vec<Knot> {
    let last = knots.len() - 1;
    let mut line = Vec::new();
    for i in 0..last {
        let (a, b) = (knots[i.saturating_sub(1)], knots[i]);
        let (c, d) = (knots[i + 1], knots[(i + 2).min(last)]);
        let reach = ((c.x - b.x).abs() + (c.y - b.y).abs()).max(1.0);
        let steps = (reach / (b.radius * 0.6 + 6.0)).ceil().clamp(2.0, 24.0) as usize;
        for step in 0..steps {
            let t = step as f32 / steps as f32;
            let curve = |p: f32, q: f32, r: f32, s: f32| {
                0.5 * (2.0 * q
                    + (r - p) * t
                    + (2.0 * p - 5.0 * q + 4.0 * r - s) * t * t
                    + (3.0 * q - p - 3.0 * r + s) * t * t * t)
            };
            line.push(Knot {
                x: curve(a.x, b.x, c.x, d.x),
                y: curve(a.y, b.y, c.y, d.y),
                radius: (b.radius + (c.radius - b.radius) * t).max(0.4),
            });
        }
    }
    line.push(knots[last]);
    line
}

/// Draws a limb along `knots`.
pub fn limb(canvas: &mut Canvas, knots: &[Knot], skin: &Skin, light: &Light) {
    let mut along = knots[0].x * 0.37 + knots[0].y * 0.11;
    for (number, pair) in knots.windows(2).enumerate() {
        piece(canvas, [pair[0], pair[1]], along, number == 0, skin, light);
        let (dx, dy) = (pair[1].x - pair[0].x, pair[1].y - pair[0].y);
        along += (dx * dx + dy * dy).sqrt();
    }
}

/// A straight piece with a round far end; only the `first` has a round near end too, since the
/// others would lay theirs over the bark before them.
fn piece(
    canvas: &mut Canvas,
    [a, b]: [Knot; 2],
    along: f32,
    first: bool,
    skin: &Skin,
    light: &Light,
) {
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let length = (dx * dx + dy * dy).sqrt().max(0.01);
    let (ux, uy) = (dx / length, dy / length);
    let scale = canvas.scale;
    let reach = a.radius.max(b.radius) + 1.0 / scale;
    let corners = [
        a.x.min(b.x) - reach,
        a.y.min(b.y) - reach,
        a.x.max(b.x) + reach,
        a.y.max(b.y) + reach,
    ];
    canvas.within(corners, |x, y| {
        let (px, py) = (x - a.x, y - a.y);
        let reached = px * ux + py * uy;
        if !first && reached < -0.7 {
            return None;
        }
        let t = (reached / length).clamp(0.0, 1.0);
        let radius = a.radius + (b.radius - a.radius) * t;
        let across = py * ux - px * uy;
        let (ox, oy) = (px - ux * length * t, py - uy * length * t);
        let away2 = ox * ox + oy * oy;
        if away2 > (radius + 1.0 / scale) * (radius + 1.0 / scale) {
            return None;
        }
        let cover = ((radius - away2.sqrt()) * scale + 0.5).clamp(0.0, 1.0);
        let u = (across / radius).clamp(-0.999, 0.999);
        let point = skin.point(around(u) * radius, along + reached);
        let thick = (radius * scale / 6.0).min(1.0) * skin.relief;
        let n = [
            -uy * u - point.across * 0.12 * thick * uy,
            ux * u + point.across * 0.12 * thick * ux,
            (1.0 - u * u).sqrt(),
        ];
        let edge = 1.0 - 0.45 * u * u * u * u;
        let lit = light.on(n, x, y);
        Some((times(through(point.colour, lit), edge), cover))
    });
}

/// Angle on a round stem at `u` of its half width (arc sine, close enough), so that bark crowds
/// toward the edges as it does on a photograph.
pub fn around(u: f32) -> f32 {
    let u2 = u * u;
    u * (1.0 + u2 * (0.1667 + u2 * (0.075 + u2 * 0.16)))
}

/// A pixel of a stem before it is lit, for marks to change.
pub struct Surface {
    pub colour: Tint,
    /// Normal; z toward the camera.
    pub n: [f32; 3],
    /// 1 open, 0 no light.
    pub open: f32,
    /// 1 where the stem is, 0 where the ground hides it.
    pub there: f32,
}

/// An upright stem by rows: `shape(y)` gives middle and radius in units; `mark` changes the
/// surface at (x, y, u) where u runs from −1 to 1 across.
pub fn stem(
    canvas: &mut Canvas,
    rows: [f32; 2],
    skin: &Skin,
    light: &Light,
    shape: impl Fn(f32) -> [f32; 2],
    mark: impl Fn(f32, f32, f32, &mut Surface),
) {
    let scale = canvas.scale;
    let mut row = (f32::MIN, [0.0; 2], 0.0);
    canvas.within([-10.0, rows[0], 1210.0, rows[1]], |x, y| {
        if y < rows[0] || y > rows[1] {
            return None;
        }
        if row.0 != y {
            let [above, here] = [shape(y - 4.0), shape(y + 4.0)];
            row = (y, shape(y), (here[1] - above[1]) / 8.0);
        }
        let ([middle, radius], flare) = (row.1, row.2);
        let ragged =
            3.0 * skin.relief * (cloud(y / 190.0, middle * 0.01) - 0.5) * (radius / 60.0).min(2.0);
        let off = x - middle;
        let cover = ((radius + ragged - off.abs()) * scale + 0.5).clamp(0.0, 1.0);
        if cover <= 0.0 {
            return None;
        }
        let u = (off / radius).clamp(-0.999, 0.999);
        let point = skin.point(around(u) * radius, y);
        let moss = skin.moss
            * ramp(0.45, 0.75, cloud(off / 330.0 + 0.3, y / 420.0))
            * ramp(0.8, -0.6, u * light.sun[0]);
        let mut surface = Surface {
            colour: mix(point.colour, tint(96, 108, 62), moss),
            n: [
                u - point.across * 0.20 * skin.relief,
                -flare * 0.6 - point.along * 0.14 * skin.relief,
                (1.0 - u * u).sqrt() + 0.05,
            ],
            open: (1.0 - 0.5 * u * u * u * u) * (0.45 + 0.55 * ramp(0.0, 0.6, point.height)),
            there: 1.0,
        };
        mark(x, y, u, &mut surface);
        let lit = light.on(surface.n, x, y);
        Some((
            times(through(surface.colour, lit), surface.open),
            cover * surface.there,
        ))
    });
}
