//! What to know about the formula before making it.

use leptos::prelude::*;

use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::results::formula::cautions;
use crate::text::{Advice, caution};

/// Cautions about the formula, each one with what to do.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = use_app_state();
    let found = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let found = cautions(sheet).unwrap_or_default();
            found
                .iter()
                .map(|one| {
                    let advice = caution::formula(one, &sheet.formula, options);
                    (caution::formula_title(one), advice)
                })
                .collect::<Vec<(String, Advice)>>()
        })
    });
    let count = memo(move || found.with(Vec::len));
    view! {
        <For each=move || 0..count.get() key=|at| *at let(at)>
            <OneCaution found at />
        </For>
    }
}

/// One of the cautions.
#[component]
fn OneCaution(
    /// All of them: what each is about, and what it says.
    found: Memo<Vec<(String, Advice)>>,
    /// Which one.
    at: usize,
) -> impl IntoView {
    let title = memo(move || {
        let title = |one: &(String, Advice)| one.0.clone();
        found.with(|found| found.get(at).map(title).unwrap_or_default())
    });
    let advice = memo(move || found.with(|found| found.get(at).map(|one| one.1.clone())));
    view! { <AdviceCard title advice /> }
}
