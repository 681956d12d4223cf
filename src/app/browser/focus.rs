//! Focus: the element that receives keys, and the scroll position.

use leptos::html::Details;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Moves the focus to the element with this id, once the page has been drawn.
pub fn move_to(id: impl Into<String>) {
    let id = id.into();
    request_animation_frame(move || {
        let element = document().get_element_by_id(&id);
        if let Some(element) = element.and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
            // The browser refuses only where the element cannot have the focus.
            let _refused = element.focus();
        }
    });
}

/// Leaves the box that is typed into, so that what stands there is taken before it goes.
pub fn leave_box() {
    let focused = document().active_element();
    let is_box =
        |element: &web_sys::Element| matches!(element.tag_name().as_str(), "INPUT" | "TEXTAREA");
    let element = focused.filter(is_box);
    if let Some(element) = element.and_then(|element| element.dyn_into::<HtmlElement>().ok()) {
        let _refused = element.blur();
    }
}

/// Scrolls until the end of what has opened is on the screen, once it has been drawn.
pub fn show_whole(opened: NodeRef<Details>) {
    request_animation_frame(move || {
        // It may be gone by then.
        if let Some(opened) = opened.try_get_untracked().flatten() {
            opened.scroll_into_view_with_bool(false);
        }
    });
}

/// Scrolls to the top of the page.
pub fn to_the_top() {
    window().scroll_to_with_x_and_y(0.0, 0.0);
}
