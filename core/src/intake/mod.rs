//! What others wrote becomes records: site files, delimited text, map files, packs; every fault
//! with its place.

mod ground;
mod ids;
mod inventory;
mod namespace;
mod pack;
mod references;
mod schema;
mod schema_faults;
mod shape_faults;
mod site_file;

pub use ground::{GroundShape, read_ground, read_ground_at};
pub use ids::{fill_ids, make_unique};
pub use inventory::{
    ColumnMapping, Imported, InventoryKind, InventoryOptions, LengthUnit, TreeField,
    inventory_kind, read_inventory, read_inventory_at,
};
pub use namespace::HeldSite;
pub use pack::{Pack, is_zip};
pub use schema::site_file_schema;
pub use site_file::{read_site_file, read_site_file_at, write_site_file};
