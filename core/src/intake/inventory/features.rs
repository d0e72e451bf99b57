//! GeoJSON (RFC 7946) as rows: a feature is a row, a property a column.

use std::collections::BTreeMap;

use serde_json::{Map, Value};

use super::rows::{Cell, Place, Point, Row, Rows};
use crate::error::BookError;
use crate::record::Fault;

/// The column of the features' own ids.
const OWN_ID: &str = "id";

/// Reads the features of a collection, or one feature by itself.
///
/// # Errors
/// [`BookError::Refused`] where the file is not GeoJSON or its coordinates are not on WGS 84.
pub(super) fn features(text: &str) -> Result<Rows, BookError> {
    let whole: Value = serde_json::from_str(text).map_err(|cause| {
        let place = format!("line {}, column {}", cause.line(), cause.column());
        BookError::refused(Fault::new("fault.not-json", place, cause, ""))
    })?;
    on_wgs84(&whole)?;
    let one;
    let list = match whole.get("type").and_then(Value::as_str) {
        Some("FeatureCollection") => match whole.get("features") {
            Some(Value::Array(list)) => list,
            _ => return Err(refused("fault.missing-field", "", "", "features")),
        },
        Some("Feature") => {
            one = vec![whole];
            &one
        }
        other => {
            let found = other.unwrap_or_default();
            return Err(refused(
                "fault.not-a-choice",
                "/type",
                found,
                "FeatureCollection",
            ));
        }
    };
    let mut columns = Columns::default();
    let mut read = Rows {
        columns: Vec::new(),
        rows: Vec::new(),
        broken: Vec::new(),
        blank: 0,
        has_points: true,
        delimiter: None,
    };
    for (index, feature) in list.iter().enumerate() {
        match row(index, feature, &mut columns) {
            Ok(row) => read.rows.push(row),
            Err(fault) => read.broken.push(fault),
        }
    }
    read.columns = columns.names;
    Ok(read)
}

fn refused(code: &str, place: &str, found: &str, allowed: &str) -> BookError {
    BookError::refused(Fault::new(code, place, found, allowed))
}

/// Before RFC 7946 a file could name another reference system.
fn on_wgs84(whole: &Value) -> Result<(), BookError> {
    let Some(named) = whole.get("crs").filter(|crs| !crs.is_null()) else {
        return Ok(());
    };
    let name = named.pointer("/properties/name").and_then(Value::as_str);
    let name = name.unwrap_or_default();
    if name.ends_with("CRS84") || name.ends_with(":4326") {
        return Ok(());
    }
    Err(refused(
        "fault.other-reference-system",
        "/crs",
        name,
        "EPSG:4326",
    ))
}

/// The names of properties in the order in which they are met.
#[derive(Default)]
struct Columns {
    names: Vec<String>,
    known: BTreeMap<String, usize>,
}

impl Columns {
    fn of(&mut self, name: &str) -> usize {
        if let Some(known) = self.known.get(name) {
            return *known;
        }
        let next = self.names.len();
        self.names.push(name.to_owned());
        self.known.insert(name.to_owned(), next);
        next
    }
}

fn row(index: usize, feature: &Value, columns: &mut Columns) -> Result<Row, Fault> {
    let place = Place::Feature(index);
    if feature.get("type").and_then(Value::as_str) != Some("Feature") {
        return Err(Fault::new("fault.not-a-choice", place.row(), "", "Feature"));
    }
    let point = point(feature.get("geometry"), place)?;
    let empty = Map::new();
    let properties = match feature.get("properties") {
        None | Some(Value::Null) => &empty,
        Some(Value::Object(properties)) => properties,
        Some(_) => return Err(Fault::new("fault.wrong-type", place.row(), "", "object")),
    };
    let mut cells: Vec<(usize, Cell)> = Vec::new();
    if let Some(cell) = feature.get(OWN_ID).and_then(cell)
        && !properties.contains_key(OWN_ID)
    {
        cells.push((columns.of(OWN_ID), cell));
    }
    for (name, value) in properties {
        let column = columns.of(name);
        cells.extend(cell(value).map(|cell| (column, cell)));
    }
    cells.sort_by_key(|cell| cell.0);
    Ok(Row {
        place,
        cells,
        point,
    })
}

fn cell(value: &Value) -> Option<Cell> {
    let text = match value {
        Value::Null => return None,
        Value::String(text) => text.trim().to_owned(),
        Value::Number(number) => {
            let text = number.to_string();
            let whole = text.strip_suffix(".0").map(str::to_owned);
            return Some(Cell {
                number: number.as_f64(),
                text: whole.unwrap_or(text),
            });
        }
        other => other.to_string(),
    };
    (!text.is_empty()).then_some(Cell { text, number: None })
}

/// A point, or several of which there is one; a tree may have no place, but no other shape.
fn point(geometry: Option<&Value>, place: Place) -> Result<Option<Point>, Fault> {
    let Some(geometry) = geometry.filter(|geometry| !geometry.is_null()) else {
        return Ok(None);
    };
    let kind = geometry
        .get("type")
        .and_then(Value::as_str)
        .unwrap_or_default();
    let at = match kind {
        "Point" => geometry.get("coordinates"),
        "MultiPoint" => match geometry.get("coordinates").and_then(Value::as_array) {
            Some(list) if list.len() == 1 => list.first(),
            _ => None,
        },
        _ => {
            return Err(Fault::new(
                "fault.not-a-point",
                place.position(),
                kind,
                "Point",
            ));
        }
    };
    let at = at.and_then(Value::as_array);
    if kind == "Point" && at.is_some_and(Vec::is_empty) {
        return Ok(None);
    }
    let number = |index: usize| at?.get(index)?.as_f64().filter(|value| value.is_finite());
    match (number(0), number(1)) {
        (Some(lon_deg), Some(lat_deg)) => Ok(Some(Point { lon_deg, lat_deg })),
        _ => Err(Fault::new(
            "fault.not-a-point",
            place.position(),
            kind,
            "Point",
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn features_are_rows_and_properties_columns() {
        let text = r#"{"type":"FeatureCollection","features":[
            {"type":"Feature","id":7,"geometry":{"type":"Point","coordinates":[-71.1,42.3]},
             "properties":{"height":12.0,"name":"oak"}},
            {"type":"Feature","geometry":null,"properties":{"girth":null,"name":" ash "}},
            {"type":"Feature","geometry":{"type":"Polygon","coordinates":[]},"properties":null}]}"#;
        let read = features(text).unwrap();
        assert_eq!(read.columns, ["id", "height", "name", "girth"]);
        assert_eq!(read.rows.len(), 2);
        assert_eq!(read.rows[0].cell(0).unwrap().text, "7");
        assert_eq!(read.rows[0].cell(1).unwrap().number, Some(12.0));
        assert_eq!(read.rows[0].point.unwrap().lat_deg, 42.3);
        assert_eq!(read.rows[1].cell(2).unwrap().text, "ash");
        assert!(read.rows[1].point.is_none());
        assert_eq!(read.broken[0].place, "/features/2/geometry");
    }

    #[test]
    fn another_reference_system_is_refused() {
        let file = |name: &str| {
            format!(
                r#"{{"type":"FeatureCollection","crs":{{"type":"name","properties":{{"name":"{name}"}}}},"features":[]}}"#
            )
        };
        assert!(features(&file("urn:ogc:def:crs:OGC:1.3:CRS84")).is_ok());
        assert!(features(&file("EPSG:25832")).is_err());
        assert!(features("{\"type\":\"Topology\"}").is_err());
        assert!(features("{").is_err());
    }
}
