//! What is asked of an anchor and of a climb plan.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{
    ANCHOR_DIAMETER_CM, AT_HEIGHT_M, BEARING_DEG, FROM_UNION_CM, LIMB_ANGLE_DEG, LIMB_LENGTH_M,
    SE_M, TEST_MASS_KG,
};

pub(super) const ANCHOR: &[Ask] = &[
    Ask::of("anchor.name", "name", AskKind::Text(60)),
    Ask::of("anchor.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
    Ask::of(
        "anchor.diameter",
        "diameter_cm",
        AskKind::Number(&ANCHOR_DIAMETER_CM),
    ),
    Ask::of(
        "anchor.diameter_read",
        "diameter_read",
        AskKind::Choice("diameter-read"),
    ),
    Ask::of(
        "anchor.parent_diameter",
        "parent_diameter_cm",
        AskKind::Number(&ANCHOR_DIAMETER_CM),
    ),
    Ask::of(
        "anchor.from_union",
        "from_union_cm",
        AskKind::Number(&FROM_UNION_CM),
    ),
    Ask::of(
        "anchor.limb_angle",
        "limb_angle_deg",
        AskKind::Angle(&LIMB_ANGLE_DEG),
    ),
    Ask::of(
        "anchor.limb_bearing",
        "limb_bearing_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::of(
        "anchor.limb_length",
        "limb_length_m",
        AskKind::Number(&LIMB_LENGTH_M),
    ),
    Ask::of("anchor.union", "union", AskKind::Choice("union-form")),
    Ask::of("anchor.state", "state", AskKind::Choice("anchor-state")),
    Ask::of("anchor.note", "note", AskKind::Text(2000)),
    Ask::of("anchor.height_se", "height_se_m", AskKind::Number(&SE_M)),
];

pub(super) const TEST: &[Ask] = &[
    Ask {
        needed: true,
        ..Ask::head(
            "load_test.outcome",
            "load_test.outcome",
            AskKind::Choice("load-test-outcome"),
        )
    },
    Ask::of(
        "load_test.mass",
        "load_test.mass_kg",
        AskKind::Number(&TEST_MASS_KG),
    ),
    Ask::of("load_test.on", "load_test.on", AskKind::OnDay),
    Ask::of(
        "load_test.by",
        "load_test.by",
        AskKind::OneOf(Listed::People),
    ),
];

pub(super) const PLAN: &[Ask] = &[
    Ask::needed("climb.anchor", "anchor", AskKind::OneOf(Listed::Anchors)),
    Ask::needed("climb.system", "system", AskKind::Choice("rope-system")),
    Ask::of(
        "climb.ascent_side",
        "ascent_side_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::of("climb.climber", "climber", AskKind::OneOf(Listed::People)),
    Ask::of("climb.second", "second", AskKind::OneOf(Listed::People)),
    Ask::of("climb.spurs", "spurs", AskKind::YesNo),
    Ask::of("climb.open_system", "open_system", AskKind::YesNo),
    Ask::of("climb.stopper", "stopper", AskKind::YesNo),
];

pub(super) const LIMB: &[Ask] = &[
    Ask::needed(
        "limb.bearing",
        "bearing_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::of("limb.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
];
