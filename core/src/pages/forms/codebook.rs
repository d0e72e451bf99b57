//! What is asked of a code of the codebook, and of a value of the rule set.

use crate::pages::ask::{Ask, AskKind};

const STOPS_FROM: Ask = Ask::of(
    "code.stops_from",
    "stops_from_grade",
    AskKind::OneToThree("grade"),
);

pub(super) const ADD: &[Ask] = &[
    Ask::needed("code.name", "name", AskKind::Text(60)),
    Ask::needed("code.kind", "kind", AskKind::Choice("defect-kind")),
    Ask::of("code.parts", "parts", AskKind::Choices("tree-part")),
    Ask::of("code.grade_1", "grade_1", AskKind::Text(200)),
    Ask::of("code.grade_2", "grade_2", AskKind::Text(200)),
    Ask::of("code.grade_3", "grade_3", AskKind::Text(200)),
    STOPS_FROM,
];

/// Its kind is no part of it: renaming never changes what a code means for the judgement.
pub(super) const CHANGE: &[Ask] = &[
    Ask::of("code.name", "name", AskKind::Text(60)),
    Ask::of("code.parts", "parts", AskKind::Choices("tree-part")),
    Ask::of("code.grade_1", "grade_1", AskKind::Text(200)),
    Ask::of("code.grade_2", "grade_2", AskKind::Text(200)),
    Ask::of("code.grade_3", "grade_3", AskKind::Text(200)),
    STOPS_FROM,
];

pub(super) const RULE: &[Ask] = &[
    Ask::needed("house_value.value", "value", AskKind::RowValue),
    Ask::of("house_value.by", "by", AskKind::Text(200)),
    Ask::of("house_value.why", "why", AskKind::Text(400)),
];
