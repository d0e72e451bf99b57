//! The laws of handing over: three phones edit, undo, settle and swap packs in any order, and end
//! up with the same; nobody's entry is lost, and undo takes back only one's own.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Cursor;
use std::sync::LazyLock;

use bolewalk_core::error::BookError;
use bolewalk_core::handover::{PackInput, TakeLine, pack_bytes};
use bolewalk_core::intake::Pack;
use bolewalk_core::record::{Id, Moment, Noun, SiteFile};
use bolewalk_core::store::{Absorbed, Author, Book, Change, LoadedSite, Store};
use proptest::prelude::*;
use serde_json::{Value, json};

const PHONES: usize = 3;

/// What somebody does on one of the phones.
#[derive(Debug, Clone, Copy)]
enum Deed {
    Tag(u8),
    Height(u8),
    Note(u8),
    Name(u8),
    AddFinding,
    RemoveTree,
    RemoveFinding,
    SettleTree(bool),
    SettleFinding(bool),
    Undo,
    Redo,
    UndoInBook,
    Receive(usize),
}

fn deed() -> impl Strategy<Value = (usize, Deed)> {
    let deed = prop_oneof![
        3 => (0_u8..3).prop_map(Deed::Tag),
        2 => (0_u8..3).prop_map(Deed::Height),
        2 => (0_u8..3).prop_map(Deed::Note),
        1 => (0_u8..3).prop_map(Deed::Name),
        1 => Just(Deed::AddFinding),
        2 => Just(Deed::RemoveTree),
        1 => Just(Deed::RemoveFinding),
        1 => any::<bool>().prop_map(Deed::SettleTree),
        1 => any::<bool>().prop_map(Deed::SettleFinding),
        3 => Just(Deed::Undo),
        2 => Just(Deed::Redo),
        1 => Just(Deed::UndoInBook),
        5 => (0..PHONES).prop_map(Deed::Receive),
    ];
    (0..PHONES, deed)
}

fn property() -> SiteFile {
    serde_json::from_value(json!({
        "format": 1,
        "site": {"id": "s", "name": "Hill House", "trees": [
            {"id": "t1", "tag": "1", "inspections": [{"id": "i1", "level": "triage"}]},
            {"id": "t2", "tag": "2"}]},
        "crew": [{"id": "ana", "name": "Ana", "trainee": false}]
    }))
    .unwrap()
}

fn site() -> Id {
    Id::from("s")
}

/// What all begin with: a property entered at a desk.
static FIRST: LazyLock<Vec<u8>> = LazyLock::new(|| {
    let mut desk = Phone::new(9);
    let author = desk.author();
    desk.store.put_site_file(&author, &property()).unwrap();
    desk.pack()
});

/// One phone; its clock goes on by a minute with every deed.
struct Phone {
    store: Store,
    minute: i64,
}

impl Phone {
    fn new(number: usize) -> Phone {
        Phone {
            store: Store::in_memory(&format!("phone-{number}")).unwrap(),
            minute: number as i64,
        }
    }

    fn author(&mut self) -> Author {
        self.minute += 1;
        Author {
            person: Id::from("ana"),
            at: Moment {
                utc_ms: 1_780_000_000_000 + self.minute * 60_000,
                offset_min: 0,
            },
        }
    }

