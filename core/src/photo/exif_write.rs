//! Writes a JPEG with a complete record: mandatory tags, time, position, direction.

use chrono::{DateTime, Timelike};
use exif::experimental::Writer;
use exif::{Field, In, Rational, Tag, Value};
use image::RgbImage;

use super::container::with_exif;
use super::dms::encode_dms;
use super::gps::{CameraDirection, North};
use super::pixels::encode_jpeg;
use crate::error::BookError;
use crate::record::{Moment, Position};

/// What goes into a picture's record.
#[derive(Debug, Clone, PartialEq)]
pub struct ExifEntry {
    /// When it was taken.
    pub taken: Moment,
    /// Where from, with the accuracy where it is known.
    pub position: Option<Position>,
    /// Metres above sea level, below it negative.
    pub altitude_m: Option<f64>,
    /// Where the camera looked.
    pub direction: Option<CameraDirection>,
    /// What kind of device: stands under *Model*.
    pub model: String,
    /// What it shows, in plain ASCII.
    pub description: String,
}

/// The picture as a JPEG of `quality` 1 to 100 with its record in front (Exif 2.32).
///
/// # Errors
/// `Defect` when the moment lies outside the calendar or the picture has no pixels.
pub fn write_exif_jpeg(
    picture: &RgbImage,
    quality: u8,
    entry: &ExifEntry,
) -> Result<Vec<u8>, BookError> {
    let defect = |detail: &str| BookError::Defect {
        detail: detail.to_owned(),
    };
    let mut fields = frame_fields(picture.width(), picture.height());
    fields.extend(time_fields(entry).ok_or_else(|| defect("a moment outside the calendar"))?);
    fields.extend(maker_fields(entry));
    fields.extend(gps_fields(entry));
    let mut writer = Writer::new();
    fields.iter().for_each(|field| writer.push_field(field));
    let mut block = std::io::Cursor::new(Vec::new());
    writer
        .write(&mut block, false)
        .map_err(|cause| defect(&cause.to_string()))?;
    let plain = encode_jpeg(picture, quality)?;
    with_exif(&plain, &block.into_inner()).ok_or_else(|| defect("a record beyond 64 kB"))
}

fn field(tag: Tag, value: Value) -> Field {
    Field {
        tag,
        ifd_num: In::PRIMARY,
        value,
    }
}

fn letters(tag: Tag, text: &str) -> Field {
    // The standard's texts are ASCII; anything else would be a fault to validators.
    let plain: String = text
        .chars()
        .map(|c| if c.is_ascii() && c != '\0' { c } else { '?' })
        .collect();
    field(tag, Value::Ascii(vec![plain.into_bytes()]))
}

fn ratio(tag: Tag, value: f64, denominator: u32) -> Field {
    let num = (value * f64::from(denominator)).round() as u32;
    let pair = Rational::from((num, denominator));
    field(tag, Value::Rational(vec![pair]))
}

/// The tags that the standard makes mandatory for every compressed picture.
fn frame_fields(width: u32, height: u32) -> Vec<Field> {
    let undefined = |bytes: &[u8]| Value::Undefined(bytes.to_vec(), 0);
    vec![
        field(Tag::Orientation, Value::Short(vec![1])),
        ratio(Tag::XResolution, 72.0, 1),
        ratio(Tag::YResolution, 72.0, 1),
        field(Tag::ResolutionUnit, Value::Short(vec![2])),
        field(Tag::YCbCrPositioning, Value::Short(vec![1])),
        field(Tag::ExifVersion, undefined(b"0232")),
        field(Tag::ComponentsConfiguration, undefined(&[1, 2, 3, 0])),
        field(Tag::FlashpixVersion, undefined(b"0100")),
        field(Tag::ColorSpace, Value::Short(vec![1])),
        field(Tag::PixelXDimension, Value::Long(vec![width])),
        field(Tag::PixelYDimension, Value::Long(vec![height])),
    ]
}

fn maker_fields(entry: &ExifEntry) -> Vec<Field> {
    vec![
        letters(Tag::ImageDescription, &entry.description),
        letters(Tag::Make, "Bolewalk"),
        letters(Tag::Model, &entry.model),
        letters(Tag::Software, "Bolewalk"),
    ]
}

fn time_fields(entry: &ExifEntry) -> Option<Vec<Field>> {
    let Moment { utc_ms, offset_min } = entry.taken;
    let local_ms = utc_ms.checked_add(i64::from(offset_min).checked_mul(60_000)?)?;
    let local = DateTime::from_timestamp_millis(local_ms)?;
    let written = local.format("%Y:%m:%d %H:%M:%S").to_string();
    if written.len() != 19 {
        return None;
    }
    let thousandths = format!("{:03}", local.timestamp_subsec_millis());
    let sign = if offset_min < 0 { '-' } else { '+' };
    let ahead = offset_min.unsigned_abs();
    let offset = format!("{sign}{:02}:{:02}", ahead / 60, ahead % 60);
    let mut fields = Vec::new();
    for tag in [Tag::DateTime, Tag::DateTimeOriginal, Tag::DateTimeDigitized] {
        fields.push(letters(tag, &written));
    }
    for tag in [
        Tag::OffsetTime,
        Tag::OffsetTimeOriginal,
        Tag::OffsetTimeDigitized,
    ] {
        fields.push(letters(tag, &offset));
    }
    for tag in [
        Tag::SubSecTime,
        Tag::SubSecTimeOriginal,
        Tag::SubSecTimeDigitized,
    ] {
        fields.push(letters(tag, &thousandths));
    }
    Some(fields)
}

