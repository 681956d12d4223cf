//! The system's share sheet, where there is one.

use leptos::prelude::*;
use web_sys::ShareData;

/// Whether this browser has one.
pub fn can() -> bool {
    js_sys::Reflect::has(&window().navigator(), &"share".into()).unwrap_or(false)
}

/// Opens the share sheet with a link and a title; the result is not reported.
pub fn link(title: &str, url: &str) {
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(url);
    // The user cancelled, or the browser refused; both need no further step.
    let _result = window().navigator().share_with_data(&data);
}
