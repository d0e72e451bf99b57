//! The exported object as a shell meets it: errors, long work, what is kept, what is offered.

mod aloft;
mod compared;
mod crew_and_gear;
mod crowd;
mod errors;
mod finding_sites;
mod headings;
mod judged_pages;
mod kept;
mod long_work;
mod managed;
mod measuring;
mod narrowed;
mod notes;
mod offers;
mod on_plan;
mod packs;
mod same_ids;
mod site_day;
mod speed;
mod taps;
mod tree_sheet;
mod two_phones;
mod undo_named;
mod undo_of_sites;

use std::path::Path;
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::{Done, FieldBook, FixedClock};
use bolewalk_core::pages::{
    BookPage, CommandKind, Entry, EntryValue, Page, PageAddress, PeoplePage, SitePage, TreePage,
};
use bolewalk_core::record::{Id, Moment};

/// 2026-05-14, 09:10 at UTC−4.
const MORNING: Moment = Moment {
    utc_ms: 1_778_764_200_000,
    offset_min: -240,
};

/// A hand on a phone.
struct Hand {
    book: Arc<FieldBook>,
    taps: AtomicU32,
}

impl Hand {
    fn at(folder: &Path) -> Hand {
        Hand::on(folder, "phone-1").unwrap()
    }

    fn on(folder: &Path, device: &str) -> Result<Hand, BookError> {
        let clock = FixedClock::at(MORNING)?;
        let folder = folder.display().to_string();
        Ok(Hand {
            book: FieldBook::open_with_clock(folder, device.to_owned(), clock)?,
            taps: AtomicU32::new(0),
        })
    }

    fn act(
        &self,
        command: CommandKind,
        about: &Id,
        entries: &[(&str, EntryValue)],
    ) -> Result<Done, BookError> {
        let tap = self.taps.fetch_add(1, Ordering::Relaxed);
        let token = format!("{command:?} {about} {tap} {:p}", Arc::as_ptr(&self.book));
        let entries = entries
            .iter()
            .map(|(input, value)| Entry {
                input: (*input).to_owned(),
                value: value.clone(),
            })
            .collect();
        self.book.act(command, about.0.clone(), entries, token)
    }

    fn made(&self, command: CommandKind, about: &Id, entries: &[(&str, EntryValue)]) -> Id {
        self.act(command, about, entries).unwrap().record
    }

    /// A site with one tree and an inspection of it.
    fn site_with_tree(&self) -> (Id, Id, Id) {
        let none = Id::default();
        let site = self.made(CommandKind::AddSite, &none, &[("site.name", words("Hill"))]);
        let tree = self.made(CommandKind::AddTree, &site, &[("tree.tag", words("7"))]);
        let level = [("inspection.level", choice("triage"))];
        let inspection = self.made(CommandKind::StartInspection, &tree, &level);
        (site, tree, inspection)
    }

    fn add_person(&self, name: &str) -> Id {
        let person = [("person.name", words(name))];
        self.made(CommandKind::AddPerson, &Id::default(), &person)
    }

    /// A person who works with this phone from now on.
    fn signed_in(&self, name: &str) -> Id {
        let person = self.add_person(name);
        let settings = [("settings.person", choice(person.as_str()))];
        self.act(CommandKind::ChangeSettings, &Id::default(), &settings)
            .unwrap();
        person
    }

    fn undo(&self) {
        self.act(CommandKind::Undo, &Id::default(), &[]).unwrap();
    }

    fn book_page(&self) -> BookPage {
        match self.book.page(PageAddress::book()).unwrap() {
            Page::Book(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn people_page(&self) -> PeoplePage {
        match self.book.page(PageAddress::People).unwrap() {
            Page::People(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn site_page(&self, site: &Id) -> SitePage {
        let address = PageAddress::site(site);
        match self.book.page(address).unwrap() {
            Page::Site(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn search_trees(&self, site: &Id, search: &str) -> SitePage {
        let (site, search) = (site.clone(), search.to_owned());
        match self.book.page(PageAddress::Site { site, search }).unwrap() {
            Page::Site(page) => page,
            other => panic!("{other:?}"),
        }
    }

    fn tree_page(&self, tree: &Id) -> TreePage {
        let address = PageAddress::Tree { tree: tree.clone() };
        match self.book.page(address).unwrap() {
            Page::Tree(page) => page,
            other => panic!("{other:?}"),
        }
    }
}

/// A hand on a phone with a new book.
fn here() -> (tempfile::TempDir, Hand) {
    let folder = tempfile::tempdir().unwrap();
    let hand = Hand::at(&folder.path().join("book"));
    (folder, hand)
}

/// The pages that are of no site; the page of this person is among them.
fn pages_of_the_book(person: Id) -> [PageAddress; 7] {
    let rule_set = Id::from("us");
    [
        PageAddress::book(),
        PageAddress::Settings,
        PageAddress::Codebook,
        PageAddress::RuleSet { rule_set },
        PageAddress::People,
        PageAddress::Person { person },
        PageAddress::Gear,
    ]
}

/// The code of the first fault of a refusal.
fn refused(outcome: Result<Done, BookError>) -> String {
    match outcome {
        Err(BookError::Refused { faults }) => faults[0].code.clone(),
        other => panic!("{other:?}"),
    }
}

fn words(text: &str) -> EntryValue {
    EntryValue::Words {
        text: text.to_owned(),
    }
}

fn choice(id: &str) -> EntryValue {
    EntryValue::Choice { id: id.to_owned() }
}

fn number(typed: &str) -> EntryValue {
    EntryValue::Number {
        typed: typed.to_owned(),
    }
}

/// A site file of so many trees in a row, each with a finding; its path.
fn long_row(folder: &Path, trees: u32) -> String {
    let trees: Vec<String> = (1..=trees)
        .map(|tag| {
            format!(
                r#"{{"tag":"{tag}","species":"Acer rubrum","way":"prune","position":{{"lat_deg":{},
                "lon_deg":-71.12,"accuracy_m":4}},"inspections":[{{"visit":"2026-05-14",
                "level":"triage","life":"alive","crown":{{"radius_m":4}},"height":{{"height_m":12}},
                "findings":[{{"code":"dead-limb","part":"limb","grade":1,"height_m":6}}]}}]}}"#,
                42.33 + f64::from(tag) * 0.0002
            )
        })
        .collect();
    let path = folder.join("long-row.json");
    let text = format!(
        r#"{{"format":1,"site":{{"name":"Long Row","rule_set":"us","visits":[{{"day":"2026-05-14"}}],
        "trees":[{}]}}}}"#,
        trees.join(",")
    );
    std::fs::write(&path, text).unwrap();
    path.display().to_string()
}
