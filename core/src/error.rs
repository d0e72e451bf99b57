//! The one error enum: a variant is what a shell or the desk treats differently.

use crate::record::Fault;

/// Everything that can go wrong, each variant a thing that the caller can act on.
#[derive(Debug, Clone, PartialEq, thiserror::Error, uniffi::Error)]
pub enum BookError {
    /// What was entered or read does not fit; every fault with its place. Nothing was changed.
    #[error("{} fault(s), first at {}", faults.len(), faults.first().map_or("", |f| f.place.as_str()))]
    Refused {
        /// All faults found, in the order of their places.
        faults: Vec<Fault>,
    },
    /// No such record, page or file.
    #[error("no {kind} {id}")]
    NotFound {
        /// What was looked for: a noun in lower case.
        kind: String,
        /// The id, tag or path that led nowhere.
        id: String,
    },
    /// The field book was written by a newer version; it is left untouched.
    #[error("{place} has format {found}, this version knows up to {known}")]
    Newer {
        /// The file or folder.
        place: String,
        /// The format found.
        found: u32,
        /// The newest format this version knows.
        known: u32,
    },
    /// The field book's database is damaged; it was moved aside, never deleted.
    #[error("{place} is damaged: {detail}")]
    Damaged {
        /// The damaged file.
        place: String,
        /// What the check found, for a person who can mend it.
        detail: String,
        /// Where the damaged files were put, empty when they were left in place.
        kept: String,
    },
    /// No room left on the disk; nothing half-written stays behind.
    #[error("no room to write {place}")]
    DiskFull {
        /// What could not be written.
        place: String,
    },
    /// A file or folder cannot be written.
    #[error("cannot write {place}: {reason}")]
    Unwritable {
        /// What could not be written.
        place: String,
        /// The system's reason. (Kotlin's exceptions have a `cause` of their own.)
        reason: String,
    },
    /// A file or folder cannot be read.
    #[error("cannot read {place}: {reason}")]
    Unreadable {
        /// What could not be read.
        place: String,
        /// The system's reason. (Kotlin's exceptions have a `cause` of their own.)
        reason: String,
    },
    /// Another program holds the field book; trying again is safe.
    #[error("{place} is in use")]
    Busy {
        /// The file in use.
        place: String,
    },
    /// Long work was stopped by the person who asked for it.
    #[error("stopped")]
    Stopped,
    /// A fault of this program; the detail helps to mend it.
    #[error("a fault of the program: {detail}")]
    Defect {
        /// What went wrong, in the words of the code.
        detail: String,
    },
}

impl BookError {
    /// Sorts an input/output error at `place` while reading.
    pub fn reading(place: impl AsRef<std::path::Path>, cause: &std::io::Error) -> Self {
        let place = place.as_ref().display().to_string();
        match cause.kind() {
            std::io::ErrorKind::NotFound => BookError::NotFound {
                kind: "file".to_owned(),
                id: place,
            },
            _ => BookError::Unreadable {
                place,
                reason: cause.to_string(),
            },
        }
    }

    /// Sorts an input/output error at `place` while writing.
    pub fn writing(place: impl AsRef<std::path::Path>, cause: &std::io::Error) -> Self {
        let place = place.as_ref().display().to_string();
        match cause.kind() {
            std::io::ErrorKind::StorageFull | std::io::ErrorKind::QuotaExceeded => {
                BookError::DiskFull { place }
            }
            _ => BookError::Unwritable {
                place,
                reason: cause.to_string(),
            },
        }
    }

    /// A single fault as an error.
    pub fn refused(fault: Fault) -> Self {
        BookError::Refused {
            faults: vec![fault],
        }
    }
}
