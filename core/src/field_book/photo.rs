//! Commands on photos.

use std::path::{Path, PathBuf};

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect};
use super::inner::Inner;
use crate::error::BookError;
use crate::photo::import_photo;
use crate::record::{Id, Noun, Photo};
use crate::store::PHOTOS;

impl Inner {
    /// Takes a photo's file in, then names it in the log.
    pub(super) fn act_add_photo(
        &mut self,
        inspection: &Id,
        entered: Entered,
    ) -> Result<Outcome, BookError> {
        let entered = entered.whole()?;
        // The file is taken in only for an inspection that is there.
        self.holder(Noun::Inspection, inspection)?;
        let path = entered.text("photo.file").unwrap_or_default();
        let taken = import_photo(Path::new(path), &self.photo_folder()?)?;
        let photo: Photo = changed_record(&taken.record(None), &entered)?;
        self.make(Noun::Photo, Some(inspection), &photo)
    }

    pub(super) fn act_change_photo(
        &mut self,
        id: &Id,
        entered: &Entered,
    ) -> Result<Outcome, BookError> {
        self.change_entered::<Photo>(Noun::Photo, id, entered)
    }

    /// The folder of the photos.
    pub(super) fn photo_folder(&self) -> Result<PathBuf, BookError> {
        let folder = self
            .store
            .folder()
            .ok_or_else(|| defect("a book without folder"))?;
        Ok(folder.join(PHOTOS))
    }
}
