//! What leaves the field book: site summary, climb sheets, map files, tables, packs.

mod aside;
mod climb_sheets;
mod damaged;
mod map_files;
mod pack;
pub mod paper;
mod paper_input;
mod sheet;
mod side_view;
mod site_summary;
mod summary;

pub use aside::write_aside;
pub use climb_sheets::{climb_sheets, climb_sheets_bytes};
pub use damaged::write_damaged;
pub use map_files::{csv_text, geojson_text, write_csv, write_geojson, write_geopackage};
pub use pack::{PackInput, PackMade, TakeLine, pack_bytes, write_pack};
pub use paper_input::{HowFar, PaperInput, PhotoForPaper};
pub use site_summary::{site_summary, site_summary_bytes};

#[cfg(test)]
mod tests;
