//! Which backups may go: all of two days stay, then one a day for a week, one a week for a month.

use std::collections::BTreeSet;

const HOUR_MS: i64 = 3_600_000;
const DAY_MS: i64 = 24 * HOUR_MS;
/// Of this age and younger all stay.
const ALL_MS: i64 = 2 * DAY_MS;
/// So many days beyond that keep their last.
const DAYS: usize = 7;
/// So many weeks beyond those keep their last.
const WEEKS: usize = 4;

/// The moments (milliseconds since 1970, UTC) of the backups that may go, oldest first. The newest
/// always stays, and so does one from the future: a clock was wrong, and nobody knows which.
pub fn superfluous(backups_ms: &[i64], now_ms: i64) -> Vec<i64> {
    let mut newest_first = backups_ms.to_vec();
    newest_first.sort_unstable_by(|one, other| other.cmp(one));
    newest_first.dedup();
    let mut days = BTreeSet::new();
    let mut weeks = BTreeSet::new();
    let mut may_go: Vec<i64> = newest_first
        .iter()
        .enumerate()
        .filter(|(place, backup)| {
            let is_old = now_ms.saturating_sub(**backup) > ALL_MS;
            *place > 0 && is_old && !has_place(**backup, &mut days, &mut weeks)
        })
        .map(|(_, backup)| *backup)
        .collect();
    may_go.reverse();
    may_go
}

/// Whether a backup, met after all newer ones, is the last of its day while days have places, else
/// the last of its week while weeks have.
fn has_place(backup_ms: i64, days: &mut BTreeSet<i64>, weeks: &mut BTreeSet<i64>) -> bool {
    let day = backup_ms.div_euclid(DAY_MS);
    if days.contains(&day) {
        return false;
    }
    if days.len() < DAYS {
        return days.insert(day);
    }
    weeks.len() < WEEKS && weeks.insert(backup_ms.div_euclid(7 * DAY_MS))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Hours before now → hours before now of those that stay, newest first.
    fn kept(hours_ago: &[i64]) -> Vec<i64> {
        let now = 20_000 * DAY_MS + 12 * HOUR_MS;
        let backups: Vec<i64> = hours_ago
            .iter()
            .map(|hours| now - hours * HOUR_MS)
            .collect();
        let gone = superfluous(&backups, now);
        hours_ago
            .iter()
            .copied()
            .filter(|hours| !gone.contains(&(now - hours * HOUR_MS)))
            .collect()
    }

    #[test]
    fn backups_are_thinned_as_the_table_says() {
        let table: [(&[i64], &[i64]); 5] = [
            (&[], &[]),
            // All of two days stay.
            (&[0, 1, 2, 47, 48], &[0, 1, 2, 47, 48]),
            // The only one stays however old it is.
            (&[9_000], &[9_000]),
            // Of an older day the last stays (hours 61 to 84 ago are one day).
            (&[1, 62, 63, 64], &[1, 62]),
            // A backup from the future stays.
            (&[-500, 1], &[-500, 1]),
        ];
        for (backups, stay) in table {
            assert_eq!(kept(backups), stay, "{backups:?}");
        }
    }

    #[test]
    fn a_year_of_hourly_backups_leaves_two_days_a_week_and_a_month() {
        let hourly: Vec<i64> = (0..365 * 24).collect();
        let stay = kept(&hourly);
        let young = stay.iter().filter(|hours| **hours <= 48).count();
        assert_eq!(young, 49);
        assert_eq!(stay.len(), 49 + DAYS + WEEKS);
        assert!(stay.iter().max().unwrap() > &(24 * 28), "{stay:?}");
    }

    #[test]
    fn thinning_again_takes_nothing_more() {
        let stay = kept(&(0..4_000).collect::<Vec<i64>>());
        assert_eq!(kept(&stay), stay);
    }
}
