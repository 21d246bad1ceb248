//! The report as JSON, and the schema of it.

use schemars::JsonSchema;
use serde::Serialize;
use serde_json::{Value, json};

/// A value with every digit its numbers have, ending in a newline.
///
/// # Errors
/// None for these types; the serialiser's own error type is passed on.
pub fn json(report: &impl Serialize) -> Result<String, serde_json::Error> {
    Ok(serde_json::to_string_pretty(report)? + "\n")
}

/// JSON Schema (draft 2020-12) of what [`json()`] makes of a `T`.
///
/// # Errors
/// None for these types; the serialiser's own error type is passed on.
pub fn schema<T: JsonSchema>() -> Result<String, serde_json::Error> {
    let mut schema = schemars::schema_for!(T).to_value();
    allow_null(&mut schema);
    Ok(serde_json::to_string_pretty(&schema)? + "\n")
}

/// A number without a finite value (the SWR of an open line) is written as `null`, JSON having
/// no word for it.
fn allow_null(value: &mut Value) {
    match value {
        Value::Object(fields) => {
            if fields.get("type") == Some(&json!("number")) {
                fields.insert("type".to_owned(), json!(["number", "null"]));
            }
            fields.values_mut().for_each(allow_null);
        }
        Value::Array(items) => items.iter_mut().for_each(allow_null),
        _ => {}
    }
}