    fn pack(&self) -> Vec<u8> {
        let reader = self.store.read();
        let file = reader.load_site(&site()).unwrap().file;
        let changes = |take: &mut TakeLine<'_>| {
            reader.each_change_of_site(&site(), &mut |change| {
                take(&serde_json::to_string(change).unwrap())
            })
        };
        pack_bytes(&PackInput {
            device: self.store.device(),
            made: Moment {
                utc_ms: 0,
                offset_min: 0,
            },
            file: &file,
            changes: &changes,
            photos: &[],
        })
        .unwrap()
    }

    fn receive(&mut self, pack: &[u8]) -> Absorbed {
        let at = self.author().at;
        let mut pack = Pack::read(Cursor::new(pack)).unwrap();
        let feed = self.store.take_in(at, &mut |take| {
            pack.each_change(&mut |_, line| {
                let change: Change = serde_json::from_str(line).unwrap();
                take(&change)
            })
        });
        feed.unwrap()
    }

    fn log(&self) -> Vec<Change> {
        let page = self.store.read().changes_since(0, 1_000_000).unwrap();
        page.changes
    }

    fn ids(&self) -> BTreeSet<String> {
        self.log().into_iter().map(|change| change.id).collect()
    }

    fn shown(&self) -> (LoadedSite, Book) {
        let reader = self.store.read();
        (
            reader.load_site(&site()).unwrap(),
            reader.load_book().unwrap(),
        )
    }

    fn set(&mut self, noun: Noun, id: &str, field: &str, value: Value) {
        let author = self.author();
        let done = self
            .store
            .edit(&author, |edit| edit.set(noun, &Id::from(id), field, value));
        expect_done(done.map(|_| ()));
    }

    /// Does it, unless what it is about is gone.
    fn act(&mut self, deed: Deed) {
        match deed {
            Deed::Tag(tag) => self.set(Noun::Tree, "t1", "tag", json!(format!("tag {tag}"))),
            Deed::Height(m) => {
                let height = json!({"height_m": 10 + m});
                self.set(Noun::Inspection, "i1", "height", height);
            }
            Deed::Note(note) => self.set(Noun::Tree, "t2", "note", json!(format!("note {note}"))),
            Deed::Name(name) => {
                self.set(Noun::Person, "ana", "name", json!(format!("Ana {name}")));
            }
            Deed::AddFinding => {
                let author = self.author();
                let finding = json!({"code": "decay", "part": "stem"});
                let done = self.store.edit(&author, |edit| {
                    let parent = Id::from("i1");
                    edit.create(Noun::Finding, Some(&parent), finding)
                        .map(|_| ())
                });
                expect_done(done.map(|_| ()));
            }
            Deed::RemoveTree => self.remove(Noun::Tree, &Id::from("t2")),
            Deed::SettleTree(stays) => self.settle(Noun::Tree, &Id::from("t2"), stays),
            Deed::RemoveFinding => self.remove(Noun::Finding, &self.first_finding()),
            Deed::SettleFinding(stays) => {
                self.settle(Noun::Finding, &self.first_finding(), stays);
            }
            Deed::Undo => self.turn(Some(&site()), true),
            Deed::Redo => self.turn(Some(&site()), false),
            Deed::UndoInBook => self.turn(None, true),
            Deed::Receive(_) => unreachable!("a swap takes two"),
        }
    }

    fn remove(&mut self, noun: Noun, id: &Id) {
        let author = self.author();
        let done = self.store.edit(&author, |edit| edit.remove(noun, id));
        expect_done(done.map(|_| ()));
    }

    fn settle(&mut self, noun: Noun, id: &Id, stays: bool) {
        let author = self.author();
        let done = self
            .store
            .edit(&author, |edit| edit.settle_removal(noun, id, stays));
        expect_done(done.map(|_| ()));
    }

    /// The finding that was made first; none is no record's id.
    fn first_finding(&self) -> Id {
        let log = self.log();
        let mut of_findings = log.iter().filter(|change| change.noun == "finding");
        let first = of_findings.next();
        first.map_or_else(|| Id::from("none"), |change| Id(change.record.clone()))
    }

    /// Undo and redo replace only what this phone wrote.
    fn turn(&mut self, site: Option<&Id>, back: bool) {
        let before = self.log().len();
        let author = self.author();
        let turned = match back {
            true => self.store.undo(site, &author),
            false => self.store.redo(site, &author),
        };
        turned.unwrap();
        let log = self.log();
        let of: BTreeMap<&str, &Change> = log.iter().map(|one| (one.id.as_str(), one)).collect();
        for change in &log[before..] {
            // What somebody knew is entered by nobody.
            for replaced in change.replaces.iter().filter(|_| change.field != "@seen") {
                let replaced = of[replaced.as_str()];
                assert_eq!(
                    replaced.device,
                    self.store.device(),
                    "{change:?} replaces {replaced:?}"
                );
            }
        }
    }
}

