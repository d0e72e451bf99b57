//! Records to choose from.

use super::ask::Listed;
use super::desk::PageDesk;
use super::offer::OfferedChoice;
use crate::judge::codebook::bars_on_sight;
use crate::record::{AnchorPoint, DefectCode, DefectKind, Id, Inspection};

/// What is met most often after a storm leads the tiles (common practice, no source).
const FIRST_STOPS: [DefectKind; 5] = [
    DefectKind::Hanger,
    DefectKind::TouchingWire,
    DefectKind::UnderTension,
    DefectKind::SoilMovement,
    DefectKind::StingingInsects,
];

impl PageDesk<'_> {
    pub(super) fn listed(&self, listed: Listed) -> Vec<OfferedChoice> {
        let plain = |id: &Id, words: &str| OfferedChoice::of(&id.0, words.to_owned());
        let site = self.site.map(|(site, _)| site);
        let seen = self.inspection;
        match listed {
            Listed::People => self.crew.iter().map(|p| plain(&p.id, &p.name)).collect(),
            Listed::Codes => self
                .codes
                .iter()
                .filter(|code| !code.retired)
                .map(|code| plain(&code.id, &self.code_label(code)))
                .collect(),
            Listed::StopsOnSight => self.stops_on_sight(),
            Listed::Lines => site
                .map(|site| site.lines.iter().map(|l| plain(&l.id, &l.name)).collect())
                .unwrap_or_default(),
            Listed::Targets => site
                .map(|site| site.targets.iter().map(|t| plain(&t.id, &t.name)).collect())
                .unwrap_or_default(),
            Listed::Trees => site
                .map(|site| site.trees.iter().map(|t| plain(&t.id, &t.tag)).collect())
                .unwrap_or_default(),
            Listed::Anchors => seen.map_or_else(Vec::new, |seen| self.anchor_choices(seen)),
            Listed::Findings => {
                let findings = seen.map_or(&[][..], |seen| &seen.findings);
                let named = findings
                    .iter()
                    .map(|f| plain(&f.id, &self.code_words(&f.code)));
                named.collect()
            }
            Listed::RuleSets => vec![plain(&Id::from("us"), &self.say("rule-set.us"))],
        }
    }

    /// The anchors of a look.
    pub(super) fn anchor_choices(&self, look: &Inspection) -> Vec<OfferedChoice> {
        let named = look.anchors.iter();
        named
            .map(|anchor| OfferedChoice::of(&anchor.id.0, self.anchor_name(anchor)))
            .collect()
    }

    /// What bars climbing at sight, the most frequent first, each with the sentence of its gravest
    /// grade; a dead tree is among them, though it is no code.
    fn stops_on_sight(&self) -> Vec<OfferedChoice> {
        let bars = |code: &&DefectCode| !code.retired && bars_on_sight(code);
        let mut codes: Vec<&DefectCode> = self.codes.iter().filter(bars).collect();
        let first = |code: &DefectCode| {
            let mut kinds = FIRST_STOPS.iter();
            kinds
                .position(|kind| *kind == code.kind)
                .unwrap_or(FIRST_STOPS.len())
        };
        codes.sort_by_key(|code| first(code));
        let mut tiles: Vec<OfferedChoice> = codes
            .into_iter()
            .map(|code| OfferedChoice {
                help: self.words.grade_sentence(code, 3).unwrap_or_default(),
                ..OfferedChoice::of(&code.id.0, self.code_label(code))
            })
            .collect();
        let dead = OfferedChoice {
            help: self.say("page.dead-tree-help"),
            ..OfferedChoice::of("dead-tree", self.words.label("page.dead-tree"))
        };
        tiles.insert(1.min(tiles.len()), dead);
        tiles
    }

    /// The name of an anchor, as the sheet gives it.
    pub fn anchor_name(&self, anchor: &AnchorPoint) -> String {
        match &anchor.name {
            Some(name) => name.clone(),
            None => self.say("sheet.anchor-nameless"),
        }
    }

    /// The name of a code: the crew's own, else the word of its kind.
    pub fn code_name(&self, code: &DefectCode) -> String {
        code.name
            .clone()
            .unwrap_or_else(|| self.words.word_of(&code.kind))
    }

    /// The same on a tile; the crew's own name as they wrote it.
    fn code_label(&self, code: &DefectCode) -> String {
        let named = code.name.clone();
        named.unwrap_or_else(|| self.words.label_of(&code.kind))
    }

    /// The name of a code by its id; the id where the codebook lacks it.
    pub fn code_words(&self, id: &Id) -> String {
        self.codes
            .iter()
            .find(|code| code.id == *id)
            .map_or_else(|| id.to_string(), |code| self.code_name(code))
    }

    /// What is offered to be tapped instead of typed.
    pub(super) fn suggested(&self, input: &str) -> Vec<String> {
        match input {
            "climb_log.place" => self.places.clone(),
            "climb_log.with_whom" | "sign_off.by" => {
                self.crew.iter().map(|one| one.name.clone()).collect()
            }
            _ => Vec::new(),
        }
    }
}
