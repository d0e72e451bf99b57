//! The files of a damaged field book in one zip, for someone who can repair them.

use std::fs::File;
use std::io::{BufWriter, Read, Write};
use std::path::{Path, PathBuf};

use zip::{CompressionMethod, ZipWriter};

use super::aside::write_aside_with;
use super::pack::{Zip, defect, failed, go_on};
use super::paper_input::HowFar;
use crate::error::BookError;

/// Bytes read at once.
const AT_ONCE: usize = 1 << 20;

/// Writes the files of folders to `path`, each under its folder's name, as they are.
///
/// # Errors
/// `Unreadable` for a file of theirs; `DiskFull`, `Unwritable` for `path`; `Stopped`. Nothing
/// half-written stays behind.
pub fn write_damaged(
    folders: &[PathBuf],
    path: &Path,
    how_far: HowFar<'_>,
) -> Result<(), BookError> {
    let mut files = Vec::new();
    for folder in folders {
        files.extend(files_in(folder)?);
    }
    let of = u32::try_from(files.len()).unwrap_or(u32::MAX);
    write_aside_with(path, |to| {
        let mut zip = Zip {
            zip: ZipWriter::new(BufWriter::new(to)),
            path,
        };
        for ((name, file), done) in files.iter().zip(0..) {
            go_on(how_far, done, of)?;
            put(&mut zip, name, file)?;
        }
        let mut out = zip.zip.finish().map_err(|cause| failed(path, cause))?;
        out.flush()
            .map_err(|cause| BookError::writing(path, &cause))
    })
}

/// The files of a folder with their names in the zip, in one order.
fn files_in(folder: &Path) -> Result<Vec<(String, PathBuf)>, BookError> {
    let unreadable = |cause: std::io::Error| BookError::reading(folder, &cause);
    let mut files = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(unreadable)? {
        let file = entry.map_err(unreadable)?.path();
        let last = |path: &Path| Some(path.file_name()?.to_string_lossy().into_owned());
        let (Some(of), Some(name)) = (last(folder), last(&file)) else {
            continue;
        };
        if file.is_file() {
            files.push((format!("{of}/{name}"), file));
        }
    }
    files.sort();
    Ok(files)
}

fn put(
    zip: &mut Zip<'_, impl Write + std::io::Seek>,
    name: &str,
    file: &Path,
) -> Result<(), BookError> {
    let unreadable = |cause: std::io::Error| BookError::reading(file, &cause);
    zip.start(name, CompressionMethod::Deflated)?;
    let mut from = File::open(file).map_err(unreadable)?;
    let mut bytes = vec![0; AT_ONCE];
    loop {
        let read = from.read(&mut bytes).map_err(unreadable)?;
        if read == 0 {
            return Ok(());
        }
        zip.write(bytes.get(..read).ok_or_else(|| defect("read too much"))?)?;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_files_arrive_byte_for_byte_under_their_folder() {
        let folder = tempfile::tempdir().unwrap();
        let kept = folder.path().join("20261125T101500");
        std::fs::create_dir(&kept).unwrap();
        let wreck: Vec<u8> = (0..3_000_000_u32).map(|at| (at % 251) as u8).collect();
        std::fs::write(kept.join("field-book.db"), &wreck).unwrap();
        std::fs::write(kept.join("field-book.db-wal"), b"log").unwrap();
        let path = folder.path().join("damaged.zip");
        write_damaged(&[kept], &path, &|_, _| true).unwrap();
        let mut zip = zip::ZipArchive::new(File::open(&path).unwrap()).unwrap();
        assert_eq!(zip.len(), 2);
        let mut found = Vec::new();
        let mut one = zip.by_name("20261125T101500/field-book.db").unwrap();
        one.read_to_end(&mut found).unwrap();
        assert!(found == wreck);
    }

    #[test]
    fn a_stop_leaves_nothing_behind() {
        let folder = tempfile::tempdir().unwrap();
        let kept = folder.path().join("kept");
        std::fs::create_dir(&kept).unwrap();
        std::fs::write(kept.join("field-book.db"), b"wreck").unwrap();
        let path = folder.path().join("damaged.zip");
        let stopped = write_damaged(&[kept], &path, &|_, _| false);
        assert_eq!(stopped, Err(BookError::Stopped));
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }
}
