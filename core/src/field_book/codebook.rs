//! Commands on the codebook. A starter code is taken into the book with its first change; its id
//! and what it means for the judgement never change.

use serde_json::{Value, json};

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use super::records::unknown;
use super::show::codes_in_order;
use crate::error::BookError;
use crate::judge::codebook::starter_codes;
use crate::record::{DefectCode, Fault, Id, Noun};
use crate::words::folded;

impl Inner {
    /// Makes a code, the last on the tiles.
    pub(super) fn act_add_code(&mut self, entered: Entered) -> Result<Outcome, BookError> {
        let mut code: DefectCode = new_record(&entered.whole()?)?;
        let known = self.codes()?;
        self.refuse_name_twice(&code, &known)?;
        let last = known.iter().filter_map(|code| code.order).max();
        code.order = Some(last.unwrap_or_default() + 1);
        self.make(Noun::DefectCode, None, &code)
    }

    pub(super) fn act_change_code(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before = self.own_code(id)?;
        let mut after: DefectCode = changed_record(&before, entered)?;
        // The words that a starter code is shown by are none of its own.
        let words = self.settings.words();
        let shown = words.word_of(&after.kind);
        if before.name.is_none() && after.name.as_deref() == Some(&shown) {
            after.name = None;
        }
        let starter = starter_codes().iter().find(|code| code.id == *id);
        let said = |grade| starter.and_then(|code| words.grade_sentence(code, grade));
        for (was, is, grade) in [
            (&before.grade_1, &mut after.grade_1, 1),
            (&before.grade_2, &mut after.grade_2, 2),
            (&before.grade_3, &mut after.grade_3, 3),
        ] {
            if was.is_none() && *is == said(grade) {
                *is = None;
            }
        }
        if after.name != before.name {
            let known = self.codes()?;
            self.refuse_name_twice(&after, &known)?;
        }
        self.change_codes(&[(before, after)], id)
    }

    /// Takes a code off the tiles, or puts it back; findings that have it keep it.
    pub(super) fn act_retire_code(&mut self, id: &Id, retired: bool) -> Result<Outcome, BookError> {
        let before = self.own_code(id)?;
        let after = DefectCode {
            retired,
            ..before.clone()
        };
        self.change_codes(&[(before, after)], id)
    }

    /// Moves a code before or behind its neighbour on the tiles.
    pub(super) fn act_move_code(&mut self, id: &Id, up: bool) -> Result<Outcome, BookError> {
        let mut codes = self.codes()?;
        let in_use: Vec<usize> = (0..codes.len())
            .filter(|at| codes.get(*at).is_some_and(|code| !code.retired))
            .collect();
        let is_meant = |at: &&usize| codes.get(**at).is_some_and(|code| code.id == *id);
        let found = in_use.iter().position(|at| is_meant(&at));
        let found = found.ok_or_else(|| unknown(Noun::DefectCode, id))?;
        let other = if up {
            found.checked_sub(1)
        } else {
            Some(found + 1)
        };
        let places = other.and_then(|other| Some((*in_use.get(found)?, *in_use.get(other)?)));
        let Some((one, other)) = places else {
            return Ok(Outcome {
                record: id.clone(),
                changes: 0,
            });
        };
        codes.swap(one, other);
        let mut changes = Vec::new();
        for (order, code) in (1_u32..).zip(&codes) {
            if code.order != Some(order) {
                let before = self.own_code(&code.id)?;
                let after = DefectCode {
                    order: Some(order),
                    ..before.clone()
                };
                changes.push((before, after));
            }
        }
        self.change_codes(&changes, id)
    }

    /// Every code, starter codes and the crew's own, in the order of the tiles.
    fn codes(&self) -> Result<Vec<DefectCode>, BookError> {
        Ok(codes_in_order(&self.store.read().load_book()?.codebook))
    }

    /// The crew's own part of a code: of a starter code that nobody changed its id and kind alone.
    fn own_code(&self, id: &Id) -> Result<DefectCode, BookError> {
        let own = self.store.read().load_book()?.codebook;
        if let Some(code) = own.into_iter().find(|code| code.id == *id) {
            return Ok(code);
        }
        let starter = starter_codes().iter().find(|code| code.id == *id);
        let starter = starter.ok_or_else(|| unknown(Noun::DefectCode, id))?;
        Ok(DefectCode {
            name: None,
            parts: Vec::new(),
            grade_1: None,
            grade_2: None,
            grade_3: None,
            stops_from_grade: None,
            retired: false,
            order: None,
            ..starter.clone()
        })
    }

    /// Sets what differs as one edit.
    fn change_codes(
        &mut self,
        changes: &[(DefectCode, DefectCode)],
        about: &Id,
    ) -> Result<Outcome, BookError> {
        let own = self.store.read().load_book()?.codebook;
        let done = self.edit(|edit| {
            for (before, after) in changes {
                if own.iter().any(|code| code.id == after.id) {
                    set_changed(edit, Noun::DefectCode, &after.id, before, after)?;
                } else if before != after {
                    let mut json = serde_json::to_value(after).map_err(defect)?;
                    // What says nothing of its own is left to the starter code.
                    if let Some(fields) = json.as_object_mut() {
                        fields.retain(|_, value| *value != Value::Null && *value != json!(false));
                    }
                    edit.put(Noun::DefectCode, json)?;
                }
            }
            Ok(())
        })?;
        Ok(Outcome {
            record: about.clone(),
            changes: done.changes,
        })
    }

    /// Two tiles with one name cannot be told apart.
    fn refuse_name_twice(&self, code: &DefectCode, known: &[DefectCode]) -> Result<(), BookError> {
        let words = self.settings.words();
        let name_of = |code: &DefectCode| match &code.name {
            Some(name) => folded(name),
            None => folded(&words.word_of(&code.kind)),
        };
        let name = name_of(code);
        let mut others = known.iter().filter(|other| other.id != code.id);
        if others.any(|other| !other.retired && name_of(other) == name) {
            let found = code.name.clone().unwrap_or_default();
            let fault = Fault::new("fault.name-twice", "code.name", found, "");
            return Err(BookError::refused(fault));
        }
        Ok(())
    }
}
