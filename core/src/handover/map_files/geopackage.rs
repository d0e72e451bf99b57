//! GeoPackage 1.3 (OGC 12-128r17): a SQLite file with a table for each layer.

use std::path::Path;

use geo::{BoundingRect, Geometry, MultiLineString, MultiPolygon, Rect};
use rusqlite::types::ToSqlOutput;
use rusqlite::{Connection, ToSql, params, params_from_iter};

use super::geopackage_tables::{
    APPLICATION_ID, COMMON, USER_VERSION, WGS84, geometry_type, index_of, table_of, triggers_of,
};
use super::layer::{Form, Layer, Row, Value};
use super::layers::layers;
use crate::error::BookError;
use crate::handover::write_aside;
use crate::record::{Day, SiteFile, SiteJudgement};
use crate::words::Words;

/// Writes the map of a site as GeoPackage 1.3 with an index on each layer: the tables `trees`,
/// `zones`, `targets`, `lines` and `outline`, with the columns that the GeoJSON has as properties.
/// Its time of change is the day of the judgement, so that the same site gives the same bytes.
///
/// # Errors
/// [`BookError::DiskFull`], [`BookError::Unwritable`]; what was at `path` before stays.
pub fn write_geopackage(
    file: &SiteFile,
    judgement: &SiteJudgement,
    words: Words,
    path: &Path,
) -> Result<(), BookError> {
    let folder = match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    };
    let failed = |cause: &std::io::Error| BookError::writing(path, cause);
    let aside = tempfile::Builder::new()
        .prefix(".bolewalk-")
        .tempdir_in(folder)
        .map_err(|cause| failed(&cause))?;
    let draft = aside.path().join("map.gpkg");
    fill(&draft, &layers(file, judgement, words), judgement.as_of)
        .map_err(|cause| sorted(path, &cause))?;
    let bytes = std::fs::read(&draft).map_err(|cause| failed(&cause))?;
    write_aside(path, &bytes)
}

fn sorted(path: &Path, cause: &rusqlite::Error) -> BookError {
    let place = path.display().to_string();
    match cause.sqlite_error_code() {
        Some(rusqlite::ErrorCode::DiskFull) => BookError::DiskFull { place },
        Some(
            rusqlite::ErrorCode::CannotOpen
            | rusqlite::ErrorCode::ReadOnly
            | rusqlite::ErrorCode::SystemIoFailure
            | rusqlite::ErrorCode::PermissionDenied,
        ) => BookError::Unwritable {
            place,
            reason: cause.to_string(),
        },
        _ => BookError::Defect {
            detail: cause.to_string(),
        },
    }
}

fn fill(draft: &Path, layers: &[Layer], day: Day) -> rusqlite::Result<()> {
    let mut file = Connection::open(draft)?;
    // The draft is thrown away if anything fails, so it needs no journal.
    file.pragma_update(None, "journal_mode", "OFF")?;
    file.pragma_update(None, "synchronous", "OFF")?;
    file.pragma_update(None, "application_id", APPLICATION_ID)?;
    file.pragma_update(None, "user_version", USER_VERSION)?;
    let all = file.transaction()?;
    all.execute_batch(COMMON)?;
    for layer in layers {
        all.execute_batch(&table_of(layer))?;
        describe(&all, layer, day)?;
        all.execute_batch(&index_of(layer))?;
        for (number, row) in (1_i64..).zip(&layer.rows) {
            put(&all, layer, row, number)?;
        }
        all.execute_batch(&triggers_of(layer))?;
    }
    all.commit()?;
    file.close().map_err(|(_, cause)| cause)
}