fn expect_done(done: Result<(), BookError>) {
    match done {
        Ok(()) | Err(BookError::NotFound { .. }) => {}
        Err(other) => panic!("{other:?}"),
    }
}

/// What nobody replaced, where several values stand: worked out from the log by its definition.
fn standing_by_definition(log: &[Change]) -> BTreeSet<(String, String, String, String)> {
    let replaced: BTreeSet<&String> = log.iter().flat_map(|change| &change.replaces).collect();
    let mut values: BTreeMap<(&str, &str, &str), Vec<&Value>> = BTreeMap::new();
    for change in log.iter().filter(|change| !replaced.contains(&change.id)) {
        let key = (&*change.noun, &*change.record, &*change.field);
        values.entry(key).or_default().push(&change.value);
    }
    let disputed = |values: &[&Value]| values.iter().any(|value| *value != values[0]);
    values
        .into_iter()
        .filter(|((_, _, field), _)| !["@order", "@seen"].contains(field))
        .filter(|(_, values)| disputed(values))
        .flat_map(|((noun, record, field), values)| {
            values.into_iter().map(move |value| {
                let value = value.to_string();
                (noun.to_owned(), record.to_owned(), field.to_owned(), value)
            })
        })
        .collect()
}

fn standing_as_shown(phone: &Phone) -> BTreeSet<(String, String, String, String)> {
    let reader = phone.store.read();
    let of_site = reader.standing(Some(&site())).unwrap();
    let of_book = reader.standing(None).unwrap();
    of_site
        .into_iter()
        .chain(of_book)
        .flat_map(|one| {
            one.values.into_iter().map(move |value| {
                let (noun, field) = (one.noun.clone(), one.field.clone());
                (noun, one.record.0.clone(), field, value.value.to_string())
            })
        })
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2_000))]

    #[test]
    fn packs_know_no_order_no_twice_and_lose_nothing(
        deeds in prop::collection::vec(deed(), 1..14),
        order in Just([0, 1, 2]).prop_shuffle(),
    ) {
        let mut phones: Vec<Phone> = (0..PHONES).map(Phone::new).collect();
        for phone in &mut phones {
            phone.receive(&FIRST);
        }
        for (phone, deed) in deeds {
            match deed {
                Deed::Receive(from) => {
                    let pack = phones[from].pack();
                    phones[phone].receive(&pack);
                }
                own => phones[phone].act(own),
            }
        }

        // All meet, each in another order.
        let packs: Vec<Vec<u8>> = phones.iter().map(Phone::pack).collect();
        let entered: BTreeSet<String> = phones.iter().flat_map(Phone::ids).collect();
        for (number, phone) in phones.iter_mut().enumerate() {
            for at in 0..PHONES {
                let from = order[(at + number) % PHONES];
                if from != number {
                    phone.receive(&packs[from]);
                }
            }
        }
        let shown = phones[0].shown();
        prop_assert_eq!(&shown, &phones[1].shown(), "another order");
        prop_assert_eq!(&shown, &phones[2].shown(), "another order");
        prop_assert_eq!(phones[0].ids(), entered, "nothing is lost");
        let standing = standing_by_definition(&phones[0].log());
        prop_assert_eq!(standing_as_shown(&phones[0]), standing);

        // Twice, and there and back.
        prop_assert_eq!(phones[0].receive(&packs[order[0]]).taken, 0);
        let (there, back) = (phones[1].pack(), phones[0].pack());
        prop_assert_eq!(phones[0].receive(&there).taken, 0);
        prop_assert_eq!(phones[1].receive(&back).taken, 0);
        prop_assert_eq!(&shown, &phones[0].shown(), "there and back");
    }
}
