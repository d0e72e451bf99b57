//! When a photo was taken: local time with its offset from UTC (Exif 2.32 §4.6.5).

use chrono::{NaiveDate, NaiveDateTime};
use exif::{Exif, Tag};

use super::facts::{PhotoFacts, PhotoGap, PhotoGapKind};
use super::tags::{self, Rationals};
use crate::record::Moment;

/// Offsets of local time from UTC in use lie on quarter hours.
const OFFSET_STEP_MIN: i64 = 15;
/// How far a camera's clock may stray from the satellites' and still show its offset.
const CLOCK_DRIFT_S: i64 = 180;
/// The widest offset in use, +14 h.
const MAX_OFFSET_MIN: i64 = 14 * 60;

/// Fills the moment, or its gap.
pub(super) fn read_into(record: &Exif, facts: &mut PhotoFacts) {
    let Some(written) = tags::text(record, Tag::DateTimeOriginal) else {
        facts.gaps.push(PhotoGap::new(PhotoGapKind::NoTime, ""));
        return;
    };
    if written.chars().all(|c| c == ':' || c == ' ') || written.starts_with("0000") {
        facts
            .gaps
            .push(PhotoGap::new(PhotoGapKind::NoTime, written));
        return;
    }
    let Ok(local) = NaiveDateTime::parse_from_str(&written, "%Y:%m:%d %H:%M:%S") else {
        facts
            .gaps
            .push(PhotoGap::new(PhotoGapKind::TimeBroken, written));
        return;
    };
    facts.taken_local = Some(local.format("%Y-%m-%dT%H:%M:%S").to_string());
    match offset_min(record, local) {
        Some(offset_min) => facts.taken = Some(moment(record, local, offset_min)),
        None => facts
            .gaps
            .push(PhotoGap::new(PhotoGapKind::TimeWithoutOffset, written)),
    }
}

fn moment(record: &Exif, local: NaiveDateTime, offset_min: i32) -> Moment {
    let milliseconds = thousandths(record).unwrap_or(0);
    Moment {
        utc_ms: local.and_utc().timestamp_millis() + milliseconds - i64::from(offset_min) * 60_000,
        offset_min,
    }
}

/// Fractions of a second: digits behind the point.
fn thousandths(record: &Exif) -> Option<i64> {
    let digits = tags::text(record, Tag::SubSecTimeOriginal)?;
    if !digits.bytes().all(|b| b.is_ascii_digit()) {
        return None;
    }
    let three: String = digits.chars().chain(['0', '0']).take(3).collect();
    three.parse().ok()
}

/// The written offset, else what the satellites' UTC in the same record tells.
fn offset_min(record: &Exif, local: NaiveDateTime) -> Option<i32> {
    let written = tags::text(record, Tag::OffsetTimeOriginal)
        .and_then(|text| offset_of(&text))
        .or_else(|| tags::text(record, Tag::OffsetTime).and_then(|text| offset_of(&text)));
    written.or_else(|| offset_by_satellite(record, local))
}

/// `+02:00`, `-05:30` or `Z` as minutes.
fn offset_of(text: &str) -> Option<i32> {
    if text == "Z" {
        return Some(0);
    }
    let (sign, rest) = match text.split_at_checked(1)? {
        ("+", rest) => (1, rest),
        ("-", rest) => (-1, rest),
        _ => return None,
    };
    let (hours, minutes) = rest.split_once(':')?;
    let plain = |digits: &str| match digits.len() {
        2 if digits.bytes().all(|b| b.is_ascii_digit()) => digits.parse::<i32>().ok(),
        _ => None,
    };
    let (hours, minutes) = (plain(hours)?, plain(minutes)?);
    let total = hours * 60 + minutes;
    (minutes < 60 && i64::from(total) <= MAX_OFFSET_MIN).then_some(sign * total)
}

