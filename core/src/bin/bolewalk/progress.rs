//! Progress of long work: a bar once it takes longer than a second, and a way to stop it.

use std::sync::OnceLock;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::{Duration, Instant};

use bolewalk_core::error::BookError;
use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};

/// Work that is done sooner shows no bar.
const SHOWN_AFTER: Duration = Duration::from_secs(1);

/// Whether the person at the keys has asked to stop.
static STOPPED: AtomicBool = AtomicBool::new(false);
static LISTENING: OnceLock<()> = OnceLock::new();

/// How far the work of a command is.
pub struct Progress {
    bar: ProgressBar,
    since: Instant,
    shown: AtomicBool,
}

impl Progress {
    /// Begins to listen for Ctrl-C, which from now on ends the work between two steps, so that
    /// nothing half-done stays behind; pressed again it ends the program at once.
    pub fn begin() -> Self {
        LISTENING.get_or_init(|| {
            // Without a handler Ctrl-C ends the program as it always does.
            let _ = ctrlc::set_handler(|| {
                if STOPPED.swap(true, Ordering::SeqCst) {
                    std::process::exit(130);
                }
            });
        });
        let bar = ProgressBar::with_draw_target(None, ProgressDrawTarget::hidden());
        if let Ok(style) = ProgressStyle::with_template("{msg:<32} {bar:40} {pos}/{len}") {
            bar.set_style(style);
        }
        Progress {
            bar,
            since: Instant::now(),
            shown: AtomicBool::new(false),
        }
    }

    /// Names the part of the work that begins.
    pub fn part(&self, words: &str) {
        self.bar.set_message(words.to_owned());
        self.bar.set_position(0);
    }

    /// Told what is done of how much; answers whether to go on.
    pub fn how_far(&self, done: u32, of: u32) -> bool {
        if self.since.elapsed() > SHOWN_AFTER && !self.shown.swap(true, Ordering::Relaxed) {
            self.bar.set_draw_target(ProgressDrawTarget::stderr());
        }
        self.bar.set_length(u64::from(of));
        self.bar.set_position(u64::from(done));
        !STOPPED.load(Ordering::SeqCst)
    }

    /// Goes on, or ends with [`BookError::Stopped`].
    pub fn go_on(&self, done: u32, of: u32) -> Result<(), BookError> {
        if self.how_far(done, of) {
            Ok(())
        } else {
            Err(BookError::Stopped)
        }
    }
}

impl Drop for Progress {
    fn drop(&mut self) {
        self.bar.finish_and_clear();
    }
}
