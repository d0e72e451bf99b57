//! Tests of this folder, a module a file.

mod exif;
mod papers;
mod peers;
mod verapdf;
