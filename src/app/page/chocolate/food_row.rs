//! The ingredients of the syrup or the filling, each with its weight in the formula.

use leptos::prelude::*;

use crate::app::page::LineRow;
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::LineAt;

/// All ingredients of a part.
#[component]
pub fn FoodRows(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let lines = memo(move || {
        state.with(|sheet| {
            sheet
                .formula
                .parts
                .get(part)
                .map_or(0, |own| own.lines.len())
        })
    });
    view! {
        <For each=move || 0..lines.get() key=|line| *line let(line)>
            <LineRow at=LineAt { part, line } weight_only=true />
        </For>
    }
}
