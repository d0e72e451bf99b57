//! A day on a site: who was there, the weather by the hour.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::id::{Day, Id};
use super::measures::number;
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Hour of the day.
    HOUR, "weather.hour", Count, 0.0, 23.0, 1.0
);
number!(
    /// Mean wind.
    WIND_MS, "weather.wind_ms", SpeedMs, 0.0, 80.0, 0.5
);
number!(
    /// Wind force by the signs on land.
    WIND_FORCE, "weather.wind_force", Beaufort, 0.0, 12.0, 1.0
);
number!(
    /// Air temperature.
    TEMPERATURE_C, "weather.temperature_c", TemperatureC, -50.0, 60.0, 1.0
);
number!(
    /// Relative humidity.
    HUMIDITY_PCT, "weather.humidity_pct", Percent, 0.0, 100.0, 5.0
);
number!(
    /// Minutes since thunder was last heard.
    THUNDER_MIN, "weather.thunder_min_ago", DurationMin, 0.0, 1440.0, 5.0
);

/// One day on a site.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct Visit {
    /// Id; inspections refer to it.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// The day.
    pub day: Day,
    /// Who was there, by id.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crew: Vec<Id>,
    /// Notes.
    pub note: Option<String>,
    /// The weather, hour by hour.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub weather: Vec<WeatherHour>,
}

/// The weather of one hour.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct WeatherHour {
    /// Id; a site file may leave it out.
    #[serde(default, skip_serializing_if = "Id::is_empty")]
    pub id: Id,
    /// Hour of the day, 0 to 23.
    #[schemars(range(min = 0, max = 23))]
    pub hour: u32,
    /// Mean wind in metres per second.
    #[schemars(transform = WIND_MS.rule())]
    pub wind_ms: Option<f64>,
    /// Wind force by the signs on land, 0 to 12.
    #[schemars(range(min = 0, max = 12))]
    pub wind_force: Option<u32>,
    /// Air temperature in degrees Celsius.
    #[schemars(transform = TEMPERATURE_C.rule())]
    pub temperature_c: Option<f64>,
    /// Relative humidity in percent.
    #[schemars(transform = HUMIDITY_PCT.rule())]
    pub humidity_pct: Option<f64>,
    /// Minutes since thunder was last heard; without it nobody said.
    #[schemars(transform = THUNDER_MIN.rule())]
    pub thunder_min_ago: Option<f64>,
    /// Whether thunder was listened for and none heard.
    pub no_thunder: Option<bool>,
    /// Whether there is ice or snow on bark or ground.
    pub ice: Option<bool>,
    /// Whether the bark is wet.
    pub wet_bark: Option<bool>,
    /// The light.
    pub light: Option<Daylight>,
}

/// The light of an hour.
#[derive(
    Debug,
    Clone,
    Copy,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
    JsonSchema,
    uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum Daylight {
    /// Day.
    Day,
    /// Dusk or dawn.
    Dusk,
    /// Dark.
    Dark,
}
