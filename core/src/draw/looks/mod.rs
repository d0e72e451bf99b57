//! Drawings looked at: examples of every kind, and what must hold of each.
//!
//! With `BOLEWALK_DRAWINGS` naming a folder, each example is also written there as SVG.

mod examples;
mod held;
pub(super) mod svg;
