//! Tests of this folder, a module a file.

mod arrows;
mod judge_laws;
mod judge_method;
mod judge_trees;
mod packs;
