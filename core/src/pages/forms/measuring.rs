//! What is asked while a height, a lean or a girth is taken.

use super::measures::{self, BARK, GIRTH_AT, GIRTH_METHOD, LEAN_SEEN, LEAN_SEEN_TOWARD};
use crate::pages::ask::{Ask, AskKind};
use crate::record::{BEARING_DEG, NumberField, Quantity};

/// Level distance to the plumb line under the tip.
const SIGHT_M: NumberField = NumberField {
    id: "height.distance_m",
    quantity: Quantity::LengthM,
    min: 1.0,
    max: 300.0,
    step: 0.5,
};
/// Level distance between two positions on one line with the stem.
const APART_M: NumberField = NumberField {
    id: "height.apart_m",
    quantity: Quantity::LengthM,
    min: 1.0,
    max: 200.0,
    step: 0.5,
};
/// Angle of a line of sight from the horizontal.
const SIGHT_DEG: NumberField = NumberField {
    id: "height.sight_deg",
    quantity: Quantity::AngleDeg,
    min: -85.0,
    max: 85.0,
    step: 0.5,
};
/// Angle to the top from one of two positions: above the horizontal.
const RISE_DEG: NumberField = NumberField {
    id: "height.rise_deg",
    quantity: Quantity::AngleDeg,
    min: 1.0,
    max: 85.0,
    step: 0.5,
};
/// Lean seen from one side, toward the bearing named or away from it.
const LEAN_SEEN_DEG: NumberField = NumberField {
    id: "lean.seen_deg",
    quantity: Quantity::AngleDeg,
    min: -80.0,
    max: 80.0,
    step: 0.5,
};

pub(super) const DISTANCE: Ask = Ask::needed("height.distance", "", AskKind::Number(&SIGHT_M));
pub(super) const DISTANCE_BY: Ask =
    Ask::of("height.distance_by", "", AskKind::Choice("distance-by"));
pub(super) const UP: Ask = Ask::needed("height.up", "", AskKind::Angle(&SIGHT_DEG));
pub(super) const DOWN: Ask = Ask::needed("height.down", "", AskKind::Angle(&SIGHT_DEG));
pub(super) const UPRIGHT: Ask = Ask::of("lean.upright", "", AskKind::YesNo);

pub(super) const HEIGHT_BY_ANGLES: &[Ask] = &[DISTANCE, DISTANCE_BY, UP, DOWN];

pub(super) const HEIGHT_FROM_TWO_POSITIONS: &[Ask] = &[
    Ask::needed("height.near", "", AskKind::Angle(&RISE_DEG)),
    DOWN,
    Ask::needed("height.apart", "", AskKind::Number(&APART_M)),
    DISTANCE_BY,
    Ask::needed("height.far", "", AskKind::Angle(&RISE_DEG)),
];

pub(super) const LEAN_FROM_TWO_SIDES: &[Ask] = &[
    Ask::needed("lean.along", "", AskKind::Angle(&LEAN_SEEN_DEG)),
    Ask::needed("lean.along_toward", "", AskKind::Bearing(&BEARING_DEG)),
    Ask::needed("lean.across", "", AskKind::Angle(&LEAN_SEEN_DEG)),
];

pub(super) const LEAN_BY_EYE: &[Ask] = &[UPRIGHT, LEAN_SEEN, LEAN_SEEN_TOWARD];

pub(super) const GIRTH: &[Ask] = &[
    Ask {
        needed: true,
        ..measures::GIRTH
    },
    GIRTH_METHOD,
    GIRTH_AT,
    BARK,
];
