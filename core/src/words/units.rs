//! Metric and imperial: which unit a quantity is shown in, and with how many digits.
//!
//! Factors: NIST Special Publication 811 (2008), appendix B. 0.3048 m/ft, 25.4 mm/in,
//! 0.45359237 kg/lb and g = 9.80665 m/s² are exact, hence 4.4482216152605 N/lbf.

use serde::{Deserialize, Serialize};

use super::numbers::Decimals;
use crate::record::Quantity;

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

#[cfg(test)]
mod tests {
    use super::*;

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
}
