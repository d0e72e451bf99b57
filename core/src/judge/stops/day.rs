//! The day: thunder, ice, wind, light; and what must stand before anybody works on the site.

use crate::judge::case::SiteContext;
use crate::judge::rules::Rule;
use crate::judge::weather::{thunder_bars, wind_force_of_ms};
use crate::record::{Daylight, PermissionAnswer, PermissionKind, Quantity, Reason, WeatherHour};

/// Stops for every tree of the site today.
pub(crate) fn site_stops(site: &SiteContext) -> Vec<Reason> {
    let mut stops = Vec::new();
    let rules = site.rules;
    for hour in site.weather() {
        let at = |code: &str| Reason::new(code).with_hour(hour.hour);
        if let Some(ago) = hour.thunder_min_ago.filter(|ago| thunder_bars(*ago, rules)) {
            stops.push(at("stop.thunder").number("ago", ago, Quantity::DurationMin));
        }
        if hour.ice == Some(true) {
            stops.push(at("stop.ice"));
        }
        if let Some(force) = wind_force(hour)
            && f64::from(force) >= rules.number(Rule::StopWindForce)
        {
            stops.push(at("stop.wind").number("force", f64::from(force), Quantity::Beaufort));
        }
        if hour.light == Some(Daylight::Dark) {
            stops.push(at("stop.dark"));
        }
    }
    for permission in &site.file.site.permissions {
        let refused = permission.answer == Some(PermissionAnswer::Refused);
        // A refused closing of a road is a matter of the zone, not of the site.
        if refused && permission.tree.is_empty() && permission.kind != PermissionKind::RoadClosure {
            let term = crate::judge::gaps::permission_term(permission.kind);
            let stop = Reason::new("stop.permission-refused").about(&permission.id);
            stops.push(stop.term("permission", term));
        }
    }
    once(stops)
}

/// Limits of the day: wind that asks for caution, dusk, wet bark.
pub(crate) fn cautions(site: &SiteContext) -> Vec<Reason> {
    let mut caps = Vec::new();
    let rules = site.rules;
    for hour in site.weather() {
        let at = |code: &str| Reason::new(code).with_hour(hour.hour);
        if let Some(force) = wind_force(hour).map(f64::from)
            && force >= rules.number(Rule::CapWindCautionForce)
            && force < rules.number(Rule::StopWindForce)
        {
            caps.push(at("cap.wind").number("force", force, Quantity::Beaufort));
        }
        if hour.light == Some(Daylight::Dusk) {
            caps.push(at("cap.dusk"));
        }
        if hour.wet_bark == Some(true) {
            caps.push(at("cap.wet-bark"));
        }
    }
    once(caps)
}

/// The larger of the force by the signs on land and of the one by the wind measured.
pub(crate) fn wind_force(hour: &WeatherHour) -> Option<u32> {
    hour.wind_force.max(hour.wind_ms.map(wind_force_of_ms))
}

/// One line a code: the first hour it holds for stands for all.
fn once(reasons: Vec<Reason>) -> Vec<Reason> {
    let mut kept: Vec<Reason> = Vec::new();
    for reason in reasons {
        let same = |old: &Reason| old.code == reason.code && old.about == reason.about;
        if !kept.iter().any(same) {
            kept.push(reason);
        }
    }
    kept
}

trait WithHour {
    fn with_hour(self, hour: u32) -> Self;
}

impl WithHour for Reason {
    fn with_hour(self, hour: u32) -> Self {
        self.with(
            "hour",
            crate::record::ArgValue::Whole {
                count: i64::from(hour),
            },
        )
    }
}
