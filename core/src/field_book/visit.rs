//! Commands on visits and the weather.

use serde_json::json;

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, new_record};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Fault, Id, Noun, Visit, WeatherHour};
use crate::store::Edit;

impl Inner {
    /// Begins the visit of the day, or says who is there.
    pub(super) fn act_start_visit(
        &mut self,
        site: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        match self.visit_today(site)? {
            Some(before) => {
                let id = before.id.clone();
                let after: Visit = changed_record(&before, entered)?;
                self.change(Noun::Visit, &id, &before, &after)
            }
            None => {
                let visit: Visit = changed_record(&self.new_visit(), entered)?;
                self.make(Noun::Visit, Some(site), &visit)
            }
        }
    }

    /// Notes the weather of an hour, the present one unless another is named; an hour noted before
    /// is changed.
    pub(super) fn act_note_weather(
        &mut self,
        visit: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let hour = self.clock.hour();
        let entered = entered.or_else("weather.hour", || json!(hour));
        let new: WeatherHour = new_record(&entered)?;
        contradiction(&new)?;
        let known: Visit = self.record(Noun::Visit, visit)?;
        match known.weather.into_iter().find(|at| at.hour == new.hour) {
            Some(before) => {
                let id = before.id.clone();
                let after: WeatherHour = changed_record(&before, &entered)?;
                contradiction(&after)?;
                self.change(Noun::WeatherHour, &id, &before, &after)
            }
            None => self.make(Noun::WeatherHour, Some(visit), &new),
        }
    }

    /// The visit of the day.
    pub(super) fn visit_today(&mut self, site: &Id) -> Result<Option<Visit>, BookError> {
        let judged = self.judged(site)?;
        let today = self.clock.today();
        let mut visits = judged.loaded.file.site.visits.iter();
        Ok(visits.find(|visit| visit.day == today).cloned())
    }

    /// A visit that begins today, with whoever holds the phone.
    fn new_visit(&self) -> Visit {
        let crew = Some(self.settings.person.clone()).filter(|person| !person.is_empty());
        Visit {
            id: Id::default(),
            day: self.clock.today(),
            crew: crew.into_iter().collect(),
            note: None,
            weather: Vec::new(),
        }
    }

    /// The visit of the day's id as part of an edit; makes the visit where there is none. Nobody is
    /// named as its crew then, so that everybody of the crew counts as there.
    pub(super) fn visit_for_edit(
        edit: &mut Edit<'_>,
        site: &Id,
        known: Option<&Visit>,
        today: crate::record::Day,
    ) -> Result<Id, BookError> {
        match known {
            Some(visit) => Ok(visit.id.clone()),
            None => {
                let visit = json!({"day": today.to_string()});
                edit.create(Noun::Visit, Some(site), visit)
            }
        }
    }
}

/// Thunder cannot have been heard and not heard.
fn contradiction(weather: &WeatherHour) -> Result<(), BookError> {
    if weather.no_thunder == Some(true) && weather.thunder_min_ago.is_some() {
        return Err(BookError::refused(Fault::new(
            "fault.thunder-both",
            "weather.no_thunder",
            "",
            "",
        )));
    }
    Ok(())
}
