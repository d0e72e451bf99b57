//! This phone's settings: language, units, looks, who holds it. They are no part of the log.

use serde::{Deserialize, Serialize};

use super::act::Outcome;
use super::entries::Entered;
use super::fill::{changed_record, defect};
use super::inner::Inner;
use crate::error::BookError;
use crate::record::{Id, TEXT_SIZE_PCT, Theme};
use crate::store::Store;
use crate::words::{Language, UnitSystem, Words};

/// Name of the settings in the store.
const NAME: &str = "reader";

/// This phone's settings.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, uniffi::Record)]
pub struct Settings {
    /// The reader's language.
    pub language: Language,
    /// The reader's units.
    pub units: UnitSystem,
    /// Who holds this phone, by id; empty while nobody is named.
    #[serde(default)]
    pub person: Id,
    /// The colours of the screen.
    #[serde(default)]
    pub theme: Theme,
    /// Size of letters in percent, 100 to 150, on top of what the phone itself is set to.
    #[serde(default = "usual_size")]
    pub text_size_pct: f64,
    /// Whether buttons lie for the left hand.
    #[serde(default)]
    pub left_hand: bool,
}

fn usual_size() -> f64 {
    TEXT_SIZE_PCT.min
}

impl Default for Settings {
    fn default() -> Self {
        Settings {
            language: Language::English,
            units: UnitSystem::Imperial,
            person: Id::default(),
            theme: Theme::default(),
            text_size_pct: usual_size(),
            left_hand: false,
        }
    }
}

impl Settings {
    /// The reader's words.
    pub fn words(&self) -> Words {
        Words::new(self.language, self.units)
    }

    /// The settings kept; those of a newer version that cannot be read count as not set.
    pub(super) fn kept(store: &Store) -> Result<Settings, BookError> {
        let text = store.read().setting(NAME)?;
        Ok(text
            .and_then(|text| serde_json::from_str(&text).ok())
            .unwrap_or_default())
    }

    fn keep(&self, store: &Store) -> Result<(), BookError> {
        let text = serde_json::to_string(self).map_err(defect)?;
        store.set_setting(NAME, &text)
    }
}

impl Inner {
    pub(super) fn act_change_settings(&mut self, entered: Entered) -> Result<Outcome, BookError> {
        let settings: Settings = changed_record(&self.settings, &entered)?;
        let changes = u32::from(settings != self.settings);
        settings.keep(&self.store)?;
        self.settings = settings;
        Ok(Outcome {
            record: Id::default(),
            changes,
        })
    }
}
