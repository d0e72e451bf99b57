//! Single values out of a photo's own record, each guarded: a broken one is nothing, not a panic.

use exif::{Exif, In, Rational, Tag, Value};

/// A text without its padding, or nothing when blank or of another kind.
pub(super) fn text(record: &Exif, tag: Tag) -> Option<String> {
    let field = record.get_field(tag, In::PRIMARY)?;
    let Value::Ascii(lines) = &field.value else {
        return None;
    };
    let line = String::from_utf8_lossy(lines.first()?);
    let line = line.trim_matches(|c: char| c.is_whitespace() || c == '\0');
    (!line.is_empty()).then(|| line.to_owned())
}

/// A rational's value, or nothing for a denominator of 0 (0/0 is how cameras write *unknown*).
fn value_of(rational: &Rational) -> Option<f64> {
    (rational.denom != 0).then(|| f64::from(rational.num) / f64::from(rational.denom))
}

/// What stands under a tag that should hold rationals.
#[derive(Debug, PartialEq)]
pub(super) enum Rationals {
    /// The tag is not there.
    Absent,
    /// All values are numbers.
    Read(Vec<f64>),
    /// At least one value is no number, or the kind is wrong; as found.
    Broken(String),
}

/// The rationals under a tag.
pub(super) fn rationals(record: &Exif, tag: Tag) -> Rationals {
    let Some(field) = record.get_field(tag, In::PRIMARY) else {
        return Rationals::Absent;
    };
    let Value::Rational(values) = &field.value else {
        return Rationals::Broken("another kind of value".to_owned());
    };
    let read: Option<Vec<f64>> = values.iter().map(value_of).collect();
    match read {
        Some(read) if !read.is_empty() => Rationals::Read(read),
        _ => Rationals::Broken(as_found(values)),
    }
}

/// The one rational under a tag, when there is one and it is a number.
pub(super) fn rational(record: &Exif, tag: Tag) -> Option<f64> {
    match rationals(record, tag) {
        Rationals::Read(values) => values.first().copied(),
        _ => None,
    }
}

/// A whole number under a tag.
pub(super) fn whole(record: &Exif, tag: Tag) -> Option<u32> {
    record.get_field(tag, In::PRIMARY)?.value.get_uint(0)
}

fn as_found(values: &[Rational]) -> String {
    let parts: Vec<String> = values
        .iter()
        .map(|r| format!("{}/{}", r.num, r.denom))
        .collect();
    parts.join(" ")
}
