//! Dialog: the browser's own, with a title and a button to close it; it has content only while
//! open.

use leptos::html;
use leptos::prelude::*;

use super::{IconButton, Picture};
use crate::app::browser::dialog;
use crate::text::tr;

/// The id of the title of the open dialog, which the focus is moved to.
pub const TITLE: &str = "dialog-title";

/// The browser's own dialog over the page.
#[component]
pub fn Dialog(
    /// Shown on top.
    #[prop(into)]
    title: Signal<String>,
    /// The element, for whoever opens it.
    node: NodeRef<html::Dialog>,
    /// Called when it is closed, by whatever means.
    #[prop(into)]
    closed: Callback<()>,
    /// Its content.
    children: Children,
) -> impl IntoView {
    view! {
        <dialog
            class="dialog"
            node_ref=node
            aria-labelledby=TITLE
            on:close=move |_| closed.run(())
            on:click=move |event| if dialog::is_beside(&event) { dialog::close(node) }
        >
            <header>
                <h2 id=TITLE tabindex="-1">{title}</h2>
                <IconButton picture=Picture::Close name=tr!("Close") on_tap=move || dialog::close(node) />
            </header>
            <div class="body">{children()}</div>
        </dialog>
    }
}
