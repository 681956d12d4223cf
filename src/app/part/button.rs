//! Buttons: one with a label, one with an icon only.

use std::borrow::Cow;

use leptos::prelude::*;

use super::{Icon, Picture};

/// A button with a label.
#[component]
pub fn Button(
    /// What it does: "Keep".
    #[prop(into)]
    label: Signal<String>,
    /// Called on a tap.
    #[prop(into)]
    on_tap: Callback<()>,
    /// Classes beside `button`: "primary", "bare", "danger".
    #[prop(optional)]
    class: &'static str,
    /// An icon before the label.
    #[prop(optional, into)]
    picture: Option<Picture>,
    /// Whether it cannot be used now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    view! {
        <button type="button" class=format!("button {class}") disabled=disabled on:click=move |_| on_tap.run(())>
            {picture.map(|picture| view! { <Icon picture /> })}
            {label}
        </button>
    }
}

/// A button that is an icon; its name is read out, and shown when pointed at.
#[component]
pub fn IconButton(
    /// The icon.
    picture: Picture,
    /// What it does: "Undo".
    #[prop(into)]
    name: Cow<'static, str>,
    /// Called on a tap.
    #[prop(into)]
    on_tap: Callback<()>,
    /// Whether it cannot be used now.
    #[prop(optional, into)]
    disabled: Signal<bool>,
) -> impl IntoView {
    // It stays reachable while disabled, so that the focus is not lost when the last step is
    // undone.
    view! {
        <button
            type="button"
            class="button bare"
            aria-label=name.clone()
            title=name
            aria-disabled=move || disabled.get().to_string()
            on:click=move |_| if !disabled.get_untracked() { on_tap.run(()) }
        >
            <Icon picture />
        </button>
    }
}
