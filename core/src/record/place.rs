//! Where something is: coordinates on WGS 84, and where they came from.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::number_field::NumberField;
use super::quantity::Quantity;

/// Latitude; beyond 89.9° a local plane makes no sense.
pub const LAT_DEG: NumberField = NumberField {
    id: "position.lat_deg",
    quantity: Quantity::DegreesLatLon,
    min: -89.9,
    max: 89.9,
    step: 0.00001,
};
/// Longitude.
pub const LON_DEG: NumberField = NumberField {
    id: "position.lon_deg",
    quantity: Quantity::DegreesLatLon,
    min: -180.0,
    max: 180.0,
    step: 0.00001,
};
/// Radius that holds the true place with 68 % probability.
pub const ACCURACY_M: NumberField = NumberField {
    id: "position.accuracy_m",
    quantity: Quantity::LengthM,
    min: 0.001,
    max: 10_000.0,
    step: 0.1,
};

/// A point on WGS 84.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct LatLon {
    /// Latitude in degrees, north positive.
    #[schemars(transform = LAT_DEG.rule())]
    pub lat_deg: f64,
    /// Longitude in degrees, east positive.
    #[schemars(transform = LON_DEG.rule())]
    pub lon_deg: f64,
}

/// A position with its accuracy, which stays unknown where nobody knew it.
#[skip_serializing_none]
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Position {
    /// Latitude in degrees, north positive.
    #[schemars(transform = LAT_DEG.rule())]
    pub lat_deg: f64,
    /// Longitude in degrees, east positive.
    #[schemars(transform = LON_DEG.rule())]
    pub lon_deg: f64,
    /// Radius in metres that holds the true place with 68 % probability.
    #[schemars(transform = ACCURACY_M.rule())]
    pub accuracy_m: Option<f64>,
    /// How it was found.
    pub method: Option<PositionMethod>,
}

impl Position {
    /// The point without its accuracy.
    pub fn point(&self) -> LatLon {
        LatLon {
            lat_deg: self.lat_deg,
            lon_deg: self.lon_deg,
        }
    }
}

/// How a position was found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema, uniffi::Enum)]
#[serde(rename_all = "snake_case")]
pub enum PositionMethod {
    /// Satellite fix of a phone.
    PhoneFix,
    /// Many fixes averaged.
    AveragedFixes,
    /// Survey-grade receiver.
    Survey,
    /// Tapped or read on a map.
    Map,
    /// From a photo's own record.
    PhotoRecord,
    /// Taken over from another inventory.
    TakenOver,
}
