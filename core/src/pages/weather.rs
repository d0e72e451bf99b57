//! The weather of the hour, as far as it was noted.

use super::desk::PageDesk;
use super::line::PageLine;
use crate::record::{Quantity, Visit, WeatherHour};
use crate::words::Said;

/// The lines of the weather; what nobody noted is missing.
pub(super) fn weather_lines(desk: &PageDesk, visit: Option<&Visit>) -> Vec<PageLine> {
    // A note holds to the end of the next hour.
    let noted = |hour: u32| visit.and_then(|v| v.weather.iter().find(|at| at.hour == hour));
    let at = noted(desk.hour).or_else(|| desk.hour.checked_sub(1).and_then(noted));
    let Some(at) = at else {
        return vec![desk.line("weather.wind_force", "weather.wind_force.why", None)];
    };
    let ice = |yes| desk.say(if yes { "page.ice-yes" } else { "page.ice-no" });
    let wet = |yes| {
        let key = if yes {
            "page.wet-bark-yes"
        } else {
            "page.wet-bark-no"
        };
        desk.say(key)
    };
    vec![
        desk.line(
            "weather.wind_force",
            "weather.wind_force.why",
            wind(desk, at),
        ),
        desk.line(
            "weather.no_thunder",
            "weather.thunder_min_ago.why",
            thunder(desk, at),
        ),
        desk.line("weather.ice", "weather.ice.why", at.ice.map(ice)),
        desk.line(
            "weather.wet_bark",
            "weather.wet_bark.why",
            at.wet_bark.map(wet),
        ),
        desk.line(
            "weather.light",
            "weather.light.why",
            at.light.map(|light| desk.words.word_of(&light)),
        ),
    ]
}

fn wind(desk: &PageDesk, at: &WeatherHour) -> Option<String> {
    let force = at
        .wind_force
        .map(|force| desk.words.number(force.into(), Quantity::Beaufort));
    let speed = at
        .wind_ms
        .map(|ms| desk.words.number(ms, Quantity::SpeedMs));
    let known: Vec<String> = [force, speed].into_iter().flatten().collect();
    (!known.is_empty()).then(|| {
        let wind = known.join(", ");
        let hour = desk.words.hour(at.hour, 0);
        desk.words.say(
            "page.at-hour",
            &[("what", Said::Text(&wind)), ("hour", Said::Text(&hour))],
        )
    })
}

fn thunder(desk: &PageDesk, at: &WeatherHour) -> Option<String> {
    match (at.thunder_min_ago, at.no_thunder) {
        (Some(ago), _) => Some(desk.words.say(
            "page.thunder-ago",
            &[("ago", Said::Number(ago, Quantity::DurationMin))],
        )),
        (None, Some(true)) => Some(desk.say("page.no-thunder")),
        (None, _) => None,
    }
}
