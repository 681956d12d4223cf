//! To weigh for this batch: filling and syrup, with what is lost in bag and bowl.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::page::{BatchContext, STAYS, WeighLine};
use crate::app::part::{AnswerRow, FieldBox};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::LineAt;
use crate::text::{chocolate_answer, tr, weighing};

/// What to weigh for this batch.
#[component]
pub fn WeighCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let batch = BatchContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        let parts = [context.topping.get(), context.filling.get()];
        batch.results.with(|batch| {
            let parts = parts.into_iter().flatten();
            chocolate_answer::weighing(&batch.formula, parts, options)
        })
    });
    view! {
        <AnswerRow title=tr!("To weigh for this batch") answer>
            <Content />
        </AnswerRow>
    }
}

/// The lines, and what stays behind.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let batch = BatchContext::from_context();
    let pieces = memo(move || {
        let options = state.options.get();
        batch.read(|scaled| weighing::pieces(&scaled.pieces, options))
    });
    let parts = move || {
        [context.topping.get(), context.filling.get()]
            .into_iter()
            .flatten()
    };
    view! {
            <p class="over quiet">{move || pieces.get()}</p>
            <For each=parts key=|part| *part let(part)>
                <PartToWeigh part />
            </For>
            <div class="body stays">
                <FieldBox field=STAYS />
                <p class="quiet">{tr!("What stays behind is in these weights.")}</p>
            </div>
    }
}

/// One part's lines, under its name.
#[component]
fn PartToWeigh(
    /// Which part.
    part: usize,
) -> impl IntoView {
    let state = use_app_state();
    let own = memo(move || {
        state.with(|sheet| {
            let own = sheet.formula.parts.get(part)?;
            Some((own.name.clone(), own.lines.len()))
        })
    });
    let name = move || own.with(|own| own.as_ref().map(|own| own.0.clone()));
    let lines = move || 0..own.with(|own| own.as_ref().map_or(0, |own| own.1));
    view! {
        <h3 class="over">{name}</h3>
        <ul>
            <For each=lines key=|line| *line let(line)>
                <li><WeighLine at=LineAt { part, line } /></li>
            </For>
        </ul>
    }
}
