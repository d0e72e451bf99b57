//! What a screen shows and offers, as plain data: worded, in the reader's units.
//!
//! | file | what it does |
//! | --- | --- |
//! | `page` | the pages and their addresses |
//! | `command_kind`, `ask`, `forms` | the commands, and what each asks |
//! | `entry` | what was typed, chosen or sensed |
//! | `offer`, `desk` | offers with the rules of their inputs, in the reader's units |
//! | `line` | one line of a page: what is there, what is missing, why it matters |
//! | one file a page | `book`, `site`, … |
//!
//! Pure: no clock, no disk, no store. `field_book` hands in what is kept and judged.

mod ask;
mod book;
mod command_kind;
mod desk;
mod entry;
mod forms;
mod line;
mod offer;
mod page;

pub use ask::{Ask, AskKind, Listed};
pub use book::{BookFacts, BookPage, SiteOfBook, book_page};
pub use command_kind::CommandKind;
pub use desk::{PageDesk, at_field, choice_ids};
pub use entry::{Entry, EntryValue};
pub use forms::asks_of;
pub use line::{LineState, PageLine};
pub use offer::{InputKind, Offer, OfferedChoice, OfferedInput};
pub use page::{Page, PageAddress};
