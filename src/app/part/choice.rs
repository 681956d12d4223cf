//! Choice: a row of radio buttons.

use leptos::prelude::*;

use super::answers::Answers;

/// A labelled row of radio buttons.
#[component]
pub fn Choice<T>(
    /// Unique on the page; groups the buttons.
    #[prop(into)]
    id: String,
    /// The question: "Percent of".
    #[prop(into)]
    label: String,
    /// The answers in their order, each with its label.
    answers: Vec<(T, &'static str)>,
    /// The selected answer.
    #[prop(into)]
    selected: Signal<T>,
    /// Called with the answer that was tapped.
    #[prop(into)]
    on_select: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let answers = answers
        .into_iter()
        .map(|(answer, label)| (answer, label.to_owned()))
        .collect();
    row(
        id,
        label,
        Answers::new(Signal::stored(answers), selected, on_select),
    )
}

/// The row; not generic, so that the page holds it once.
fn row(id: String, label: String, answers: Answers) -> AnyView {
    let Answers {
        labels,
        selected,
        on_select,
    } = answers;
    let buttons = labels
        .get_untracked()
        .into_iter()
        .enumerate()
        .map(|(index, label)| {
            let checked = Signal::derive(move || selected.get() == Some(index));
            view! {
                <label>
                    <input type="radio" name=id.clone() prop:checked=checked on:change=move |_| on_select.run(index) />
                    {label}
                </label>
            }
        })
        .collect_view();
    view! {
        <fieldset class="choice">
            <legend class="quiet">{label}</legend>
            {buttons}
        </fieldset>
    }
    .into_any()
}
