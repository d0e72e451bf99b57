//! Which looks at a tree count: the last full check and all that was seen since, as long as it
//! carries; else what was seen on the last day.

use crate::record::{Day, InspectionLevel};

/// Which looks count, by their places in the order of time.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct CountingLooks {
    /// The first look that counts; all after it lie over it.
    pub first: usize,
    /// The full check among them.
    pub full: Option<usize>,
}

impl CountingLooks {
    /// Of looks with their days, the oldest first (undated ones before all others). A full check
    /// carries for so many days before what was seen last.
    pub fn of(looks: &[(Option<Day>, InspectionLevel)], carries_days: f64) -> CountingLooks {
        let last_day = looks.last().and_then(|(day, _)| *day);
        let full = looks
            .iter()
            .rposition(|(_, level)| *level == InspectionLevel::FullCheck)
            .filter(
                |&at| match (looks.get(at).and_then(|look| look.0), last_day) {
                    (Some(full), Some(last)) => last.days_since(full) as f64 <= carries_days,
                    (None, None) => true,
                    _ => false,
                },
            );
        let of_last_day = || looks.iter().position(|(day, _)| *day == last_day);
        CountingLooks {
            first: full.or_else(of_last_day).unwrap_or(0),
            full,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn counting(looks: &[(&str, InspectionLevel)]) -> CountingLooks {
        let looks: Vec<_> = looks
            .iter()
            .map(|(day, level)| (day.parse().ok(), *level))
            .collect();
        CountingLooks::of(&looks, 14.0)
    }

    #[test]
    fn a_stop_on_sight_lies_over_the_full_check_while_that_carries() {
        let full = ("2026-05-14", InspectionLevel::FullCheck);
        let seen = |day| counting(&[full, (day, InspectionLevel::StopOnSight)]);
        assert_eq!(
            (seen("2026-05-15").first, seen("2026-05-15").full),
            (0, Some(0))
        );
        assert_eq!(
            (seen("2026-06-30").first, seen("2026-06-30").full),
            (1, None)
        );
        let undated = counting(&[("", InspectionLevel::FullCheck), full]);
        assert_eq!((undated.first, undated.full), (1, Some(1)));
        assert_eq!(counting(&[]).first, 0);
    }
}
