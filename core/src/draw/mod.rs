//! Plans, stem sections and tree profiles as plain marks in metres.
//!
//! The room knows neither language nor colour: words come in already worded, colours are chosen by
//! the paper or the screen from the [`StyleRole`] of each mark. Everything is laid out for a frame
//! in points and a scale, and rounded to a tenth of a millimetre, so that the same input gives the
//! same drawing to the last byte.

mod drawing;
mod symbol;

pub use drawing::{
    Drawing, DrawnExtent, DrawnMark, DrawnText, LegendLine, PointSymbol, Spot, StyleRole,
    SymbolShape, TextHold,
};
pub use symbol::{shape_of, shapes_used};
