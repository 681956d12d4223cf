//! Pick one: a labelled list that opens on a tap.

use leptos::prelude::*;

use super::choices::Choices;

/// A labelled list from which one choice is selected.
#[component]
pub fn PickOne<T>(
    /// Unique on the page; ties the label to the list.
    id: &'static str,
    /// The question: "Kitchen scale".
    label: &'static str,
    /// The choices in their order, each with its label.
    #[prop(into)]
    choices: Signal<Vec<(T, String)>>,
    /// The selected choice.
    #[prop(into)]
    selected: Signal<T>,
    /// Called with the choice that was picked.
    #[prop(into)]
    on_select: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    list(id, label, Choices::new(choices, selected, on_select))
}

/// The list; not generic, so that the page holds it once.
fn list(id: &'static str, label: &'static str, choices: Choices) -> AnyView {
    let Choices {
        labels,
        selected,
        on_select,
    } = choices;
    let option = move |(index, label): (usize, String)| {
        let selected = Signal::derive(move || selected.get() == Some(index));
        view! { <option value=index.to_string() prop:selected=selected>{label}</option> }
    };
    let options = move || {
        labels
            .get()
            .into_iter()
            .enumerate()
            .map(option)
            .collect_view()
    };
    let select = move |index: String| {
        if let Ok(index) = index.parse() {
            on_select.run(index);
        }
    };
    view! {
        <div class="pick-one">
            <label for=id>{label}</label>
            <select id=id on:change:target=move |event| select(event.target().value())>{options}</select>
        </div>
    }
    .into_any()
}
