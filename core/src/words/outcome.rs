//! What became of a piece of work, for the crew and for the client.

use super::catalogue::Words;
use crate::record::WorkOutcome;

impl Words {
    /// What became of a piece of work: `part done (the weather), May 14, 2026: the east side`.
    pub fn outcome(&self, outcome: &WorkOutcome) -> String {
        let mut said = self.word_of(&outcome.done);
        if let Some(why) = &outcome.why {
            said = format!("{said} ({})", self.word_of(why));
        }
        if let Some(day) = outcome.on {
            said = format!("{said}, {}", self.day(day));
        }
        match &outcome.left {
            Some(left) => format!("{said}: {left}"),
            None => said,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::{UndoneBecause, WorkDone};
    use crate::words::{Language, UnitSystem};

    #[test]
    fn what_is_left_is_said_with_its_reason_and_day() {
        let words = Words::new(Language::English, UnitSystem::Metric);
        let mut outcome = WorkOutcome {
            done: WorkDone::PartDone,
            why: Some(UndoneBecause::Weather),
            left: Some("the limb over the shed".to_owned()),
            on: "2026-05-14".parse().ok(),
        };
        let said = "part done (the weather), May 14, 2026: the limb over the shed";
        assert_eq!(words.outcome(&outcome), said);
        outcome = WorkOutcome {
            done: WorkDone::Done,
            why: None,
            left: None,
            on: None,
        };
        assert_eq!(words.outcome(&outcome), "done");
    }
}
