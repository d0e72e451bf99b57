//! Reading a whole file within a limit, and writing one aside and renaming it.

use std::fs::File;
use std::io::{Read, Write};
use std::path::Path;

use crate::error::BookError;

/// What reading within a limit gave.
pub(super) enum Contents {
    /// The whole file.
    Read(Vec<u8>),
    /// Longer than the limit; nothing was kept.
    TooLong,
}

/// Reads a file of at most `limit` bytes. A folder, a device or a missing file is an error.
pub(super) fn read_within(path: &Path, limit: u64) -> Result<Contents, BookError> {
    let failed = |cause: std::io::Error| BookError::reading(path, &cause);
    let about = std::fs::metadata(path).map_err(failed)?;
    if !about.is_file() {
        return Err(BookError::Unreadable {
            place: path.display().to_string(),
            reason: "not a file".to_owned(),
        });
    }
    if about.len() > limit {
        return Ok(Contents::TooLong);
    }
    // The file may still grow while it is read.
    let mut bytes = Vec::new();
    let mut upto = File::open(path).map_err(failed)?.take(limit + 1);
    upto.read_to_end(&mut bytes).map_err(failed)?;
    if bytes.len() as u64 > limit {
        return Ok(Contents::TooLong);
    }
    Ok(Contents::Read(bytes))
}

/// Writes a file so that it is there whole or not at all: temporary file in the same folder,
/// fsync, rename, fsync of the folder.
pub(super) fn write_aside(path: &Path, bytes: &[u8]) -> Result<(), BookError> {
    let failed = |cause: std::io::Error| BookError::writing(path, &cause);
    let folder = path.parent().unwrap_or(Path::new("."));
    let mut aside = tempfile::Builder::new()
        .prefix(".incoming-")
        .tempfile_in(folder)
        .map_err(failed)?;
    aside.write_all(bytes).map_err(failed)?;
    aside.as_file().sync_all().map_err(failed)?;
    aside.persist(path).map_err(|lost| failed(lost.error))?;
    sync_folder(folder);
    Ok(())
}

/// Makes a rename last through a power cut, where the system can do that for folders.
fn sync_folder(folder: &Path) {
    if let Ok(handle) = File::open(folder) {
        // Some file systems refuse; the file itself is already safe.
        let _ = handle.sync_all();
    }
}

/// Whether the file is there with exactly these bytes.
pub(super) fn holds(path: &Path, bytes: &[u8]) -> bool {
    let same_length = std::fs::metadata(path).is_ok_and(|m| m.len() == bytes.len() as u64);
    same_length && std::fs::read(path).is_ok_and(|there| there == bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_at_the_limit_is_read_and_one_beyond_is_not() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a");
        std::fs::write(&path, [7; 100]).unwrap();
        assert!(matches!(read_within(&path, 100), Ok(Contents::Read(b)) if b.len() == 100));
        assert!(matches!(read_within(&path, 99), Ok(Contents::TooLong)));
    }

    #[test]
    fn missing_files_and_folders_are_told_apart() {
        let folder = tempfile::tempdir().unwrap();
        let missing = read_within(&folder.path().join("nothing.jpg"), 10);
        assert!(matches!(missing, Err(BookError::NotFound { .. })));
        let not_a_file = read_within(folder.path(), 10);
        assert!(matches!(not_a_file, Err(BookError::Unreadable { .. })));
    }

    #[test]
    fn a_failed_write_leaves_nothing_behind() {
        let folder = tempfile::tempdir().unwrap();
        // A folder stands where the file should go, so the rename fails.
        let path = folder.path().join("taken");
        std::fs::create_dir(&path).unwrap();
        std::fs::write(path.join("x"), b"x").unwrap();
        assert!(write_aside(&path, b"new").is_err());
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
        let gone = write_aside(&folder.path().join("no/such/folder/a.jpg"), b"new");
        assert!(matches!(gone, Err(BookError::Unwritable { .. })));
    }
}
