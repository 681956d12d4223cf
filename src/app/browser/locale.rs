//! The locale: how this browser punctuates a number.

use crate::words::NumberStyle;
use js_sys::{Array, Intl, Object, Reflect};
use wasm_bindgen::JsValue;

/// The browser's decimal and thousands marks.
pub fn numbers() -> NumberStyle {
    let written = Intl::NumberFormat::new(&Array::new(), &Object::new());
    let parts = written.format_to_parts(1_234_567.5);
    let usual = NumberStyle::default();
    NumberStyle {
        decimal: mark(&parts, "decimal").unwrap_or(usual.decimal),
        group: mark(&parts, "group"),
    }
}

/// The mark of a kind among the parts of a number.
fn mark(parts: &Array, kind: &str) -> Option<char> {
    let text = |part: &JsValue, key: &str| {
        Reflect::get(part, &key.into())
            .ok()
            .and_then(|value| value.as_string())
    };
    parts
        .iter()
        .find(|part| text(part, "type").as_deref() == Some(kind))
        .and_then(|part| text(&part, "value"))
        .and_then(|value| value.chars().next())
}
