//! The folder of the demo: made whole beside its place, then moved there; nothing that the demo did
//! not make is ever replaced.

use std::ffi::OsString;
use std::fs;
use std::io::{BufRead, IsTerminal, Write};
use std::path::{Path, PathBuf};

use bolewalk_core::error::BookError;
use bolewalk_core::intake::make_unique;
use bolewalk_core::record::Fault;
use bolewalk_core::store::{BACKUPS, DATABASE, PHOTOS, QUARANTINE};
use bolewalk_core::words::{Said, Words};
use tempfile::TempDir;

use super::property;
use crate::export::SITE_FILE;
use crate::place::open_book;

/// What a demo's folder may hold.
const OURS: [&str; 10] = [
    PHOTOS,
    BACKUPS,
    QUARANTINE,
    SITE_FILE,
    "site-summary.pdf",
    "climb-sheets.pdf",
    "trees.gpkg",
    "trees.geojson",
    "trees.csv",
    DATABASE,
];

/// Where the demo goes.
pub struct Target {
    /// As it was asked for.
    asked: PathBuf,
    /// Its parent, which must be there.
    parent: PathBuf,
    name: OsString,
}

impl Target {
    /// The folder as it was asked for.
    pub fn of(folder: &Path) -> Result<Target, BookError> {
        let whole =
            std::path::absolute(folder).map_err(|cause| BookError::writing(folder, &cause))?;
        let (Some(parent), Some(name)) = (whole.parent(), whole.file_name()) else {
            return Err(not_ours(folder, folder));
        };
        Ok(Target {
            asked: folder.to_owned(),
            parent: parent.to_owned(),
            name: name.to_owned(),
        })
    }

    /// The folder as it was asked for, for people.
    pub fn shown(&self) -> String {
        self.asked.display().to_string()
    }

    fn path(&self) -> PathBuf {
        self.parent.join(&self.name)
    }

    /// Whether the folder is free, or holds an earlier demo that may be replaced: after asking,
    /// unless `yes`.
    ///
    /// # Errors
    /// `Refused` where it holds anything else, and where nobody is there to be asked.
    pub fn may_be_written(&self, yes: bool, words: &Words) -> Result<bool, BookError> {
        let path = self.path();
        if !path.exists() {
            return Ok(true);
        }
        if !path.is_dir() {
            return Err(not_ours(&self.asked, &path));
        }
        let mut empty = true;
        let entries = fs::read_dir(&path).map_err(|cause| BookError::reading(&path, &cause))?;
        for entry in entries {
            let entry = entry.map_err(|cause| BookError::reading(&path, &cause))?;
            empty = false;
            if !is_ours(&entry.file_name().to_string_lossy()) {
                return Err(not_ours(&self.asked, &entry.path()));
            }
        }
        if empty {
            return Ok(true);
        }
        if !holds_only_the_demo(&path)? {
            return Err(not_ours(&self.asked, &path.join(DATABASE)));
        }
        if yes {
            return Ok(true);
        }
        self.ask(words)
    }

    fn ask(&self, words: &Words) -> Result<bool, BookError> {
        let shown = self.shown();
        if !std::io::stdin().is_terminal() {
            let fault = Fault::new("fault.demo-is-there", shown, "", "");
            return Err(BookError::refused(fault));
        }
        let asked = words.say("desk.demo-ask", &[("folder", Said::Text(&shown))]);
        let mut out = std::io::stderr();
        let mut answer = String::new();
        write!(out, "{asked} ")
            .and_then(|()| out.flush())
            .and_then(|()| std::io::stdin().lock().read_line(&mut answer))
            .map_err(|cause| BookError::reading("standard input", &cause))?;
        let yes = words.say("desk.yes", &[]);
        let answer = answer.trim().to_lowercase();
        Ok(!answer.is_empty() && yes.starts_with(&answer))
    }

    /// A folder beside the place, for the demo to be made in.
    pub fn aside(&self) -> Result<TempDir, BookError> {
        tempfile::Builder::new()
            .prefix(".bolewalk-demo-")
            .tempdir_in(&self.parent)
            .map_err(|cause| BookError::writing(self.path(), &cause))
    }

    /// Moves the finished demo to its place; an earlier one goes only once the new one stands.
    pub fn put_in_place(&self, made: TempDir) -> Result<(), BookError> {
        let path = self.path();
        let failed = |cause: std::io::Error| BookError::writing(&path, &cause);
        readable_by_others(made.path()).map_err(failed)?;
        let old = self.aside()?;
        let kept = old.path().join("old");
        if path.exists() {
            fs::rename(&path, &kept).map_err(failed)?;
        }
        if let Err(cause) = fs::rename(made.path(), &path) {
            if kept.exists() {
                fs::rename(&kept, &path).map_err(failed)?;
            }
            return Err(failed(cause));
        }
        // Its folder has moved: there is nothing left for it to remove.
        let _ = made.keep();
        Ok(())
    }
}

fn is_ours(name: &str) -> bool {
    OURS.contains(&name)
        || name
            .strip_prefix(DATABASE)
            .is_some_and(|rest| rest.starts_with('-'))
}

/// Whether the field book in the folder holds the demo property and no other.
fn holds_only_the_demo(folder: &Path) -> Result<bool, BookError> {
    let mut file = property::property()?;
    make_unique(&mut file, &[]);
    if !folder.join(DATABASE).is_file() {
        return Ok(false);
    }
    let book = open_book(folder)?.read().load_book()?;
    Ok(book.sites.iter().all(|site| site.id == file.site.id))
}

fn not_ours(asked: &Path, found: &Path) -> BookError {
    BookError::refused(Fault::new(
        "fault.folder-not-a-demo",
        asked.display().to_string(),
        found.display(),
        "",
    ))
}

/// A temporary folder is its owner's alone; a field book's folder is not.
#[cfg(unix)]
fn readable_by_others(folder: &Path) -> std::io::Result<()> {
    use std::os::unix::fs::PermissionsExt;
    fs::set_permissions(folder, fs::Permissions::from_mode(0o755))
}

#[cfg(not(unix))]
fn readable_by_others(_: &Path) -> std::io::Result<()> {
    Ok(())
}
