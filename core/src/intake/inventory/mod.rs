//! Trees from another inventory: delimited text or GeoJSON points, whatever the columns are called.

mod delimited;
mod features;
mod field;
mod header;
mod number;
mod plan;
mod rows;
mod tags;
mod text;
mod trees;
mod values;

use std::collections::BTreeMap;
use std::path::Path;

pub use field::{ColumnMapping, LengthUnit, TreeField};

use crate::error::BookError;
use crate::record::{Day, Fault, Reason, SiteFile};

/// The largest file that is read, in bytes.
const LARGEST: u64 = 256 * 1024 * 1024;

/// What a person says about a file of trees.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct InventoryOptions {
    /// The name of the property that the trees go into, 1 to 200 characters.
    pub site_name: String,
    /// The day on which the trees were measured; without it the measures have no date, which is a
    /// gap.
    pub day: Option<Day>,
    /// Columns named by hand; the others are guessed.
    pub columns: Vec<ColumnMapping>,
    /// Latin names by common name in lower case, for files that know only the latter.
    pub latin_names: BTreeMap<String, String>,
}

/// What became of a file of trees. `rows` is the number of trees, of `faults` and of `blank_rows`
/// together: every row is accounted for.
#[derive(Debug, Clone, PartialEq)]
pub struct Imported {
    /// The property with its trees.
    pub file: SiteFile,
    /// What was guessed, each a sentence of the catalogue.
    pub guesses: Vec<Reason>,
    /// Rows that became no tree, each with its place and reason.
    pub faults: Vec<Fault>,
    /// Values that were left out of trees that were taken, each with its place and reason.
    pub left_out: Vec<Fault>,
    /// Rows without any content.
    pub blank_rows: u32,
    /// Rows of the file, without its header.
    pub rows: u32,
}

/// What kind of file something is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InventoryKind {
    /// A site file of this program's own.
    SiteFile,
    /// GeoJSON.
    GeoJson,
    /// Delimited text.
    Delimited,
}

/// Tells the kind of a file by its beginning; whether it can be read is another question.
pub fn inventory_kind(bytes: &[u8]) -> InventoryKind {
    #[derive(serde::Deserialize)]
    struct Told {
        r#type: Option<serde_json::Value>,
    }
    let text = text::decoded(bytes).text;
    let text = text.trim_start();
    if !text.starts_with(['{', '[']) {
        return InventoryKind::Delimited;
    }
    let told = serde_json::from_str::<Told>(text).is_ok_and(|told| told.r#type.is_some());
    // A damaged GeoJSON still begins like one.
    let begins = || {
        text.chars()
            .take(400)
            .collect::<String>()
            .contains("\"Feature")
    };
    if told || begins() {
        InventoryKind::GeoJson
    } else {
        InventoryKind::SiteFile
    }
}

/// Reads the trees of a file.
///
/// # Errors
/// [`BookError::NotFound`] or [`BookError::Unreadable`] for the file itself, else as
/// [`read_inventory`].
pub fn read_inventory_at(path: &Path, options: &InventoryOptions) -> Result<Imported, BookError> {
    let failed = |cause: &std::io::Error| BookError::reading(path, cause);
    let size = std::fs::metadata(path)
        .map_err(|cause| failed(&cause))?
        .len();
    if size > LARGEST {
        let place = path.display().to_string();
        let fault = Fault::new("fault.file-too-large", place, size, LARGEST.to_string());
        return Err(BookError::refused(fault));
    }
    read_inventory(
        &std::fs::read(path).map_err(|cause| failed(&cause))?,
        options,
    )
}

/// Reads trees from the bytes of a file: delimited text (comma, semicolon, tab or bar; UTF-8,
/// UTF-16 with its mark or Windows-1252; decimal point or comma) or GeoJSON points. Measures below
/// zero, blanks and words such as `NA` are missing. A diameter becomes a girth, half a crown's
/// diameter its radius; all measures count as taken over. Positions keep their accuracy unknown
/// where the file does not tell it.
///
/// Every row becomes a tree or one of `faults`. A tag that is there twice is a fault, unless a column
/// with a unique key is mapped or found: then the key is put behind it.
///
/// # Errors
/// [`BookError::Refused`] where the file as a whole cannot be read, a mapping names no column, or no
/// column can be told.
pub fn read_inventory(bytes: &[u8], options: &InventoryOptions) -> Result<Imported, BookError> {
    let length = options.site_name.trim().chars().count();
    if !(1..=200).contains(&length) {
        let fault = Fault::new("fault.site-name", "name", length, "1 to 200");
        return Err(BookError::refused(fault));
    }
    let decoded = text::decoded(bytes);
    let rows = match inventory_kind(bytes) {
        InventoryKind::Delimited => delimited::delimited(&decoded.text)?,
        InventoryKind::GeoJson | InventoryKind::SiteFile => features::features(&decoded.text)?,
    };
    trees::trees(rows, decoded.encoding, options)
}
