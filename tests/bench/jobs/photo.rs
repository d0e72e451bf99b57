//! A photo of 12 megapixels into the photo folder: the upright copy of 2,048 px and the thumbnail.

use std::path::Path;

use bolewalk_core::photo::{ExifEntry, SMALL_EDGE_PX, VIEW_EDGE_PX, import_photo, photo_files};
use bolewalk_core::photo::{PhotoFiles, write_exif_jpeg};
use bolewalk_core::record::{Moment, Position};
use image::{Rgb, RgbImage};
use serde_json::json;

use crate::bench::{Bench, Outcome};
use crate::peer::library;
use crate::row::Row;
use crate::times::timed;

const WIDTH_PX: u32 = 4000;
const HEIGHT_PX: u32 = 3000;

pub fn rows(bench: &Bench) -> Outcome<Vec<Row>> {
    let source = bench.path("photo.jpg");
    std::fs::write(&source, photo()?)?;
    let folder = bench.path("photos");
    let ours = || {
        let (seconds, photo) = timed(|| Ok(import_photo(&source, &folder)?))?;
        are_upright(&photo_files(&folder, &photo.file))?;
        // A photo that is there already would not be written again.
        std::fs::remove_dir_all(&folder)?;
        Ok(seconds)
    };
    let theirs = bench.path("photos-of-the-peer");
    std::fs::create_dir_all(&theirs)?;
    let peer = library("photo.py", &[source.as_os_str(), theirs.as_os_str()])?;
    let wanted = json!([[1536, VIEW_EDGE_PX], [240, SMALL_EDGE_PX]]);
    let row = Row::beside(
        "photo: 12 megapixels to 2,048 px and 320 px",
        ours,
        peer,
        |made| {
            (*made == wanted)
                .then_some(())
                .ok_or_else(|| format!("the peer's copies are {made}").into())
        },
    )?;
    let note = "both decode, turn upright, scale by Lanczos and write two JPEGs; ours also keeps the \
                original, reads position and time, judges blur, hashes, and has the disk confirm.";
    Ok(vec![row.noted(note)])
}

fn are_upright(files: &PhotoFiles) -> Outcome<()> {
    for (copy, wanted) in [
        (&files.view, (1536, VIEW_EDGE_PX)),
        (&files.small, (240, SMALL_EDGE_PX)),
    ] {
        let size = image::image_dimensions(Path::new(copy))?;
        if size != wanted {
            return Err(format!("our copy is {size:?}").into());
        }
    }
    Ok(())
}

/// Foliage against a sky, taken with the phone held upright: the sensor lies on its side.
fn photo() -> Outcome<Vec<u8>> {
    let picture = RgbImage::from_fn(WIDTH_PX, HEIGHT_PX, |x, y| {
        let leaf = scatter(x / 24, y / 24) / 3;
        let grain = scatter(x, y) / 24;
        let sky = (x * 90 / WIDTH_PX) as u8;
        Rgb([50 + leaf / 2 + grain, 70 + leaf + grain, 20 + sky + grain])
    });
    let entry = ExifEntry {
        taken: Moment {
            utc_ms: 1_778_763_600_000,
            offset_min: -240,
        },
        position: Some(Position {
            lat_deg: 42.5,
            lon_deg: -72.8,
            accuracy_m: Some(4.0),
            method: None,
        }),
        altitude_m: Some(210.0),
        direction: None,
        model: "Bench".into(),
        description: "Foliage".into(),
    };
    let mut jpeg = write_exif_jpeg(&picture, 88, &entry)?;
    // Exif 2.32, tag 0x0112 (orientation), one short: 1 is upright, 6 is turned clockwise to be so.
    let upright = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 1];
    let at = jpeg
        .windows(upright.len())
        .position(|window| window == upright)
        .ok_or("a photo without orientation")?;
    jpeg[at + upright.len() - 1] = 6;
    Ok(jpeg)
}

/// An even scatter of values that looks random and is the same on every machine.
fn scatter(x: u32, y: u32) -> u8 {
    let mixed =
        (x.wrapping_mul(0x9E37_79B1) ^ y.wrapping_mul(0x85EB_CA77)).wrapping_mul(0xC2B2_AE3D);
    ((mixed ^ (mixed >> 15)).wrapping_mul(0x27D4_EB2F) >> 24) as u8
}
