//! Cracks, fungi, fire, lightning, and the strength that decay has taken.

use crate::judge::plan_case::PlanCase;
use crate::judge::route::Place;
use crate::judge::tree_case::{Defect, TreeCase};
use crate::record::{DefectKind, LifeState, MalletSound, Reason};

use super::about;

pub(super) fn of_tree(case: &TreeCase, stops: &mut Vec<Reason>) {
    for defect in case.defects() {
        if let Some(code) = stop_of(case, &defect) {
            stops.push(about(&defect, code));
        }
        let crews = case.site.book.code(&defect.finding.code);
        let from = crews.and_then(|code| code.stops_from_grade);
        if from.is_some_and(|from| defect.grade >= from) {
            let name = crews.and_then(|code| code.name.as_deref());
            let stop = about(&defect, "stop.crew-code");
            stops.push(match name {
                Some(name) => stop.text("name", name),
                None => stop.term("name", super::super::findings::kind_term(defect.kind)),
            });
        }
    }
}

fn stop_of(case: &TreeCase, defect: &Defect) -> Option<&'static str> {
    let dying = case.look().life == Some(LifeState::Dying);
    let dieback = dying
        || case.look().dieback_pct.is_some_and(|lost| lost > 0.0)
        || case.has(DefectKind::Dieback);
    Some(match defect.kind {
        DefectKind::StemCrack if defect.grade == 3 => "stop.stem-crack",
        DefectKind::LightningStrip => "stop.lightning-strip",
        DefectKind::UnderTension => "stop.under-tension",
        DefectKind::FireHollow => "stop.fire-hollow",
        DefectKind::Kretzschmaria => "stop.kretzschmaria",
        DefectKind::Meripilus => "stop.meripilus",
        DefectKind::Phaeolus => "stop.phaeolus",
        DefectKind::Heterobasidion => "stop.heterobasidion",
        DefectKind::Inonotus if case.genus() == "fraxinus" => "stop.inonotus-ash",
        DefectKind::Ganoderma if case.sounds(MalletSound::Hollow) => "stop.ganoderma-hollow",
        DefectKind::Armillaria if dieback => "stop.armillaria-dieback",
        _ => return None,
    })
}

/// Crack in or opening of a union on the route or under the anchor, from grade 2.
pub(super) fn on_route(plan: &PlanCase, stops: &mut Vec<Reason>) {
    for defect in plan.case.defects() {
        let carries = matches!(
            plan.route.place(defect.finding),
            Place::OnRoute | Place::UnderAnchor
        );
        if defect.kind == DefectKind::UnionCrack && defect.grade >= 2 && carries {
            stops.push(about(&defect, "stop.union-crack"));
        }
    }
}
