//! Commands on gear: checked, put out of use, brought back.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::changed_record;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Gear, Id, Noun};

impl Inner {
    /// Notes a check, today's unless another day is named: a shock load before it is looked into,
    /// and a next check that was due is past.
    pub(super) fn act_check_gear(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let today = self.clock.today();
        let entered = entered.or_else("gear.last_check", || json!(today.to_string()));
        let before: Gear = self.record(Noun::Gear, id)?;
        let mut after: Gear = changed_record(&before, &entered)?;
        after.shock_loaded = None;
        after.next_check = after.next_check.filter(|next| *next > today);
        self.change(Noun::Gear, id, &before, &after)
    }

    /// Brings a piece back into use. What else bars it still does: a check that is due, a shock
    /// load.
    pub(super) fn act_bring_gear_back(&mut self, id: &Id) -> Result<Outcome, BookError> {
        let before: Gear = self.record(Noun::Gear, id)?;
        let after = Gear {
            out_of_use: None,
            ..before.clone()
        };
        self.change(Noun::Gear, id, &before, &after)
    }
}
