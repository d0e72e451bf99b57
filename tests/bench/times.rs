//! Several runs → median and spread.

use std::time::Instant;

use crate::bench::Outcome;

/// The seconds of several runs, the shortest first; never empty.
#[derive(Debug, Clone)]
pub struct Times {
    seconds: Vec<f64>,
}

impl Times {
    pub fn of(mut seconds: Vec<f64>) -> Times {
        seconds.sort_by(f64::total_cmp);
        Times { seconds }
    }

    /// The middle run; the mean of the middle two of an even number.
    pub fn median_s(&self) -> f64 {
        let runs = self.seconds.len();
        (self.seconds[(runs - 1) / 2] + self.seconds[runs / 2]) / 2.0
    }

    /// The median with the shortest and the longest run, in the unit of the median.
    pub fn words(&self) -> String {
        let median_s = self.median_s();
        let (unit, in_unit) = [("s", 1.0), ("ms", 1e3)]
            .into_iter()
            .find(|(_, in_unit)| median_s * in_unit >= 1.0)
            .unwrap_or(("µs", 1e6));
        let figure = |seconds: f64| three_digits(seconds * in_unit);
        let shortest = figure(self.seconds[0]);
        let longest = figure(self.seconds[self.seconds.len() - 1]);
        format!("{} {unit}\n({shortest}–{longest})", figure(median_s))
    }
}

/// Three digits that count, and every digit before the point.
pub fn three_digits(value: f64) -> String {
    let digits = match value {
        v if v >= 99.95 => 0,
        v if v >= 9.995 => 1,
        _ => 2,
    };
    format!("{value:.digits$}")
}

/// The seconds that a piece of work takes, and what came of it.
pub fn timed<T>(work: impl FnOnce() -> Outcome<T>) -> Outcome<(f64, T)> {
    let start = Instant::now();
    let made = work()?;
    Ok((start.elapsed().as_secs_f64(), made))
}
