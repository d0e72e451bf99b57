//! What is asked of the book itself: this phone's settings.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::TEXT_SIZE_PCT;

pub(super) const SETTINGS: &[Ask] = &[
    Ask::of("settings.language", "language", AskKind::Choice("language")),
    Ask::of("settings.units", "units", AskKind::Choice("unit-system")),
    Ask::of("settings.theme", "theme", AskKind::Choice("theme")),
    Ask::of(
        "settings.text_size",
        "text_size_pct",
        AskKind::Number(&TEXT_SIZE_PCT),
    ),
    Ask::of("settings.left_hand", "left_hand", AskKind::YesNo),
    Ask::of("settings.person", "person", AskKind::OneOf(Listed::People)),
];
