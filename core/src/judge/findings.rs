//! What each defect leaves of the score, by its grade and its place.
//!
//! In one part of the tree the worst counts in full, the others by their square root; one code
//! twice in one place counts once. A part only part seen counts as something between grade 2 and 3.
//! A weakness that is already in the strength takes no second factor.

use std::collections::BTreeMap;

use crate::record::{
    DefectKind, Finding, Id, Look, MalletSound, Reason, StemSection, TreePart, UnionForm, WalkPart,
};

use super::caps::BASE_SECTION_M;
use super::gaps::part_term;
use super::inputs::{Inputs, Lot, Values};
use super::plan_case::PlanCase;
use super::route::Place;
use super::rules::{Rule, RuleSet};
use super::tree_case::Defect;

/// A decay found within this of a section is the decay the section measured (house).
const SAME_DECAY_M: f64 = 0.5;

/// One factor before its part's sharing: certain, or an input that is sampled.
enum Term {
    Certain(f64),
    Sampled(usize),
}

impl Term {
    fn at(&self, values: &Values) -> f64 {
        match self {
            Term::Certain(factor) => *factor,
            Term::Sampled(input) => values.of(*input),
        }
    }
}

/// A cause that takes points: what is said of it, and its factor.
pub(crate) struct Cause {
    pub reason: Reason,
    pub part: TreePart,
    term: Term,
}

/// The factors of everything found or not fully seen.
pub(crate) struct Findings {
    pub causes: Vec<Cause>,
    others_power: f64,
}

impl Findings {
    /// Gathers the causes for a plan; what is sampled joins the inputs.
    pub(crate) fn of(plan: &PlanCase, inputs: &mut Inputs) -> Self {
        let rules = plan.case.site.rules;
        let mut causes = found(plan);
        for part in WalkPart::ALL {
            let Some(tree_part) = part_of(part) else {
                continue;
            };
            if plan.case.seen.look_at(part) == Look::PartSeen {
                let input = part_seen(inputs, &format!("seen.{}", part_term(part)), rules);
                causes.push(Cause {
                    reason: Reason::new("cause.part-seen").term("part", part_term(part)),
                    part: tree_part,
                    term: Term::Sampled(input),
                });
            }
        }
        if let Some(anchor) = plan.anchor
            && anchor.union == Some(UnionForm::NotSeen)
        {
            let input = part_seen(inputs, &format!("seen.anchor.{}", anchor.id), rules);
            causes.push(Cause {
                reason: Reason::new("cause.anchor-union-not-seen").about(&anchor.id),
                part: TreePart::Union,
                term: Term::Sampled(input),
            });
        }
        Findings {
            causes,
            others_power: rules.number(Rule::FindingOthersPower),
        }
    }

    /// The factor of each cause for one set of values, in their order.
    pub(crate) fn factors(&self, values: &Values) -> Vec<f64> {
        let bare: Vec<f64> = self.causes.iter().map(|c| c.term.at(values)).collect();
        // The place of the worst of each part; of two alike the first.
        let mut worst: BTreeMap<TreePart, (usize, f64)> = BTreeMap::new();
        for (place, (cause, factor)) in self.causes.iter().zip(&bare).enumerate() {
            let first = worst.entry(cause.part).or_insert((place, *factor));
            if *factor < first.1 {
                *first = (place, *factor);
            }
        }
        let others = |place: usize, cause: &Cause, factor: f64| {
            let in_full = worst.get(&cause.part).is_some_and(|first| first.0 == place);
            if in_full {
                factor
            } else {
                libm::pow(factor, self.others_power)
            }
        };
        self.causes
            .iter()
            .zip(bare)
            .enumerate()
            .map(|(place, (cause, factor))| others(place, cause, factor))
            .collect()
    }
}

fn part_seen(inputs: &mut Inputs, name: &str, rules: &RuleSet) -> usize {
    inputs.add(
        name,
        Lot::Uniform {
            low: rules.number(Rule::FindingGrade3),
            high: rules.number(Rule::FindingGrade2),
        },
    )
}

/// The parts whose hiding is sampled; wires, hangers and insects only cap.
fn part_of(part: WalkPart) -> Option<TreePart> {
    Some(match part {
        WalkPart::Roots => TreePart::Roots,
        WalkPart::Base => TreePart::Base,
        WalkPart::StemNorth | WalkPart::StemEast | WalkPart::StemSouth | WalkPart::StemWest => {
            TreePart::Stem
        }
        WalkPart::Unions => TreePart::Union,
        WalkPart::Crown => TreePart::Crown,
        WalkPart::Wires | WalkPart::Hangers | WalkPart::Insects => return None,
    })
}

/// What makes two findings one: the same code in the same place.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct OnePlace {
    code: Id,
    part: TreePart,
    place: Place,
    height_m: Option<i64>,
    octant: Option<i64>,
}

