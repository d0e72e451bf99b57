//! A photo: a file beside the database, named by its hash.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Id, Moment};
use super::measures::BEARING_DEG;
use super::place::Position;

/// What a paper with photos is made for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum ReportFor {
    /// To be mailed: small photos.
    Mail,
    /// To be printed: sharp photos.
    Print,
}

/// A photo.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Photo {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The file: a path beside the site file, or the hash name in the field book's photo folder.
    #[schemars(length(min = 1, max = 1000))]
    pub file: String,
    /// What it shows.
    pub caption: Option<String>,
    /// The finding it shows, by id.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub finding: Id,
    /// When it was taken.
    pub taken: Option<Moment>,
    /// Where it was taken from.
    pub position: Option<Position>,
    /// Bearing the camera looked toward.
    #[schemars(transform = BEARING_DEG.rule())]
    pub direction_deg: Option<f64>,
}
