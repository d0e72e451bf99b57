//! The exported object.

use std::path::Path;
use std::sync::Arc;

use parking_lot::Mutex;

use super::clock::{BookClock, FixedClock};
use super::inner::{Done, Inner};
use crate::error::BookError;
use crate::pages::{CommandKind, Entry, Page, PageAddress};
use crate::record::Id;

/// A field book: everything on one phone, in one folder. Calls may come from any thread.
#[derive(Debug, uniffi::Object)]
pub struct FieldBook {
    inner: Mutex<Inner>,
}

#[uniffi::export]
impl FieldBook {
    /// Opens the field book in a folder, making it if there is none. `device` is this phone's
    /// lasting name. A damaged book is repaired; its page says so.
    ///
    /// # Errors
    /// `Newer`, `Unreadable`, `Unwritable`, `DiskFull`, `Busy`; the book is left as it was.
    #[uniffi::constructor]
    pub fn open(folder: String, device: String) -> Result<Arc<Self>, BookError> {
        FieldBook::on(&folder, &device, BookClock::System)
    }

    /// The same with a clock that stands still until it is set.
    ///
    /// # Errors
    /// As [`FieldBook::open`].
    #[uniffi::constructor]
    pub fn open_with_clock(
        folder: String,
        device: String,
        clock: Arc<FixedClock>,
    ) -> Result<Arc<Self>, BookError> {
        FieldBook::on(&folder, &device, BookClock::Fixed(clock))
    }

    /// The page at an address, in the reader's words and units.
    ///
    /// # Errors
    /// `NotFound` for a record that is not there; `Damaged`, `Busy` as the book reports.
    pub fn page(&self, address: PageAddress) -> Result<Page, BookError> {
        self.inner.lock().page(&address)
    }

    /// Takes an offer: does what the command says to the record `about`. The same token a second
    /// time does nothing and says what the first time did.
    ///
    /// # Errors
    /// `Refused` with a fault for every entry that does not fit, at its input; `NotFound` for a
    /// record that is not there; `DiskFull`, `Busy`, `Damaged` as the book reports. Nothing was
    /// changed then.
    pub fn act(
        &self,
        command: CommandKind,
        about: String,
        entries: Vec<Entry>,
        offer_token: String,
    ) -> Result<Done, BookError> {
        let mut inner = self.inner.lock();
        inner.act(command, &Id(about), &entries, &offer_token)
    }

    /// The words of an error, for the person who meets it: what happened, and what to do.
    ///
    /// # Errors
    /// None; every method of the border may fail, so that a fault of the program can be told.
    pub fn words_of(&self, error: BookError) -> Result<String, BookError> {
        Ok(self.inner.lock().settings.words().error(&error))
    }
}

impl FieldBook {
    fn on(folder: &str, device: &str, clock: BookClock) -> Result<Arc<Self>, BookError> {
        let inner = Inner::open(Path::new(folder), device, clock)?;
        Ok(Arc::new(FieldBook {
            inner: Mutex::new(inner),
        }))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pages::{BookPage, EntryValue};

    fn book_at(folder: &Path) -> Arc<FieldBook> {
        FieldBook::open(folder.display().to_string(), "phone".to_owned()).unwrap()
    }

    fn words(input: &str, text: &str) -> Entry {
        Entry {
            input: input.to_owned(),
            value: EntryValue::Words {
                text: text.to_owned(),
            },
        }
    }

    fn page(book: &FieldBook) -> BookPage {
        let Page::Book(page) = book.page(PageAddress::Book).unwrap();
        page
    }

    #[test]
    fn two_quick_taps_make_one_site_and_a_restart_keeps_it() {
        let folder = tempfile::tempdir().unwrap();
        let book = book_at(folder.path());
        let offer = page(&book).offers.remove(0);
        let act = |book: &FieldBook| {
            let entries = vec![words("site.name", "Hill House")];
            book.act(offer.command, String::new(), entries, offer.token.clone())
                .unwrap()
        };
        let first = act(&book);
        let second = act(&book);
        assert!(!first.done_before && second.done_before);
        assert_eq!(first.record, second.record);
        drop(book);
        let book = book_at(folder.path());
        assert!(act(&book).done_before, "not even after a restart");
        let sites = page(&book).sites;
        assert_eq!(sites.len(), 1);
        assert_eq!(sites[0].name, "Hill House");
        assert_eq!(sites[0].words, "no trees yet");
    }

    #[test]
    fn a_tree_needs_a_tag_of_its_own() {
        let folder = tempfile::tempdir().unwrap();
        let book = book_at(folder.path());
        let add = |command, about: &str, entries, token: &str| {
            book.act(command, about.to_owned(), entries, token.to_owned())
        };
        let name = vec![words("site.name", "Hill House")];
        let site = add(CommandKind::AddSite, "", name, "1").unwrap().record.0;
        let none = add(CommandKind::AddTree, &site, Vec::new(), "2").unwrap_err();
        let said = book.words_of(none).unwrap();
        assert!(said.contains("tree.tag: This is needed."), "{said}");
        let seven = || vec![words("tree.tag", "7")];
        add(CommandKind::AddTree, &site, seven(), "3").unwrap();
        let twice = add(CommandKind::AddTree, &site, seven(), "4").unwrap_err();
        assert!(matches!(twice, BookError::Refused { .. }));
        assert_eq!(page(&book).sites[0].trees, 1);
    }
}
