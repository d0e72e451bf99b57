//! Commands on targets.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, GroundForm, Id, Noun, Position, Target};

impl Inner {
    pub(super) fn act_add_target(
        &mut self,
        site: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let mut entered = entered.whole()?;
        if let Some(here) = here(&entered) {
            entered = entered.or_else("target.ground", || json!([here.point()]));
        }
        let points = entered
            .value("target.ground")
            .and_then(|points| points.as_array().map(Vec::len));
        let Some(points) = points.filter(|points| *points > 0) else {
            let fault = Fault::new("fault.needed", "target.ground", "", "");
            return Err(BookError::refused(fault));
        };
        let form = usual_form(points);
        let entered = entered.or_else("target.form", || json!(form));
        let target: Target = new_record(&entered)?;
        self.make(Noun::Target, Some(site), &target)
    }

    pub(super) fn act_change_target(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let before: Target = self.record(Noun::Target, id)?;
        let mut after: Target = changed_record(&before, entered)?;
        if let Some(here) = here(entered) {
            after.ground = vec![here.point()];
            after.form = GroundForm::Spot;
        }
        self.change(Noun::Target, id, &before, &after)
    }
}

/// The fix taken at the target.
fn here(entered: &Entered) -> Option<Position> {
    let fix = entered.value("target.here")?;
    serde_json::from_value(fix.clone()).ok()
}

/// How a list of so many points is meant where nobody says.
pub(super) fn usual_form(points: usize) -> GroundForm {
    match points {
        0 | 1 => GroundForm::Spot,
        2 => GroundForm::Way,
        _ => GroundForm::Area,
    }
}
