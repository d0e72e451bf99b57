//! Shapes on the ground from a GeoJSON file (RFC 7946): the edge of a property, and targets.

use std::path::Path;

use geojson::{Feature, GeoJson, GeometryValue, Position};

use super::shape_faults::ring_fault;
use crate::error::BookError;
use crate::record::{Fault, GroundForm, LAT_DEG, LON_DEG, LatLon};

/// The largest file read, in bytes: an outline is small, and a whole county is no property.
const LARGEST: u64 = 10 * 1024 * 1024;
/// Most shapes taken from one file.
const MOST: usize = 500;

/// A shape on the ground.
#[derive(Debug, Clone, PartialEq)]
pub struct GroundShape {
    /// Its name, where the file has one.
    pub name: Option<String>,
    /// Whether the file says that it is the edge of the property.
    pub is_outline: bool,
    /// Point, way or ring.
    pub form: GroundForm,
    /// Its points; a ring is not closed by repeating its first.
    pub points: Vec<LatLon>,
}

/// Reads the shapes of a file: polygons (their outer rings), lines and points, in its order. A shape
/// is the edge of the property where its property `use` says `outline`.
///
/// # Errors
/// `NotFound`, `Unreadable` for the file; `Refused` with every fault and its place: a file too large,
/// no GeoJSON, coordinates off the globe or in another reference system, rings that cross
/// themselves, no shape at all.
pub fn read_ground_at(path: &Path) -> Result<Vec<GroundShape>, BookError> {
    let size = std::fs::metadata(path)
        .map_err(|cause| BookError::reading(path, &cause))?
        .len();
    if size > LARGEST {
        return Err(refused("fault.file-too-large", size, LARGEST));
    }
    let bytes = std::fs::read(path).map_err(|cause| BookError::reading(path, &cause))?;
    let Ok(text) = String::from_utf8(bytes) else {
        return Err(refused("fault.not-utf8", "", ""));
    };
    read_ground(&text)
}

/// The same from the file's text.
///
/// # Errors
/// As [`read_ground_at`].
pub fn read_ground(text: &str) -> Result<Vec<GroundShape>, BookError> {
    let text = text.trim_start_matches('\u{feff}');
    if let Err(cause) = serde_json::from_str::<serde::de::IgnoredAny>(text) {
        let place = format!("line {}, column {}", cause.line(), cause.column());
        return Err(BookError::refused(Fault::new(
            "fault.not-json",
            place,
            cause,
            "",
        )));
    }
    let whole: GeoJson = text
        .parse()
        .map_err(|cause| refused("fault.not-geojson", cause, ""))?;
    let features = match whole {
        GeoJson::FeatureCollection(all) => all.features,
        GeoJson::Feature(one) => vec![one],
        GeoJson::Geometry(shape) => vec![Feature::from(shape)],
    };
    let mut shapes = Vec::new();
    let mut faults = Vec::new();
    for (index, feature) in features.iter().enumerate() {
        let place = format!("/features/{index}");
        let Some(geometry) = &feature.geometry else {
            continue;
        };
        for (form, points) in parts(&geometry.value) {
            match sound(&points, form, &place) {
                Ok(points) => shapes.push(shape(feature, form, points)),
                Err(fault) => faults.push(fault),
            }
        }
    }
    if !faults.is_empty() {
        return Err(BookError::Refused { faults });
    }
    match shapes.len() {
        0 => Err(refused("fault.no-shapes", "", "")),
        count if count > MOST => Err(refused("fault.too-many", count, MOST)),
        _ => Ok(shapes),
    }
}

fn refused(code: &str, found: impl std::fmt::Display, allowed: impl ToString) -> BookError {
    BookError::refused(Fault::new(code, "", found, allowed.to_string()))
}

/// The shapes that a geometry is made of; of a polygon its outer ring.
fn parts(shape: &GeometryValue) -> Vec<(GroundForm, Vec<Position>)> {
    let outer = |rings: &Vec<Vec<Position>>| {
        let ring = rings.first().cloned().unwrap_or_default();
        (GroundForm::Area, ring)
    };
    match shape {
        GeometryValue::Point { coordinates } => vec![(GroundForm::Spot, vec![coordinates.clone()])],
        GeometryValue::MultiPoint { coordinates } => {
            let spot = |at: &Position| (GroundForm::Spot, vec![at.clone()]);
            coordinates.iter().map(spot).collect()
        }
        GeometryValue::LineString { coordinates } => vec![(GroundForm::Way, coordinates.clone())],
        GeometryValue::MultiLineString { coordinates } => {
            let way = |line: &Vec<Position>| (GroundForm::Way, line.clone());
            coordinates.iter().map(way).collect()
        }
        GeometryValue::Polygon { coordinates } => vec![outer(coordinates)],
        GeometryValue::MultiPolygon { coordinates } => coordinates.iter().map(outer).collect(),
        GeometryValue::GeometryCollection { geometries } => geometries
            .iter()
            .flat_map(|one| parts(&one.value))
            .collect(),
    }
}

