//! What the desk answers when something does not fit: the core's words and an exit code.

use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::words::{Language, UnitSystem, Words};

/// Exit code for bad input.
pub const BAD_INPUT: u8 = 1;
/// Exit code for a damaged field book.
pub const DAMAGED: u8 = 3;

/// Tells an error on standard error and gives its exit code.
pub fn explain(error: &BookError) -> ExitCode {
    eprintln!("{}", words(false).error(error));
    match error {
        BookError::Damaged { .. } => ExitCode::from(DAMAGED),
        _ => ExitCode::from(BAD_INPUT),
    }
}

/// The reader's words at the desk.
pub fn words(imperial: bool) -> Words {
    let units = if imperial {
        UnitSystem::Imperial
    } else {
        UnitSystem::Metric
    };
    Words::new(Language::English, units)
}
