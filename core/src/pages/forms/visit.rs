//! What is asked of a visit and of the weather.

use crate::pages::ask::{Ask, AskKind, Listed};
use crate::record::{HOUR, HUMIDITY_PCT, TEMPERATURE_C, THUNDER_MIN, WIND_FORCE, WIND_MS};

pub(super) const VISIT: &[Ask] = &[
    Ask::of("visit.crew", "crew", AskKind::SomeOf(Listed::People)),
    Ask::of("visit.note", "note", AskKind::Text(4000)),
];

pub(super) const WEATHER: &[Ask] = &[
    Ask::of("weather.hour", "hour", AskKind::Whole(&HOUR)),
    Ask::of(
        "weather.wind_force",
        "wind_force",
        AskKind::Whole(&WIND_FORCE),
    ),
    Ask::of("weather.wind", "wind_ms", AskKind::Number(&WIND_MS)),
    Ask::of("weather.no_thunder", "no_thunder", AskKind::YesNo),
    Ask::of(
        "weather.thunder_ago",
        "thunder_min_ago",
        AskKind::Number(&THUNDER_MIN),
    ),
    Ask::of("weather.ice", "ice", AskKind::YesNo),
    Ask::of("weather.wet_bark", "wet_bark", AskKind::YesNo),
    Ask::of("weather.light", "light", AskKind::Choice("daylight")),
    Ask::of(
        "weather.temperature",
        "temperature_c",
        AskKind::Number(&TEMPERATURE_C),
    ),
    Ask::of(
        "weather.humidity",
        "humidity_pct",
        AskKind::Number(&HUMIDITY_PCT),
    ),
];
