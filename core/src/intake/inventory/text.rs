//! The bytes of a file as text: UTF-8, UTF-16 with its mark, or else Windows-1252.

use encoding_rs::{Encoding, UTF_8, WINDOWS_1252};

/// Text with the name of the encoding it was in.
pub(super) struct Decoded {
    pub text: String,
    pub encoding: &'static str,
}

/// Every byte sequence is text: what is not UTF-8 is read as Windows-1252, which has a sign for
/// every byte.
pub(super) fn decoded(bytes: &[u8]) -> Decoded {
    let (encoding, mark) = match Encoding::for_bom(bytes) {
        Some((encoding, mark)) => (encoding, mark),
        None if std::str::from_utf8(bytes).is_ok() => (UTF_8, 0),
        None => (WINDOWS_1252, 0),
    };
    let rest = bytes.get(mark..).unwrap_or_default();
    let (text, _) = encoding.decode_without_bom_handling(rest);
    Decoded {
        text: text.into_owned(),
        encoding: encoding.name(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_encoding_is_told_apart() {
        for (bytes, encoding) in [
            (&b"H\xc3\xb6he"[..], "UTF-8"),
            (b"\xef\xbb\xbfH\xc3\xb6he", "UTF-8"),
            (b"H\xf6he", "windows-1252"),
            (b"\xff\xfeH\0\xf6\0h\0e\0", "UTF-16LE"),
            (b"\xfe\xff\0H\0\xf6\0h\0e", "UTF-16BE"),
        ] {
            let read = decoded(bytes);
            assert_eq!((read.text.as_str(), read.encoding), ("Höhe", encoding));
        }
    }
}
