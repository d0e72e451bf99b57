//! What is asked of people, sign-offs and gear.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{
    CLIMBED_M, CLIMBER_MASS_KG, HEIGHT_LIMIT_M, KNOT_S, RATING_KN, ROPE_LENGTH_M, ROPE_MM, THROW_M,
};

pub(super) const PERSON: &[Ask] = &[
    Ask::needed("person.name", "name", AskKind::Text(200)),
    Ask::of("person.trainee", "trainee", AskKind::YesNo),
    Ask::of(
        "person.mass",
        "mass_with_gear_kg",
        AskKind::Number(&CLIMBER_MASS_KG),
    ),
    Ask::of(
        "person.height_limit",
        "height_limit_m",
        AskKind::Number(&HEIGHT_LIMIT_M),
    ),
    Ask::of("person.throw", "throw_m", AskKind::Number(&THROW_M)),
    Ask::of(
        "person.electrical",
        "electrical",
        AskKind::Choice("electrical-level"),
    ),
];

pub(super) const SIGN_OFF: &[Ask] = &[
    Ask::needed("sign_off.skill", "skill", AskKind::Choice("skill")),
    Ask::of("sign_off.knot", "knot", AskKind::Choice("knot-use")),
    Ask::of("sign_off.by", "by", AskKind::Text(200)),
    Ask::of("sign_off.on", "on", AskKind::OnDay),
    Ask::of("sign_off.until", "until", AskKind::OnDay),
    Ask::of("sign_off.seconds", "seconds", AskKind::Number(&KNOT_S)),
];

pub(super) const CLIMB: &[Ask] = &[
    Ask::of("climb_log.on", "on", AskKind::OnDay),
    Ask::needed("climb_log.place", "place", AskKind::Text(200)),
    Ask::needed("climb_log.height", "height_m", AskKind::Number(&CLIMBED_M)),
    Ask::needed("climb_log.system", "system", AskKind::Choice("rope-system")),
    Ask::needed("climb_log.with_whom", "with_whom", AskKind::Text(200)),
    Ask::of("climb_log.note", "note", AskKind::Text(1000)),
];

pub(super) const GEAR: &[Ask] = &[
    Ask::needed("gear.name", "name", AskKind::Text(200)),
    Ask::needed("gear.kind", "kind", AskKind::Choice("gear-kind")),
    Ask::of("gear.rating", "rating_kn", AskKind::Number(&RATING_KN)),
    Ask::of("gear.diameter", "diameter_mm", AskKind::Number(&ROPE_MM)),
    Ask::of("gear.length", "length_m", AskKind::Number(&ROPE_LENGTH_M)),
    Ask::of("gear.first_use", "first_use", AskKind::OnDay),
    Ask::of("gear.last_check", "last_check", AskKind::OnDay),
    Ask::of("gear.next_check", "next_check", AskKind::OnDay),
    Ask::of("gear.out_of_use", "out_of_use", AskKind::Text(400)),
    Ask::of("gear.shock_loaded", "shock_loaded", AskKind::YesNo),
    Ask::of("gear.double_locking", "double_locking", AskKind::YesNo),
    Ask::of("gear.chin_strap", "chin_strap", AskKind::YesNo),
    Ask::of("gear.used_by", "used_by", AskKind::OneOf(Listed::People)),
];

pub(super) const CHECK: &[Ask] = &[
    Ask::of("gear.last_check", "last_check", AskKind::OnDay),
    Ask::of("gear.next_check", "next_check", AskKind::OnDay),
];

pub(super) const PUT_OUT: &[Ask] = &[Ask::needed(
    "gear.out_of_use",
    "out_of_use",
    AskKind::Text(400),
)];
