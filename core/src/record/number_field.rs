//! The range, unit and step of a number, beside the field and only there: it serves the schema of
//! the site file, the check of what is entered and the inputs that a page offers.

use schemars::{Schema, transform::Transform};

use super::quantity::Quantity;

/// The rule of one number field.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NumberField {
    /// Stable id, `noun.field_unit`; the reason it is asked is the catalogue entry `<id>.why`.
    pub id: &'static str,
    /// What is measured, which fixes the unit of `min`, `max` and `step`.
    pub quantity: Quantity,
    /// The smallest value that can be meant.
    pub min: f64,
    /// The largest value that can be meant.
    pub max: f64,
    /// The step of a dial or a button.
    pub step: f64,
}

impl NumberField {
    /// Whether `value` is a number within the range, ends included.
    pub fn allows(&self, value: f64) -> bool {
        value.is_finite() && value >= self.min && value <= self.max
    }

    /// The transform that writes the range and the unit into a JSON schema.
    pub fn rule(&'static self) -> NumberRule {
        NumberRule(self)
    }
}

/// Writes a [`NumberField`] into the schema of its field.
#[derive(Debug, Clone, Copy)]
pub struct NumberRule(&'static NumberField);

impl Transform for NumberRule {
    fn transform(&mut self, schema: &mut Schema) {
        schema.insert("minimum".into(), self.0.min.into());
        schema.insert("maximum".into(), self.0.max.into());
        schema.insert("x-unit".into(), self.0.quantity.unit_symbol().into());
        schema.insert("x-step".into(), self.0.step.into());
    }
}
