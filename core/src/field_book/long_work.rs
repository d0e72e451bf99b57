//! Long work: on its own connection, holding no lock, asked how far it is and stopped by polling.

use std::path::Path;
use std::sync::atomic::{AtomicBool, AtomicU32, Ordering};

use crate::error::BookError;

/// How far long work is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Record)]
pub struct HowFarItIs {
    /// Whether long work is going on.
    pub running: bool,
    /// Steps done; those of the last work when none is going on.
    pub done: u32,
    /// Steps in all.
    pub of: u32,
}

/// The one long work that may go on at a time.
#[derive(Debug, Default)]
pub(super) struct LongWork {
    running: AtomicBool,
    stop: AtomicBool,
    done: AtomicU32,
    of: AtomicU32,
}

/// Long work going on; ends when dropped.
#[derive(Debug)]
pub(super) struct Running<'a>(&'a LongWork);

impl LongWork {
    /// Begins; refuses while other work is going on.
    pub(super) fn begin(&self, place: &Path) -> Result<Running<'_>, BookError> {
        let began = self
            .running
            .compare_exchange(false, true, Ordering::SeqCst, Ordering::SeqCst);
        if began.is_err() {
            return Err(BookError::Busy {
                place: place.display().to_string(),
            });
        }
        self.stop.store(false, Ordering::SeqCst);
        self.done.store(0, Ordering::SeqCst);
        self.of.store(1, Ordering::SeqCst);
        Ok(Running(self))
    }

    pub(super) fn stop(&self) {
        self.stop.store(true, Ordering::SeqCst);
    }

    pub(super) fn how_far(&self) -> HowFarItIs {
        HowFarItIs {
            running: self.running.load(Ordering::SeqCst),
            done: self.done.load(Ordering::SeqCst),
            of: self.of.load(Ordering::SeqCst),
        }
    }
}

impl Running<'_> {
    /// Tells how far it is; answers whether to go on.
    pub(super) fn tell(&self, done: u32, of: u32) -> bool {
        self.0.of.store(of.max(1), Ordering::SeqCst);
        self.0.done.store(done, Ordering::SeqCst);
        !self.0.stop.load(Ordering::SeqCst)
    }

    /// Everything is done.
    pub(super) fn finish(&self) {
        let of = self.0.of.load(Ordering::SeqCst);
        self.0.done.store(of, Ordering::SeqCst);
    }

    /// Stops here if somebody asked for it.
    pub(super) fn go_on(&self, done: u32, of: u32) -> Result<(), BookError> {
        if self.tell(done, of) {
            Ok(())
        } else {
            Err(BookError::Stopped)
        }
    }
}

impl Drop for Running<'_> {
    fn drop(&mut self) {
        self.0.running.store(false, Ordering::SeqCst);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_long_work_at_a_time_and_a_stop_does_not_reach_the_next() {
        let work = LongWork::default();
        let first = work.begin(Path::new("a")).unwrap();
        assert!(matches!(
            work.begin(Path::new("a")),
            Err(BookError::Busy { .. })
        ));
        assert!(first.tell(3, 9));
        assert_eq!((work.how_far().done, work.how_far().of), (3, 9));
        work.stop();
        assert_eq!(first.go_on(4, 9), Err(BookError::Stopped));
        drop(first);
        assert!(!work.how_far().running);
        let second = work.begin(Path::new("a")).unwrap();
        assert!(second.tell(0, 1));
    }
}
