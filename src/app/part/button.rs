//! Buttons: one with words, one with an icon only.

use std::borrow::Cow;

use leptos::prelude::*;

use super::{Icon, Picture};

/// A button with words on it.
#[component]
pub fn Button(
    /// What it does: "Keep".
    #[prop(into)]
    says: Signal<String>,
    /// Called on a tap.
    #[prop(into)]
    tapped: Callback<()>,
    /// Workspace `button`: "chief", "bare", "risky".
    #[prop(optional)]
    class: &'static str,
    /// Drawn before the words.
    #[prop(optional, into)]
    picture: Option<Picture>,
    /// Whether there is nothing to do.
    #[prop(optional, into)]
    idle: Signal<bool>,
) -> impl IntoView {
    view! {
        <button type="button" class=format!("button {class}") disabled=idle on:click=move |_| tapped.run(())>
            {picture.map(|picture| view! { <Icon picture /> })}
            {says}
        </button>
    }
}

/// A button that is an icon; its name is heard, and shown when pointed at.
#[component]
pub fn IconButton(
    /// What it shows.
    picture: Picture,
    /// What it does: "Undo".
    #[prop(into)]
    name: Cow<'static, str>,
    /// Called on a tap.
    #[prop(into)]
    tapped: Callback<()>,
    /// Whether there is nothing to do.
    #[prop(optional, into)]
    idle: Signal<bool>,
) -> impl IntoView {
    // It stays reachable while idle, so that the focus is not lost when the last step is undone.
    view! {
        <button
            type="button"
            class="button bare"
            aria-label=name.clone()
            title=name
            aria-disabled=move || idle.get().to_string()
            on:click=move |_| if !idle.get_untracked() { tapped.run(()) }
        >
            <Icon picture />
        </button>
    }
}
