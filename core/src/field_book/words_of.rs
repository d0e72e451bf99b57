//! Words without an open book: why it could not be opened, and what the shell says itself.

use crate::error::BookError;
use crate::words::{Language, ShellWords, UnitSystem, Words};

/// The words of an error, for the person who meets it, while no book is open: what happened, and
/// what to do. `language_tag` is the phone's own, such as `es-MX`; English where the catalogue lacks
/// it. With an open book its own `words_of` knows the language that the reader chose.
///
/// # Errors
/// None so far.
#[uniffi::export]
pub fn words_of_error(error: BookError, language_tag: String) -> Result<String, BookError> {
    // Errors of opening name no length and no mass.
    let words = Words::new(Language::of_tag(&language_tag), UnitSystem::Metric);
    Ok(words.error(&error))
}

/// The words of the shell itself while no book is open, in the phone's own language, such as
/// `es-MX`; English where the catalogue lacks it. With an open book its `shell_words` has them.
///
/// # Errors
/// None so far.
#[uniffi::export]
pub fn words_of_shell(language_tag: String) -> Result<ShellWords, BookError> {
    Ok(ShellWords::of(Language::of_tag(&language_tag)))
}
