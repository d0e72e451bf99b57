//! Days and hours by locale.

use std::cell::RefCell;
use std::collections::BTreeMap;

use chrono::Datelike;
use icu_datetime::fieldsets::{MD, T, YMD};
use icu_datetime::input::{Date, Time};
use icu_datetime::{DateTimeFormatter, NoCalendarFormatter};

use super::catalogue::{Language, Said, Words};
use crate::record::{Day, Moment};

/// How a day is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum DayStyle {
    /// The month in full: `September 3, 2026`.
    Long,
    /// The month shortened: `Sep 3, 2026`.
    Short,
    /// Without the year, the month shortened: `Sep 3`.
    WithoutYear,
}

enum Formatter {
    Day(DateTimeFormatter<YMD>),
    WithoutYear(DateTimeFormatter<MD>),
    Missing,
}

thread_local! {
    // The formatters of ICU are not shared between threads; one a language, style and thread.
    static DAYS: RefCell<BTreeMap<(Language, DayStyle), Formatter>> =
        const { RefCell::new(BTreeMap::new()) };
    static HOURS: RefCell<BTreeMap<Language, Option<NoCalendarFormatter<T>>>> =
        const { RefCell::new(BTreeMap::new()) };
}

impl Words {
    /// The day with its month in full: `September 3, 2026`.
    pub fn day(&self, day: Day) -> String {
        self.day_as(day, DayStyle::Long)
    }

    /// The day in a style. A day that the calendar data cannot show is written as ISO 8601.
    pub fn day_as(&self, day: Day, style: DayStyle) -> String {
        let (Ok(month), Ok(of_month)) = (u8::try_from(day.0.month()), u8::try_from(day.0.day()))
        else {
            return day.to_string();
        };
        let Ok(date) = Date::try_new_iso(day.0.year(), month, of_month) else {
            return day.to_string();
        };
        DAYS.with_borrow_mut(|kept| {
            let formatter = kept
                .entry((self.language(), style))
                .or_insert_with(|| day_formatter(self.language(), style));
            match formatter {
                Formatter::Day(formatter) => formatter.format(&date).to_string(),
                Formatter::WithoutYear(formatter) => formatter.format(&date).to_string(),
                Formatter::Missing => day.to_string(),
            }
        })
    }

    /// The hour and minute of a clock: `2:30 PM`.
    pub fn hour(&self, hour: u32, minute: u32) -> String {
        let written = format!("{hour:02}:{minute:02}");
        let time = u8::try_from(hour)
            .ok()
            .zip(u8::try_from(minute).ok())
            .and_then(|(hour, minute)| Time::try_new(hour, minute, 0, 0).ok());
        let Some(time) = time else {
            return written;
        };
        HOURS.with_borrow_mut(|kept| {
            let formatter = kept.entry(self.language()).or_insert_with(|| {
                NoCalendarFormatter::try_new(self.language().locale().into(), T::hm()).ok()
            });
            match formatter {
                // The locale data has a narrow no-break space before AM and PM, which plain text
                // files and some fonts lack.
                Some(formatter) => formatter
                    .format(&time)
                    .to_string()
                    .replace(['\u{202f}', '\u{a0}'], " "),
                None => written,
            }
        })
    }

    /// The local day and hour of a moment: `September 3, 2026, 2:30 PM`.
    pub fn moment(&self, moment: Moment) -> String {
        match moment.local() {
            Some(local) => self.say(
                "date.day-and-hour",
                &[
                    ("day", Said::Text(&self.day(local.day))),
                    ("hour", Said::Text(&self.hour(local.hour, local.minute))),
                ],
            ),
            None => format!("{} ms", moment.utc_ms),
        }
    }

    /// The local hour of a moment alone: `2:30 PM`.
    pub fn hour_of(&self, moment: Moment) -> String {
        match moment.local() {
            Some(local) => self.hour(local.hour, local.minute),
            None => format!("{} ms", moment.utc_ms),
        }
    }
}

fn day_formatter(language: Language, style: DayStyle) -> Formatter {
    let locale = language.locale();
    match style {
        DayStyle::Long => DateTimeFormatter::try_new(locale.into(), YMD::long())
            .map_or(Formatter::Missing, Formatter::Day),
        DayStyle::Short => DateTimeFormatter::try_new(locale.into(), YMD::medium())
            .map_or(Formatter::Missing, Formatter::Day),
        DayStyle::WithoutYear => DateTimeFormatter::try_new(locale.into(), MD::medium())
            .map_or(Formatter::Missing, Formatter::WithoutYear),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::UnitSystem;

    fn english() -> Words {
        Words::new(Language::English, UnitSystem::Metric)
    }

    #[test]
    fn english_days_follow_the_locale_data() {
        // Unicode CLDR, `en`, Gregorian: long date `MMMM d, y`, medium `MMM d, y`.
        let day: Day = "2026-09-03".parse().unwrap();
        assert_eq!(english().day(day), "September 3, 2026");
        assert_eq!(english().day_as(day, DayStyle::Short), "Sep 3, 2026");
        assert_eq!(english().day_as(day, DayStyle::WithoutYear), "Sep 3");
    }

    #[test]
    fn english_hours_are_those_of_a_twelve_hour_clock() {
        // Unicode CLDR, `en`: `h:mm a`; midnight is 12 AM and noon 12 PM.
        assert_eq!(english().hour(14, 30), "2:30 PM");
        assert_eq!(english().hour(0, 5), "12:05 AM");
        assert_eq!(english().hour(12, 0), "12:00 PM");
        assert_eq!(english().hour(31, 0), "31:00");
    }

    #[test]
    fn spanish_days_and_hours_follow_the_locale_data() {
        // Unicode CLDR, `es`, Gregorian: long date `d 'de' MMMM 'de' y`, medium `d MMM y`; a
        // twenty-four-hour clock.
        let spanish = Words::new(Language::Spanish, UnitSystem::Metric);
        let day: Day = "2026-09-03".parse().unwrap();
        assert_eq!(spanish.day(day), "3 de septiembre de 2026");
        assert_eq!(spanish.day_as(day, DayStyle::Short), "3 sept 2026");
        assert_eq!(spanish.day_as(day, DayStyle::WithoutYear), "3 sept");
        assert_eq!(spanish.hour(14, 30), "14:30");
        assert_eq!(spanish.hour(0, 5), "00:05");
    }

    #[test]
    fn a_moment_is_shown_in_the_hour_its_clock_showed() {
        // 2026-07-01T22:30Z is 18:30 at UTC−4 (ISO 8601).
        let moment = Moment {
            utc_ms: 1_782_945_000_000,
            offset_min: -240,
        };
        assert_eq!(english().moment(moment), "July 1, 2026, 6:30 PM");
        assert_eq!(english().hour_of(moment), "6:30 PM");
    }
}
