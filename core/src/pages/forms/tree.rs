//! What is asked of a tree.

use crate::pages::ask::{Ask, AskKind};
use crate::record::{NumberField, Quantity};

pub(super) const ADD: &[Ask] = &[
    Ask::needed("tree.tag", "tag", AskKind::Text(40)),
    Ask::of("tree.species", "species", AskKind::Text(120)),
    Ask::of("tree.position", "position", AskKind::Fix),
    Ask::of("tree.way", "way", AskKind::Choice("way-of-working")),
];

pub(super) const CHANGE: &[Ask] = &[
    Ask::needed("tree.tag", "tag", AskKind::Text(40)),
    Ask::of("tree.species", "species", AskKind::Text(120)),
    Ask::of("tree.position", "position", AskKind::Fix),
    Ask::of("tree.way", "way", AskKind::Choice("way-of-working")),
    Ask::of(
        "tree.other_access",
        "other_access",
        AskKind::Choices("other-access"),
    ),
    Ask::of("tree.walk_order", "walk_order", AskKind::Whole(&WALK_ORDER)),
    Ask::of("tree.note", "note", AskKind::Text(4000)),
];

/// Place in the walk.
const WALK_ORDER: NumberField = NumberField {
    id: "tree.walk_order",
    quantity: Quantity::Count,
    min: 1.0,
    max: 99_999.0,
    step: 1.0,
};
