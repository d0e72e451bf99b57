//! Metric and imperial: which unit a quantity is shown in, and with how many digits.
//!
//! Factors: NIST Special Publication 811 (2008), appendix B. 0.3048 m/ft, 25.4 mm/in,
//! 0.45359237 kg/lb and g = 9.80665 m/s² are exact, hence 4.4482216152605 N/lbf.

use serde::{Deserialize, Serialize};

use super::catalogue::{Said, Words};
use super::numbers::{Decimals, Rounding, decimal, rounded};
use crate::record::{NumberField, Quantity};

/// The units that a reader works in.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum UnitSystem {
    /// Metres, kilograms, degrees Celsius.
    Metric,
    /// Feet, pounds, degrees Fahrenheit.
    Imperial,
}

/// Metres in a foot.
pub(super) const M_PER_FT: f64 = 0.3048;
/// Centimetres in an inch.
pub(super) const CM_PER_IN: f64 = 2.54;
/// Kilograms in a pound.
pub(super) const KG_PER_LB: f64 = 0.453_592_37;
/// Kilonewtons in a pound-force.
pub(super) const KN_PER_LBF: f64 = 0.004_448_221_615_260_5;
/// Metres per second in a mile per hour.
pub(super) const MS_PER_MPH: f64 = 0.447_04;
/// Megapascals in a pound-force per square inch.
pub(super) const MPA_PER_PSI: f64 = KN_PER_LBF * 1000.0 / (25.4 * 25.4);

/// A unit as shown: the catalogue entry `unit.<code>` puts the number before or after its symbol.
/// `value in base units = shown × factor + offset`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct ShownUnit {
    /// Code of the catalogue entry.
    pub code: &'static str,
    /// Base units in one shown unit.
    pub factor: f64,
    /// Base value at a shown zero.
    pub offset: f64,
}

impl ShownUnit {
    const fn of(code: &'static str, factor: f64) -> Self {
        ShownUnit {
            code,
            factor,
            offset: 0.0,
        }
    }

    /// From the base unit to this one.
    pub(super) fn shown(self, base: f64) -> f64 {
        (base - self.offset) / self.factor
    }

    /// From this unit to the base unit.
    pub(super) fn base(self, shown: f64) -> f64 {
        shown * self.factor + self.offset
    }
}

/// The one unit in which a reader sees a quantity.
pub(super) fn unit_of(quantity: Quantity, units: UnitSystem) -> ShownUnit {
    use Quantity as Q;
    use UnitSystem::{Imperial, Metric};
    match (quantity, units) {
        (Q::LengthM, Metric) => ShownUnit::of("m", 1.0),
        (Q::LengthM, Imperial) => ShownUnit::of("ft", M_PER_FT),
        (Q::LengthCm, Metric) => ShownUnit::of("cm", 1.0),
        (Q::LengthCm, Imperial) => ShownUnit::of("in", CM_PER_IN),
        (Q::LengthMm, Metric) => ShownUnit::of("mm", 1.0),
        (Q::LengthMm, Imperial) => ShownUnit::of("in", CM_PER_IN * 10.0),
        (Q::AreaM2, Metric) => ShownUnit::of("m2", 1.0),
        (Q::AreaM2, Imperial) => ShownUnit::of("ft2", M_PER_FT * M_PER_FT),
        (Q::MassKg, Metric) => ShownUnit::of("kg", 1.0),
        (Q::MassKg, Imperial) => ShownUnit::of("lb", KG_PER_LB),
        (Q::DensityKgM3, Metric) => ShownUnit::of("kg-m3", 1.0),
        (Q::DensityKgM3, Imperial) => {
            ShownUnit::of("lb-ft3", KG_PER_LB / (M_PER_FT * M_PER_FT * M_PER_FT))
        }
        (Q::ForceKn, Metric) => ShownUnit::of("kn", 1.0),
        (Q::ForceKn, Imperial) => ShownUnit::of("lbf", KN_PER_LBF),
        (Q::MomentKnM, Metric) => ShownUnit::of("kn-m", 1.0),
        (Q::MomentKnM, Imperial) => ShownUnit::of("lbf-ft", KN_PER_LBF * M_PER_FT),
        (Q::StressMpa, Metric) => ShownUnit::of("mpa", 1.0),
        (Q::StressMpa, Imperial) => ShownUnit::of("psi", MPA_PER_PSI),
        (Q::ModulusCm3, Metric) => ShownUnit::of("cm3", 1.0),
        (Q::ModulusCm3, Imperial) => ShownUnit::of("in3", CM_PER_IN * CM_PER_IN * CM_PER_IN),
        (Q::SpeedMs, Metric) => ShownUnit::of("m-s", 1.0),
        (Q::SpeedMs, Imperial) => ShownUnit::of("mph", MS_PER_MPH),
        (Q::TemperatureC, Metric) => ShownUnit::of("deg-c", 1.0),
        (Q::TemperatureC, Imperial) => ShownUnit {
            code: "deg-f",
            factor: 5.0 / 9.0,
            offset: -160.0 / 9.0,
        },
        (Q::AngleDeg | Q::BearingDeg | Q::DegreesLatLon, _) => ShownUnit::of("deg", 1.0),
        (Q::Percent, _) => ShownUnit::of("percent", 1.0),
        (Q::Beaufort, _) => ShownUnit::of("beaufort", 1.0),
        (Q::VoltageKv, _) => ShownUnit::of("kv", 1.0),
        (Q::DurationS, _) => ShownUnit::of("s", 1.0),
        (Q::DurationMin, _) => ShownUnit::of("min", 1.0),
        (Q::DurationDays, _) => ShownUnit::of("days", 1.0),
        (Q::DurationMonths, _) => ShownUnit::of("months", 1.0),
        (Q::DurationYears, _) => ShownUnit::of("years", 1.0),
        (Q::Points, _) => ShownUnit::of("points", 1.0),
        (Q::Ratio | Q::Count, _) => ShownUnit::of("plain", 1.0),
    }
}

