//! `bolewalk import`: a site file, a pack, or trees of another origin, into a field book.

mod inventory;
mod pack;

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use bolewalk_core::error::BookError;
use bolewalk_core::field_book::sites_held;
use bolewalk_core::intake::{
    InventoryKind, inventory_kind, is_zip, make_unique, read_site_file_at,
};
use bolewalk_core::judge::codebook::starter_codes;
use bolewalk_core::photo::import_photo;
use bolewalk_core::record::{Day, Fault, Id, Photo, SiteFile};
use bolewalk_core::store::{Author, DATABASE, PHOTOS, Store};
use bolewalk_core::words::Said;
use rayon::prelude::*;

use super::answer::{tell, words};
use super::clock::now;

/// The ids of the codes that ship.
pub fn shipped_codes() -> BTreeSet<Id> {
    starter_codes().iter().map(|code| code.id.clone()).collect()
}

/// What is asked.
#[derive(clap::Args)]
pub struct Asked {
    /// A site file (JSON), a pack of another phone (zip), or trees of any origin: delimited text (CSV) or GeoJSON points.
    file: PathBuf,
    /// The folder of the field book; made if it is not there.
    #[arg(long, default_value = "field-book")]
    into: PathBuf,
    /// Who brings it in, as the history shall show.
    #[arg(long, default_value = "", hide_default_value = true)]
    by: String,
    /// Trees of another origin: the name of the property they go into; the file's name if left out.
    #[arg(long)]
    name: Option<String>,
    /// Trees of another origin: the day they were measured; without it that stays open.
    #[arg(long)]
    date: Option<Day>,
    /// Trees of another origin: what a column holds, such as height_m=HEIGHT:ft; may be repeated.
    /// The others are guessed, and the guesses told. A field that is not known is answered with
    /// the list of those that are.
    #[arg(long, value_name = "FIELD=COLUMN[:UNIT]")]
    map: Vec<String>,
}

pub fn import(asked: &Asked) -> Result<ExitCode, BookError> {
    if is_zip(&asked.file)? {
        of_inventory_only(asked)?;
        return pack::import(asked);
    }
    let bytes =
        std::fs::read(&asked.file).map_err(|cause| BookError::reading(&asked.file, &cause))?;
    let kind = inventory_kind(&bytes);
    drop(bytes);
    if kind == InventoryKind::SiteFile {
        of_inventory_only(asked)?;
        let file = read_site_file_at(&asked.file, &shipped_codes())?;
        brought_in(asked, file)
    } else {
        inventory::import(asked)
    }
}

/// A site file says itself what its fields are.
fn of_inventory_only(asked: &Asked) -> Result<(), BookError> {
    let named = [
        ("--name", asked.name.is_some()),
        ("--date", asked.date.is_some()),
        ("--map", !asked.map.is_empty()),
    ];
    let faults: Vec<Fault> = named
        .into_iter()
        .filter(|(_, given)| *given)
        .map(|(option, _)| Fault::new("fault.of-inventory-only", option, "", ""))
        .collect();
    if faults.is_empty() {
        Ok(())
    } else {
        Err(BookError::Refused { faults })
    }
}

/// Brings a site with its photos into the book; a book that was made for it goes again when it does
/// not fit.
pub fn brought_in(asked: &Asked, mut file: SiteFile) -> Result<ExitCode, BookError> {
    let at = now();
    let is_new = !asked.into.exists();
    let mut store = Store::open(&asked.into, "desk", at)?;
    refuse_repaired(asked, &store)?;
    make_unique(&mut file, &sites_held(&store.read().load_book()?));
    let beside = asked.file.parent().unwrap_or(Path::new("."));
    let author = Author {
        person: Id::from(asked.by.as_str()),
        at,
    };
    let done = take_photos(&mut file, beside, &asked.into.join(PHOTOS))
        .and_then(|()| store.put_site_file(&author, &file));
    if let Err(cause) = done {
        drop(store);
        if is_new {
            // Nothing was in it; what cannot be removed does no harm.
            let _ = std::fs::remove_dir_all(&asked.into);
        }
        return Err(cause);
    }
    let folder = asked.into.display().to_string();
    let said = [
        ("site", Said::Text(&file.site.name)),
        ("trees", Said::Count(file.site.trees.len() as i64)),
        ("folder", Said::Text(&folder)),
    ];
    tell(&words(false).say("desk.imported", &said))?;
    Ok(ExitCode::SUCCESS)
}

/// Goes no further with a book that was damaged.
fn refuse_repaired(asked: &Asked, store: &Store) -> Result<(), BookError> {
    match &store.opening().repair {
        Some(repair) => Err(BookError::Damaged {
            place: asked.into.join(DATABASE).display().to_string(),
            detail: repair.detail.clone(),
            kept: repair.kept.clone(),
        }),
        None => Ok(()),
    }
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
