//! Units as published works print them in both systems, through what people type and read.

use bolewalk_core::record::Quantity;
use bolewalk_core::words::{Language, UnitSystem, Words};

fn read(typed: &str, quantity: Quantity) -> f64 {
    Words::new(Language::English, UnitSystem::Metric)
        .read(typed, quantity, "")
        .unwrap()
}

#[test]
fn forces_in_pounds() {
    // ANSI Z133 (2000, 2006) as paraphrased: line 5,400 lbf = 24.02 kN, connectors 5,000 lbf =
    // 22.24 kN. The kilonewton rows by the factor of NIST SP 811 (2008), appendix B.8.
    let rows = [
        ("5,400 lbf", 24.02, 0.005),
        ("5,000 lbf", 22.24, 0.005),
        ("4,945.8 lbf", 22.0, 0.0003),
        ("5,170.6 lbf", 23.0, 0.0003),
        ("5,395.4 lbf", 24.0, 0.0003),
    ];
    for (typed, kn, within) in rows {
        assert!(
            (read(typed, Quantity::ForceKn) - kn).abs() < within,
            "{typed}"
        );
    }
}

#[test]
fn wind_in_miles_per_hour() {
    // Beaufort scale of the US National Weather Service: lower bounds in mph, converted to m/s.
    let rows = [
        (1, 0.45),
        (4, 1.79),
        (8, 3.58),
        (13, 5.81),
        (19, 8.49),
        (25, 11.18),
        (32, 14.31),
        (39, 17.43),
        (47, 21.01),
        (55, 24.59),
        (64, 28.61),
        (74, 33.08),
    ];
    for (mph, ms) in rows {
        let typed = format!("{mph} mph");
        assert!(
            (read(&typed, Quantity::SpeedMs) - ms).abs() < 0.005,
            "{typed}"
        );
    }
}

#[test]
fn approach_distances_in_feet() {
    // 29 CFR 1910.269 (2014), Table R-6, which prints metres and feet; rows from memory. The table
    // rounds the metres and the feet each by itself, upward or to the nearest.
    let rows = [
        (0.33, 1.09),
        (0.63, 2.07),
        (0.65, 2.14),
        (0.77, 2.53),
        (0.84, 2.76),
        (1.00, 3.29),
        (1.13, 3.71),
        (1.30, 4.27),
        (1.46, 4.79),
        (2.01, 6.59),
        (3.41, 11.19),
        (4.25, 13.94),
        (5.07, 16.63),
        (6.88, 22.57),
    ];
    for (metres, feet) in rows {
        let typed = format!("{feet} ft");
        assert!(
            (read(&typed, Quantity::LengthM) - metres).abs() < 0.006,
            "{typed}"
        );
    }
}

#[test]
fn lengths_masses_and_densities_by_their_exact_factors() {
    // NIST SP 811 (2008), appendix B.8: exact factors but for lb/ft³ and psi, given to 7 digits.
    let rows = [
        ("1 ft", Quantity::LengthM, 0.3048),
        ("1 in", Quantity::LengthMm, 25.4),
        ("1 yd", Quantity::LengthM, 0.9144),
        ("1 lb", Quantity::MassKg, 0.453_592_37),
        ("1 lb/ft³", Quantity::DensityKgM3, 16.018_46),
        ("1 psi", Quantity::StressMpa, 0.006_894_757),
        ("1 lbf·ft", Quantity::MomentKnM, 0.001_355_818),
        ("1 ft²", Quantity::AreaM2, 0.092_903_04),
        ("1 in³", Quantity::ModulusCm3, 16.387_064),
        ("1 kn", Quantity::SpeedMs, 0.514_444_4),
        ("32 °F", Quantity::TemperatureC, 0.0),
        ("212 °F", Quantity::TemperatureC, 100.0),
    ];
    for (typed, quantity, expected) in rows {
        let value = read(typed, quantity);
        assert!(
            (value - expected).abs() < 5e-7 * expected.max(0.1),
            "{typed}: {value}"
        );
    }
}
