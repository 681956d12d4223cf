//! The three figures of the place: chocolate and liquid of the batch, and what the syrup does.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::Syrup;
use crate::engine::working::WorkingLine;
use crate::results::chocolate::ChocolateResults;
use crate::text::{FormatOptions, chocolate_answer, format, tr};

/// The three figures that the place is about.
#[component]
pub fn ChocolateKeys() -> impl IntoView {
    let context = ChocolateContext::from_context();
    let verdict = memo(move || {
        let verdict = context.now.with(ChocolateResults::verdict);
        let word = verdict.map(chocolate_answer::syrup_word);
        Shown::plain(word.unwrap_or("–").to_owned())
    });
    let working = move |()| untrack(|| context.read_syrup(Syrup::working).unwrap_or_default());
    view! {
        <MadeFigure label=tr!("Chocolate") select=|syrup, options| format::mass(syrup.chocolate, options) />
        <MadeFigure label=tr!("Liquid") select=|syrup, options| format::mass(syrup.liquid, options) />
        <Figure label=tr!("Syrup") shown=verdict working=Callback::new(working) />
    }
}

/// A figure of the syrup as large as the batch makes it.
#[component]
fn MadeFigure(
    /// Its name.
    label: &'static str,
    /// The figure, written out.
    select: fn(&Syrup, FormatOptions) -> String,
) -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let value = context.read_made(|syrup| select(syrup, options));
        Shown::beside(
            value.unwrap_or_else(|| "–".to_owned()),
            context.read_before(|syrup| select(syrup, options)),
        )
    });
    let worked = move |()| untrack(|| context.read_made(Syrup::parts_working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(worked) /> }
}

/// A figure of the formula's syrup that opens to its working.
#[component]
pub fn SyrupFigure(
    /// Its name.
    label: &'static str,
    /// The figure, written out.
    select: fn(&Syrup, FormatOptions) -> String,
    /// Its working.
    working: fn(&Syrup) -> Vec<WorkingLine>,
) -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let value = context.read_syrup(|syrup| select(syrup, options));
        Shown::plain(value.unwrap_or_else(|| tr!("none").to_owned()))
    });
    let worked = move |()| untrack(|| context.read_syrup(working).unwrap_or_default());
    view! { <Figure label shown working=Callback::new(worked) /> }
}
