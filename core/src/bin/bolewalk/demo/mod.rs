//! The demo property.

pub mod pictures;
