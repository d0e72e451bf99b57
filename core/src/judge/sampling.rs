//! Latin-hypercube sampling with a stream fixed by names, never by values.
//!
//! Each uncertain input has its own order of the same strata. The order is fixed by the method's
//! version, the inspection and the input's name, so that adding an input moves no other and a
//! heavier load can never be lucky. Lengths, masses, strengths and factors are lognormal with the
//! entered value as median; angles are normal; ranges are uniform.

mod normal;

use std::sync::OnceLock;

use rand_chacha::ChaCha20Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

use crate::record::Id;

pub use normal::normal_quantile;

/// The number of samples of the method.
pub const SAMPLES: u32 = 1000;

static NORMAL_QUANTILES: OnceLock<Vec<f64>> = OnceLock::new();

/// Quantiles of the standard normal distribution at the midpoints of the [`SAMPLES`] strata,
/// rising.
pub fn normal_quantiles() -> &'static [f64] {
    NORMAL_QUANTILES.get_or_init(|| (0..SAMPLES).map(|k| normal_quantile(midpoint(k))).collect())
}

/// Middle of stratum `k` of [`SAMPLES`], between 0 and 1.
fn midpoint(k: u32) -> f64 {
    (f64::from(k) + 0.5) / f64::from(SAMPLES)
}

/// One draw of one input: where in its distribution the sample lies.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Draw {
    /// Probability below the draw, between 0 and 1.
    pub p: f64,
    /// The same as a quantile of the standard normal distribution.
    pub z: f64,
}

impl Draw {
    /// The median: what every input has when central values are asked for.
    pub const CENTRAL: Draw = Draw { p: 0.5, z: 0.0 };

    /// The draw at probability `p`, kept inside (0, 1).
    pub fn at(p: f64) -> Draw {
        let p = p.clamp(1e-12, 1.0 - 1e-12);
        Draw {
            p,
            z: normal_quantile(p),
        }
    }

    /// A value evenly spread from `low` to `high`.
    pub fn uniform(self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.p
    }

    /// A normal value with this mean and standard error.
    pub fn normal(self, mean: f64, se: f64) -> f64 {
        mean + se * self.z
    }

    /// A lognormal value with this median and coefficient of variation.
    pub fn lognormal(self, median: f64, cv: f64) -> f64 {
        median * lognormal_factor(self.z, cv)
    }
}

/// exp(σ z) with σ² = ln(1 + cv²): the factor on the median of a lognormal value with this
/// coefficient of variation, `z` standard deviations off. A `cv` of 0 or less gives 1.
pub fn lognormal_factor(z: f64, cv: f64) -> f64 {
    if cv > 0.0 {
        libm::exp(z * libm::sqrt(libm::log1p(cv * cv)))
    } else {
        1.0
    }
}

/// The uncertain inputs of one inspection.
#[derive(Debug, Clone)]
pub struct Sampler {
    method_version: u32,
    inspection: Id,
}

impl Sampler {
    /// The inputs of an inspection under a version of the method.
    pub fn new(method_version: u32, inspection: &Id) -> Self {
        Sampler {
            method_version,
            inspection: inspection.clone(),
        }
    }

    /// The draws of the input with this name, such as `anchor.<id>.diameter`; always the same for
    /// the same version, inspection and name.
    pub fn input(&self, name: &str) -> InputDraws {
        let seed = self.seed(name);
        let mut stream = ChaCha20Rng::from_seed(seed);
        let mut strata: Vec<u32> = (0..SAMPLES).collect();
        for last in (1..strata.len()).rev() {
            let other = below(&mut stream, last as u64 + 1) as usize;
            strata.swap(last, other);
        }
        InputDraws { strata }
    }

    fn seed(&self, name: &str) -> [u8; 32] {
        let mut hasher = blake3::Hasher::new();
        hasher.update(&self.method_version.to_le_bytes());
        // Lengths first, so that no two pairs of names run into one.
        for part in [self.inspection.as_str(), name] {
            hasher.update(&(part.len() as u64).to_le_bytes());
            hasher.update(part.as_bytes());
        }
        *hasher.finalize().as_bytes()
    }
}

