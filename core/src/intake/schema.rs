//! The JSON Schema of the site file, generated from the records themselves.

use schemars::{Schema, generate::SchemaSettings, transform::RecursiveTransform};
use serde_json::{Value, json};

use crate::record::SiteFile;

/// The JSON Schema (draft 2020-12) of the site file: units in the field names, ranges as
/// `minimum` and `maximum`, unknown fields refused so that a slip of the pen is found.
pub fn site_file_schema() -> Value {
    let schema = SchemaSettings::draft2020_12()
        .with_transform(RecursiveTransform(refuse_unknown_fields))
        .into_generator()
        .into_root_schema_for::<SiteFile>();
    let mut schema = schema.to_value();
    if let Some(root) = schema.as_object_mut() {
        root.insert("title".into(), json!("Bolewalk site file, format 1"));
        if let Some(properties) = root.get_mut("properties").and_then(Value::as_object_mut) {
            properties.insert("$schema".into(), json!({ "type": "string" }));
        }
    }
    schema
}

fn refuse_unknown_fields(schema: &mut Schema) {
    if schema.get("properties").is_some() {
        schema.insert("additionalProperties".into(), false.into());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_schema_is_itself_valid_and_closed() {
        let schema = site_file_schema();
        assert!(jsonschema::meta::is_valid(&schema));
        assert_eq!(schema["additionalProperties"], false);
        assert_eq!(schema["$defs"]["Tree"]["additionalProperties"], false);
    }
}
