//! What is recorded at a tree in few taps: stop on sight, triage, full check, same day again.

use serde_json::{Value, json};

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect, new_record, set_changed};
use super::inner::Inner;
use super::measuring::Measuring;
use crate::error::BookError;
use crate::judge::codebook::Codebook;
use crate::pages::{CommandKind, LOOK_LASTS_MS, SizeClass};
use crate::record::{
    Fault, Height, HeightMethod, Id, Inspection, InspectionLevel, LifeState, Look, Noun, PartLook,
    Photo, Tree, TreePart, Visit, WeatherHour,
};
use crate::store::Edit;

/// The choice of a stop on sight that is no code.
pub(super) const DEAD_TREE: &str = "dead-tree";

/// A tree, its site, and the inspection of the day where one was begun.
struct AtTree {
    tree: Tree,
    site: Id,
    visit: Option<Visit>,
    today: Option<Inspection>,
}

impl Inner {
    fn at_tree(&mut self, tree: &Id) -> Result<AtTree, BookError> {
        let site = self.holder(Noun::Tree, tree)?;
        let visit = self.visit_today(&site)?;
        let tree: Tree = self.record(Noun::Tree, tree)?;
        let of_today = |look: &&Inspection| visit.as_ref().is_some_and(|v| v.id == look.visit);
        let begun = |look: &&Inspection| look.at.map_or(i64::MIN, |at| at.utc_ms);
        let today = tree
            .inspections
            .iter()
            .filter(of_today)
            .max_by_key(begun)
            .cloned();
        Ok(AtTree {
            tree,
            site,
            visit,
            today,
        })
    }

    /// A new inspection of the day, by whoever holds the phone.
    fn new_look(&self, level: InspectionLevel) -> Result<Inspection, BookError> {
        let level = serde_json::to_value(level).map_err(defect)?;
        let mut look: Inspection =
            serde_json::from_value(json!({"level": level})).map_err(defect)?;
        look.at = Some(self.clock.now());
        look.by = self.settings.person.clone();
        Ok(look)
    }

    /// The full check begins; an unfinished one of the day goes on.
    pub(super) fn act_start_full_check(&mut self, tree: &Id) -> Result<Outcome, BookError> {
        let at = self.at_tree(tree)?;
        let goes_on = |look: &Inspection| look.level == InspectionLevel::FullCheck;
        if let Some(look) = at.today.as_ref().filter(|look| goes_on(look)) {
            return Ok(Outcome {
                record: look.id.clone(),
                changes: 0,
            });
        }
        let look = self.new_look(InspectionLevel::FullCheck)?;
        self.make_look(&at, look, |_, _| Ok(()))
    }