/// What the common tables say of a layer.
fn describe(file: &Connection, layer: &Layer, day: Day) -> rusqlite::Result<()> {
    let bounds = layer
        .rows
        .iter()
        .filter_map(|row| row.place.as_ref()?.bounding_rect())
        .reduce(|one, other| {
            let low = (
                one.min().x.min(other.min().x),
                one.min().y.min(other.min().y),
            );
            let high = (
                one.max().x.max(other.max().x),
                one.max().y.max(other.max().y),
            );
            Rect::new(low, high)
        });
    file.execute(
        "INSERT INTO gpkg_contents VALUES (?1, 'features', ?1, '', ?2, ?3, ?4, ?5, ?6, ?7)",
        params![
            layer.name,
            format!("{day}T00:00:00.000Z"),
            bounds.map(|bounds| bounds.min().x),
            bounds.map(|bounds| bounds.min().y),
            bounds.map(|bounds| bounds.max().x),
            bounds.map(|bounds| bounds.max().y),
            WGS84,
        ],
    )?;
    file.execute(
        "INSERT INTO gpkg_geometry_columns VALUES (?1, 'geom', ?2, ?3, 0, 0)",
        params![layer.name, geometry_type(layer.form), WGS84],
    )?;
    file.execute(
        "INSERT INTO gpkg_extensions VALUES (?1, 'geom', 'gpkg_rtree_index', \
         'http://www.geopackage.org/spec120/#extension_rtree', 'write-only')",
        params![layer.name],
    )?;
    Ok(())
}

fn put(file: &Connection, layer: &Layer, row: &Row, number: i64) -> rusqlite::Result<()> {
    let place = row.place.clone().map(|place| formed(place, layer.form));
    let blob = place.as_ref().map(geometry_blob).transpose()?;
    let marks = ", ?".repeat(row.values.len());
    let mut values: Vec<&dyn ToSql> = vec![&number, &blob, &row.id];
    values.extend(row.values.iter().map(|value| value as &dyn ToSql));
    file.prepare_cached(&format!(
        "INSERT INTO \"{}\" VALUES (?, ?, ?{marks})",
        layer.name
    ))?
    .execute(params_from_iter(values))?;
    if let Some(bounds) = place.and_then(|place| place.bounding_rect()) {
        let index = format!(
            "INSERT INTO \"rtree_{}_geom\" VALUES (?, ?, ?, ?, ?)",
            layer.name
        );
        let (low, high) = (bounds.min(), bounds.max());
        file.prepare_cached(&index)?
            .execute(params![number, low.x, high.x, low.y, high.y])?;
    }
    Ok(())
}

/// One kind of geometry in a table: single shapes become a list of one.
fn formed(place: Geometry, form: Form) -> Geometry {
    match (place, form) {
        (Geometry::Polygon(one), Form::MultiPolygon) => MultiPolygon::new(vec![one]).into(),
        (Geometry::LineString(one), Form::MultiLine) => MultiLineString::new(vec![one]).into(),
        (other, _) => other,
    }
}

/// The GeoPackage header (little endian, with an envelope unless it is a point) and the WKB.
fn geometry_blob(place: &Geometry) -> rusqlite::Result<Vec<u8>> {
    let envelope = match place {
        Geometry::Point(_) => None,
        other => other.bounding_rect(),
    };
    let flags = if envelope.is_some() { 0b0000_0011 } else { 1 };
    let mut blob = vec![b'G', b'P', 0, flags];
    blob.extend(WGS84.to_le_bytes());
    if let Some(bounds) = envelope {
        let (low, high) = (bounds.min(), bounds.max());
        for edge in [low.x, high.x, low.y, high.y] {
            blob.extend(edge.to_le_bytes());
        }
    }
    wkb::writer::write_geometry(&mut blob, place, &wkb::writer::WriteOptions::default())
        .map_err(|cause| rusqlite::Error::ToSqlConversionFailure(Box::new(cause)))?;
    Ok(blob)
}

impl ToSql for Value {
    fn to_sql(&self) -> rusqlite::Result<ToSqlOutput<'_>> {
        match self {
            Value::Missing => Ok(ToSqlOutput::Owned(rusqlite::types::Value::Null)),
            Value::Text(text) => text.to_sql(),
            Value::Yes(answer) => answer.to_sql(),
            Value::Day(day) => Ok(ToSqlOutput::from(day.to_string())),
            Value::Number(number) => number.to_sql(),
        }
    }
}
