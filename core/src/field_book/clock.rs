//! The field book's one clock: the system's, or one that stands still until it is set.

use std::sync::Arc;
use std::sync::atomic::{AtomicI32, AtomicI64, Ordering};

use crate::error::BookError;
use crate::record::{Day, Moment};

/// A clock that stands still until it is set; for tests, journeys and demonstrations.
#[derive(Debug, uniffi::Object)]
pub struct FixedClock {
    utc_ms: AtomicI64,
    offset_min: AtomicI32,
}

#[uniffi::export]
impl FixedClock {
    /// A clock that shows this moment.
    ///
    /// # Errors
    /// `Defect` for a moment that no calendar knows.
    #[uniffi::constructor]
    pub fn at(moment: Moment) -> Result<Arc<Self>, BookError> {
        let clock = FixedClock {
            utc_ms: AtomicI64::new(0),
            offset_min: AtomicI32::new(0),
        };
        clock.set_to(moment)?;
        Ok(Arc::new(clock))
    }

    /// Sets the clock.
    ///
    /// # Errors
    /// `Defect` for a moment that no calendar knows; the clock stays as it was.
    pub fn set_to(&self, moment: Moment) -> Result<(), BookError> {
        if moment.local().is_none() {
            return Err(BookError::Defect {
                detail: format!("{moment:?} is beyond the calendar"),
            });
        }
        self.utc_ms.store(moment.utc_ms, Ordering::SeqCst);
        self.offset_min.store(moment.offset_min, Ordering::SeqCst);
        Ok(())
    }
}

/// The clock of a field book.
#[derive(Debug, Clone)]
pub(super) enum BookClock {
    System,
    Fixed(Arc<FixedClock>),
}

impl BookClock {
    /// Now, with the local offset.
    pub(super) fn now(&self) -> Moment {
        match self {
            BookClock::System => {
                let now = chrono::Local::now();
                Moment {
                    utc_ms: now.timestamp_millis(),
                    offset_min: now.offset().local_minus_utc() / 60,
                }
            }
            BookClock::Fixed(clock) => Moment {
                utc_ms: clock.utc_ms.load(Ordering::SeqCst),
                offset_min: clock.offset_min.load(Ordering::SeqCst),
            },
        }
    }

    /// The local day.
    pub(super) fn today(&self) -> Day {
        let local = self.now().local();
        local.map_or(Day(chrono::NaiveDate::MAX), |at| at.day)
    }

    /// The local hour, 0 to 23.
    pub(super) fn hour(&self) -> u32 {
        self.now().local().map_or(0, |at| at.hour)
    }
}
