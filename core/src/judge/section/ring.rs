//! Exact properties of a ring of sound wood: outer rim, wall by bearing, one opening.
//!
//! The ring is cut into narrow sectors from the stem's centre and summed in closed form along the
//! radius (strength of materials, unsymmetrical bending). Bearings run clockwise from north; x is
//! east, y is north.

use core::f64::consts::PI;

use super::formulas::solid_modulus_cm3;

/// A length that runs around the stem: the same everywhere, or given at bearings and linear
/// between.
#[derive(Debug, Clone, PartialEq)]
pub enum Run {
    /// The same on every side, in centimetres.
    Even(f64),
    /// Given at bearings in degrees, in centimetres.
    AtBearings(Vec<BearingLength>),
}

/// A length at one bearing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BearingLength {
    /// Bearing from the stem's centre in degrees.
    pub bearing_deg: f64,
    /// Length in centimetres.
    pub length_cm: f64,
}

impl Run {
    /// The run through these points; sorted by bearing here. Without points it is 0 everywhere.
    pub fn through(mut points: Vec<BearingLength>) -> Run {
        for point in &mut points {
            point.bearing_deg = round_turn(point.bearing_deg);
        }
        points.sort_by(|a, b| a.bearing_deg.total_cmp(&b.bearing_deg));
        match points.as_slice() {
            [] => Run::Even(0.0),
            [only] => Run::Even(only.length_cm),
            _ => Run::AtBearings(points),
        }
    }

    /// The length at a bearing in degrees.
    pub fn at(&self, bearing_deg: f64) -> f64 {
        let points = match self {
            Run::Even(length) => return *length,
            Run::AtBearings(points) => points,
        };
        let bearing = round_turn(bearing_deg);
        let after = points.partition_point(|point| point.bearing_deg <= bearing);
        let before = after.checked_sub(1).and_then(|place| points.get(place));
        let (Some(left), Some(right)) = (
            before.or_else(|| points.last()),
            points.get(after).or_else(|| points.first()),
        ) else {
            return 0.0;
        };
        let span = round_turn(right.bearing_deg - left.bearing_deg);
        if span <= 0.0 {
            return left.length_cm.min(right.length_cm);
        }
        let share = round_turn(bearing - left.bearing_deg) / span;
        left.length_cm + (right.length_cm - left.length_cm) * share
    }
}

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

/// The properties of a ring about its own centroid.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RingProperties {
    /// Area of sound wood in cm².
    pub area_cm2: f64,
    /// East of the stem's centre to the centroid in cm.
    pub centroid_east_cm: f64,
    /// North of the stem's centre to the centroid in cm.
    pub centroid_north_cm: f64,
    /// Second moment for bending about the east-west line, ∫y² dA, in cm⁴.
    pub inertia_xx_cm4: f64,
    /// Second moment for bending about the north-south line, ∫x² dA, in cm⁴.
    pub inertia_yy_cm4: f64,
    /// Product of inertia ∫xy dA in cm⁴.
    pub inertia_xy_cm4: f64,
    /// Section modulus in the weakest direction in cm³.
    pub weakest_modulus_cm3: f64,
    /// Bearing of the rim point that is stressed most there, in degrees.
    pub weakest_point_deg: f64,
    /// Section modulus left in the weakest direction, in percent of the same stem when solid.
    pub modulus_left_pct: f64,
    /// The same by the steady measure (see [`Ring::properties`]): never more when wood is taken
    /// away anywhere, in percent of the same stem when solid.
    pub steady_left_pct: f64,
}

/// Sums over the wood of a ring, about the stem's centre.
#[derive(Debug, Clone, Copy, Default)]
struct Sums {
    area: f64,
    x: f64,
    y: f64,
    xx: f64,
    yy: f64,
    xy: f64,
}

/// A point of the rim in cm from the stem's centre.
#[derive(Debug, Clone, Copy)]
struct RimPoint {
    bearing_deg: f64,
    east: f64,
    north: f64,
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