fn found(plan: &PlanCase) -> Vec<Cause> {
    let mut kept: BTreeMap<OnePlace, (usize, Defect)> = BTreeMap::new();
    for (order, defect) in plan.case.defects().enumerate() {
        if is_in_the_strength(plan, &defect) {
            continue;
        }
        let finding = defect.finding;
        let key = OnePlace {
            code: finding.code.clone(),
            part: finding.part,
            place: plan.route.place(finding),
            height_m: finding.height_m.map(|height| libm::floor(height) as i64),
            octant: finding
                .side_deg
                .map(|side| libm::floor(side.rem_euclid(360.0) / 45.0) as i64),
        };
        let first = kept.entry(key).or_insert((order, defect));
        if defect.grade > first.1.grade {
            first.1 = defect;
        }
    }
    let mut kept: Vec<_> = kept.into_iter().collect();
    kept.sort_by_key(|(_, (order, _))| *order);
    kept.into_iter()
        .map(|(key, (_, defect))| cause(plan, key.place, &defect))
        .collect()
}

fn cause(plan: &PlanCase, place: Place, defect: &Defect) -> Cause {
    let rules = plan.case.site.rules;
    let whole = rules.number(match defect.grade {
        1 => Rule::FindingGrade1,
        2 => Rule::FindingGrade2,
        _ => Rule::FindingGrade3,
    });
    let reason = Reason::new("cause.finding")
        .about(&defect.finding.id)
        .term("name", kind_term(defect.kind))
        .term("grade", grade_term(defect.grade))
        .term("place", place.term());
    Cause {
        reason,
        part: defect.finding.part,
        term: Term::Certain(place.weigh(whole, rules)),
    }
}

/// Decay that a section measured, and included bark at the anchor's own union.
fn is_in_the_strength(plan: &PlanCase, defect: &Defect) -> bool {
    match defect.kind {
        DefectKind::Decay => {
            let mut sections = plan.case.look().sections.iter();
            sections.any(|section| measures(section, defect.finding))
        }
        DefectKind::IncludedBark => plan.anchor.is_some_and(|anchor| {
            !anchor.id.is_empty()
                && anchor.id == defect.finding.anchor
                && anchor.union == Some(UnionForm::IncludedBark)
        }),
        _ => false,
    }
}

fn measures(section: &StemSection, finding: &Finding) -> bool {
    let read = !section.readings.is_empty()
        || section.mallet.iter().any(|m| *m != MalletSound::NotSounded);
    read && match (finding.part, finding.height_m) {
        (TreePart::Base, None) => section.height_m <= BASE_SECTION_M,
        (TreePart::Base | TreePart::Stem, Some(height)) => {
            (section.height_m - height).abs() <= SAME_DECAY_M
        }
        _ => false,
    }
}

/// The catalogue's word for a grade.
fn grade_term(grade: u32) -> &'static str {
    match grade {
        1 => "grade.1",
        2 => "grade.2",
        _ => "grade.3",
    }
}

/// The catalogue's word for what a defect means.
pub(crate) fn kind_term(kind: DefectKind) -> &'static str {
    match kind {
        DefectKind::SoilMovement => "defect-kind.soil-movement",
        DefectKind::RootsCut => "defect-kind.roots-cut",
        DefectKind::GirdlingRoots => "defect-kind.girdling-roots",
        DefectKind::Decay => "defect-kind.decay",
        DefectKind::FireHollow => "defect-kind.fire-hollow",
        DefectKind::BracketUnnamed => "defect-kind.bracket-unnamed",
        DefectKind::Kretzschmaria => "defect-kind.kretzschmaria",
        DefectKind::Meripilus => "defect-kind.meripilus",
        DefectKind::Phaeolus => "defect-kind.phaeolus",
        DefectKind::Heterobasidion => "defect-kind.heterobasidion",
        DefectKind::Inonotus => "defect-kind.inonotus",
        DefectKind::Ganoderma => "defect-kind.ganoderma",
        DefectKind::Armillaria => "defect-kind.armillaria",
        DefectKind::BracketOther => "defect-kind.bracket-other",
        DefectKind::StemCrack => "defect-kind.stem-crack",
        DefectKind::UnionCrack => "defect-kind.union-crack",
        DefectKind::IncludedBark => "defect-kind.included-bark",
        DefectKind::LimbCrack => "defect-kind.limb-crack",
        DefectKind::LightningStrip => "defect-kind.lightning-strip",
        DefectKind::UnderTension => "defect-kind.under-tension",
        DefectKind::Hanger => "defect-kind.hanger",
        DefectKind::DeadLimb => "defect-kind.dead-limb",
        DefectKind::Dieback => "defect-kind.dieback",
        DefectKind::ToppingRegrowth => "defect-kind.topping-regrowth",
        DefectKind::Wound => "defect-kind.wound",
        DefectKind::Canker => "defect-kind.canker",
        DefectKind::Climbers => "defect-kind.climbers",
        DefectKind::StingingInsects => "defect-kind.stinging-insects",
        DefectKind::NestOrRoost => "defect-kind.nest-or-roost",
        DefectKind::TouchingWire => "defect-kind.touching-wire",
        DefectKind::Other => "defect-kind.other",
    }
}
