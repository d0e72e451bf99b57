//! Brings nested records in: new ones are made, known ones take new values.

use serde_json::Value;

use super::change::{GONE, ORDER, PARENT};
use super::edit::{Done, Edit};
use super::faults::defect;
use super::flatten::{self, Flat};
use super::ids;
use super::{Author, Store};
use crate::error::BookError;
use crate::record::{Id, Noun, SiteFile};

impl Store {
    /// Brings a site file in as one edit: new records are made, known ones take the file's values,
    /// what the file does not name stays. Ids that another site has taken are renamed.
    ///
    /// # Errors
    /// `Refused` with every id that stands twice; else as [`Store::edit`].
    pub fn put_site_file(
        &mut self,
        author: &Author,
        file: &SiteFile,
    ) -> Result<(Id, Done), BookError> {
        let mut site = Id::default();
        let done = self.edit(author, |edit| {
            site = edit.put_site_file(file)?;
            Ok(())
        })?;
        Ok((site, done))
    }
}

impl Edit<'_> {
    /// A site file as part of this edit; returns the site's id.
    ///
    /// # Errors
    /// As [`Store::put_site_file`].
    pub fn put_site_file(&mut self, file: &SiteFile) -> Result<Id, BookError> {
        let json = serde_json::to_value(file).map_err(defect)?;
        for (list, noun) in [
            ("crew", Noun::Person),
            ("gear", Noun::Gear),
            ("codebook", Noun::DefectCode),
            ("house_values", Noun::HouseValue),
        ] {
            let mut flats = Vec::new();
            let items = json
                .get(list)
                .and_then(Value::as_array)
                .into_iter()
                .flatten();
            for (item, order) in items.zip(0_u32..) {
                let mut item = item.clone();
                self.give_lasting_ids(noun, &mut item);
                flatten::flatten(noun, None, f64::from(order), &item, &mut flats)?;
            }
            self.put_flats(flats)?;
        }
        let mut site = json.get("site").cloned().unwrap_or_default();
        self.give_lasting_ids(Noun::Site, &mut site);
        let mut flats = Vec::new();
        flatten::flatten(Noun::Site, None, 0.0, &site, &mut flats)?;
        let id = flats
            .first()
            .map(|flat| flat.id.clone())
            .unwrap_or_default();
        ids::free_ids(&id, &mut flats, &mut |noun, record| {
            let place = self.place_of(noun, record)?;
            Ok(place.is_some_and(|(site, _)| site.as_deref() != Some(id.as_str())))
        })?;
        self.put_flats(flats)?;
        Ok(Id(id))
    }

    fn give_lasting_ids(&mut self, noun: Noun, json: &mut Value) {
        let (clock, at) = (&mut *self.clock, self.author.at);
        ids::give_lasting_ids(noun, json, &mut || clock.new_id(at));
    }

    fn put_flats(&mut self, flats: Vec<Flat>) -> Result<(), BookError> {
        self.refuse_twice(&flats)?;
        flats.into_iter().try_for_each(|flat| self.put_flat(flat))
    }

    pub(super) fn refuse_twice(&self, flats: &[Flat]) -> Result<(), BookError> {
        let faults = ids::ids_twice(flats);
        if faults.is_empty() {
            return Ok(());
        }
        Err(BookError::Refused { faults })
    }

    /// Makes a record, or gives a known one new values; one that was removed comes back.
    pub(super) fn put_flat(&mut self, flat: Flat) -> Result<(), BookError> {
        let table = flat.noun.place().table;
        let found = self.place_of(flat.noun, &flat.id)?;
        let site = match &found {
            Some((site, _)) => site.clone(),
            None => self.site_of_parent(flat.noun, &flat)?,
        };
        if let Some((_, gone)) = found {
            if gone {
                self.replace(table, &flat.id, site.clone(), GONE, Value::Bool(false))?;
            }
            for (field, value) in flat.fields {
                self.replace(table, &flat.id, site.clone(), &field, value)?;
            }
            return Ok(());
        }
        self.fresh
            .insert((flat.noun, flat.id.clone()), site.clone());
        if let Some(parent) = flat.parent {
            self.write(
                table,
                &flat.id,
                site.clone(),
                PARENT,
                Value::from(parent),
                Vec::new(),
            )?;
        }
        let order = Value::from(flat.order);
        self.write(table, &flat.id, site.clone(), ORDER, order, Vec::new())?;
        for (field, value) in flat.fields {
            self.write(table, &flat.id, site.clone(), &field, value, Vec::new())?;
        }
        Ok(())
    }

    fn site_of_parent(&self, noun: Noun, flat: &Flat) -> Result<Option<String>, BookError> {
        match (noun.place().held_by, &flat.parent) {
            (Some((holder, _)), Some(parent)) => self.live(holder, &Id(parent.clone())),
            (None, None) if noun == Noun::Site => Ok(Some(flat.id.clone())),
            (None, None) => Ok(None),
            _ => Err(defect(format!("{noun:?} in the wrong place"))),
        }
    }
}
