//! What is judged: one site on one day, and for each tree what was seen up to that day.
//!
//! An answer ends with its day. A full check of an earlier day is carried on for a few days, as far
//! as the parts that change overnight are looked at anew; then it is over.

use std::borrow::Cow;
use std::collections::BTreeMap;

use crate::record::{
    BaseSounding, Day, Inspection, Look, PartLook, Person, Site, SiteFile, Tree, Visit, WalkPart,
    WeatherHour,
};

use super::codebook::Codebook;
use super::looks::CountingLooks;
use super::rules::{Rule, RuleSet};
use super::sampling::SAMPLES;
use super::wood::GreenWood;
use crate::measure::place::LocalPlane;

/// The parts that are looked at anew on the day of the climb.
pub(crate) const LOOKED_AT_ANEW: [WalkPart; 5] = [
    WalkPart::Wires,
    WalkPart::Hangers,
    WalkPart::Insects,
    WalkPart::Roots,
    WalkPart::Base,
];

/// A site on the day it is judged for, shared by its trees.
pub struct SiteContext<'a> {
    pub(crate) file: &'a SiteFile,
    pub(crate) rules: &'a RuleSet,
    pub(crate) book: Codebook,
    pub(crate) as_of: Day,
    pub(crate) hour: Option<u32>,
    pub(crate) plane: Option<LocalPlane>,
    /// The wood of every kind on the site, looked up once.
    woods: BTreeMap<&'a str, GreenWood>,
    pub(crate) draws: u32,
}

impl<'a> SiteContext<'a> {
    /// The site of `file` on the day `as_of`; `hour` 0 to 23 picks the weather, without it the
    /// worst hour of the day counts.
    pub fn new(file: &'a SiteFile, rules: &'a RuleSet, as_of: Day, hour: Option<u32>) -> Self {
        SiteContext {
            file,
            rules,
            book: Codebook::with(&file.codebook),
            as_of,
            hour,
            plane: plane_of(&file.site),
            woods: woods_of(file, rules),
            draws: SAMPLES,
        }
    }

    /// The same site with another number of samples; for laws that need thousands of judgements.
    pub fn with_draws(mut self, draws: u32) -> Self {
        self.draws = draws.clamp(20, SAMPLES);
        self
    }

    /// The wood of a tree.
    pub(crate) fn wood(&self, tree: &Tree) -> Cow<'_, GreenWood> {
        let name = tree.species.as_deref();
        match self.woods.get(name.unwrap_or_default()) {
            Some(wood) => Cow::Borrowed(wood),
            None => Cow::Owned(GreenWood::of(name, self.rules)),
        }
    }

    /// The visits of the day.
    pub(crate) fn visits_today(&self) -> impl Iterator<Item = &'a Visit> {
        let day = self.as_of;
        self.file.site.visits.iter().filter(move |v| v.day == day)
    }

    /// The weather hours that count: the hour asked for, or every hour of the day.
    pub(crate) fn weather(&self) -> Vec<&'a WeatherHour> {
        let hour = self.hour;
        self.visits_today()
            .flat_map(|visit| visit.weather.iter())
            .filter(|weather| hour.is_none_or(|hour| weather.hour == hour))
            .collect()
    }

    /// The people there today; everybody of the crew where no visit names any.
    pub(crate) fn people(&self) -> Vec<&'a Person> {
        let named: Vec<_> = self.visits_today().flat_map(|v| v.crew.iter()).collect();
        self.file
            .crew
            .iter()
            .filter(|person| named.is_empty() || named.contains(&&person.id))
            .collect()
    }

    fn day_of(&self, inspection: &Inspection) -> Option<Day> {
        if inspection.visit.is_empty() {
            return None;
        }
        let visits = &self.file.site.visits;
        visits
            .iter()
            .find(|visit| visit.id == inspection.visit)
            .map(|visit| visit.day)
    }

    /// What was seen on a tree up to the day, or nothing where nobody looked yet.
    pub(crate) fn seen(&self, tree: &Tree) -> Option<Seen> {
        let mut dated: Vec<(Option<Day>, i64, &Inspection)> = tree
            .inspections
            .iter()
            .map(|look| {
                (
                    self.day_of(look),
                    look.at.map_or(i64::MIN, |at| at.utc_ms),
                    look,
                )
            })
            .filter(|(day, _, _)| day.is_none_or(|day| day <= self.as_of))
            .collect();
        // Undated ones sort first, so that any dated look counts before them.
        dated.sort_by_key(|(day, at, _)| (*day, *at));
        let (last_day, _, last) = *dated.last()?;
        let carries = self.rules.number(Rule::CheckCarriesDays);
        let by_day: Vec<_> = dated
            .iter()
            .map(|(day, _, look)| (*day, look.level))
            .collect();
        let CountingLooks { first, full } = CountingLooks::of(&by_day, carries);
        let (_, _, base) = dated.get(first)?;
        let mut whole = (*base).clone();
        let mut anew = Vec::new();
        for (day, _, later) in dated.iter().skip(first + 1) {
            overlay(&mut whole, later);
            if *day == Some(self.as_of) {
                anew.extend(parts_looked_at(later));
            }
        }
        let full_day = full.and_then(|at| dated.get(at)).and_then(|d| d.0);
        if full.is_none() {
            whole.level = last.level;
        }
        // Too old to climb on, it is still what was seen last.
        let over = full_day.filter(|day| self.as_of.days_since(*day) as f64 > carries);
        Some(Seen {
            full: full.is_some() && over.is_none(),
            over,
            day: last_day,
            full_day,
            anew,
            look: whole,
        })
    }
}

