//! What every sheet says at its foot.

use super::pace::is_near;
use crate::handover::paper::{Block, Rich};
use crate::handover::paper_input::{PaperDesk, TreeSeen};
use crate::record::{ClimbNeed, Judgement, Quantity, Visit, WeatherHour};
use crate::words::Said;

pub(in crate::handover) fn blocks(
    desk: &PaperDesk,
    seen: &TreeSeen,
    judgement: &Judgement,
) -> Vec<Block> {
    let by_anchor = judgement.climb != ClimbNeed::NotNeeded && !judgement.anchor.is_empty();
    let sections = seen.looks.iter().any(|look| !look.sections.is_empty());
    let applies: [(&[&str], bool); 5] = [
        (
            &[
                "sheet.caution-ends",
                "caution.sheet-aid",
                "caution.sheet-refuse",
                "caution.sheet-decide",
            ],
            true,
        ),
        (
            &[
                "caution.anchor-scope",
                "caution.anchor-not",
                "caution.anchor-aloft",
            ],
            by_anchor,
        ),
        (&["caution.decay-bending", "caution.decay-shape"], sections),
        (&["caution.zone-stem", "caution.zone-more"], true),
        (
            &["caution.wires-people", "caution.wires-all"],
            judgement.wires.iter().any(is_near),
        ),
    ];
    let mut words = judged(desk, seen);
    for key in applies
        .into_iter()
        .filter(|(_, applies)| *applies)
        .flat_map(|(keys, _)| keys)
    {
        words = words.plain(" ").plain(desk.say(key));
    }
    vec![Block::text(words)]
}

/// When and how closely the tree was judged, and what was not seen.
fn judged(desk: &PaperDesk, seen: &TreeSeen) -> Rich {
    let Some(look) = seen.looks.first() else {
        return Rich::new().bold(desk.say("sheet.not-judged"));
    };
    let unknown = || desk.say("caution.unknown");
    let local = look.at.and_then(|at| at.local());
    let visit = desk.visit(&look.visit);
    let day = visit
        .map(|visit| visit.day)
        .or(local.map(|local| local.day));
    let day = day.map_or_else(unknown, |day| desk.words.day(day));
    let hour = local.map_or_else(unknown, |at| desk.words.hour(at.hour, at.minute));
    let weather = visit
        .zip(local)
        .and_then(|(visit, at)| weather_at(visit, at.hour));
    let weather = weather.map_or_else(unknown, |weather| weather_words(desk, weather));
    let level = seen.level();
    let level = level.map_or_else(unknown, |level| desk.words.word_of(&level));
    let key = if local.is_none() {
        "sheet.judged-without-hour"
    } else {
        "caution.sheet-ground"
    };
    let ground = desk.words.say(
        key,
        &[
            ("day", Said::Text(&day)),
            ("hour", Said::Text(&hour)),
            ("weather", Said::Text(&weather)),
            ("level", Said::Text(&level)),
        ],
    );
    let parts = desk.unseen_parts(seen);
    let unseen = if parts.is_empty() {
        desk.say("caution.sheet-all-seen")
    } else {
        let parts = desk.listed_parts(&parts);
        let parts = ("parts", Said::Text(&parts));
        desk.words.say("caution.sheet-not-seen", &[parts])
    };
    Rich::new().plain(ground).plain(" ").bold(unseen)
}

/// The weather noted nearest to an hour, at most two hours off.
fn weather_at(visit: &Visit, hour: u32) -> Option<&WeatherHour> {
    let hours = visit.weather.iter();
    let nearest = hours.min_by_key(|weather| weather.hour.abs_diff(hour));
    nearest.filter(|weather| weather.hour.abs_diff(hour) <= 2)
}

fn weather_words(desk: &PaperDesk, weather: &WeatherHour) -> String {
    let words = desk.words;
    let mut said = Vec::new();
    let wind = match (weather.wind_force, weather.wind_ms) {
        (Some(force), _) => Some((f64::from(force), Quantity::Beaufort)),
        (None, Some(speed_ms)) => Some((speed_ms, Quantity::SpeedMs)),
        (None, None) => None,
    };
    if let Some((wind, quantity)) = wind {
        let wind = ("wind", Said::Number(wind, quantity));
        said.push(words.say("sheet.weather-wind", &[wind]));
    }
    if let Some(temperature) = weather.temperature_c {
        said.push(words.number(temperature, Quantity::TemperatureC));
    }
    if weather.wet_bark == Some(true) {
        said.push(desk.say("sheet.weather-wet"));
    }
    if weather.ice == Some(true) {
        said.push(desk.say("sheet.weather-ice"));
    }
    if said.is_empty() {
        said.push(desk.say("caution.unknown"));
    }
    desk.listed(&said)
}
