//! Commands on permissions: an answer is dated.

use serde_json::{Value, json};

use super::act::Outcome;
use super::entries::Entered;
use super::inner::Inner;
use crate::error::BookError;
use crate::pages::tree_of_tag;
use crate::record::{Fault, Id, Noun, Permission};

/// The input that names the tree of a permission.
const TREE: &str = "permission.tree";

impl Inner {
    pub(super) fn act_add_permission(
        &mut self,
        site: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = self.tree_by_tag(site, self.dated_answer(entered))?;
        self.make_entered::<Permission>(Noun::Permission, Some(site), entered)
    }

    pub(super) fn act_change_permission(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let site = self.site_of(Noun::Permission, id)?;
        let entered = self.tree_by_tag(&site, self.dated_answer(entered))?;
        self.change_entered::<Permission>(Noun::Permission, id, &entered)
    }

    /// The tree of a permission, where it was named by its tag.
    fn tree_by_tag(&self, site: &Id, entered: Entered) -> Result<Entered, BookError> {
        let Some(named) = entered.text(TREE) else {
            return Ok(entered);
        };
        let reader = self.store.read();
        if reader.whereabouts(Noun::Tree, &Id::from(named))?.is_some() {
            return Ok(entered);
        }
        match tree_of_tag(&reader.load_site(site)?.file.site, named) {
            Some(tree) => Ok(entered.with(TREE, json!(tree))),
            None => Err(BookError::refused(Fault::new(
                "fault.not-a-choice",
                TREE,
                named,
                "",
            ))),
        }
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
