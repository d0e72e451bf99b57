//! What is asked of a site and of what lies around its trees.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{LINE_HEIGHT_M, VOLTAGE_KV};

pub(super) const SITE: &[Ask] = &[
    Ask::needed("site.name", "name", AskKind::Text(200)),
    Ask::of("site.client", "client", AskKind::Text(200)),
    Ask::of("site.address", "address", AskKind::Text(400)),
    Ask::of(
        "site.rule_set",
        "rule_set",
        AskKind::OneOf(Listed::RuleSets),
    ),
    Ask::of("site.outline", "outline", AskKind::Outline(3)),
    Ask::of("site.note", "note", AskKind::Text(4000)),
];

pub(super) const RESCUE: &[Ask] = &[
    Ask::of(
        "rescue.meeting_point",
        "rescue.meeting_point",
        AskKind::Text(400),
    ),
    Ask::of(
        "rescue.grid_reference",
        "rescue.grid_reference",
        AskKind::Text(100),
    ),
    Ask::of(
        "rescue.signal",
        "rescue.signal",
        AskKind::Choice("phone-signal"),
    ),
    Ask::of(
        "rescue.first_aider",
        "rescue.first_aider",
        AskKind::OneOf(Listed::People),
    ),
    Ask::of(
        "rescue.casualty_unit",
        "rescue.casualty_unit",
        AskKind::Text(400),
    ),
];

pub(super) const TARGET: &[Ask] = &[
    Ask::needed("target.name", "name", AskKind::Text(200)),
    Ask::needed("target.kind", "kind", AskKind::Choice("target-kind")),
    Ask::of(
        "target.occupancy",
        "occupancy",
        AskKind::Choice("occupancy"),
    ),
    Ask::of("target.can_be_moved", "can_be_moved", AskKind::YesNo),
    Ask::of("target.can_be_closed", "can_be_closed", AskKind::YesNo),
    Ask::of("target.neighbours", "neighbours", AskKind::YesNo),
    Ask::of("target.form", "form", AskKind::Choice("ground-form")),
    Ask::of("target.ground", "ground", AskKind::Outline(1)),
    // Standing at it, one fix is enough.
    Ask::of("target.here", "", AskKind::Fix),
];

pub(super) const LINE: &[Ask] = &[
    Ask::needed("line.name", "name", AskKind::Text(200)),
    Ask::needed("line.kind", "kind", AskKind::Choice("line-kind")),
    Ask::of("line.voltage", "voltage_kv", AskKind::Number(&VOLTAGE_KV)),
    Ask::of(
        "line.voltage_between",
        "voltage_between",
        AskKind::Choice("voltage-between"),
    ),
    Ask::of("line.height", "height_m", AskKind::Number(&LINE_HEIGHT_M)),
    Ask::of("line.owner_told", "owner_told", AskKind::OnDay),
    Ask::of("line.dead_on", "dead_on", AskKind::OnDay),
    Ask::needed("line.way", "way", AskKind::Outline(2)),
];

pub(super) const PERMISSION: &[Ask] = &[
    Ask::needed(
        "permission.kind",
        "kind",
        AskKind::Choice("permission-kind"),
    ),
    Ask::of(
        "permission.answer",
        "answer",
        AskKind::Choice("permission-answer"),
    ),
    Ask::of("permission.on", "on", AskKind::OnDay),
    Ask::of("permission.tree", "tree", AskKind::OneOf(Listed::Trees)),
    Ask::of("permission.note", "note", AskKind::Text(1000)),
];
