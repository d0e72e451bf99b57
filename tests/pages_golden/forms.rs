//! The same offer stands on many pages, and the same input in many offers. What they always say
//! (words, help, rule, choices) is kept once, in `forms.json`; a page then shows whom an offer is
//! about, what is there now, why it cannot be taken, and the rest only where it differs. One that
//! only says whom it is about stands as `tree.change 7`.

use serde_json::{Map, Value, json};

/// The forms met so far.
#[derive(Default)]
pub struct Forms {
    offers: Map<String, Value>,
    inputs: Map<String, Value>,
}

impl Forms {
    /// Takes the forms out of a page.
    pub fn take_out(&mut self, value: &mut Value) {
        if let Value::Object(fields) = value
            && fields.contains_key("command")
            && fields.contains_key("token")
        {
            *value = self.without_form(fields);
            return;
        }
        match value {
            Value::Object(fields) => fields.values_mut().for_each(|field| self.take_out(field)),
            Value::Array(items) => items.iter_mut().for_each(|item| self.take_out(item)),
            _ => {}
        }
    }

    /// An offer without what all offers of its id share.
    fn without_form(&mut self, offer: &Map<String, Value>) -> Value {
        let mut form = offer.clone();
        form.shift_remove("token");
        let mut shown = Map::new();
        let id = form.shift_remove("id").unwrap_or_default();
        shown.insert("offer".to_owned(), id.clone());
        for field in ["about", "why_not"] {
            let text = form.shift_remove(field);
            if let Some(text) = text.filter(|text| text != "") {
                shown.insert(field.to_owned(), text);
            }
        }
        let enabled = form.shift_remove("enabled");
        assert_eq!(enabled == Some(json!(true)), !shown.contains_key("why_not"));
        let (mut asked, mut current, mut others) = (Vec::new(), Map::new(), Vec::new());
        for input in offer
            .get("inputs")
            .and_then(Value::as_array)
            .into_iter()
            .flatten()
        {
            let id = input["id"].as_str().unwrap().to_owned();
            if let Some(other) = self.other_form(&id, input) {
                others.push(other);
            } else if !input["current"].is_null() {
                current.insert(id.clone(), input["current"].clone());
            }
            asked.push(Value::from(id));
        }
        form.insert("inputs".to_owned(), asked.into());
        let known = self.offers.entry(id.as_str().unwrap());
        let known = known.or_insert_with(|| form.clone().into());
        if known.as_object() != Some(&form) {
            shown.extend(form);
        }
        if !current.is_empty() {
            shown.insert("current".to_owned(), current.into());
        }
        if !others.is_empty() {
            shown.insert("otherwise".to_owned(), others.into());
        }
        match (shown.len(), shown.get("about").and_then(Value::as_str)) {
            (1, _) => id,
            (2, Some(about)) => format!("{} {about}", id.as_str().unwrap()).into(),
            _ => shown.into(),
        }
    }

    /// The input, where its form is not the one that is kept.
    fn other_form(&mut self, id: &str, input: &Value) -> Option<Value> {
        let mut form = input.as_object().unwrap().clone();
        form.shift_remove("id");
        form.shift_remove("current");
        let known = self.inputs.entry(id);
        let known = known.or_insert_with(|| form.clone().into());
        (known.as_object() != Some(&form)).then(|| input.clone())
    }

    /// The page of forms.
    pub fn page(self) -> Value {
        json!({"offers": self.offers, "inputs": self.inputs})
    }
}

#[test]
fn a_form_is_kept_once_and_shown_where_it_differs() {
    let input = |words: &str, now: Value| json!({"id": "tree.tag", "words": words, "current": now});
    let offer = |input: Value| {
        json!({
            "id": "tree.change", "command": "ChangeTree", "about": "7", "words": "Change",
            "enabled": true, "why_not": "", "token": "x", "inputs": [input],
        })
    };
    let mut page = json!([
        offer(input("Tag", Value::Null)),
        offer(input("Tag", "7".into())),
        offer(input("Number", Value::Null)),
    ]);
    let mut forms = Forms::default();
    forms.take_out(&mut page);
    assert_eq!(page[0], "tree.change 7");
    assert_eq!(page[1]["current"]["tree.tag"], "7");
    assert_eq!(page[2]["otherwise"][0]["words"], "Number");
    let forms = forms.page();
    assert_eq!(
        forms["offers"]["tree.change"]["inputs"],
        json!(["tree.tag"])
    );
    assert_eq!(forms["inputs"]["tree.tag"]["words"], "Tag");
}
