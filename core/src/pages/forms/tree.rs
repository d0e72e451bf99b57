//! What is asked of a tree and of the work on it.

use crate::pages::ask::{Ask, AskKind};
use crate::record::{CUT_HEIGHT_M, NumberField, PIECE_LENGTH_M, PIECE_MASS_KG, Quantity};

pub(super) const ADD: &[Ask] = &[
    Ask::needed("tree.tag", "tag", AskKind::Text(40)),
    Ask::of("tree.species", "species", AskKind::Species(120)),
    Ask::of("tree.position", "position", AskKind::Fix),
    Ask::of("tree.way", "way", AskKind::Choice("way-of-working")),
];

pub(super) const CHANGE: &[Ask] = &[
    Ask::needed("tree.tag", "tag", AskKind::Text(40)),
    Ask::of("tree.species", "species", AskKind::Species(120)),
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

pub(super) const WORK: &[Ask] = &[
    Ask::needed("work.operation", "operation", AskKind::Choice("operation")),
    Ask::of("work.priority", "priority", AskKind::Choice("priority")),
    Ask::of(
        "work.piece_length",
        "piece_length_m",
        AskKind::Number(&PIECE_LENGTH_M),
    ),
    Ask::of(
        "work.piece_mass",
        "piece_mass_kg",
        AskKind::Number(&PIECE_MASS_KG),
    ),
    Ask::of(
        "work.cut_height",
        "cut_height_m",
        AskKind::Number(&CUT_HEIGHT_M),
    ),
    Ask::of("work.chainsaw_aloft", "chainsaw_aloft", AskKind::YesNo),
    Ask::of("work.note", "note", AskKind::Text(2000)),
];
