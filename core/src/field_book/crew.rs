//! Commands on people: a skill is confirmed by a named other, dated; a climb is logged.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::pages::choice_ids;
use crate::record::{Fault, Id, LoggedClimb, Noun, Person, SignOff};
use crate::words::folded;

impl Inner {
    /// Confirms a skill: by whoever holds the phone unless another is named, today unless another
    /// day is. `about` is the person, or `person/skill`, or `person/knot/its use`.
    pub(super) fn act_sign_off(
        &mut self,
        about: &Id,
        mut entered: Entered,
    ) -> Result<Outcome, BookError> {
        let mut parts = about.as_str().split('/');
        let person = &Id::from(parts.next().unwrap_or_default());
        for (input, choices) in [("sign_off.skill", "skill"), ("sign_off.knot", "knot-use")] {
            let part = parts.next().map(str::to_owned);
            if let Some(part) = part.filter(|part| choice_ids(choices).contains(part)) {
                entered = entered.or_else(input, || json!(part));
            }
        }
        let known: Person = self.record(Noun::Person, person)?;
        let today = self.clock.today().to_string();
        let mut entered = entered.whole()?.or_else("sign_off.on", || json!(today));
        if let Some(holder) = self.holder_name()? {
            entered = entered.or_else("sign_off.by", || json!(holder));
        }
        let by = entered.text("sign_off.by").map(folded);
        let fault = |code: &str, input: &str, found: &str| {
            Err(BookError::refused(Fault::new(code, input, found, "")))
        };
        match by {
            None => return fault("fault.needed", "sign_off.by", ""),
            Some(by) if by == folded(&known.name) => {
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

    /// Enters a climb in the log, today's unless another day is named.
    pub(super) fn act_log_climb(
        &mut self,
        person: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let known: Person = self.record(Noun::Person, person)?;
        let today = self.clock.today().to_string();
        let entered = entered.whole()?.or_else("climb_log.on", || json!(today));
        let climb: LoggedClimb = new_record(&entered)?;
        refuse_alone(&climb, &known)?;
        self.make(Noun::LoggedClimb, Some(person), &climb)
    }

    pub(super) fn act_change_climb(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let person = self.holder(Noun::LoggedClimb, id)?;
        let known: Person = self.record(Noun::Person, &person)?;
        let before: LoggedClimb = self.record(Noun::LoggedClimb, id)?;
        let after: LoggedClimb = changed_record(&before, entered)?;
        refuse_alone(&after, &known)?;
        self.change(Noun::LoggedClimb, id, &before, &after)
    }

    /// The name of whoever holds the phone.
    pub(super) fn holder_name(&self) -> Result<Option<String>, BookError> {
        let crew = self.store.read().load_book()?.crew;
        let holder = crew.into_iter().find(|one| one.id == self.settings.person);
        Ok(holder.map(|one| one.name))
    }
}

/// Nobody climbs alone: the other one is named.
fn refuse_alone(climb: &LoggedClimb, climber: &Person) -> Result<(), BookError> {
    if folded(&climb.with_whom) == folded(&climber.name) {
        let place = "climb_log.with_whom";
        let fault = Fault::new("fault.climbs-with-self", place, &climber.name, "");
        return Err(BookError::refused(fault));
    }
    Ok(())
}
