//! What a step enters and senses, as the entries of an offer.

use bolewalk_core::pages::{EntryValue, SensedFix};
use bolewalk_core::record::LatLon;
use serde_json::Value;

use super::steps::Sensed;

/// What was typed or chosen, by the kind of the input.
pub fn entered_value(kind: &Value, entered: &toml::Value) -> Result<EntryValue, String> {
    let text = || match entered {
        toml::Value::String(text) => text.clone(),
        other => other.to_string(),
    };
    let choice = |wanted: &str| {
        let choices = kind["choices"].as_array().unwrap();
        // A choice begins large where a line of a page does not.
        let same = |words: &Value| words.as_str().unwrap().to_lowercase() == wanted.to_lowercase();
        let found = choices
            .iter()
            .find(|choice| choice["id"] == wanted || same(&choice["words"]));
        match found {
            Some(choice) => Ok(choice["id"].as_str().unwrap().to_owned()),
            None if wanted.is_empty() => Ok(String::new()),
            None => Err(format!("“{wanted}” is none of the choices")),
        }
    };
    Ok(match kind["kind"].as_str().unwrap() {
        "number" | "bearing" | "tilt" => EntryValue::Number { typed: text() },
        "choice" => EntryValue::Choice {
            id: choice(&text())?,
        },
        "choices" => {
            let several = entered.as_array().ok_or("several choices are a list")?;
            let ids = several.iter().map(|one| choice(one.as_str().unwrap_or("")));
            EntryValue::Choices {
                ids: ids.collect::<Result<_, String>>()?,
            }
        }
        "search" => {
            let first = kind["first"].as_array().unwrap();
            let at_hand = first.iter().find(|choice| choice["words"] == text());
            match at_hand {
                Some(choice) => EntryValue::Choice {
                    id: choice["id"].as_str().unwrap().to_owned(),
                },
                None => EntryValue::Words { text: text() },
            }
        }
        "words" | "on_day" | "fix" => EntryValue::Words { text: text() },
        "yes_no" => EntryValue::YesNo {
            yes: entered.as_bool().ok_or("yes and no are true and false")?,
        },
        other => return Err(format!("a {other} is sensed, not entered")),
    })
}

/// What a sensor gave.
pub fn sensed_value(sensed: &Sensed) -> Result<EntryValue, String> {
    if let Some([lat_deg, lon_deg, accuracy_m]) = sensed.fix {
        return Ok(EntryValue::Fix {
            lat_deg,
            lon_deg,
            accuracy_m: Some(accuracy_m),
        });
    }
    if let Some(fixes) = &sensed.fixes {
        let fix = |[lat_deg, lon_deg, accuracy_m, at_s]: &[f64; 4]| SensedFix {
            lat_deg: *lat_deg,
            lon_deg: *lon_deg,
            accuracy_m: Some(*accuracy_m),
            at_ms: (*at_s * 1000.0) as i64,
        };
        return Ok(EntryValue::Fixes {
            fixes: fixes.iter().map(fix).collect(),
            since_ms: 0,
        });
    }
    if let Some(degrees) = sensed.tilt {
        return Ok(EntryValue::Tilt { degrees });
    }
    if let Some(degrees) = sensed.bearing {
        return Ok(EntryValue::Bearing { degrees });
    }
    if let Some(photo) = &sensed.photo {
        let path = super::root().join(photo).display().to_string();
        return Ok(EntryValue::PhotoFile { path });
    }
    let outline = sensed.outline.as_ref().ok_or("nothing was sensed")?;
    let point = |[lat_deg, lon_deg]: &[f64; 2]| LatLon {
        lat_deg: *lat_deg,
        lon_deg: *lon_deg,
    };
    Ok(EntryValue::Outline {
        points: outline.iter().map(point).collect(),
    })
}
