//! A site file brought into the book: read and its photos taken in without a lock, then one edit.

use std::collections::BTreeSet;
use std::path::Path;

use super::act::Outcome;
use super::inner::Inner;
use super::long_work::Running;
use crate::error::BookError;
use crate::intake::{HeldSite, make_unique, read_site_file_at};
use crate::judge::codebook::starter_codes;
use crate::pages::CommandKind;
use crate::photo::import_photo;
use crate::record::{Fault, Id, SiteFile};
use crate::store::{Book, SiteLine};

/// The properties that a book holds, as a site file that is brought in has to know them.
pub fn sites_held(book: &Book) -> Vec<HeldSite> {
    let held = |site: &SiteLine| HeldSite {
        id: site.id.clone(),
        place: site.points.first().copied(),
    };
    book.sites.iter().map(held).collect()
}

/// Reads a site file and takes its photos in. Every fault is told at once.
pub(super) fn read_with_photos(
    file: &Path,
    book: &Book,
    photos: &Path,
    running: &Running<'_>,
) -> Result<SiteFile, BookError> {
    let codes = starter_codes().iter().chain(&book.codebook);
    let known: BTreeSet<Id> = codes.map(|code| code.id.clone()).collect();
    let mut site_file = read_site_file_at(file, &known)?;
    make_unique(&mut site_file, &sites_held(book));
    let beside = file.parent().unwrap_or(Path::new("."));
    let looks = site_file
        .site
        .trees
        .iter()
        .flat_map(|tree| &tree.inspections);
    let of = looks.map(|look| look.photos.len() as u32).sum::<u32>() + 1;
    let mut faults: Vec<Fault> = Vec::new();
    let mut done = 0;
    let trees = site_file.site.trees.iter_mut();
    for photo in trees
        .flat_map(|tree| &mut tree.inspections)
        .flat_map(|look| &mut look.photos)
    {
        running.go_on(done, of)?;
        done += 1;
        match import_photo(&beside.join(&photo.file), photos) {
            Ok(taken) => {
                let read = taken.record(None);
                photo.file = read.file;
                photo.taken = photo.taken.or(read.taken);
                photo.position = photo.position.or(read.position);
                photo.direction_deg = photo.direction_deg.or(read.direction_deg);
            }
            Err(BookError::Refused { faults: found }) => faults.extend(found),
            Err(other) => return Err(other),
        }
    }
    running.go_on(done, of)?;
    if faults.is_empty() {
        Ok(site_file)
    } else {
        Err(BookError::Refused { faults })
    }
}

impl Inner {
    /// Brings a site file in as one edit; the same file again changes nothing.
    pub(super) fn put_site_file(&mut self, file: &SiteFile) -> Result<Outcome, BookError> {
        let mut record = Id::default();
        self.command = Some(CommandKind::ImportSiteFile);
        let done = self.edit(|edit| {
            record = edit.put_site_file(file)?;
            Ok(())
        });
        self.command = None;
        Ok(Outcome {
            changes: done?.changes,
            record,
        })
    }
}