fn gps_fields(entry: &ExifEntry) -> Vec<Field> {
    if entry.position.is_none() && entry.altitude_m.is_none() && entry.direction.is_none() {
        return Vec::new();
    }
    let mut fields = vec![field(Tag::GPSVersionID, Value::Byte(vec![2, 3, 0, 0]))];
    if let Some(position) = &entry.position {
        fields.extend(position_fields(position, entry.taken));
    }
    if let Some(height_m) = entry.altitude_m {
        let below = u8::from(height_m < 0.0);
        fields.push(field(Tag::GPSAltitudeRef, Value::Byte(vec![below])));
        fields.push(ratio(Tag::GPSAltitude, height_m.abs(), 100));
    }
    if let Some(direction) = &entry.direction {
        let north = match direction.north {
            North::True => "T",
            North::Magnetic => "M",
        };
        fields.push(letters(Tag::GPSImgDirectionRef, north));
        // 359.996 must not be written as 360.00, which lies outside the standard's range.
        let hundredths = (direction.bearing_deg.rem_euclid(360.0) * 100.0).round() % 36_000.0;
        fields.push(ratio(Tag::GPSImgDirection, hundredths / 100.0, 100));
    }
    fields
}

fn position_fields(position: &Position, taken: Moment) -> Vec<Field> {
    let axis = |tag: Tag, angle_deg: f64| {
        let dms = encode_dms(angle_deg);
        let parts = [(dms.degrees, 1), (dms.minutes, 1), (dms.seconds_e4, 10_000)];
        field(
            tag,
            Value::Rational(parts.into_iter().map(Rational::from).collect()),
        )
    };
    let north = if position.lat_deg < 0.0 { "S" } else { "N" };
    let east = if position.lon_deg < 0.0 { "W" } else { "E" };
    let mut fields = vec![
        letters(Tag::GPSLatitudeRef, north),
        axis(Tag::GPSLatitude, position.lat_deg),
        letters(Tag::GPSLongitudeRef, east),
        axis(Tag::GPSLongitude, position.lon_deg),
        letters(Tag::GPSMapDatum, "WGS-84"),
    ];
    if let Some(utc) = DateTime::from_timestamp_millis(taken.utc_ms) {
        let clock = [utc.hour(), utc.minute(), utc.second()];
        let clock = clock.into_iter().map(|part| Rational::from((part, 1)));
        fields.push(field(Tag::GPSTimeStamp, Value::Rational(clock.collect())));
        let day = utc.format("%Y:%m:%d").to_string();
        fields.push(letters(Tag::GPSDateStamp, &day));
    }
    if let Some(radius_m) = position.accuracy_m {
        fields.push(ratio(Tag::GPSHPositioningError, radius_m, 1000));
    }
    fields
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use crate::photo::pixels::speckled;
    use crate::photo::read_facts;
    use crate::record::PositionMethod;

    pub fn entry() -> ExifEntry {
        ExifEntry {
            taken: Moment {
                utc_ms: 1_777_903_872_250,
                offset_min: -240,
            },
            position: Some(Position {
                lat_deg: 42.3314,
                lon_deg: -71.1211,
                accuracy_m: Some(3.5),
                method: Some(PositionMethod::PhotoRecord),
            }),
            altitude_m: Some(-2.5),
            direction: Some(CameraDirection {
                bearing_deg: 359.996,
                north: North::True,
            }),
            model: "demo picture".to_owned(),
            description: "union with included bark".to_owned(),
        }
    }

    #[test]
    fn what_is_written_is_read() {
        let entry = entry();
        let jpeg = write_exif_jpeg(&speckled(40, 30), 80, &entry).unwrap();
        let facts = read_facts(&jpeg);
        assert_eq!(facts.gaps, []);
        assert_eq!(facts.taken, Some(entry.taken));
        assert_eq!(facts.altitude_m, Some(-2.5));
        assert_eq!(facts.direction.unwrap().bearing_deg, 0.0);
        assert_eq!(facts.position.unwrap().accuracy_m, Some(3.5));
    }

    #[test]
    fn the_same_entry_gives_the_same_bytes() {
        let picture = speckled(40, 30);
        assert_eq!(
            write_exif_jpeg(&picture, 80, &entry()).unwrap(),
            write_exif_jpeg(&picture, 80, &entry()).unwrap()
        );
    }
}