fn offset_by_satellite(record: &Exif, local: NaiveDateTime) -> Option<i32> {
    let day = tags::text(record, Tag::GPSDateStamp)?;
    let day = NaiveDate::parse_from_str(&day, "%Y:%m:%d").ok()?;
    let Rationals::Read(clock) = tags::rationals(record, Tag::GPSTimeStamp) else {
        return None;
    };
    let [hour, minute, second] = clock.as_slice() else {
        return None;
    };
    let within_day_s = hour * 3600.0 + minute * 60.0 + second;
    if !(0.0..=86_400.0).contains(&within_day_s) {
        return None;
    }
    let utc = day.and_hms_opt(0, 0, 0)?.and_utc().timestamp() + within_day_s.round() as i64;
    let ahead_s = local.and_utc().timestamp() - utc;
    let step_s = OFFSET_STEP_MIN * 60;
    let steps = (ahead_s + step_s / 2).div_euclid(step_s);
    let offset_min = steps * OFFSET_STEP_MIN;
    let near = (ahead_s - steps * step_s).abs() <= CLOCK_DRIFT_S;
    if near && offset_min.abs() <= MAX_OFFSET_MIN {
        i32::try_from(offset_min).ok()
    } else {
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::testing::{facts_of, letters, ratios};

    fn taken(written: &str, more: Vec<exif::Field>) -> PhotoFacts {
        let mut fields = vec![letters(Tag::DateTimeOriginal, written)];
        fields.extend(more);
        facts_of(fields)
    }

    #[test]
    fn local_time_and_offset_make_a_moment() {
        let facts = taken(
            "2026:05:04 10:11:12",
            vec![
                letters(Tag::OffsetTimeOriginal, "-04:00"),
                letters(Tag::SubSecTimeOriginal, "25"),
            ],
        );
        // 2026-05-04 14:11:12.25 UTC, by `date -u -d @1777903872`.
        let wanted = Moment {
            utc_ms: 1_777_903_872_250,
            offset_min: -240,
        };
        assert_eq!(facts.taken, Some(wanted));
        assert_eq!(facts.taken_local.as_deref(), Some("2026-05-04T10:11:12"));
    }

    #[test]
    fn the_satellites_clock_tells_a_missing_offset() {
        let utc = |clock: [(u32, u32); 3]| {
            vec![
                letters(Tag::GPSDateStamp, "2026:05:04"),
                ratios(Tag::GPSTimeStamp, &clock),
            ]
        };
        let nepal = taken("2026:05:04 19:56:12", utc([(14, 1), (11, 1), (30, 1)]));
        assert_eq!(nepal.taken.unwrap().offset_min, 345);
        let next_day = taken("2026:05:05 00:11:12", utc([(14, 1), (11, 1), (12, 1)]));
        assert_eq!(next_day.taken.unwrap().offset_min, 600);
        let astray = taken("2026:05:04 19:50:00", utc([(14, 1), (11, 1), (30, 1)]));
        assert_eq!(astray.taken, None);
        let void = taken("2026:05:04 19:56:12", utc([(14, 0), (11, 1), (30, 1)]));
        assert_eq!(void.taken, None);
    }

    #[test]
    fn times_that_are_no_moment_are_gaps() {
        for (written, kind) in [
            ("2026:02:30 10:11:12", PhotoGapKind::TimeBroken),
            ("yesterday", PhotoGapKind::TimeBroken),
            ("2026:05:04 25:11:12", PhotoGapKind::TimeBroken),
            ("    :  :     :  :  ", PhotoGapKind::NoTime),
            ("0000:00:00 00:00:00", PhotoGapKind::NoTime),
            ("2026:05:04 10:11:12", PhotoGapKind::TimeWithoutOffset),
        ] {
            let facts = taken(written, vec![]);
            assert_eq!(facts.taken, None, "{written}");
            assert!(facts.gaps.iter().any(|gap| gap.kind == kind), "{written}");
        }
    }

    #[test]
    fn offsets_are_read_strictly() {
        assert_eq!(offset_of("+05:45"), Some(345));
        assert_eq!(offset_of("-03:30"), Some(-210));
        assert_eq!(offset_of("Z"), Some(0));
        for wrong in [
            "", "   :  ", "+5:45", "+15:00", "+02:60", "02:00", "+-2:00", "é2:00",
        ] {
            assert_eq!(offset_of(wrong), None, "{wrong}");
        }
    }
}
