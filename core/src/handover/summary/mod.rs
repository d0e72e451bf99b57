//! The chapters of the site summary.

pub(super) mod close;
pub(super) mod cover;
pub(super) mod findings;
pub(super) mod inside;
pub(super) mod looked;
pub(super) mod plan;
pub(super) mod record;
pub(super) mod schedule;
pub(super) mod tree_words;
