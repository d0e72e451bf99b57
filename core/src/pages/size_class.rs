//! How large a tree is at first sight: a class each, for triage.

use super::desk::PageDesk;
use super::offer::OfferedChoice;
use crate::record::Quantity;
use crate::words::Said;

/// A class of height, as the eye tells it (house).
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SizeClass {
    /// Up to 6 m.
    Small,
    /// Up to 12 m.
    Medium,
    /// Up to 20 m.
    Large,
    /// Over 20 m.
    VeryLarge,
}

/// Ends of the classes in metres.
const ENDS_M: [f64; 3] = [6.0, 12.0, 20.0];

impl SizeClass {
    /// Every class, the smallest first.
    pub const ALL: [SizeClass; 4] = [
        SizeClass::Small,
        SizeClass::Medium,
        SizeClass::Large,
        SizeClass::VeryLarge,
    ];

    /// Its id as a choice.
    pub fn id(self) -> &'static str {
        match self {
            SizeClass::Small => "small",
            SizeClass::Medium => "medium",
            SizeClass::Large => "large",
            SizeClass::VeryLarge => "very_large",
        }
    }

    /// The class of this id.
    pub fn of_id(id: &str) -> Option<SizeClass> {
        SizeClass::ALL.into_iter().find(|class| class.id() == id)
    }

    /// The height that it is read as, with its standard error, in metres (house).
    pub fn height_m(self) -> (f64, f64) {
        match self {
            SizeClass::Small => (4.0, 1.5),
            SizeClass::Medium => (9.0, 2.0),
            SizeClass::Large => (16.0, 3.0),
            SizeClass::VeryLarge => (25.0, 5.0),
        }
    }
}

impl PageDesk<'_> {
    /// The classes, with their heights in the reader's unit.
    pub(super) fn size_classes(&self) -> Vec<OfferedChoice> {
        let [small, medium, large] = ENDS_M;
        let said = |class: SizeClass| {
            let (key, end_m) = match class {
                SizeClass::Small => ("page.size-up-to", small),
                SizeClass::Medium => ("page.size-up-to", medium),
                SizeClass::Large => ("page.size-up-to", large),
                SizeClass::VeryLarge => ("page.size-over", large),
            };
            self.words
                .say(key, &[("height", Said::Number(end_m, Quantity::LengthM))])
        };
        SizeClass::ALL
            .into_iter()
            .map(|class| OfferedChoice::of(class.id(), said(class)))
            .collect()
    }
}
