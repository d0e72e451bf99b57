//! From base units to the reader's, for the ends and steps of dials.

use crate::record::Quantity;
use crate::words::Words;

/// From the base unit of a quantity to the reader's.
pub(super) struct ReaderScale {
    zero: f64,
    one: f64,
}

impl ReaderScale {
    pub(super) fn of(words: &Words, quantity: Quantity) -> ReaderScale {
        let read = |typed: &str| words.read(typed, quantity, "").unwrap_or(f64::NAN);
        ReaderScale {
            zero: read("0"),
            // A thousand at once, for what is read is rounded to nine decimals.
            one: read("0") + (read("1000") - read("0")) / 1000.0,
        }
    }

    pub(super) fn shown(&self, base: f64) -> f64 {
        rounded((base - self.zero) / (self.one - self.zero))
    }

    /// A step is made round in the reader's unit: 1, 2 or 5 times a power of ten, or a tenth part
    /// thereof.
    pub(super) fn step(&self, base: f64) -> f64 {
        let exact = base / (self.one - self.zero);
        if exact <= 0.0 {
            return exact;
        }
        let power = libm::pow(10.0, libm::floor(libm::log10(exact) + 1e-9));
        let lead = exact / power;
        let round = [1.0, 2.0, 5.0, 10.0]
            .into_iter()
            .min_by(|one, other| (one - lead).abs().total_cmp(&(other - lead).abs()))
            .unwrap_or(1.0);
        rounded(round * power)
    }
}

/// Takes off what the conversion adds in the last digits.
fn rounded(value: f64) -> f64 {
    (value * 1e9).round() / 1e9
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, UnitSystem};

    #[test]
    fn ends_are_converted_and_steps_are_round() {
        // NIST SP 811 (2008), appendix B: 0.3048 m in a foot; 32 °F is 0 °C.
        let words = Words::new(Language::English, UnitSystem::Imperial);
        let feet = ReaderScale::of(&words, Quantity::LengthM);
        assert!((feet.shown(116.0) - 380.577_427_8).abs() < 1e-6);
        assert_eq!(feet.step(0.5), 2.0);
        let fahrenheit = ReaderScale::of(&words, Quantity::TemperatureC);
        assert_eq!(fahrenheit.shown(60.0), 140.0);
        assert_eq!(fahrenheit.step(1.0), 2.0);
        let metric = Words::new(Language::English, UnitSystem::Metric);
        let metres = ReaderScale::of(&metric, Quantity::LengthM);
        assert_eq!((metres.shown(116.0), metres.step(0.5)), (116.0, 0.5));
    }
}
