//! Tests of this folder, a module a file.

mod arrows;
