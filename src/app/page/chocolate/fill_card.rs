//! The filling: in each piece, in all, or as a share of the dough.

use leptos::prelude::*;

use super::ChocolateContext;
use super::food_row::{FoodRows, MadeOnce, part_title};
use crate::app::page::BatchContext;
use crate::app::part::{AdviceCard, AnswerRow, Figure, NumberBox, Shown, Verdict};
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::Fill;
use crate::engine::formula::Formula;
use crate::results::chocolate::FillingTarget;
use crate::text::read::ReadError;
use crate::text::{
    ErrorText, FormatOptions, caution, chocolate_answer, format, read, tr, weighing,
};

/// The filling of this batch.
#[component]
pub fn FillCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context
            .read_fill(|fill| chocolate_answer::filling(fill, options))
            .unwrap_or_else(|| tr!("not known").to_owned())
    });
    let verdict =
        Signal::derive(
            move || match context.read_fill(|fill| fill.cautions.is_empty()) {
                Some(true) => Verdict::Good,
                Some(false) => Verdict::Wrong,
                None => Verdict::Plain,
            },
        );
    view! {
        <AnswerRow title=part_title(context.filling) answer verdict>
            <Content />
        </AnswerRow>
    }
}

/// The boxes, and the filling's ingredients.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let batch = BatchContext::from_context();
    let pieces = memo(move || {
        let options = state.options.get();
        batch.read(|scaled| weighing::pieces(&scaled.pieces, options))
    });
    let heavy = memo(move || {
        let options = state.options.get();
        context
            .read_fill(|fill| {
                fill.cautions
                    .first()
                    .map(|one| caution::fill(*one, fill, options))
            })
            .flatten()
    });
    let spare = memo(move || Shown {
        value: {
            let options = state.options.get();
            context
                .read_fill(|fill| format::mass(fill.with_spare, options))
                .unwrap_or_else(|| tr!("not known").to_owned())
        },
        was: None,
    });
    let working = move |()| untrack(|| context.read_fill(Fill::working).unwrap_or_default());
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! {
            <div class="body">
                <AdviceCard title=tr!("Much filling") advice=heavy working=Callback::new(working) />
                <p class="quiet">{move || tr!("for {value}", value = pieces.get())}</p>
                <div class="boxes">
                    <FillBox id="fill-each" label=tr!("In each piece") unit select=|fill, options| format::box_mass(fill.each, options) wanted=by_each />
                    <FillBox id="fill-total" label=tr!("To make in all") unit select=|fill, options| format::box_mass(fill.to_make, options) wanted=by_total />
                    <FillBox id="fill-share" label=tr!("Of the dough") unit="%" select=|fill, options| format::box_share(fill.of_dough, options) wanted=by_share />
                </div>
                <div class="figures"><Figure label=tr!("To make, with one piece spare") shown=spare working=Callback::new(working) /></div>
            </div>
            <MadeOnce part=context.filling />
            {move || context.filling.get().map(|part| view! { <FoodRows part /> })}
    }
}

/// From a text to how much filling is wanted, or why it cannot be read.
type ReadTarget = fn(&str, FormatOptions) -> Result<FillingTarget, ReadError>;

fn by_each(text: &str, options: FormatOptions) -> Result<FillingTarget, ReadError> {
    read::mass(text, options).map(FillingTarget::Each)
}

fn by_total(text: &str, options: FormatOptions) -> Result<FillingTarget, ReadError> {
    read::mass(text, options).map(FillingTarget::Total)
}

fn by_share(text: &str, options: FormatOptions) -> Result<FillingTarget, ReadError> {
    read::share(text, options).map(FillingTarget::OfDough)
}

#[component]
fn FillBox(
    /// Unique on the page.
    id: &'static str,
    /// What is asked for.
    label: &'static str,
    /// Its unit.
    #[prop(into)]
    unit: Signal<&'static str>,
    /// The figure, written for a box.
    select: fn(&Fill, FormatOptions) -> String,
    /// What a text asks for.
    wanted: ReadTarget,
) -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        context
            .read_fill(|fill| select(fill, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let target = wanted(&text, options).map_err(|error| error.sentence(options))?;
        let set = |formula: &Formula| {
            let results = context.now;
            results.with_untracked(|results| results.with_filling(formula, target))
        };
        let set = state.change(id, set);
        set.map_err(|error| error.sentence(options))
    };
    view! { <NumberBox id label unit figure store=Callback::new(store) /> }
}
