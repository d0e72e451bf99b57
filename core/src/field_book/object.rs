//! The exported object.

use std::path::Path;
use std::sync::Arc;

use parking_lot::Mutex;

use super::bring_in::read_with_photos;
use super::clock::{BookClock, FixedClock};
use super::inner::{Done, Inner};
use super::long_work::{HowFarItIs, LongWork, Running};
use super::pack::{PackAtHand, PackTaken, PackWritten};
use super::papers::{MapFileKind, PaperState, WhichPaper};
use super::position::AveragedFix;
use super::rehearse::Rehearsal;
use crate::draw::Drawing;
use crate::error::BookError;
use crate::intake::read_ground_at;
use crate::pages::{
    CommandKind, DrawingAddress, DrawnSize, Entry, Offer, OfferedChoice, OfferedInput, Page,
    PageAddress, SensedFix,
};
use crate::record::{Fault, Id};
use crate::store::Store;

/// A field book: everything on one phone, in one folder. Calls may come from any thread; long work
/// (writing papers, bringing a site file in, a backup) holds up no page and no command.
#[derive(Debug, uniffi::Object)]
pub struct FieldBook {
    pub(super) inner: Mutex<Inner>,
    pub(super) work: LongWork,
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
        self.with(|inner| {
            let page = inner.page(&address)?;
            Ok(page.with_headings(&inner.settings.words()))
        })
    }

    /// Takes an offer: does what the command says to the record `about`. The same token a second
    /// time does nothing and says what the first time did.
    ///
    /// # Errors
    /// `Refused` with a fault for every entry that does not fit, at its input; `NotFound` for a
    /// record that is not there; `DiskFull`, `Busy`, `Damaged` as the book reports; `Defect` for an
    /// input that the command does not ask. Nothing was changed then.
    pub fn act(
        &self,
        command: CommandKind,
        about: String,
        entries: Vec<Entry>,
        offer_token: String,
    ) -> Result<Done, BookError> {
        self.with(|inner| inner.act(command, &Id(about), &entries, &offer_token))
    }

    /// What an offer would record with these entries, in words, or what is still missing; nothing is
    /// written. For screens that show a measure while it is taken.
    ///
    /// # Errors
    /// `NotFound` for a record that is not there; `Defect` for an input that the command does not
    /// ask. What does not fit is no error here: it is said at its input.
    pub fn rehearse(
        &self,
        command: CommandKind,
        about: String,
        entries: Vec<Entry>,
    ) -> Result<Rehearsal, BookError> {
        self.with(|inner| inner.rehearse(command, &Id(about), &entries))
    }

    /// The choices of a search (`InputKind::Search`) that come near what was typed, the nearest
    /// first; what was used last where nothing is typed.
    ///
    /// # Errors
    /// `Defect` for an input that is no search; `Damaged`, `Busy` as the book reports.
    pub fn suggest(&self, input: String, typed: String) -> Result<Vec<OfferedChoice>, BookError> {
        self.with(|inner| inner.suggest(&input, &typed))
    }

    /// The inputs of an offer once these entries are made: what one offers may follow from what was
    /// entered for another, as the codes from the part of the tree and the grades from the code. The
    /// offer is handed in as the page gave it.
    ///
    /// # Errors
    /// `Damaged`, `Busy` as the book reports.
    pub fn narrowed(
        &self,
        offer: Offer,
        entries: Vec<Entry>,
    ) -> Result<Vec<OfferedInput>, BookError> {
        self.with(|inner| inner.narrowed(&offer, &entries))
    }

    /// Many fixes of one place averaged, as they stand now; `about` is the site or what lies on it,
    /// empty where there is none yet, and `since_ms` when the person began (UTC milliseconds).
    ///
    /// # Errors
    /// None so far: what cannot be used is said in the answer.
    pub fn average(
        &self,
        about: String,
        fixes: Vec<SensedFix>,
        since_ms: i64,
    ) -> Result<AveragedFix, BookError> {
        self.with(|inner| Ok(inner.average(&Id(about), &fixes, since_ms)))
    }

    /// A drawing, laid out for a phone's screen. Zoom step 0 shows all of it; each step doubles its
    /// sides while letters stay, so that more words find room. `letters_pct` is the reader's text
    /// size, 100 to 200 percent.
    ///
    /// # Errors
    /// `NotFound` for a record that is not there; `Refused` where nobody took what it is drawn
    /// from, such as a position.
    #[uniffi::method(default(letters_pct = 100))]
    pub fn drawing(
        &self,
        which: DrawingAddress,
        zoom: u32,
        letters_pct: u32,
    ) -> Result<Drawing, BookError> {
        self.with(|inner| inner.drawing(&which, DrawnSize { zoom, letters_pct }))
    }

    /// Long work: writes the site summary of a site as PDF to `path`. The entries are those of its
    /// offer: the client's language and what the photos are for; without them it is in the reader's
    /// language and small enough to mail.
    ///
    /// # Errors
    /// `NotFound` for an unknown site; `Refused` for an entry that does not fit; `Busy` while other
    /// long work goes on; `Stopped`; `DiskFull`, `Unwritable` for the path. Nothing half-written
    /// stays behind.
    #[uniffi::method(default(entries = []))]
    pub fn write_summary(
        &self,
        site: String,
        path: String,
        entries: Vec<Entry>,
    ) -> Result<(), BookError> {
        let (site, path) = (Id(site), Path::new(&path));
        self.write(path, |state, running| {
            state.write(WhichPaper::Summary, &entries, &site, path, running)
        })
    }

    /// Long work: writes the climb sheets of a site as PDF to `path`, in the reader's language or in
    /// that of the entries of its offer.
    ///
    /// # Errors
    /// As [`FieldBook::write_summary`].
    #[uniffi::method(default(entries = []))]
    pub fn write_climb_sheets(
        &self,
        site: String,
        path: String,
        entries: Vec<Entry>,
    ) -> Result<(), BookError> {
        let (site, path) = (Id(site), Path::new(&path));
        self.write(path, |state, running| {
            state.write(WhichPaper::ClimbSheets, &entries, &site, path, running)
        })
    }

    /// Long work: writes the trees of a site as a table, or its map, to `path`.
    ///
    /// # Errors
    /// As [`FieldBook::write_summary`].
    pub fn write_map_file(
        &self,
        site: String,
        kind: MapFileKind,
        path: String,
    ) -> Result<(), BookError> {
        let (site, path) = (Id(site), Path::new(&path));
        self.write(path, |state, running| {
            state.write_map(kind, &site, path, running)
        })
    }

    /// Long work: brings a site file with its photos in; the same file again changes nothing.
    ///
    /// # Errors
    /// `Refused` with every fault and its place; `NotFound`, `Unreadable`, `Newer` for the file;
    /// `Busy`, `Stopped`, `DiskFull`. Nothing was brought in then.
    pub fn import_site_file(&self, path: String) -> Result<Done, BookError> {
        let path = Path::new(&path);
        let running = self.work.begin(path)?;
        let (book, photos) = self.with(|inner| {
            let book = inner.store.read().load_book()?;
            Ok((book, inner.photo_folder()?))
        })?;
        let file = read_with_photos(path, &book, &photos, &running)?;
        let done = self.with(|inner| {
            let outcome = inner.put_site_file(&file)?;
            let site = outcome.record.clone();
            Ok(Done {
                record: outcome.record,
                words: inner.settings.words().say("done.import", &[]),
                changes: outcome.changes,
                done_before: false,
                go_to: Some(PageAddress::site(&site)),
            })
        })?;
        running.finish();
        Ok(done)
    }

    /// Long work: writes a pack of a site to `path`: what another phone takes in with
    /// [`FieldBook::read_pack`].
    ///
    /// # Errors
    /// As [`FieldBook::write_summary`].
    pub fn write_pack(&self, site: String, path: String) -> Result<PackWritten, BookError> {
        let (site, path) = (Id(site), Path::new(&path));
        self.write(path, |state, running| {
            state.write_pack(&site, path, running)
        })
    }

    /// Long work: takes a pack in that another phone wrote. What both phones entered in two ways
    /// stands side by side until a person settles it; the same pack again changes nothing.
    ///
    /// # Errors
    /// `Refused` for what is no pack, was damaged on its way or altered, or does not agree with
    /// this book; `Newer` for a pack of a later version; `NotFound`, `Unreadable` for the file;
    /// `DiskFull`, `Busy`, `Stopped`. Nothing was taken in then.
    pub fn read_pack(&self, path: String) -> Result<PackTaken, BookError> {
        let path = Path::new(&path);
        let running = self.work.begin(path)?;
        let (folder, now) = self.with(|inner| {
            let folder = inner.store.folder().map(Path::to_owned);
            Ok((folder.unwrap_or_default(), inner.clock.now()))
        })?;
        let how_far = |done: u32, of: u32| running.tell(done, of);
        let pack = PackAtHand::look_over(path, &folder, now, &how_far)?;
        let taken = self.with(|inner| inner.take_pack(pack, &running))?;
        running.finish();
        Ok(taken)
    }

    /// Brings the property's edge and targets in from a GeoJSON file, as one edit: a polygon becomes
    /// the edge where the site has none or the file says so (`"use": "outline"`), all else targets.
    ///
    /// # Errors
    /// `NotFound` for the site or the file; `Refused` with every fault and its place; `Unreadable`,
    /// `DiskFull`. Nothing was brought in then.
    pub fn import_ground(&self, site: String, path: String) -> Result<Done, BookError> {
        let shapes = read_ground_at(Path::new(&path))?;
        self.with(|inner| inner.put_ground(&Id(site), shapes))
    }

    /// Long work: makes a backup beside the book, and thins older ones. Its path.
    ///
    /// # Errors
    /// `Busy`, `DiskFull`, `Unwritable`; `Damaged` if the copy fails its check.
    pub fn backup(&self) -> Result<String, BookError> {
        let (folder, now) = self.with(|inner| {
            let folder = inner.store.folder().map(Path::to_owned);
            Ok((folder.unwrap_or_default(), inner.clock.now()))
        })?;
        let running = self.work.begin(&folder)?;
        running.go_on(0, 1)?;
        let path = self.mended(Store::backup_of(&folder, now))?;
        running.finish();
        Ok(path.display().to_string())
    }

    /// How far long work is.
    ///
    /// # Errors
    /// None so far.
    pub fn how_far(&self) -> Result<HowFarItIs, BookError> {
        Ok(self.work.how_far())
    }

    /// Stops the long work going on, at its next step.
    ///
    /// # Errors
    /// None so far.
    pub fn stop_work(&self) -> Result<(), BookError> {
        self.work.stop();
        Ok(())
    }

    /// The words of an error, for the person who meets it: what happened, and what to do. Where no
    /// book could be opened, `words_of_error` has them.
    ///
    /// # Errors
    /// None so far.
    pub fn words_of(&self, error: BookError) -> Result<String, BookError> {
        Ok(self.inner.lock().settings.words().error(&error))
    }

    /// The words of one fault of a refusal, to stand at its input: what is wrong, what was found,
    /// what is allowed.
    ///
    /// # Errors
    /// None so far.
    pub fn words_of_fault(&self, fault: Fault) -> Result<String, BookError> {
        Ok(self.inner.lock().settings.words().fault(&fault))
    }

    /// Bounds the size of the book's file in pages of 4 KiB, as on a disk with less than a megabyte
    /// left: every command then meets a full disk. 0 lifts the bound. For tests and journeys.
    ///
    /// # Errors
    /// As the book reports.
    pub fn bound_pages(&self, pages: u32) -> Result<(), BookError> {
        self.with(|inner| inner.bound_pages(pages))
    }
}

