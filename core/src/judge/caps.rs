//! What holds the verdict at *refer* or at *limited*, whatever the score.

use crate::record::{
    ArgValue, DefectKind, Look, MalletSound, Quantity, Reason, TreePart, UnionForm, WalkPart,
};

use super::findings::kind_term;
use super::gaps::part_term;
use super::plan_case::PlanCase;
use super::rules::Rule;
use super::stem::SectionFacts;
use super::tree_case::{Defect, TreeCase};

/// Sections up to this height speak for the base (house).
pub(crate) const BASE_SECTION_M: f64 = 1.5;

/// Caps at refer that do not hang on the sections' walls.
pub(crate) fn refer(plan: &PlanCase) -> Vec<Reason> {
    let mut caps = Vec::new();
    let case = plan.case;
    for defect in case.defects() {
        let place = plan.route.place(defect.finding);
        if defect.grade == 3 && place.counts_in_full() {
            let cap = named(case, &defect, "cap.grade-3-on-route");
            caps.push(cap.term("place", place.term()));
        }
        if defect.kind == DefectKind::BracketUnnamed {
            caps.push(named(case, &defect, "cap.bracket-not-named"));
        }
    }
    if case.is_dead() {
        caps.push(Reason::new("cap.dead-tree"));
    }
    if base_asks_for_section(case) && !base_has_section(case) {
        caps.push(Reason::new("cap.base-needs-section"));
    }
    caps
}

/// Dull or hollow sound, a cavity or a bracket of any grade at the base asks for a section.
fn base_asks_for_section(case: &TreeCase) -> bool {
    let sounds = |sound: MalletSound| case.base_sounds().contains(&Some(sound));
    let mut defects = case.defects();
    sounds(MalletSound::Dull)
        || sounds(MalletSound::Hollow)
        || defects.any(|defect| {
            matches!(defect.finding.part, TreePart::Base | TreePart::Roots)
                && is_decay_or_bracket(defect.kind)
        })
}

fn is_decay_or_bracket(kind: DefectKind) -> bool {
    matches!(
        kind,
        DefectKind::Decay
            | DefectKind::FireHollow
            | DefectKind::BracketUnnamed
            | DefectKind::Kretzschmaria
            | DefectKind::Meripilus
            | DefectKind::Phaeolus
            | DefectKind::Heterobasidion
            | DefectKind::Inonotus
            | DefectKind::Ganoderma
            | DefectKind::Armillaria
            | DefectKind::BracketOther
    )
}

/// A section near the base that was measured, or sounded all around.
fn base_has_section(case: &TreeCase) -> bool {
    case.look().sections.iter().any(|section| {
        let sounded = |m: &&MalletSound| **m != MalletSound::NotSounded;
        section.height_m <= BASE_SECTION_M
            && (!section.readings.is_empty() || section.mallet.iter().filter(sounded).count() == 8)
    })
}

/// Caps at refer from the walls of the sections.
pub(crate) fn refer_for_walls(plan: &PlanCase, facts: &[SectionFacts]) -> Vec<Reason> {
    let rules = plan.case.site.rules;
    let mut caps = Vec::new();
    for section in facts {
        let Some(found) = section.formulas else {
            continue;
        };
        let about = |code: &str| {
            Reason::new(code).about(&section.id).number(
                "height",
                section.height_m,
                Quantity::LengthM,
            )
        };
        let most = rules.number(Rule::CapOpeningDeg);
        if found.opening_deg > most {
            caps.push(about("cap.opening").number(
                "opening",
                found.opening_deg,
                Quantity::AngleDeg,
            ));
        }
        let least = rules.number(Rule::CapShellRatio);
        if found.opening_deg <= 0.0 && found.least_shell_ratio < least {
            caps.push(about("cap.shell-thin").number(
                "ratio",
                found.least_shell_ratio,
                Quantity::Ratio,
            ));
        }
        let wagener = found.wagener_pct >= rules.number(Rule::CapWagenerPct);
        let smiley = found.smiley_fraedrich_pct >= rules.number(Rule::CapSmileyFraedrichPct);
        if wagener || smiley {
            let loss = found.wagener_pct.max(found.smiley_fraedrich_pct);
            caps.push(about("cap.strength-loss").number("loss", loss, Quantity::Percent));
        }
    }
    caps
}

/// Caps at limited.
pub(crate) fn limited(plan: &PlanCase) -> Vec<Reason> {
    let mut caps = Vec::new();
    let case = plan.case;
    for part in WalkPart::ALL {
        if case.seen.look_at(part) == Look::PartSeen {
            caps.push(Reason::new("cap.part-seen").term("part", part_term(part)));
        }
    }
    if let Some(day) = case.seen.full_day.filter(|day| *day != case.site.as_of) {
        caps.push(Reason::new("cap.full-check-older").with("day", ArgValue::OnDay { day }));
    }
    if let Some(anchor) = plan.anchor {
        let name = anchor.name.as_deref().unwrap_or(anchor.id.as_str());
        let about = |code: &str| Reason::new(code).about(&anchor.id).text("anchor", name);
        if anchor.union == Some(UnionForm::NotSeen) {
            caps.push(about("cap.anchor-union-part-seen"));
        }
        // Whatever the ratio: a thinner limb must never gain.
        if anchor.union == Some(UnionForm::IncludedBark) {
            caps.push(about("cap.included-bark-anchor"));
        }
    }
    for defect in case.defects() {
        included_bark(plan, &defect, &mut caps);
    }
    caps
}

/// Included bark below the anchor with a limb nearly as thick as its parent; an unknown ratio counts
/// as that.
fn included_bark(plan: &PlanCase, defect: &Defect, caps: &mut Vec<Reason>) {
    let most = plan.case.site.rules.number(Rule::CapAspectIncluded);
    let wide = defect.finding.aspect_ratio.is_none_or(|ratio| ratio > most);
    if defect.kind == DefectKind::IncludedBark
        && wide
        && plan.route.is_below(defect.finding.height_m)
    {
        caps.push(named(plan.case, defect, "cap.included-bark"));
    }
}

/// A reason about a finding that names it.
fn named(case: &TreeCase, defect: &Defect, code: &str) -> Reason {
    let reason = Reason::new(code).about(&defect.finding.id);
    let name = case.site.book.code(&defect.finding.code);
    match name.and_then(|code| code.name.as_deref()) {
        Some(name) => reason.text("name", name),
        None => reason.term("name", kind_term(defect.kind)),
    }
}