/// The points on the globe, a ring without its last; refuses what cannot be.
fn sound(points: &[Position], form: GroundForm, place: &str) -> Result<Vec<LatLon>, Fault> {
    let mut sound = Vec::with_capacity(points.len());
    for point in points {
        let [lon_deg, lat_deg, ..] = point.as_slice() else {
            return Err(Fault::new("fault.half-a-position", place, "", "2"));
        };
        if !LAT_DEG.allows(*lat_deg) || !LON_DEG.allows(*lon_deg) {
            let found = format!("{lon_deg}, {lat_deg}");
            return Err(Fault::new(
                "fault.not-degrees",
                place,
                found,
                "−180 to 180, −90 to 90",
            ));
        }
        if *lat_deg == 0.0 && *lon_deg == 0.0 {
            return Err(Fault::new("fault.file-at-zero", place, "", ""));
        }
        sound.push(LatLon {
            lat_deg: *lat_deg,
            lon_deg: *lon_deg,
        });
    }
    match form {
        GroundForm::Area => {
            if sound.len() > 1 && sound.first() == sound.last() {
                sound.pop();
            }
            match ring_fault(&sound, place) {
                Some(fault) => Err(fault),
                None => Ok(sound),
            }
        }
        GroundForm::Way if sound.len() < 2 => {
            Err(Fault::new("fault.too-few", place, sound.len(), "2"))
        }
        GroundForm::Way | GroundForm::Spot => Ok(sound),
    }
}

fn shape(feature: &Feature, form: GroundForm, points: Vec<LatLon>) -> GroundShape {
    let text = |name: &str| {
        let value = feature.property(name)?.as_str()?.trim();
        let shortened: String = value.chars().take(200).collect();
        (!shortened.is_empty()).then_some(shortened)
    };
    GroundShape {
        name: text("name").or_else(|| text("Name")),
        is_outline: form == GroundForm::Area && text("use").as_deref() == Some("outline"),
        form,
        points,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SQUARE: &str = "[[[-71.122,42.331],[-71.120,42.331],[-71.120,42.332],[-71.122,42.331]]]";

    fn feature(kind: &str, coordinates: &str, properties: &str) -> String {
        format!(
            r#"{{"type":"Feature","properties":{properties},
            "geometry":{{"type":"{kind}","coordinates":{coordinates}}}}}"#
        )
    }

    fn code(text: &str) -> String {
        match read_ground(text) {
            Err(BookError::Refused { faults }) => faults[0].code.clone(),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn polygons_lines_and_points_are_read_in_their_order() {
        // RFC 7946, sections 3.1 and 9: longitude first, a ring closed by its first point.
        let text = format!(
            r#"{{"type":"FeatureCollection","features":[{},{},{}]}}"#,
            feature("Polygon", SQUARE, r#"{"use":"outline"}"#),
            feature(
                "LineString",
                "[[-71.12,42.33],[-71.13,42.33]]",
                r#"{"name":"Mill Lane"}"#
            ),
            feature("Point", "[-71.121,42.3312]", "null"),
        );
        let shapes = read_ground(&text).unwrap();
        let forms: Vec<GroundForm> = shapes.iter().map(|shape| shape.form).collect();
        assert_eq!(forms, [GroundForm::Area, GroundForm::Way, GroundForm::Spot]);
        assert!(shapes[0].is_outline);
        assert_eq!(shapes[0].points.len(), 3, "a ring is not closed twice");
        assert_eq!(shapes[0].points[0].lat_deg, 42.331);
        assert_eq!(shapes[1].name.as_deref(), Some("Mill Lane"));
    }

    #[test]
    fn what_is_no_ground_is_refused_with_its_fault() {
        assert_eq!(code("{"), "fault.not-json");
        assert_eq!(code("[1, 2]"), "fault.not-geojson");
        assert_eq!(
            code(r#"{"type":"FeatureCollection","features":[]}"#),
            "fault.no-shapes"
        );
        let metres = feature("Point", "[330000,4687000]", "null");
        assert_eq!(code(&metres), "fault.not-degrees");
        let bow_tie = feature("Polygon", "[[[0,1],[1,2],[0,2],[1,1],[0,1]]]", "null");
        assert_eq!(code(&bow_tie), "fault.ring-crosses-itself");
        let nowhere = feature("LineString", "[[0,0],[-71.13,42.33]]", "null");
        assert_eq!(code(&nowhere), "fault.file-at-zero");
        let short = feature("LineString", "[[0,1]]", "null");
        assert!(["fault.too-few", "fault.not-geojson"].contains(&code(&short).as_str()));
    }
}
