//! Printing: the browser's own dialog, and how large a page is at a type size.

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

use crate::text::share::PageSize;

/// Opens the browser's own print dialog.
pub fn now() {
    // The call fails only where the browser cannot print.
    let _refused = window().print();
}

/// Every page that is to be printed, as it lies in the page.
pub fn pages() -> Vec<HtmlElement> {
    let found = document().query_selector_all("article.paper").ok();
    let found = found.map(|found| (0..found.length()).filter_map(move |at| found.get(at)));
    let pages = found.into_iter().flatten();
    pages.filter_map(|page| page.dyn_into().ok()).collect()
}

/// Sets the type of a page, and measures it.
pub fn set(page: &HtmlElement, class: &str, points: f64) -> PageSize {
    page.set_class_name(class);
    // A browser without such a property prints at the size of the style sheet.
    let _refused = page.style().set_property("--points", &points.to_string());
    let room = page.get_bounding_client_rect();
    PageSize {
        high: room.height(),
        wide: page.scroll_width().into(),
        room: page.client_width().into(),
    }
}
