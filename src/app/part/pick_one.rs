//! Pick one: a labelled list of answers that opens on a tap, of which one holds.

use leptos::prelude::*;

use super::answers::{Answered, answered};

/// A labelled list of answers of which one holds.
#[component]
pub fn PickOne<T>(
    /// Unique on the page; ties the label to the list.
    id: &'static str,
    /// What is asked: "Kitchen scale".
    label: &'static str,
    /// The answers in their order, each with its words.
    #[prop(into)]
    answers: Signal<Vec<(T, String)>>,
    /// The one that holds.
    #[prop(into)]
    holds: Signal<T>,
    /// Called with the one that was picked.
    #[prop(into)]
    chosen: Callback<T>,
) -> impl IntoView
where
    T: Copy + PartialEq + Send + Sync + 'static,
{
    list(id, label, answered(answers, holds, chosen))
}

/// The list, whatever is picked among: drawn into the page once.
fn list(id: &'static str, label: &'static str, answered: Answered) -> AnyView {
    let Answered {
        words,
        holds,
        chosen,
    } = answered;
    let option = move |(place, words): (usize, String)| {
        let selected = Signal::derive(move || holds.get() == Some(place));
        view! { <option value=place.to_string() prop:selected=selected>{words}</option> }
    };
    let options = move || {
        words
            .get()
            .into_iter()
            .enumerate()
            .map(option)
            .collect_view()
    };
    let pick = move |place: String| {
        if let Ok(place) = place.parse() {
            chosen.run(place);
        }
    };
    view! {
        <div class="pick-one">
            <label for=id>{label}</label>
            <select id=id on:change:target=move |event| pick(event.target().value())>{options}</select>
        </div>
    }
    .into_any()
}
