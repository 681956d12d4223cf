//! Choice: a row of radio buttons.

use leptos::prelude::*;

use super::choices::Choices;

/// A labelled row of radio buttons.
#[component]
pub fn Choice<T>(
    /// Unique on the page; groups the buttons.
    #[prop(into)]
    id: String,
    /// The question: "Percent of".
    #[prop(into)]
    label: String,
    /// The choices in their order, each with its label.
    choices: Vec<(T, &'static str)>,
    /// The selected choice.
    #[prop(into)]
    selected: Signal<T>,
    /// Called with the choice that was tapped.
    #[prop(into)]
    on_select: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    let choices = choices
        .into_iter()
        .map(|(choice, label)| (choice, label.to_owned()))
        .collect();
    row(
        id,
        label,
        Choices::new(Signal::stored(choices), selected, on_select),
    )
}

/// The row; not generic, so that the page holds it once.
fn row(id: String, label: String, choices: Choices) -> AnyView {
    let Choices {
        labels,
        selected,
        on_select,
    } = choices;
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
