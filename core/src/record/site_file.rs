//! A whole property with all that the judgement reads; as JSON it is the site file.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_with::skip_serializing_none;

use super::codebook::DefectCode;
use super::crew::{Gear, Person};
use super::house_value::HouseValue;
use super::site::Site;

/// The format this version writes and reads.
pub const SITE_FILE_FORMAT: u32 = 1;

/// A whole property with all that the judgement reads.
#[skip_serializing_none]
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema, uniffi::Record)]
pub struct SiteFile {
    /// Format of the file; 1.
    #[schemars(range(min = 1, max = 1))]
    pub format: u32,
    /// The property.
    pub site: Site,
    /// The crew.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub crew: Vec<Person>,
    /// The gear.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub gear: Vec<Gear>,
    /// Codes of the crew's codebook besides, or instead of, the starter set.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub codebook: Vec<DefectCode>,
    /// House values of the rule set that the crew has changed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub house_values: Vec<HouseValue>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_smallest_site_file_is_read_and_written_back() {
        let text = r#"{"format":1,"site":{"name":"Hill House","trees":[{"tag":"1","inspections":[{"level":"full_check"}]}]}}"#;
        let file: SiteFile = serde_json::from_str(text).unwrap();
        assert_eq!(serde_json::to_string(&file).unwrap(), text);
    }

    #[test]
    fn the_schema_carries_ranges_and_units() {
        let schema = schemars::schema_for!(SiteFile);
        let height = schema.pointer("/$defs/Height/properties/height_m").unwrap();
        assert_eq!(height["maximum"], 116.0);
        assert_eq!(height["x-unit"], "m");
        let day = schema.pointer("/$defs/Day").unwrap();
        assert_eq!(day["type"], "string");
    }
}
