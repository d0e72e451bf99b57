//! Is a file a whole JPEG or PNG? Decided on its bytes, never on its name.

/// The two kinds of picture that are taken in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum PictureKind {
    Jpeg,
    Png,
}

impl PictureKind {
    /// The ending of the file's name.
    pub(super) fn ending(self) -> &'static str {
        match self {
            PictureKind::Jpeg => "jpg",
            PictureKind::Png => "png",
        }
    }
}

const PNG_SIGNATURE: &[u8] = b"\x89PNG\r\n\x1a\n";

/// The kind of picture by its first bytes, or nothing.
pub(super) fn kind_of(bytes: &[u8]) -> Option<PictureKind> {
    if bytes.starts_with(&[0xff, 0xd8, 0xff]) {
        Some(PictureKind::Jpeg)
    } else if bytes.starts_with(PNG_SIGNATURE) {
        Some(PictureKind::Png)
    } else {
        None
    }
}

/// Whether the picture reaches its own end mark.
///
/// A decoder in its lenient mode fills what is missing with grey and says nothing, so a copy that
/// broke off would pass for a photo.
pub(super) fn is_whole(kind: PictureKind, bytes: &[u8]) -> bool {
    match kind {
        PictureKind::Jpeg => jpeg_end(bytes).is_some(),
        PictureKind::Png => png_is_whole(bytes),
    }
}

/// The offset just behind the end mark of the first picture in a JPEG file.
///
/// Segments are stepped over by their length (a thumbnail in one of them has an end mark of its
/// own); inside a scan a mark is `FF` followed by anything but `00` and the restart marks
/// (ITU-T T.81, annex B).
fn jpeg_end(bytes: &[u8]) -> Option<usize> {
    let mut at = 2;
    loop {
        let mark = next_mark(bytes, at)?;
        at = mark.after;
        match mark.code {
            0xd9 => return Some(at),
            // Stand-alone marks carry no length.
            0x01 | 0xd0..=0xd8 => {}
            _ => at = at.checked_add(usize::from(u16_at(bytes, at)?.max(2)))?,
        }
    }
}

struct Mark {
    code: u8,
    after: usize,
}

/// The next mark at or behind `from`, skipping scan data and fill bytes.
fn next_mark(bytes: &[u8], from: usize) -> Option<Mark> {
    let mut at = from;
    loop {
        at += bytes.get(at..)?.iter().position(|&byte| byte == 0xff)?;
        while *bytes.get(at)? == 0xff {
            at += 1;
        }
        let code = *bytes.get(at)?;
        at += 1;
        if code != 0 {
            return Some(Mark { code, after: at });
        }
    }
}

fn u16_at(bytes: &[u8], at: usize) -> Option<u16> {
    let pair = bytes.get(at..at.checked_add(2)?)?;
    Some(u16::from_be_bytes(pair.try_into().ok()?))
}

/// Whether a PNG's chunks lead without a break to its closing `IEND`.
fn png_is_whole(bytes: &[u8]) -> bool {
    let mut at = PNG_SIGNATURE.len();
    loop {
        let Some(head) = bytes.get(at..at + 8) else {
            return false;
        };
        let (length, kind) = head.split_at(4);
        let length = length
            .iter()
            .fold(0_usize, |sum, &byte| (sum << 8) | usize::from(byte));
        // Length, kind, contents, check sum.
        let Some(end) = at.checked_add(12).and_then(|x| x.checked_add(length)) else {
            return false;
        };
        if end > bytes.len() {
            return false;
        }
        if kind == b"IEND" {
            return true;
        }
        at = end;
    }
}

/// A JPEG with `record` (a TIFF block) as its Exif segment, right behind the start mark where the
/// Exif standard wants it. Application segments the encoder wrote are dropped. Nothing when the
/// record does not fit a segment (65,527 bytes) or the bytes are no JPEG.
pub(super) fn with_exif(jpeg: &[u8], record: &[u8]) -> Option<Vec<u8>> {
    let length = u16::try_from(record.len().checked_add(8)?).ok()?;
    let mut at = 2;
    // Step over what the encoder put in front (JFIF).
    while let [0xff, 0xe0..=0xef] = bytes_pair(jpeg, at)? {
        at = at
            .checked_add(2)?
            .checked_add(usize::from(u16_at(jpeg, at + 2)?))?;
    }
    let rest = jpeg.get(at..)?;
    let mut out = Vec::with_capacity(jpeg.len() + record.len() + 16);
    out.extend_from_slice(&[0xff, 0xd8, 0xff, 0xe1]);
    out.extend_from_slice(&length.to_be_bytes());
    out.extend_from_slice(b"Exif\0\0");
    out.extend_from_slice(record);
    out.extend_from_slice(rest);
    Some(out)
}

fn bytes_pair(bytes: &[u8], at: usize) -> Option<[u8; 2]> {
    bytes.get(at..at.checked_add(2)?)?.try_into().ok()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::pixels::{encode_jpeg, speckled};

    fn png() -> Vec<u8> {
        let mut out = std::io::Cursor::new(Vec::new());
        speckled(9, 7)
            .write_to(&mut out, image::ImageFormat::Png)
            .unwrap();
        out.into_inner()
    }

    #[test]
    fn kinds_are_told_by_their_bytes() {
        let jpeg = encode_jpeg(&speckled(9, 7), 80).unwrap();
        assert_eq!(kind_of(&jpeg), Some(PictureKind::Jpeg));
        assert_eq!(kind_of(&png()), Some(PictureKind::Png));
        assert_eq!(kind_of(b"GIF89a"), None);
        assert_eq!(kind_of(b""), None);
    }

    #[test]
    fn every_cut_makes_a_photo_torn() {
        let jpeg = encode_jpeg(&speckled(40, 30), 80).unwrap();
        assert!(is_whole(PictureKind::Jpeg, &jpeg));
        for cut in 2..jpeg.len() {
            assert!(!is_whole(PictureKind::Jpeg, &jpeg[..cut]), "cut at {cut}");
        }
        let png = png();
        assert!(is_whole(PictureKind::Png, &png));
        for cut in 8..png.len() {
            assert!(!is_whole(PictureKind::Png, &png[..cut]), "cut at {cut}");
        }
    }

    #[test]
    fn the_end_mark_of_a_thumbnail_is_not_the_end() {
        let jpeg = encode_jpeg(&speckled(40, 30), 80).unwrap();
        let with_thumbnail = with_exif(&jpeg, &jpeg).unwrap();
        assert!(is_whole(PictureKind::Jpeg, &with_thumbnail));
        let torn = &with_thumbnail[..with_thumbnail.len() - 5];
        assert!(!is_whole(PictureKind::Jpeg, torn));
    }

    #[test]
    fn a_record_too_large_for_a_segment_is_refused() {
        let jpeg = encode_jpeg(&speckled(4, 4), 80).unwrap();
        assert!(with_exif(&jpeg, &[0; 65_527]).is_some());
        assert!(with_exif(&jpeg, &[0; 65_528]).is_none());
    }
}
