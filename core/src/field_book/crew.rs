//! Commands on people: a skill is confirmed by a named other, dated.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun, Person, SignOff};

impl Inner {
    /// Confirms a skill: by whoever holds the phone unless another is named, today unless another
    /// day is.
    pub(super) fn act_sign_off(
        &mut self,
        person: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let known: Person = self.record(Noun::Person, person)?;
        let today = self.clock.today().to_string();
        let mut entered = entered.whole()?.or_else("sign_off.on", || json!(today));
        if let Some(holder) = self.holder_name()? {
            entered = entered.or_else("sign_off.by", || json!(holder));
        }
        let by = entered.text("sign_off.by").map(str::to_lowercase);
        let fault = |code: &str, input: &str, found: &str| {
            Err(BookError::refused(Fault::new(code, input, found, "")))
        };
        match by {
            None => return fault("fault.needed", "sign_off.by", ""),
            Some(by) if by == known.name.to_lowercase() => {
                return fault("fault.signs-off-self", "sign_off.by", &known.name);
            }
            Some(_) => {}
        }
        if entered.text("sign_off.skill") == Some("knot") && entered.text("sign_off.knot").is_none()
        {
            return fault("fault.needed", "sign_off.knot", "");
        }
        self.make_entered::<SignOff>(Noun::SignOff, Some(person), entered)
    }

    /// The name of whoever holds the phone.
    pub(super) fn holder_name(&self) -> Result<Option<String>, BookError> {
        let crew = self.store.read().load_book()?.crew;
        let holder = crew.into_iter().find(|one| one.id == self.settings.person);
        Ok(holder.map(|one| one.name))
    }
}
