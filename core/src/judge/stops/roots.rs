//! Roots and the ground over them.

use crate::judge::rules::Rule;
use crate::judge::tree_case::TreeCase;
use crate::judge::working::Working;
use crate::record::{DefectKind, GroundDug, Quantity, Reason};

use super::about;

pub(super) fn of_tree(case: &TreeCase, stops: &mut Vec<Reason>) {
    for defect in case.defects() {
        match defect.kind {
            DefectKind::SoilMovement => stops.push(about(&defect, "stop.soil-movement")),
            DefectKind::RootsCut if defect.finding.cleared_by.is_empty() => {
                stops.push(about(&defect, "stop.roots-cut"));
            }
            _ => {}
        }
    }
    if case.look().lean_is_new == Some(true) {
        stops.push(Reason::new("stop.lean-new"));
    }
    if let Some(dug) = case.look().ground_dug.as_ref().filter(|dug| dug.dug)
        && dug.cleared_by.is_empty()
        && is_recent(case, dug)
    {
        ground_dug(case, dug, stops);
    }
}

fn is_recent(case: &TreeCase, dug: &GroundDug) -> bool {
    let days = 365.25 * case.site.rules.number(Rule::StopRootsYears);
    dug.when
        .is_none_or(|when| (case.site.as_of.days_since(when) as f64) <= days)
}

fn root_radius_m(case: &TreeCase) -> Option<f64> {
    let ratio = case.site.rules.number(Rule::StopRootRadiusSensitiveRatio);
    Some(case.breast_diameter_cm()? / 100.0 * ratio)
}

/// The working of the critical root radius, where something was dug.
pub(crate) fn explain(case: &TreeCase, lines: &mut Working) {
    let dug = case.look().ground_dug.as_ref().filter(|dug| dug.dug);
    let (Some(_), Some(radius_m), Some(diameter_cm)) =
        (dug, root_radius_m(case), case.breast_diameter_cm())
    else {
        return;
    };
    let row = case.site.rules.row(Rule::StopRootRadiusSensitiveRatio);
    lines
        .line("work.root-radius", "k D/100", radius_m, Quantity::LengthM)
        .input("k", row.value, Quantity::Ratio)
        .input("D", diameter_cm, Quantity::LengthCm)
        .source(&row.source);
}

/// Inside the critical root radius; a distance or a girth that nobody took counts as inside. The
/// larger of the published radii is used.
fn ground_dug(case: &TreeCase, dug: &GroundDug, stops: &mut Vec<Reason>) {
    let radius_m = root_radius_m(case);
    match (dug.distance_m, radius_m) {
        (Some(distance), Some(radius)) if distance > radius => {}
        (Some(distance), Some(radius)) => stops.push(
            Reason::new("stop.ground-dug")
                .number("distance", distance, Quantity::LengthM)
                .number("radius", radius, Quantity::LengthM),
        ),
        _ => stops.push(Reason::new("stop.ground-dug-unmeasured")),
    }
}
