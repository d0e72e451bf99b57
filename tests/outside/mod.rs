//! Tests of this folder, a module a file.

mod exif;
mod inventories;
mod maps;
mod papers;
mod peers;
pub(crate) mod verapdf;
