//! What a paper is made from, and the look-ups that its chapters share.

use std::collections::BTreeMap;

use crate::error::BookError;
use crate::judge::codebook::Codebook;
use crate::judge::rules::Rule;
use crate::judge::{CountingLooks, rules_for};
use crate::record::{
    Day, Finding, Id, Inspection, InspectionLevel, Judgement, Look, Moment, Photo, SiteFile,
    SiteJudgement, Target, Tree, Visit, WalkPart, WayOfWorking, ZoneAnswer,
};
use crate::words::Words;

use super::paper::Sheet;

/// Opens a photo and returns a copy of it for paper: an upright JPEG without place or time in it.
/// Called from several threads at once.
pub type PhotoForPaper<'a> = &'a (dyn Fn(&Photo) -> Result<Vec<u8>, BookError> + Sync);

/// Told what is done of how much; answers whether to go on.
pub type HowFar<'a> = &'a dyn Fn(u32, u32) -> bool;

/// What a paper is made from.
pub struct PaperInput<'a> {
    /// The property with its trees, crew and codebook.
    pub file: &'a SiteFile,
    /// The judgement of the property.
    pub judgement: &'a SiteJudgement,
    /// The reader's language and units.
    pub words: Words,
    /// The moment the paper is made, from the one clock of the field book.
    pub made: Moment,
    /// The sheet it is printed on.
    pub sheet: Sheet,
    /// Copies of photos.
    pub photo: PhotoForPaper<'a>,
}

/// A tree with what is known of it on the day.
pub(super) struct TreeSeen<'a> {
    pub tree: &'a Tree,
    pub judgement: Option<&'a Judgement>,
    /// The looks that count, the newest first: the last first look or full check, and what was
    /// looked at again since.
    pub looks: Vec<&'a Inspection>,
    /// The key of its record in the paper.
    pub key: String,
}

/// The input with its look-ups.
pub(super) struct PaperDesk<'a> {
    pub input: &'a PaperInput<'a>,
    pub words: Words,
    pub codes: Codebook,
    pub trees: Vec<TreeSeen<'a>>,
    tags: BTreeMap<&'a Id, &'a str>,
}

impl<'a> PaperDesk<'a> {
    pub fn of(input: &'a PaperInput<'a>) -> Self {
        let site = &input.file.site;
        let judged: BTreeMap<&Id, &Judgement> = input
            .judgement
            .trees
            .iter()
            .map(|judgement| (&judgement.tree, judgement))
            .collect();
        let carries_days = carries_days(input.file);
        let mut trees: Vec<TreeSeen> = site
            .trees
            .iter()
            .enumerate()
            .map(|(number, tree)| TreeSeen {
                tree,
                judgement: judged.get(&tree.id).copied(),
                looks: looks_that_count(tree, &site.visits, input.judgement.as_of, carries_days),
                key: format!("tree-{number}"),
            })
            .collect();
        trees.sort_by_key(|seen| seen.tree.walk_order.unwrap_or(u32::MAX));
        PaperDesk {
            input,
            words: input.words,
            codes: Codebook::with(&input.file.codebook),
            tags: site
                .trees
                .iter()
                .map(|tree| (&tree.id, tree.tag.as_str()))
                .collect(),
            trees,
        }
    }

    /// An entry of the catalogue without arguments.
    pub fn say(&self, key: &str) -> String {
        self.words.say(key, &[])
    }

    pub fn tag_of(&self, tree: &Id) -> &'a str {
        self.tags.get(tree).copied().unwrap_or_default()
    }

    pub fn target(&self, id: &Id) -> Option<&'a Target> {
        let targets = &self.input.file.site.targets;
        targets.iter().find(|target| target.id == *id)
    }

    /// The name of a target, a line or a tree that lies inside a zone.
    pub fn name_of(&self, id: &Id) -> String {
        let site = &self.input.file.site;
        let line = || site.lines.iter().find(|line| line.id == *id);
        if let Some(target) = self.target(id) {
            target.name.clone()
        } else if let Some(line) = line() {
            line.name.clone()
        } else {
            self.tag_of(id).to_owned()
        }
    }

    /// The name of a person, or the id where the crew does not know it.
    pub fn person(&self, id: &Id) -> String {
        let crew = &self.input.file.crew;
        crew.iter()
            .find(|person| person.id == *id)
            .map_or_else(|| id.to_string(), |person| person.name.clone())
    }

    pub fn visit(&self, id: &Id) -> Option<&'a Visit> {
        let visits = &self.input.file.site.visits;
        visits
            .iter()
            .find(|visit| !id.is_empty() && visit.id == *id)
    }

    /// The name of a code: the crew's own, else the word for its kind.
    pub fn code_name(&self, id: &Id) -> String {
        match self.codes.code(id) {
            Some(code) => match &code.name {
                Some(name) => self.alone(name),
                None => self.words.label_of(&code.kind),
            },
            None => id.to_string(),
        }
    }

    /// The words of an entry, beginning with a capital letter as they stand alone.
    pub fn alone(&self, words: &str) -> String {
        let mut letters = words.chars();
        match letters.next() {
            Some(first) => first.to_uppercase().chain(letters).collect(),
            None => String::new(),
        }
    }

    /// Several parts on one line; parts may have commas of their own.
    pub fn listed_parts(&self, parts: &[String]) -> String {
        parts.join("; ")
    }

    /// Several names on one line.
    pub fn listed(&self, names: &[String]) -> String {
        names.join(", ")
    }
}

