//! The ingredients of the syrup or the filling, each with its weight in the formula.

use leptos::prelude::*;

use crate::app::page::{BatchContext, CardTexts, LineRows};
use crate::app::state::{memo, use_app_state};
use crate::text::{chocolate_answer, name};

/// All ingredients of a part.
#[component]
pub fn FoodRows(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let card = CardTexts::of(use_app_state(), part);
    view! { <LineRows card weight_only=true /> }
}

/// The part's own name, else that of its kind.
pub fn part_title(part: Memo<Option<usize>>) -> Signal<String> {
    let state = use_app_state();
    let title = memo(move || {
        let part = part.get()?;
        state.with(|sheet| {
            let own = sheet.formula.parts.get(part)?;
            Some(name::part(own).to_owned())
        })
    });
    Signal::derive(move || title.get().unwrap_or_default())
}

/// Says that the weights below are those of the formula made once, and what the batch takes.
#[component]
pub fn MadeOnce(
    /// Which part; `None` where there is none.
    part: Memo<Option<usize>>,
) -> impl IntoView {
    let state = use_app_state();
    let batch = BatchContext::from_context();
    let says = memo(move || {
        let options = state.options.get();
        let part = part.get()?;
        let results = batch.results;
        results.with(|batch| chocolate_answer::made_once(&batch.formula, part, options))
    });
    view! { <p class="over quiet">{move || says.get()}</p> }
}
