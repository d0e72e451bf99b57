//! Wind force, thunder and heat.

use super::rules::{Rule, RuleSet};

/// Metres per second in one mile per hour.
pub const MS_PER_MPH: f64 = 0.447_04;

/// Lower bounds of forces 1 to 12 in miles per hour (US National Weather Service, Beaufort scale).
/// The published whole numbers leave gaps (18 to 19): the force is decided by its lower bound.
const LOWER_BOUNDS_MPH: [f64; 12] = [
    1.0, 4.0, 8.0, 13.0, 19.0, 25.0, 32.0, 39.0, 47.0, 55.0, 64.0, 74.0,
];

/// What turning miles per hour into metres per second and back may lose.
const SLACK_MPH: f64 = 1e-9;

/// Wind force 0 to 12 for a mean wind in miles per hour.
pub fn wind_force_of_mph(wind_mph: f64) -> u32 {
    let reached = LOWER_BOUNDS_MPH
        .iter()
        .filter(|bound| wind_mph >= **bound - SLACK_MPH);
    reached.map(|_| 1).sum()
}

/// Wind force 0 to 12 for a mean wind in metres per second.
pub fn wind_force_of_ms(wind_ms: f64) -> u32 {
    wind_force_of_mph(wind_ms / MS_PER_MPH)
}

/// Mean wind in metres per second of a force: 0.836 B^1.5 (World Meteorological Organization, from
/// memory).
pub fn wind_ms_of_force(force: f64) -> f64 {
    0.836 * libm::pow(force, 1.5)
}

/// Whether thunder this many minutes ago still keeps everybody out of trees (30-30 rule).
pub fn thunder_bars(minutes_ago: f64, rules: &RuleSet) -> bool {
    minutes_ago < rules.number(Rule::StopThunderMin)
}

/// Whether this many seconds from flash to thunder mean: take shelter (30-30 rule).
pub fn flash_means_shelter(flash_to_thunder_s: f64, rules: &RuleSet) -> bool {
    flash_to_thunder_s <= rules.number(Rule::StopThunderFlashS)
}

/// Distance of a flash in kilometres: 0.343 km for each second until the thunder.
pub fn flash_distance_km(flash_to_thunder_s: f64) -> f64 {
    0.343 * flash_to_thunder_s
}

/// Heat index in degrees Fahrenheit, in the shade (Rothfusz 1990, National Weather Service
/// technical attachment SR 90-23, with its adjustments and its simple form below 80 °F).
pub fn heat_index_f(temperature_f: f64, humidity_pct: f64) -> f64 {
    let (t, rh) = (temperature_f, humidity_pct);
    let simple = 0.5 * (t + 61.0 + 1.2 * (t - 68.0) + 0.094 * rh);
    let averaged = (simple + t) / 2.0;
    if averaged < 80.0 {
        return averaged;
    }
    let full = -42.379 + 2.049_015_23 * t + 10.143_331_27 * rh
        - 0.224_755_41 * t * rh
        - 0.006_837_83 * t * t
        - 0.054_817_17 * rh * rh
        + 0.001_228_74 * t * t * rh
        + 0.000_852_82 * t * rh * rh
        - 0.000_001_99 * t * t * rh * rh;
    full + humidity_adjustment(t, rh)
}

fn humidity_adjustment(t: f64, rh: f64) -> f64 {
    if rh < 13.0 && (80.0..=112.0).contains(&t) {
        let off = ((17.0 - (t - 95.0).abs()) / 17.0).max(0.0);
        -(13.0 - rh) / 4.0 * libm::sqrt(off)
    } else if rh > 85.0 && (80.0..=87.0).contains(&t) {
        (rh - 85.0) / 10.0 * ((87.0 - t) / 5.0)
    } else {
        0.0
    }
}

/// Heat index in degrees Celsius for a temperature in degrees Celsius.
pub fn heat_index_c(temperature_c: f64, humidity_pct: f64) -> f64 {
    (heat_index_f(temperature_c * 9.0 / 5.0 + 32.0, humidity_pct) - 32.0) * 5.0 / 9.0
}

/// Bands of the heat index.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum HeatBand {
    /// Below the bands.
    Usual,
    /// Caution.
    Caution,
    /// Extreme caution.
    ExtremeCaution,
    /// Danger.
    Danger,
    /// Extreme danger.
    ExtremeDanger,
}

/// The band of a heat index in degrees Fahrenheit.
pub fn heat_band(heat_index_f: f64, rules: &RuleSet) -> HeatBand {
    let from = |rule| heat_index_f >= rules.number(rule);
    if from(Rule::HeatExtremeDangerF) {
        HeatBand::ExtremeDanger
    } else if from(Rule::HeatDangerF) {
        HeatBand::Danger
    } else if from(Rule::HeatExtremeCautionF) {
        HeatBand::ExtremeCaution
    } else if from(Rule::HeatCautionF) {
        HeatBand::Caution
    } else {
        HeatBand::Usual
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Id;

    #[test]
    fn a_wind_between_two_whole_numbers_has_the_lower_force() {
        // US National Weather Service, Beaufort scale: 13–18 and 19–24 mph.
        assert_eq!(wind_force_of_mph(18.9), 4);
        assert_eq!(wind_force_of_mph(19.0), 5);
        assert_eq!(wind_force_of_ms(19.0 * MS_PER_MPH), 5);
        assert_eq!(wind_force_of_ms(0.0), 0);
        assert_eq!(wind_force_of_ms(60.0), 12);
    }

    #[test]
    fn thirty_minutes_after_the_last_thunder_the_rule_ends() {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        assert!(thunder_bars(29.9, &rules) && !thunder_bars(30.0, &rules));
        assert!(flash_means_shelter(30.0, &rules) && !flash_means_shelter(31.0, &rules));
    }

    #[test]
    fn celsius_is_fahrenheit_in_other_words() {
        let there = heat_index_f(95.0, 55.0);
        assert!((heat_index_c(35.0, 55.0) - (there - 32.0) / 1.8).abs() < 1e-9);
    }
}
