//! What a command reads from: a site file, or a site of a field book.

use std::path::{Path, PathBuf};

use bolewalk_core::error::BookError;
use bolewalk_core::intake::read_site_file_at;
use bolewalk_core::judge::judge_site;
use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::record::{Day, Fault, Id, Photo, SiteFile, SiteJudgement};
use bolewalk_core::store::{DATABASE, LoadedSite, PHOTOS, Store};

use super::clock::{now, today};
use super::import::shipped_codes;

/// A site with all that the judgement reads, and where its photos lie.
pub struct Place {
    pub file: SiteFile,
    photos: PathBuf,
    /// Values that stand side by side in the field book until a person settles them.
    pub unsettled: usize,
    /// Values that this version cannot read.
    pub unread: usize,
}

impl Place {
    /// The site file at `path`, or the site of the field book in the folder `path`; `site` names
    /// it where the book holds several.
    pub fn open(path: &Path, site: Option<&str>) -> Result<Place, BookError> {
        if path.is_dir() {
            return Place::of_book(path, site);
        }
        let file = read_site_file_at(path, &shipped_codes())?;
        let beside = path.parent().unwrap_or(Path::new("."));
        Ok(Place {
            file,
            photos: beside.to_owned(),
            unsettled: 0,
            unread: 0,
        })
    }

    fn of_book(folder: &Path, site: Option<&str>) -> Result<Place, BookError> {
        let store = open_book(folder)?;
        let id = chosen(&store, site)?;
        let LoadedSite {
            file,
            standing,
            removed_but_changed,
            unread,
        } = store.read().load_site(&id)?;
        Ok(Place {
            file,
            photos: folder.join(PHOTOS),
            unsettled: standing.len() + removed_but_changed.len(),
            unread: unread.len(),
        })
    }

    /// The file of a photo.
    pub fn photo(&self, photo: &Photo) -> PathBuf {
        self.photos.join(&photo.file)
    }

    /// The day of the latest visit; today where nobody has been there yet.
    pub fn latest_day(&self) -> Day {
        let visits = self.file.site.visits.iter();
        visits.map(|visit| visit.day).max().unwrap_or_else(today)
    }

    /// The rule set of the site with the crew's own house values.
    pub fn rules(&self) -> Result<RuleSet, BookError> {
        let id = self.file.site.rule_set.clone().unwrap_or(Id::from("us"));
        RuleSet::shipped(&id)?.with_house_values(&self.file.house_values)
    }

    /// The judgement of the site for a day; of its latest visit where none is named.
    pub fn judged(&self, day: Option<Day>, hour: Option<u32>) -> Result<SiteJudgement, BookError> {
        let rules = self.rules()?;
        let day = day.unwrap_or_else(|| self.latest_day());
        Ok(judge_site(&self.file, &rules, day, hour))
    }
}

/// Opens a field book that is there; never makes one, never goes on with a damaged one.
pub fn open_book(folder: &Path) -> Result<Store, BookError> {
    if !folder.join(DATABASE).is_file() {
        return Err(BookError::NotFound {
            kind: "field book".to_owned(),
            id: folder.display().to_string(),
        });
    }
    let store = Store::open(folder, "desk", now())?;
    match &store.opening().repair {
        Some(repair) => Err(BookError::Damaged {
            place: folder.join(DATABASE).display().to_string(),
            detail: repair.detail.clone(),
            kept: repair.kept.clone(),
        }),
        None => Ok(store),
    }
}

/// The site that was asked for by name or id, or the only one there is.
pub fn chosen(store: &Store, asked: Option<&str>) -> Result<Id, BookError> {
    let sites = store.read().load_book()?.sites;
    if let Some(asked) = asked {
        let found = sites
            .iter()
            .find(|site| site.name == asked || site.id.as_str() == asked);
        return found
            .map(|site| site.id.clone())
            .ok_or(BookError::NotFound {
                kind: "property".to_owned(),
                id: asked.to_owned(),
            });
    }
    match sites.as_slice() {
        [only] => Ok(only.id.clone()),
        [] => Err(BookError::NotFound {
            kind: "property".to_owned(),
            id: String::new(),
        }),
        several => {
            let names: Vec<&str> = several.iter().map(|site| site.name.as_str()).collect();
            Err(BookError::refused(Fault::new(
                "fault.several-sites",
                "--site",
                names.len(),
                names.join(", "),
            )))
        }
    }
}
