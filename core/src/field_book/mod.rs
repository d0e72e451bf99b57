//! The one exported object: opens a field book, shows pages, takes commands, does long work.
//!
//! | file | what it does |
//! | --- | --- |
//! | `object` | [`FieldBook`], what crosses the border |
//! | `inner` | what it guards: store, clock, settings, tokens |
//! | `clock` | the one clock |
//! | `entries`, `fill` | entries → values → records |
//! | `act` | which command does what |
//! | one file a noun | `site`, `tree`, … the typed commands |

mod act;
mod clock;
mod entries;
mod fill;
mod inner;
mod object;
mod settings;
mod show;
mod site;
mod tree;

pub use clock::FixedClock;
pub use inner::Done;
pub use object::FieldBook;
pub use settings::Settings;
