//! JSON laid out to be read and compared by lines: what fits on a line stands on one.

use serde_json::Value;

/// Letters that fit on a line.
const WIDTH: usize = 100;

/// The value, with a line end.
pub fn laid_out(value: &Value) -> String {
    let mut text = String::new();
    write(value, 0, &mut text);
    text.push('\n');
    text
}

fn write(value: &Value, indent: usize, text: &mut String) {
    let on_one_line = one_line(value);
    let (open, close, parts): (char, char, Vec<(String, &Value)>) = match value {
        Value::Array(items) => {
            let parts = items.iter().map(|item| (String::new(), item));
            ('[', ']', parts.collect())
        }
        Value::Object(fields) => {
            let named = |name: &String| format!("{}: ", Value::from(name.as_str()));
            let parts = fields.iter().map(|(name, field)| (named(name), field));
            ('{', '}', parts.collect())
        }
        _ => (' ', ' ', Vec::new()),
    };
    if parts.is_empty() || indent + on_one_line.chars().count() <= WIDTH {
        text.push_str(&on_one_line);
        return;
    }
    text.push(open);
    let last = parts.len() - 1;
    for (at, (name, part)) in parts.into_iter().enumerate() {
        text.push('\n');
        text.push_str(&" ".repeat(indent + 1));
        text.push_str(&name);
        write(part, indent + 1, text);
        if at < last {
            text.push(',');
        }
    }
    text.push('\n');
    text.push_str(&" ".repeat(indent));
    text.push(close);
}

fn one_line(value: &Value) -> String {
    match value {
        Value::Array(items) => {
            let items: Vec<String> = items.iter().map(one_line).collect();
            format!("[{}]", items.join(", "))
        }
        Value::Object(fields) => {
            let fields = fields.iter();
            let fields: Vec<String> = fields
                .map(|(name, field)| format!("{}: {}", Value::from(name.as_str()), one_line(field)))
                .collect();
            format!("{{{}}}", fields.join(", "))
        }
        plain => plain.to_string(),
    }
}

#[test]
fn the_layout_is_json_and_keeps_its_content() {
    let long = "x".repeat(90);
    let value = serde_json::json!({"a": [1, 2.5, null], "b": {"c": long, "d": []}});
    let text = laid_out(&value);
    assert_eq!(serde_json::from_str::<Value>(&text).unwrap(), value);
    assert!(text.contains("\n \"a\": [1, 2.5, null],\n"), "{text}");
}
