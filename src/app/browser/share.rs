//! The system's share sheet, where there is one.

use leptos::prelude::*;
use web_sys::ShareData;

/// Whether this browser has one.
pub fn can() -> bool {
    js_sys::Reflect::has(&window().navigator(), &"share".into()).unwrap_or(false)
}

/// Offers a link under a title; what the user does with it is not told.
pub fn link(title: &str, url: &str) {
    let data = ShareData::new();
    data.set_title(title);
    data.set_url(url);
    // Given up by the user, or refused: either way nothing is to be done here.
    let _told = window().navigator().share_with_data(&data);
}