fn woods_of<'a>(file: &'a SiteFile, rules: &RuleSet) -> BTreeMap<&'a str, GreenWood> {
    let mut woods = BTreeMap::new();
    for tree in &file.site.trees {
        let name = tree.species.as_deref();
        woods
            .entry(name.unwrap_or_default())
            .or_insert_with(|| GreenWood::of(name, rules));
    }
    woods
}

/// The plane around the first place that the site knows.
fn plane_of(site: &Site) -> Option<LocalPlane> {
    let outline = site.outline.first().copied();
    let tree = || {
        site.trees
            .iter()
            .find_map(|t| t.position.map(|p| p.point()))
    };
    let target = || site.targets.iter().find_map(|t| t.ground.first().copied());
    let line = || site.lines.iter().find_map(|l| l.way.first().copied());
    let first = outline.or_else(tree).or_else(target).or_else(line);
    first.map(LocalPlane::around)
}

/// What was seen on a tree: the full check with what was seen since laid over it.
#[derive(Debug, Clone)]
pub(crate) struct Seen {
    /// Everything seen, as one inspection.
    pub look: Inspection,
    /// Whether a full check is part of it.
    pub full: bool,
    /// The day of a full check that is too old to climb on.
    pub over: Option<Day>,
    /// The day of the last look; none where it has no date.
    pub day: Option<Day>,
    /// The day of the full check.
    pub full_day: Option<Day>,
    /// Parts that were looked at anew on the day judged for.
    pub anew: Vec<WalkPart>,
}

impl Seen {
    /// How a part was looked at; a part nobody mentioned was not seen.
    pub(crate) fn look_at(&self, part: WalkPart) -> Look {
        look_at(&self.look.walk_round, part).map_or(Look::NotSeen, |look| look.look)
    }
}

fn look_at(parts: &[PartLook], part: WalkPart) -> Option<&PartLook> {
    // A part entered twice counts by the poorer look.
    let order = |look: &&PartLook| match look.look {
        Look::NotSeen => 0,
        Look::PartSeen => 1,
        Look::Seen => 2,
    };
    parts.iter().filter(|p| p.part == part).min_by_key(order)
}

fn parts_looked_at(look: &Inspection) -> Vec<WalkPart> {
    look.walk_round
        .iter()
        .filter(|part| part.look != Look::NotSeen)
        .map(|part| part.part)
        .collect()
}

/// Lays a later look over an earlier one: what was seen anew replaces, findings add up.
fn overlay(whole: &mut Inspection, later: &Inspection) {
    for part in WalkPart::ALL {
        if let Some(look) = look_at(&later.walk_round, part) {
            whole.walk_round.retain(|old| old.part != part);
            whole.walk_round.push(look.clone());
        }
    }
    for wire in &later.wires {
        whole.wires.retain(|old| old.line != wire.line);
        whole.wires.push(wire.clone());
    }
    macro_rules! take {
        ($($field:ident),*) => {
            $(if later.$field.is_some() { whole.$field.clone_from(&later.$field); })*
        };
    }
    take!(
        life,
        dead_since,
        beetle_killed,
        dieback_pct,
        wires_near,
        base_sound,
        height,
        girth,
        bark_cm,
        lean,
        lean_is_new,
        crown,
        slope,
        ground_dug,
        note,
        next_look
    );
    if let Some(later) = &later.base_mallet {
        let old = whole.base_mallet.take();
        whole.base_mallet = Some(BaseSounding {
            north: later.north.or(old.as_ref().and_then(|o| o.north)),
            east: later.east.or(old.as_ref().and_then(|o| o.east)),
            south: later.south.or(old.as_ref().and_then(|o| o.south)),
            west: later.west.or(old.as_ref().and_then(|o| o.west)),
        });
    }
    macro_rules! lay {
        ($($list:ident),*) => {
            $(for record in &later.$list {
                if !record.id.is_empty() {
                    whole.$list.retain(|old| old.id != record.id);
                }
                whole.$list.push(record.clone());
            })*
        };
    }
    lay!(findings, sections, anchors, plans, risks, photos);
    if !later.other_stems.is_empty() {
        whole.other_stems.clone_from(&later.other_stems);
    }
}
