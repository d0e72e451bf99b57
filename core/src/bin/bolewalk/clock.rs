//! The desk's clock: the one place that asks the system for the time.

use bolewalk_core::record::{Day, Moment};

/// Now, with the local offset.
pub fn now() -> Moment {
    let now = chrono::Local::now();
    Moment {
        utc_ms: now.timestamp_millis(),
        offset_min: now.offset().local_minus_utc() / 60,
    }
}

/// Today by the local calendar.
pub fn today() -> Day {
    Day(chrono::Local::now().date_naive())
}
