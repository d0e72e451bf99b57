//! Latin-hypercube sampling with a stream fixed by names, never by values.
//!
//! Each uncertain input has its own order of the same strata. The order is fixed by the method's
//! version, the inspection and the input's name, so that adding an input moves no other and a
//! heavier load can never be lucky. Lengths, masses, strengths and factors are lognormal with the
//! entered value as median; angles are normal; ranges are uniform.

use std::sync::OnceLock;

use rand_chacha::ChaCha20Rng;
use rand_chacha::rand_core::{Rng, SeedableRng};

use crate::record::Id;

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

/// Quantile of the standard normal distribution for 0 < `p` < 1 by algorithm AS 241, PPND16
/// (Wichura 1988, Applied Statistics 37(3):477–484), good to about 1 in 10¹⁶. Minus or plus
/// infinity at or beyond the ends.
pub fn normal_quantile(p: f64) -> f64 {
    if p <= 0.0 {
        return f64::NEG_INFINITY;
    }
    if p >= 1.0 {
        return f64::INFINITY;
    }
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        let r = 0.180_625 - q * q;
        return q * ratio(r, &CENTRE_UP, &CENTRE_DOWN);
    }
    let r = libm::sqrt(-libm::log(if q < 0.0 { p } else { 1.0 - p }));
    let size = if r <= 5.0 {
        ratio(r - 1.6, &TAIL_UP, &TAIL_DOWN)
    } else {
        ratio(r - 5.0, &FAR_UP, &FAR_DOWN)
    };
    if q < 0.0 { -size } else { size }
}

fn ratio(r: f64, up: &[f64; 8], down: &[f64; 8]) -> f64 {
    let sum = |terms: &[f64; 8]| terms.iter().rev().fold(0.0, |sum, term| sum * r + term);
    sum(up) / sum(down)
}

const CENTRE_UP: [f64; 8] = [
    3.387_132_872_796_366_608,
    1.331_416_678_917_843_774_5e2,
    1.971_590_950_306_551_442_7e3,
    1.373_169_376_550_946_112_5e4,
    4.592_195_393_154_987_145_7e4,
    6.726_577_092_700_870_085_3e4,
    3.343_057_558_358_812_810_5e4,
    2.509_080_928_730_122_672_7e3,
];
const CENTRE_DOWN: [f64; 8] = [
    1.0,
    4.231_333_070_160_091_125_2e1,
    6.871_870_074_920_579_083e2,
    5.394_196_021_424_751_107_7e3,
    2.121_379_430_158_659_586_7e4,
    3.930_789_580_009_271_061e4,
    2.872_908_573_572_194_267_4e4,
    5.226_495_278_852_854_561e3,
];
const TAIL_UP: [f64; 8] = [
    1.423_437_110_749_683_577_34,
    4.630_337_846_156_545_295_9,
    5.769_497_221_460_691_405_5,
    3.647_848_324_763_204_605_04,
    1.270_458_252_452_368_382_58,
    2.417_807_251_774_506_117_7e-1,
    2.272_384_498_926_918_458_33e-2,
    7.745_450_142_783_414_076_4e-4,
];
const TAIL_DOWN: [f64; 8] = [
    1.0,
    2.053_191_626_637_758_821_87,
    1.676_384_830_183_803_849_4,
    6.897_673_349_851_000_045_5e-1,
    1.481_039_764_274_800_745_9e-1,
    1.519_866_656_361_645_719_66e-2,
    5.475_938_084_995_344_946e-4,
    1.050_750_071_644_416_843_24e-9,
];
const FAR_UP: [f64; 8] = [
    6.657_904_643_501_103_777_2,
    5.463_784_911_164_114_369_9,
    1.784_826_539_917_291_335_8,
    2.965_605_718_285_048_912_3e-1,
    2.653_218_952_657_612_309_3e-2,
    1.242_660_947_388_078_438_6e-3,
    2.711_555_568_743_487_578_15e-5,
    2.010_334_399_292_288_132_65e-7,
];
const FAR_DOWN: [f64; 8] = [
    1.0,
    5.998_322_065_558_879_376_9e-1,
    1.369_298_809_227_358_053_1e-1,
    1.487_536_129_085_061_485_25e-2,
    7.868_691_311_456_132_591e-4,
    1.846_318_317_510_054_681_8e-5,
    1.421_511_758_316_445_888_7e-7,
    2.044_263_103_389_939_785_64e-15,
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_meet_the_algorithms_own_check_values() {
        // Wichura 1988: PPND16(0.25), PPND16(0.001), PPND16(1e-20).
        assert!((normal_quantile(0.25) - -0.674_489_750_196_081_7).abs() < 1e-15);
        assert!((normal_quantile(0.001) - -3.090_232_306_167_814).abs() < 1e-14);
        assert!((normal_quantile(1e-20) - -9.262_340_089_798_408).abs() < 1e-13);
        assert_eq!(normal_quantile(0.5), 0.0);
    }

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
