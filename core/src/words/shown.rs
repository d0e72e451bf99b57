//! How values are shown: with one unit, rounded toward the side that is safe.

use super::catalogue::{Said, Words};
use super::numbers::{Decimals, Rounding, decimal, rounded};
use super::units::{CM_PER_IN, ShownUnit, UnitSystem, decimals_of, unit_of};
use crate::record::{NumberField, Quantity};

/// Distances that a rule publishes in both systems with figures of their own: metres and feet.
/// 29 CFR 1910.333(c)(3)(i)(A): 10 ft and 3.05 m; ANSI Z133 as summarised in the trade press:
/// 20 ft and 6.1 m.
const PUBLISHED_IN_BOTH_M_FT: [(f64, f64); 2] = [(3.05, 10.0), (6.1, 20.0)];

impl Words {
    /// A value with its unit, rounded to the nearest: `21.5 m`, `71 ft`. `value` is in the base
    /// unit of the quantity.
    pub fn number(&self, value: f64, quantity: Quantity) -> String {
        self.number_toward(value, quantity, Rounding::Nearest)
    }

    /// A value that somebody set, with its unit and every digit that it has: `0.005` where
    /// [`Words::number`] says `0.01`.
    pub fn number_in_full(&self, value: f64, quantity: Quantity) -> String {
        let unit = unit_of(quantity, self.units());
        let shown = self.reader_figure(value, quantity, unit);
        let usual = decimals_of(quantity, self.units(), shown);
        let most = usual.most.max(own_decimals(unit, value));
        let decimals = Decimals { most, ..usual };
        self.with_unit(unit, shown, decimals, Rounding::Nearest)
    }

    /// A value with its unit, rounded toward the side that is safe.
    pub fn number_toward(&self, value: f64, quantity: Quantity, rounding: Rounding) -> String {
        let unit = unit_of(quantity, self.units());
        let shown = self.reader_figure(value, quantity, unit);
        let decimals = decimals_of(quantity, self.units(), shown);
        self.with_unit(unit, shown, decimals, rounding)
    }

    /// The bare figure in the reader's unit, for columns whose head carries the unit.
    pub fn figure(&self, value: f64, quantity: Quantity, rounding: Rounding) -> String {
        let unit = unit_of(quantity, self.units());
        let shown = self.reader_figure(value, quantity, unit);
        let decimals = decimals_of(quantity, self.units(), shown);
        decimal(self.language(), shown, decimals, rounding)
    }

    /// The symbol of the reader's unit alone, for the head of a column: `m`, `ft`; empty for
    /// numbers without unit.
    pub fn unit_symbol(&self, quantity: Quantity) -> String {
        let code = unit_of(quantity, self.units()).code;
        self.say(&format!("symbol.{code}"), &[])
    }

    /// A distance in metres that people keep, never printed smaller than it is: `42.6 m`, `140 ft`.
    pub fn distance_up(&self, distance_m: f64) -> String {
        self.number_toward(distance_m, Quantity::LengthM, Rounding::Up)
    }

    /// A margin, never printed larger than it is: `2.9`.
    pub fn margin_down(&self, margin: f64) -> String {
        decimal(
            self.language(),
            margin,
            Decimals::exactly(1),
            Rounding::Down,
        )
    }

    /// A value with its standard error in the same digits: `21.5 m ± 0.4 m`, `70.5 ft ± 1.3 ft`.
    /// Without an error, or with one that is no number, the value alone.
    pub fn measure_with_se(&self, value: f64, se: Option<f64>, quantity: Quantity) -> String {
        let Some(se) = se.filter(|se| se.is_finite() && *se > 0.0) else {
            return self.number(value, quantity);
        };
        let unit = unit_of(quantity, self.units());
        let shown_se = (se / unit.factor).abs();
        let decimals = Decimals::exactly(decimals_of_se(shown_se));
        let value = self.with_unit(unit, unit.shown(value), decimals, Rounding::Nearest);
        let se = self.with_unit(unit, shown_se, decimals, Rounding::Nearest);
        self.say(
            "measure.with-se",
            &[("value", Said::Text(&value)), ("se", Said::Text(&se))],
        )
    }

    /// A girth: `188 cm`, or in feet and inches `6 ft 2 in`.
    pub fn girth(&self, girth_cm: f64) -> String {
        let whole_inches = rounded(girth_cm / CM_PER_IN, 0, Rounding::Nearest);
        if self.units() == UnitSystem::Metric || whole_inches < 12.0 || !whole_inches.is_finite() {
            return self.number(girth_cm, Quantity::LengthCm);
        }
        let feet = (whole_inches / 12.0).floor();
        let inches = whole_inches - feet * 12.0;
        let figure = |value| {
            decimal(
                self.language(),
                value,
                Decimals::exactly(0),
                Rounding::Nearest,
            )
        };
        self.say(
            "measure.feet-and-inches",
            &[
                ("feet", Said::Text(&figure(feet))),
                ("feet-value", Said::Plural(feet)),
                ("inches", Said::Text(&figure(inches))),
            ],
        )
    }

