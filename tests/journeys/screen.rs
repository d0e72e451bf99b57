//! What a person sees on a page: its words, its offers with what they belong to, where it leads.

use bolewalk_core::pages::{Page, PageAddress};
use serde_json::{Map, Value};

/// A page as a person sees it.
#[derive(Debug, Default)]
pub struct Screen {
    pub words: Vec<String>,
    pub offers: Vec<Shown>,
    pub ways: Vec<(PageAddress, String)>,
}

/// An offer, as JSON, with the words of the record it stands at.
#[derive(Debug)]
pub struct Shown {
    pub offer: Value,
    pub at: String,
}

/// What is no word: ids, paths, tokens, states.
const NO_WORDS: [&str; 20] = [
    "id",
    "skill",
    "knot",
    "theme",
    "search",
    "token",
    "about",
    "command",
    "state",
    "verdict",
    "climb",
    "look",
    "part",
    "way",
    "view_path",
    "small_path",
    "drawing",
    "sound",
    "kind",
    "fate",
];

impl Screen {
    pub fn of(page: &Page) -> Screen {
        let json = serde_json::to_value(page).unwrap();
        let mut screen = Screen::default();
        screen.read(&json, "");
        screen
    }

    fn read(&mut self, value: &Value, at: &str) {
        match value {
            Value::Object(fields) if fields.contains_key("token") => self.offer(fields, at),
            Value::Object(fields) => {
                if let Ok(address) = serde_json::from_value::<PageAddress>(value.clone()) {
                    self.ways.push((address, at.to_owned()));
                    return;
                }
                let own = words_of(fields);
                let at = if own.is_empty() { at.to_owned() } else { own };
                for (name, part) in fields {
                    let is_id = name == "site" && part.is_string();
                    if !is_id && !NO_WORDS.contains(&name.as_str()) {
                        self.read(part, &at);
                    }
                }
            }
            Value::Array(items) => items.iter().for_each(|item| self.read(item, at)),
            Value::String(text) if !text.is_empty() => self.words.push(text.clone()),
            _ => {}
        }
    }

    fn offer(&mut self, fields: &Map<String, Value>, at: &str) {
        for name in ["words", "why_not"] {
            let text = fields[name].as_str().unwrap();
            if !text.is_empty() {
                self.words.push(text.to_owned());
            }
        }
        self.offers.push(Shown {
            offer: Value::Object(fields.clone()),
            at: at.to_owned(),
        });
    }
}

/// The words that a record is known by.
fn words_of(fields: &Map<String, Value>) -> String {
    [
        "tag", "name", "title", "label", "words", "detail", "species",
    ]
    .iter()
    .filter_map(|name| fields.get(*name).and_then(Value::as_str))
    .collect::<Vec<_>>()
    .join(" ")
}
