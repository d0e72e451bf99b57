//! What is recorded aloft and afterwards: findings, another anchor, near misses, gear, work.

use serde_json::json;

use super::act::Outcome;
use super::at_tree::{add_photo, with_part};
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use crate::error::BookError;
use crate::judge::codebook::Codebook;
use crate::record::{
    AnchorPoint, ClimbPlan, Fault, Finding, Gear, Id, Inspection, NearMiss, Noun, Work, WorkDone,
    WorkOutcome,
};

impl Inner {
    /// A finding of the climber, in the look of the day.
    pub(super) fn act_find_aloft(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let book = Codebook::with(&self.store.read().load_book()?.codebook);
        let entered = with_part(entered.whole()?, &book);
        let mut finding: Finding = new_record(&entered)?;
        self.refuse_odd(&finding)?;
        finding.aloft = Some(true);
        let photo = self.taken_photo(&entered)?;
        let json = serde_json::to_value(&finding).map_err(defect)?;
        let mut record = Id::default();
        let outcome = self.in_look_of_today(tree, |edit, look| {
            record = edit.create(Noun::Finding, Some(look), json)?;
            add_photo(edit, look, photo, &record)
        })?;
        Ok(Outcome { record, ..outcome })
    }

    /// The plan goes over the anchor where the line landed: one that is known, or a new one.
    pub(super) fn act_land_elsewhere(
        &mut self,
        plan: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let before: ClimbPlan = self.record(Noun::ClimbPlan, plan)?;
        let known = entered.text("climb.anchor").map(Id::from);
        let fresh = match known {
            Some(_) => None,
            None => Some(self.anchor_landed_on(plan, &entered)?),
        };
        let inspection = self.holder(Noun::ClimbPlan, plan)?;
        let done = self.edit(|edit| {
            let anchor = match (known, fresh) {
                (Some(known), _) => known,
                (None, Some(fresh)) => {
                    let json = serde_json::to_value(&fresh).map_err(defect)?;
                    edit.create(Noun::AnchorPoint, Some(&inspection), json)?
                }
                (None, None) => before.anchor.clone(),
            };
            let after = ClimbPlan {
                anchor,
                ..before.clone()
            };
            set_changed(edit, Noun::ClimbPlan, plan, &before, &after)
        })?;
        Ok(Outcome {
            record: plan.clone(),
            changes: done.changes,
        })
    }

    /// A new anchor of the plan's inspection; at least its height has to be said.
    fn anchor_landed_on(&self, plan: &Id, entered: &Entered) -> Result<AnchorPoint, BookError> {
        if entered.number("anchor.height").is_none() {
            let fault = Fault::new("fault.needed", "climb.anchor", "", "");
            return Err(BookError::refused(fault));
        }
        let inspection = self.holder(Noun::ClimbPlan, plan)?;
        let mut anchor: AnchorPoint = new_record(entered)?;
        anchor.name = self.free_letter(&inspection)?;
        Ok(anchor)
    }

    /// A near miss, in the look of the day.
    pub(super) fn act_note_near_miss(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let mut near_miss: NearMiss = new_record(&entered.whole()?)?;
        near_miss.at = Some(self.clock.now());
        near_miss.by = self.settings.person.clone();
        let json = serde_json::to_value(&near_miss).map_err(defect)?;
        let mut record = Id::default();
        let outcome = self.in_look_of_today(tree, |edit, look| {
            record = edit.create(Noun::NearMiss, Some(look), json)?;
            Ok(())
        })?;
        Ok(Outcome { record, ..outcome })
    }

    /// Gear that took a shock load is out of use until somebody competent has looked at it.
    pub(super) fn act_shock_gear(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: Gear = self.record(Noun::Gear, id)?;
        let day = self.settings.words().day(self.clock.today());
        let said = entered.text("gear.out_of_use").map(str::to_owned);
        let why = said.unwrap_or_else(|| {
            let day = [("day", crate::words::Said::Text(&day))];
            self.settings.words().say("page.shock-load", &day)
        });
        let after = Gear {
            shock_loaded: Some(true),
            out_of_use: Some(why),
            ..before.clone()
        };
        self.change(Noun::Gear, id, &before, &after)
    }

    pub(super) fn act_finish_work(&mut self, id: &Id) -> Result<Outcome, BookError> {
        let outcome = WorkOutcome {
            done: WorkDone::Done,
            why: None,
            left: None,
            on: Some(self.clock.today()),
        };
        self.set_outcome(id, outcome)
    }

    /// What of a piece of work was not done; a reason is asked unless it is done after all.
    pub(super) fn act_leave_work(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let value = |input| {
            entered
                .value(input)
                .filter(|value| !value.is_null())
                .cloned()
        };
        let json = json!({
            "done": value("work.done"),
            "why": value("work.why"),
            "left": value("work.left"),
            "on": self.clock.today().to_string(),
        });
        let outcome: WorkOutcome = serde_json::from_value(json).map_err(defect)?;
        if outcome.done != WorkDone::Done && outcome.why.is_none() {
            let fault = Fault::new("fault.needed", "work.why", "", "");
            return Err(BookError::refused(fault));
        }
        self.set_outcome(id, outcome)
    }

    fn set_outcome(&mut self, id: &Id, outcome: WorkOutcome) -> Result<Outcome, BookError> {
        let before: Work = self.record(Noun::Work, id)?;
        let after = Work {
            outcome: Some(outcome),
            ..before.clone()
        };
        self.change(Noun::Work, id, &before, &after)
    }

    /// When to look again, in the look of the day.
    pub(super) fn act_set_next_look(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let look = self.look_of_today(tree)?;
        match look {
            Some(before) => {
                let after: Inspection = changed_record(&before, &entered)?;
                self.change(Noun::Inspection, &before.id, &before, &after)
            }
            None => {
                let day = entered.value("inspection.next_look").cloned();
                self.in_look_of_today(tree, |edit, look| {
                    let day = day.unwrap_or_default();
                    edit.set(Noun::Inspection, look, "next_look", day)
                })
            }
        }
    }
}
