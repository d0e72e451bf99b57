//! What is left of a section's bending strength, with what the readings leave open.

use super::shell::Shell;
use crate::judge::METHOD_VERSION;
use crate::judge::sampling::{Draw, InputDraws, SAMPLES, Sampler, percentile};
use crate::record::Id;

/// Rim points at central values.
const POINTS: u32 = 72;

/// Rim points of a sample, as the judgement has them.
const SAMPLED_POINTS: u32 = 36;

/// What is left of a section in its weakest direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StrengthLeft {
    /// Bearing of the rim point that is stressed most, in degrees.
    pub weakest_deg: f64,
    /// Section modulus left at central values, in percent of the solid stem.
    pub left_pct: f64,
    /// One in ten samples has less than this, in percent.
    pub low_pct: f64,
    /// One in ten samples has more than this, in percent.
    pub high_pct: f64,
}

/// The stream of the wall at one place of a section's ring.
pub(crate) fn wall_stream(section: &str, place: usize) -> String {
    format!("section.{section}.wall.{place}")
}

/// The stream of all walls of a section together.
pub(crate) fn walls_stream(section: &str) -> String {
    format!("section.{section}.walls")
}

impl Shell {
    /// What is left of the section, from the same streams that the judgement samples; nothing where
    /// the walls rest on nothing.
    pub fn strength_left(&self, inspection: &Id, section: &Id) -> Option<StrengthLeft> {
        let central = self.central_ring()?.properties(POINTS);
        let sampler = Sampler::new(METHOD_VERSION, inspection);
        let walls: Vec<InputDraws> = (0..self.points.len())
            .map(|place| sampler.input(&wall_stream(section.as_str(), place)))
            .collect();
        let between = sampler.input(&walls_stream(section.as_str()));
        let left: Vec<f64> = (0..SAMPLES)
            .filter_map(|sample| {
                let wall = |place: usize| {
                    walls
                        .get(place)
                        .map_or(Draw::CENTRAL, |draws| draws.draw(sample))
                };
                let ring = self.ring(wall, between.draw(sample))?;
                Some(ring.modulus_left_pct(SAMPLED_POINTS))
            })
            .collect();
        Some(StrengthLeft {
            weakest_deg: central.weakest_point_deg,
            left_pct: central.modulus_left_pct,
            low_pct: percentile(&left, 0.1)?.min(central.modulus_left_pct),
            high_pct: percentile(&left, 0.9)?.max(central.modulus_left_pct),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::judge::rules::RuleSet;
    use crate::judge::wood::GreenWood;
    use crate::record::{ShellMethod, ShellReading, StemSection};

    fn left(walls_cm: &[(f64, f64)]) -> StrengthLeft {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        let section = StemSection {
            id: Id::from("s"),
            height_m: 1.0,
            girth_cm: None,
            diameter_cm: Some(64.0),
            bark_cm: Some(2.0),
            mallet: Vec::new(),
            opening: None,
            readings: walls_cm
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
        };
        let wood = GreenWood::of(None, &rules);
        let shell = Shell::of(&section, &wood, &rules).unwrap();
        shell.strength_left(&Id::from("look"), &section.id).unwrap()
    }

    #[test]
    fn an_even_wall_leaves_what_the_published_formula_says() {
        // 100 − Wagener-free engineering loss (d/D)⁴: Coder 1989. Wall 10 of radius 30 cm:
        // hole 20/30, loss (2/3)⁴ = 19.75 %.
        let even = left(&[(0.0, 10.0), (90.0, 10.0), (180.0, 10.0), (270.0, 10.0)]);
        assert!((even.left_pct - (100.0 - 19.753)).abs() < 0.2, "{even:?}");
        assert!(even.low_pct < even.left_pct && even.left_pct < even.high_pct);
    }

    #[test]
    fn fewer_readings_say_less() {
        let one = left(&[(90.0, 10.0)]);
        let many = left(&[(0.0, 10.0), (90.0, 10.0), (180.0, 10.0), (270.0, 10.0)]);
        let width = |left: StrengthLeft| left.high_pct - left.low_pct;
        assert!(width(one) > 2.0 * width(many), "{one:?} {many:?}");
    }

    #[test]
    fn the_thin_side_is_the_weakest() {
        let thin_east = left(&[(0.0, 20.0), (90.0, 4.0), (180.0, 20.0), (270.0, 20.0)]);
        assert!((thin_east.weakest_deg - 90.0).abs() < 6.0, "{thin_east:?}");
    }
}
