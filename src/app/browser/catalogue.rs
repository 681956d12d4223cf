//! Catalogues: the texts of another language, a file beside the page.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::Response;

/// The catalogue of a language as the build wrote it; none where it does not come.
pub async fn fetch(tag: &str) -> Option<String> {
    // The shell names its address, which depends on the content.
    let named = document()
        .query_selector(&format!("meta[name=language-{tag}]"))
        .ok()??;
    let address = named.get_attribute("content")?;
    let answer = JsFuture::from(window().fetch_with_str(&address))
        .await
        .ok()?;
    let answer: Response = answer.dyn_into().ok()?;
    if !answer.ok() {
        return None;
    }
    JsFuture::from(answer.text().ok()?).await.ok()?.as_string()
}
