//! What is asked of a stem section.

use crate::pages::ask::{Ask, AskKind};
use crate::record::{
    AT_HEIGHT_M, BARK_CM, BEARING_DEG, DIAMETER_CM, DRILL_ANGLE_DEG, GIRTH_CM, OPENING_CM, SE_CM,
    SHELL_CM,
};

pub(super) const SECTION: &[Ask] = &[
    Ask::needed("section.height", "height_m", AskKind::Number(&AT_HEIGHT_M)),
    Ask::of("section.girth", "girth_cm", AskKind::Number(&GIRTH_CM)),
    Ask::of(
        "section.diameter",
        "diameter_cm",
        AskKind::Number(&DIAMETER_CM),
    ),
    Ask::of("section.bark", "bark_cm", AskKind::Number(&BARK_CM)),
    Ask::head(
        "section.opening_side",
        "opening.bearing_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::of(
        "section.opening_width",
        "opening.width_cm",
        AskKind::Number(&OPENING_CM),
    ),
    Ask::of("section.note", "note", AskKind::Text(2000)),
];

const SOUND_AT: AskKind = AskKind::Choice("mallet-sound");

/// The eight points of the mallet clock, from north clockwise.
pub(super) const SOUND: &[Ask] = &[
    Ask::of("sound.north", "", SOUND_AT),
    Ask::of("sound.northeast", "", SOUND_AT),
    Ask::of("sound.east", "", SOUND_AT),
    Ask::of("sound.southeast", "", SOUND_AT),
    Ask::of("sound.south", "", SOUND_AT),
    Ask::of("sound.southwest", "", SOUND_AT),
    Ask::of("sound.west", "", SOUND_AT),
    Ask::of("sound.northwest", "", SOUND_AT),
];

pub(super) const READING: &[Ask] = &[
    Ask::needed(
        "reading.bearing",
        "bearing_deg",
        AskKind::Bearing(&BEARING_DEG),
    ),
    Ask::needed("reading.shell", "shell_cm", AskKind::Number(&SHELL_CM)),
    Ask::of("reading.method", "method", AskKind::Choice("shell-method")),
    Ask::of(
        "reading.drill_angle",
        "drill_angle_deg",
        AskKind::Angle(&DRILL_ANGLE_DEG),
    ),
    Ask::of("reading.se", "se_cm", AskKind::Number(&SE_CM)),
];
