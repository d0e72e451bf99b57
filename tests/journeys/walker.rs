//! Walks a journey through the exported object, as a shell would.

use std::path::PathBuf;
use std::sync::Arc;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::{FieldBook, FixedClock, MapFileKind, PackTaken};
use bolewalk_core::pages::{CommandKind, Entry, EntryValue, Page, PageAddress};
use bolewalk_core::record::Moment;
use serde_json::Value;

use super::entered::{entered_value, sensed_value};
use super::screen::{Screen, Shown};
use super::steps::{Fault, Journey, Step, Units};

/// Whoever walks a journey: the open book and the page in front.
pub struct Walker {
    folder: tempfile::TempDir,
    clock: Arc<FixedClock>,
    book: Option<Arc<FieldBook>>,
    address: PageAddress,
    screen: Screen,
    said: String,
    units: Units,
    phone: String,
    files: u32,
    /// The pack that was written last, on whichever phone.
    pack: PathBuf,
}

type Walked = Result<(), String>;

impl Walker {
    pub fn begin(journey: &Journey) -> Walker {
        let clock = FixedClock::at(moment(&journey.clock)).unwrap();
        let mut walker = Walker {
            folder: tempfile::tempdir().unwrap(),
            clock,
            book: None,
            address: PageAddress::book(),
            screen: Screen::default(),
            said: String::new(),
            units: journey.units,
            phone: String::from("phone-1"),
            files: 0,
            pack: PathBuf::new(),
        };
        walker.take_up("phone-1");
        walker.look().unwrap();
        walker
    }

    /// Takes a phone up: the one of this name, new the first time.
    fn take_up(&mut self, phone: &str) {
        self.book = None;
        self.said.clear();
        self.address = PageAddress::book();
        self.phone = phone.to_owned();
        let is_new = !self.folder.path().join(phone).exists();
        self.open_book();
        if is_new {
            self.choose_units();
        }
    }

    fn choose_units(&self) {
        let units = match self.units {
            Units::Metric => "metric",
            Units::Imperial => "imperial",
        };
        let entry = Entry {
            input: "settings.units".into(),
            value: EntryValue::Choice { id: units.into() },
        };
        let token = String::from("units of the journey");
        let settings = CommandKind::ChangeSettings;
        let done = self.book().act(settings, String::new(), vec![entry], token);
        done.unwrap();
    }

    fn open_book(&mut self) {
        let folder = self.folder.path().join(&self.phone).display().to_string();
        let opened = FieldBook::open_with_clock(folder, self.phone.clone(), self.clock.clone());
        self.book = Some(opened.unwrap());
    }

    fn book(&self) -> &FieldBook {
        self.book.as_ref().unwrap()
    }

    /// Everything on the page, for a person whose journey failed.
    pub fn shown(&self) -> String {
        format!("{}\n[{}]", self.screen.words.join("\n"), self.said)
    }

    pub fn step(&mut self, step: &Step) -> Walked {
        if let Some(phone) = &step.phone {
            self.take_up(phone);
            self.look()?;
        }
        if let Some(at) = &step.clock {
            self.clock.set_to(moment(at)).unwrap();
            self.look()?;
        }
        if let Some(fault) = step.fault {
            self.fault(fault)?;
        }
        if let Some(page) = &step.open {
            self.open(page, step.of.as_deref())?;
        }
        if let Some(offer) = &step.tap {
            self.tap(offer, step)?;
        }
        let seen = |text: &str| {
            let on_page = self.screen.words.iter().any(|words| words.contains(text));
            on_page || self.said.contains(text)
        };
        for text in step.see.all() {
            if !seen(text) {
                return Err(format!("“{text}” is not to be seen"));
            }
        }
        for text in step.not_see.all() {
            if seen(text) {
                return Err(format!("“{text}” is to be seen"));
            }
        }
        Ok(())
    }

    /// Shows the page anew.
    fn look(&mut self) -> Walked {
        let page: Page = self
            .book()
            .page(self.address.clone())
            .map_err(|error| self.words_of(error))?;
        self.screen = Screen::of(&page);
        Ok(())
    }

    fn words_of(&self, error: BookError) -> String {
        self.book().words_of(error).unwrap()
    }

    fn open(&mut self, page: &str, of: Option<&str>) -> Walked {
        self.said.clear();
        if page == "book" {
            self.address = PageAddress::book();
            return self.look();
        }
        let is_meant = |address: &PageAddress, words: &str| {
            let kind = serde_json::to_value(address).unwrap()["page"].clone();
            kind == page && of.is_none_or(|of| words.contains(of))
        };
        let ways = self.screen.ways.iter();
        let mut meant: Vec<PageAddress> = ways
            .filter(|(address, words)| is_meant(address, words))
            .map(|(address, _)| address.clone())
            .collect();
        meant.dedup();
        match meant.as_slice() {
            [one] => self.address = one.clone(),
            [] => return Err(format!("nothing leads to {page} {of:?}")),
            several => return Err(format!("{} ways lead to {page} {of:?}", several.len())),
        }
        self.look()
    }

    fn fault(&mut self, fault: Fault) -> Walked {
        self.said.clear();
        match fault {
            Fault::DiskFull => self.book().bound_pages(1).map_err(|e| self.words_of(e))?,
            Fault::DiskFree => self.book().bound_pages(0).map_err(|e| self.words_of(e))?,
            Fault::Restart => {
                self.book = None;
                self.open_book();
            }
            Fault::Kill => {
                // Nothing of it is closed or put in order.
                std::mem::forget(self.book.take());
                self.open_book();
            }
        }
        self.look()
    }

