//! Commands on permissions: an answer is dated.

use serde_json::{Value, json};

use super::act::Outcome;
use super::entries::Entered;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Id, Noun, Permission};

impl Inner {
    pub(super) fn act_add_permission(
        &mut self,
        site: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = self.dated_answer(entered);
        self.make_entered::<Permission>(Noun::Permission, Some(site), entered)
    }

    pub(super) fn act_change_permission(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = self.dated_answer(entered);
        self.change_entered::<Permission>(Noun::Permission, id, &entered)
    }

    /// An answer entered without its day is today's.
    fn dated_answer(&self, entered: Entered) -> Entered {
        let today = self.clock.today();
        match entered.value("permission.answer") {
            None | Some(Value::Null) => entered,
            Some(_) => entered.or_else("permission.on", || json!(today.to_string())),
        }
    }
}
