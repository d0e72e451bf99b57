//! What is asked of an inspection: measures, triage, walk-round, wires.

use super::measures::{
    BARK, BASE_EAST, BASE_NORTH, BASE_SOUND, BASE_SOUTH, BASE_WEST, CROWN_BASE, CROWN_RADIUS,
    DOWNHILL, GIRTH, GIRTH_AT, GIRTH_METHOD, GROUND_DUG, LEAN_IS_NEW, LIFE, SLOPE, WIRES_NEAR,
};
use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{BEARING_DEG, DIEBACK_PCT, HEIGHT_M, LEAN_DEG, SE_M, WIRE_DISTANCE_M};

pub(super) const START: &[Ask] = &[Ask::needed(
    "inspection.level",
    "level",
    AskKind::Choice("inspection-level"),
)];

pub(super) const MEASURES: &[Ask] = &[
    LIFE,
    Ask::of("tree.dead_since", "dead_since", AskKind::OnDay),
    Ask::of("tree.beetle_killed", "beetle_killed", AskKind::YesNo),
    Ask::of("tree.dieback", "dieback_pct", AskKind::Number(&DIEBACK_PCT)),
    WIRES_NEAR,
    BASE_SOUND,
    Ask::head("tree.height", "height.height_m", AskKind::Number(&HEIGHT_M)),
    Ask::of(
        "tree.height_method",
        "height.method",
        AskKind::Choice("height-method"),
    ),
    GIRTH,
    GIRTH_METHOD,
    GIRTH_AT,
    BARK,
    Ask::head("tree.lean", "lean.lean_deg", AskKind::Angle(&LEAN_DEG)),
    Ask::of(
        "tree.lean_toward",
        "lean.toward_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::of(
        "tree.lean_method",
        "lean.method",
        AskKind::Choice("lean-method"),
    ),
    LEAN_IS_NEW,
    CROWN_RADIUS,
    CROWN_BASE,
    SLOPE,
    DOWNHILL,
    GROUND_DUG,
    Ask::of("tree.dug_when", "ground_dug.when", AskKind::OnDay),
    Ask::of(
        "tree.dug_distance",
        "ground_dug.distance_m",
        AskKind::Number(&WIRE_DISTANCE_M),
    ),
    Ask::of(
        "tree.dug_cleared_by",
        "ground_dug.cleared_by",
        AskKind::OneOf(Listed::People),
    ),
    BASE_NORTH,
    BASE_EAST,
    BASE_SOUTH,
    BASE_WEST,
    Ask::of("inspection.note", "note", AskKind::Text(4000)),
    Ask::of("inspection.next_look", "next_look", AskKind::OnDay),
    Ask::of("tree.height_se", "height.se_m", AskKind::Number(&SE_M)),
];

pub(super) const LOOK: &[Ask] = &[
    Ask::needed("walk.part", "part", AskKind::Choice("walk-part")),
    Ask::needed("walk.look", "look", AskKind::Choice("look")),
    Ask::of("walk.hidden_by", "hidden_by", AskKind::Text(200)),
];

pub(super) const WIRE: &[Ask] = &[
    Ask::needed("wire.line", "line", AskKind::OneOf(Listed::Lines)),
    Ask::of(
        "wire.distance",
        "distance_m",
        AskKind::Number(&WIRE_DISTANCE_M),
    ),
    Ask::of("wire.touching", "touching", AskKind::YesNo),
];
