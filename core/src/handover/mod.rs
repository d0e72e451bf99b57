//! What leaves the field book: site summary, climb sheets, map files, tables.

pub mod paper;
