//! What every page is made with: the reader's words, the records to choose from, and the offers.

use std::cell::Cell;
use std::collections::BTreeMap;

use serde_json::Value;

use super::command_kind::CommandKind;
use super::forms::asks_of;
use super::line::PageRecord;
use super::offer::Offer;
use crate::judge::rules::RuleSet;
use crate::record::{
    Day, DefectCode, Gear, Id, Inspection, Judgement, Person, Site, SiteJudgement, Tree,
};
use crate::words::{Said, Words};

/// What every page is made with.
pub struct PageDesk<'a> {
    /// The reader's words and units.
    pub words: Words,
    /// First part of the tokens of this page's offers, never used before.
    pub token: String,
    /// Counts the offers of this page.
    pub offered: Cell<u32>,
    /// The present day.
    pub today: Day,
    /// The present hour, 0 to 23.
    pub hour: u32,
    /// The present moment in milliseconds since 1970 UTC.
    pub now_ms: i64,
    /// The rule set, with the crew's own values.
    pub rules: RuleSet,
    /// Who holds the phone; empty while nobody is named.
    pub holder: Id,
    /// The crew.
    pub crew: &'a [Person],
    /// The gear.
    pub gear: &'a [Gear],
    /// The codes in use, starter codes and the crew's own, in the order of their tiles.
    pub codes: Vec<DefectCode>,
    /// The names of the sites, on pages of the book.
    pub places: Vec<String>,
    /// The site and its judgement, on its pages.
    pub site: Option<(&'a Site, &'a SiteJudgement)>,
    /// The inspection, where the page is about one.
    pub inspection: Option<&'a Inspection>,
    /// What a person has to be told first, already worded.
    pub notices: Vec<String>,
    /// What has to be settled: values that stand side by side, removals against changes.
    pub unsettled: Vec<Unsettled>,
    /// The edit to take back here, already worded; nothing where there is none.
    pub undo: Option<String>,
    /// The edit to take back in the book itself.
    pub undo_in_book: Option<String>,
    /// The edit to do again here.
    pub redo: Option<String>,
    /// Species in the order in which they were used last.
    pub species_used: Vec<String>,
    /// Codes in the order of how often they were used lately.
    pub codes_used: Vec<Id>,
    /// The folder of the photos.
    pub photos: &'a dyn Fn(&str) -> PhotoPaths,
}

/// The paths of one photo.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PhotoPaths {
    /// Upright, for the whole screen.
    pub view: String,
    /// Upright, for lists.
    pub small: String,
}

/// Something that a person has to settle, already worded.
#[derive(Debug, Clone, PartialEq)]
pub struct Unsettled {
    /// The command that settles it this way.
    pub command: CommandKind,
    /// What the command is about.
    pub about: Id,
    /// What stands, and who says so.
    pub words: String,
}

impl<'a> PageDesk<'a> {
    /// An entry of the catalogue without arguments.
    pub fn say(&self, key: &str) -> String {
        self.words.say(key, &[])
    }

    /// An offer that can be taken; `record` is what is there now, as JSON.
    pub fn offer(&self, command: CommandKind, about: &Id, record: Option<&Value>) -> Offer {
        self.offer_asking(command, about, record, &|_| true)
    }

    /// The same, asking only some of its inputs.
    pub(super) fn offer_asking(
        &self,
        command: CommandKind,
        about: &Id,
        record: Option<&Value>,
        asks: &dyn Fn(&str) -> bool,
    ) -> Offer {
        self.offered.set(self.offered.get() + 1);
        let mut offer = Offer {
            id: command.id().to_owned(),
            command,
            about: about.0.clone(),
            words: self.say(&format!("offer.{}", command.id())),
            enabled: true,
            why_not: String::new(),
            inputs: asks_of(command)
                .iter()
                .filter(|ask| asks(ask.id) && !self.nothing_to_choose(ask))
                .map(|ask| self.input(ask, record))
                .collect(),
            fixed: Vec::new(),
            chosen: false,
            token: format!("{}-{}", self.token, self.offered.get()),
        };
        offer.inputs = self.narrowed(&offer, &[]);
        offer
    }

