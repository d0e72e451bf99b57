//! Commands on sites.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::new_record;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Id, Noun, Site};
use crate::words::Said;

impl Inner {
    /// Makes a site; one without a name has that of the day until somebody names it.
    pub(super) fn act_add_site(&mut self, entered: Entered) -> Result<Outcome, BookError> {
        let day = [("day", Said::Day(self.clock.today()))];
        let name = self.settings.words().say("page.site-of-day", &day);
        let entered = entered.or_else("site.name", || json!(name));
        let mut site: Site = new_record(&entered.whole()?)?;
        site.rule_set.get_or_insert_with(|| Id::from("us"));
        self.make(Noun::Site, None, &site)
    }

    pub(super) fn act_change_site(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        self.change_entered::<Site>(Noun::Site, id, entered)
    }

    /// Removes a site with all that lies in it; the answers kept for it go too.
    pub(super) fn act_remove_site(&mut self, id: &Id) -> Result<Outcome, BookError> {
        let outcome = self.remove(Noun::Site, id)?;
        self.store.forget_judgements(id)?;
        self.judged_before = None;
        Ok(outcome)
    }
}
