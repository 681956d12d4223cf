//! Choice: a row of answers of which one holds.

use leptos::prelude::*;

use super::answers::{Answered, answered};

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
        .map(|(answer, words)| (answer, words.to_owned()))
        .collect();
    row(id, label, answered(Signal::stored(answers), holds, chosen))
}

/// The row, whatever is chosen among: drawn into the page once.
fn row(id: String, label: String, answered: Answered) -> AnyView {
    let Answered {
        words,
        holds,
        chosen,
    } = answered;
    let answers = words
        .get_untracked()
        .into_iter()
        .enumerate()
        .map(|(place, words)| {
            let checked = Signal::derive(move || holds.get() == Some(place));
            view! {
                <label>
                    <input type="radio" name=id.clone() prop:checked=checked on:change=move |_| chosen.run(place) />
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
    .into_any()
}
