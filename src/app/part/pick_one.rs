//! Pick one: a labelled list of answers that opens on a tap, of which one holds.

use leptos::prelude::*;

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
    let options = move || {
        let answers = answers.get();
        answers
            .into_iter()
            .enumerate()
            .map(|(index, (answer, words))| {
                view! { <option value=index.to_string() prop:selected=move || holds.get() == answer>{words}</option> }
            })
            .collect_view()
    };
    let pick = move |index: String| {
        let index: Option<usize> = index.parse().ok();
        let answer = answers
            .with_untracked(|answers| index.and_then(|index| answers.get(index).map(|one| one.0)));
        if let Some(answer) = answer {
            chosen.run(answer);
        }
    };
    view! {
        <div class="pick-one">
            <label for=id>{label}</label>
            <select id=id on:change:target=move |event| pick(event.target().value())>{options}</select>
        </div>
    }
}
