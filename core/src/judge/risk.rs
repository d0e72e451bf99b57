//! The two matrices of tree risk assessment, on what a named assessor entered.
//!
//! ANSI A300 Part 9 and its best management practice (2013, 2017). Never derived from the score.

use crate::record::{
    CombinedLikelihood, Consequences, FailureLikelihood, Id, ImpactLikelihood, RiskAnswer,
    RiskEntry, RiskRating,
};

/// Likelihood of failure and impact together (matrix 1; all cells read in a reprint of the form).
pub fn combined_likelihood(
    failure: FailureLikelihood,
    impact: ImpactLikelihood,
) -> CombinedLikelihood {
    use CombinedLikelihood::{Likely, SomewhatLikely, Unlikely, VeryLikely};
    use FailureLikelihood::{Imminent, Improbable, Possible, Probable};
    use ImpactLikelihood::{High, Low, Medium, VeryLow};
    match (failure, impact) {
        (Imminent, High) => VeryLikely,
        (Imminent, Medium) | (Probable, High) => Likely,
        (Imminent, Low) | (Probable, Medium) | (Possible, High) => SomewhatLikely,
        (Imminent, VeryLow)
        | (Probable, Low | VeryLow)
        | (Possible, Medium | Low | VeryLow)
        | (Improbable, _) => Unlikely,
    }
}

/// Risk rating (matrix 2; first row and the counts of each rating read in a reprint, the placing of
/// the other cells from memory).
pub fn risk_rating(likelihood: CombinedLikelihood, consequences: Consequences) -> RiskRating {
    use CombinedLikelihood::{Likely, SomewhatLikely, Unlikely, VeryLikely};
    use Consequences::{Minor, Negligible, Severe, Significant};
    use RiskRating::{Extreme, High, Low, Moderate};
    match (likelihood, consequences) {
        (VeryLikely, Severe) => Extreme,
        (VeryLikely, Significant) | (Likely, Significant | Severe) => High,
        (VeryLikely | Likely, Minor) | (SomewhatLikely, Significant | Severe) => Moderate,
        (_, Negligible) | (SomewhatLikely, Minor) | (Unlikely, _) => Low,
    }
}

/// The rating of one entry.
pub fn risk_answer(entry: &RiskEntry) -> RiskAnswer {
    let likelihood = combined_likelihood(entry.failure, entry.impact);
    RiskAnswer {
        entry: entry.id.clone(),
        target: entry.target.clone(),
        likelihood,
        rating: risk_rating(likelihood, entry.consequences),
    }
}

/// The tree's rating: the highest over its targets and parts; nothing where nobody assessed it.
pub fn tree_rating(entries: &[RiskEntry]) -> Option<RiskRating> {
    entries.iter().map(|entry| risk_answer(entry).rating).max()
}

/// The highest rating for one target; nothing where nobody assessed it.
pub fn target_rating(entries: &[RiskEntry], target: &Id) -> Option<RiskRating> {
    entries
        .iter()
        .filter(|entry| entry.target == *target)
        .map(|entry| risk_answer(entry).rating)
        .max()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn entry(target: &str, failure: FailureLikelihood, consequences: Consequences) -> RiskEntry {
        RiskEntry {
            id: Id::default(),
            target: Id::from(target),
            part: None,
            assessor: "Ana".to_owned(),
            level: 2,
            time_frame_months: 12.0,
            failure,
            impact: ImpactLikelihood::High,
            consequences,
        }
    }

    #[test]
    fn the_tree_has_its_highest_rating_and_nobody_means_none() {
        // ANSI A300 Part 9, best management practice: the tree's rating is the maximum.
        let entries = [
            entry("path", FailureLikelihood::Possible, Consequences::Severe),
            entry("road", FailureLikelihood::Imminent, Consequences::Severe),
        ];
        assert_eq!(tree_rating(&entries), Some(RiskRating::Extreme));
        assert_eq!(
            target_rating(&entries, &Id::from("path")),
            Some(RiskRating::Moderate)
        );
        assert_eq!(tree_rating(&[]), None);
    }
}
