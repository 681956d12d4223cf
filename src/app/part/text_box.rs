//! Text box: one line of words, such as a name.

use leptos::prelude::*;

/// A labelled box for one line of words.
#[component]
pub fn TextBox(
    /// Unique on the page; ties the label to the box.
    #[prop(into)]
    id: String,
    /// What is asked for: "Name".
    #[prop(into)]
    label: String,
    /// The words as they stand.
    #[prop(into)]
    words: Signal<String>,
    /// Called with what was typed.
    #[prop(into)]
    typed: Callback<String>,
    /// The most characters there may be.
    most: usize,
) -> impl IntoView {
    view! {
        <div class="text-box">
            <label for=id.clone()>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength=most
                prop:value=words
                on:input:target=move |event| typed.run(event.target().value())
            />
        </div>
    }
}
