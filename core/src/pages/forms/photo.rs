//! What is asked of a photo and of a risk rating.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::TIME_FRAME_MONTHS;

pub(super) const ADD: &[Ask] = &[
    Ask::needed("photo.file", "", AskKind::PhotoFile),
    Ask::of("photo.caption", "caption", AskKind::Text(400)),
    Ask::of("photo.finding", "finding", AskKind::OneOf(Listed::Findings)),
];

pub(super) const CHANGE: &[Ask] = &[
    Ask::of("photo.caption", "caption", AskKind::Text(400)),
    Ask::of("photo.finding", "finding", AskKind::OneOf(Listed::Findings)),
];

pub(super) const RISK: &[Ask] = &[
    Ask::needed("risk.target", "target", AskKind::OneOf(Listed::Targets)),
    Ask::of("risk.part", "part", AskKind::Text(200)),
    Ask::needed("risk.assessor", "assessor", AskKind::Text(200)),
    Ask::needed("risk.level", "level", AskKind::OneToThree("risk-level")),
    Ask::needed(
        "risk.time_frame",
        "time_frame_months",
        AskKind::Number(&TIME_FRAME_MONTHS),
    ),
    Ask::needed(
        "risk.failure",
        "failure",
        AskKind::Choice("failure-likelihood"),
    ),
    Ask::needed(
        "risk.impact",
        "impact",
        AskKind::Choice("impact-likelihood"),
    ),
    Ask::needed(
        "risk.consequences",
        "consequences",
        AskKind::Choice("consequences"),
    ),
];
