//! Measures worked out from what was aimed at, paced and seen: the same for the page that shows
//! them while they are taken and for the command that records them.

use super::act::Outcome;
use super::entries::Entered;
use super::fill::changed_record;
use super::inner::Inner;
use crate::error::BookError;
use crate::judge::rules::{Rule, RuleSet};
use crate::measure::Measured;
use crate::measure::height::{by_tangent, by_two_positions_to_base};
use crate::measure::lean::from_two_sides;
use crate::pages::CommandKind;
use crate::record::{
    Fault, Girth, HEIGHT_M, Height, HeightMethod, Id, Inspection, LEAN_DEG, Lean, LeanMethod, Noun,
    NumberField, SE_M,
};
use crate::words::Words;

/// What was measured; nothing of what was not.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Taken {
    pub(super) height: Option<Height>,
    pub(super) lean: Option<Lean>,
    pub(super) girth: Option<Girth>,
}

/// Reads measures out of entries by the rule set, faults in the reader's words.
pub(super) struct Measuring<'a> {
    pub(super) rules: &'a RuleSet,
    pub(super) words: Words,
}

impl Inner {
    /// Records the measure that a command takes.
    pub(super) fn act_take_measure(
        &mut self,
        command: CommandKind,
        id: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let rules = self.rules_around(id)?;
        let measuring = Measuring {
            rules: &rules,
            words: self.settings.words(),
        };
        let taken = measuring
            .taken(command, &entered)
            .map_err(BookError::refused)?;
        let before: Inspection = self.record(Noun::Inspection, id)?;
        let mut after: Inspection = changed_record(&before, &entered)?;
        after.height = taken.height.or(after.height);
        after.lean = taken.lean.or(after.lean);
        self.change(Noun::Inspection, id, &before, &after)
    }
}

impl Measuring<'_> {
    /// What a measuring command takes.
    ///
    /// # Errors
    /// A fault at the input of the reading that does not fit.
    pub(super) fn taken(&self, command: CommandKind, entered: &Entered) -> Result<Taken, Fault> {
        let mut taken = Taken::default();
        match command {
            CommandKind::RecordHeightByAngles => {
                taken.height = Some(self.height_by_angles(entered)?);
            }
            CommandKind::RecordHeightFromTwoPositions => {
                taken.height = Some(self.height_from_two_positions(entered)?);
            }
            CommandKind::RecordLeanFromTwoSides => taken.lean = Some(self.lean_two_sides(entered)?),
            CommandKind::RecordLeanByEye => {
                let lean = self.lean_by_eye(entered);
                taken.lean =
                    Some(lean.ok_or_else(|| Fault::new("fault.needed", "tree.lean", "", ""))?);
            }
            CommandKind::RecordGirth => taken.girth = girth(entered),
            CommandKind::RecordFullCheck => {
                let sight = ["height.distance", "height.up", "height.down"];
                if sight.iter().any(|input| entered.number(input).is_some()) {
                    if let Some(open) = sight.iter().find(|input| entered.number(input).is_none()) {
                        return Err(Fault::new("fault.needed", *open, "", ""));
                    }
                    taken.height = Some(self.height_by_angles(entered)?);
                }
                taken.lean = self.lean_by_eye(entered);
                taken.girth = girth(entered);
            }
            _ => {}
        }
        Ok(taken)
    }

    /// Height by the tangent method.
    pub(super) fn height_by_angles(&self, entered: &Entered) -> Result<Height, Fault> {
        let height = by_tangent(
            self.distance("height.distance", entered),
            self.angle("height.up", entered),
            self.angle("height.down", entered),
        );
        self.as_height(height, "height.up", HeightMethod::Tangent)
    }

    fn height_from_two_positions(&self, entered: &Entered) -> Result<Height, Fault> {
        let height = by_two_positions_to_base(
            self.distance("height.apart", entered),
            self.angle("height.near", entered),
            self.angle("height.far", entered),
            self.angle("height.down", entered),
        );
        self.as_height(height, "height.near", HeightMethod::TwoPositions)
    }

    fn lean_two_sides(&self, entered: &Entered) -> Result<Lean, Fault> {
        let se_deg = self.rules.number(Rule::MeasureLeanTwoSidesDeg);
        let seen = |input| Measured::new(number(entered, input), se_deg);
        let toward = number(entered, "lean.along_toward");
        let read =
            from_two_sides(seen("lean.along"), seen("lean.across"), toward).map_err(at_input)?;
        let lean_deg = read.lean_deg.value;
        if !LEAN_DEG.allows(lean_deg) {
            return Err(self.out_of_range("lean.along", lean_deg, &LEAN_DEG));
        }
        Ok(Lean {
            lean_deg,
            toward_deg: read.toward_deg.map(|toward| toward.value),
            se_deg: Some(read.lean_deg.se),
            method: Some(LeanMethod::TwoSides),
        })
    }

    /// Lean by eye; nothing where nobody said.
    pub(super) fn lean_by_eye(&self, entered: &Entered) -> Option<Lean> {
        let upright = entered.truth("lean.upright") == Some(true);
        let lean_deg = entered.number("tree.lean").or(upright.then_some(0.0))?;
        Some(Lean {
            lean_deg,
            toward_deg: entered.number("tree.lean_toward"),
            se_deg: Some(self.rules.number(Rule::MeasureLeanByEyeDeg)),
            method: Some(LeanMethod::ByEye),
        })
    }

    /// A distance on the ground with its error by how it was taken; the larger where nobody said.
    fn distance(&self, input: &str, entered: &Entered) -> Measured {
        let rule = match entered.text("height.distance_by") {
            Some("tape") => Rule::MeasureSightTapeCv,
            _ => Rule::MeasureSightPacesCv,
        };
        let distance_m = number(entered, input);
        Measured::new(distance_m, distance_m * self.rules.number(rule))
    }

    fn angle(&self, input: &str, entered: &Entered) -> Measured {
        let se_deg = self.rules.number(Rule::MeasureSightAngleDeg);
        Measured::new(number(entered, input), se_deg)
    }

    fn as_height(
        &self,
        height: Result<Measured, Fault>,
        input: &str,
        method: HeightMethod,
    ) -> Result<Height, Fault> {
        let height = height.map_err(at_input)?;
        if !HEIGHT_M.allows(height.value) {
            return Err(self.out_of_range(input, height.value, &HEIGHT_M));
        }
        Ok(Height {
            height_m: height.value,
            se_m: Some(height.se.min(SE_M.max)),
            method: Some(method),
        })
    }

    fn out_of_range(&self, input: &str, value: f64, field: &NumberField) -> Fault {
        let found = self.words.number(value, field.quantity);
        Fault::new(
            "fault.comes-out-of-range",
            input,
            found,
            self.words.range_of(field),
        )
    }
}

fn girth(entered: &Entered) -> Option<Girth> {
    let value = entered.values_of_part("girth")?;
    serde_json::from_value(value).ok()
}

fn number(entered: &Entered, input: &str) -> f64 {
    entered.number(input).unwrap_or(f64::NAN)
}

/// The fault of a reading at the input that took it.
fn at_input(fault: Fault) -> Fault {
    let place = fault.place.trim_end_matches("_deg").trim_end_matches("_m");
    Fault {
        place: place.to_owned(),
        ..fault
    }
}
