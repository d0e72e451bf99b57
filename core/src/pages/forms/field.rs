//! What is asked at a tree in few taps: stop on sight, triage, full check, same day again.

use super::measuring::{DISTANCE, DISTANCE_BY, DOWN, UP, UPRIGHT};
use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{BEARING_DEG, CROWN_BASE_M, CROWN_RADIUS_M, GIRTH_CM, LEAN_DEG, SLOPE_PCT};

const PHOTO: Ask = Ask::of("photo.file", "", AskKind::PhotoFile);
const LIFE: Ask = Ask::of("tree.life", "life", AskKind::Choice("life-state"));
const WIRES_NEAR: Ask = Ask::of("tree.wires_near", "wires_near", AskKind::YesNo);
const MALLET: AskKind = AskKind::Choice("mallet-sound");

pub(super) const STOP_ON_SIGHT: &[Ask] = &[
    Ask::needed("on_sight.what", "", AskKind::OneOf(Listed::StopsOnSight)),
    PHOTO,
    Ask::of("finding.note", "", AskKind::Text(2000)),
];

pub(super) const TRIAGE: &[Ask] = &[
    Ask::of("tree.species", "", AskKind::Species(120)),
    Ask::of("triage.size", "", AskKind::SizeClass),
    WIRES_NEAR,
    LIFE,
    Ask::of("tree.base_sound", "base_sound", AskKind::YesNo),
    Ask::of("tree.way", "", AskKind::Choice("way-of-working")),
];

pub(super) const FULL_CHECK: &[Ask] = &[
    LIFE,
    Ask::head("tree.girth", "girth.girth_cm", AskKind::Number(&GIRTH_CM)),
    Ask::of(
        "tree.girth_method",
        "girth.method",
        AskKind::Choice("girth-method"),
    ),
    Ask {
        needed: false,
        ..DISTANCE
    },
    DISTANCE_BY,
    Ask {
        needed: false,
        ..UP
    },
    Ask {
        needed: false,
        ..DOWN
    },
    UPRIGHT,
    Ask::of("tree.lean", "", AskKind::Angle(&LEAN_DEG)),
    Ask::of("tree.lean_toward", "", AskKind::Bearing(&BEARING_DEG)),
    Ask::of("tree.lean_is_new", "lean_is_new", AskKind::YesNo),
    Ask::head(
        "tree.crown_radius",
        "crown.radius_m",
        AskKind::Number(&CROWN_RADIUS_M),
    ),
    Ask::of(
        "tree.crown_base",
        "crown.base_m",
        AskKind::Number(&CROWN_BASE_M),
    ),
    Ask::head("tree.slope", "slope.slope_pct", AskKind::Number(&SLOPE_PCT)),
    Ask::of(
        "tree.downhill",
        "slope.downhill_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::head("tree.ground_dug", "ground_dug.dug", AskKind::YesNo),
    WIRES_NEAR,
    Ask::of("tree.base_north", "base_mallet.north", MALLET),
    Ask::of("tree.base_east", "base_mallet.east", MALLET),
    Ask::of("tree.base_south", "base_mallet.south", MALLET),
    Ask::of("tree.base_west", "base_mallet.west", MALLET),
];
