//! Which address shows which page.

use std::cell::Cell;

use super::fill::defect;
use super::inner::Inner;
use crate::error::BookError;
use crate::judge::codebook::{Codebook, starter_codes};
use crate::pages::{BookFacts, Page, PageAddress, PageDesk, book_page};
use crate::record::DefectCode;

/// The codes in use, in the order of their tiles.
fn codes_in_order(own: &[DefectCode]) -> Vec<DefectCode> {
    let codebook = Codebook::with(own);
    let ids = starter_codes().iter().chain(own).map(|code| &code.id);
    let mut codes: Vec<DefectCode> = Vec::new();
    for id in ids {
        if let Some(code) = codebook.code(id)
            && !codes.iter().any(|known| known.id == *id)
        {
            codes.push(code.clone());
        }
    }
    codes.sort_by_key(|code| code.order.unwrap_or(u32::MAX));
    codes
}

impl Inner {
    /// The page at an address.
    pub(super) fn page(&mut self, address: &PageAddress) -> Result<Page, BookError> {
        match address {
            PageAddress::Book => self.book_page(),
        }
    }

    fn book_page(&mut self) -> Result<Page, BookError> {
        let token = self.new_token();
        let book = self.store.read().load_book()?;
        let desk = PageDesk {
            words: self.settings.words(),
            token,
            offered: Cell::new(0),
            crew: &book.crew,
            codes: codes_in_order(&book.codebook),
            site: None,
            inspection: None,
        };
        let facts = BookFacts {
            sites: book
                .sites
                .into_iter()
                .map(|line| (line.id, line.name, line.client, line.trees))
                .collect(),
            settings: serde_json::to_value(&self.settings).map_err(defect)?,
            today: self.clock.today(),
            notices: Vec::new(),
        };
        Ok(Page::Book(book_page(&desk, facts)))
    }
}
