//! Drop zone and keep-out of a tree, a record a way of working.

use super::desk::PageDesk;
use crate::record::{Judgement, Quantity, WayOfWorking, ZoneAnswer};
use crate::words::Said;

/// Drop zone and keep-out of one way of working.
#[derive(Debug, Clone, PartialEq, serde::Serialize, uniffi::Record)]
pub struct ZoneOfTree {
    /// The way of working.
    pub way: WayOfWorking,
    /// Its name.
    pub words: String,
    /// Whether it is the planned way.
    pub planned: bool,
    /// Who keeps how far away, and where something may land.
    pub distances: Vec<String>,
    /// The rule that fixed the keep-out distance.
    pub rule: String,
    /// Its source.
    pub source: String,
    /// What lies inside, and what to do about it.
    pub inside: Vec<String>,
    /// What is missing to make it complete.
    pub gaps: Vec<String>,
}

/// The zones, the planned way first.
pub(super) fn zones_of(desk: &PageDesk, answer: &Judgement) -> Vec<ZoneOfTree> {
    answer
        .zones
        .iter()
        .map(|zone| zone_of(desk, zone))
        .collect()
}

fn zone_of(desk: &PageDesk, zone: &ZoneAnswer) -> ZoneOfTree {
    let said = |key: &str, name: &str, metres: f64| {
        let distance = [(name, Said::Number(metres, Quantity::LengthM))];
        desk.words.say(key, &distance)
    };
    let mut distances = vec![said("desk.zone-keep-out", "everyone", zone.keep_out_m)];
    if zone.keep_out_downhill_m > zone.keep_out_m {
        distances.push(said(
            "desk.zone-downhill",
            "downhill",
            zone.keep_out_downhill_m,
        ));
    }
    if zone.keep_out_crew_m < zone.keep_out_m {
        distances.push(said("desk.zone-crew", "crew", zone.keep_out_crew_m));
    }
    distances.push(said("desk.zone-drop", "drop", zone.drop_radius_m));
    ZoneOfTree {
        way: zone.way,
        words: desk.words.label_of(&zone.way),
        planned: zone.planned,
        distances,
        rule: desk.words.reason(&zone.rule),
        source: zone.source.clone(),
        inside: zone
            .inside
            .iter()
            .map(|one| desk.words.reason(&one.reason))
            .collect(),
        gaps: desk.words.reasons(&zone.gaps),
    }
}
