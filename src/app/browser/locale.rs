//! The locale: the languages this browser asks for, and how a number is punctuated in one.

use std::cell::Cell;

use js_sys::{Array, Intl, Object, Reflect};
use leptos::prelude::*;
use wasm_bindgen::JsValue;

use crate::text::NumberStyle;

thread_local! {
    /// The locale that was chosen; none for the browser's own.
    static CHOSEN: Cell<Option<&'static str>> = const { Cell::new(None) };
}

/// From now on numbers and dates are written as in this locale; for none, as the browser writes
/// them.
pub fn choose(tag: Option<&'static str>) {
    CHOSEN.set(tag);
}

/// The locale numbers and dates are written in: a tag, or "default" for the browser's own.
pub fn tag() -> &'static str {
    CHOSEN.get().unwrap_or("default")
}

/// The languages this browser asks for, the preferred first.
pub fn wanted() -> Vec<String> {
    let tags = window().navigator().languages();
    tags.iter().filter_map(|tag| tag.as_string()).collect()
}

/// Marks the language and the direction of the page.
pub fn mark(tag: &str, direction: &str) {
    let Some(root) = document().document_element() else {
        return;
    };
    for (name, value) in [("lang", tag), ("dir", direction)] {
        // The browser refuses only names that are no attribute's.
        let _refused = root.set_attribute(name, value);
    }
}

/// The decimal and thousands marks.
pub fn numbers() -> NumberStyle {
    // The host that draws the first screen has no browser to ask.
    if cfg!(not(target_arch = "wasm32")) {
        return NumberStyle::default();
    }
    let locales = CHOSEN
        .get()
        .map_or_else(Array::new, |tag| Array::of1(&tag.into()));
    let written = Intl::NumberFormat::new(&locales, &Object::new());
    let parts = written.format_to_parts(1_234_567.5);
    let usual = NumberStyle::default();
    NumberStyle {
        decimal: part(&parts, "decimal").unwrap_or(usual.decimal),
        group: part(&parts, "group"),
    }
}

/// The mark of a kind among the parts of a number.
fn part(parts: &Array, kind: &str) -> Option<char> {
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
