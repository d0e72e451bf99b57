//! Where this phone's settings lie: a small file of their own beside the database, so that a damaged
//! book does not take language, units and colours with it. Hostile until parsed.

use std::fs::File;
use std::io::Read;
use std::path::{Path, PathBuf};

use serde_json::Value;

use super::fill::defect;
use super::settings::Settings;
use crate::error::BookError;
use crate::handover::write_aside;
use crate::record::TEXT_SIZE_PCT;
use crate::store::Store;

/// Name of the file in the field book's folder.
const FILE: &str = "settings.json";
/// Name of the settings in the store, where earlier versions kept them.
const IN_STORE: &str = "reader";
/// Settings are a few hundred bytes.
const MOST_BYTES: u64 = 16_384;

impl Settings {
    /// The settings kept in a folder; nothing while there is no file that holds any.
    pub(super) fn in_folder(folder: &Path) -> Option<Settings> {
        let file = File::open(folder.join(FILE)).ok()?;
        if !file.metadata().ok()?.is_file() {
            return None;
        }
        let mut text = String::new();
        let read = file.take(MOST_BYTES + 1).read_to_string(&mut text).ok()?;
        (read as u64 <= MOST_BYTES).then(|| Settings::parsed(&text))?
    }

    /// The settings that an earlier version kept in the store.
    pub(super) fn in_store(store: &Store) -> Result<Option<Settings>, BookError> {
        let text = store.read().setting(IN_STORE)?;
        Ok(text.and_then(|text| Settings::parsed(&text)))
    }

    /// Keeps the settings in a folder: written aside and renamed.
    pub(super) fn keep(&self, folder: &Path) -> Result<(), BookError> {
        let text = serde_json::to_string_pretty(self).map_err(defect)?;
        write_aside(&folder.join(FILE), text.as_bytes())
    }

    /// The settings in a text, each by itself: one that is missing, out of its range or of a newer
    /// version is as at first. Nothing for what is no record at all.
    fn parsed(text: &str) -> Option<Settings> {
        let Ok(Value::Object(found)) = serde_json::from_str(text) else {
            return None;
        };
        let mut settings = Settings::default();
        for (name, value) in found {
            let Ok(Value::Object(mut fields)) = serde_json::to_value(&settings) else {
                return None;
            };
            // What this version does not know is left out.
            if let Some(field) = fields.get_mut(&name) {
                *field = value;
            }
            if let Ok(read) = serde_json::from_value::<Settings>(Value::Object(fields))
                && read.fits()
            {
                settings = read;
            }
        }
        Some(settings)
    }

    fn fits(&self) -> bool {
        let size = TEXT_SIZE_PCT.min..=TEXT_SIZE_PCT.max;
        size.contains(&self.text_size_pct) && self.person.0.len() <= 100
    }
}

/// The folder that the settings of a store lie in; nowhere for a store in memory.
pub(super) fn folder_of(store: &Store) -> Option<PathBuf> {
    store.folder().map(Path::to_owned)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::record::Theme;
    use crate::words::{Language, UnitSystem};

    fn spanish() -> Settings {
        Settings {
            language: Language::Spanish,
            units: UnitSystem::Metric,
            theme: Theme::BrightSun,
            left_hand: true,
            ..Settings::default()
        }
    }

    #[test]
    fn settings_come_back_as_they_were_kept() {
        let folder = tempfile::tempdir().unwrap();
        assert_eq!(Settings::in_folder(folder.path()), None);
        spanish().keep(folder.path()).unwrap();
        assert_eq!(Settings::in_folder(folder.path()), Some(spanish()));
        let there = std::fs::read_dir(folder.path()).unwrap().count();
        assert_eq!(there, 1, "nothing is left beside it");
    }

    #[test]
    fn each_setting_stands_by_itself() {
        let text = r#"{"language":"klingon","units":"metric","text_size_pct":900,
            "theme":"bright_sun","person":"7","brightness":3}"#;
        let read = Settings::parsed(text).unwrap();
        let expected = Settings {
            units: UnitSystem::Metric,
            theme: Theme::BrightSun,
            person: "7".into(),
            ..Settings::default()
        };
        assert_eq!(read, expected);
    }

    #[test]
    fn what_is_no_file_of_settings_counts_as_none() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join(FILE);
        let long = format!(r#"{{"person":"{}"}}"#, "7".repeat(20_000));
        for bytes in [
            &b""[..],
            b"null",
            b"[1]",
            b"{\"units\":",
            b"\xff\xfe",
            long.as_bytes(),
        ] {
            std::fs::write(&path, bytes).unwrap();
            assert_eq!(Settings::in_folder(folder.path()), None, "{bytes:?}");
        }
        std::fs::remove_file(&path).unwrap();
        std::fs::create_dir(&path).unwrap();
        assert_eq!(Settings::in_folder(folder.path()), None, "a folder");
    }
}
