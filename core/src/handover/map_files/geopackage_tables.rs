//! The tables that OGC 12-128r17 (GeoPackage 1.3) asks for, and those of our layers with the R-tree
//! extension's index and triggers.

use super::layer::{Form, Kind, Layer};

/// `GPKG` in ASCII.
pub(super) const APPLICATION_ID: i32 = 0x4750_4B47;
/// Version 1.3.0.
pub(super) const USER_VERSION: i32 = 10_300;
/// WGS 84, longitude and latitude in degrees.
pub(super) const WGS84: i32 = 4326;

/// The tables of every GeoPackage with features and an index.
pub(super) const COMMON: &str = r#"
CREATE TABLE gpkg_spatial_ref_sys (
  srs_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL PRIMARY KEY,
  organization TEXT NOT NULL,
  organization_coordsys_id INTEGER NOT NULL,
  definition TEXT NOT NULL,
  description TEXT
);
INSERT INTO gpkg_spatial_ref_sys VALUES
  ('Undefined Cartesian SRS', -1, 'NONE', -1, 'undefined', 'undefined Cartesian coordinate reference system'),
  ('Undefined geographic SRS', 0, 'NONE', 0, 'undefined', 'undefined geographic coordinate reference system'),
  ('WGS 84 geodetic', 4326, 'EPSG', 4326, 'GEOGCS["WGS 84",DATUM["WGS_1984",SPHEROID["WGS 84",6378137,298.257223563,AUTHORITY["EPSG","7030"]],AUTHORITY["EPSG","6326"]],PRIMEM["Greenwich",0,AUTHORITY["EPSG","8901"]],UNIT["degree",0.0174532925199433,AUTHORITY["EPSG","9122"]],AXIS["Latitude",NORTH],AXIS["Longitude",EAST],AUTHORITY["EPSG","4326"]]', 'longitude/latitude coordinates in decimal degrees on the WGS 84 spheroid');
CREATE TABLE gpkg_contents (
  table_name TEXT NOT NULL PRIMARY KEY,
  data_type TEXT NOT NULL,
  identifier TEXT UNIQUE,
  description TEXT DEFAULT '',
  last_change DATETIME NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%fZ','now')),
  min_x DOUBLE,
  min_y DOUBLE,
  max_x DOUBLE,
  max_y DOUBLE,
  srs_id INTEGER,
  CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys(srs_id)
);
CREATE TABLE gpkg_geometry_columns (
  table_name TEXT NOT NULL,
  column_name TEXT NOT NULL,
  geometry_type_name TEXT NOT NULL,
  srs_id INTEGER NOT NULL,
  z TINYINT NOT NULL,
  m TINYINT NOT NULL,
  CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name),
  CONSTRAINT uk_gc_table_name UNIQUE (table_name),
  CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
  CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id)
);
CREATE TABLE gpkg_extensions (
  table_name TEXT,
  column_name TEXT,
  extension_name TEXT NOT NULL,
  definition TEXT NOT NULL,
  scope TEXT NOT NULL,
  CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name)
);
"#;

/// The table of a layer.
pub(super) fn table_of(layer: &Layer) -> String {
    let columns: Vec<String> = layer
        .columns
        .iter()
        .map(|column| format!(",\n  \"{}\" {}", column.name, type_of(column.kind)))
        .collect();
    format!(
        "CREATE TABLE \"{}\" (\n  fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL,\n  geom {},\n  record TEXT{}\n);",
        layer.name,
        geometry_type(layer.form),
        columns.concat()
    )
}

/// The name of a geometry type in GeoPackage.
pub(super) fn geometry_type(form: Form) -> &'static str {
    match form {
        Form::Point => "POINT",
        Form::MultiLine => "MULTILINESTRING",
        Form::MultiPolygon => "MULTIPOLYGON",
        Form::Any => "GEOMETRY",
    }
}

fn type_of(kind: Kind) -> &'static str {
    match kind {
        Kind::Text => "TEXT",
        Kind::Yes => "BOOLEAN",
        Kind::Day => "DATE",
        Kind::Number(_) | Kind::Reach(_) => "DOUBLE",
    }
}

/// The index of a layer, filled before its triggers are there: they call functions that only a
/// reader of maps brings along.
pub(super) fn index_of(layer: &Layer) -> String {
    format!(
        "CREATE VIRTUAL TABLE \"rtree_{}_geom\" USING rtree(id, minx, maxx, miny, maxy);",
        layer.name
    )
}

/// The triggers of the R-tree extension as version 1.3 words them.
pub(super) fn triggers_of(layer: &Layer) -> String {
    let table = layer.name;
    let put = format!(
        "INSERT OR REPLACE INTO \"rtree_{table}_geom\" VALUES (NEW.\"fid\", ST_MinX(NEW.\"geom\"), \
         ST_MaxX(NEW.\"geom\"), ST_MinY(NEW.\"geom\"), ST_MaxY(NEW.\"geom\"));"
    );
    let filled = "(NEW.\"geom\" NOTNULL AND NOT ST_IsEmpty(NEW.\"geom\"))";
    let bare = "(NEW.\"geom\" ISNULL OR ST_IsEmpty(NEW.\"geom\"))";
    let take = |ids: &str| format!("DELETE FROM \"rtree_{table}_geom\" WHERE id {ids};");
    let old = take("= OLD.\"fid\"");
    let both = take("IN (OLD.\"fid\", NEW.\"fid\")");
    let of_geom = "UPDATE OF \"geom\"";
    let same = "OLD.\"fid\" = NEW.\"fid\" AND";
    let moved = "OLD.\"fid\" != NEW.\"fid\" AND";
    let triggers = [
        ("insert", "INSERT", filled.to_owned(), put.clone()),
        ("update1", of_geom, format!("{same} {filled}"), put.clone()),
        ("update2", of_geom, format!("{same} {bare}"), old.clone()),
        (
            "update3",
            "UPDATE",
            format!("{moved} {filled}"),
            format!("{old} {put}"),
        ),
        ("update4", "UPDATE", format!("{moved} {bare}"), both),
        (
            "delete",
            "DELETE",
            "OLD.\"geom\" NOT NULL".to_owned(),
            old.clone(),
        ),
    ];
    triggers
        .iter()
        .map(|(name, event, when, action)| {
            format!(
                "CREATE TRIGGER \"rtree_{table}_geom_{name}\" AFTER {event} ON \"{table}\" \
                 WHEN {when} BEGIN {action} END;\n"
            )
        })
        .collect()
}
