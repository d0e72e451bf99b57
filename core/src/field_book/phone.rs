//! The exported object, as far as it is about the phone rather than the records: its settings, the
//! shell's own words, the files of a damaged book.

use std::path::Path;

use super::object::FieldBook;
use super::settings::Settings;
use crate::error::BookError;
use crate::handover::write_damaged;
use crate::words::ShellWords;

#[uniffi::export]
impl FieldBook {
    /// This phone's settings, as a screen needs them: colours, size of letters, hand.
    ///
    /// # Errors
    /// None so far.
    pub fn settings(&self) -> Result<Settings, BookError> {
        Ok(self.inner.lock().settings.clone())
    }

    /// Sets language and units by the phone's own language tag, such as `es-MX`, where nobody has
    /// set anything yet; a shell says it at every opening.
    ///
    /// # Errors
    /// `DiskFull`, `Unwritable` where the settings cannot be kept; they stay as they were then.
    pub fn meet_phone(&self, language_tag: String) -> Result<(), BookError> {
        self.inner.lock().meet_phone(&language_tag)
    }

    /// The words of the shell itself, in the reader's language. They change with the settings.
    ///
    /// # Errors
    /// None so far.
    pub fn shell_words(&self) -> Result<ShellWords, BookError> {
        Ok(ShellWords::of(self.inner.lock().settings.language))
    }

    /// Long work: writes the files of a damaged book that were put aside into one zip at `path`, for
    /// someone who can repair them.
    ///
    /// # Errors
    /// `NotFound` where no damage was met; `Unreadable` for a file of it; else as
    /// [`FieldBook::write_summary`].
    pub fn write_damaged(&self, path: String) -> Result<(), BookError> {
        let path = Path::new(&path);
        let running = self.work.begin(path)?;
        let kept = self.with(|inner| Ok(inner.store.damage_kept()))?;
        let folders: Vec<_> = kept.into_iter().map(|(_, folder)| folder).collect();
        if folders.is_empty() {
            return Err(BookError::NotFound {
                kind: "file".to_owned(),
                id: "damaged".to_owned(),
            });
        }
        write_damaged(&folders, path, &|done, of| running.tell(done, of))?;
        running.finish();
        Ok(())
    }
}
