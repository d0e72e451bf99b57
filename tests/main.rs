//! Every Rust test that stands outside the rooms, in one binary.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

mod border;
mod damage;
mod desk;
mod journeys;
mod laws;
mod outside;
mod pages_golden;
mod published;
