use proptest::prelude::*;

use super::super::UnitSystem;
use super::super::catalogue::Language;
use super::super::numbers::Rounding;
use super::super::units::decimals_of;
use super::*;

fn words(units: UnitSystem) -> Words {
    Words::new(Language::English, units)
}

/// Every language with every unit system.
fn readers() -> Vec<(Language, UnitSystem)> {
    let both = [UnitSystem::Metric, UnitSystem::Imperial];
    let of = |language| both.map(move |units| (language, units));
    Language::ALL.into_iter().flat_map(of).collect()
}

fn metric(typed: &str, quantity: Quantity) -> Result<f64, String> {
    words(UnitSystem::Metric)
        .read(typed, quantity, "here")
        .map_err(|fault| fault.code)
}

fn imperial(typed: &str, quantity: Quantity) -> Result<f64, String> {
    words(UnitSystem::Imperial)
        .read(typed, quantity, "here")
        .map_err(|fault| fault.code)
}

fn near(read: Result<f64, String>, expected: f64) {
    let value = read.unwrap();
    assert!(
        (value - expected).abs() < 1e-9 * expected.abs().max(1.0),
        "{value} is not {expected}"
    );
}

#[test]
fn feet_and_inches_are_read_as_people_write_them() {
    // 5 ft 11 in = 71 in = 1.8034 m (NIST SP 811: 25.4 mm an inch, exact).
    for typed in [
        "5 ft 11",
        "5'11\"",
        "5' 11''",
        "5ft 11in",
        "5 feet 11 inches",
        "71 in",
        "71\"",
        "5’11”",
        "5 FT. 11 IN.",
        "5′ 11″",
        "180.34 cm",
        "1.8034 m",
        "1m 80.34",
    ] {
        near(metric(typed, Quantity::LengthM), 1.8034);
        near(imperial(typed, Quantity::LengthM), 1.8034);
    }
    near(imperial("60'", Quantity::LengthM), 18.288);
    near(imperial("60", Quantity::LengthM), 18.288);
    near(imperial("6 ft 2 in", Quantity::LengthCm), 187.96);
    near(imperial("1/2 in", Quantity::LengthMm), 12.7);
    near(imperial("5 1/2 in", Quantity::LengthCm), 13.97);
    near(imperial("5½\"", Quantity::LengthCm), 13.97);
}

#[test]
fn decimals_and_thousands_are_told_apart() {
    for (typed, expected) in [
        ("1,80", 1.8),
        ("21,5", 21.5),
        ("21.5", 21.5),
        (".5", 0.5),
        ("0,125", 0.125),
        ("5,400", 5400.0),
        ("1,234.5", 1234.5),
        ("1.234,5", 1234.5),
        ("1 234,5", 1234.5),
        ("12 500", 12_500.0),
        ("1,234,567", 1_234_567.0),
        ("−7", -7.0),
        ("+7", 7.0),
    ] {
        near(metric(typed, Quantity::Ratio), expected);
    }
}

#[test]
fn other_units_are_read_in_either_system() {
    near(metric("5,400 lbf", Quantity::ForceKn), 24.020_396_722_406_7);
    near(metric("5400 lbs", Quantity::ForceKn), 24.020_396_722_406_7);
    near(metric("198.4 lb", Quantity::MassKg), 198.4 * 0.453_592_37);
    near(metric("19 mph", Quantity::SpeedMs), 19.0 * 0.447_04);
    near(metric("36 km/h", Quantity::SpeedMs), 10.0);
    near(imperial("68", Quantity::TemperatureC), 20.0);
    near(imperial("20 °C", Quantity::TemperatureC), 20.0);
    near(metric("-40 F", Quantity::TemperatureC), -40.0);
    near(metric("7200 V", Quantity::VoltageKv), 7.2);
    near(metric("force 4", Quantity::Beaufort), 4.0);
    near(metric("2 years", Quantity::DurationMonths), 24.0);
    near(metric("1 h 30", Quantity::DurationMin), 90.0);
    near(metric("45°", Quantity::AngleDeg), 45.0);
    near(metric("70 %", Quantity::Ratio), 0.7);
}

#[test]
fn bearings_are_read_as_points_or_degrees() {
    for typed in ["NW", "nw", "north-west", "Northwest", "315", "315°"] {
        near(metric(typed, Quantity::BearingDeg), 315.0);
    }
    near(metric("SSE", Quantity::BearingDeg), 157.5);
    near(metric("N", Quantity::BearingDeg), 0.0);
    assert_eq!(
        metric("nwn", Quantity::BearingDeg),
        Err("fault.not-a-number".to_owned())
    );
}

#[test]
fn spanish_numbers_units_and_sides_are_read() {
    let spanish = Words::new(Language::Spanish, UnitSystem::Metric);
    let read = |typed: &str, quantity| spanish.read(typed, quantity, "").map_err(|_| typed.into());
    for (typed, expected) in [
        ("21,5", 21.5),
        ("21.5", 21.5),
        ("1,80", 1.8),
        ("5,400", 5.4),
        ("5.400", 5400.0),
        ("0.125", 0.125),
        ("1.234,5", 1234.5),
        ("12 500", 12_500.0),
    ] {
        near(read(typed, Quantity::Ratio), expected);
    }
    near(read("5 pies 11", Quantity::LengthM), 1.8034);
    near(read("71 pulg.", Quantity::LengthM), 1.8034);
    near(read("70 pies", Quantity::LengthM), 21.336);
    near(read("90 libras", Quantity::MassKg), 90.0 * 0.453_592_37);
    near(read("fuerza 4", Quantity::Beaufort), 4.0);
    near(read("2 años", Quantity::DurationMonths), 24.0);
    near(read("20 por ciento", Quantity::Percent), 20.0);
    for typed in ["NO", "no", "NW", "noroeste", "nor-oeste", "315", "315°"] {
        near(read(typed, Quantity::BearingDeg), 315.0);
    }
    near(read("sudeste", Quantity::BearingDeg), 135.0);
    near(read("oeste", Quantity::BearingDeg), 270.0);
    near(read("nordeste", Quantity::BearingDeg), 45.0);
}

