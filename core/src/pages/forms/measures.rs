//! The inputs of a tree's measures, each once: several commands ask for the same ones.

use crate::pages::ask::{Ask, AskKind};
use crate::record::{
    BARK_CM, BEARING_DEG, CROWN_BASE_M, CROWN_RADIUS_M, GIRTH_AT_M, GIRTH_CM, LEAN_DEG, SLOPE_PCT,
};

const MALLET: AskKind = AskKind::Choice("mallet-sound");

pub(super) const LIFE: Ask = Ask::of("tree.life", "life", AskKind::Choice("life-state"));
pub(super) const WIRES_NEAR: Ask = Ask::of("tree.wires_near", "wires_near", AskKind::YesNo);
pub(super) const BASE_SOUND: Ask = Ask::of("tree.base_sound", "base_sound", AskKind::YesNo);

pub(super) const GIRTH: Ask = Ask::head("tree.girth", "girth.girth_cm", AskKind::Number(&GIRTH_CM));
pub(super) const GIRTH_METHOD: Ask = Ask::of(
    "tree.girth_method",
    "girth.method",
    AskKind::Choice("girth-method"),
);
pub(super) const GIRTH_AT: Ask = Ask::of(
    "tree.girth_at",
    "girth.at_height_m",
    AskKind::Number(&GIRTH_AT_M),
);
pub(super) const BARK: Ask = Ask::of("tree.bark", "bark_cm", AskKind::Number(&BARK_CM));

/// Lean by eye: an angle and a bearing that the command makes a measure of.
pub(super) const LEAN_SEEN: Ask = Ask::of("tree.lean", "", AskKind::Angle(&LEAN_DEG));
pub(super) const LEAN_SEEN_TOWARD: Ask =
    Ask::of("tree.lean_toward", "", AskKind::Bearing(&BEARING_DEG));
pub(super) const LEAN_IS_NEW: Ask = Ask::of("tree.lean_is_new", "lean_is_new", AskKind::YesNo);

pub(super) const CROWN_RADIUS: Ask = Ask::head(
    "tree.crown_radius",
    "crown.radius_m",
    AskKind::Number(&CROWN_RADIUS_M),
);
pub(super) const CROWN_BASE: Ask = Ask::of(
    "tree.crown_base",
    "crown.base_m",
    AskKind::Number(&CROWN_BASE_M),
);

pub(super) const SLOPE: Ask =
    Ask::head("tree.slope", "slope.slope_pct", AskKind::Number(&SLOPE_PCT));
pub(super) const DOWNHILL: Ask = Ask::of(
    "tree.downhill",
    "slope.downhill_deg",
    AskKind::Bearing(&BEARING_DEG),
);
pub(super) const GROUND_DUG: Ask = Ask::head("tree.ground_dug", "ground_dug.dug", AskKind::YesNo);

pub(super) const BASE_NORTH: Ask = Ask::of("tree.base_north", "base_mallet.north", MALLET);
pub(super) const BASE_EAST: Ask = Ask::of("tree.base_east", "base_mallet.east", MALLET);
pub(super) const BASE_SOUTH: Ask = Ask::of("tree.base_south", "base_mallet.south", MALLET);
pub(super) const BASE_WEST: Ask = Ask::of("tree.base_west", "base_mallet.west", MALLET);
