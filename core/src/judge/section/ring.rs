//! A ring of sound wood: outer rim, wall by bearing, one opening.
//!
//! The ring is cut into narrow sectors from the stem's centre. Bearings run clockwise from north;
//! x is east, y is north.

use super::run::{BearingLength, Run, bearings, direction, radians, signed_turn};

/// An opening: all wood of a sector is gone.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Opened {
    /// Bearing of its middle in degrees.
    pub middle_deg: f64,
    /// Its full angle in degrees, 0 to 360.
    pub width_deg: f64,
}

/// A ring of sound wood.
#[derive(Debug, Clone, PartialEq)]
pub struct Ring {
    /// Radius inside bark.
    pub outer: Run,
    /// Sound wall under the bark, along the radius; more than the radius counts as the radius.
    pub wall: Run,
    /// Radius of sound wood around the centre, for a pocket of decay to one side that does not
    /// reach the centre; readings from outside never show it.
    pub core: Option<Run>,
    /// An opening.
    pub opening: Option<Opened>,
}

/// A point of the rim in cm from the stem's centre.
#[derive(Debug, Clone, Copy)]
pub(super) struct RimPoint {
    pub(super) bearing_deg: f64,
    pub(super) east: f64,
    pub(super) north: f64,
}

impl Ring {
    /// A ring with the same wall everywhere.
    pub fn even(radius_cm: f64, wall_cm: f64) -> Ring {
        Ring {
            outer: Run::Even(radius_cm),
            wall: Run::Even(wall_cm),
            core: None,
            opening: None,
        }
    }

    /// A round hole of radius `hole_cm` whose centre lies `offset_cm` from the stem's toward
    /// `toward_deg`, as walls at `points` bearings.
    pub fn off_centre(
        radius_cm: f64,
        hole_cm: f64,
        offset_cm: f64,
        toward_deg: f64,
        points: u32,
    ) -> Ring {
        let holds_centre = offset_cm < hole_cm;
        let (mut walls, mut cores) = (Vec::new(), Vec::new());
        for bearing_deg in bearings(points) {
            let off = radians(bearing_deg - toward_deg);
            let across = offset_cm * libm::sin(off);
            let along = offset_cm * libm::cos(off);
            let square = hole_cm * hole_cm - across * across;
            // A pocket to one side is met only toward it.
            let met = holds_centre || (square > 0.0 && along > 0.0);
            let half = if met {
                libm::sqrt(square.max(0.0))
            } else {
                0.0
            };
            let length = |length_cm| BearingLength {
                bearing_deg,
                length_cm,
            };
            walls.push(length(if met {
                radius_cm - along - half
            } else {
                radius_cm
            }));
            cores.push(length(if met { along - half } else { 0.0 }));
        }
        Ring {
            outer: Run::Even(radius_cm),
            wall: Run::through(walls),
            core: (!holds_centre).then(|| Run::through(cores)),
            opening: None,
        }
    }

    /// The thinnest wall over the radius there, at `points` bearings; 0 where it is open.
    pub fn least_shell_ratio(&self, points: u32) -> f64 {
        if self.opening.is_some_and(|opening| opening.width_deg > 0.0) {
            return 0.0;
        }
        bearings(points)
            .map(|bearing| self.wall_at(bearing) / self.outer.at(bearing))
            .fold(f64::INFINITY, f64::min)
    }

    /// The diameter of a round hole of the same mean wall over the outer diameter: what the
    /// published formulas take.
    pub fn equivalent_hole(&self, points: u32) -> f64 {
        let count = f64::from(points.max(8));
        let (wall, outer) = bearings(points).fold((0.0, 0.0), |(wall, outer), bearing| {
            (wall + self.wall_at(bearing), outer + self.outer.at(bearing))
        });
        1.0 - (wall / count) / (outer / count)
    }

    pub(super) fn wall_at(&self, bearing_deg: f64) -> f64 {
        let outer = self.outer.at(bearing_deg);
        self.wall.at(bearing_deg).clamp(0.0, outer.max(0.0))
    }

    /// What the opening leaves of the sector around `bearing_deg`: at most two pieces.
    pub(super) fn pieces(&self, bearing_deg: f64, width_deg: f64) -> [Option<Piece>; 2] {
        let whole = Piece {
            from_deg: bearing_deg - width_deg / 2.0,
            to_deg: bearing_deg + width_deg / 2.0,
        };
        let Some(opening) = self.opening.filter(|opening| opening.width_deg > 0.0) else {
            return [Some(whole), None];
        };
        let half = opening.width_deg.min(360.0) / 2.0;
        // Measured from the opening's middle, so that it lies from −half to +half.
        let middle = signed_turn(bearing_deg - opening.middle_deg);
        let (from, to) = (middle - width_deg / 2.0, middle + width_deg / 2.0);
        let back = |piece_from: f64, piece_to: f64| {
            (piece_to - piece_from > 1e-12).then_some(Piece {
                from_deg: piece_from + opening.middle_deg,
                to_deg: piece_to + opening.middle_deg,
            })
        };
        // Of a sector across the far side only what lies beyond ±180 could meet the other lip.
        [
            back(from.max(half - 360.0), to.min(-half)),
            back(from.max(half), to.min(360.0 - half)),
        ]
    }

    pub(super) fn rim(&self, points: u32) -> Vec<RimPoint> {
        let open = self.opening.filter(|opening| opening.width_deg > 0.0);
        let mut rim = Vec::new();
        for bearing in bearings(points) {
            let gone = open.is_some_and(|opening| {
                signed_turn(bearing - opening.middle_deg).abs() < opening.width_deg / 2.0
            });
            if !gone && self.wall_at(bearing) > 0.0 {
                rim.push(rim_point(bearing, self.outer.at(bearing)));
            }
        }
        if let Some(opening) = open.filter(|opening| opening.width_deg < 360.0) {
            for side in [-0.5, 0.5] {
                let lip = opening.middle_deg + side * opening.width_deg;
                let outer = self.outer.at(lip);
                rim.push(rim_point(lip, outer));
                rim.push(rim_point(lip, outer - self.wall_at(lip)));
            }
        }
        rim
    }
}

/// Part of a sector that has wood.
pub(super) struct Piece {
    pub(super) from_deg: f64,
    pub(super) to_deg: f64,
}

fn rim_point(bearing_deg: f64, radius: f64) -> RimPoint {
    let (east, north) = direction(bearing_deg);
    RimPoint {
        bearing_deg,
        east: radius * east,
        north: radius * north,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_opening_is_the_same_wherever_it_points() {
        // Strength of materials: a section does not change when it is turned.
        let open = |middle_deg| {
            let mut ring = Ring::even(30.0, 9.0);
            ring.opening = Some(Opened {
                middle_deg,
                width_deg: 60.0,
            });
            ring.properties(72)
        };
        let north = open(0.0);
        for middle in [5.0, 90.0, 180.0, 270.0, 355.0] {
            let turned = open(middle);
            assert!((turned.modulus_left_pct - north.modulus_left_pct).abs() < 0.02);
            assert!((turned.area_cm2 - north.area_cm2).abs() < 1e-6);
        }
    }
}
