//! Shapes from a map file become the edge of a property and its targets, in one edit.

use super::fill::{defect, set_changed};
use super::inner::{Done, Inner};
use crate::error::BookError;
use crate::intake::GroundShape;
use crate::pages::CommandKind;
use crate::record::{GroundForm, Id, Noun, Site, Target, TargetKind};
use crate::words::Said;

impl Inner {
    /// The edge is the shape that says so, else the first polygon where the site has no edge yet; all
    /// others become targets, of which nobody knows yet how often somebody is there.
    pub(super) fn put_ground(
        &mut self,
        site: &Id,
        shapes: Vec<GroundShape>,
    ) -> Result<Done, BookError> {
        self.see_room()?;
        let before: Site = self.record(Noun::Site, site)?;
        let told = shapes.iter().position(|shape| shape.is_outline);
        let first = shapes
            .iter()
            .position(|shape| shape.form == GroundForm::Area);
        let edge = told.or(first.filter(|_| before.outline.is_empty()));
        let mut after = before.clone();
        let mut targets: Vec<Target> = Vec::new();
        for (at, shape) in shapes.into_iter().enumerate() {
            if Some(at) == edge {
                after.outline = shape.points;
            } else {
                targets.push(self.target_of(shape, targets.len() + 1));
            }
        }
        let count = targets.len();
        self.command = Some(CommandKind::ImportGround);
        let done = self.edit(|edit| {
            set_changed(edit, Noun::Site, site, &before, &after)?;
            for target in &targets {
                let json = serde_json::to_value(target).map_err(defect)?;
                edit.create(Noun::Target, Some(site), json)?;
            }
            Ok(())
        });
        self.command = None;
        let done = done?;
        self.judge_after_edit();
        let key = if edge.is_some() {
            "done.ground-with-edge"
        } else {
            "done.ground"
        };
        let words = self.settings.words();
        Ok(Done {
            record: site.clone(),
            words: words.say(key, &[("count", Said::Count(count as i64))]),
            changes: done.changes,
            go_to: None,
            done_before: false,
        })
    }

    fn target_of(&self, shape: GroundShape, number: usize) -> Target {
        let words = self.settings.words();
        let number = [("number", Said::Count(number as i64))];
        // What it is and how often somebody is there, nobody said: a gap that the page asks for.
        Target {
            id: Id::default(),
            name: shape
                .name
                .unwrap_or_else(|| words.say("page.target-from-file", &number)),
            kind: TargetKind::Other,
            occupancy: None,
            can_be_moved: None,
            can_be_closed: None,
            neighbours: None,
            form: shape.form,
            ground: shape.points,
        }
    }
}
