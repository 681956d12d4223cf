//! The browser's own dialog: opened over the page, and closed.

use leptos::html::Dialog;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{Event, HtmlDialogElement};

/// Opens a dialog over the page; one that is open stays so.
pub fn show(node: NodeRef<Dialog>) {
    if let Some(dialog) = node.get_untracked()
        && !dialog.open()
    {
        // The browser refuses only where the element is not in the page.
        let _refused = dialog.show_modal();
    }
}

/// Closes a dialog.
pub fn close(node: NodeRef<Dialog>) {
    if let Some(dialog) = node.get_untracked()
        && dialog.open()
    {
        dialog.close();
    }
}

/// Whether a click hit the page outside the dialog.
pub fn is_beside(event: &Event) -> bool {
    event
        .target()
        .is_some_and(|target| target.dyn_ref::<HtmlDialogElement>().is_some())
}
