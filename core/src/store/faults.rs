//! What the database reports → the one error enum, in one place.

use rusqlite::{Error, ErrorCode, ffi};

use super::DATABASE;
use crate::error::BookError;

impl From<Error> for BookError {
    /// Sorts by what the caller can do. Corruption is only what SQLite calls corruption: a full
    /// disk, a busy file and a failed read are not.
    fn from(fault: Error) -> Self {
        let place = DATABASE.to_owned();
        match &fault {
            Error::SqliteFailure(code, _) => {
                let reason = fault.to_string();
                match code.code {
                    ErrorCode::DatabaseCorrupt | ErrorCode::NotADatabase => BookError::Damaged {
                        place,
                        detail: reason,
                        kept: String::new(),
                    },
                    ErrorCode::DiskFull => BookError::DiskFull { place },
                    ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked => {
                        BookError::Busy { place }
                    }
                    ErrorCode::ReadOnly | ErrorCode::PermissionDenied | ErrorCode::CannotOpen => {
                        BookError::Unwritable { place, reason }
                    }
                    ErrorCode::SystemIoFailure => failed_io(code.extended_code, place, reason),
                    _ => BookError::Defect { detail: reason },
                }
            }
            Error::FromSqlConversionFailure(..)
            | Error::IntegralValueOutOfRange(..)
            | Error::InvalidColumnType(..)
            | Error::Utf8Error(..) => BookError::Damaged {
                place,
                detail: fault.to_string(),
                kept: String::new(),
            },
            _ => BookError::Defect {
                detail: fault.to_string(),
            },
        }
    }
}

fn failed_io(extended: i32, place: String, reason: String) -> BookError {
    match extended {
        ffi::SQLITE_IOERR_READ | ffi::SQLITE_IOERR_SHORT_READ | ffi::SQLITE_IOERR_FSTAT => {
            BookError::Unreadable { place, reason }
        }
        _ => BookError::Unwritable { place, reason },
    }
}

/// Puts the full path into an error that only knows the database's name.
pub fn placed(mut fault: BookError, path: &str) -> BookError {
    if let BookError::Damaged { place, .. }
    | BookError::DiskFull { place }
    | BookError::Unwritable { place, .. }
    | BookError::Unreadable { place, .. }
    | BookError::Busy { place } = &mut fault
        && place == DATABASE
        && !path.is_empty()
    {
        path.clone_into(place);
    }
    fault
}

/// A fault of this program.
pub fn defect(detail: impl std::fmt::Display) -> BookError {
    BookError::Defect {
        detail: detail.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sorted(extended: i32) -> BookError {
        Error::SqliteFailure(ffi::Error::new(extended), None).into()
    }

    #[test]
    fn only_corruption_is_damage() {
        // SQLite, 'Result and Error Codes'.
        for code in [
            ffi::SQLITE_CORRUPT,
            ffi::SQLITE_NOTADB,
            ffi::SQLITE_CORRUPT_INDEX,
        ] {
            assert!(matches!(sorted(code), BookError::Damaged { .. }), "{code}");
        }
        assert!(matches!(
            sorted(ffi::SQLITE_FULL),
            BookError::DiskFull { .. }
        ));
        assert!(matches!(sorted(ffi::SQLITE_BUSY), BookError::Busy { .. }));
        assert!(matches!(
            sorted(ffi::SQLITE_READONLY),
            BookError::Unwritable { .. }
        ));
        assert!(matches!(
            sorted(ffi::SQLITE_IOERR_READ),
            BookError::Unreadable { .. }
        ));
        assert!(matches!(
            sorted(ffi::SQLITE_IOERR_FSYNC),
            BookError::Unwritable { .. }
        ));
    }

    #[test]
    fn the_path_is_put_in_once() {
        let fault = placed(sorted(ffi::SQLITE_FULL), "/books/mine/field-book.db");
        assert_eq!(
            fault.to_string(),
            "no room to write /books/mine/field-book.db"
        );
    }
}
