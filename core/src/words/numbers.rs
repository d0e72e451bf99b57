//! Decimals by locale, rounded toward the side that is safe.

use std::cell::RefCell;
use std::collections::BTreeMap;

use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;

use super::catalogue::Language;

/// The side to which a number is rounded when it is shown.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest, half away from zero: what was measured.
    Nearest,
    /// Upward: distances that people keep.
    Up,
    /// Downward: scores and margins.
    Down,
}

/// How many decimals a number is shown with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Decimals {
    /// Decimals that are always shown.
    pub least: u8,
    /// Decimals that the number is rounded to; zeros beyond `least` are dropped.
    pub most: u8,
}

impl Decimals {
    /// Exactly this many decimals.
    pub(super) const fn exactly(count: u8) -> Self {
        Decimals {
            least: count,
            most: count,
        }
    }

    /// Up to this many decimals, without trailing zeros.
    pub(super) const fn up_to(count: u8) -> Self {
        Decimals {
            least: 0,
            most: count,
        }
    }
}

/// Rounds to `decimals` digits after the point. What floating arithmetic adds in the thirteenth
/// digit never lifts a number over a whole step.
pub(super) fn rounded(value: f64, decimals: u8, rounding: Rounding) -> f64 {
    let scale = power_of_ten(decimals);
    let steps = value * scale;
    let noise = (steps.abs().max(1.0) * 1e-13).min(1e-3);
    let whole = match rounding {
        Rounding::Nearest => (steps + noise.copysign(steps)).round(),
        Rounding::Up => (steps - noise).ceil(),
        Rounding::Down => (steps + noise).floor(),
    };
    // Adding zero turns −0 into 0.
    whole / scale + 0.0
}

fn power_of_ten(exponent: u8) -> f64 {
    (0..exponent).fold(1.0, |power, _| power * 10.0)
}

thread_local! {
    // The formatters of ICU are not shared between threads; one a language and thread is kept.
    static FORMATTERS: RefCell<BTreeMap<Language, Option<DecimalFormatter>>> =
        const { RefCell::new(BTreeMap::new()) };
}

/// The number in the digits, separators and groups of the language. What is no number reads `–`.
pub(super) fn decimal(
    language: Language,
    value: f64,
    decimals: Decimals,
    rounding: Rounding,
) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    let most = usize::from(decimals.most);
    let mut digits = format!("{:.most$}", rounded(value, decimals.most, rounding));
    let spare = decimals.most.saturating_sub(decimals.least);
    for _ in 0..spare {
        if !digits.ends_with('0') {
            break;
        }
        digits.pop();
    }
    let digits = digits.trim_end_matches('.');
    let Ok(number) = Decimal::try_from_str(digits) else {
        return digits.to_owned();
    };
    FORMATTERS.with_borrow_mut(|kept| {
        let formatter = kept.entry(language).or_insert_with(|| {
            DecimalFormatter::try_new(language.locale().into(), Default::default()).ok()
        });
        match formatter {
            Some(formatter) => formatter.format(&number).to_string(),
            None => digits.to_owned(),
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn english(value: f64, decimals: Decimals, rounding: Rounding) -> String {
        decimal(Language::English, value, decimals, rounding)
    }

    #[test]
    fn english_numbers_follow_the_locale_data() {
        // Unicode CLDR, root and `en`: decimal point, groups of three, grouped from four digits on.
        let nearest = Rounding::Nearest;
        assert_eq!(english(5400.0, Decimals::exactly(0), nearest), "5,400");
        assert_eq!(
            english(1_234_567.891, Decimals::exactly(2), nearest),
            "1,234,567.89"
        );
        assert_eq!(english(-7.25, Decimals::exactly(1), nearest), "-7.3");
    }

    #[test]
    fn spanish_numbers_follow_the_locale_data() {
        // Unicode CLDR, `es`: decimal comma, groups of three, grouped from five digits on.
        let spanish = |value, decimals| {
            let decimals = Decimals::exactly(decimals);
            decimal(Language::Spanish, value, decimals, Rounding::Nearest)
        };
        assert_eq!(spanish(5400.0, 0), "5400");
        assert_eq!(spanish(12_500.0, 0), "12.500");
        assert_eq!(spanish(21.5, 1), "21,5");
    }

    #[test]
    fn each_side_of_rounding_keeps_to_its_side() {
        let one = Decimals::exactly(1);
        assert_eq!(english(42.567, one, Rounding::Up), "42.6");
        assert_eq!(english(42.51, one, Rounding::Up), "42.6");
        assert_eq!(english(2.99, one, Rounding::Down), "2.9");
        assert_eq!(english(-0.04, one, Rounding::Nearest), "0.0");
    }

    #[test]
    fn noise_of_the_arithmetic_adds_no_step() {
        // 0.1 + 0.2 is 0.30000000000000004 in binary floating point (IEEE 754).
        assert_eq!(rounded(0.1 + 0.2, 1, Rounding::Up), 0.3);
        assert_eq!(rounded(0.7 + 0.1, 1, Rounding::Down), 0.8);
        assert_eq!(rounded(0.31, 1, Rounding::Up), 0.4);
        assert_eq!(rounded(10_000.0, 9, Rounding::Nearest), 10_000.0);
        assert_eq!(rounded(-89.9, 9, Rounding::Nearest), -89.9);
    }

    #[test]
    fn spare_zeros_are_dropped_and_nothing_else() {
        let up_to = Decimals::up_to(2);
        assert_eq!(english(1.50, up_to, Rounding::Nearest), "1.5");
        assert_eq!(english(100.0, up_to, Rounding::Nearest), "100");
        assert_eq!(english(f64::NAN, up_to, Rounding::Nearest), "–");
    }
}
