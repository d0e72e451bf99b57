//! Commands on sites.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Id, Noun, Site};

impl Inner {
    pub(super) fn act_add_site(&mut self, entered: Entered) -> Result<Outcome, BookError> {
        let mut site: Site = new_record(&entered.whole()?)?;
        site.rule_set.get_or_insert_with(|| Id::from("us"));
        self.add_site(&site)
    }

    pub(super) fn act_change_site(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let before: Site = self.store.read().record_as(Noun::Site, id)?;
        let after = changed_record(&before, &entered)?;
        self.change(Noun::Site, id, &before, &after)
    }

    /// Makes a site with all that lies in it.
    pub(super) fn add_site(&mut self, site: &Site) -> Result<Outcome, BookError> {
        let json = serde_json::to_value(site).map_err(defect)?;
        let mut record = Id::default();
        let done = self.edit(|edit| {
            record = edit.create(Noun::Site, None, json)?;
            Ok(())
        })?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }
}