    /// The properties, from `points` sectors and rim points (72 are enough for 0.1 points of a
    /// percent).
    ///
    /// Two measures of what is left: `modulus_left_pct` is elastic bending in the weakest direction
    /// as published tables have it. It can rise a little when wood is taken from the thick side,
    /// because the centroid moves. `steady_left_pct` puts the neutral line where it is least
    /// favourable, W = min over direction and line of ∫(y − y₀)² dA / (h − y₀); each term only falls
    /// when wood is lost, so the measure never rises (own derivation; within 2 points of the other
    /// for closed rings, lower for open ones).
    pub fn properties(&self, points: u32) -> RingProperties {
        let points = points.max(8);
        let sums = self.sums(points);
        let rim = self.rim(points);
        let solid = Ring {
            outer: self.outer.clone(),
            wall: self.outer.clone(),
            core: None,
            opening: None,
        };
        let (solid_sums, solid_rim) = (solid.sums(points), solid.rim(points));
        let (solid_modulus, _) = weakest_modulus(&solid_sums, &solid_rim);
        let (modulus, weakest_point_deg) = weakest_modulus(&sums, &rim);
        let steady = steady_modulus(&sums, &self.outer, points);
        let solid_steady = steady_modulus(&solid_sums, &self.outer, points);
        let about = sums.about_centroid();
        RingProperties {
            area_cm2: sums.area,
            centroid_east_cm: about.x,
            centroid_north_cm: about.y,
            inertia_xx_cm4: about.yy,
            inertia_yy_cm4: about.xx,
            inertia_xy_cm4: about.xy,
            weakest_modulus_cm3: modulus,
            weakest_point_deg,
            modulus_left_pct: share_pct(modulus, solid_modulus),
            steady_left_pct: share_pct(steady, solid_steady),
        }
    }

