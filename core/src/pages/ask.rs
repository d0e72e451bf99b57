//! What a command asks: the input's id, the field it goes to, and its rule.

use crate::record::NumberField;

/// One input of a command.
#[derive(Debug, Clone, Copy)]
pub struct Ask {
    /// Stable id, such as `tree.girth`; its label is the catalogue entry `input.<id>`.
    pub id: &'static str,
    /// Where the value goes in the record: a field or a field of a part (`girth.girth_cm`). Empty
    /// where the command itself does something with it.
    pub field: &'static str,
    /// What is asked.
    pub kind: AskKind,
    /// Whether the command needs it.
    pub needed: bool,
    /// Whether its part of the record stands and falls with it: without a girth there is no method
    /// of a girth.
    pub heads: bool,
}

/// What is asked for an input.
#[derive(Debug, Clone, Copy)]
pub enum AskKind {
    /// A number.
    Number(&'static NumberField),
    /// A whole number.
    Whole(&'static NumberField),
    /// A number whose unit and range are those of the row of a rule set that it is for.
    RowValue,
    /// 1 to 3, by the first part of its catalogue entries: `grade`, `risk-level`.
    OneToThree(&'static str),
    /// One choice of an enum of the record, by the first part of its catalogue entries.
    Choice(&'static str),
    /// Several choices of an enum of the record.
    Choices(&'static str),
    /// A text of at most so many letters.
    Text(u32),
    /// A species, looked for by typing; what is not in the table is kept as typed, of at most so
    /// many letters.
    Species(u32),
    /// How large a tree is at first sight.
    SizeClass,
    /// Yes or no.
    YesNo,
    /// A bearing, sensed or typed.
    Bearing(&'static NumberField),
    /// An angle, sensed or typed.
    Angle(&'static NumberField),
    /// A position.
    Fix,
    /// A photo by its path.
    PhotoFile,
    /// Points on the ground, at least so many.
    Outline(u32),
    /// A day.
    OnDay,
    /// One of the records at hand.
    OneOf(Listed),
    /// Several of the records at hand.
    SomeOf(Listed),
}

/// Records that can be chosen from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Listed {
    /// The crew.
    People,
    /// The codes of the codebook that are not retired.
    Codes,
    /// What bars climbing as soon as it is seen.
    StopsOnSight,
    /// The overhead lines of the site.
    Lines,
    /// The targets of the site.
    Targets,
    /// The trees of the site.
    Trees,
    /// The anchors of the inspection.
    Anchors,
    /// The findings of the inspection.
    Findings,
    /// The rule sets that ship.
    RuleSets,
}

impl Ask {
    /// An input that may be left out.
    pub(super) const fn of(id: &'static str, field: &'static str, kind: AskKind) -> Ask {
        Ask {
            id,
            field,
            kind,
            needed: false,
            heads: false,
        }
    }

    /// An input that the command needs.
    pub(super) const fn needed(id: &'static str, field: &'static str, kind: AskKind) -> Ask {
        Ask {
            needed: true,
            ..Ask::of(id, field, kind)
        }
    }

    /// An input that its part of the record stands and falls with.
    pub(super) const fn head(id: &'static str, field: &'static str, kind: AskKind) -> Ask {
        Ask {
            heads: true,
            ..Ask::of(id, field, kind)
        }
    }

    /// The catalogue entry of its label.
    pub fn label_key(&self) -> String {
        format!("input.{}", self.id)
    }

    /// The catalogue entry that says why it is asked.
    pub fn why_key(&self) -> String {
        match self.kind {
            AskKind::Number(field)
            | AskKind::Whole(field)
            | AskKind::Bearing(field)
            | AskKind::Angle(field) => format!("{}.why", field.id),
            _ => format!("{}.why", self.id),
        }
    }
}
