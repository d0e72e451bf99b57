//! The plan of a site under a finger: the place that was tapped, the tree that was, and what is laid
//! over it. Every call takes the site, or a record that lies on it.

use super::entries::Entered;
use super::inner::Inner;
use super::object::FieldBook;
use super::records::unknown;
use super::show::nothing_to_draw;
use super::target::usual_form;
use crate::draw::Spot;
use crate::error::BookError;
use crate::pages::{
    AskKind, CommandKind, DrawnSize, EnteredGround, Entry, EntryValue, PageAddress, PlaceOnPlan,
    PlanOverlay, SensedFix, asks_of, entered_on_plan, me_on_plan, place_on_plan, tree_on_plan,
};
use crate::record::{GroundForm, Id, LatLon, Noun, Position};

#[uniffi::export]
impl FieldBook {
    /// The place at a spot of the plan's drawing at this zoom step and text size, with the accuracy that a tap has
    /// there: what to enter as `EntryValue::OnPlan`, or as a corner of an outline.
    ///
    /// # Errors
    /// `NotFound` for a record that is on no site; `Refused` where there is no plan, for a spot that
    /// is no number or off the plan, and where the plan is too small to tap.
    #[uniffi::method(default(letters_pct = 100))]
    pub fn place_on_plan(
        &self,
        site: String,
        zoom: u32,
        at: Spot,
        letters_pct: u32,
    ) -> Result<PlaceOnPlan, BookError> {
        self.with(|inner| {
            let site = inner.site_with_plan(&Id(site))?;
            inner.on_site(&site, None, |desk, _| {
                place_on_plan(desk, DrawnSize { zoom, letters_pct }, at)
                    .ok_or_else(nothing_to_draw)?
                    .map_err(BookError::refused)
            })
        })
    }

    /// The page of the tree whose mark or tag is nearest to a spot of the plan's drawing, within a
    /// finger's width; nothing where there is none.
    ///
    /// # Errors
    /// `NotFound` for a record that is on no site.
    #[uniffi::method(default(letters_pct = 100))]
    pub fn tree_on_plan(
        &self,
        site: String,
        zoom: u32,
        at: Spot,
        letters_pct: u32,
    ) -> Result<Option<PageAddress>, BookError> {
        self.with(|inner| {
            let site = inner.site_with_plan(&Id(site))?;
            inner.on_site(&site, None, |desk, _| {
                let found = tree_on_plan(desk, DrawnSize { zoom, letters_pct }, at);
                Ok(found.map(|tree| PageAddress::Tree { tree }))
            })
        })
    }

    /// Where the phone is, to be laid over the plan: the person and the ring that holds the true
    /// place 19 times in 20. Without marks where the fix cannot be used or lies off the plan.
    ///
    /// # Errors
    /// `NotFound` for a record that is on no site; `Refused` where there is no plan.
    #[uniffi::method(default(letters_pct = 100))]
    pub fn me_on_plan(
        &self,
        site: String,
        zoom: u32,
        fix: SensedFix,
        letters_pct: u32,
    ) -> Result<PlanOverlay, BookError> {
        self.with(|inner| {
            let site = inner.site_with_plan(&Id(site))?;
            inner.on_site(&site, None, |desk, _| {
                me_on_plan(desk, DrawnSize { zoom, letters_pct }, &fix).ok_or_else(nothing_to_draw)
            })
        })
    }

    /// What is being entered for a command, to be laid over the plan of the site it is about:
    /// corners with the line between them, closed where an area is asked for; single places with
    /// their rings. What is no place on Earth is left out here, and refused when it is kept.
    ///
    /// # Errors
    /// `NotFound` for a record that is on no site; `Refused` where there is no plan; `Defect` for an
    /// input that the command does not ask.
    pub fn entered_on_plan(
        &self,
        command: CommandKind,
        about: String,
        entries: Vec<Entry>,
    ) -> Result<PlanOverlay, BookError> {
        self.with(|inner| {
            let about = Id(about);
            let site = inner.site_with_plan(&about)?;
            let entered = inner.ground_entered(command, &about, &entries)?;
            inner.on_site(&site, None, |desk, _| {
                entered_on_plan(desk, &entered).ok_or_else(nothing_to_draw)
            })
        })
    }
}

impl Inner {
    /// The site that a record is or lies on.
    pub(super) fn site_with_plan(&self, about: &Id) -> Result<Id, BookError> {
        self.site_around(about)
            .ok_or_else(|| unknown(Noun::Site, about))
    }

    fn ground_entered(
        &self,
        command: CommandKind,
        about: &Id,
        entries: &[Entry],
    ) -> Result<EnteredGround, BookError> {
        let mut ground = EnteredGround::default();
        let form = form_chosen(command, entries);
        for entry in entries {
            match (kind_of(command, entry), &entry.value) {
                (Some(AskKind::Outline(least)), EntryValue::Outline { points }) => {
                    let form = form.unwrap_or_else(|| form_asked(least, points));
                    let closed = form == GroundForm::Area;
                    ground.courses.push((points.clone(), closed));
                }
                (Some(AskKind::Fix), value) => {
                    let place = self.place_entered(command, about, entry)?;
                    ground.places.extend(place);
                    ground.tapped.extend(tapped(value));
                }
                _ => {}
            }
        }
        Ok(ground)
    }

    /// A single place as it would be kept; nothing of what would be refused.
    fn place_entered(
        &self,
        command: CommandKind,
        about: &Id,
        entry: &Entry,
    ) -> Result<Option<(LatLon, Option<f64>)>, BookError> {
        let words = self.settings.words();
        let read = self
            .averaged(about, std::slice::from_ref(entry))
            .and_then(|averaged| Entered::read(command, &averaged, &words));
        let entered = match read {
            Ok(entered) => entered,
            Err(BookError::Refused { .. }) => return Ok(None),
            Err(other) => return Err(other),
        };
        let value = entered.value(&entry.input).cloned().unwrap_or_default();
        let position: Option<Position> = serde_json::from_value(value).ok();
        Ok(position.map(|position| (position.point(), position.accuracy_m)))
    }
}

fn kind_of(command: CommandKind, entry: &Entry) -> Option<AskKind> {
    let ask = asks_of(command).iter().find(|ask| ask.id == entry.input);
    ask.map(|ask| ask.kind)
}

/// The form that the person chose, where the command asks for one.
fn form_chosen(command: CommandKind, entries: &[Entry]) -> Option<GroundForm> {
    entries
        .iter()
        .find_map(|entry| match (kind_of(command, entry), &entry.value) {
            (Some(AskKind::Choice("ground-form")), EntryValue::Choice { id }) => {
                serde_json::from_value(serde_json::Value::from(id.as_str())).ok()
            }
            _ => None,
        })
}

/// How corners are meant where nobody says: at least three lie around an area, at least two along a
/// way.
fn form_asked(least: u32, points: &[LatLon]) -> GroundForm {
    match least {
        0 | 1 => usual_form(points.len()),
        2 => GroundForm::Way,
        _ => GroundForm::Area,
    }
}

fn tapped(value: &EntryValue) -> Option<PlaceOnPlan> {
    match value {
        EntryValue::OnPlan {
            lat_deg,
            lon_deg,
            accuracy_m,
        } => Some(PlaceOnPlan {
            lat_deg: *lat_deg,
            lon_deg: *lon_deg,
            accuracy_m: *accuracy_m,
        }),
        _ => None,
    }
}
