//! Bytes of a JPEG or PNG to upright pixels, within limits. Pure.

use std::io::Cursor;

use image::metadata::Orientation;
use image::{DynamicImage, ImageError, ImageFormat, ImageReader, Limits, RgbImage};

use super::container::PictureKind;

/// Longest edge in pixels that is decoded; the largest camera phones reach 16,320.
pub const MAX_EDGE_PX: u32 = 20_000;
/// Decoded bytes at most: 200 megapixels in red, green and blue.
const MAX_DECODED_BYTES: u64 = 640 << 20;

/// How stored pixels have to be turned to stand upright: the Exif orientation 1 to 8.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn(Orientation);

impl Turn {
    /// Upright as stored: orientation 1.
    pub const UPRIGHT: Turn = Turn(Orientation::NoTransforms);

    /// The turn of an Exif orientation, 1 to 8; nothing outside.
    pub fn from_exif(orientation: u32) -> Option<Turn> {
        let code = u8::try_from(orientation).ok()?;
        Orientation::from_exif(code).map(Turn)
    }

    /// The Exif orientation, 1 to 8.
    pub fn to_exif(self) -> u8 {
        self.0.to_exif()
    }
}

/// Why a picture could not be decoded.
#[derive(Debug, PartialEq)]
pub(super) enum DecodeFault {
    /// Beyond [`MAX_EDGE_PX`] or the memory set aside.
    TooManyPixels,
    /// The data inside is broken.
    Broken(String),
}

/// Decodes, turns upright and brings to red, green, blue; grey, CMYK, 16 bit and transparency
/// (over white) included.
pub(super) fn decode_upright(
    kind: PictureKind,
    bytes: &[u8],
    turn: Turn,
) -> Result<RgbImage, DecodeFault> {
    let format = match kind {
        PictureKind::Jpeg => ImageFormat::Jpeg,
        PictureKind::Png => ImageFormat::Png,
    };
    let mut reader = ImageReader::with_format(Cursor::new(bytes), format);
    let mut limits = Limits::default();
    limits.max_image_width = Some(MAX_EDGE_PX);
    limits.max_image_height = Some(MAX_EDGE_PX);
    limits.max_alloc = Some(MAX_DECODED_BYTES);
    reader.limits(limits);
    let mut picture = reader.decode().map_err(|cause| match cause {
        ImageError::Limits(_) => DecodeFault::TooManyPixels,
        other => DecodeFault::Broken(other.to_string()),
    })?;
    picture.apply_orientation(turn.0);
    Ok(over_white(picture))
}

