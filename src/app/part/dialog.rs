//! Dialog: the browser's own, with a title and a way out; filled only while it is open.

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
    /// Called once it is closed, however that came about.
    #[prop(into)]
    closed: Callback<()>,
    /// What is in it.
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
                <IconButton picture=Picture::Close name=tr!("Close") tapped=move || dialog::close(node) />
            </header>
            <div class="body">{children()}</div>
        </dialog>
    }
}
