//! The score at central values, its interval and the verdict at its 10 % end.

mod working;

use crate::record::{Id, PartMargin, Quantity, Reason, Score};

use super::anchor::{AnchorModel, SharedInputs};
use super::attribution::{Lost, shares};
use super::findings::Findings;
use super::inputs::{Inputs, Values};
use super::plan_case::PlanCase;
use super::rules::{Rule, RuleSet};
use super::sampling::{SAMPLES, percentile};
use super::stem::{SectionFacts, StemMargin, StemModel};

/// Everything that the score of one plan is made of.
pub(crate) struct ScoreModel<'a> {
    rules: &'a RuleSet,
    pub anchor: AnchorModel<'a>,
    anchor_id: Id,
    pub stems: Vec<StemModel<'a>>,
    findings: Findings,
    hidden: f64,
    pub inputs: Inputs,
}

/// The structure's factor and what fixed it.
struct Structure {
    factor: f64,
    weakest: Weakest,
}

#[derive(Clone, Copy, PartialEq)]
enum Weakest {
    Anchor,
    Margin(usize),
    Modulus(usize),
}

/// What the samples say.
pub(crate) struct Sampled {
    /// Scores of the samples that count, with their numbers.
    pub scores: Vec<(u32, f64)>,
    pub margins: Vec<PartMargin>,
    /// Fewer samples agree with the load test than the rule set asks.
    pub test_disagrees: bool,
}

/// f(m): 0 at the stop, 1 at the full margin, by logarithms between.
pub(crate) fn margin_factor(margin: f64, rules: &RuleSet) -> f64 {
    let stop = rules.number(Rule::MarginStopAt);
    let full = rules.number(Rule::MarginFullAt);
    if margin >= full {
        1.0
    } else if margin <= stop {
        0.0
    } else {
        (libm::log(margin) - libm::log(stop)) / (libm::log(full) - libm::log(stop))
    }
}

/// g(W left): 1 at the full share, 0 at the least, linear between.
pub(crate) fn modulus_factor(left_pct: f64, rules: &RuleSet) -> f64 {
    let full = rules.number(Rule::MarginModulusFullPct);
    let least = rules.number(Rule::MarginModulusNonePct);
    ((left_pct - least) / (full - least)).clamp(0.0, 1.0)
}

