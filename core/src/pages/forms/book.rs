//! What is asked of the book itself: this phone's settings.

use crate::pages::ask::{Ask, AskKind, Listed};

pub(super) const SETTINGS: &[Ask] = &[
    Ask::of("settings.units", "units", AskKind::Choice("unit-system")),
    Ask::of("settings.person", "person", AskKind::OneOf(Listed::People)),
];
