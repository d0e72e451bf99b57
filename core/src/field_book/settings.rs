//! This phone's settings: language, units, looks, who holds it. They are no part of the log.

use serde::{Deserialize, Serialize};

use super::act::Outcome;
use super::entries::Entered;
use super::fill::changed_record;
use super::inner::Inner;
use super::settings_file::folder_of;
use crate::error::BookError;
use crate::record::{Id, TEXT_SIZE_PCT, Theme};
use crate::words::{Language, UnitSystem, Words};

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

    /// Language and units as a phone's own tag asks for them, such as `es-MX`: feet and pounds in
    /// the United States, metres everywhere else.
    fn for_phone(mut self, tag: &str) -> Settings {
        self.language = Language::of_tag(tag);
        // What follows a `.` or `@` is no part of the tag: `en_US.UTF-8`.
        let tag = tag.split(['.', '@']).next().unwrap_or_default();
        let mut parts = tag.split(['-', '_']).skip(1);
        self.units = match parts.any(|part| part.eq_ignore_ascii_case("us")) {
            true => UnitSystem::Imperial,
            false => UnitSystem::Metric,
        };
        self
    }
}

impl Inner {
    pub(super) fn act_change_settings(&mut self, entered: Entered) -> Result<Outcome, BookError> {
        let settings: Settings = changed_record(&self.settings, &entered)?;
        let changes = u32::from(settings != self.settings);
        self.keep_settings(settings)?;
        Ok(Outcome {
            record: Id::default(),
            changes,
        })
    }

    /// Sets language and units by the phone's own, where nobody has set anything yet.
    pub(super) fn meet_phone(&mut self, language_tag: &str) -> Result<(), BookError> {
        if self.settings_stand {
            return Ok(());
        }
        self.keep_settings(self.settings.clone().for_phone(language_tag))
    }

    fn keep_settings(&mut self, settings: Settings) -> Result<(), BookError> {
        if let Some(folder) = folder_of(&self.store) {
            settings.keep(&folder)?;
        }
        self.settings = settings;
        self.settings_stand = true;
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_phone_has_its_own_language_and_units_at_first() {
        let of = |tag: &str| {
            let settings = Settings::default().for_phone(tag);
            (settings.language, settings.units)
        };
        let (english, spanish) = (Language::English, Language::Spanish);
        assert_eq!(of("en-US"), (english, UnitSystem::Imperial));
        assert_eq!(of("es-US"), (spanish, UnitSystem::Imperial));
        assert_eq!(of("es-Latn-MX"), (spanish, UnitSystem::Metric));
        assert_eq!(of("en_US.UTF-8"), (english, UnitSystem::Imperial));
        assert_eq!(of("en-GB"), (english, UnitSystem::Metric));
        assert_eq!(of("de-DE"), (english, UnitSystem::Metric));
        assert_eq!(of(""), (english, UnitSystem::Metric));
    }
}
