//! Tests of this folder, a module a file.

mod exif;
mod maps;
mod papers;
mod peers;
mod verapdf;
