//! Hybrid logical time and ids, from moments that are handed in.
//!
//! The form is that of the hybrid logical clock of Kulkarni, Demirbas et al. 2014, 'Logical
//! physical clocks and consistent snapshots': never earlier than the wall clock, always later than
//! everything seen. Times are 64-bit NTP times, seconds since 1970 and 2⁻³² s.

use std::time::Duration;

use uhlc::NTP64;
use uuid::{ContextV7, Timestamp, Uuid};

use crate::record::Moment;

/// A change from further ahead than this many milliseconds is taken, and its lead is reported: one
/// of the two phones has a wrong clock.
pub const AHEAD_ALLOWED_MS: i64 = 120_000;

/// The log's clock: the latest time given out or seen.
#[derive(Debug)]
pub struct LogClock {
    last: u64,
    ids: ContextV7,
}

impl LogClock {
    /// A clock that goes on after `last`.
    pub fn after(last: u64) -> Self {
        LogClock {
            last,
            ids: ContextV7::new(),
        }
    }

    /// The latest time given out or seen.
    pub fn last(&self) -> u64 {
        self.last
    }

    /// The next time, not earlier than `at`.
    pub fn tick(&mut self, at: Moment) -> String {
        self.last = wall(at.utc_ms).max(self.last.saturating_add(1));
        written(self.last)
    }

    /// Sees the time of another phone.
    pub fn see(&mut self, time: &str) {
        self.last = self.last.max(read(time));
    }

    /// A UUID of version 7 for the moment `at`.
    pub fn new_id(&mut self, at: Moment) -> String {
        let utc_ms = at.utc_ms.max(0).unsigned_abs();
        let nanos = u32::try_from((utc_ms % 1000) * 1_000_000).unwrap_or(0);
        Uuid::new_v7(Timestamp::from_unix(&self.ids, utc_ms / 1000, nanos)).to_string()
    }
}

/// The wall clock as 64-bit NTP time; moments before 1970 count as 1970.
fn wall(utc_ms: i64) -> u64 {
    NTP64::from(Duration::from_millis(utc_ms.max(0).unsigned_abs())).as_u64()
}

/// A time as text that sorts.
pub fn written(time: u64) -> String {
    format!("{time:016x}")
}

/// A time from its text; 0 when it is none.
pub fn read(time: &str) -> u64 {
    u64::from_str_radix(time, 16).unwrap_or(0)
}

/// Whether a text is a time in the one form that sorts.
pub fn is_time(text: &str) -> bool {
    text.len() == 16
        && text
            .bytes()
            .all(|digit| matches!(digit, b'0'..=b'9' | b'a'..=b'f'))
}

/// Milliseconds since 1970 of a time.
pub fn utc_ms_of(time: &str) -> i64 {
    let nanos = NTP64(read(time)).to_duration().as_nanos();
    // Half a millisecond makes up for the cut of the binary fraction.
    i64::try_from((nanos + 500_000) / 1_000_000).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn moment(utc_ms: i64) -> Moment {
        Moment {
            utc_ms,
            offset_min: 0,
        }
    }

    #[test]
    fn time_never_goes_back_even_if_the_phone_is_set_back() {
        let mut clock = LogClock::after(0);
        let noon = clock.tick(moment(1_780_000_000_123));
        let set_back = clock.tick(moment(1_000));
        assert!(set_back > noon);
        assert_eq!(utc_ms_of(&noon), 1_780_000_000_123);
    }

    #[test]
    fn a_time_seen_is_passed_at_the_next_tick() {
        let mut clock = LogClock::after(0);
        clock.see("7fffffff00000000");
        assert!(clock.tick(moment(5)).as_str() > "7fffffff00000000");
    }

    #[test]
    fn times_after_2038_still_sort_as_text() {
        let mut clock = LogClock::after(0);
        let before = clock.tick(moment(2_147_483_000_000));
        let after = clock.tick(moment(2_147_484_000_000));
        assert!(before < after && is_time(&after));
    }

    #[test]
    fn ids_made_in_one_millisecond_differ_and_sort() {
        let mut clock = LogClock::after(0);
        let ids: Vec<String> = (0..200)
            .map(|_| clock.new_id(moment(1_780_000_000_000)))
            .collect();
        assert!(ids.windows(2).all(|pair| pair[0] < pair[1]));
    }
}
