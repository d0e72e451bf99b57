//! What the readings of one section say about its walls, and how little they say between them.
//!
//! A single reading is one point, not a ring: the wall elsewhere is then taken as the same with a
//! wide spread of its own, never as known.

use crate::record::{MalletSound, StemSection};

use super::formulas::{coder_loss_pct, opening_deg, opening_ratio, smiley_fraedrich_loss_pct};
use super::formulas::{shell_ratio, wagener_loss_pct};
use super::readings::{between_cv, read_point, sounded_points};
use super::ring::{Opened, Ring};
use super::run::{BearingLength, Run};
use crate::judge::rules::RuleSet;
use crate::judge::sampling::Draw;
use crate::judge::wood::GreenWood;

/// What a shell rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ShellBasis {
    /// Nothing: neither mallet nor reading, hence no ring.
    Nothing,
    /// The mallet clock alone.
    Mallet,
    /// One reading of the wall.
    OneReading,
    /// Two readings.
    TwoReadings,
    /// Three readings or more.
    Around,
}

/// How a wall may vary.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum WallSpread {
    /// Normal around the wall, cut at 0 and at the radius: with a standard error in centimetres
    /// a lognormal wall would grow at its upper end as the reading shrinks.
    Normal {
        /// Standard error in centimetres.
        se_cm: f64,
    },
    /// Evenly spread between two walls in centimetres.
    Uniform {
        /// Thinnest.
        low_cm: f64,
        /// Thickest.
        high_cm: f64,
    },
}

/// The wall at one bearing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShellPoint {
    /// Bearing from the stem's centre in degrees.
    pub bearing_deg: f64,
    /// Central value in centimetres.
    pub wall_cm: f64,
    /// How it may vary.
    pub spread: WallSpread,
}

impl ShellPoint {
    fn at(&self, draw: Draw) -> f64 {
        match self.spread {
            WallSpread::Normal { se_cm } => draw.normal(self.wall_cm, se_cm).max(0.0),
            WallSpread::Uniform { low_cm, high_cm } => draw.uniform(low_cm, high_cm),
        }
    }
}

/// A section as it is judged: radius, walls and opening with their spreads.
#[derive(Debug, Clone, PartialEq)]
pub struct Shell {
    /// Radius inside bark in centimetres.
    pub radius_cm: f64,
    /// Bark in centimetres.
    pub bark_cm: f64,
    /// Whether the bark was read; else it is the usual bark of the kind.
    pub bark_read: bool,
    /// The walls by bearing, in the order of their bearings.
    pub points: Vec<ShellPoint>,
    /// Spread of all walls together, as a coefficient of variation: what few readings leave open.
    pub between_cv: f64,
    /// What it rests on.
    pub basis: ShellBasis,
    /// An opening.
    pub opening: Option<Opened>,
}

/// The published formulas for a shell.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShellFormulas {
    /// Wagener 1963, loss in percent.
    pub wagener_pct: f64,
    /// Coder 1989, loss in percent.
    pub coder_pct: f64,
    /// Smiley & Fraedrich 1992, loss in percent, with the opening.
    pub smiley_fraedrich_pct: f64,
    /// t/R at the thinnest wall read (Mattheck & Breloer 1994); 0 at an opening.
    pub least_shell_ratio: f64,
    /// Angle of the opening in degrees, 0 where there is none.
    pub opening_deg: f64,
}

impl Shell {
    /// The shell that a section's readings describe; nothing where neither a girth nor a diameter
    /// was taken, or the bark is as thick as the stem.
    pub fn of(section: &StemSection, wood: &GreenWood, rules: &RuleSet) -> Option<Shell> {
        let over_bark_cm = section
            .girth_cm
            .map(|girth| girth / core::f64::consts::PI)
            .or(section.diameter_cm)?;
        let bark_cm = section
            .bark_cm
            .unwrap_or_else(|| wood.usual_bark_cm(over_bark_cm));
        let radius_cm = over_bark_cm / 2.0 - bark_cm;
        if !(radius_cm > 0.0 && radius_cm.is_finite()) {
            return None;
        }
        let mut points: Vec<ShellPoint> = section
            .readings
            .iter()
            .map(|wall| read_point(wall, radius_cm, rules))
            .collect();
        let basis = match points.len() {
            0 if section.mallet.iter().any(|m| *m != MalletSound::NotSounded) => ShellBasis::Mallet,
            0 => ShellBasis::Nothing,
            1 => ShellBasis::OneReading,
            2 => ShellBasis::TwoReadings,
            _ => ShellBasis::Around,
        };
        let read = points.clone();
        points.extend(sounded_points(section, &read, radius_cm, rules));
        points.sort_by(|a, b| a.bearing_deg.total_cmp(&b.bearing_deg));
        Some(Shell {
            radius_cm,
            bark_cm,
            bark_read: section.bark_cm.is_some(),
            between_cv: between_cv(basis, section, rules),
            points,
            basis,
            opening: section.opening.as_ref().map(|opening| Opened {
                middle_deg: opening.bearing_deg,
                width_deg: opening_deg(opening.width_cm, core::f64::consts::PI * over_bark_cm),
            }),
        })
    }

    /// The ring at central values; nothing where the walls rest on nothing. An opening without a
    /// reading is solid beside it: the cap on openings and its own gap speak then.
    pub fn central_ring(&self) -> Option<Ring> {
        self.ring(|_| Draw::CENTRAL, Draw::CENTRAL)
    }

