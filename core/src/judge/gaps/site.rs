//! What is missing for the site as a whole: rescue plan, permissions, weather.

use super::{permission_gap, permission_term};
use crate::judge::case::SiteContext;
use crate::record::{PermissionKind, Reason};

/// The weather of the hour: every question unanswered is a gap.
pub(crate) fn weather(site: &SiteContext) -> Vec<Reason> {
    let hours = site.weather();
    if hours.is_empty() {
        return vec![Reason::new("gap.weather")];
    }
    let mut gaps = Vec::new();
    for (answered, code) in [
        (
            hours
                .iter()
                .all(|h| h.wind_force.is_some() || h.wind_ms.is_some()),
            "gap.weather-wind",
        ),
        (
            hours
                .iter()
                .all(|h| h.no_thunder == Some(true) || h.thunder_min_ago.is_some()),
            "gap.weather-thunder",
        ),
        (hours.iter().all(|h| h.ice.is_some()), "gap.weather-ice"),
        (
            hours.iter().all(|h| h.wet_bark.is_some()),
            "gap.weather-bark",
        ),
        (hours.iter().all(|h| h.light.is_some()), "gap.weather-light"),
    ] {
        if !answered {
            gaps.push(Reason::new(code));
        }
    }
    gaps
}

/// What is missing for the site as a whole.
pub(crate) fn of_site(site: &SiteContext) -> Vec<Reason> {
    let mut gaps = Vec::new();
    let place = &site.file.site;
    match &place.rescue {
        None => gaps.push(Reason::new("gap.rescue-plan")),
        Some(rescue) => {
            for (missing, code) in [
                (rescue.meeting_point.is_none(), "gap.rescue-meeting-point"),
                (rescue.grid_reference.is_none(), "gap.rescue-grid"),
                (rescue.signal.is_none(), "gap.rescue-signal"),
                (rescue.first_aider.is_none(), "gap.rescue-first-aider"),
                (rescue.casualty_unit.is_none(), "gap.rescue-casualty-unit"),
            ] {
                if missing {
                    gaps.push(Reason::new(code));
                }
            }
        }
    }
    let neighbours = place.targets.iter().any(|t| t.neighbours == Some(true));
    for kind in [
        PermissionKind::Owner,
        PermissionKind::ProtectedTree,
        PermissionKind::Neighbour,
        PermissionKind::Nests,
        PermissionKind::Bats,
        PermissionKind::Quarantine,
    ] {
        if kind == PermissionKind::Neighbour && !neighbours {
            continue;
        }
        let asked: Vec<_> = place
            .permissions
            .iter()
            .filter(|p| p.kind == kind)
            .collect();
        if asked.iter().any(|one| permission_gap(one).is_none()) {
            continue;
        }
        let open = asked
            .last()
            .and_then(|last| Some((permission_gap(last)?, &last.id)));
        let gap = match open {
            Some((code, id)) => Reason::new(code).about(id),
            None => Reason::new("gap.permission"),
        };
        gaps.push(gap.term("permission", permission_term(kind)));
    }
    if site
        .file
        .site
        .trees
        .iter()
        .any(|tree| !tree.work.is_empty())
    {
        gaps.extend(weather(site));
    }
    gaps
}
