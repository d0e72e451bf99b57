//! The working of the score: every factor and their product, at central values.

use super::{ScoreModel, Weakest};
use crate::judge::plan_case::PlanCase;
use crate::judge::rules::Rule;
use crate::judge::working::Working;
use crate::record::Quantity;

impl ScoreModel<'_> {
    /// The working of the score: every factor and their product.
    pub(crate) fn explain(&self, plan: &PlanCase, lines: &mut Working) {
        let x = self.inputs.central();
        let wood = &plan.case.wood.strength_mpa;
        self.anchor.explain(&x, wood, lines);
        for stem in &self.stems {
            stem.explain(&x, wood, lines);
        }
        let margins = self.anchor.margins(&x);
        let structure = self.structure(&self.central_stems(&x), margins.work);
        let house = "Bolewalk house value";
        let n = match structure.weakest {
            Weakest::Anchor => Some(margins.work),
            Weakest::Margin(place) => self.stems.get(place).map(|s| s.margin(&x).margin),
            Weakest::Modulus(_) => None,
        };
        match n {
            Some(n) => lines
                .line(
                    "work.structure",
                    "f = (ln n - ln n0)/(ln n1 - ln n0), 0 to 1, of the weakest part",
                    structure.factor,
                    Quantity::Ratio,
                )
                .input("n", n, Quantity::Ratio)
                .input("n0", self.rules.number(Rule::MarginStopAt), Quantity::Ratio)
                .input("n1", self.rules.number(Rule::MarginFullAt), Quantity::Ratio)
                .source(house),
            None => {
                let left = match structure.weakest {
                    Weakest::Modulus(place) => self
                        .stems
                        .get(place)
                        .map_or(100.0, |s| s.margin(&x).steady_left_pct),
                    _ => 100.0,
                };
                lines
                    .line(
                        "work.structure",
                        "g = (W - W0)/(W1 - W0), 0 to 1, of the weakest section",
                        structure.factor,
                        Quantity::Ratio,
                    )
                    .input("W", left, Quantity::Percent)
                    .input(
                        "W0",
                        self.rules.number(Rule::MarginModulusNonePct),
                        Quantity::Percent,
                    )
                    .input(
                        "W1",
                        self.rules.number(Rule::MarginModulusFullPct),
                        Quantity::Percent,
                    )
                    .source(house);
            }
        }
        let mut product = 1.0;
        for (cause, factor) in self.findings.causes.iter().zip(self.findings.factors(&x)) {
            product *= factor;
            lines
                .line("work.finding-factor", "factor of grade and place; the worst of a part in full, the others by their power", factor, Quantity::Ratio)
                .about(&cause.reason.about)
                .input("power of the others", self.rules.number(Rule::FindingOthersPower), Quantity::Ratio)
                .source(house);
        }
        lines
            .line(
                "work.score",
                "S = 100 · f · p · h, rounded down",
                100.0 * structure.factor * product * self.hidden,
                Quantity::Points,
            )
            .input("f", structure.factor, Quantity::Ratio)
            .input("p", product, Quantity::Ratio)
            .input("h", self.hidden, Quantity::Ratio)
            .source(house);
    }
}
