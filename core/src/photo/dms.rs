//! Angles as degrees, minutes and seconds.

/// Degrees, minutes and ten-thousandths of a second, never 60 of either.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DmsReading {
    /// Whole degrees, 0 to 180.
    pub degrees: u32,
    /// Whole minutes, 0 to 59.
    pub minutes: u32,
    /// Seconds in 1/10000, 0 to 599,999: 3 mm of latitude.
    pub seconds_e4: u32,
}

/// Splits the absolute value of an angle in degrees (reference sheet §9.3). Rounding happens once,
/// on the whole angle, so that 59.99999 seconds become the next minute.
pub fn encode_dms(angle_deg: f64) -> DmsReading {
    // Beyond 119° the count leaves 32 bits.
    let total = (angle_deg.abs().min(180.0) * 36_000_000.0).round() as u64;
    let part = |value: u64| u32::try_from(value).unwrap_or(0);
    DmsReading {
        degrees: part(total / 36_000_000),
        minutes: part(total / 600_000 % 60),
        seconds_e4: part(total % 600_000),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    // Reference sheet §9.3, worked encode example, here to 1/10000 of a second.
    #[test]
    fn the_worked_example_is_written() {
        let lat = encode_dms(42.3314);
        assert_eq!(
            (lat.degrees, lat.minutes, lat.seconds_e4),
            (42, 19, 530_400)
        );
        let lon = encode_dms(-71.1211);
        assert_eq!((lon.degrees, lon.minutes, lon.seconds_e4), (71, 7, 159_600));
    }

    #[test]
    fn seconds_never_reach_sixty() {
        let carried = encode_dms(12.999_999_999_9);
        assert_eq!(
            (carried.degrees, carried.minutes, carried.seconds_e4),
            (13, 0, 0)
        );
        let minute = encode_dms(10.0 + 0.999_999_99 / 60.0);
        assert_eq!(
            (minute.degrees, minute.minutes, minute.seconds_e4),
            (10, 1, 0)
        );
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(2000))]
        #[test]
        fn splitting_an_angle_loses_under_half_a_unit(angle_deg in -180.0_f64..180.0) {
            let dms = encode_dms(angle_deg);
            prop_assert!(dms.minutes < 60 && dms.seconds_e4 < 600_000);
            let seconds = f64::from(dms.seconds_e4) / 10_000.0;
            let back = f64::from(dms.degrees)
                + f64::from(dms.minutes) / 60.0
                + seconds / 3600.0;
            prop_assert!((back - angle_deg.abs()).abs() < 1.4e-8);
        }
    }
}
