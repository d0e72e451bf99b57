//! A tag of its own for every tree of a file.

use std::collections::{BTreeMap, BTreeSet};

use super::field::TreeField;
use super::rows::Row;
use super::values::Reader;
use crate::record::{Fault, Id};

/// The longest tag, in characters.
const LONGEST: usize = 40;

/// How a tree is known.
pub(super) struct Known {
    pub tag: String,
    /// The row's own key; empty where the file has none.
    pub id: Id,
}

/// Gives out tags.
pub(super) struct Tags {
    /// How often each tag stands in the file.
    counts: BTreeMap<String, u32>,
    given: BTreeSet<String>,
    keys: BTreeSet<String>,
    has_tags: bool,
    has_keys: bool,
    /// Rows whose tag got the key behind it.
    pub told_apart: u32,
}

impl Tags {
    /// Looks over the tags of all rows.
    pub fn of(reader: &Reader) -> Self {
        let mut counts = BTreeMap::new();
        for row in &reader.rows.rows {
            if let Some(tag) = reader.text(row, TreeField::Tag) {
                *counts.entry(tag).or_insert(0) += 1;
            }
        }
        Tags {
            counts,
            given: BTreeSet::new(),
            keys: BTreeSet::new(),
            has_tags: reader.plan.has(TreeField::Tag),
            has_keys: reader.plan.has(TreeField::Key),
            told_apart: 0,
        }
    }

    /// The tag of a row; `number` is its place among the rows, from 1.
    ///
    /// # Errors
    /// The reason why the row cannot become a tree of its own.
    pub fn of_row(
        &mut self,
        reader: &mut Reader,
        row: &Row,
        number: usize,
    ) -> Result<Known, Fault> {
        let key = reader.text(row, TreeField::Key);
        if self.has_keys {
            let Some(key) = &key else {
                let field = TreeField::Key.name();
                return Err(Fault::new(
                    "fault.missing-field",
                    row.place.row(),
                    "",
                    field,
                ));
            };
            if self.keys.contains(key) {
                return Err(Fault::new("fault.id-twice", row.place.row(), key, ""));
            }
        }
        let tag = self.tag(reader, row, number, key.as_deref());
        if tag.chars().count() > LONGEST {
            let most = LONGEST.to_string();
            return Err(Fault::new("fault.too-long", row.place.row(), tag, most));
        }
        if !self.given.insert(tag.clone()) {
            return Err(Fault::new("fault.tag-twice", row.place.row(), tag, ""));
        }
        self.keys.extend(key.clone());
        Ok(Known {
            tag,
            id: Id(key.unwrap_or_default()),
        })
    }

    fn tag(&mut self, reader: &mut Reader, row: &Row, number: usize, key: Option<&str>) -> String {
        match (reader.text(row, TreeField::Tag), key) {
            (Some(tag), Some(key)) if self.counts.get(&tag).is_some_and(|count| *count > 1) => {
                self.told_apart += 1;
                let both = format!("{tag} ({key})");
                if both.chars().count() > LONGEST {
                    key.to_owned()
                } else {
                    both
                }
            }
            (Some(tag), _) => tag,
            (None, Some(key)) => key.to_owned(),
            (None, None) => {
                if self.has_tags {
                    let field = TreeField::Tag.name();
                    let place = row.place.row();
                    let fault = Fault::new("fault.missing-field", place, "", field);
                    reader.left_out.push(fault);
                }
                format!("#{number}")
            }
        }
    }
}
