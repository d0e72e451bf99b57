//! A change with its interval, all three figures in the same digits.

use super::catalogue::Words;
use super::numbers::{Decimals, Rounding, rounded};
use super::units::{decimals_of, unit_of};
use crate::record::Quantity;

impl Words {
    /// A change and the ends of its interval, `half` on either side, each with its sign, in the
    /// digits of the largest of them: `+0.5 m`, `−2.1 m`, `+3.0 m`.
    pub fn change(&self, by: f64, half: f64, quantity: Quantity) -> [String; 3] {
        let unit = unit_of(quantity, self.units());
        let shown = [by, by - half, by + half].map(|value| value / unit.factor);
        let largest = shown.iter().fold(0.0_f64, |most, one| most.max(one.abs()));
        let usual = decimals_of(quantity, self.units(), largest);
        let digits = usual.least.max(usual.most.min(1));
        shown.map(|value| {
            let printed = rounded(value, digits, Rounding::Nearest);
            let sign = match printed {
                more if more > 0.0 => "+",
                less if less < 0.0 => "−",
                _ => "",
            };
            let size = Decimals::exactly(digits);
            let size = self.with_unit(unit, printed.abs(), size, Rounding::Nearest);
            format!("{sign}{size}")
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::catalogue::Language;
    use super::super::units::UnitSystem;
    use super::*;

    #[test]
    fn a_change_and_its_interval_have_the_same_digits() {
        let metric = Words::new(Language::English, UnitSystem::Metric);
        let imperial = Words::new(Language::English, UnitSystem::Imperial);
        let height = metric.change(0.475, 2.525, Quantity::LengthM);
        assert_eq!(height, ["+0.5 m", "−2.1 m", "+3.0 m"]);
        let height = imperial.change(0.475, 2.525, Quantity::LengthM);
        assert_eq!(height, ["+1.6 ft", "−6.7 ft", "+9.8 ft"]);
        let height = imperial.change(0.6, 4.0, Quantity::LengthM);
        assert_eq!(height, ["+2 ft", "−11 ft", "+15 ft"]);
        let lean = metric.change(0.0, 8.3, Quantity::AngleDeg);
        assert_eq!(lean, ["0.0°", "−8.3°", "+8.3°"]);
        let girth = metric.change(-2.0, 130.0, Quantity::LengthCm);
        assert_eq!(girth, ["−2 cm", "−132 cm", "+128 cm"]);
    }
}
