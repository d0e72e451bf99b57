//! How a phone's screen is set: this phone's own, no part of the log.

use serde::{Deserialize, Serialize};

use super::measures::number;
use super::number_field::NumberField;
use super::quantity::Quantity;

number!(
    /// Size of letters, on top of what the phone itself is set to.
    TEXT_SIZE_PCT, "settings.text_size_pct", Percent, 100.0, 150.0, 5.0
);

/// The colours of the screen.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize, uniffi::Enum,
)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// Light or dark, as the phone is.
    #[default]
    FollowPhone,
    /// Light.
    Light,
    /// Dark.
    Dark,
    /// Black on white with the strongest contrast, for bright sun.
    BrightSun,
}
