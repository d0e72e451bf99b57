//! The jobs, one file each.

pub mod inventory;
pub mod judgement;
pub mod map_file;
pub mod paper;
pub mod photo;
pub mod section;

use std::path::Path;

use rusqlite::{Connection, OpenFlags};

use crate::bench::Outcome;

/// A database that is only looked at.
fn looked_at(path: &Path) -> Outcome<Connection> {
    let flags = OpenFlags::SQLITE_OPEN_READ_ONLY;
    Ok(Connection::open_with_flags(path, flags)?)
}

/// The number of rows of a table.
fn rows_of(database: &Connection, table: &str) -> Outcome<i64> {
    let sql = format!("SELECT count(*) FROM \"{table}\"");
    Ok(database.query_row(&sql, [], |row| row.get(0))?)
}

/// All features of a GeoPackage, over its layers.
fn features_of(package: &Path) -> Outcome<i64> {
    let package = looked_at(package)?;
    let sql = "SELECT table_name FROM gpkg_contents WHERE data_type = 'features'";
    let mut asked = package.prepare(sql)?;
    let layers: Vec<String> = asked
        .query_map([], |row| row.get(0))?
        .collect::<Result<_, _>>()?;
    layers.iter().map(|layer| rows_of(&package, layer)).sum()
}