impl FieldBook {
    fn on(folder: &str, device: &str, clock: BookClock) -> Result<Arc<Self>, BookError> {
        let inner = Inner::open(Path::new(folder), device, clock)?;
        Ok(Arc::new(FieldBook {
            inner: Mutex::new(inner),
            work: LongWork::default(),
        }))
    }

    /// Does something under the lock. Damage met on the way is repaired as at opening, and told.
    pub(super) fn with<T>(
        &self,
        act: impl FnOnce(&mut Inner) -> Result<T, BookError>,
    ) -> Result<T, BookError> {
        let mut inner = self.inner.lock();
        let outcome = act(&mut inner);
        match outcome {
            Err(BookError::Damaged { place, detail, .. }) => Err(inner.mend(place, detail)),
            other => other,
        }
    }

    /// The same for what was done without the lock.
    fn mended<T>(&self, outcome: Result<T, BookError>) -> Result<T, BookError> {
        match outcome {
            Err(BookError::Damaged { place, detail, .. }) => {
                Err(self.inner.lock().mend(place, detail))
            }
            other => other,
        }
    }

    /// Writes something from a snapshot of the book.
    fn write<T>(
        &self,
        path: &Path,
        write: impl FnOnce(&PaperState, &Running<'_>) -> Result<T, BookError>,
    ) -> Result<T, BookError> {
        let running = self.work.begin(path)?;
        let state = self.with(|inner| inner.paper_state())?;
        let outcome = write(&state, &running);
        if outcome.is_ok() {
            running.finish();
        }
        // The snapshot lets go of the book before anything is repaired.
        drop(state);
        self.mended(outcome)
    }
}
