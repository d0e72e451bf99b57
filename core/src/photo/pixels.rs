//! Pixels: scale and encode. Pure: pixels in, pixels or bytes out.

use fast_image_resize::images::Image as Plane;
use fast_image_resize::{PixelType, Resizer};
use image::RgbImage;
use image::codecs::jpeg::JpegEncoder;

use crate::error::BookError;

/// Longest edge in pixels of the upright copy.
pub const VIEW_EDGE_PX: u32 = 2048;
/// Longest edge in pixels of the thumbnail.
pub const SMALL_EDGE_PX: u32 = 320;
/// The size of a picture scaled to a longest edge of at most `max_px`, never enlarged and never
/// thinner than one pixel.
pub(super) fn fitted(width: u32, height: u32, max_px: u32) -> (u32, u32) {
    let longest = width.max(height);
    if longest <= max_px || longest == 0 {
        return (width, height);
    }
    let scale = |edge: u32| {
        let scaled =
            (u64::from(edge) * u64::from(max_px) + u64::from(longest) / 2) / u64::from(longest);
        u32::try_from(scaled).unwrap_or(max_px).max(1)
    };
    (scale(width), scale(height))
}

/// The picture scaled to a longest edge of at most `max_px`; a smaller one is left as it is.
pub(super) fn fit(picture: &RgbImage, max_px: u32) -> Result<RgbImage, BookError> {
    let (width, height) = fitted(picture.width(), picture.height(), max_px.max(1));
    if (width, height) == picture.dimensions() {
        return Ok(picture.clone());
    }
    let defect = |detail: String| BookError::Defect { detail };
    let source = fast_image_resize::images::ImageRef::new(
        picture.width(),
        picture.height(),
        picture.as_raw(),
        PixelType::U8x3,
    )
    .map_err(|cause| defect(cause.to_string()))?;
    let mut scaled = Plane::new(width, height, PixelType::U8x3);
    Resizer::new()
        .resize(&source, &mut scaled, None)
        .map_err(|cause| defect(cause.to_string()))?;
    RgbImage::from_raw(width, height, scaled.into_vec())
        .ok_or_else(|| defect("a scaled picture of the wrong size".to_owned()))
}

/// The picture as a JPEG of `quality` 1 to 100, with no record of place or time in it.
pub(super) fn encode_jpeg(picture: &RgbImage, quality: u8) -> Result<Vec<u8>, BookError> {
    let mut out = Vec::with_capacity(picture.as_raw().len() / 8 + 1024);
    JpegEncoder::new_with_quality(&mut out, quality)
        .encode_image(picture)
        .map_err(|cause| BookError::Defect {
            detail: cause.to_string(),
        })?;
    Ok(out)
}

/// A picture full of fine detail, for tests.
#[cfg(test)]
pub(super) fn speckled(width: u32, height: u32) -> RgbImage {
    RgbImage::from_fn(width, height, |x, y| {
        let spot = (x.wrapping_mul(97) ^ y.wrapping_mul(57)) % 251;
        image::Rgb([spot as u8, (x % 256) as u8, (y % 256) as u8])
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn odd_sizes_keep_their_shape() {
        assert_eq!(fitted(3999, 2997, 2048), (2048, 1535));
        assert_eq!(fitted(1, 1, 320), (1, 1));
        assert_eq!(fitted(20_000, 1, 320), (320, 1));
        assert_eq!(fitted(320, 200, 320), (320, 200));
        let scaled = fit(&speckled(1999, 1497), 320).unwrap();
        assert_eq!(scaled.dimensions(), (320, 240));
    }

    #[test]
    fn scaling_keeps_the_mean_brightness() {
        let picture = speckled(801, 601);
        let mean = |p: &RgbImage| {
            p.as_raw().iter().map(|&b| f64::from(b)).sum::<f64>() / p.as_raw().len() as f64
        };
        let scaled = fit(&picture, 320).unwrap();
        assert!((mean(&picture) - mean(&scaled)).abs() < 1.0);
    }
}
