//! Tests of this folder, a module a file.

mod intake;
mod packs;
mod packs_forged;
mod store;
mod store_full_or_closed;
mod store_killed;
mod store_large;
