//! The pages and their addresses.

use super::book::BookPage;

/// Where a page is: what it shows, by id.
#[derive(Debug, Clone, PartialEq, Eq, uniffi::Enum)]
pub enum PageAddress {
    /// The field book: its sites, people and gear.
    Book,
}

/// A page: what is there, what is missing, and what can be done.
#[derive(Debug, Clone, PartialEq, uniffi::Enum)]
pub enum Page {
    /// The field book.
    Book(BookPage),
}