    /// The side or direction of a bearing in degrees, as one of eight points: `northwest`.
    pub fn side(&self, bearing_deg: f64) -> String {
        self.say(&format!("side.{}", point_of(bearing_deg)), &[])
    }

    /// The same on a plan: `NW`.
    pub fn side_short(&self, bearing_deg: f64) -> String {
        self.say(&format!("side-short.{}", point_of(bearing_deg)), &[])
    }

    /// What a number field allows: `1.7 ft to 380 ft`, ends drawn inward so that both are allowed.
    pub fn range_of(&self, field: &NumberField) -> String {
        let unit = unit_of(field.quantity, self.units());
        let end = |value, rounding| {
            let shown = unit.shown(value);
            let usual = decimals_of(field.quantity, self.units(), shown).most;
            let most = usual.max(own_decimals(unit, value));
            self.with_unit(unit, shown, Decimals::up_to(most), rounding)
        };
        let low = end(field.min, Rounding::Up);
        let high = end(field.max, Rounding::Down);
        self.say(
            "measure.from-to",
            &[("low", Said::Text(&low)), ("high", Said::Text(&high))],
        )
    }

    fn reader_figure(&self, value: f64, quantity: Quantity, unit: ShownUnit) -> f64 {
        if quantity == Quantity::LengthM && self.units() == UnitSystem::Imperial {
            for (metres, feet) in PUBLISHED_IN_BOTH_M_FT {
                if (value - metres).abs() < 1e-9 {
                    return feet;
                }
            }
        }
        unit.shown(value)
    }

    pub(super) fn with_unit(
        &self,
        unit: ShownUnit,
        shown: f64,
        decimals: Decimals,
        rounding: Rounding,
    ) -> String {
        let figure = decimal(self.language(), shown, decimals, rounding);
        // The entry may choose a singular by the number as it is printed.
        let printed = rounded(shown, decimals.most, rounding);
        self.say(
            &format!("unit.{}", unit.code),
            &[
                ("number", Said::Text(&figure)),
                ("value", Said::Plural(printed)),
            ],
        )
    }
}

/// Digits of a standard error: one decimal, or as many as it takes until it is not zero, up to 3.
fn decimals_of_se(se: f64) -> u8 {
    (1..3)
        .find(|decimals| rounded(se, *decimals, Rounding::Nearest) > 0.0)
        .unwrap_or(3)
}

/// One of eight points of the compass, by its short English letters.
fn point_of(bearing_deg: f64) -> &'static str {
    const POINTS: [&str; 8] = ["n", "ne", "e", "se", "s", "sw", "w", "nw"];
    let eighth = (bearing_deg.rem_euclid(360.0) / 45.0).round();
    if !eighth.is_finite() {
        return "n";
    }
    POINTS.get(eighth as usize % 8).copied().unwrap_or("n")
}

/// The decimals that a value has by itself, at most six; none where another unit is shown, for the
/// conversion adds digits that nobody set.
fn own_decimals(unit: ShownUnit, value: f64) -> u8 {
    if unit.factor != 1.0 || unit.offset != 0.0 {
        return 0;
    }
    let digits = format!("{value}");
    let own = digits.split_once('.').map_or(0, |(_, after)| after.len());
    own.min(6) as u8
}

#[cfg(test)]
mod tests {
    use super::super::catalogue::Language;
    use super::super::units::KN_PER_LBF;
    use super::*;

    fn metric() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    fn imperial() -> Words {
        Words::new(Language::English, UnitSystem::Imperial)
    }

    #[test]
    fn rope_strengths_agree_with_the_published_pairs() {
        // ANSI Z133 (2000, 2006) as paraphrased: 5,400 lbf is 24.02 kN; 5,000 lbf is 22.24 kN.
        assert!((5400.0 * KN_PER_LBF - 24.02).abs() < 0.005);
        assert!((5000.0 * KN_PER_LBF - 22.24).abs() < 0.005);
        assert_eq!(imperial().number(22.0, Quantity::ForceKn), "4,946 lbf");
        assert_eq!(imperial().number(24.0, Quantity::ForceKn), "5,395 lbf");
        assert_eq!(metric().number(24.02, Quantity::ForceKn), "24.0 kN");
    }

    #[test]
    fn temperatures_hold_at_the_fixed_points() {
        // Celsius and Fahrenheit scales: water freezes at 0 °C, 32 °F, boils at 100 °C, 212 °F.
        assert_eq!(imperial().number(0.0, Quantity::TemperatureC), "32 °F");
        assert_eq!(imperial().number(100.0, Quantity::TemperatureC), "212 °F");
        assert_eq!(imperial().number(-40.0, Quantity::TemperatureC), "-40 °F");
    }

