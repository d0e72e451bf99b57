//! Commands on findings.

use serde_json::json;

use super::act::Outcome;
use super::at_tree::{add_photo, with_part};
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::judge::codebook::Codebook;
use crate::record::{Fault, Finding, Id, Noun};

impl Inner {
    pub(super) fn act_add_finding(
        &mut self,
        inspection: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let book = Codebook::with(&self.store.read().load_book()?.codebook);
        let entered = with_part(entered.whole()?, &book);
        let finding: Finding = new_record(&entered)?;
        self.refuse_odd(&finding)?;
        // The file is taken in only for an inspection that is there.
        self.holder(Noun::Inspection, inspection)?;
        let photo = self.taken_photo(&entered)?;
        let json = serde_json::to_value(&finding).map_err(defect)?;
        let mut record = Id::default();
        let done = self.edit(|edit| {
            record = edit.create(Noun::Finding, Some(inspection), json)?;
            add_photo(edit, inspection, photo, &record)
        })?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }

    pub(super) fn act_change_finding(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: Finding = self.record(Noun::Finding, id)?;
        let after: Finding = changed_record(&before, entered)?;
        self.refuse_odd(&after)?;
        self.change(Noun::Finding, id, &before, &after)
    }

    pub(super) fn act_clear_finding(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let today = self.clock.today().to_string();
        let entered = entered
            .whole()?
            .or_else("finding.cleared_on", || json!(today));
        self.act_change_finding(id, &entered)
    }

    /// A code that the codebook lacks, or a grade that its code has no sentence for.
    pub(super) fn refuse_odd(&self, finding: &Finding) -> Result<(), BookError> {
        let codebook = Codebook::with(&self.store.read().load_book()?.codebook);
        if codebook.code(&finding.code).is_none() {
            let fault = Fault::new("fault.not-a-choice", "finding.code", &finding.code, "");
            return Err(BookError::refused(fault));
        }
        if let Some(grade) = finding.grade
            && codebook.sentence(&finding.code, grade).is_none()
        {
            let fault = Fault::new("fault.grade-without-sentence", "finding.grade", grade, "");
            return Err(BookError::refused(fault));
        }
        Ok(())
    }
}
