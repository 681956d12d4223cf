//! Speech: text read aloud by the device's own voice, where it has one.

use js_sys::{Array, Reflect};
use leptos::prelude::*;
use wasm_bindgen::JsValue;

use super::reflect::{call, get, new};

/// Whether the device can read aloud.
pub fn is_there() -> bool {
    voice().is_some()
}

/// Reads what the elements with these ids say, in the page's language, once they are drawn; what was
/// being read stops.
pub fn read(ids: &'static [&'static str]) {
    request_animation_frame(move || {
        let texts = ids
            .iter()
            .filter_map(|id| document().get_element_by_id(id)?.text_content());
        say(&texts.collect::<Vec<_>>().join(". "));
    });
}

/// Stops reading.
pub fn hush() {
    if let Some(voice) = voice() {
        let _stopped = call(&voice, "cancel", &Array::new());
    }
}

fn say(text: &str) {
    let Some(voice) = voice() else {
        return;
    };
    hush();
    let words: JsValue = text.into();
    let Some(spoken) = new("SpeechSynthesisUtterance", &Array::of1(&words)) else {
        return;
    };
    let page = document().document_element();
    if let Some(language) = page.and_then(|page| page.get_attribute("lang")) {
        // A device without such a voice reads with the one it has.
        let _set = Reflect::set(&spoken, &"lang".into(), &language.into());
    }
    let _said = call(&voice, "speak", &Array::of1(&spoken));
}

fn voice() -> Option<JsValue> {
    get(&window(), "speechSynthesis")
}
