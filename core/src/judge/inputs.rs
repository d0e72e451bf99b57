//! The uncertain inputs of one judgement: each with its distribution and a stream of its own.
//!
//! A stream is fixed by method version, inspection and the input's name, never by a value, so that
//! adding an input moves no other and a heavier load can never be lucky.

use crate::record::Id;

use super::METHOD_VERSION;
use super::sampling::{Draw, InputDraws, Sampler};

/// How an input may vary.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Lot {
    /// Lognormal: its median and coefficient of variation.
    Lognormal { median: f64, cv: f64 },
    /// Normal: its mean and standard error.
    Normal { mean: f64, se: f64 },
    /// Evenly spread between two values.
    Uniform { low: f64, high: f64 },
    /// The size of a normal angle whose sign does not matter: a lean read as 0 ± 3° is hardly
    /// ever 0, and a larger reading never gives a smaller one.
    Folded { mean: f64, se: f64 },
    /// The draw itself, for what works out its own value.
    Bare,
}

impl Lot {
    fn at(self, draw: Draw) -> f64 {
        match self {
            Lot::Lognormal { median, cv } => draw.lognormal(median, cv),
            Lot::Normal { mean, se } => draw.normal(mean, se),
            Lot::Uniform { low, high } => draw.uniform(low, high),
            Lot::Folded { mean, se } => folded(mean, se, draw),
            Lot::Bare => draw.p,
        }
    }

    /// The value that is shown: medians and means, and an angle as it was read.
    fn central(self) -> f64 {
        match self {
            Lot::Folded { mean, .. } => mean,
            other => other.at(Draw::CENTRAL),
        }
    }
}

/// The value of |N(mean, se)| at a probability, by halving: Φ((x − m)/s) − Φ((−x − m)/s) = p.
fn folded(mean: f64, se: f64, draw: Draw) -> f64 {
    let mean = mean.abs();
    if se <= 0.0 {
        return mean;
    }
    if mean > 9.0 * se {
        return draw.normal(mean, se);
    }
    let below = |x: f64| normal_cdf((x - mean) / se) - normal_cdf((-x - mean) / se);
    // Never below the normal value of the same draw, never above the folded one of a centred angle
    // moved out by the mean.
    let half_draw = super::sampling::normal_quantile(0.5 + draw.p / 2.0);
    let mut low = draw.normal(mean, se).max(0.0);
    let mut high = mean + se * half_draw;
    for _ in 0..40 {
        let middle = (low + high) / 2.0;
        if below(middle) < draw.p {
            low = middle;
        } else {
            high = middle;
        }
    }
    (low + high) / 2.0
}

fn normal_cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z / std::f64::consts::SQRT_2)
}

/// The inputs in the order they were named.
pub(crate) struct Inputs {
    sampler: Sampler,
    list: Vec<Input>,
}

struct Input {
    name: String,
    lot: Lot,
    draws: InputDraws,
}

/// One value for each input.
pub(crate) struct Values {
    values: Vec<f64>,
    draws: Vec<Draw>,
}

impl Values {
    /// The value of an input.
    pub(crate) fn of(&self, input: usize) -> f64 {
        self.values.get(input).copied().unwrap_or(f64::NAN)
    }

    /// The draw of an input.
    pub(crate) fn draw(&self, input: usize) -> Draw {
        self.draws.get(input).copied().unwrap_or(Draw::CENTRAL)
    }
}

impl Inputs {
    /// No inputs yet, for one inspection.
    pub(crate) fn new(inspection: &Id) -> Self {
        Inputs {
            sampler: Sampler::new(METHOD_VERSION, inspection),
            list: Vec::new(),
        }
    }

    /// Adds an input, or finds the one that already has this name.
    pub(crate) fn add(&mut self, name: &str, lot: Lot) -> usize {
        if let Some(place) = self.list.iter().position(|input| input.name == name) {
            return place;
        }
        self.list.push(Input {
            name: name.to_owned(),
            lot,
            draws: self.sampler.input(name),
        });
        self.list.len() - 1
    }

    /// Central values.
    pub(crate) fn central(&self) -> Values {
        Values {
            values: self.list.iter().map(|input| input.lot.central()).collect(),
            draws: vec![Draw::CENTRAL; self.list.len()],
        }
    }

    /// The values of one sample.
    pub(crate) fn sample(&self, sample: u32) -> Values {
        let draws: Vec<Draw> = self.list.iter().map(|i| i.draws.draw(sample)).collect();
        let lots = self.list.iter().map(|input| input.lot);
        Values {
            values: lots.zip(&draws).map(|(lot, draw)| lot.at(*draw)).collect(),
            draws,
        }
    }

    /// Names of the inputs.
    pub(crate) fn names(&self) -> impl Iterator<Item = &str> {
        self.list.iter().map(|input| input.name.as_str())
    }

    /// The strata of an input, one for each sample.
    pub(crate) fn strata(&self, input: usize) -> &[u32] {
        self.list
            .get(input)
            .map_or(&[], |input| input.draws.strata())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_angle_of_nothing_has_the_half_normal_median() {
        // Half-normal distribution: median 0.67449 σ (any textbook of statistics).
        let median = Lot::Folded { mean: 0.0, se: 3.0 }.at(Draw::CENTRAL);
        assert!((median - 3.0 * 0.674_489_75).abs() < 1e-6);
        // Far from 0 it is the normal distribution.
        let far = Lot::Folded {
            mean: 20.0,
            se: 3.0,
        }
        .at(Draw::at(0.9));
        assert!((far - (20.0 + 3.0 * 1.281_551_57)).abs() < 1e-6);
    }

    #[test]
    fn a_larger_reading_never_gives_a_smaller_angle() {
        for p in [0.0005, 0.1, 0.5, 0.9995] {
            let mut last = 0.0;
            for tenth in 0..400 {
                let mean = f64::from(tenth) / 10.0;
                let angle = Lot::Folded { mean, se: 3.0 }.at(Draw::at(p));
                assert!(angle >= last - 1e-9);
                last = angle;
            }
        }
    }

    #[test]
    fn the_same_name_is_the_same_input() {
        let mut inputs = Inputs::new(&Id::from("i"));
        let lot = Lot::Uniform {
            low: 1.0,
            high: 3.0,
        };
        let one = inputs.add("load.factor", lot);
        assert_eq!(inputs.add("load.factor", lot), one);
        assert_eq!(inputs.central().of(one), 2.0);
    }
}
