//! Rows that belong together: the lower stays below the upper, else the method has no answer.

use super::{Rule, RuleSet};

/// Pairs of rows, the lower first.
const PAIRS: [(Rule, Rule); 15] = [
    (Rule::MeasureMalletSoundLow, Rule::MeasureMalletSoundHigh),
    (Rule::MeasureMalletDullLow, Rule::MeasureMalletDullHigh),
    (Rule::MeasureMalletHollowLow, Rule::MeasureMalletHollowHigh),
    (Rule::WoodLimbFactorLow, Rule::WoodLimbFactorHigh),
    (Rule::WoodAspectNoneAt, Rule::WoodAspectFullAt),
    (Rule::LoadWorkFactorLow, Rule::LoadWorkFactorHigh),
    (Rule::LoadSlipStretchLowM, Rule::LoadSlipStretchHighM),
    (Rule::StemFormFactorLow, Rule::StemFormFactorHigh),
    (Rule::StemBranchShareLow, Rule::StemBranchShareHigh),
    (Rule::MarginStopAt, Rule::MarginFullAt),
    (Rule::MarginModulusNonePct, Rule::MarginModulusFullPct),
    (Rule::CapWindCautionForce, Rule::StopWindForce),
    (Rule::ScoreLimitedFrom, Rule::ScoreNoStopFrom),
    (Rule::GearLineLeastMm, Rule::GearLineMostMm),
    (Rule::GearThrowRoutineM, Rule::GearThrowGoodHandM),
];

impl RuleSet {
    /// The row that another has to stay below or above, where the two have come into the wrong
    /// order or meet; nothing where all is well.
    pub fn out_of_order(&self, changed: Rule) -> Option<Rule> {
        let pairs = PAIRS
            .into_iter()
            .filter(|(lower, upper)| *lower == changed || *upper == changed);
        let mut wrong = pairs.filter(|(lower, upper)| self.number(*lower) >= self.number(*upper));
        wrong.next().map(
            |(lower, upper)| {
                if lower == changed { upper } else { lower }
            },
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{HouseValue, Id};

    #[test]
    fn what_ships_is_in_order_and_a_pair_that_meets_is_found() {
        let rules = RuleSet::shipped(&Id::default()).unwrap();
        assert!(
            Rule::ALL
                .iter()
                .all(|rule| rules.out_of_order(*rule).is_none())
        );
        let value = HouseValue {
            id: Id::default(),
            rule_set: Id::from("us"),
            row: Rule::WoodAspectNoneAt.id().to_owned(),
            value: 0.7,
            by: "Ana".to_owned(),
            on: None,
            why: None,
        };
        let full = HouseValue {
            row: Rule::WoodAspectFullAt.id().to_owned(),
            ..value.clone()
        };
        let rules = rules.with_house_values(&[value, full]).unwrap();
        let found = rules.out_of_order(Rule::WoodAspectNoneAt);
        assert_eq!(found, Some(Rule::WoodAspectFullAt));
    }
}
