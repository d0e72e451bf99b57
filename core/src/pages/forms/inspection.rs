//! What is asked of an inspection: measures, triage, walk-round, wires.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{
    BARK_CM, BEARING_DEG, CROWN_BASE_M, CROWN_RADIUS_M, DIEBACK_PCT, GIRTH_AT_M, GIRTH_CM,
    HEIGHT_M, LEAN_DEG, SE_M, SLOPE_PCT, WIRE_DISTANCE_M,
};

pub(super) const START: &[Ask] = &[Ask::needed(
    "inspection.level",
    "level",
    AskKind::Choice("inspection-level"),
)];

const MALLET: AskKind = AskKind::Choice("mallet-sound");

pub(super) const MEASURES: &[Ask] = &[
    Ask::of("tree.life", "life", AskKind::Choice("life-state")),
    Ask::of("tree.dead_since", "dead_since", AskKind::OnDay),
    Ask::of("tree.beetle_killed", "beetle_killed", AskKind::YesNo),
    Ask::of("tree.dieback", "dieback_pct", AskKind::Number(&DIEBACK_PCT)),
    Ask::of("tree.wires_near", "wires_near", AskKind::YesNo),
    Ask::of("tree.base_sound", "base_sound", AskKind::YesNo),
    Ask::head("tree.height", "height.height_m", AskKind::Number(&HEIGHT_M)),
    Ask::of(
        "tree.height_method",
        "height.method",
        AskKind::Choice("height-method"),
    ),
    Ask::of("tree.height_se", "height.se_m", AskKind::Number(&SE_M)),
    Ask::head("tree.girth", "girth.girth_cm", AskKind::Number(&GIRTH_CM)),
    Ask::of(
        "tree.girth_method",
        "girth.method",
        AskKind::Choice("girth-method"),
    ),
    Ask::of(
        "tree.girth_at",
        "girth.at_height_m",
        AskKind::Number(&GIRTH_AT_M),
    ),
    Ask::of("tree.bark", "bark_cm", AskKind::Number(&BARK_CM)),
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
    Ask::of("tree.base_north", "base_mallet.north", MALLET),
    Ask::of("tree.base_east", "base_mallet.east", MALLET),
    Ask::of("tree.base_south", "base_mallet.south", MALLET),
    Ask::of("tree.base_west", "base_mallet.west", MALLET),
    Ask::of("inspection.note", "note", AskKind::Text(4000)),
    Ask::of("inspection.next_look", "next_look", AskKind::OnDay),
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
