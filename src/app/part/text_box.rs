//! Text box: one line of text, such as a name.

use leptos::prelude::*;

/// A labelled box for one line of text.
#[component]
pub fn TextBox(
    /// Unique on the page; ties the label to the box.
    #[prop(into)]
    id: String,
    /// What is asked for: "Name".
    #[prop(into)]
    label: String,
    /// The current text.
    #[prop(into)]
    text: Signal<String>,
    /// Called with the typed text.
    #[prop(into)]
    on_input: Callback<String>,
    /// Most characters of the text.
    max_length: usize,
) -> impl IntoView {
    view! {
        <div class="text-box">
            <label for=id.clone()>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength=max_length
                prop:value=text
                on:input:target=move |event| on_input.run(event.target().value())
            />
        </div>
    }
}