    /// The ring of one sample: `point` gives the draw of the wall with this place in `points`,
    /// `between` that of all walls together.
    pub fn ring(&self, point: impl Fn(usize) -> Draw, between: Draw) -> Option<Ring> {
        if self.points.is_empty() && self.opening.is_none() {
            return None;
        }
        let common = between.lognormal(1.0, self.between_cv);
        let walls = self
            .points
            .iter()
            .enumerate()
            .map(|(place, wall)| BearingLength {
                bearing_deg: wall.bearing_deg,
                length_cm: (wall.at(point(place)) * common).clamp(0.0, self.radius_cm),
            });
        let wall = if self.points.is_empty() {
            Run::Even(self.radius_cm)
        } else {
            Run::through(walls.collect())
        };
        Some(Ring {
            outer: Run::Even(self.radius_cm),
            wall,
            core: None,
            opening: self.opening,
        })
    }

    /// The published formulas at central values, from the mean of the walls read (`points` rim
    /// points); nothing where the walls rest on nothing.
    pub fn formulas(&self, points: u32) -> Option<ShellFormulas> {
        let ring = self.central_ring()?;
        let hole = ring.equivalent_hole(points);
        let opened = self.opening.map_or(0.0, |opening| opening.width_deg);
        let thinnest = self
            .points
            .iter()
            .map(|point| point.wall_cm.clamp(0.0, self.radius_cm))
            .fold(self.radius_cm, f64::min);
        Some(ShellFormulas {
            wagener_pct: wagener_loss_pct(hole),
            coder_pct: coder_loss_pct(hole),
            smiley_fraedrich_pct: smiley_fraedrich_loss_pct(hole, opening_ratio(opened)),
            least_shell_ratio: if opened > 0.0 {
                0.0
            } else {
                shell_ratio(thinnest, self.radius_cm)
            },
            opening_deg: opened,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{Id, ShellMethod, ShellReading};

    fn us() -> RuleSet {
        RuleSet::shipped(&Id::default()).unwrap()
    }

    fn section(readings: &[(f64, f64)]) -> StemSection {
        StemSection {
            id: Id::default(),
            height_m: 1.0,
            girth_cm: None,
            diameter_cm: Some(64.0),
            bark_cm: Some(2.0),
            mallet: Vec::new(),
            opening: None,
            readings: readings
                .iter()
                .map(|(bearing_deg, shell_cm)| ShellReading {
                    id: Id::default(),
                    bearing_deg: *bearing_deg,
                    shell_cm: *shell_cm,
                    se_cm: None,
                    method: Some(ShellMethod::Drill),
                    drill_angle_deg: None,
                })
                .collect(),
            note: None,
        }
    }

    fn shell(section: &StemSection) -> Shell {
        let rules = us();
        Shell::of(section, &GreenWood::of(None, &rules), &rules).unwrap()
    }

    #[test]
    fn one_reading_is_a_point_and_not_a_ring() {
        // Sheet of check values 3.5: a single reading is one point, not a ring.
        let one = shell(&section(&[(0.0, 9.0)]));
        let four = shell(&section(&[
            (0.0, 9.0),
            (90.0, 9.0),
            (180.0, 9.0),
            (270.0, 9.0),
        ]));
        assert_eq!(one.basis, ShellBasis::OneReading);
        assert_eq!(four.basis, ShellBasis::Around);
        let at = |shell: &Shell, p: f64| {
            let ring = shell.ring(|_| Draw::CENTRAL, Draw::at(p)).unwrap();
            ring.properties(72).modulus_left_pct
        };
        assert!(at(&one, 0.1) < at(&four, 0.1) - 15.0);
        assert!((at(&one, 0.5) - 75.99).abs() < 0.01);
    }

    #[test]
    fn the_mallet_clock_is_walls_with_ranges() {
        // Method, section 2: sound 0.5–1, dull 0.2–0.5, hollow 0.05–0.3 of the radius, uniform.
        let mut clock = section(&[]);
        clock.mallet = vec![MalletSound::Dull; 8];
        let dull = shell(&clock);
        assert_eq!(dull.basis, ShellBasis::Mallet);
        assert_eq!(dull.points.len(), 8);
        assert!((dull.points[3].wall_cm - 10.5).abs() < 1e-9);
        let thin = dull
            .ring(|_| Draw { p: 0.0, z: -9.0 }, Draw::CENTRAL)
            .unwrap();
        assert!((thin.least_shell_ratio(72) - 0.2).abs() < 1e-9);
    }

    #[test]
    fn sounding_more_never_thickens_a_wall_that_was_read_around() {
        let readings = [(0.0, 9.0), (90.0, 9.0), (180.0, 9.0), (270.0, 9.0)];
        let plain = shell(&section(&readings));
        let mut sounded = section(&readings);
        sounded.mallet = vec![MalletSound::Sound; 8];
        assert_eq!(shell(&sounded).points, plain.points);
        sounded.mallet = vec![MalletSound::Hollow; 8];
        assert_eq!(shell(&sounded).points.len(), 8);
    }

    #[test]
    fn a_section_without_walls_has_no_ring_and_one_without_size_no_shell() {
        assert_eq!(shell(&section(&[])).central_ring(), None);
        let rules = us();
        let mut unknown = section(&[(0.0, 9.0)]);
        unknown.diameter_cm = None;
        assert_eq!(
            Shell::of(&unknown, &GreenWood::of(None, &rules), &rules),
            None
        );
    }
}
