//! A small square drawing in the making, in shares of its half side: x from -1 to 1, y from 0 to 2.

use super::super::drawing::{Drawing, DrawnExtent, DrawnMark, Spot, StyleRole};

/// A place in shares of half the square's side.
pub type At = (f64, f64);

/// Points of the reader on a side.
const SIDE_PT: f64 = 72.0;

/// A small square drawing in the making.
pub struct Sketch {
    /// Half its side in metres.
    half_m: f64,
    marks: Vec<DrawnMark>,
}

impl Sketch {
    /// An empty square of `side_m`.
    pub fn new(side_m: f64) -> Self {
        Sketch {
            half_m: side_m / 2.0,
            marks: Vec::new(),
        }
    }

    fn spots(&self, places: &[At]) -> Vec<Spot> {
        let spot = |&(x, y): &At| Spot::new(x * self.half_m, y * self.half_m);
        places.iter().map(spot).collect()
    }

    pub fn area(&mut self, role: StyleRole, ring: &[At]) {
        self.marks.push(DrawnMark::Polygon {
            rings: vec![self.spots(ring)],
            role,
            about: String::new(),
        });
    }

    pub fn line(&mut self, role: StyleRole, places: &[At]) {
        self.marks.push(DrawnMark::Polyline {
            spots: self.spots(places),
            role,
            about: String::new(),
        });
    }

    /// The edge of a ring.
    pub fn edge(&mut self, role: StyleRole, ring: &[At]) {
        let closed: Vec<At> = ring.iter().chain(ring.first()).copied().collect();
        self.line(role, &closed);
    }

    pub fn disc(&mut self, role: StyleRole, (x, y): At, radius: f64) {
        self.marks.push(DrawnMark::Circle {
            centre: Spot::new(x * self.half_m, y * self.half_m),
            radius_m: radius * self.half_m,
            role,
            about: String::new(),
        });
    }

    /// A straight limb or root: an area from one place to another, each with its thickness.
    pub fn bough(&mut self, role: StyleRole, from: At, thick_from: f64, to: At, thick_to: f64) {
        let (dx, dy) = (to.0 - from.0, to.1 - from.1);
        let long = libm::hypot(dx, dy).max(1e-6);
        let (nx, ny) = (dy / long / 2.0, -dx / long / 2.0);
        let side = |(x, y): At, thick: f64| (x + nx * thick, y + ny * thick);
        self.area(
            role,
            &[
                side(from, thick_from),
                side(to, thick_to),
                side(to, -thick_to),
                side(from, -thick_from),
            ],
        );
    }

    /// The finished drawing.
    pub fn finish(self, described: &str) -> Drawing {
        Drawing {
            described: described.to_owned(),
            extent: DrawnExtent {
                left_m: -self.half_m,
                bottom_m: 0.0,
                right_m: self.half_m,
                top_m: 2.0 * self.half_m,
            },
            scale: 2.0 * self.half_m / (SIDE_PT * 0.0254 / 72.0),
            marks: self.marks,
            legend: Vec::new(),
            symbols: Vec::new(),
        }
    }
}

/// Places around a middle, wide and high by the halves given.
pub fn oval((x, y): At, half_wide: f64, half_high: f64) -> Vec<At> {
    const SPOTS: u32 = 24;
    (0..SPOTS)
        .map(|step| {
            let turn = std::f64::consts::TAU * f64::from(step) / f64::from(SPOTS);
            (
                x + half_wide * libm::cos(turn),
                y + half_high * libm::sin(turn),
            )
        })
        .collect()
}
