//! GeoJSON by RFC 7946: one feature collection on WGS 84, no `crs`, rings counterclockwise, shapes
//! cut at 180°. Every feature carries its layer in the property `layer`.

use std::path::Path;

use geojson::{Feature, Geometry, JsonObject, JsonValue, feature::Id};

use super::layer::{Layer, Row, Value};
use super::layers::layers;
use crate::error::BookError;
use crate::handover::write_aside;
use crate::record::{SiteFile, SiteJudgement};
use crate::words::Words;

/// The map of a site as GeoJSON (RFC 7946): trees, zones, targets, overhead lines and the outline
/// in one collection, told apart by the property `layer`. Lengths are metres and centimetres as the
/// names of the properties say; `…_shown` is in the reader's words, its neighbour the code of the
/// site file. Distances that people keep are rounded up to 0.1 m and count from the stem; only the
/// outlines of zones hold the position error. A tree without a position has a null geometry.
pub fn geojson_text(file: &SiteFile, judgement: &SiteJudgement, words: Words) -> String {
    let mut text = String::from("{\"type\":\"FeatureCollection\",\"features\":[");
    let mut first = true;
    for layer in layers(file, judgement, words) {
        for row in &layer.rows {
            text.push_str(if first { "\n" } else { ",\n" });
            text.push_str(&feature(&layer, row).to_string());
            first = false;
        }
    }
    text.push_str("\n]}\n");
    text
}

/// Writes [`geojson_text`] to a file, aside first and then renamed.
///
/// # Errors
/// [`BookError::DiskFull`], [`BookError::Unwritable`]; what was at `path` before stays.
pub fn write_geojson(
    file: &SiteFile,
    judgement: &SiteJudgement,
    words: Words,
    path: &Path,
) -> Result<(), BookError> {
    write_aside(path, geojson_text(file, judgement, words).as_bytes())
}

fn feature(layer: &Layer, row: &Row) -> Feature {
    let mut properties = JsonObject::new();
    properties.insert("layer".to_owned(), layer.name.into());
    for (column, value) in layer.columns.iter().zip(&row.values) {
        properties.insert(column.name.to_owned(), json(value));
    }
    Feature {
        bbox: None,
        geometry: row.place.as_ref().map(Geometry::from),
        id: (!row.id.is_empty()).then(|| Id::String(row.id.clone())),
        properties: Some(properties),
        foreign_members: None,
    }
}

fn json(value: &Value) -> JsonValue {
    match value {
        Value::Missing => JsonValue::Null,
        Value::Text(text) => text.as_str().into(),
        Value::Yes(answer) => (*answer).into(),
        Value::Day(day) => day.to_string().into(),
        Value::Number(number) => (*number).into(),
    }
}