impl<'a> TreeSeen<'a> {
    /// The newest answer to a question that a later look may leave open.
    pub fn newest<T>(&self, ask: impl Fn(&'a Inspection) -> Option<T>) -> Option<T> {
        self.looks.iter().copied().find_map(ask)
    }

    /// The look that the others add to.
    pub fn main_look(&self) -> Option<&'a Inspection> {
        self.looks.last().copied()
    }

    /// Findings, oldest look first, so that numbers stay when more is found that day.
    pub fn findings(&self) -> Vec<&'a Finding> {
        self.looks
            .iter()
            .rev()
            .flat_map(|look| &look.findings)
            .collect()
    }

    pub fn photos(&self) -> Vec<&'a Photo> {
        self.looks
            .iter()
            .rev()
            .flat_map(|look| &look.photos)
            .collect()
    }

    /// Every part of the walk-round with how it was seen last and what hid it.
    pub fn parts(&self) -> Vec<(WalkPart, Look, Option<&'a str>)> {
        WalkPart::ALL
            .into_iter()
            .map(|part| {
                let seen = self.newest(|look| look.walk_round.iter().find(|at| at.part == part));
                match seen {
                    Some(at) => (part, at.look, at.hidden_by.as_deref()),
                    None => (part, Look::NotSeen, None),
                }
            })
            .collect()
    }

    pub fn level(&self) -> Option<InspectionLevel> {
        self.main_look().map(|look| look.level)
    }

    /// The zone of the planned way.
    pub fn planned_zone(&self) -> Option<&'a ZoneAnswer> {
        let zones = &self.judgement?.zones;
        zones.iter().find(|zone| zone.planned).or(zones.first())
    }

    /// The zone that has to be kept clear: none where nothing is cut, or where the work is done.
    pub fn zone_to_close(&self) -> Option<&'a ZoneAnswer> {
        let idle = [WayOfWorking::InspectOnly, WayOfWorking::NoWork];
        let zone = self.planned_zone()?;
        (!self.tree.work_is_done() && !idle.contains(&zone.way)).then_some(zone)
    }
}

/// How long a full check carries by the site's rules; not at all where those cannot be read.
pub(super) fn carries_days(file: &SiteFile) -> f64 {
    rules_for(file).map_or(0.0, |rules| rules.number(Rule::CheckCarriesDays))
}

/// The looks that the judgement counts, the newest first.
pub(super) fn looks_that_count<'a>(
    tree: &'a Tree,
    visits: &[Visit],
    as_of: Day,
    carries_days: f64,
) -> Vec<&'a Inspection> {
    let day_of = |look: &Inspection| {
        let visit = visits.iter().find(|visit| visit.id == look.visit)?;
        (!look.visit.is_empty()).then_some(visit.day)
    };
    let mut dated: Vec<(Option<Day>, i64, &Inspection)> = tree
        .inspections
        .iter()
        .map(|look| (day_of(look), look.at.map_or(i64::MIN, |at| at.utc_ms), look))
        .filter(|(day, _, _)| day.is_none_or(|day| day <= as_of))
        .collect();
    // Undated looks come first, so that any dated one counts before them.
    dated.sort_by_key(|(day, at, _)| (*day, *at));
    let by_day: Vec<_> = dated
        .iter()
        .map(|(day, _, look)| (*day, look.level))
        .collect();
    let counting = CountingLooks::of(&by_day, carries_days);
    let mut looks: Vec<&Inspection> = dated
        .into_iter()
        .skip(counting.first)
        .map(|(_, _, look)| look)
        .collect();
    looks.reverse();
    looks
}
