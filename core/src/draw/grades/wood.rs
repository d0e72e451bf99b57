//! The wood that a defect is on: a straight piece, and what stands around it.

use super::super::drawing::StyleRole;
use super::sketch::{At, Sketch};

/// A straight piece of wood from one end to the other.
pub struct Wood {
    from: At,
    to: At,
    half_from: f64,
    half_to: f64,
}

/// How high the ground lies at the base.
pub const GROUND: f64 = 0.5;

impl Wood {
    pub const BASE: Wood = Wood {
        from: (0.0, GROUND),
        to: (0.0, 2.0),
        half_from: 0.42,
        half_to: 0.36,
    };
    pub const STEM: Wood = Wood {
        from: (0.0, 0.0),
        to: (0.0, 2.0),
        half_from: 0.46,
        half_to: 0.42,
    };
    pub const UNION: Wood = Wood {
        from: (0.0, 0.1),
        to: (0.0, 1.5),
        half_from: 0.36,
        half_to: 0.4,
    };
    const LIMB: Wood = Wood {
        from: (-0.7, 0.95),
        to: (1.0, 1.2),
        half_from: 0.34,
        half_to: 0.24,
    };

    /// The place `along` from one end (0) to the other (1) and `across` from one edge (-1) to the
    /// other (1): the right edge of a stem, the lower one of a limb.
    pub fn at(&self, along: f64, across: f64) -> At {
        let (dx, dy) = (self.to.0 - self.from.0, self.to.1 - self.from.1);
        let long = libm::hypot(dx, dy).max(1e-6);
        let half = self.half_from + (self.half_to - self.half_from) * along;
        let out = across * half / long;
        (
            self.from.0 + dx * along + dy * out,
            self.from.1 + dy * along - dx * out,
        )
    }

    /// The places of a ring given along and across.
    pub fn ring(&self, places: &[(f64, f64)]) -> Vec<At> {
        let placed = |&(along, across): &(f64, f64)| self.at(along, across);
        places.iter().map(placed).collect()
    }

    /// An oval on the wood, by half its length along and half its width across.
    pub fn oval(&self, (along, across): (f64, f64), half_long: f64, half_wide: f64) -> Vec<At> {
        self.ring(&super::sketch::oval((along, across), half_long, half_wide))
    }
}

pub fn base(sketch: &mut Sketch) -> Wood {
    roots(sketch);
    sketch.area(
        StyleRole::Stem,
        &[
            (-0.36, 2.1),
            (-0.4, 1.0),
            (-0.5, 0.68),
            (-0.8, GROUND),
            (0.8, GROUND),
            (0.5, 0.68),
            (0.4, 1.0),
            (0.36, 2.1),
        ],
    );
    sketch.line(StyleRole::Ground, &[(-1.0, GROUND), (1.0, GROUND)]);
    Wood::BASE
}

/// Sound roots under the ground.
fn roots(sketch: &mut Sketch) {
    for side in [-1.0, 1.0] {
        sketch.bough(
            StyleRole::Stem,
            (side * 0.5, GROUND),
            0.16,
            (side * 0.95, 0.3),
            0.06,
        );
    }
}

pub fn stem(sketch: &mut Sketch) -> Wood {
    let wood = Wood::STEM;
    sketch.area(StyleRole::Stem, &outline(&wood));
    wood
}

pub fn limb(sketch: &mut Sketch) -> Wood {
    sketch.area(
        StyleRole::Stem,
        &[(-1.1, -0.1), (-0.62, -0.1), (-0.66, 2.1), (-1.1, 2.1)],
    );
    let wood = Wood::LIMB;
    sketch.area(StyleRole::Stem, &outline(&wood));
    wood
}

/// A stem that forks at the middle of the square.
pub fn union(sketch: &mut Sketch) -> Wood {
    sketch.area(
        StyleRole::Stem,
        &[
            (-0.36, -0.1),
            (-0.42, 0.7),
            (-0.9, 2.1),
            (-0.42, 2.1),
            (0.0, 1.05),
            (0.42, 2.1),
            (0.9, 2.1),
            (0.42, 0.7),
            (0.36, -0.1),
        ],
    );
    Wood::UNION
}

/// The wood itself, a little beyond the square's edges.
fn outline(wood: &Wood) -> Vec<At> {
    wood.ring(&[(-0.05, -1.0), (1.05, -1.0), (1.05, 1.0), (-0.05, 1.0)])
}