    #[test]
    fn a_measure_keeps_its_error_in_the_same_digits() {
        let height = Quantity::LengthM;
        assert_eq!(
            metric().measure_with_se(21.5, Some(0.4), height),
            "21.5 m ± 0.4 m"
        );
        assert_eq!(
            imperial().measure_with_se(21.5, Some(0.4), height),
            "70.5 ft ± 1.3 ft"
        );
        assert_eq!(metric().measure_with_se(21.5, None, height), "21.5 m");
        assert_eq!(
            metric().measure_with_se(0.42, Some(0.031), Quantity::LengthM),
            "0.42 m ± 0.03 m"
        );
        assert_eq!(
            imperial().measure_with_se(20.0, Some(5.0), Quantity::TemperatureC),
            "68.0 °F ± 9.0 °F"
        );
    }

    #[test]
    fn distances_go_up_and_margins_down() {
        // 2 L for H = 20 m at 20° of lean is 42.567 m (plane trigonometry).
        assert_eq!(metric().distance_up(42.567), "42.6 m");
        assert_eq!(imperial().distance_up(42.567), "140 ft");
        assert_eq!(metric().margin_down(2.999), "2.9");
    }

    #[test]
    fn a_rule_published_in_both_systems_shows_the_readers_own_figure() {
        // 29 CFR 1910.333(c)(3)(i)(A): 10 ft, 3.05 m.
        assert_eq!(imperial().distance_up(3.05), "10 ft");
        assert_eq!(imperial().distance_up(6.1), "20 ft");
        assert_eq!(metric().distance_up(6.1), "6.1 m");
    }

    #[test]
    fn girths_are_read_in_feet_and_inches() {
        assert_eq!(metric().girth(188.0), "188 cm");
        assert_eq!(imperial().girth(188.0), "6 ft 2 in");
        assert_eq!(imperial().girth(182.0), "6 ft 0 in");
        assert_eq!(imperial().girth(25.4), "10 in");
    }

    #[test]
    fn spanish_values_have_a_decimal_comma() {
        let metric = Words::new(Language::Spanish, UnitSystem::Metric);
        let imperial = Words::new(Language::Spanish, UnitSystem::Imperial);
        assert_eq!(metric.number(21.5, Quantity::LengthM), "21,5 m");
        assert_eq!(
            metric.measure_with_se(21.5, Some(0.4), Quantity::LengthM),
            "21,5 m ± 0,4 m"
        );
        assert_eq!(imperial.girth(188.0), "6 pies 2 pulg");
        assert_eq!(imperial.girth(50.0), "1 pie 8 pulg");
        // Between the number and the sign stands a space (Real Academia Española, Ortografía).
        assert_eq!(metric.number(20.0, Quantity::Percent), "20 %");
        assert_eq!(metric.side_short(-45.0), "NO");
    }

    #[test]
    fn bearings_have_eight_points() {
        assert_eq!(metric().side(337.4), "northwest");
        assert_eq!(metric().side(337.6), "north");
        assert_eq!(metric().side_short(90.0), "E");
        assert_eq!(metric().side(-45.0), "northwest");
    }

    #[test]
    fn ranges_are_drawn_inward() {
        assert_eq!(
            metric().range_of(&crate::record::HEIGHT_M),
            "0.5 m to 116 m"
        );
        assert_eq!(
            imperial().range_of(&crate::record::HEIGHT_M),
            "1.7 ft to 380 ft"
        );
    }

    #[test]
    fn both_printed_ends_of_every_range_are_allowed() {
        let both = [UnitSystem::Metric, UnitSystem::Imperial];
        let readers = Language::ALL.map(|language| both.map(|units| Words::new(language, units)));
        for words in readers.into_iter().flatten() {
            for field in crate::record::NUMBER_FIELDS {
                let range = words.range_of(field);
                let between = match words.language() {
                    Language::English => " to ",
                    Language::Spanish => " a ",
                };
                for end in range.split(between) {
                    let read = words.read_field(end, field, field.id);
                    assert!(read.is_ok(), "{end} of {range}: {read:?}");
                }
            }
        }
    }

    #[test]
    fn durations_and_forces_are_worded_by_their_number() {
        assert_eq!(metric().number(1.0, Quantity::DurationMonths), "1 month");
        assert_eq!(metric().number(6.0, Quantity::DurationMonths), "6 months");
        assert_eq!(metric().number(4.0, Quantity::Beaufort), "force 4");
        assert_eq!(
            imperial().number(19.0 * 0.447_04, Quantity::SpeedMs),
            "19 mph"
        );
        assert_eq!(imperial().number(12.7, Quantity::LengthMm), "0.5 in");
    }
}
