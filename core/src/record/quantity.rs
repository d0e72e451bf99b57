//! What a number measures; its base unit follows.

use serde::{Deserialize, Serialize};

/// What a number measures. Each has one base unit in records and judgement; words show it in the
/// reader's.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// A length in metres: heights, distances.
    LengthM,
    /// A length in centimetres: girths, walls.
    LengthCm,
    /// A length in millimetres: rope diameters.
    LengthMm,
    /// An area in square metres.
    AreaM2,
    /// A mass in kilograms.
    MassKg,
    /// A density in kilograms per cubic metre.
    DensityKgM3,
    /// A force in kilonewtons.
    ForceKn,
    /// A bending moment in kilonewton metres.
    MomentKnM,
    /// A stress or strength in megapascals.
    StressMpa,
    /// A section modulus in cubic centimetres.
    ModulusCm3,
    /// An angle in degrees.
    AngleDeg,
    /// A bearing from true north in degrees.
    BearingDeg,
    /// A latitude or longitude in degrees.
    DegreesLatLon,
    /// A share in percent.
    Percent,
    /// A plain ratio or factor.
    Ratio,
    /// A speed in metres per second.
    SpeedMs,
    /// A wind force on the Beaufort scale.
    Beaufort,
    /// A temperature in degrees Celsius.
    TemperatureC,
    /// A voltage in kilovolts.
    VoltageKv,
    /// A time in seconds.
    DurationS,
    /// A time in minutes.
    DurationMin,
    /// A time in days.
    DurationDays,
    /// A time in months.
    DurationMonths,
    /// A time in years.
    DurationYears,
    /// A number of points of the score, 0 to 100.
    Points,
    /// A plain count.
    Count,
}

impl Quantity {
    /// The symbol of the base unit, empty where there is none.
    pub fn unit_symbol(self) -> &'static str {
        match self {
            Quantity::LengthM => "m",
            Quantity::LengthCm => "cm",
            Quantity::LengthMm => "mm",
            Quantity::AreaM2 => "m²",
            Quantity::MassKg => "kg",
            Quantity::DensityKgM3 => "kg/m³",
            Quantity::ForceKn => "kN",
            Quantity::MomentKnM => "kN·m",
            Quantity::StressMpa => "MPa",
            Quantity::ModulusCm3 => "cm³",
            Quantity::AngleDeg | Quantity::BearingDeg | Quantity::DegreesLatLon => "°",
            Quantity::Percent => "%",
            Quantity::SpeedMs => "m/s",
            Quantity::TemperatureC => "°C",
            Quantity::VoltageKv => "kV",
            Quantity::DurationS => "s",
            Quantity::DurationMin => "min",
            Quantity::DurationDays => "d",
            Quantity::DurationMonths => "months",
            Quantity::DurationYears => "a",
            Quantity::Ratio | Quantity::Beaufort | Quantity::Points | Quantity::Count => "",
        }
    }
}
