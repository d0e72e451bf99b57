//! `bolewalk import`: a site file into a field book.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::intake::{make_unique, read_site_file_at};
use bolewalk_core::judge::codebook::starter_codes;
use bolewalk_core::photo::import_photo;
use bolewalk_core::record::{Fault, Id, Photo, SiteFile};
use bolewalk_core::store::{Author, PHOTOS, Store};
use rayon::prelude::*;

use super::answer::{DAMAGED, tell};
use super::clock::now;

/// The ids of the codes that ship.
pub fn shipped_codes() -> BTreeSet<Id> {
    starter_codes().iter().map(|code| code.id.clone()).collect()
}

pub fn import(file: &Path, into: &Path, by: &str) -> Result<ExitCode, BookError> {
    let mut site_file = read_site_file_at(file, &shipped_codes())?;
    make_unique(&mut site_file);
    let at = now();
    let mut store = Store::open(into, "desk", at)?;
    if let Some(repair) = &store.opening().repair {
        eprintln!(
            "{} was damaged ({}). The damaged files are kept in {}; a sound copy was put in their \
             place. Look it over with 'bolewalk check', then import again.",
            into.display(),
            repair.detail,
            repair.kept
        );
        return Ok(ExitCode::from(DAMAGED));
    }
    let beside = file.parent().unwrap_or(Path::new("."));
    take_photos(&mut site_file, beside, &into.join(PHOTOS))?;
    let author = Author {
        person: Id::from(by),
        at,
    };
    let trees = site_file.site.trees.len();
    store.put_site_file(&author, &site_file)?;
    let noun = if trees == 1 { "tree" } else { "trees" };
    tell(&format!(
        "{}: {trees} {noun} brought into {}.",
        site_file.site.name,
        into.display()
    ))?;
    Ok(ExitCode::SUCCESS)
}

/// Takes every photo into the book's folder before the log names it, on every core; all faults are
/// told at once.
pub fn take_photos(file: &mut SiteFile, beside: &Path, photos: &Path) -> Result<(), BookError> {
    let trees = file.site.trees.iter_mut();
    let mut named: Vec<&mut Photo> = trees
        .flat_map(|tree| &mut tree.inspections)
        .flat_map(|seen| &mut seen.photos)
        .collect();
    let taken: Vec<_> = named
        .par_iter()
        .map(|photo| import_photo(&beside.join(&photo.file), photos))
        .collect();
    let mut faults: Vec<Fault> = Vec::new();
    for (photo, taken) in named.iter_mut().zip(taken) {
        match taken {
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
    if faults.is_empty() {
        return Ok(());
    }
    Err(BookError::Refused { faults })
}
