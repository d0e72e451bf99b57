//! Copies of photos for paper: small enough to mail, sharp enough to print.

use std::path::Path;

use super::container::kind_of;
use super::decode::{DecodeFault, decode_upright};
use super::facts::read_facts;
use super::file::{Contents, read_within};
use super::import::{MAX_FILE_BYTES, refused};
use super::pixels::{encode_jpeg, fit};
use crate::error::BookError;
use crate::record::ReportFor;

impl ReportFor {
    /// Longest edge of a photo in pixels.
    pub fn max_px(self) -> u32 {
        match self {
            ReportFor::Mail => 800,
            ReportFor::Print => 1280,
        }
    }

    /// JPEG quality.
    pub fn quality(self) -> u8 {
        match self {
            ReportFor::Mail => 75,
            ReportFor::Print => 80,
        }
    }
}

/// A copy for a report, with its size so that it can be laid out unopened.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ReportPicture {
    /// A JPEG without place or time in it.
    pub jpeg: Vec<u8>,
    /// Width in pixels.
    pub width_px: u32,
    /// Height in pixels.
    pub height_px: u32,
}

/// The photo at `path`, upright, at most `max_px` on its longest edge, as a JPEG of `quality`
/// 1 to 100 without place or time in it; the same file gives the same bytes.
///
/// # Errors
/// `NotFound`, `Unreadable`; `Refused` when it is no picture or cannot be decoded.
pub fn report_copy(path: &Path, max_px: u32, quality: u8) -> Result<Vec<u8>, BookError> {
    scaled(path, max_px, quality).map(|picture| picture.jpeg)
}

/// Like [`report_copy`], at the size and quality of what it is made for.
///
/// # Errors
/// As [`report_copy`].
pub fn report_picture(path: &Path, made_for: ReportFor) -> Result<ReportPicture, BookError> {
    scaled(path, made_for.max_px(), made_for.quality())
}

fn scaled(path: &Path, max_px: u32, quality: u8) -> Result<ReportPicture, BookError> {
    let broken = |found: String| refused("fault.photo-broken", path, found, "a whole picture");
    let bytes = match read_within(path, MAX_FILE_BYTES)? {
        Contents::Read(bytes) => bytes,
        Contents::TooLong => return Err(broken("over 64 MB".to_owned())),
    };
    let kind = kind_of(&bytes).ok_or_else(|| broken("no JPEG or PNG".to_owned()))?;
    let upright = decode_upright(kind, &bytes, read_facts(&bytes).turn).map_err(|fault| {
        broken(match fault {
            DecodeFault::TooManyPixels => "too many pixels".to_owned(),
            DecodeFault::Broken(cause) => cause,
        })
    })?;
    let fitted = fit(&upright, max_px)?;
    Ok(ReportPicture {
        jpeg: encode_jpeg(&fitted, quality)?,
        width_px: fitted.width(),
        height_px: fitted.height(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::exif_write::tests::entry;
    use crate::photo::pixels::speckled;
    use crate::photo::write_exif_jpeg;

    #[test]
    fn copies_fit_their_purpose_and_repeat_to_the_byte() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.jpg");
        let jpeg = write_exif_jpeg(&speckled(1601, 1203), 90, &entry()).unwrap();
        std::fs::write(&path, jpeg).unwrap();
        let mail = report_picture(&path, ReportFor::Mail).unwrap();
        assert_eq!((mail.width_px, mail.height_px), (800, 601));
        assert_eq!(mail.jpeg, report_copy(&path, 800, 75).unwrap());
        assert!(!mail.jpeg.windows(4).any(|w| w == b"Exif"));
        let print = report_picture(&path, ReportFor::Print).unwrap();
        assert_eq!(print.width_px, 1280);
        assert!(print.jpeg.len() > mail.jpeg.len());
    }

    #[test]
    fn a_text_is_no_picture() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("a.jpg");
        std::fs::write(&path, "no picture").unwrap();
        let outcome = report_copy(&path, 800, 75);
        assert!(matches!(outcome, Err(BookError::Refused { .. })));
    }
}
