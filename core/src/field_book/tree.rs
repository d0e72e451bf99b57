//! Commands on trees.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun, Tree};

impl Inner {
    pub(super) fn act_add_tree(
        &mut self,
        site: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let tree: Tree = new_record(&entered.whole()?)?;
        self.add_tree(site, &tree)
    }

    pub(super) fn act_change_tree(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let before: Tree = self.store.read().record_as(Noun::Tree, id)?;
        let after: Tree = changed_record(&before, &entered)?;
        if after.tag != before.tag {
            let site = self.holder(Noun::Tree, id)?;
            self.refuse_tag_twice(&site, &after.tag, Some(id))?;
        }
        self.change(Noun::Tree, id, &before, &after)
    }

    /// Makes a tree at the end of a site's list; its tag must be its own on the site.
    pub(super) fn add_tree(&mut self, site: &Id, tree: &Tree) -> Result<Outcome, BookError> {
        self.refuse_tag_twice(site, &tree.tag, None)?;
        let json = serde_json::to_value(tree).map_err(defect)?;
        let mut record = Id::default();
        let done = self.edit(|edit| {
            record = edit.create(Noun::Tree, Some(site), json)?;
            Ok(())
        })?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }

    pub(super) fn refuse_tag_twice(
        &self,
        site: &Id,
        tag: &str,
        own: Option<&Id>,
    ) -> Result<(), BookError> {
        let site: crate::record::Site = self.store.read().record_as(Noun::Site, site)?;
        let taken = site
            .trees
            .iter()
            .any(|tree| tree.tag == tag && Some(&tree.id) != own);
        if taken {
            return Err(BookError::refused(Fault::new(
                "fault.tag-twice",
                "tree.tag",
                tag,
                "",
            )));
        }
        Ok(())
    }
}
