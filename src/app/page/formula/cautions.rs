//! What to know about the formula before making it: a row for each caution.

use leptos::prelude::*;

use crate::app::part::{AnswerRow, SafetyLine};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::Caution;
use crate::results::formula::{cautions, figures};
use crate::text::caution::Hazard;
use crate::text::{Advice, ErrorText, caution, tr};

/// Cautions about the formula, each one with what to do; why there are no figures, where there are
/// none.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = use_app_state();
    let found = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let found = cautions(sheet).unwrap_or_default();
            // Raw flour is in every dough: one line says so.
            let found = found.iter().filter(|one| **one != Caution::RawFlour);
            found
                .map(|one| {
                    let advice = caution::formula(one, &sheet.formula, options);
                    (caution::formula_title(one), advice)
                })
                .collect::<Vec<(String, Advice)>>()
        })
    });
    let missing = memo(move || {
        let options = state.options.get();
        let error = state.with(|sheet| {
            figures(sheet)
                .share(crate::engine::formula::Figure::Flour)
                .err()
        });
        error.map(|error| error.sentence(options))
    });
    let count = memo(move || found.with(Vec::len));
    view! {
        {move || missing.get().map(|why| view! { <p class="advice">{why}</p> })}
        <For each=move || 0..count.get() key=|at| *at let(at)>
            <OneCaution found at />
        </For>
        <SafetyLine step=Hazard::RawDough />
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
    let read = move |select: fn(&(String, Advice)) -> String| {
        memo(move || found.with(|found| found.get(at).map(select).unwrap_or_default()))
    };
    let title = read(|one| one.0.clone());
    let answer = read(|one| one.1.means.to_string());
    view! {
        <AnswerRow title answer>
            <div class="body">
                <p>{read(|one| one.1.to_do.to_string())}</p>
                <p class="quiet">{tr!("Source: ")}{read(|one| one.1.source.to_string())}</p>
            </div>
        </AnswerRow>
    }
}
