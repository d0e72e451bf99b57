//! The one exported object: opens a field book, shows pages, takes commands, does long work.
//!
//! | file | what it does |
//! | --- | --- |
//! | `object` | [`FieldBook`], what crosses the border |
//! | `inner` | what it guards: store, clock, settings, tokens |
//! | `clock`, `settings` | the one clock; this phone's settings |
//! | `entries`, `fill`, `records` | entries → values → records |
//! | `act` | which command does what |
//! | one file a noun | `site`, `tree`, … the typed commands |
//! | `judged`, `standing` | the judgement after each edit, and its cache |
//! | `show`, `show_book`, `notices` | which address shows which page; what is told first |
//! | `long_work`, `papers`, `bring_in`, `pack` | long work |

mod act;
mod anchor;
mod bring_in;
mod clock;
mod codebook;
mod crew;
mod entries;
mod fill;
mod finding;
mod gear;
mod inner;
mod inspection;
mod judged;
mod long_work;
mod notices;
mod object;
pub mod pack;
mod papers;
mod permission;
mod photo;
mod records;
mod rules;
mod section;
mod settings;
mod show;
mod show_book;
mod sign;
mod site;
mod standing;
mod target;
mod tree;
mod undo;
mod visit;

pub use clock::FixedClock;
pub use inner::Done;
pub use long_work::HowFarItIs;
pub use object::FieldBook;
pub use pack::{PackTaken, PackWritten};
pub use papers::MapFileKind;
pub use settings::Settings;

#[cfg(test)]
mod tests;
