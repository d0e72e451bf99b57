//! What lies inside the zones, and what has to be done about it.

use geo::Polygon;

use crate::record::{
    GroundForm, LatLon, Occupancy, OverheadLine, Quantity, Reason, Target, TargetKind, ZoneAction,
    ZoneAffected, ZoneAnswer,
};

use super::case::SiteContext;
use super::ground::{distance_m, holds, ring, touches};
use super::tree_case::TreeCase;
use super::zone_reach::R95_OF_R68;

/// Lays every zone over targets, lines and the property's edge.
pub(crate) fn fill(case: &TreeCase, zones: &mut [ZoneAnswer]) {
    for zone in zones {
        zone.inside = affected(case.site, zone);
    }
}

struct Laid<'a> {
    site: &'a SiteContext<'a>,
    keep_out: Polygon<f64>,
    drop: Polygon<f64>,
}

fn affected(site: &SiteContext, zone: &ZoneAnswer) -> Vec<ZoneAffected> {
    let Some(plane) = site.plane else {
        return Vec::new();
    };
    if zone.keep_out_outline.is_empty() {
        return Vec::new();
    }
    let laid = Laid {
        site,
        keep_out: ring(&plane, &zone.keep_out_outline),
        drop: ring(&plane, &zone.drop_outline),
    };
    let mut inside = Vec::new();
    for target in &site.file.site.targets {
        laid.target(target, &mut inside);
    }
    for line in &site.file.site.lines {
        laid.line(line, &mut inside);
    }
    laid.edge(&mut inside);
    inside
}

impl Laid<'_> {
    fn meets(&self, zone: &Polygon<f64>, form: GroundForm, ground: &[LatLon]) -> bool {
        let plane = self.site.plane;
        plane.is_some_and(|plane| touches(&plane, zone, form, ground))
    }

    fn target(&self, target: &Target, inside: &mut Vec<ZoneAffected>) {
        if !self.meets(&self.keep_out, target.form, &target.ground) {
            return;
        }
        let in_drop_zone = self.meets(&self.drop, target.form, &target.ground);
        let mut tell = |action: ZoneAction, code: &str| {
            let reason = Reason::new(code)
                .about(&target.id)
                .text("target", &target.name);
            inside.push(ZoneAffected {
                record: target.id.clone(),
                action,
                in_drop_zone,
                reason,
            });
        };
        let (action, code) = what_to_do(target);
        tell(action, code);
        if target.neighbours == Some(true) {
            tell(ZoneAction::AskNeighbour, "zone.ask-neighbour");
        }
        if in_drop_zone && can_be_hit(target.kind) && action != ZoneAction::Protect {
            tell(ZoneAction::Protect, "zone.protect");
        }
    }

    fn line(&self, line: &OverheadLine, inside: &mut Vec<ZoneAffected>) {
        if !self.meets(&self.drop, GroundForm::Way, &line.way)
            || line.dead_on == Some(self.site.as_of)
        {
            return;
        }
        inside.push(ZoneAffected {
            record: line.id.clone(),
            action: ZoneAction::CallLineOwner,
            in_drop_zone: true,
            reason: Reason::new("zone.call-line-owner")
                .about(&line.id)
                .text("line", &line.name),
        });
    }

    /// A zone that runs over the edge is the neighbour's affair too.
    fn edge(&self, inside: &mut Vec<ZoneAffected>) {
        let site = &self.site.file.site;
        let Some(plane) = self.site.plane else { return };
        if site.outline.len() < 3 || holds(&ring(&plane, &site.outline), &self.keep_out) {
            return;
        }
        let drop_leaves = !holds(&ring(&plane, &site.outline), &self.drop);
        inside.push(ZoneAffected {
            record: site.id.clone(),
            action: ZoneAction::AskNeighbour,
            in_drop_zone: drop_leaves,
            reason: Reason::new("zone.crosses-edge").about(&site.id),
        });
    }
}

/// Close, move, guard or empty: by what it is and what somebody said can be done with it.
fn what_to_do(target: &Target) -> (ZoneAction, &'static str) {
    use TargetKind::{
        Animals, Dwelling, Fence, Garden, Other, Outbuilding, Parking, Path, Play, Road, Services,
    };
    let closes = target.can_be_closed != Some(false);
    match target.kind {
        Dwelling => (ZoneAction::EmptyRooms, "zone.empty-rooms"),
        Fence | Services => (ZoneAction::Protect, "zone.protect"),
        Parking | Animals if target.can_be_moved != Some(false) => {
            (ZoneAction::MoveAway, "zone.move-away")
        }
        Other | Outbuilding if target.can_be_moved == Some(true) => {
            (ZoneAction::MoveAway, "zone.move-away")
        }
        Road | Path | Garden | Play | Outbuilding | Parking | Animals | Other if closes => {
            (ZoneAction::CloseOff, "zone.close-off")
        }
        _ => (ZoneAction::Guard, "zone.guard"),
    }
}

fn can_be_hit(kind: TargetKind) -> bool {
    matches!(
        kind,
        TargetKind::Dwelling | TargetKind::Outbuilding | TargetKind::Parking | TargetKind::Play
    )
}

/// What cannot be kept clear in the planned zone: it can neither be closed nor moved, and people
/// are there.
pub(crate) fn cannot_be_cleared(site: &SiteContext, planned: &ZoneAnswer) -> Vec<Reason> {
    let held = |target: &&Target| {
        let stays = target.can_be_moved != Some(true) && target.can_be_closed == Some(false);
        let people = target.occupancy != Some(Occupancy::Rare)
            && !matches!(target.kind, TargetKind::Fence | TargetKind::Services);
        let is_inside = planned
            .inside
            .iter()
            .any(|inside| inside.record == target.id && inside.reason.about == target.id);
        stays && people && is_inside && !target.id.is_empty()
    };
    site.file
        .site
        .targets
        .iter()
        .filter(held)
        .map(|target| {
            Reason::new("stop.zone-not-clear")
                .about(&target.id)
                .text("target", &target.name)
                .number("radius", planned.keep_out_m, Quantity::LengthM)
        })
        .collect()
}

/// Whether people are under the crown: a target that is more than rarely occupied reaches under it.
/// Without a position or a crown nobody can say, and any target counts.
pub(crate) fn is_over_people(case: &TreeCase) -> bool {
    let mut targets = case.site.file.site.targets.iter();
    targets.any(|target| {
        let occupied = target.occupancy != Some(Occupancy::Rare);
        let under = || {
            let at = case.tree.position?;
            let plane = case.site.plane?;
            let reach = case.look().crown?.radius_m + R95_OF_R68 * at.accuracy_m?;
            let away = distance_m(&plane, at.point(), target.form, &target.ground)?;
            Some(away <= reach)
        };
        occupied && under().unwrap_or(true)
    })
}
