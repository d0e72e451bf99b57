//! What is asked at a tree in few taps: stop on sight, triage, full check, same day again.

use super::measures::{
    BASE_EAST, BASE_NORTH, BASE_SOUND, BASE_SOUTH, BASE_WEST, CROWN_BASE, CROWN_RADIUS, DOWNHILL,
    GIRTH, GIRTH_METHOD, GROUND_DUG, LEAN_IS_NEW, LEAN_SEEN, LEAN_SEEN_TOWARD, LIFE, SLOPE,
    WIRES_NEAR,
};
use super::measuring::{DISTANCE, DISTANCE_BY, DOWN, UP, UPRIGHT};
use crate::pages::ask::{Ask, AskKind, Listed};

const PHOTO: Ask = Ask::of("photo.file", "", AskKind::PhotoFile);

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
    BASE_SOUND,
    Ask::of("tree.way", "", AskKind::Choice("way-of-working")),
];

pub(super) const FULL_CHECK: &[Ask] = &[
    LIFE,
    GIRTH,
    GIRTH_METHOD,
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
    LEAN_SEEN,
    LEAN_SEEN_TOWARD,
    LEAN_IS_NEW,
    CROWN_RADIUS,
    CROWN_BASE,
    SLOPE,
    DOWNHILL,
    GROUND_DUG,
    WIRES_NEAR,
    BASE_NORTH,
    BASE_EAST,
    BASE_SOUTH,
    BASE_WEST,
];