fn over_white(picture: DynamicImage) -> RgbImage {
    if !picture.color().has_alpha() {
        return picture.into_rgb8();
    }
    let rgba = picture.into_rgba8();
    RgbImage::from_fn(rgba.width(), rgba.height(), |x, y| {
        let [r, g, b, a] = rgba.get_pixel(x, y).0;
        let over = |c: u8| {
            let mixed = u32::from(c) * u32::from(a) + 255 * (255 - u32::from(a));
            u8::try_from((mixed + 127) / 255).unwrap_or(255)
        };
        image::Rgb([over(r), over(g), over(b)])
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::photo::pixels::{encode_jpeg, speckled};
    use image::GenericImageView;
    use image::codecs::jpeg::JpegEncoder;
    use proptest::prelude::*;

    /// Red in the stored corner that has to end at the upper left, by Exif orientation
    /// (Exif 2.32 §4.6.4: which row and column of the scene the stored 0th row and column are).
    #[test]
    fn all_eight_orientations_stand_upright() {
        let upright = RgbImage::from_fn(64, 32, |x, y| match (x < 32, y < 16) {
            (true, true) => image::Rgb([220, 20, 20]),
            (false, true) => image::Rgb([20, 220, 20]),
            (true, false) => image::Rgb([20, 20, 220]),
            (false, false) => image::Rgb([220, 220, 220]),
        });
        for code in 1..=8_u32 {
            let pixel = |x: u32, y: u32, w: u32, h: u32| match code {
                1 => (x, y),
                2 => (w - 1 - x, y),
                3 => (w - 1 - x, h - 1 - y),
                4 => (x, h - 1 - y),
                5 => (y, x),
                6 => (w - 1 - y, x),
                7 => (w - 1 - y, h - 1 - x),
                _ => (y, h - 1 - x),
            };
            let (width, height) = if code < 5 { (64, 32) } else { (32, 64) };
            let stored = RgbImage::from_fn(width, height, |x, y| {
                let (u, v) = pixel(x, y, 64, 32);
                *upright.get_pixel(u, v)
            });
            let jpeg = encode_jpeg(&stored, 95).unwrap();
            let turn = Turn::from_exif(code).unwrap();
            let shown = decode_upright(PictureKind::Jpeg, &jpeg, turn).unwrap();
            assert_eq!(shown.dimensions(), (64, 32), "orientation {code}");
            for (x, y) in [(10, 8), (50, 8), (10, 24), (50, 24)] {
                let (seen, wanted) = (shown.get_pixel(x, y).0, upright.get_pixel(x, y).0);
                for channel in 0..3 {
                    assert!(
                        seen[channel].abs_diff(wanted[channel]) < 25,
                        "orientation {code} at {x},{y}: {seen:?} for {wanted:?}"
                    );
                }
            }
        }
        assert_eq!(Turn::from_exif(0), None);
        assert_eq!(Turn::from_exif(9), None);
        assert_eq!(Turn::from_exif(264), None);
    }

    #[test]
    fn grey_sixteen_bit_and_transparent_pictures_become_colour() {
        let mut grey = Vec::new();
        JpegEncoder::new_with_quality(&mut grey, 90)
            .encode_image(&image::GrayImage::from_pixel(31, 17, image::Luma([99])))
            .unwrap();
        let shown = decode_upright(PictureKind::Jpeg, &grey, Turn::UPRIGHT).unwrap();
        assert!(shown.get_pixel(5, 5).0.iter().all(|c| c.abs_diff(99) < 3));

        let png = |picture: DynamicImage| {
            let mut out = Cursor::new(Vec::new());
            picture.write_to(&mut out, ImageFormat::Png).unwrap();
            decode_upright(PictureKind::Png, &out.into_inner(), Turn::UPRIGHT).unwrap()
        };
        let clear = image::RgbaImage::from_pixel(3, 2, image::Rgba([0, 0, 0, 0]));
        assert_eq!(png(clear.into()).get_pixel(0, 0).0, [255, 255, 255]);
        let deep = image::ImageBuffer::from_pixel(3, 2, image::Luma([0x8000_u16]));
        assert_eq!(
            png(DynamicImage::ImageLuma16(deep)).get_pixel(2, 1).0,
            [128; 3]
        );
    }

    #[test]
    fn a_picture_bomb_is_refused_before_it_unpacks() {
        // A PNG head that promises 30,000 × 30,000 pixels; image data need not follow.
        let mut png = Cursor::new(Vec::new());
        speckled(4, 4).write_to(&mut png, ImageFormat::Png).unwrap();
        let mut png = png.into_inner();
        png[16..20].copy_from_slice(&30_000_u32.to_be_bytes());
        png[20..24].copy_from_slice(&30_000_u32.to_be_bytes());
        let sum = crc32(&png[12..29]);
        png[29..33].copy_from_slice(&sum.to_be_bytes());
        assert_eq!(
            decode_upright(PictureKind::Png, &png, Turn::UPRIGHT),
            Err(DecodeFault::TooManyPixels)
        );
        // The same in a JPEG: height and width stand behind the start-of-frame mark.
        let mut jpeg = encode_jpeg(&speckled(16, 16), 80).unwrap();
        let frame = jpeg.windows(2).position(|w| w == [0xff, 0xc0]).unwrap();
        jpeg[frame + 5..frame + 9].copy_from_slice(&[0x75, 0x30, 0x75, 0x30]);
        assert_eq!(
            decode_upright(PictureKind::Jpeg, &jpeg, Turn::UPRIGHT),
            Err(DecodeFault::TooManyPixels)
        );
    }

    /// The check sum of PNG chunks (ISO 3309).
    fn crc32(bytes: &[u8]) -> u32 {
        !bytes.iter().fold(!0_u32, |sum, &byte| {
            (0..8).fold(sum ^ u32::from(byte), |s, _| {
                (s >> 1) ^ (0xedb8_8320 & 0_u32.wrapping_sub(s & 1))
            })
        })
    }

    /// Red on the left, green on the right, written by another program: four inks as printers
    /// store them, and in several scans.
    #[test]
    fn four_inks_and_several_scans_decode_to_the_colours_meant() {
        for bytes in [
            &include_bytes!("../../../fixtures/photos/cmyk.jpg")[..],
            &include_bytes!("../../../fixtures/photos/progressive.jpg")[..],
        ] {
            let shown = decode_upright(PictureKind::Jpeg, bytes, Turn::UPRIGHT).unwrap();
            assert_eq!(shown.dimensions(), (48, 16));
            for (x, wanted) in [(8, [200_u8, 40, 40]), (40, [40, 160, 60])] {
                let seen = shown.get_pixel(x, 8).0;
                for channel in 0..3 {
                    assert!(seen[channel].abs_diff(wanted[channel]) < 20, "{seen:?}");
                }
            }
        }
    }

    #[test]
    fn a_single_pixel_goes_through() {
        let jpeg = encode_jpeg(&speckled(1, 1), 80).unwrap();
        let shown = decode_upright(PictureKind::Jpeg, &jpeg, Turn::UPRIGHT).unwrap();
        assert_eq!(DynamicImage::from(shown).dimensions(), (1, 1));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(300))]
        #[test]
        fn damaged_bytes_never_panic(
            at in 2_usize..1500,
            bytes in proptest::collection::vec(any::<u8>(), 1..20),
        ) {
            let mut jpeg = encode_jpeg(&speckled(33, 21), 80).unwrap();
            for (offset, byte) in bytes.into_iter().enumerate() {
                if let Some(place) = jpeg.get_mut(at + offset) { *place = byte; }
            }
            let outcome = decode_upright(PictureKind::Jpeg, &jpeg, Turn::UPRIGHT);
            if let Ok(picture) = outcome {
                prop_assert!(picture.width() <= MAX_EDGE_PX);
            }
        }
    }
}
