//! How sharp a picture is: a hint to look again, never a reason to refuse it.

use image::RgbImage;

/// Below this [`sharpness`] a picture is perhaps blurred: a house value from our own pictures.
/// Depends on the subject: fog, sky and smooth bark lie low without any blur.
pub const BLUR_DOUBTFUL_BELOW: f64 = 40.0;

/// Variance of the Laplacian of the brightness, in grey levels squared
/// (Pech-Pacheco et al. 2000); 0 for pictures thinner than 3 pixels. Compare only pictures of one
/// size: the photo room takes it at a longest edge of 1024 px.
pub fn sharpness(picture: &RgbImage) -> f64 {
    let width = picture.width() as usize;
    if width < 3 || picture.height() < 3 {
        return 0.0;
    }
    let grey: Vec<i32> = picture.pixels().map(|pixel| brightness(pixel.0)).collect();
    let rows: Vec<&[i32]> = grey.chunks_exact(width).collect();
    let (mut sum, mut squares, mut count) = (0_i64, 0_i64, 0_i64);
    for three in rows.windows(3) {
        let [above, row, below] = three else { continue };
        for ((up, at), down) in above.windows(3).zip(row.windows(3)).zip(below.windows(3)) {
            let ([_, up, _], [left, centre, right], [_, down, _]) = (up, at, down) else {
                continue;
            };
            let laplacian = i64::from(up + down + left + right - 4 * centre);
            sum += laplacian;
            squares += laplacian * laplacian;
            count += 1;
        }
    }
    let mean = sum as f64 / count as f64;
    squares as f64 / count as f64 - mean * mean
}

/// Brightness 0 to 255 with the weights of ITU-R BT.601.
fn brightness([red, green, blue]: [u8; 3]) -> i32 {
    (299 * i32::from(red) + 587 * i32::from(green) + 114 * i32::from(blue) + 500) / 1000
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::Rgb;

    #[test]
    fn a_plain_wall_and_an_even_slope_have_no_detail() {
        let wall = RgbImage::from_pixel(40, 30, Rgb([90, 120, 60]));
        assert_eq!(sharpness(&wall), 0.0);
        let slope = RgbImage::from_fn(40, 30, |x, _| Rgb([(x * 4) as u8; 3]));
        assert_eq!(sharpness(&slope), 0.0);
        assert_eq!(sharpness(&RgbImage::new(2, 9)), 0.0);
    }

    #[test]
    fn a_checkerboard_has_the_variance_of_its_formula() {
        // Neighbours differ by 10 everywhere: the Laplacian is ±40, its variance 1600.
        let board = RgbImage::from_fn(42, 32, |x, y| Rgb([100 + 10 * ((x + y) % 2) as u8; 3]));
        assert!((sharpness(&board) - 1600.0).abs() < 1e-9);
    }

    #[test]
    fn blurring_lowers_it() {
        let sharp = crate::photo::pixels::speckled(200, 150);
        let soft = image::imageops::blur(&sharp, 2.0);
        assert!(sharpness(&soft) < sharpness(&sharp) / 20.0);
    }
}
