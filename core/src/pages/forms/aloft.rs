//! What is asked aloft and afterwards.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{ANCHOR_DIAMETER_CM, AT_HEIGHT_M, BEARING_DEG};

/// An anchor that is known, or a new one by its height, diameter and side.
pub(super) const LAND: &[Ask] = &[
    Ask::of("climb.anchor", "", AskKind::OneOf(Listed::Anchors)),
    Ask::of("anchor.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
    Ask::of(
        "anchor.diameter",
        "diameter_cm",
        AskKind::Number(&ANCHOR_DIAMETER_CM),
    ),
    Ask::of(
        "anchor.limb_bearing",
        "limb_bearing_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
];

pub(super) const NEAR_MISS: &[Ask] = &[Ask::needed("near_miss.what", "what", AskKind::Text(2000))];

pub(super) const SHOCK: &[Ask] = &[Ask::of("gear.out_of_use", "", AskKind::Text(400))];

pub(super) const LEAVE: &[Ask] = &[
    Ask::needed("work.done", "", AskKind::Choice("work-done")),
    Ask::of("work.why", "", AskKind::Choice("undone-because")),
    Ask::of("work.left", "", AskKind::Text(1000)),
];

pub(super) const NEXT_LOOK: &[Ask] = &[Ask::needed(
    "inspection.next_look",
    "next_look",
    AskKind::OnDay,
)];
