//! Which measurement would narrow the answer most.

use crate::record::{DiameterRead, HeightMethod, NextMeasurement, Quantity, Reason, UnionForm};

use super::inputs::Inputs;
use super::plan_case::PlanCase;
use super::rules::Rule;
use super::sampling::SAMPLES;
use super::score::{Sampled, ScoreModel};
use super::section::ShellBasis;
use super::stem::SectionFacts;
use super::wood::WoodBasis;

/// A better measurement of some inputs: how much of their spread it leaves, and what it costs.
struct Offer {
    /// Inputs whose names begin with this.
    input: String,
    what: Reason,
    /// New standard error over the one now.
    left: f64,
    cost: Rule,
}

/// The next measurement: the one with the largest share of the spread taken away. Nothing where
/// none of them would take anything.
pub(crate) fn next_measurement(
    plan: &PlanCase,
    model: &ScoreModel,
    facts: &[SectionFacts],
    sampled: &Sampled,
) -> Option<NextMeasurement> {
    let rules = plan.case.site.rules;
    let bins = rules.number(Rule::ScoreSensitivityBins).max(2.0) as u32;
    let mut best: Option<NextMeasurement> = None;
    for offer in offers(plan, &model.inputs, facts) {
        let names = model.inputs.names().enumerate();
        let share: f64 = names
            .filter(|(_, name)| name.starts_with(&offer.input))
            .map(|(input, _)| first_order(&model.inputs, input, sampled, bins))
            .sum();
        let gain_pct = 100.0 * share.min(1.0) * (1.0 - offer.left * offer.left);
        if gain_pct > best.as_ref().map_or(0.5, |best| best.gain_pct) {
            best = Some(NextMeasurement {
                what: offer.what,
                cost_s: rules.number(offer.cost),
                gain_pct,
            });
        }
    }
    best
}

/// First-order sensitivity: variance of the mean score over bins of equal probability, over the
/// variance of the score.
fn first_order(inputs: &Inputs, input: usize, sampled: &Sampled, bins: u32) -> f64 {
    let strata = inputs.strata(input);
    let mut sums = vec![(0.0_f64, 0.0_f64); bins as usize];
    let count = sampled.scores.len() as f64;
    let mean = sampled.scores.iter().map(|(_, score)| score).sum::<f64>() / count.max(1.0);
    let mut variance = 0.0;
    for (sample, score) in &sampled.scores {
        let stratum = strata.get(*sample as usize).copied().unwrap_or(0);
        let bin = (u64::from(stratum) * u64::from(bins) / u64::from(SAMPLES)) as usize;
        if let Some(sum) = sums.get_mut(bin) {
            sum.0 += score;
            sum.1 += 1.0;
        }
        variance += (score - mean) * (score - mean);
    }
    if variance <= 0.0 {
        return 0.0;
    }
    let between: f64 = sums
        .iter()
        .filter(|(_, n)| *n > 0.0)
        .map(|(sum, n)| n * (sum / n - mean) * (sum / n - mean))
        .sum();
    // What chance alone puts between the bins is taken off.
    let chance = f64::from(bins - 1) / (count - 1.0).max(1.0);
    ((between / variance - chance) / (1.0 - chance).max(1e-9)).clamp(0.0, 1.0)
}

fn offers(plan: &PlanCase, inputs: &Inputs, facts: &[SectionFacts]) -> Vec<Offer> {
    let mut offers = Vec::new();
    measures(plan, &mut offers);
    anchor(plan, &mut offers);
    walls(plan, facts, &mut offers);
    for name in inputs
        .names()
        .filter(|name| name.starts_with("seen.walk-part"))
    {
        let part = name.trim_start_matches("seen.");
        offers.push(Offer {
            input: name.to_owned(),
            what: Reason::new("next.look-again").term("part", part),
            left: 0.0,
            cost: Rule::CostLookS,
        });
    }
    offers
}

