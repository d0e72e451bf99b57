//! What the zip reports → the one error enum: what was damaged on its way, and what is no pack.

use std::io::ErrorKind;

use zip::result::ZipError;

use crate::error::BookError;
use crate::record::Fault;

/// A file that is no pack.
pub fn no_pack() -> BookError {
    BookError::refused(Fault::new("fault.pack-none", "", "", ""))
}

/// A part that cannot be read to its end: cut short or damaged on its way.
pub fn torn(place: &str, cause: impl std::fmt::Display) -> BookError {
    BookError::refused(Fault::new("fault.pack-torn", place, cause, ""))
}

/// Sorts what the zip reports. A disk that cannot be read is not the pack's fault.
pub fn failed(cause: ZipError) -> BookError {
    match cause {
        ZipError::Io(cause) => match cause.kind() {
            ErrorKind::UnexpectedEof | ErrorKind::InvalidData | ErrorKind::InvalidInput => {
                torn("", cause)
            }
            _ => BookError::Unreadable {
                place: "pack".to_owned(),
                reason: cause.to_string(),
            },
        },
        other => torn("", other),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_failing_disk_is_told_apart_from_a_torn_pack() {
        let of = |kind: ErrorKind| failed(ZipError::Io(kind.into()));
        assert!(matches!(
            of(ErrorKind::PermissionDenied),
            BookError::Unreadable { .. }
        ));
        assert!(matches!(
            of(ErrorKind::UnexpectedEof),
            BookError::Refused { .. }
        ));
    }
}
