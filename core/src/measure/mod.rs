//! Raw readings become a value with a standard error and a method.

pub mod shell;
