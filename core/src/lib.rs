//! # Bolewalk: the core
//!
//! A working tree climber walks a property, tree by tree, and decides before anybody leaves the
//! ground: may this tree be climbed, by whom, on which rope system, tied in where, and where must
//! nobody stand. The core keeps what was seen, judges it, and words what is shown and handed over.
//!
//! Data goes one way: *seen → kept → judged → shown and handed over*.
//!
//! | room | what it does |
//! | --- | --- |
//! | [`record`] | the nouns: plain records with their ranges and units |
//! | [`measure`] | raw readings → value ± standard error |
//! | [`judge`] | the judgement: stops, gaps, caps, score, zones; pure |
//! | [`words`] | the catalogue of words, units, numbers and dates |
//! | [`draw`] | plans, sections and profiles as plain marks in metres |
//! | [`intake`] | what others wrote → records |
//! | [`photo`] | photo files in and out |
//! | [`store`] | the field book's database: the log of changes and its projection |
//! | [`pages`] | what a screen shows and offers |
//! | [`handover`] | site summary, climb sheets, map files |
//! | [`field_book`] | the one exported object |

#![forbid(unsafe_code)]
#![deny(missing_docs)]
#![deny(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing
)]

pub mod draw;
pub mod error;
pub mod field_book;
pub mod handover;
pub mod intake;
pub mod judge;
pub mod measure;
pub mod pages;
pub mod photo;
pub mod record;
pub mod store;
pub mod words;

uniffi::setup_scaffolding!();
