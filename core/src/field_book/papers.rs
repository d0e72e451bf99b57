//! Site summary, climb sheets and map files, from a snapshot of the book.

use std::path::{Path, PathBuf};

use serde::de::DeserializeOwned;

use super::entries::Entered;
use super::inner::Inner;
use super::judged::{Answers, JudgedSite, judge_loaded, kept_answers};
use super::long_work::Running;
use crate::error::BookError;
use crate::handover::paper::Sheet;
use crate::handover::{
    PaperInput, climb_sheets, site_summary, write_csv, write_geojson, write_geopackage,
};
use crate::pages::{CommandKind, Entry};
use crate::photo::report_copy;
use crate::record::{Id, Moment, Photo, ReportFor};
use crate::store::Snapshot;
use crate::words::{UnitSystem, Words};

/// Which paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum WhichPaper {
    Summary,
    ClimbSheets,
}

impl WhichPaper {
    fn command(self) -> CommandKind {
        match self {
            WhichPaper::Summary => CommandKind::WriteSummary,
            WhichPaper::ClimbSheets => CommandKind::WriteClimbSheets,
        }
    }
}

/// Which map file.
#[derive(Debug, Clone, Copy, PartialEq, Eq, uniffi::Enum)]
pub enum MapFileKind {
    /// The trees as a table, for a spreadsheet: `.csv`.
    Csv,
    /// Every layer in one readable file: `.geojson`.
    GeoJson,
    /// Every layer as a table of one database: `.gpkg`.
    GeoPackage,
}

/// What a paper is made from, taken under the lock; the rest holds none.
pub(super) struct PaperState {
    pub(super) snapshot: Snapshot,
    pub(super) words: Words,
    pub(super) now: Moment,
    today: crate::record::Day,
    hour: u32,
    pub(super) photos: PathBuf,
    pub(super) device: String,
}

impl Inner {
    /// The present state, for a paper.
    pub(super) fn paper_state(&self) -> Result<PaperState, BookError> {
        Ok(PaperState {
            snapshot: self.store.snapshot()?,
            words: self.settings.words(),
            now: self.clock.now(),
            today: self.clock.today(),
            hour: self.clock.hour(),
            photos: self.photo_folder()?,
            device: self.store.device().to_owned(),
        })
    }
}

impl PaperState {
    /// Writes a paper of a site, as the entries of its offer say: in the reader's language and for
    /// mail where they say nothing.
    pub(super) fn write(
        &self,
        which: WhichPaper,
        entries: &[Entry],
        site: &Id,
        path: &Path,
        running: &Running<'_>,
    ) -> Result<(), BookError> {
        let chosen = Entered::read(which.command(), entries, &self.words)?;
        let language = choice(&chosen, "language").unwrap_or(self.words.language());
        let made_for = choice(&chosen, "photos").unwrap_or(ReportFor::Mail);
        running.go_on(0, 100)?;
        let judged = self.judged(site)?;
        running.go_on(1, 100)?;
        let photos = self.photos.as_path();
        let input = PaperInput {
            file: &judged.loaded.file,
            judgement: &judged.judged,
            words: Words::new(language, self.words.units()),
            made: self.now,
            sheet: match self.words.units() {
                UnitSystem::Metric => Sheet::A4,
                UnitSystem::Imperial => Sheet::UsLetter,
            },
            photo: &|photo: &Photo| {
                let (edge_px, quality) = (made_for.max_px(), made_for.quality());
                report_copy(&photos.join(&photo.file), edge_px, quality)
            },
        };
        let how_far = |done: u32, of: u32| running.tell(done, of);
        match which {
            WhichPaper::Summary => site_summary(&input, path, &how_far),
            WhichPaper::ClimbSheets => climb_sheets(&input, path, &how_far),
        }
    }

    /// Writes a map file of a site.
    pub(super) fn write_map(
        &self,
        kind: MapFileKind,
        site: &Id,
        path: &Path,
        running: &Running<'_>,
    ) -> Result<(), BookError> {
        running.go_on(0, 2)?;
        let judged = self.judged(site)?;
        running.go_on(1, 2)?;
        let (file, judgement) = (&judged.loaded.file, &judged.judged);
        match kind {
            MapFileKind::Csv => write_csv(file, judgement, self.words, path),
            MapFileKind::GeoJson => write_geojson(file, judgement, self.words, path),
            MapFileKind::GeoPackage => write_geopackage(file, judgement, self.words, path),
        }
    }

    fn judged(&self, site: &Id) -> Result<JudgedSite, BookError> {
        let reader = self.snapshot.read();
        let loaded = reader.load_site(site)?;
        let at_hand: Answers = kept_answers(&reader, &loaded.file)?;
        judge_loaded(loaded, self.today, self.hour, &at_hand)
    }
}

/// What was chosen for the field of a paper.
fn choice<T: DeserializeOwned>(chosen: &Entered, field: &str) -> Option<T> {
    let (_, value) = chosen.values().find(|(ask, _)| ask.field == field)?;
    T::deserialize(value).ok()
}
