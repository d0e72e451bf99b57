//! Files written aside and renamed, so that nothing half-written is ever found under its name.

use std::fs::File;
use std::io::Write;
use std::path::Path;

use crate::error::BookError;

/// Writes `bytes` to `path`: into a file beside it, flushed to the disk, then renamed over it.
///
/// # Errors
/// [`BookError::DiskFull`], [`BookError::Unwritable`]; what was at `path` before stays.
pub fn write_aside(path: &Path, bytes: &[u8]) -> Result<(), BookError> {
    write_aside_with(path, |aside| {
        aside
            .write_all(bytes)
            .map_err(|cause| BookError::writing(path, &cause))
    })
}

/// The same for what is written bit by bit.
///
/// # Errors
/// As [`write_aside`], and what `write` reports.
pub fn write_aside_with<T>(
    path: &Path,
    write: impl FnOnce(&mut File) -> Result<T, BookError>,
) -> Result<T, BookError> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let failed = |cause: &std::io::Error| BookError::writing(path, cause);
    let mut aside = tempfile::Builder::new()
        .prefix(".bolewalk-")
        .tempfile_in(folder)
        .map_err(|cause| failed(&cause))?;
    let written = write(aside.as_file_mut())?;
    aside.as_file().sync_all().map_err(|cause| failed(&cause))?;
    readable_by_others(aside.as_file()).map_err(|cause| failed(&cause))?;
    aside.persist(path).map_err(|fault| failed(&fault.error))?;
    Ok(written)
}

/// A temporary file is its owner's alone; a paper is not.
#[cfg(unix)]
fn readable_by_others(file: &std::fs::File) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    file.set_permissions(std::fs::Permissions::from_mode(0o644))
}

#[cfg(not(unix))]
fn readable_by_others(_: &std::fs::File) -> std::io::Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_old_file_stays_until_the_new_one_is_whole() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.pdf");
        write_aside(&path, b"old").unwrap();
        write_aside(&path, b"new").unwrap();
        assert_eq!(std::fs::read(&path).unwrap(), b"new");
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }

    #[test]
    fn a_folder_that_is_not_there_is_named() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("none").join("a.pdf");
        let Err(BookError::Unwritable { place, .. }) = write_aside(&path, b"x") else {
            panic!("written into nowhere");
        };
        assert!(place.ends_with("a.pdf"));
    }
}
