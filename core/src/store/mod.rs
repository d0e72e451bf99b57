//! The only place that opens the field book's database: an append-only log and its projection.
