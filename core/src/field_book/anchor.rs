//! Commands on anchors and climb plans.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::new_record;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{AnchorPoint, ClimbPlan, Id, Inspection, LimbToReach, Noun};

impl Inner {
    /// Makes an anchor; one without a name takes the next free letter.
    pub(super) fn act_add_anchor(
        &mut self,
        inspection: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let mut anchor: AnchorPoint = new_record(&entered.whole()?)?;
        if anchor.name.is_none() {
            anchor.name = self.free_letter(inspection)?;
        }
        self.make(Noun::AnchorPoint, Some(inspection), &anchor)
    }

    /// The next letter that names no anchor of an inspection.
    pub(super) fn free_letter(&self, inspection: &Id) -> Result<Option<String>, BookError> {
        let seen: Inspection = self.record(Noun::Inspection, inspection)?;
        let taken = |letter: &str| {
            let mut names = seen
                .anchors
                .iter()
                .filter_map(|known| known.name.as_deref());
            names.any(|name| name == letter)
        };
        Ok(('A'..='Z').map(String::from).find(|letter| !taken(letter)))
    }

    /// Records the load test; one entered without its day is today's.
    pub(super) fn act_test_anchor(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let today = self.clock.today().to_string();
        let entered = entered.whole()?.or_else("load_test.on", || json!(today));
        self.change_entered::<AnchorPoint>(Noun::AnchorPoint, id, &entered)
    }

    pub(super) fn act_add_limb(
        &mut self,
        plan: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let limb: LimbToReach = new_record(&entered.whole()?)?;
        let before: ClimbPlan = self.record(Noun::ClimbPlan, plan)?;
        let mut after = before.clone();
        after.limbs.push(limb);
        self.change(Noun::ClimbPlan, plan, &before, &after)
    }

    pub(super) fn act_forget_limbs(&mut self, plan: &Id) -> Result<Outcome, BookError> {
        let before: ClimbPlan = self.record(Noun::ClimbPlan, plan)?;
        let after = ClimbPlan {
            limbs: Vec::new(),
            ..before.clone()
        };
        self.change(Noun::ClimbPlan, plan, &before, &after)
    }
}
