//! Weigh table: the ingredients of a part, each with what to weigh of it.

use leptos::prelude::*;

use crate::text::weighing::PartWeights;

/// A part's ingredients, each with what to weigh of it.
pub fn weigh_table(part: PartWeights) -> impl IntoView {
    view! {
        <table class="label-table">
            <caption>{part.name}</caption>
            <tbody>{part.lines.into_iter().map(weigh_row).collect_view()}</tbody>
        </table>
    }
}

/// An ingredient, and what to weigh of it.
pub fn weigh_row((food, shows): (String, String)) -> impl IntoView {
    view! { <tr><th scope="row">{food}</th><td>{shows}</td></tr> }
}