/// Digits that a value of this size is worth, in the unit shown.
pub(super) fn decimals_of(quantity: Quantity, units: UnitSystem, shown: f64) -> Decimals {
    use Quantity as Q;
    let size = shown.abs();
    let small = |limit: f64, below: Decimals, above: Decimals| {
        if size < limit { below } else { above }
    };
    match (quantity, units) {
        (Q::LengthM, UnitSystem::Metric) => {
            small(3.0, Decimals { least: 1, most: 2 }, Decimals::exactly(1))
        }
        (Q::LengthM, UnitSystem::Imperial) => small(10.0, Decimals::up_to(1), Decimals::exactly(0)),
        (Q::LengthCm, _) => small(100.0, Decimals::up_to(1), Decimals::exactly(0)),
        (Q::LengthMm, UnitSystem::Metric) => Decimals::up_to(1),
        (Q::LengthMm, UnitSystem::Imperial) => Decimals::up_to(2),
        (Q::ForceKn | Q::MomentKnM, UnitSystem::Metric) => {
            small(10.0, Decimals::exactly(2), Decimals::exactly(1))
        }
        (Q::StressMpa | Q::SpeedMs, UnitSystem::Metric) => Decimals::exactly(1),
        (Q::ForceKn | Q::MomentKnM | Q::StressMpa | Q::SpeedMs, UnitSystem::Imperial) => {
            Decimals::exactly(0)
        }
        (Q::MassKg, _) => small(10.0, Decimals::up_to(1), Decimals::exactly(0)),
        (Q::AreaM2 | Q::DensityKgM3 | Q::ModulusCm3 | Q::TemperatureC, _) => Decimals::exactly(0),
        (Q::AngleDeg | Q::BearingDeg | Q::Percent, _) => Decimals::up_to(1),
        (Q::DegreesLatLon, _) => Decimals::exactly(5),
        (Q::Ratio, _) => Decimals { least: 1, most: 2 },
        (Q::VoltageKv, _) => Decimals::up_to(2),
        (Q::Beaufort | Q::Points | Q::Count, _) => Decimals::exactly(0),
        (Q::DurationS | Q::DurationMin, _) => Decimals::up_to(1),
        (Q::DurationDays | Q::DurationMonths | Q::DurationYears, _) => Decimals::up_to(1),
    }
}

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
        let low = self.number_toward(field.min, field.quantity, Rounding::Up);
        let high = self.number_toward(field.max, field.quantity, Rounding::Down);
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

    fn with_unit(
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

#[cfg(test)]
mod tests {
    use super::super::catalogue::Language;
    use super::*;

    fn metric() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    fn imperial() -> Words {
        Words::new(Language::English, UnitSystem::Imperial)
    }

    #[test]
    fn factors_are_those_of_nist_sp_811() {
        // NIST SP 811 (2008), appendix B.8.
        assert_eq!(M_PER_FT, 0.3048);
        assert_eq!(CM_PER_IN * 10.0, 25.4);
        assert_eq!(KG_PER_LB, 0.453_592_37);
        assert!((KN_PER_LBF - 0.453_592_37 * 9.806_65 / 1000.0).abs() < 1e-17);
        assert!((MPA_PER_PSI * 1000.0 - 6.894_757).abs() < 5e-7);
        assert!((MS_PER_MPH - 1609.344 / 3600.0).abs() < 1e-15);
        let density = unit_of(Quantity::DensityKgM3, UnitSystem::Imperial);
        assert!((density.factor - 16.018_46).abs() < 5e-6);
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
            "0.5 m to 116.0 m"
        );
        assert_eq!(
            imperial().range_of(&crate::record::HEIGHT_M),
            "1.7 ft to 380 ft"
        );
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
