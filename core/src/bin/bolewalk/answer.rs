//! What the desk answers: words on standard output, and an exit code when something does not fit.

use std::io::{ErrorKind, Write};
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::words::{Language, UnitSystem, Words};

/// Exit code for bad input.
pub const BAD_INPUT: u8 = 1;
/// Exit code for a damaged field book.
pub const DAMAGED: u8 = 3;

/// Prints a text with a line end. A reader who closes the pipe early, such as `head`, has what they
/// wanted.
pub fn tell(text: &str) -> Result<(), BookError> {
    let mut out = std::io::stdout().lock();
    let written = out
        .write_all(text.as_bytes())
        .and_then(|()| {
            if text.ends_with('\n') {
                Ok(())
            } else {
                out.write_all(b"\n")
            }
        })
        .and_then(|()| out.flush());
    match written {
        Err(cause) if cause.kind() != ErrorKind::BrokenPipe => {
            Err(BookError::writing("standard output", &cause))
        }
        _ => Ok(()),
    }
}

/// Tells an error on standard error and gives its exit code.
pub fn explain(error: &BookError) -> ExitCode {
    // There is nobody left to tell where standard error is closed.
    let _ = writeln!(std::io::stderr(), "{}", words(false).error(error));
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

/// The language of a paper by its code: `en`, `es`.
pub fn language(code: &str) -> Result<Language, String> {
    match code {
        "en" => Ok(Language::English),
        "es" => Ok(Language::Spanish),
        _ => Err("en for English, es for Spanish".to_owned()),
    }
}