    /// Makes an inspection of the day, with what `more` adds to it in the same edit.
    fn make_look(
        &mut self,
        at: &AtTree,
        mut look: Inspection,
        more: impl FnOnce(&mut Edit<'_>, &Id) -> Result<(), BookError>,
    ) -> Result<Outcome, BookError> {
        let today = self.clock.today();
        let mut record = Id::default();
        let done = self.edit(|edit| {
            look.visit = Inner::visit_for_edit(edit, &at.site, at.visit.as_ref(), today)?;
            let json = serde_json::to_value(&look).map_err(defect)?;
            record = edit.create(Noun::Inspection, Some(&at.tree.id), json)?;
            more(edit, &record)
        })?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }

    /// The look of the day at a tree, where one was begun.
    pub(super) fn look_of_today(&mut self, tree: &Id) -> Result<Option<Inspection>, BookError> {
        Ok(self.at_tree(tree)?.today)
    }

    /// Adds to the look of the day at a tree; begins another look where there is none.
    pub(super) fn in_look_of_today(
        &mut self,
        tree: &Id,
        add: impl FnOnce(&mut Edit<'_>, &Id) -> Result<(), BookError>,
    ) -> Result<Outcome, BookError> {
        let at = self.at_tree(tree)?;
        let Some(look) = &at.today else {
            let look = self.new_look(InspectionLevel::SameDay)?;
            return self.make_look(&at, look, add);
        };
        let record = look.id.clone();
        let done = self.edit(|edit| add(edit, &record))?;
        Ok(Outcome {
            record,
            changes: done.changes,
        })
    }

    /// A stop seen at first sight: a finding of the gravest grade, or a dead tree. It goes into the
    /// inspection of the day where one was begun.
    pub(super) fn act_stop_on_sight(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        let at = self.at_tree(tree)?;
        let what = Id::from(entered.text("on_sight.what").unwrap_or_default());
        let finding = match what.as_str() {
            DEAD_TREE => None,
            _ => Some(self.finding_on_sight(&what, entered.text("finding.note"))?),
        };
        let photo = self.taken_photo(&entered)?;
        let add = |edit: &mut Edit<'_>, look: &Id| {
            let shown = match &finding {
                Some(finding) => edit.create(Noun::Finding, Some(look), finding.clone())?,
                None => Id::default(),
            };
            add_photo(edit, look, photo, &shown)
        };
        let dead = finding.is_none().then_some(LifeState::Dead);
        match at.today.clone() {
            Some(before) => {
                let after = Inspection {
                    life: dead.or(before.life),
                    ..before.clone()
                };
                let record = before.id.clone();
                let done = self.edit(|edit| {
                    set_changed(edit, Noun::Inspection, &record, &before, &after)?;
                    add(edit, &record)
                })?;
                Ok(Outcome {
                    record,
                    changes: done.changes,
                })
            }
            None => {
                let mut look = self.new_look(InspectionLevel::StopOnSight)?;
                look.life = dead;
                self.make_look(&at, look, add)
            }
        }
    }

    /// The finding of a stop on sight: on the first part that its code names, of the gravest grade
    /// that has a sentence.
    fn finding_on_sight(&self, code: &Id, note: Option<&str>) -> Result<Value, BookError> {
        let book = Codebook::with(&self.store.read().load_book()?.codebook);
        let known = book.code(code).ok_or_else(|| {
            BookError::refused(Fault::new("fault.not-a-choice", "on_sight.what", code, ""))
        })?;
        let part = known.parts.first().copied().unwrap_or(TreePart::Around);
        let grade = (1..=3)
            .rev()
            .find(|grade| book.sentence(code, *grade).is_some());
        let part = serde_json::to_value(part).map_err(defect)?;
        let mut finding = json!({"code": code, "part": part});
        if let Some(fields) = finding.as_object_mut() {
            fields.extend(grade.map(|grade| ("grade".to_owned(), json!(grade))));
            fields.extend(note.map(|note| ("note".to_owned(), json!(note))));
        }
        Ok(finding)
    }

    /// Triage: what is asked at first, in one edit.
    pub(super) fn act_record_triage(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let at = self.at_tree(tree)?;
        let mut after_tree = at.tree.clone();
        if let Some(species) = entered.text("tree.species") {
            after_tree.species = Some(species.to_owned());
        }
        if let Some(way) = entered.value("tree.way").filter(|way| !way.is_null()) {
            after_tree.way = Some(serde_json::from_value(way.clone()).map_err(defect)?);
        }
        // A glance never replaces what was measured.
        let measured = at
            .tree
            .inspections
            .iter()
            .any(|look| look.level == InspectionLevel::FullCheck && look.height.is_some());
        let size = entered.text("triage.size").and_then(SizeClass::of_id);
        let height = size.filter(|_| !measured).map(by_size);
        let (before_tree, id) = (at.tree.clone(), at.tree.id.clone());
        let change_tree =
            |edit: &mut Edit<'_>| set_changed(edit, Noun::Tree, &id, &before_tree, &after_tree);
        let goes_on = |look: &Inspection| look.level == InspectionLevel::Triage;
        match at.today.clone().filter(|look| goes_on(look)) {
            Some(before) => {
                let mut after: Inspection = changed_record(&before, &entered)?;
                after.height = height.or(after.height);
                let record = before.id.clone();
                let done = self.edit(|edit| {
                    change_tree(edit)?;
                    set_changed(edit, Noun::Inspection, &record, &before, &after)
                })?;
                Ok(Outcome {
                    record,
                    changes: done.changes,
                })
            }
            None => {
                let fresh = self.new_look(InspectionLevel::Triage)?;
                let mut look: Inspection = changed_record(&fresh, &entered)?;
                look.height = height;
                self.make_look(&at, look, |edit, _| change_tree(edit))
            }
        }
    }

    /// The measures of the full check, as far as they were taken, in one edit.
    pub(super) fn act_record_full_check(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        let rules = self.rules_around(id)?;
        let measuring = Measuring {
            rules: &rules,
            words: self.settings.words(),
        };
        let taken = measuring
            .taken(CommandKind::RecordFullCheck, entered)
            .map_err(BookError::refused)?;
        let before: Inspection = self.record(Noun::Inspection, id)?;
        let mut after: Inspection = changed_record(&before, entered)?;
        after.height = taken.height.or(after.height);
        after.lean = taken.lean.or(after.lean);
        self.change(Noun::Inspection, id, &before, &after)
    }

    /// A part looked at again: begins another look where the last one is older than an hour.
    pub(super) fn act_look_again(
        &mut self,
        tree: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let part: PartLook = new_record(&entered.whole()?)?;
        let at = self.at_tree(tree)?;
        let now_ms = self.clock.now().utc_ms;
        let is_fresh = |look: &&Inspection| {
            let begun = look
                .at
                .is_some_and(|at| now_ms - at.utc_ms <= LOOK_LASTS_MS);
            begun && look.level == InspectionLevel::SameDay
        };
        match at.today.as_ref().filter(is_fresh) {
            Some(look) => self.note_look(&look.clone(), part),
            None => {
                let mut look = self.new_look(InspectionLevel::SameDay)?;
                look.walk_round = vec![without_cover(part)];
                self.make_look(&at, look, |_, _| Ok(()))
            }
        }
    }

    /// How a part was seen in an inspection; a later look replaces an earlier one.
    pub(super) fn note_look(
        &mut self,
        inspection: &Inspection,
        part: PartLook,
    ) -> Result<Outcome, BookError> {
        let mut look = without_cover(part);
        let mut parts = inspection.walk_round.iter();
        match parts.find(|known| known.part == look.part) {
            Some(before) => {
                look.id = before.id.clone();
                self.change(Noun::PartLook, &look.id.clone(), before, &look)
            }
            None => self.make(Noun::PartLook, Some(&inspection.id), &look),
        }
    }

    /// The weather of this hour is what was noted last that day.
    pub(super) fn act_same_weather(&mut self, visit: &Id) -> Result<Outcome, BookError> {
        let hour = self.clock.hour();
        let known: Visit = self.record(Noun::Visit, visit)?;
        let last = known
            .weather
            .iter()
            .filter(|at| at.hour < hour)
            .max_by_key(|at| at.hour);
        let last = last.ok_or_else(|| {
            BookError::refused(Fault::new("fault.no-weather-yet", "weather.hour", "", ""))
        })?;
        let now = WeatherHour {
            id: Id::default(),
            hour,
            // Thunder heard then is longer ago now.
            thunder_min_ago: last
                .thunder_min_ago
                .map(|ago| ago + f64::from(hour - last.hour) * 60.0)
                .filter(|ago| crate::record::THUNDER_MIN.allows(*ago)),
            ..last.clone()
        };
        match known.weather.iter().find(|at| at.hour == hour) {
            Some(noted) => Ok(Outcome {
                record: noted.id.clone(),
                changes: 0,
            }),
            None => self.make(Noun::WeatherHour, Some(visit), &now),
        }
    }

    /// The photo that was taken with an entry, its file already in.
    pub(super) fn taken_photo(&self, entered: &Entered) -> Result<Option<Photo>, BookError> {
        let Some(path) = entered.text("photo.file") else {
            return Ok(None);
        };
        let taken = crate::photo::import_photo(path.as_ref(), &self.photo_folder()?)?;
        Ok(Some(taken.record(None)))
    }
}

/// Names a photo in an inspection, with the finding it shows.
pub(super) fn add_photo(
    edit: &mut Edit<'_>,
    inspection: &Id,
    photo: Option<Photo>,
    finding: &Id,
) -> Result<(), BookError> {
    let Some(mut photo) = photo else {
        return Ok(());
    };
    photo.finding = finding.clone();
    let json = serde_json::to_value(&photo).map_err(defect)?;
    edit.create(Noun::Photo, Some(inspection), json).map(|_| ())
}

/// What was seen was not hidden.
fn without_cover(mut look: PartLook) -> PartLook {
    if look.look == Look::Seen {
        look.hidden_by = None;
    }
    look
}

/// A size class is a height by eye.
fn by_size(size: SizeClass) -> Height {
    let (height_m, se_m) = size.height_m();
    Height {
        height_m,
        se_m: Some(se_m),
        method: Some(HeightMethod::ByEye),
    }
}

/// A finding of what was entered; a code that names one part of the tree says where it is.
pub(super) fn with_part(entered: Entered, book: &Codebook) -> Entered {
    let code = Id::from(entered.text("finding.code").unwrap_or_default());
    match book.code(&code).map(|code| code.parts.as_slice()) {
        Some([only]) => {
            let only = serde_json::to_value(only).unwrap_or_default();
            entered.or_else("finding.part", || only)
        }
        _ => entered,
    }
}