/// An even whole number from 0 to `end` − 1: what would favour small numbers is thrown away.
fn below(stream: &mut impl Rng, end: u64) -> u64 {
    let fair = u64::MAX - u64::MAX % end;
    loop {
        let number = stream.next_u64();
        if number < fair {
            return number % end;
        }
    }
}

/// The draws of one input, one for each sample.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct InputDraws {
    strata: Vec<u32>,
}

impl InputDraws {
    /// The draw of sample `sample`, 0 to [`SAMPLES`] − 1; beyond that the median.
    pub fn draw(&self, sample: u32) -> Draw {
        let Some(stratum) = self.strata.get(sample as usize).copied() else {
            return Draw::CENTRAL;
        };
        Draw {
            p: midpoint(stratum),
            z: normal_quantiles()
                .get(stratum as usize)
                .copied()
                .unwrap_or(0.0),
        }
    }

    /// The stratum of each sample, 0 to [`SAMPLES`] − 1: the rank of the input's value.
    pub fn strata(&self) -> &[u32] {
        &self.strata
    }
}

/// The value below which a share `p` of the samples lies, between 0 and 1; the samples need not be
/// in order. Linear between neighbours (Hyndman & Fan 1996, type 7). Nothing without samples.
pub fn percentile(samples: &[f64], p: f64) -> Option<f64> {
    let mut sorted = samples.to_vec();
    sorted.sort_by(f64::total_cmp);
    let place = (sorted.len().checked_sub(1)? as f64) * p.clamp(0.0, 1.0);
    let below = libm::floor(place);
    let low = sorted.get(below as usize)?;
    let high = sorted.get(below as usize + 1).unwrap_or(low);
    Some(low + (high - low) * (place - below))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_even_and_its_spread_is_one() {
        let table = normal_quantiles();
        assert_eq!(table.len(), 1000);
        let mean = table.iter().sum::<f64>() / 1000.0;
        let variance = table.iter().map(|z| z * z).sum::<f64>() / 1000.0;
        assert!(mean.abs() < 1e-12);
        assert!((variance - 1.0).abs() < 0.005, "{variance}");
    }

    #[test]
    fn each_input_has_every_stratum_once_in_an_order_of_its_own() {
        let sampler = Sampler::new(1, &Id::from("insp-1"));
        let height = sampler.input("height");
        let mut strata = height.strata().to_vec();
        strata.sort_unstable();
        assert!(strata.into_iter().eq(0..SAMPLES));
        assert_eq!(height, sampler.input("height"));
        assert_ne!(height, sampler.input("girth"));
        assert_ne!(height, Sampler::new(1, &Id::from("insp-2")).input("height"));
        assert_ne!(height, Sampler::new(2, &Id::from("insp-1")).input("height"));
        // Fixed for ever: this order may not change with a library or a machine.
        assert_eq!(height.strata()[..4], FIXED_START);
    }

    const FIXED_START: [u32; 4] = [84, 288, 215, 995];

    #[test]
    fn a_lognormal_sample_has_the_median_and_the_spread_it_was_given() {
        let values: Vec<f64> = (0..SAMPLES)
            .map(|k| Draw::at(midpoint(k)).lognormal(40.0, 0.2))
            .collect();
        let mean = values.iter().sum::<f64>() / 1000.0;
        let variance = values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / 1000.0;
        // Median 40, mean 40 √(1 + cv²) (lognormal distribution, any textbook of statistics).
        assert!((percentile(&values, 0.5).unwrap() - 40.0).abs() < 0.02);
        assert!((mean - 40.0 * libm::sqrt(1.04)).abs() < 0.02);
        assert!((libm::sqrt(variance) / mean - 0.2).abs() < 0.003);
    }

    #[test]
    fn percentiles_are_linear_between_neighbours() {
        // Hyndman & Fan 1996, type 7.
        assert_eq!(percentile(&[4.0, 1.0, 3.0, 2.0], 0.5), Some(2.5));
        assert_eq!(percentile(&[1.0, 2.0], 0.0), Some(1.0));
        assert_eq!(percentile(&[], 0.5), None);
    }
}
