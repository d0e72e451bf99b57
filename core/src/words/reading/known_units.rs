//! The units that people type, by their signs and their names in every language.
//!
//! Factors: NIST Special Publication 811 (2008), appendix B.

use super::super::units::{
    CM_PER_IN, KG_PER_LB, KN_PER_LBF, M_PER_FT, MPA_PER_PSI, MS_PER_MPH, UnitSystem, unit_of,
};
use crate::record::Quantity;

/// A unit that was typed. `base = typed × factor + offset`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct KnownUnit {
    /// Its first name.
    pub name: &'static str,
    factor: f64,
    offset: f64,
}

impl KnownUnit {
    /// The value in the base unit of the quantity.
    pub(super) fn base(self, typed: f64) -> f64 {
        typed * self.factor + self.offset
    }
}

type Row = (&'static [&'static str], f64);

/// Lengths in metres.
const LENGTHS: &[Row] = &[
    (
        &["m", "meter", "meters", "metre", "metres", "metro", "metros"],
        1.0,
    ),
    (
        &[
            "cm",
            "centimeter",
            "centimeters",
            "centimetre",
            "centimetres",
            "centímetro",
            "centímetros",
        ],
        0.01,
    ),
    (
        &[
            "mm",
            "millimeter",
            "millimeters",
            "millimetre",
            "millimetres",
            "milímetro",
            "milímetros",
        ],
        0.001,
    ),
    (&["ft", "'", "foot", "feet", "pie", "pies"], M_PER_FT),
    (
        &["in", "\"", "inch", "inches", "pulg", "pulgada", "pulgadas"],
        CM_PER_IN / 100.0,
    ),
    (&["yd", "yard", "yards", "yarda", "yardas"], 3.0 * M_PER_FT),
];
/// Areas in square metres.
const AREAS: &[Row] = &[
    (&["m²", "m2", "sqm"], 1.0),
    (
        &["ft²", "ft2", "sqft", "pies²", "pies2"],
        M_PER_FT * M_PER_FT,
    ),
];
/// Masses in kilograms.
const MASSES: &[Row] = &[
    (
        &[
            "kg",
            "kilo",
            "kilos",
            "kilogram",
            "kilograms",
            "kilogramo",
            "kilogramos",
        ],
        1.0,
    ),
    (&["g", "gram", "grams", "gramo", "gramos"], 0.001),
    (&["t", "tonne", "tonnes", "tonelada", "toneladas"], 1000.0),
    (
        &["lb", "lbs", "pound", "pounds", "libra", "libras"],
        KG_PER_LB,
    ),
];
const DENSITIES: &[Row] = &[
    (&["kg/m³", "kg/m3"], 1.0),
    (
        &["lb/ft³", "lb/ft3", "lb/pie³", "lb/pie3"],
        KG_PER_LB / (M_PER_FT * M_PER_FT * M_PER_FT),
    ),
];
/// Forces in kilonewtons. Gear is marked in pounds where pounds-force are meant.
const FORCES: &[Row] = &[
    (&["kn", "kilonewton", "kilonewtons"], 1.0),
    (&["n", "newton", "newtons"], 0.001),
    (&["dan"], 0.01),
    (
        &["lbf", "lb", "lbs", "pound", "pounds", "libra", "libras"],
        KN_PER_LBF,
    ),
];
const MOMENTS: &[Row] = &[
    (&["kn·m", "knm"], 1.0),
    (
        &["lbf·ft", "lbfft", "lb·ft", "lbft", "lbf·pie"],
        KN_PER_LBF * M_PER_FT,
    ),
];
const STRESSES: &[Row] = &[(&["mpa", "n/mm²", "n/mm2"], 1.0), (&["psi"], MPA_PER_PSI)];
const MODULI: &[Row] = &[
    (&["cm³", "cm3"], 1.0),
    (
        &["in³", "in3", "pulg³", "pulg3"],
        CM_PER_IN * CM_PER_IN * CM_PER_IN,
    ),
];
const ANGLES: &[Row] = &[(&["°", "deg", "degree", "degrees", "grado", "grados"], 1.0)];
const PERCENTS: &[Row] = &[(&["%", "percent", "pct", "porciento"], 1.0)];
const RATIOS: &[Row] = &[(&["%", "percent", "porciento"], 0.01)];
/// Speeds in metres per second. The international knot is 1852 m an hour.
const SPEEDS: &[Row] = &[
    (&["m/s", "mps"], 1.0),
    (&["km/h", "kmh", "kph"], 1.0 / 3.6),
    (&["mph"], MS_PER_MPH),
    (
        &["kn", "kt", "kts", "knot", "knots", "nudo", "nudos"],
        1852.0 / 3600.0,
    ),
];
const FORCES_OF_WIND: &[Row] = &[(&["force", "bft", "beaufort", "fuerza"], 1.0)];
const VOLTAGES: &[Row] = &[
    (
        &["kv", "kilovolt", "kilovolts", "kilovoltio", "kilovoltios"],
        1.0,
    ),
    (&["v", "volt", "volts", "voltio", "voltios"], 0.001),
];
/// Times in seconds.
const TIMES: &[Row] = &[
    (
        &[
            "s", "sec", "secs", "second", "seconds", "segundo", "segundos",
        ],
        1.0,
    ),
    (
        &["min", "mins", "minute", "minutes", "minuto", "minutos"],
        60.0,
    ),
    (
        &["h", "hr", "hrs", "hour", "hours", "hora", "horas"],
        3600.0,
    ),
];
const DAYS: &[Row] = &[
    (&["days", "day", "d", "día", "días"], 1.0),
    (&["weeks", "week", "semana", "semanas"], 7.0),
];
/// Calendar times in months.
const MONTHS: &[Row] = &[
    (&["months", "month", "mes", "meses"], 1.0),
    (&["years", "year", "yr", "yrs", "y", "año", "años"], 12.0),
];
const POINTS: &[Row] = &[(&["points", "point", "punto", "puntos"], 1.0)];

