//! Commands on trees.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, new_record};
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
        self.refuse_tag_twice(site, &tree.tag, None)?;
        self.make(Noun::Tree, Some(site), &tree)
    }

    pub(super) fn act_change_tree(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: Tree = self.record(Noun::Tree, id)?;
        let after: Tree = changed_record(&before, entered)?;
        if after.tag != before.tag {
            let site = self.holder(Noun::Tree, id)?;
            self.refuse_tag_twice(&site, &after.tag, Some(id))?;
        }
        self.change(Noun::Tree, id, &before, &after)
    }

    /// A tag is a tree's own on its site.
    fn refuse_tag_twice(
        &mut self,
        site: &Id,
        tag: &str,
        own: Option<&Id>,
    ) -> Result<(), BookError> {
        let judged = self.judged(site)?;
        let mut others = judged
            .loaded
            .file
            .site
            .trees
            .iter()
            .filter(|tree| Some(&tree.id) != own);
        if others.any(|tree| tree.tag == tag) {
            let fault = Fault::new("fault.tag-twice", "tree.tag", tag, "");
            return Err(BookError::refused(fault));
        }
        Ok(())
    }
}