impl<'a> ScoreModel<'a> {
    /// The model of a plan; nothing where a reading it needs is missing.
    pub(crate) fn of(plan: &PlanCase<'a>, facts: &[SectionFacts]) -> Option<ScoreModel<'a>> {
        let look = plan.case.look();
        let stream = if look.id.is_empty() {
            &plan.case.tree.id
        } else {
            &look.id
        };
        let mut inputs = Inputs::new(stream);
        let shared = SharedInputs::of(plan, &mut inputs);
        let anchor = AnchorModel::of(plan, &shared, &mut inputs)?;
        let stems = StemModel::all(plan, facts, &shared, &mut inputs)?;
        let findings = Findings::of(plan, &mut inputs);
        let rules = plan.case.site.rules;
        let hidden = rules.number(if anchor.is_tested() {
            Rule::ScoreHiddenGroundTested
        } else {
            Rule::ScoreHiddenGround
        });
        let mut model = ScoreModel {
            rules,
            anchor,
            anchor_id: plan.anchor.map(|a| a.id.clone()).unwrap_or_default(),
            stems,
            findings,
            hidden,
            inputs,
        };
        model.keep_weakest();
        Some(model)
    }

    /// Only the weakest heights are sampled.
    fn keep_weakest(&mut self) {
        let x = self.inputs.central();
        let most = self.rules.number(Rule::StemSectionsSampled).max(1.0) as usize;
        let mut order: Vec<(f64, f64, usize)> = self
            .stems
            .iter()
            .enumerate()
            .map(|(place, stem)| {
                let found = stem.margin(&x);
                let factor = margin_factor(found.margin, self.rules)
                    .min(modulus_factor(found.steady_left_pct, self.rules));
                (factor, found.margin, place)
            })
            .collect();
        order.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let kept: Vec<usize> = order.into_iter().take(most).map(|(_, _, p)| p).collect();
        let mut place = 0;
        self.stems.retain(|_| {
            let keep = kept.contains(&place);
            place += 1;
            keep
        });
    }

    fn structure(&self, stems: &[StemMargin], work: f64) -> Structure {
        let mut least = Structure {
            factor: margin_factor(work, self.rules),
            weakest: Weakest::Anchor,
        };
        for (place, (stem, found)) in self.stems.iter().zip(stems).enumerate() {
            if !stem.is_under_route() {
                continue;
            }
            for (factor, weakest) in [
                (
                    margin_factor(found.margin, self.rules),
                    Weakest::Margin(place),
                ),
                (
                    modulus_factor(found.steady_left_pct, self.rules),
                    Weakest::Modulus(place),
                ),
            ] {
                if factor < least.factor {
                    least = Structure { factor, weakest };
                }
            }
        }
        least
    }

    fn central_stems(&self, x: &Values) -> Vec<StemMargin> {
        self.stems.iter().map(|stem| stem.margin(x)).collect()
    }

    fn score_at(&self, x: &Values, stems: &[StemMargin], work: f64) -> f64 {
        let findings: f64 = self.findings.factors(x).into_iter().product();
        100.0 * self.structure(stems, work).factor * findings * self.hidden
    }

    /// Central margins: the anchor's working margin, and the least of the stem under the route.
    pub(crate) fn central_margins(&self) -> (f64, Vec<(Id, f64, f64)>) {
        let x = self.inputs.central();
        let stems = self.stems.iter().filter(|stem| stem.is_under_route());
        (
            self.anchor.margins(&x).work,
            stems
                .map(|stem| (stem.id.clone(), stem.height_m, stem.margin(&x).margin))
                .collect(),
        )
    }

    /// Runs the samples. Those in which a load test that held would have failed are left out.
    pub(crate) fn sample(&self, draws: u32) -> Sampled {
        let mut scores = Vec::new();
        let mut parts: Vec<Vec<f64>> = vec![Vec::new(); 3 + self.stems.len()];
        for number in 0..draws {
            let x = self.inputs.sample(number);
            let anchor = self.anchor.margins(&x);
            if anchor.test.is_some_and(|margin| margin < 1.0) {
                continue;
            }
            let stems: Vec<StemMargin> = self.stems.iter().map(|s| s.sampled_margin(&x)).collect();
            scores.push((number, self.score_at(&x, &stems, anchor.work)));
            let all = [anchor.work, anchor.rescue, anchor.slip];
            let stems = stems.iter().map(|stem| stem.margin);
            for (part, margin) in parts.iter_mut().zip(all.into_iter().chain(stems)) {
                part.push(margin);
            }
        }
        let asked = self.rules.number(Rule::TestLeastSamples) * f64::from(draws);
        Sampled {
            test_disagrees: (scores.len() as f64) < asked / f64::from(SAMPLES),
            margins: self.part_margins(&parts),
            scores,
        }
    }

    fn part_margins(&self, parts: &[Vec<f64>]) -> Vec<PartMargin> {
        let x = self.inputs.central();
        let anchor = self.anchor.margins(&x);
        let mut list = Vec::new();
        let named = [
            ("margin.anchor", anchor.work),
            ("margin.rescue", anchor.rescue),
            ("margin.slip", anchor.slip),
        ];
        for ((part, central), samples) in named.into_iter().zip(parts) {
            list.push(PartMargin {
                part: part.to_owned(),
                about: self.anchor_id.clone(),
                central,
                low: percentile(samples, 0.1).unwrap_or(0.0),
                high: percentile(samples, 0.9).unwrap_or(0.0),
                modulus_left_pct: None,
            });
        }
        for (stem, samples) in self.stems.iter().zip(parts.iter().skip(3)) {
            let found = stem.margin(&x);
            let is_base = stem.id.is_empty() && stem.height_m == 0.0;
            list.push(PartMargin {
                part: if is_base {
                    "margin.base"
                } else {
                    "margin.section"
                }
                .to_owned(),
                about: stem.id.clone(),
                central: found.margin,
                low: percentile(samples, 0.1).unwrap_or(0.0),
                high: percentile(samples, 0.9).unwrap_or(0.0),
                modulus_left_pct: Some(found.modulus_left_pct),
            });
        }
        list
    }

    /// The score with its interval and the shares of its causes; nothing when it is nothing.
    pub(crate) fn score(&self, sampled: &Sampled) -> Option<Score> {
        let x = self.inputs.central();
        let structure = self.structure(&self.central_stems(&x), self.anchor.margins(&x).work);
        let mut lost = vec![Lost {
            cause: self.structure_cause(&structure),
            factor: structure.factor,
        }];
        for (cause, factor) in self.findings.causes.iter().zip(self.findings.factors(&x)) {
            lost.push(Lost {
                cause: cause.reason.clone(),
                factor,
            });
        }
        lost.push(Lost {
            cause: Reason::new(if self.anchor.is_tested() {
                "cause.hidden-ground-tested"
            } else {
                "cause.hidden-ground"
            }),
            factor: self.hidden,
        });
        let value: f64 = 100.0 * lost.iter().map(|lost| lost.factor).product::<f64>();
        let scores: Vec<f64> = sampled.scores.iter().map(|(_, score)| *score).collect();
        let points = whole_points(value);
        Some(Score {
            points,
            low: whole_points(percentile(&scores, 0.1)?),
            high: whole_points(percentile(&scores, 0.9)?),
            shares: shares(lost, 100 - points),
        })
    }

    fn structure_cause(&self, structure: &Structure) -> Reason {
        let stem = |place: usize| self.stems.get(place);
        match structure.weakest {
            Weakest::Anchor => Reason::new("cause.anchor").about(&self.anchor_id),
            Weakest::Margin(place) => stem(place).map_or(Reason::new("cause.stem"), |stem| {
                Reason::new("cause.stem").about(&stem.id).number(
                    "height",
                    stem.height_m,
                    Quantity::LengthM,
                )
            }),
            Weakest::Modulus(place) => stem(place).map_or(Reason::new("cause.modulus"), |stem| {
                Reason::new("cause.modulus").about(&stem.id).number(
                    "height",
                    stem.height_m,
                    Quantity::LengthM,
                )
            }),
        }
    }
}

/// Whole points, rounded down; a billionth less than whole is whole.
fn whole_points(score: f64) -> u32 {
    libm::floor(score.clamp(0.0, 100.0) + 1e-9) as u32
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_factors_of_margins_and_moduli() {
        // Method, section 6: 0 at 2, 1 at 6, by logarithms between; 50 % and 85 %.
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        assert_eq!(margin_factor(2.0, &rules), 0.0);
        assert_eq!(margin_factor(6.0, &rules), 1.0);
        assert!((margin_factor(libm::sqrt(12.0), &rules) - 0.5).abs() < 1e-12);
        assert_eq!(modulus_factor(50.0, &rules), 0.0);
        assert_eq!(modulus_factor(85.0, &rules), 1.0);
        assert!((modulus_factor(67.5, &rules) - 0.5).abs() < 1e-12);
    }

    #[test]
    fn points_are_rounded_down() {
        assert_eq!(whole_points(69.999), 69);
        assert_eq!(whole_points(70.0 - 1e-12), 70);
        assert_eq!(whole_points(f64::INFINITY), 100);
    }
}
