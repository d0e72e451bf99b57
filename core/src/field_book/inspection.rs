//! Commands on inspections: begin one, record measures, look at parts, measure wires.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use crate::error::BookError;
use crate::measure::Measured;
use crate::measure::height::by_tangent;
use crate::record::{
    Fault, Height, HeightMethod, Id, Inspection, Look, Noun, PartLook, WireDistance,
};

/// Standard error of a distance that was paced or taped on the ground, as a share (house).
const SIGHT_DISTANCE_CV: f64 = 0.02;
/// Standard error of an angle that a phone gave, in degrees (house).
const SIGHT_ANGLE_SE_DEG: f64 = 0.5;

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

    /// Height by the tangent method, with its standard error.
    pub(super) fn act_height_by_angles(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let number = |input| entered.number(input).unwrap_or(f64::NAN);
        let distance = number("height.distance");
        let angle = |input| Measured::new(number(input), SIGHT_ANGLE_SE_DEG);
        let height = by_tangent(
            Measured::new(distance, distance * SIGHT_DISTANCE_CV),
            angle("height.up"),
            angle("height.down"),
        )
        .map_err(|fault| BookError::refused(at_input(fault)))?;
        if !crate::record::HEIGHT_M.allows(height.value) {
            let words = self.settings.words();
            let found = words.number(height.value, crate::record::Quantity::LengthM);
            let allowed = words.range_of(&crate::record::HEIGHT_M);
            let fault = Fault::new("fault.out-of-range", "height.up", found, allowed);
            return Err(BookError::refused(fault));
        }
        let before: Inspection = self.record(Noun::Inspection, id)?;
        let after = Inspection {
            height: Some(Height {
                height_m: height.value,
                se_m: Some(height.se),
                method: Some(HeightMethod::Tangent),
            }),
            ..before.clone()
        };
        self.change(Noun::Inspection, id, &before, &after)
    }

    /// How a part was seen; a later look replaces an earlier one of the same inspection.
    pub(super) fn act_look_at_part(
        &mut self,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let mut look: PartLook = new_record(&entered.whole()?)?;
        if look.look == Look::Seen {
            look.hidden_by = None;
        }
        let inspection: Inspection = self.record(Noun::Inspection, id)?;
        let known = inspection
            .walk_round
            .into_iter()
            .find(|known| known.part == look.part);
        match known {
            Some(before) => {
                look.id = before.id.clone();
                self.change(Noun::PartLook, &look.id.clone(), &before, &look)
            }
            None => self.make(Noun::PartLook, Some(id), &look),
        }
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

/// The fault of a reading at the input that took it.
fn at_input(fault: Fault) -> Fault {
    let place = match fault.place.as_str() {
        "height.distance_m" => "height.distance",
        "height.down_deg" => "height.down",
        _ => "height.up",
    };
    Fault {
        place: place.to_owned(),
        ..fault
    }
}
