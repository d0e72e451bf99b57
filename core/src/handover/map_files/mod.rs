//! Map files for the crew: the site as GeoPackage, GeoJSON and a table of trees.
//!
//! Layers: `trees` (points), `zones` (drop zone and keep-out of the way of working shown first),
//! `targets`, `lines` (overhead lines), `outline` (the property's edge). The same site and the same
//! judgement give the same bytes.

mod csv;
mod cut;
mod geojson;
mod geopackage;
mod geopackage_tables;
mod layer;
mod layers;
mod trees;

pub use csv::{csv_text, write_csv};
pub use geojson::{geojson_text, write_geojson};
pub use geopackage::write_geopackage;
