//! JSON written again as it was read, in its order and with fields that are there twice.

use softcrumb::storage::Json;

/// The text of a value.
pub(crate) fn json_text(json: &Json) -> String {
    match json {
        Json::Nothing => "null".to_owned(),
        Json::Truth(truth) => truth.to_string(),
        Json::Number(number) => number.to_string(),
        Json::Text(text) => quoted(text),
        Json::List(items) => {
            let items: Vec<String> = items.iter().map(json_text).collect();
            format!("[{}]", items.join(","))
        }
        Json::Fields(fields) => {
            let field = |(key, value): &(_, Json)| format!("{}:{}", quoted(key), json_text(value));
            let fields: Vec<String> = fields.iter().map(field).collect();
            format!("{{{}}}", fields.join(","))
        }
    }
}

fn quoted(text: &std::borrow::Cow<str>) -> String {
    serde_json::Value::from(text.as_ref()).to_string()
}
