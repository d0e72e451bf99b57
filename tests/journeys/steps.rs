//! The steps of a journey, as the file writes them.

use serde::Deserialize;

/// A journey.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Journey {
    pub format: u32,
    #[allow(dead_code, reason = "for people who read the file")]
    pub title: String,
    #[serde(default)]
    pub units: Units,
    pub clock: String,
    pub step: Vec<Step>,
}

#[derive(Debug, Default, Deserialize, Clone, Copy, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum Units {
    #[default]
    Metric,
    Imperial,
}

/// One step.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Step {
    pub open: Option<String>,
    pub of: Option<String>,
    pub tap: Option<String>,
    pub about: Option<String>,
    #[serde(default)]
    pub enter: toml::Table,
    #[serde(default)]
    pub sense: Vec<Sensed>,
    #[serde(default)]
    pub twice: bool,
    pub file: Option<String>,
    pub phone: Option<String>,
    pub clock: Option<String>,
    pub fault: Option<Fault>,
    #[serde(default)]
    pub see: Words,
    #[serde(default)]
    pub not_see: Words,
}

/// What a sensor gave.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Sensed {
    pub into: String,
    pub fix: Option<[f64; 3]>,
    pub fixes: Option<Vec<[f64; 4]>>,
    pub tilt: Option<f64>,
    pub bearing: Option<f64>,
    pub photo: Option<String>,
    pub outline: Option<Vec<[f64; 2]>>,
}

#[derive(Debug, Deserialize, Clone, Copy)]
#[serde(rename_all = "snake_case")]
pub enum Fault {
    DiskFull,
    DiskFree,
    Restart,
    Kill,
}

/// One text or several.
#[derive(Debug, Deserialize, Default)]
#[serde(untagged)]
pub enum Words {
    #[default]
    Nothing,
    One(String),
    Several(Vec<String>),
}

impl Words {
    pub fn all(&self) -> Vec<&str> {
        match self {
            Words::Nothing => Vec::new(),
            Words::One(text) => vec![text],
            Words::Several(texts) => texts.iter().map(String::as_str).collect(),
        }
    }
}