    /// An offer with a record of the book as it is now.
    pub fn offer_on<T: serde::Serialize>(
        &self,
        command: CommandKind,
        about: &Id,
        record: &T,
    ) -> Offer {
        self.offer(command, about, serde_json::to_value(record).ok().as_ref())
    }

    /// The same offer, not to be taken while something is missing, and what.
    pub fn unless(&self, mut offer: Offer, missing: bool, why_not: &str) -> Offer {
        if missing && offer.enabled {
            offer.enabled = false;
            offer.why_not = self.say(why_not);
        }
        offer
    }

    /// Undo and redo on a site, or in the book where none is named.
    pub fn undo_offers(&self, site: &Id) -> Vec<Offer> {
        vec![
            self.undo_offer(site, self.undo.as_deref()),
            self.named_step(CommandKind::Redo, site, self.redo.as_deref()),
        ]
    }

    /// Undo, of the step that is named.
    pub(super) fn undo_offer(&self, site: &Id, step: Option<&str>) -> Offer {
        self.named_step(CommandKind::Undo, site, step)
    }

    /// Undo or redo with the name of the step that it turns.
    fn named_step(&self, command: CommandKind, site: &Id, step: Option<&str>) -> Offer {
        let offer = self.offer(command, site, None);
        let (named, nothing) = match command {
            CommandKind::Redo => ("edit.redo-what", "fault.nothing-to-redo"),
            _ => ("edit.undo-what", "fault.nothing-to-undo"),
        };
        match step {
            Some(step) => Offer {
                words: self.words.say(named, &[("what", Said::Text(step))]),
                ..offer
            },
            None => self.unless(offer, true, nothing),
        }
    }

    /// What has to be settled, a record each, with the offer that settles it this way.
    pub fn unsettled_records(&self) -> Vec<PageRecord> {
        self.unsettled
            .iter()
            .map(|one| PageRecord {
                id: one.about.clone(),
                words: one.words.clone(),
                detail: String::new(),
                go_to: None,
                offers: vec![self.offer(one.command, &one.about, None)],
            })
            .collect()
    }

    /// The name of whoever holds the phone; nothing while nobody is named.
    pub fn holder_name(&self) -> Option<String> {
        (!self.holder.is_empty()).then(|| self.person(&self.holder))
    }

    /// The name of a person; the id where the crew lacks it.
    pub fn person(&self, id: &Id) -> String {
        let mut crew = self.crew.iter();
        crew.find(|person| person.id == *id)
            .map_or_else(|| id.to_string(), |person| person.name.clone())
    }

    /// Every tree with its judgement, in walking order.
    pub fn trees(&self) -> Vec<(&'a Tree, &'a Judgement)> {
        let Some((site, judged)) = self.site else {
            return Vec::new();
        };
        // As they are kept, both lie in one order; else they are found by their ids.
        let pairs = || site.trees.iter().zip(&judged.trees);
        if site.trees.len() == judged.trees.len()
            && pairs().all(|(tree, answer)| tree.id == answer.tree)
        {
            return pairs().collect();
        }
        let by_id: BTreeMap<&Id, &Tree> = site.trees.iter().map(|one| (&one.id, one)).collect();
        let with_tree = |answer: &'a Judgement| Some((*by_id.get(&answer.tree)?, answer));
        judged.trees.iter().filter_map(with_tree).collect()
    }

    /// The tree of this id with its judgement.
    pub fn tree(&self, id: &Id) -> Option<(&'a Tree, &'a Judgement)> {
        let (site, judged) = self.site?;
        let tree = site.trees.iter().find(|tree| tree.id == *id)?;
        let answer = judged.trees.iter().find(|answer| answer.tree == *id)?;
        Some((tree, answer))
    }
}
