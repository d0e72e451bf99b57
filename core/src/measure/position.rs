//! Many fixes of one place averaged, with what was left out and why.
//!
//! A phone's accuracy is the radius that holds the true place with 68 % probability. Fixes that
//! follow each other share their error, most of all under a crown: an average of one session is
//! never reported as better than its best fix.

use crate::record::LatLon;

use super::accuracy::{Placed, formal_accuracy, reported_accuracy, weighted_mean};
pub use super::accuracy::{R95_OVER_R68, R95_OVER_RMS, circular_radius, r95_of_r68};
use super::place::{EastNorth, LocalPlane};

/// Fewest fixes among which an outlier can be told.
const LEAST_FOR_OUTLIERS: usize = 5;
/// 68 % radius in metres beyond which a fix says nothing about one tree: it comes from a mast or a
/// network, not from satellites (house).
pub const MOST_ACCURACY_M: f64 = 200.0;

/// One fix as the phone gave it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fix {
    /// Where.
    pub point: LatLon,
    /// 68 % radius in metres; a phone gives 0 or less where it does not know.
    pub accuracy_m: f64,
    /// When, in milliseconds since 1970 UTC.
    pub at_ms: i64,
    /// Fixes taken in one go share a number; another visit to the spot has another.
    pub session: u32,
}

/// Why a fix was left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum FixFault {
    /// A coordinate or the accuracy is no number.
    NoNumber,
    /// Exactly 0, 0, which a receiver gives where it has no place.
    NoPlace,
    /// The accuracy is 0 or less: the phone did not know it.
    NoAccuracy,
    /// The accuracy is beyond [`MOST_ACCURACY_M`].
    TooCoarse,
    /// Coordinates beyond the poles or the date line.
    OffTheGlobe,
    /// Older than the session: the phone handed out an old fix.
    Old,
    /// Further off than the others allow.
    Outlier,
}

impl FixFault {
    /// Every reason, in the order in which they are looked for.
    pub const ALL: [FixFault; 7] = [
        FixFault::NoNumber,
        FixFault::NoPlace,
        FixFault::NoAccuracy,
        FixFault::TooCoarse,
        FixFault::OffTheGlobe,
        FixFault::Old,
        FixFault::Outlier,
    ];
}

/// How many fixes were left out for one reason.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LeftOut {
    /// The reason.
    pub fault: FixFault,
    /// How many.
    pub count: u32,
}

/// An averaged position.
#[derive(Debug, Clone, PartialEq)]
pub struct AveragedPosition {
    /// The weighted mean, weights 1/accuracy².
    pub point: LatLon,
    /// 68 % radius in metres to report.
    pub accuracy_m: f64,
    /// 68 % radius in metres if every fix were independent; for showing, never to rely on.
    pub formal_accuracy_m: f64,
    /// Fixes used.
    pub used: u32,
    /// Fixes left out, by reason.
    pub left_out: Vec<LeftOut>,
}

/// Averages the fixes taken since `since_ms`. A fix further than `outlier_mads` median absolute
/// deviations (and its own accuracy) from the median place is left out, if there are five or more.
/// Nothing where no fix is left, with the reasons in the error.
///
/// # Errors
/// The counts of what was left out, when that is everything.
pub fn average(
    fixes: &[Fix],
    since_ms: i64,
    outlier_mads: f64,
) -> Result<AveragedPosition, Vec<LeftOut>> {
    let mut faults = Vec::new();
    let sound: Vec<Fix> = fixes
        .iter()
        .filter(|fix| match fault_of(fix, since_ms) {
            Some(fault) => {
                faults.push(fault);
                false
            }
            None => true,
        })
        .copied()
        .collect();
    let Some(first) = sound.first() else {
        return Err(counted(&faults));
    };
    let plane = LocalPlane::around(first.point);
    let placed: Vec<Placed> = sound
        .iter()
        .map(|fix| Placed {
            place: plane.metres(fix.point),
            accuracy_m: fix.accuracy_m,
            session: fix.session,
        })
        .collect();
    let near = without_outliers(&placed, outlier_mads);
    faults.extend((near.len()..placed.len()).map(|_| FixFault::Outlier));
    let mean = weighted_mean(&near);
    Ok(AveragedPosition {
        point: plane.degrees(mean),
        accuracy_m: reported_accuracy(&near),
        formal_accuracy_m: formal_accuracy(&near),
        used: near.len() as u32,
        left_out: counted(&faults),
    })
}

fn fault_of(fix: &Fix, since_ms: i64) -> Option<FixFault> {
    let (lat, lon) = (fix.point.lat_deg, fix.point.lon_deg);
    if !(lat.is_finite() && lon.is_finite() && fix.accuracy_m.is_finite()) {
        Some(FixFault::NoNumber)
    } else if lat == 0.0 && lon == 0.0 {
        Some(FixFault::NoPlace)
    } else if fix.accuracy_m <= 0.0 {
        Some(FixFault::NoAccuracy)
    } else if fix.accuracy_m > MOST_ACCURACY_M {
        Some(FixFault::TooCoarse)
    } else if lat.abs() > 89.9 || lon.abs() > 180.0 {
        Some(FixFault::OffTheGlobe)
    } else if fix.at_ms < since_ms {
        Some(FixFault::Old)
    } else {
        None
    }
}

