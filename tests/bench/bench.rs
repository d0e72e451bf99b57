//! What the jobs share: a folder of their own, the demo property, the trees.

use std::error::Error;
use std::path::{Path, PathBuf};
use std::process::Command;

use bolewalk_core::intake::read_site_file_at;
use bolewalk_core::judge::codebook::starter_codes;
use bolewalk_core::judge::rules::RuleSet;
use bolewalk_core::record::{Day, Id, SiteFile};
use tempfile::TempDir;

use crate::peer::succeeded;

/// What a step of the bench gives, or why the bench ends here.
pub type Outcome<T> = Result<T, Box<dyn Error>>;

/// Trees of a published inventory: the Urban tree database, USDA Forest Service Research Data
/// Archive, RDS-2016-0005 (McPherson, van Doorn & Peper 2016).
pub const TREES: usize = 14_487;

/// A folder of its own for everything that is read and written, gone at the end.
pub struct Bench {
    folder: TempDir,
}

impl Bench {
    pub fn new() -> Outcome<Bench> {
        // Beside what is built: a disk, where the system's own temporary folder may be memory.
        let folder = TempDir::new_in(env!("CARGO_TARGET_TMPDIR"))?;
        Ok(Bench { folder })
    }

    /// A path in the folder.
    pub fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    /// The demo property with its photos: its folder and its records.
    pub fn demo(&self) -> Outcome<(PathBuf, SiteFile)> {
        let folder = self.path("demo");
        if !folder.exists() {
            succeeded(Command::new(desk()).arg("demo").arg(&folder))?;
        }
        let codes = starter_codes().iter().map(|code| code.id.clone()).collect();
        let file = read_site_file_at(&folder.join("property.json"), &codes)?;
        Ok((folder, file))
    }

    /// The table of trees, and in words which one it is.
    pub fn trees(&self) -> Outcome<(PathBuf, &'static str)> {
        if let Some(whole) = std::env::var_os("BOLEWALK_TREES_CSV") {
            return Ok((whole.into(), "the whole published table"));
        }
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
        let some = folder.join("fixtures/inventories/urban-trees-300.csv");
        let path = self.path("trees.csv");
        if !path.exists() {
            repeat_rows(&some, &path)?;
        }
        let words = "300 rows of the published table repeated; BOLEWALK_TREES_CSV names the whole";
        Ok((path, words))
    }
}

/// The rows again and again, each with a key and a tag of its own.
fn repeat_rows(from: &Path, to: &Path) -> Outcome<()> {
    let mut reader = csv::Reader::from_path(from)?;
    let header = reader.headers()?.clone();
    let rows: Vec<csv::StringRecord> = reader.records().collect::<Result<_, _>>()?;
    let mut writer = csv::Writer::from_path(to)?;
    writer.write_record(&header)?;
    for (number, row) in rows.iter().cycle().take(TREES).enumerate() {
        let own = (number + 1).to_string();
        let cells = header.iter().zip(row);
        writer.write_record(cells.map(|(name, cell)| match name {
            "DbaseID" | "TreeID" => own.as_str(),
            _ => cell,
        }))?;
    }
    Ok(writer.flush()?)
}

/// The desk command, built with the bench.
pub fn desk() -> &'static str {
    env!("CARGO_BIN_EXE_bolewalk")
}

/// The rule set of the United States.
pub fn rules() -> Outcome<RuleSet> {
    Ok(RuleSet::shipped(&Id::from("us"))?)
}

/// The day of a property's latest visit.
pub fn latest_day(file: &SiteFile) -> Outcome<Day> {
    let days = file.site.visits.iter().map(|visit| visit.day);
    days.max().ok_or_else(|| "nobody was there".into())
}