/// The table of a quantity, and the size of its base unit in the unit of the table.
fn table_of(quantity: Quantity) -> (&'static [Row], f64) {
    match quantity {
        Quantity::LengthM => (LENGTHS, 1.0),
        Quantity::LengthCm => (LENGTHS, 0.01),
        Quantity::LengthMm => (LENGTHS, 0.001),
        Quantity::AreaM2 => (AREAS, 1.0),
        Quantity::MassKg => (MASSES, 1.0),
        Quantity::DensityKgM3 => (DENSITIES, 1.0),
        Quantity::ForceKn => (FORCES, 1.0),
        Quantity::MomentKnM => (MOMENTS, 1.0),
        Quantity::StressMpa => (STRESSES, 1.0),
        Quantity::ModulusCm3 => (MODULI, 1.0),
        Quantity::AngleDeg | Quantity::BearingDeg | Quantity::DegreesLatLon => (ANGLES, 1.0),
        Quantity::Percent => (PERCENTS, 1.0),
        Quantity::Ratio => (RATIOS, 1.0),
        Quantity::SpeedMs => (SPEEDS, 1.0),
        Quantity::Beaufort => (FORCES_OF_WIND, 1.0),
        Quantity::TemperatureC | Quantity::Count => (&[], 1.0),
        Quantity::VoltageKv => (VOLTAGES, 1.0),
        Quantity::DurationS => (TIMES, 1.0),
        Quantity::DurationMin => (TIMES, 60.0),
        Quantity::DurationDays => (DAYS, 1.0),
        Quantity::DurationMonths => (MONTHS, 1.0),
        Quantity::DurationYears => (MONTHS, 12.0),
        Quantity::Points => (POINTS, 1.0),
    }
}

/// The unit of that name, if it measures the quantity.
pub(super) fn known_unit(typed: &str, quantity: Quantity) -> Option<KnownUnit> {
    if quantity == Quantity::TemperatureC {
        return temperature(typed);
    }
    let (table, base) = table_of(quantity);
    table.iter().find_map(|(names, factor)| {
        names.contains(&typed).then(|| KnownUnit {
            name: names.first().copied().unwrap_or(""),
            factor: factor / base,
            offset: 0.0,
        })
    })
}

/// Temperatures, whose scales do not share their zero.
fn temperature(typed: &str) -> Option<KnownUnit> {
    let (name, units) = match typed {
        "°c" | "c" | "celsius" => ("°c", UnitSystem::Metric),
        "°f" | "f" | "fahrenheit" => ("°f", UnitSystem::Imperial),
        _ => return None,
    };
    let unit = unit_of(Quantity::TemperatureC, units);
    Some(KnownUnit {
        name,
        factor: unit.factor,
        offset: unit.offset,
    })
}

/// The unit that may follow another without being named: `5 ft 11`, `1 m 80`, `1 h 30`.
pub(super) fn follower_of(name: &str) -> Option<&'static str> {
    match name {
        "ft" => Some("in"),
        "m" => Some("cm"),
        "h" => Some("min"),
        "min" => Some("s"),
        _ => None,
    }
}
