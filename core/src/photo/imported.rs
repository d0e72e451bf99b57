//! A photo that was taken in, and where its files lie.

use std::path::{Path, PathBuf};

use super::facts::PhotoFacts;
use crate::record::{Id, Photo};

/// A photo that lies in the photo folder.
#[derive(Debug, Clone, PartialEq)]
pub struct ImportedPhoto {
    /// Name of the untouched original in the photo folder: its hash, ending in `.jpg` or `.png`.
    pub file: String,
    /// Width in pixels, upright.
    pub width_px: u32,
    /// Height in pixels, upright.
    pub height_px: u32,
    /// What the photo says of itself, and its gaps.
    pub facts: PhotoFacts,
    /// Variance of the Laplacian at a longest edge of 1024 px.
    pub sharpness: f64,
    /// Perhaps blurred: a hint to look at it again.
    pub perhaps_blurred: bool,
}

impl ImportedPhoto {
    /// The record of this photo, still without id, caption and finding. The direction is taken
    /// over only when true, or corrected by `declination_deg` (east positive).
    pub fn record(&self, declination_deg: Option<f64>) -> Photo {
        Photo {
            id: Id::default(),
            file: self.file.clone(),
            caption: None,
            finding: Id::default(),
            taken: self.facts.taken,
            position: self.facts.position,
            direction_deg: self
                .facts
                .direction
                .and_then(|d| d.true_bearing_deg(declination_deg)),
        }
    }
}

/// The three files of one photo in `photo_dir`, by the name of the original.
pub fn photo_files(photo_dir: &Path, file: &str) -> PhotoFiles {
    let stem = file.rsplit_once('.').map_or(file, |(stem, _)| stem);
    PhotoFiles {
        original: photo_dir.join(file),
        view: photo_dir.join(format!("{stem}-view.jpg")),
        small: photo_dir.join(format!("{stem}-small.jpg")),
    }
}

/// Paths of one photo's files.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoFiles {
    /// As it came, with everything in it.
    pub original: PathBuf,
    /// Upright, at most 2048 px, without place or time in it.
    pub view: PathBuf,
    /// Upright, at most 320 px, without place or time in it.
    pub small: PathBuf,
}
