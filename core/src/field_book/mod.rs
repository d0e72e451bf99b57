//! The one exported object: opens a field book, shows pages, takes commands, does long work.
//!
//! | file | what it does |
//! | --- | --- |
//! | `object` | [`FieldBook`], what crosses the border |
//! | `inner` | what it guards: store, clock, settings, tokens |
//! | `phone` | the exported object's settings, shell words and damaged files |
//! | `clock`, `settings`, `settings_file` | the one clock; this phone's settings, in a file of their own |
//! | `entries`, `fill`, `records` | entries → values → records |
//! | `act` | which command does what |
//! | one file a noun | `site`, `tree`, … the typed commands |
//! | `undo`, `last_edit` | takes edits back, and says what that is |
//! | `judged`, `refreshed`, `standing` | the judgement after each edit, and its cache |
//! | `show`, `show_book`, `notices` | which address shows which page; what is told first |
//! | `words_of` | words while no book is open |
//! | `long_work`, `papers`, `bring_in`, `pack` | long work |
//! | `measuring` | heights, leans, girths from what was aimed at |
//! | `rehearse`, `suggest`, `position` | what would be recorded; searches, choices that follow from others; fixes averaged |
//! | `on_plan` | a finger on the plan, and what is laid over it |
//! | `long_work`, `papers`, `bring_in` | long work |

mod act;
mod aloft;
mod anchor;
mod at_tree;
mod bring_in;
mod clock;
mod codebook;
mod crew;
mod earlier;
mod entries;
mod fill;
mod finding;
mod gear;
mod ground;
mod inner;
mod inspection;
mod judged;
mod last_edit;
mod long_work;
mod measuring;
mod notices;
mod object;
mod on_plan;
pub mod pack;
mod papers;
mod permission;
mod phone;
mod photo;
mod position;
mod records;
mod refreshed;
mod rehearse;
mod rules;
mod section;
mod settings;
mod settings_file;
mod show;
mod show_book;
mod sign;
mod site;
mod standing;
mod suggest;
mod target;
mod tree;
mod undo;
mod visit;
mod words_of;

pub use bring_in::sites_held;
pub use clock::FixedClock;
pub use inner::Done;
pub use long_work::HowFarItIs;
pub use object::FieldBook;
pub use pack::{PackTaken, PackWritten};
pub use papers::MapFileKind;
pub use position::AveragedFix;
pub use rehearse::{OpenInput, Rehearsal};
pub use settings::Settings;
pub use words_of::{words_of_error, words_of_shell};

#[cfg(test)]
mod tests;
