//! Commands on inspections: begin one, record measures, look at parts, measure wires.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Height, Id, Inspection, Noun, PartLook, WireDistance};

impl Inner {
    /// Begins an inspection; the visit of the day is begun with it where there is none.
    pub(super) fn act_start_inspection(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let site = self.holder(Noun::Tree, tree)?;
        let visit = self.visit_today(&site)?;
        let today = self.clock.today();
        let mut inspection: Inspection = new_record(&entered)?;
        inspection.at = Some(self.clock.now());
        inspection.by = self.settings.person.clone();
        let mut record = Id::default();
        let done = self.edit(|edit| {
            inspection.visit = Inner::visit_for_edit(edit, &site, visit.as_ref(), today)?;
            let json = serde_json::to_value(&inspection).map_err(defect)?;
            record = edit.create(Noun::Inspection, Some(tree), json)?;
            Ok(())
        })?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }

    pub(super) fn act_record_measures(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: Inspection = self.record(Noun::Inspection, id)?;
        let mut after: Inspection = changed_record(&before, entered)?;
        // A measure taken anew does not keep the error of the one before.
        if entered.value("tree.height").is_some() && entered.value("tree.height_se").is_none() {
            after.height = after.height.map(|height| Height {
                se_m: None,
                ..height
            });
        }
        self.change(Noun::Inspection, id, &before, &after)
    }

    /// How a part was seen; a later look replaces an earlier one of the same inspection.
    pub(super) fn act_look_at_part(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let look: PartLook = new_record(&entered.whole()?)?;
        let inspection: Inspection = self.record(Noun::Inspection, id)?;
        self.note_look(&inspection, look)
    }

    /// The distance to a conductor; a later one replaces an earlier one of the same inspection.
    pub(super) fn act_measure_wire(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let new: WireDistance = new_record(&entered)?;
        let inspection: Inspection = self.record(Noun::Inspection, id)?;
        match inspection.wires.into_iter().find(|at| at.line == new.line) {
            Some(before) => {
                let id = before.id.clone();
                let after: WireDistance = changed_record(&before, &entered)?;
                let done =
                    self.edit(|edit| set_changed(edit, Noun::WireDistance, &id, &before, &after))?;
                Ok(Outcome {
                    record: id,
                    changes: done.changes,
                })
            }
            None => {
                let json = json!(new);
                self.make(Noun::WireDistance, Some(id), &json)
            }
        }
    }
}
