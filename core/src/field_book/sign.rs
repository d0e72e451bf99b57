//! A judgement is frozen when it is signed.

use serde_json::json;

use super::act::Outcome;
use super::fill::defect;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun};

impl Inner {
    /// Freezes the judgement of a tree as it is now, signed by whoever holds the phone.
    pub(super) fn act_sign_judgement(&mut self, tree: &Id) -> Result<Outcome, BookError> {
        let site = self.holder(Noun::Tree, tree)?;
        let judged = self.judged(&site)?;
        let answer = judged.judged.trees.iter().find(|one| one.tree == *tree);
        let answer = answer.ok_or_else(|| super::records::unknown(Noun::Tree, tree))?;
        let refused = |code: &str| BookError::refused(Fault::new(code, "judgement.sign", "", ""));
        let by = self
            .holder_name()?
            .ok_or_else(|| refused("fault.nobody-signs"))?;
        if answer.inspection.is_empty() {
            return Err(refused("fault.nothing-to-sign"));
        }
        let json = json!({
            "judgement": serde_json::to_value(answer).map_err(defect)?,
            "by": by,
            "at": serde_json::to_value(self.clock.now()).map_err(defect)?,
        });
        let inspection = answer.inspection.clone();
        self.make(Noun::SignedJudgement, Some(&inspection), &json)
    }
}
