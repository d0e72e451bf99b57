//! Raw readings become a value with a standard error and a method.

mod accuracy;
pub mod girth;
pub mod height;
pub mod lean;
mod measured;
pub mod place;
pub mod position;
pub mod shell;

pub use measured::Measured;