fn measures(plan: &PlanCase, offers: &mut Vec<Offer>) {
    let case = plan.case;
    let rules = case.site.rules;
    let better = |now: f64, new: f64| (new < now).then(|| new / now);
    let look = case.look();
    if let Some(height) = look.height
        && height.method != Some(HeightMethod::Sine)
        && let Some(left) = better(
            super::spread::height_cv(&height, rules),
            rules.number(Rule::MeasureHeightSineCv),
        )
    {
        offers.push(offer("height", "next.height", left, Rule::CostHeightS));
    }
    if let Some(girth) = look.girth
        && let Some(left) = better(
            super::spread::girth_cv(&girth, rules),
            rules.number(Rule::MeasureGirthTapeCv),
        )
    {
        offers.push(offer("girth", "next.girth", left, Rule::CostGirthS));
    }
    if let Some(lean) = look.lean
        && let Some(left) = better(
            super::spread::lean_se_deg(&lean, rules),
            rules.number(Rule::MeasureLeanTwoSidesDeg),
        )
    {
        offers.push(offer("lean", "next.lean", left, Rule::CostLeanS));
    }
    let wood = &case.wood.strength_mpa;
    // A species that is named but not in the tables stays so, however closely anybody looks.
    let named = case.tree.species.as_deref();
    let named = named.is_some_and(|species| species.split_whitespace().count() > 1);
    if wood.basis != WoodBasis::Species
        && !named
        && let Some(left) = better(wood.cv, rules.number(Rule::WoodMemoryCv))
    {
        offers.push(offer(
            "wood.strength",
            "next.species",
            left,
            Rule::CostSpeciesS,
        ));
    }
    if plan
        .climber
        .is_none_or(|person| person.mass_with_gear_kg.is_none())
    {
        let now = rules.number(Rule::LoadClimberSeKg) / rules.number(Rule::LoadClimberKg);
        if let Some(left) = better(now, rules.number(Rule::LoadNamedClimberCv)) {
            offers.push(offer("load.mass", "next.climber", left, Rule::CostClimberS));
        }
    }
}

/// The anchor's diameter: first from the ground, on a scaled photo; then by tape aloft.
fn anchor(plan: &PlanCase, offers: &mut Vec<Offer>) {
    let Some(anchor) = plan.anchor else { return };
    let rules = plan.case.site.rules;
    let now = super::spread::anchor_cv(anchor, rules);
    let input = format!("anchor.{}.diameter", anchor.id);
    let photo = rules.number(Rule::MeasureAnchorScaledPhotoCv);
    let tape = rules.number(Rule::MeasureAnchorTapeAloftCv);
    if now > photo {
        offers.push(offer(
            &input,
            "next.anchor-photo",
            photo / now,
            Rule::CostAnchorPhotoS,
        ));
    } else if anchor.diameter_read != Some(DiameterRead::TapeAloft) && now > tape {
        offers.push(offer(
            &input,
            "next.anchor-tape",
            tape / now,
            Rule::CostAnchorTapeS,
        ));
    }
    if anchor.union == Some(UnionForm::NotSeen) {
        offers.push(offer(
            "seen.anchor",
            "next.anchor-union",
            0.0,
            Rule::CostLookS,
        ));
    }
}

fn walls(plan: &PlanCase, facts: &[SectionFacts], offers: &mut Vec<Offer>) {
    let rules = plan.case.site.rules;
    for section in facts {
        let left = match section.shell.basis {
            // Three more readings leave nothing open between them.
            ShellBasis::OneReading | ShellBasis::TwoReadings => 0.0,
            ShellBasis::Mallet => {
                // Evenly spread over 0.3 of the radius, against the drill's error.
                let low = rules.number(Rule::MeasureMalletDullLow);
                let high = rules.number(Rule::MeasureMalletDullHigh);
                let now_cm = (high - low) * section.shell.radius_cm / libm::sqrt(12.0);
                (rules.number(Rule::MeasureShellDrillCm) / now_cm).min(1.0)
            }
            ShellBasis::Around | ShellBasis::Nothing => continue,
        };
        let mut offer = offer(
            &format!("section.{}.wall", super::stem::stream_key(Some(section))),
            "next.section-drill",
            left,
            Rule::CostSectionDrillS,
        );
        offer.what =
            offer
                .what
                .about(&section.id)
                .number("height", section.height_m, Quantity::LengthM);
        offers.push(offer);
    }
}

fn offer(input: &str, what: &str, left: f64, cost: Rule) -> Offer {
    Offer {
        input: input.to_owned(),
        what: Reason::new(what),
        left,
        cost,
    }
}