    fn tap(&mut self, id: &str, step: &Step) -> Walked {
        self.said.clear();
        let offer = self.offer(id, step.about.as_deref())?;
        let text = |name: &str| offer[name].as_str().unwrap().to_owned();
        if offer["enabled"] != true {
            return Err(format!("{id} cannot be tapped: {}", text("why_not")));
        }
        let named = |kind: &&CommandKind| serde_json::to_value(kind).unwrap() == offer["command"];
        let command = CommandKind::ALL.iter().copied().find(|kind| named(&kind));
        let command = command.ok_or(format!("no command {}", offer["command"]))?;
        let entries = entries(&offer, step)?;
        if let Some(outcome) = self.long_work(command, &text("about"), &entries, step) {
            self.said = match outcome {
                Ok(words) => words,
                Err(error) => self.words_of(error),
            };
            return self.look();
        }
        let presses = if step.twice { 2 } else { 1 };
        for _ in 0..presses {
            let outcome = self
                .book()
                .act(command, text("about"), entries.clone(), text("token"));
            self.said = match outcome {
                Ok(done) => {
                    self.address = done.go_to.unwrap_or(self.address.clone());
                    done.words
                }
                Err(error) => self.words_of(error),
            };
        }
        self.look().or_else(|_| {
            // What the page was about is gone: the shell goes back to the book.
            self.address = PageAddress::book();
            self.look()
        })
    }

    /// Does long work, if the command is any, and looks at the file that it wrote; what the app
    /// says of it.
    fn long_work(
        &mut self,
        command: CommandKind,
        about: &str,
        entries: &[Entry],
        step: &Step,
    ) -> Option<Result<String, BookError>> {
        let about = about.to_owned();
        let entries = entries.to_vec();
        self.files += 1;
        let path = self.folder.path().join(format!("file-{}", self.files));
        let to = path.display().to_string();
        let given = step.file.as_ref().map(|file| super::root().join(file));
        let from = given.unwrap_or_else(|| self.pack.clone());
        let from = from.display().to_string();
        let book = self.book();
        let map = |kind| book.write_map_file(about.clone(), kind, to.clone());
        let written = |()| String::from("Written.");
        let (outcome, begins) = match command {
            CommandKind::WriteSummary => {
                (book.write_summary(about, to, entries).map(written), "%PDF-")
            }
            CommandKind::WriteClimbSheets => (
                book.write_climb_sheets(about, to, entries).map(written),
                "%PDF-",
            ),
            CommandKind::WriteTable => (map(MapFileKind::Csv).map(written), "tag,"),
            CommandKind::WriteGeoJson => (map(MapFileKind::GeoJson).map(written), "{"),
            CommandKind::WriteGeoPackage => {
                (map(MapFileKind::GeoPackage).map(written), "SQLite format 3")
            }
            CommandKind::WritePack => (book.write_pack(about, to).map(|pack| pack.words), "PK"),
            CommandKind::ReadPack => {
                let told = |pack: PackTaken| [vec![pack.words], pack.notices].concat().join("\n");
                return Some(book.read_pack(from).map(told));
            }
            CommandKind::ImportSiteFile => {
                return Some(book.import_site_file(from).map(|done| done.words));
            }
            CommandKind::MakeBackup => return Some(book.backup().map(|_| written(()))),
            _ => return None,
        };
        if outcome.is_ok() {
            let bytes = std::fs::read(&path).unwrap();
            assert!(bytes.starts_with(begins.as_bytes()), "no file was written");
            if command == CommandKind::WritePack {
                self.pack = path;
            }
        }
        Some(outcome)
    }

    fn offer(&self, id: &str, about: Option<&str>) -> Result<Value, String> {
        let offers = self.screen.offers.iter();
        let meant: Vec<&Shown> = offers
            .filter(|shown| shown.offer["id"] == id)
            .filter(|shown| about.is_none_or(|about| shown.at.contains(about)))
            .collect();
        match meant.as_slice() {
            [one] => Ok(one.offer.clone()),
            [] => Err(format!("{id} is not offered here")),
            several => Err(format!("{id} is offered {} times here", several.len())),
        }
    }
}

/// What is entered and sensed, by the kinds of the offer's inputs.
fn entries(offer: &Value, step: &Step) -> Result<Vec<Entry>, String> {
    let mut entries: Vec<Entry> = serde_json::from_value(offer["fixed"].clone()).unwrap();
    let input = |id: &str| {
        let inputs = offer["inputs"].as_array().unwrap();
        let found = inputs.iter().find(|input| input["id"] == id);
        found.ok_or(format!("{} asks for no {id}", offer["id"]))
    };
    for (id, entered) in &step.enter {
        let value = entered_value(&input(id)?["kind"], entered)?;
        entries.push(Entry {
            input: id.clone(),
            value,
        });
    }
    for sensed in &step.sense {
        input(&sensed.into)?;
        entries.push(Entry {
            input: sensed.into.clone(),
            value: sensed_value(sensed)?,
        });
    }
    Ok(entries)
}

/// A moment as RFC 3339 writes it.
fn moment(text: &str) -> Moment {
    let at = chrono::DateTime::parse_from_rfc3339(text).unwrap();
    Moment {
        utc_ms: at.timestamp_millis(),
        offset_min: at.offset().local_minus_utc() / 60,
    }
}
