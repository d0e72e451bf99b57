//! What is asked of a finding.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{ASPECT_RATIO, AT_HEIGHT_M, BEARING_DEG};

const GRADE_OF: AskKind = AskKind::OneToThree("grade");

pub(super) const ADD: &[Ask] = &[
    // The part narrows the codes; a code that belongs to one part says where it is.
    Ask::of("finding.part", "part", AskKind::Choice("tree-part")),
    Ask::needed("finding.code", "code", AskKind::OneOf(Listed::Codes)),
    Ask::of("finding.grade", "grade", GRADE_OF),
    Ask::of("finding.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
    Ask::of("finding.side", "side_deg", AskKind::Bearing(&BEARING_DEG)),
    Ask::of("photo.file", "", AskKind::PhotoFile),
    Ask::of("finding.note", "note", AskKind::Text(2000)),
];

pub(super) const CHANGE: &[Ask] = &[
    Ask::needed("finding.part", "part", AskKind::Choice("tree-part")),
    Ask::needed("finding.code", "code", AskKind::OneOf(Listed::Codes)),
    Ask::of("finding.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
    Ask::of("finding.side", "side_deg", AskKind::Bearing(&BEARING_DEG)),
    Ask::of("finding.anchor", "anchor", AskKind::OneOf(Listed::Anchors)),
    Ask::of(
        "finding.aspect_ratio",
        "aspect_ratio",
        AskKind::Number(&ASPECT_RATIO),
    ),
    Ask::of("finding.note", "note", AskKind::Text(2000)),
];

pub(super) const GRADE: &[Ask] = &[Ask::needed("finding.grade", "grade", GRADE_OF)];

pub(super) const CLEAR: &[Ask] = &[
    Ask::needed(
        "finding.cleared_by",
        "cleared_by",
        AskKind::OneOf(Listed::People),
    ),
    Ask::of("finding.cleared_on", "cleared_on", AskKind::OnDay),
];
