//! Ids, days and moments: what every record is known and dated by.

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The id of a record: any text, unique among records of its kind. The field book makes UUIDs of
/// version 7; a site file may use short keys of its own, such as `oak-row` or `ana`, which are
/// exchanged for UUIDs as it is brought in.
#[derive(
    Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize, JsonSchema,
)]
#[serde(transparent)]
pub struct Id(pub String);

uniffi::custom_newtype!(Id, String);

impl Id {
    /// The id as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether no id was given (a site file may leave it out).
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl From<&str> for Id {
    fn from(text: &str) -> Self {
        Id(text.to_owned())
    }
}

impl From<String> for Id {
    fn from(text: String) -> Self {
        Id(text)
    }
}

impl std::fmt::Display for Id {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str(&self.0)
    }
}

/// A local calendar day, written as ISO 8601 (`2026-05-14`).
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, JsonSchema,
)]
#[serde(transparent)]
pub struct Day(#[schemars(with = "String", regex(pattern = r"^\d{4}-\d{2}-\d{2}$"))] pub NaiveDate);

uniffi::custom_type!(Day, String, {
    lower: |day| day.to_string(),
    try_lift: |text| Ok(text.parse::<Day>()?),
});

impl std::fmt::Display for Day {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{}", self.0.format("%Y-%m-%d"))
    }
}

impl std::str::FromStr for Day {
    type Err = chrono::ParseError;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        NaiveDate::parse_from_str(text, "%Y-%m-%d").map(Day)
    }
}

impl Day {
    /// Whole days from `earlier` to this day; negative when `earlier` is later.
    pub fn days_since(self, earlier: Day) -> i64 {
        (self.0 - earlier.0).num_days()
    }

    /// The day `days` later, or the last day the calendar knows.
    pub fn plus_days(self, days: u64) -> Day {
        Day(self
            .0
            .checked_add_days(chrono::Days::new(days))
            .unwrap_or(NaiveDate::MAX))
    }
}

/// A moment: UTC with the local offset that the clock showed.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Record,
)]
pub struct Moment {
    /// Milliseconds since 1970-01-01T00:00:00 UTC.
    pub utc_ms: i64,
    /// Minutes that local time was ahead of UTC.
    #[schemars(range(min = -1080, max = 1080))]
    pub offset_min: i32,
}

impl Moment {
    /// The local calendar day and the hour of the day (0 to 23), or nothing beyond the calendar.
    pub fn local(self) -> Option<LocalHour> {
        use chrono::{DateTime, Timelike};
        let shifted = self
            .utc_ms
            .checked_add(i64::from(self.offset_min).checked_mul(60_000)?)?;
        let there = DateTime::from_timestamp_millis(shifted)?;
        Some(LocalHour {
            day: Day(there.date_naive()),
            hour: there.hour(),
            minute: there.minute(),
        })
    }
}

/// A local day with its hour and minute.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LocalHour {
    /// The day.
    pub day: Day,
    /// 0 to 23.
    pub hour: u32,
    /// 0 to 59.
    pub minute: u32,
}
