//! The nouns of the field book: plain records, their ranges and their units.

mod fault;

pub use fault::Fault;
