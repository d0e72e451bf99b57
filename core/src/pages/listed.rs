//! Records to choose from.

use super::ask::Listed;
use super::desk::PageDesk;
use super::offer::OfferedChoice;
use crate::judge::wood::all_species;
use crate::record::{AnchorPoint, DefectCode, Id};

impl PageDesk<'_> {
    pub(super) fn listed(&self, listed: Listed) -> Vec<OfferedChoice> {
        let plain = |id: &Id, words: &str| OfferedChoice {
            id: id.0.clone(),
            words: words.to_owned(),
            help: String::new(),
        };
        let site = self.site.map(|(site, _)| site);
        let seen = self.inspection;
        match listed {
            Listed::People => self.crew.iter().map(|p| plain(&p.id, &p.name)).collect(),
            Listed::Codes => self
                .codes
                .iter()
                .filter(|code| !code.retired)
                .map(|code| plain(&code.id, &self.code_name(code)))
                .collect(),
            Listed::Lines => site
                .map(|site| site.lines.iter().map(|l| plain(&l.id, &l.name)).collect())
                .unwrap_or_default(),
            Listed::Targets => site
                .map(|site| site.targets.iter().map(|t| plain(&t.id, &t.name)).collect())
                .unwrap_or_default(),
            Listed::Trees => site
                .map(|site| site.trees.iter().map(|t| plain(&t.id, &t.tag)).collect())
                .unwrap_or_default(),
            Listed::Anchors => {
                let anchors = seen.map_or(&[][..], |seen| &seen.anchors);
                let named = anchors.iter().map(|a| plain(&a.id, &self.anchor_name(a)));
                named.collect()
            }
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
            "tree.species" => self.suggested_species(),
            "climb_log.place" => self.places.clone(),
            "climb_log.with_whom" | "sign_off.by" => {
                self.crew.iter().map(|one| one.name.clone()).collect()
            }
            _ => Vec::new(),
        }
    }

    /// Species that the site already has, then all that are known.
    fn suggested_species(&self) -> Vec<String> {
        let trees = self.site.map_or(&[][..], |(site, _)| &site.trees);
        let here = trees.iter().filter_map(|tree| tree.species.clone());
        let known = all_species().iter().map(|one| one.latin_name.clone());
        let mut species: Vec<String> = Vec::new();
        for name in here.chain(known) {
            if !species.contains(&name) {
                species.push(name);
            }
        }
        species
    }
}
