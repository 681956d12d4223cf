//! Fold: a part of a row that opens on a tap; its content is drawn while it is open.

use leptos::prelude::*;

/// A part of a row that opens on a tap.
#[component]
pub fn Fold(
    /// What it is about.
    title: &'static str,
    /// A remark beside the title.
    #[prop(optional)]
    aside: &'static str,
    /// Its content.
    children: ChildrenFn,
) -> impl IntoView {
    let is_open = RwSignal::new(false);
    let toggled = move |event: leptos::ev::Event| {
        is_open.set(event_target::<web_sys::HtmlElement>(&event).has_attribute("open"));
    };
    view! {
        <details class="fold within" on:toggle=toggled>
            <summary>
                <span class="title">{title}</span>
                <span class="quiet">{aside}</span>
            </summary>
            <Show when=move || is_open.get()>{children()}</Show>
        </details>
    }
}
