//! Choice: a row of answers of which one holds.

use leptos::prelude::*;

/// A labelled row of answers of which one holds.
#[component]
pub fn Choice<T>(
    /// Unique on the page; ties the answers together.
    #[prop(into)]
    id: String,
    /// What is asked: "Percent of".
    #[prop(into)]
    label: String,
    /// The answers in their order, each with its words.
    answers: Vec<(T, &'static str)>,
    /// The one that holds.
    #[prop(into)]
    holds: Signal<T>,
    /// Called with the one that was tapped.
    #[prop(into)]
    chosen: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let answers = answers
        .into_iter()
        .map(|(answer, words)| {
            view! {
                <label>
                    <input
                        type="radio"
                        name=id.clone()
                        prop:checked=move || holds.get() == answer
                        on:change=move |_| chosen.run(answer)
                    />
                    {words}
                </label>
            }
        })
        .collect_view();
    view! {
        <fieldset class="choice">
            <legend class="quiet">{label}</legend>
            {answers}
        </fieldset>
    }
}
