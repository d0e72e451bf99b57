//! Commands on the values of a rule set: the crew's own in place of the shipped one, and back.

use super::act::Outcome;
use super::entries::Entered;
use super::inner::Inner;
use crate::error::BookError;
use crate::judge::rules::{Rule, RuleRow, RuleSet};
use crate::pages::{field_of, is_whole};
use crate::record::{Fault, HouseValue, Id, Noun};

/// A row that a command is about, in its rule set.
struct Meant {
    shipped: RuleSet,
    rule: Rule,
    row: RuleRow,
}

impl Inner {
    /// Sets a value of a rule set in the name of whoever decided it; today's.
    pub(super) fn act_change_rule(
        &mut self,
        about: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let meant = meant(about)?;
        let value = self.row_value(
            &meant.row,
            entered.text("house_value.value").unwrap_or_default(),
        )?;
        let by = match entered.text("house_value.by") {
            Some(by) => Some(by.to_owned()),
            None => self.holder_name()?,
        };
        let Some(by) = by else {
            let fault = Fault::new("fault.needed", "house_value.by", "", "");
            return Err(BookError::refused(fault));
        };
        let known = self.house_values(&meant)?;
        let before = known.last().cloned();
        let after = HouseValue {
            id: before.as_ref().map_or_else(Id::default, |v| v.id.clone()),
            rule_set: meant.shipped.id().clone(),
            row: meant.row.id.clone(),
            value,
            by,
            on: Some(self.clock.today()),
            why: entered.text("house_value.why").map(str::to_owned),
        };
        self.refuse_disorder(&meant, &after)?;
        match before {
            Some(before) => {
                let id = before.id.clone();
                self.change(Noun::HouseValue, &id, &before, &after)
            }
            None => self.make(Noun::HouseValue, None, &after),
        }
    }

    /// Takes the crew's value off: the shipped one holds again.
    pub(super) fn act_reset_rule(&mut self, about: &Id) -> Result<Outcome, BookError> {
        let meant = meant(about)?;
        let known = self.house_values(&meant)?;
        let done = self.edit(|edit| {
            known
                .iter()
                .try_for_each(|value| edit.remove(Noun::HouseValue, &value.id))
        })?;
        Ok(Outcome {
            record: Id::default(),
            changes: done.changes,
        })
    }

    /// The crew's values for a row; the last counts.
    fn house_values(&self, meant: &Meant) -> Result<Vec<HouseValue>, BookError> {
        let mut values = self.store.read().load_book()?.house_values;
        values.retain(|value| value.rule_set == *meant.shipped.id() && value.row == meant.row.id);
        Ok(values)
    }

    /// What was typed, in the row's own unit and within its range.
    fn row_value(&self, row: &RuleRow, typed: &str) -> Result<f64, BookError> {
        let words = self.settings.words();
        let place = "house_value.value";
        let Some(field) = field_of(row) else {
            let stays = words.number(row.value, row.quantity);
            let fault = Fault::new("fault.rule-fixed", place, typed, stays);
            return Err(BookError::refused(fault));
        };
        let value = words.read_field(typed, &field, place);
        let value = value.map_err(BookError::refused)?;
        if is_whole(row.quantity) && value.fract() != 0.0 {
            return Err(BookError::refused(Fault::new(
                "fault.not-whole",
                place,
                typed,
                "",
            )));
        }
        Ok(value)
    }

    /// Of two rows that belong together the lower stays below the upper.
    fn refuse_disorder(&self, meant: &Meant, value: &HouseValue) -> Result<(), BookError> {
        let mut values = self.store.read().load_book()?.house_values;
        values.push(value.clone());
        let Ok(rules) = meant.shipped.with_house_values(&values) else {
            return Ok(());
        };
        let Some(other) = rules.out_of_order(meant.rule) else {
            return Ok(());
        };
        let other = rules.row(other);
        let words = self.settings.words();
        let typed = words.number(value.value, meant.row.quantity);
        let allowed = words.number(other.value, other.quantity);
        let fault = Fault::new("fault.rules-cross", "house_value.value", typed, allowed);
        Err(BookError::refused(fault))
    }
}

/// The row named as `rule set/row`.
fn meant(about: &Id) -> Result<Meant, BookError> {
    let (set, row) = about.as_str().split_once('/').unwrap_or_default();
    let shipped = RuleSet::shipped(&Id::from(set))?;
    let rule = Rule::of_id(row).ok_or_else(|| BookError::NotFound {
        kind: "rule set".to_owned(),
        id: row.to_owned(),
    })?;
    let row = shipped.row(rule).clone();
    Ok(Meant { shipped, rule, row })
}
