//! Weigh table: the ingredients of a stream, each with what to weigh of it.

use leptos::prelude::*;

use crate::words::class::StreamLines;

/// A stream's ingredients, each with what to weigh of it.
pub fn weigh_table(stream: StreamLines) -> impl IntoView {
    view! {
        <table class="label-table">
            <caption>{stream.name}</caption>
            <tbody>{stream.lines.into_iter().map(weigh_row).collect_view()}</tbody>
        </table>
    }
}

/// An ingredient, and what to weigh of it.
pub fn weigh_row((food, shows): (String, String)) -> impl IntoView {
    view! { <tr><th scope="row">{food}</th><td>{shows}</td></tr> }
}
