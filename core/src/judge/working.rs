//! The working, line by line: what a person with a calculator needs to redo a printed number.

use super::rules::RuleLabel;
use super::wood::WoodValue;
use crate::record::{Arg, ArgValue, Id, Quantity, WorkingLine};

/// The source of a value of the wood, with how sure it is.
pub(crate) fn source_of(wood: &WoodValue) -> String {
    let how_sure = match wood.label {
        RuleLabel::Confirmed => "",
        RuleLabel::SecondHand => " (second-hand)",
        RuleLabel::Memory => " (from memory)",
        RuleLabel::CommonPractice => " (common practice, no source)",
        RuleLabel::House => " (house value)",
    };
    format!("{}{how_sure}", wood.source)
}

/// The lines so far.
#[derive(Debug, Clone, Default)]
pub(crate) struct Working {
    lines: Vec<WorkingLine>,
}

/// A line that is being written.
pub(crate) struct Line<'a> {
    line: &'a mut WorkingLine,
}

impl Working {
    /// Begins a line: what, by which formula, with which result.
    pub(crate) fn line(
        &mut self,
        what: &str,
        formula: &str,
        value: f64,
        quantity: Quantity,
    ) -> Line<'_> {
        self.lines.push(WorkingLine {
            what: what.to_owned(),
            about: Id::default(),
            formula: formula.to_owned(),
            inputs: Vec::new(),
            value,
            quantity,
            se: None,
            source: String::new(),
        });
        let last = self.lines.len() - 1;
        Line {
            #[allow(clippy::indexing_slicing)] // pushed just above
            line: &mut self.lines[last],
        }
    }

    /// Every line.
    pub(crate) fn into_lines(self) -> Vec<WorkingLine> {
        self.lines
    }
}

impl Line<'_> {
    /// The record it belongs to.
    pub(crate) fn about(self, id: &Id) -> Self {
        self.line.about = id.clone();
        self
    }

    /// One input with its value.
    pub(crate) fn input(self, name: &str, value: f64, quantity: Quantity) -> Self {
        self.line.inputs.push(Arg {
            name: name.to_owned(),
            value: ArgValue::Number { value, quantity },
        });
        self
    }

    /// Standard error or spread of the result.
    pub(crate) fn spread(self, se: f64) -> Self {
        self.line.se = Some(se);
        self
    }

    /// The published source, or that it is a house value.
    pub(crate) fn source(self, source: &str) {
        self.line.source = source.to_owned();
    }
}