    /// Section modulus in cm³ for a pull toward `bearing_deg`: the moment over the largest stress
    /// on the rim. For showing; verdicts take the weakest direction.
    pub fn modulus_toward_cm3(&self, bearing_deg: f64, points: u32) -> f64 {
        let about = self.sums(points).about_centroid();
        let determinant = about.xx * about.yy - about.xy * about.xy;
        if determinant <= 0.0 {
            return 0.0;
        }
        // Stress σ = p · J⁻¹ u for a unit moment that bends toward u.
        let (east, north) = direction(bearing_deg);
        let along_x = (about.yy * east - about.xy * north) / determinant;
        let along_y = (about.xx * north - about.xy * east) / determinant;
        let most = self.rim(points).iter().fold(0.0_f64, |most, point| {
            let stress = (point.east - about.x) * along_x + (point.north - about.y) * along_y;
            most.max(stress.abs())
        });
        if most > 0.0 { 1.0 / most } else { 0.0 }
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

    fn wall_at(&self, bearing_deg: f64) -> f64 {
        let outer = self.outer.at(bearing_deg);
        self.wall.at(bearing_deg).clamp(0.0, outer.max(0.0))
    }

    fn sums(&self, points: u32) -> Sums {
        let width = 360.0 / f64::from(points.max(8));
        bearings(points).fold(Sums::default(), |sums, bearing| {
            self.pieces(bearing, width)
                .into_iter()
                .flatten()
                .fold(sums, |sums, piece| sums.with(self, &piece))
        })
    }

    /// What the opening leaves of the sector around `bearing_deg`: at most two pieces.
    fn pieces(&self, bearing_deg: f64, width_deg: f64) -> [Option<Piece>; 2] {
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

    fn rim(&self, points: u32) -> Vec<RimPoint> {
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
struct Piece {
    from_deg: f64,
    to_deg: f64,
}

impl Sums {
    /// Adds a piece: exact along the radius, by its middle across.
    fn with(self, ring: &Ring, piece: &Piece) -> Sums {
        let bearing = (piece.from_deg + piece.to_deg) / 2.0;
        let outer = ring.outer.at(bearing);
        let inner = outer - ring.wall_at(bearing);
        let ring_wood = self.with_wood(piece, bearing, inner, outer);
        match &ring.core {
            Some(core) => ring_wood.with_wood(piece, bearing, 0.0, core.at(bearing).min(inner)),
            None => ring_wood,
        }
    }

    fn with_wood(mut self, piece: &Piece, bearing: f64, inner: f64, outer: f64) -> Sums {
        let width = radians(piece.to_deg - piece.from_deg);
        let (east, north) = direction(bearing);
        let (outer2, inner2) = (outer * outer, inner * inner);
        let second = width * (outer2 - inner2) / 2.0;
        let third = width * (outer2 * outer - inner2 * inner) / 3.0;
        let fourth = width * (outer2 * outer2 - inner2 * inner2) / 4.0;
        self.area += second;
        self.x += third * east;
        self.y += third * north;
        self.xx += fourth * east * east;
        self.yy += fourth * north * north;
        self.xy += fourth * east * north;
        self
    }

    /// Centroid in `x` and `y`, second moments about it.
    fn about_centroid(self) -> Sums {
        if self.area <= 0.0 {
            return Sums::default();
        }
        let (x, y) = (self.x / self.area, self.y / self.area);
        Sums {
            area: self.area,
            x,
            y,
            xx: self.xx - self.area * x * x,
            yy: self.yy - self.area * y * y,
            xy: self.xy - self.area * x * y,
        }
    }
}

/// 1 over the largest length of the stress coefficients on the rim, and where it lies.
fn weakest_modulus(sums: &Sums, rim: &[RimPoint]) -> (f64, f64) {
    let about = sums.about_centroid();
    let determinant = about.xx * about.yy - about.xy * about.xy;
    if determinant <= 0.0 {
        return (0.0, 0.0);
    }
    let (most, bearing) = rim.iter().fold((0.0, 0.0), |(most, bearing), point| {
        let (x, y) = (point.east - about.x, point.north - about.y);
        let by_mx = (about.xx * y - about.xy * x) / determinant;
        let by_my = (about.xy * y - about.yy * x) / determinant;
        let size = libm::sqrt(by_mx * by_mx + by_my * by_my);
        if size > most {
            (size, point.bearing_deg)
        } else {
            (most, bearing)
        }
    });
    if most > 0.0 {
        (1.0 / most, round_turn(bearing))
    } else {
        (0.0, 0.0)
    }
}

/// min over direction and neutral line of ∫(y − y₀)² dA / (h − y₀), in closed form
/// 2 A (√(c² + I/A) − c), with c from the centroid to the outer rim of the whole stem.
fn steady_modulus(sums: &Sums, outer: &Run, points: u32) -> f64 {
    if sums.area <= 0.0 {
        return 0.0;
    }
    let least = bearings(points).fold(f64::INFINITY, |least, bearing| {
        let (east, north) = direction(bearing);
        let first = sums.x * east + sums.y * north;
        let about_centre =
            sums.xx * east * east + 2.0 * sums.xy * east * north + sums.yy * north * north;
        let inertia = (about_centre - first * first / sums.area).max(0.0);
        let to_rim = reach(outer, bearing, points) - first / sums.area;
        let root = libm::sqrt(to_rim * to_rim + inertia / sums.area);
        least.min(2.0 * sums.area * (root - to_rim))
    });
    if least.is_finite() {
        least.max(0.0)
    } else {
        0.0
    }
}

/// How far the outer rim reaches in a direction from the stem's centre.
fn reach(outer: &Run, bearing_deg: f64, points: u32) -> f64 {
    match outer {
        Run::Even(radius) => *radius,
        Run::AtBearings(_) => bearings(points)
            .map(|other| outer.at(other) * libm::cos(radians(other - bearing_deg)))
            .fold(0.0, f64::max),
    }
}

fn bearings(points: u32) -> impl Iterator<Item = f64> {
    let points = points.max(8);
    (0..points).map(move |k| 360.0 * f64::from(k) / f64::from(points))
}

fn rim_point(bearing_deg: f64, radius: f64) -> RimPoint {
    let (east, north) = direction(bearing_deg);
    RimPoint {
        bearing_deg,
        east: radius * east,
        north: radius * north,
    }
}

fn direction(bearing_deg: f64) -> (f64, f64) {
    let bearing = radians(bearing_deg);
    (libm::sin(bearing), libm::cos(bearing))
}

fn radians(degrees: f64) -> f64 {
    degrees * PI / 180.0
}

/// 0 to under 360.
fn round_turn(degrees: f64) -> f64 {
    let turned = degrees - 360.0 * libm::floor(degrees / 360.0);
    if turned >= 360.0 { 0.0 } else { turned }
}

/// −180 to under 180.
fn signed_turn(degrees: f64) -> f64 {
    round_turn(degrees + 180.0) - 180.0
}

fn share_pct(part: f64, whole: f64) -> f64 {
    if whole > 0.0 {
        100.0 * part / whole
    } else {
        0.0
    }
}

/// Section modulus left in percent of the solid stem, for a modulus in cm³.
pub fn left_pct(modulus_cm3: f64, diameter_cm: f64) -> f64 {
    share_pct(modulus_cm3, solid_modulus_cm3(diameter_cm))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_solid_round_section_is_the_textbook_one() {
        // Strength of materials: π D⁴/64 and π D³/32 at D = 60 cm.
        let solid = Ring::even(30.0, 30.0).properties(72);
        assert!((solid.inertia_xx_cm4 - 636_172.5).abs() < 0.1);
        assert!((solid.weakest_modulus_cm3 - 21_205.75).abs() < 0.01);
        assert!((solid.modulus_left_pct - 100.0).abs() < 1e-9);
        assert!((solid.steady_left_pct - 100.0).abs() < 1e-9);
    }

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

    #[test]
    fn walls_between_bearings_are_linear_and_the_circle_closes() {
        let run = Run::through(vec![
            BearingLength {
                bearing_deg: 350.0,
                length_cm: 10.0,
            },
            BearingLength {
                bearing_deg: 10.0,
                length_cm: 20.0,
            },
        ]);
        assert!((run.at(0.0) - 15.0).abs() < 1e-9);
        assert!((run.at(180.0) - 15.0).abs() < 1e-9);
        assert!((run.at(-10.0) - 10.0).abs() < 1e-9);
    }

    #[test]
    fn the_steady_measure_never_rises_when_wood_is_taken_though_the_elastic_one_may() {
        // Own derivation, checked by thinning each of twelve walls of many rings by a millimetre.
        let mut elastic_rose = 0;
        for seed in 0..40_u32 {
            let walls: Vec<f64> = (0..12)
                .map(|k| 3.0 + f64::from((seed * 37 + k * k * 11 + seed * k * 5) % 27))
                .collect();
            let ring = |walls: &[f64]| Ring {
                outer: Run::Even(30.0),
                wall: Run::through(
                    walls
                        .iter()
                        .enumerate()
                        .map(|(k, wall)| BearingLength {
                            bearing_deg: 30.0 * k as f64,
                            length_cm: *wall,
                        })
                        .collect(),
                ),
                core: None,
                opening: None,
            };
            let before = ring(&walls).properties(72);
            for k in 0..12 {
                let mut thinner = walls.clone();
                thinner[k] -= 0.1;
                let after = ring(&thinner).properties(72);
                assert!(after.steady_left_pct <= before.steady_left_pct + 1e-12);
                if after.modulus_left_pct > before.modulus_left_pct {
                    elastic_rose += 1;
                }
            }
        }
        assert!(elastic_rose > 0);
    }

    #[test]
    fn no_wood_has_no_strength() {
        let gone = Ring::even(30.0, 0.0).properties(72);
        assert_eq!(gone.modulus_left_pct, 0.0);
        assert_eq!(gone.steady_left_pct, 0.0);
        let mut open = Ring::even(30.0, 30.0);
        open.opening = Some(Opened {
            middle_deg: 0.0,
            width_deg: 360.0,
        });
        assert_eq!(open.properties(72).area_cm2, 0.0);
    }
}
