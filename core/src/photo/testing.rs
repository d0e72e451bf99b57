//! Photos with any record, for the tests of this room.

use super::container::with_exif;
use super::facts::{PhotoFacts, read_facts};
use super::pixels::{encode_jpeg, speckled};
use exif::{Field, In, Rational, Tag, Value, experimental::Writer};

/// What a photo with these fields says of itself.
pub fn facts_of(fields: Vec<Field>) -> PhotoFacts {
    let plain = encode_jpeg(&speckled(8, 8), 80).unwrap();
    if fields.is_empty() {
        return read_facts(&plain);
    }
    let mut writer = Writer::new();
    fields.iter().for_each(|field| writer.push_field(field));
    let mut block = std::io::Cursor::new(Vec::new());
    writer.write(&mut block, true).unwrap();
    read_facts(&with_exif(&plain, &block.into_inner()).unwrap())
}

/// A field of text.
pub fn letters(tag: Tag, text: &str) -> Field {
    Field {
        tag,
        ifd_num: In::PRIMARY,
        value: Value::Ascii(vec![text.as_bytes().to_vec()]),
    }
}

/// A field of rationals.
pub fn ratios(tag: Tag, values: &[(u32, u32)]) -> Field {
    Field {
        tag,
        ifd_num: In::PRIMARY,
        value: Value::Rational(values.iter().map(|&pair| Rational::from(pair)).collect()),
    }
}