fn counted(faults: &[FixFault]) -> Vec<LeftOut> {
    FixFault::ALL
        .into_iter()
        .map(|fault| LeftOut {
            fault,
            count: faults.iter().filter(|f| **f == fault).count() as u32,
        })
        .filter(|left_out| left_out.count > 0)
        .collect()
}

fn without_outliers(placed: &[Placed], outlier_mads: f64) -> Vec<Placed> {
    if placed.len() < LEAST_FOR_OUTLIERS {
        return placed.to_vec();
    }
    let middle = EastNorth {
        east_m: median(placed.iter().map(|p| p.place.east_m)),
        north_m: median(placed.iter().map(|p| p.place.north_m)),
    };
    let deviation = median(placed.iter().map(|p| p.place.distance_m(middle)));
    placed
        .iter()
        .filter(|p| {
            let limit = (outlier_mads * deviation).max(p.accuracy_m);
            p.place.distance_m(middle) <= limit
        })
        .copied()
        .collect()
}

fn median(values: impl Iterator<Item = f64>) -> f64 {
    let mut sorted: Vec<f64> = values.collect();
    sorted.sort_by(f64::total_cmp);
    let half = sorted.len() / 2;
    let upper = sorted.get(half).copied().unwrap_or(0.0);
    if sorted.len() % 2 == 1 {
        return upper;
    }
    let lower = half.checked_sub(1).and_then(|k| sorted.get(k)).copied();
    (lower.unwrap_or(upper) + upper) / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fix(east_m: f64, north_m: f64, accuracy_m: f64, session: u32) -> Fix {
        let plane = LocalPlane::around(LatLon {
            lat_deg: 42.0,
            lon_deg: -71.0,
        });
        Fix {
            point: plane.degrees(EastNorth { east_m, north_m }),
            accuracy_m,
            at_ms: 1000,
            session,
        }
    }

    #[test]
    fn one_session_is_never_better_than_its_best_fix() {
        // Sheet of check values 9.5: successive fixes are correlated.
        let many: Vec<Fix> = (0..50)
            .map(|k| fix(f64::from(k % 3), 0.0, 5.0, 1))
            .collect();
        let average = average(&many, 0, 3.0).unwrap();
        assert_eq!(average.accuracy_m, 5.0);
        assert!(average.formal_accuracy_m < 0.8);
    }

    #[test]
    fn independent_sessions_narrow_it() {
        // Independent errors: two equal ones over √2.
        let two = [fix(0.0, 0.0, 4.0, 1), fix(1.0, 0.0, 4.0, 2)];
        let average = average(&two, 0, 3.0).unwrap();
        assert!((average.accuracy_m - 4.0 / libm::sqrt(2.0)).abs() < 1e-9);
    }

    #[test]
    fn what_is_left_out_is_counted_by_reason() {
        let mut fixes: Vec<Fix> = (0..8).map(|k| fix(f64::from(k), 1.0, 3.0, 1)).collect();
        fixes.push(fix(80.0, 0.0, 3.0, 1));
        fixes.push(fix(0.0, 0.0, -1.0, 1));
        fixes.push(Fix {
            accuracy_m: f64::NAN,
            ..fix(0.0, 0.0, 1.0, 1)
        });
        fixes.push(Fix {
            at_ms: 10,
            ..fix(0.0, 0.0, 1.0, 1)
        });
        let average = average(&fixes, 500, 3.0).unwrap();
        assert_eq!(average.used, 8);
        let counts: Vec<_> = average
            .left_out
            .iter()
            .map(|l| (l.fault, l.count))
            .collect();
        assert_eq!(
            counts,
            [
                (FixFault::NoNumber, 1),
                (FixFault::NoAccuracy, 1),
                (FixFault::Old, 1),
                (FixFault::Outlier, 1)
            ]
        );
    }

    #[test]
    fn the_place_zero_and_a_fix_from_a_mast_are_left_out() {
        let nowhere = Fix {
            point: LatLon {
                lat_deg: 0.0,
                lon_deg: 0.0,
            },
            ..fix(0.0, 0.0, 5.0, 1)
        };
        let left = average(&[nowhere, fix(0.0, 0.0, 1500.0, 1)], 0, 3.0).unwrap_err();
        let left: Vec<_> = left.iter().map(|one| one.fault).collect();
        assert_eq!(left, [FixFault::NoPlace, FixFault::TooCoarse]);
    }

    #[test]
    fn nothing_left_says_why() {
        let all = average(&[fix(0.0, 0.0, 0.0, 1)], 0, 3.0).unwrap_err();
        assert_eq!(
            all,
            [LeftOut {
                fault: FixFault::NoAccuracy,
                count: 1
            }]
        );
        assert_eq!(average(&[], 0, 3.0).unwrap_err(), []);
    }

    #[test]
    fn wide_scatter_is_not_hidden_by_a_hopeful_phone() {
        let wide: Vec<Fix> = (0..4)
            .map(|k| fix(f64::from(k) * 20.0, 0.0, 1.0, 1))
            .collect();
        assert!(average(&wide, 0, 3.0).unwrap().accuracy_m > 10.0);
    }
}
