//! Inputs that depend on what was entered for another: the codes that occur at a part of the tree,
//! and what the grades of a code look like.

use super::desk::PageDesk;
use super::drawn::DrawingAddress;
use super::entry::{Entry, EntryValue};
use super::offer::{InputKind, Offer, OfferedChoice, OfferedInput};
use crate::record::{DefectCode, TreePart};
use crate::words::Words;

/// Parts of a tree that a finding can be on.
const PARTS: usize = 7;

impl PageDesk<'_> {
    /// The inputs of an offer once these entries are made. None is dropped: only what they offer
    /// follows from the entries.
    pub fn narrowed(&self, offer: &Offer, entries: &[Entry]) -> Vec<OfferedInput> {
        let mut inputs = offer.inputs.clone();
        if !depends(offer) {
            return inputs;
        }
        let chosen = |input: &str| chosen_of(offer, entries, input);
        let parts = parts_meant(offer, &chosen("finding.part"));
        let code = chosen("finding.code");
        for input in &mut inputs {
            match input.id.as_str() {
                "finding.code" => self.codes_at(&parts, &code, input),
                "finding.grade" => {
                    let known = self.codes.iter().find(|one| one.id.0 == code);
                    if let Some(known) = known {
                        graded(&self.words, input, known, parts.first().copied());
                    }
                }
                _ => {}
            }
        }
        inputs
    }

    /// The codes that occur at one of these parts: what the crew used most lately, then in the
    /// order of the codebook; the others aside. While no part is named, those used lately are at
    /// hand.
    fn codes_at(&self, parts: &[TreePart], chosen: &str, input: &mut OfferedInput) {
        let InputKind::Choice { choices } = &mut input.kind else {
            return;
        };
        let used = |choice: &OfferedChoice| {
            let mut used = self.codes_used.iter();
            used.position(|id| id.0 == choice.id)
        };
        let occurs = |choice: &OfferedChoice| {
            let code = self.codes.iter().find(|code| code.id.0 == choice.id);
            code.is_none_or(|code| {
                code.parts.is_empty() || code.parts.iter().any(|part| parts.contains(part))
            })
        };
        for choice in choices.iter_mut() {
            let here = if parts.is_empty() {
                used(choice).is_some()
            } else {
                occurs(choice)
            };
            choice.aside = !here && choice.id != chosen;
        }
        if choices.iter().all(|choice| choice.aside) && !parts.is_empty() {
            choices.iter_mut().for_each(|choice| choice.aside = false);
        }
        choices.sort_by_key(|choice| {
            let rank = used(choice).filter(|_| !choice.aside);
            let on_tiles = self.codes.iter().position(|code| code.id.0 == choice.id);
            (choice.aside, rank.unwrap_or(usize::MAX), on_tiles)
        });
    }
}

/// Whether anything that an offer asks follows from what is entered.
pub fn depends(offer: &Offer) -> bool {
    offer.inputs.iter().any(|input| input.id == "finding.code")
}

/// Gives the grades of an input the sentences and drawings of a code. A grade without a sentence
/// cannot be chosen.
pub(super) fn graded(
    words: &Words,
    input: &mut OfferedInput,
    code: &DefectCode,
    part: Option<TreePart>,
) {
    let InputKind::Choice { choices } = &mut input.kind else {
        return;
    };
    choices.retain_mut(|choice| {
        let grade = choice.id.parse().unwrap_or(0);
        let said = words.grade_sentence(code, grade);
        let is_there = said.is_some();
        choice.help = said.unwrap_or_default();
        choice.drawing = Some(DrawingAddress::Grade {
            code: code.id.clone(),
            part,
            grade,
        });
        is_there
    });
}

/// What is chosen for an input: entered last, fixed, or there before.
fn chosen_of(offer: &Offer, entries: &[Entry], input: &str) -> String {
    let entered = entries.iter().chain(&offer.fixed);
    let entered = entered.filter(|entry| entry.input == input);
    let before = offer.inputs.iter().find(|one| one.id == input);
    let value = entered
        .map(|entry| &entry.value)
        .next()
        .or(before.and_then(|one| one.current.as_ref()));
    match value {
        Some(EntryValue::Choice { id }) => id.clone(),
        _ => String::new(),
    }
}

/// The parts in question: the one that was chosen, else those that are offered where not all are.
fn parts_meant(offer: &Offer, chosen: &str) -> Vec<TreePart> {
    let part = |id: &str| serde_json::from_value(serde_json::Value::from(id)).ok();
    if let Some(one) = part(chosen) {
        return vec![one];
    }
    let asked = offer.inputs.iter().find(|input| input.id == "finding.part");
    match asked.map(|input| &input.kind) {
        Some(InputKind::Choice { choices }) if choices.len() < PARTS => choices
            .iter()
            .filter_map(|choice| part(&choice.id))
            .collect(),
        _ => Vec::new(),
    }
}
