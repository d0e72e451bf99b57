//! Photo files in and out: pixels, hash names, position, time and direction.
//!
//! | file | what it does |
//! | --- | --- |
//! | `import`, `report`, `file` | the only ones that touch the disk |
//! | `container` | is it a whole JPEG or PNG; its pieces |
//! | `decode`, `pixels`, `blur` | decode, turn upright, scale, encode; pure |
//! | `facts`, `gps`, `taken`, `tags` | what a photo's own record says, and what it fails to say; pure |
//! | `exif_write`, `dms` | a JPEG with a complete record; pure |
//!
//! A photo is never turned away because its own record is wrong: what cannot be believed is a
//! [`PhotoGap`].

mod blur;
mod container;
mod decode;
mod dms;
mod exif_write;
mod facts;
mod file;
mod gps;
mod import;
mod imported;
mod pixels;
mod report;
mod tags;
mod taken;
#[cfg(test)]
mod testing;

pub use blur::{BLUR_DOUBTFUL_BELOW, sharpness};
pub use decode::{MAX_EDGE_PX, Turn};
pub use dms::{DmsReading, encode_dms};
pub use exif_write::{ExifEntry, write_exif_jpeg};
pub use facts::{PhotoFacts, PhotoGap, PhotoGapKind, read_facts};
pub use gps::{CameraDirection, North};
pub use import::{MAX_FILE_BYTES, import_photo};
pub use imported::{ImportedPhoto, PhotoFiles, photo_files};
pub use pixels::{SMALL_EDGE_PX, VIEW_EDGE_PX};
pub use report::{ReportPicture, report_copy, report_picture};