#[test]
fn what_is_no_number_is_refused() {
    for typed in [
        "",
        "  ",
        "wide",
        "NaN",
        "inf",
        "-inf",
        "∞",
        "1e3",
        "1.2.3",
        "12,34,5",
        "5 11",
        "--5",
        "5-3",
        "1..2",
        "5 ft 14",
        "5 ft 3 m",
        "-5 ft 3",
        ".",
        ",",
        "5 ft 3 in 2",
        "1/0",
        "٣",
    ] {
        assert!(metric(typed, Quantity::LengthM).is_err(), "{typed}");
        assert!(imperial(typed, Quantity::LengthM).is_err(), "{typed}");
    }
    let long = "9".repeat(400);
    assert_eq!(
        metric(&long, Quantity::LengthM),
        Err("fault.not-a-number".to_owned())
    );
}

#[test]
fn a_unit_of_something_else_is_refused() {
    for (typed, quantity) in [
        ("12 kg", Quantity::LengthM),
        ("12 m", Quantity::MassKg),
        ("12 furlongs", Quantity::LengthM),
        ("12 %", Quantity::AngleDeg),
        ("12 ton", Quantity::MassKg),
    ] {
        assert_eq!(
            metric(typed, quantity),
            Err("fault.unit-does-not-fit".to_owned()),
            "{typed}"
        );
    }
}

#[test]
fn a_fault_says_where_what_and_what_instead() {
    let fault = words(UnitSystem::Metric)
        .read("wide", Quantity::LengthCm, "tree.girth")
        .unwrap_err();
    assert_eq!(fault.place, "tree.girth");
    assert_eq!(fault.found, "wide");
    assert!(fault.allowed.contains("188 cm"), "{}", fault.allowed);
    let fault = words(UnitSystem::Imperial)
        .read_field("1300 ft", &crate::record::HEIGHT_M, "tree.height")
        .unwrap_err();
    assert_eq!(fault.code, "fault.out-of-range");
    assert_eq!(fault.allowed, "1.7 ft to 380 ft");
}

#[test]
fn every_example_can_be_typed() {
    for (language, units) in readers() {
        let words = Words::new(language, units);
        for quantity in EVERY_QUANTITY {
            let shown = words.number(example_of(quantity), quantity);
            let read = words.read(&shown, quantity, "");
            assert!(read.is_ok(), "{shown}: {read:?}");
        }
    }
}

/// Half of the last printed digit, in base units.
fn half_step(value: f64, quantity: Quantity, units: UnitSystem) -> f64 {
    let unit = unit_of(quantity, units);
    let decimals = decimals_of(quantity, units, unit.shown(value));
    0.5 * unit.factor.abs() * 10f64.powi(-i32::from(decimals.most))
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(4000))]

    #[test]
    fn what_is_shown_is_read_back(
        value in 0.0f64..20_000.0,
        which in 0usize..26,
        reader in 0usize..4,
    ) {
        let (language, units) = readers()[reader];
        let quantity = EVERY_QUANTITY[which];
        let words = Words::new(language, units);
        let shown = words.number(value, quantity);
        let read = words.read(&shown, quantity, "").unwrap();
        let allowed = half_step(value, quantity, units) * 1.000_001 + 1e-9 * value.abs();
        prop_assert!((read - value).abs() <= allowed, "{value} as {shown} reads {read}");
        prop_assert_eq!(words.number(read, quantity), shown);
    }

    #[test]
    fn metric_and_imperial_agree_to_the_printed_digit(
        value in 0.0f64..20_000.0,
        which in 0usize..26,
    ) {
        let quantity = EVERY_QUANTITY[which];
        let read_from = |units| {
            let words = words(units);
            words.read(&words.number(value, quantity), quantity, "").unwrap()
        };
        let apart = (read_from(UnitSystem::Metric) - read_from(UnitSystem::Imperial)).abs();
        let allowed = half_step(value, quantity, UnitSystem::Metric)
            + half_step(value, quantity, UnitSystem::Imperial)
            + 1e-9 * value.abs();
        prop_assert!(apart <= allowed * 1.000_001, "{value}: {apart} > {allowed}");
    }

    #[test]
    fn a_distance_is_never_printed_smaller_than_it_is(value in 0.0f64..500.0) {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            let words = words(units);
            let up = words.read(&words.distance_up(value), Quantity::LengthM, "").unwrap();
            prop_assert!(up >= value - 1e-8, "{value} printed as {up}");
            let down = words
                .number_toward(value, Quantity::LengthM, Rounding::Down);
            let down = words.read(&down, Quantity::LengthM, "").unwrap();
            prop_assert!(down <= value + 1e-8, "{value} printed as {down}");
        }
    }

    #[test]
    fn nothing_that_is_typed_breaks_it(typed in "\\PC{0,24}", which in 0usize..26) {
        if let Ok(value) = words(UnitSystem::Imperial).read(&typed, EVERY_QUANTITY[which], "") {
            prop_assert!(value.is_finite());
        }
    }

    #[test]
    fn numbers_with_signs_and_letters_break_nothing(typed in "[-+0-9., /'\"ftinmck°½]{0,16}") {
        if let Ok(value) = words(UnitSystem::Metric).read(&typed, Quantity::LengthM, "") {
            prop_assert!(value.is_finite());
        }
    }
}
