//! Dividing: the dough that is really on the bench, into pieces that add up to it.

use leptos::prelude::*;

use super::bench_boxes::BenchBoxes;
use crate::app::page::BatchContext;
use crate::app::part::{AnswerRow, Button, Figure, NumberBox, Shown};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::batch::Divided;
use crate::results::batch::dividing::{self, DividingResults, DoughOnBench};
use crate::text::{ErrorText, chart, format, read, tr, weighing};

impl BatchContext {
    fn dough_on_bench(self, state: AppState) -> DoughOnBench {
        let formula = state.open_id.get();
        self.bench.with(|bench| bench.dough(formula.as_ref()))
    }

    fn dividing(self, state: AppState) -> Option<DividingResults> {
        let bench = self.dough_on_bench(state);
        self.results.with(|results| dividing::of(results, bench))
    }
}

/// The dough on the bench, divided.
#[component]
pub fn DivideCard() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        match context.dividing(state).map(|dividing| dividing.divided) {
            Some(Ok(divided)) => weighing::divided(&divided, options),
            Some(Err(_)) | None => tr!("not known").to_owned(),
        }
    });
    view! {
        <AnswerRow title=tr!("Dividing") answer>
            <Content />
        </AnswerRow>
    }
}

/// The boxes, and what follows.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let divided = memo(move || context.dividing(state).map(|dividing| dividing.divided));
    let view = memo(move || {
        let options = state.options.get();
        divided.with(|divided| match divided {
            Some(Ok(divided)) => (
                weighing::divided(divided, options),
                chart::divided(divided, options),
            ),
            Some(Err(error)) => (tr!("not known").to_owned(), error.sentence(options)),
            None => Default::default(),
        })
    });
    let shown = memo(move || Shown {
        value: view.with(|view| view.0.clone()),
        was: None,
    });
    let working = move |()| {
        divided.with_untracked(|divided| {
            let divided = divided.as_ref().and_then(|divided| divided.as_ref().ok());
            divided.map(Divided::working).unwrap_or_default()
        })
    };
    view! {
        <div class="body">
            <div class="boxes">
                <DoughBox />
                <PiecesBox />
            </div>
            <div class="figures"><Figure label=tr!("Divide it into") shown working=Callback::new(working) /></div>
            <p class="quiet follows">{move || view.with(|view| view.1.clone())}</p>
            <Forget />
        </div>
    }
}

/// Restores the batch's own figures, where others were typed.
#[component]
fn Forget() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let is_typed = move || context.dough_on_bench(state) != DoughOnBench::default();
    let forget = move |()| {
        context.bench.set(BenchBoxes::default());
        state.reset_inputs();
    };
    view! {
        <Show when=is_typed>
            <Button label=tr!("Back to the batch’s figures") on_tap=forget />
        </Show>
    }
}

#[component]
fn DoughBox() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let dividing = context.dividing(state);
        dividing
            .map(|dividing| format::box_mass(dividing.dough, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        set_bench(state, context, |bench| bench.dough = Some(mass))
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! { <NumberBox id="bench-dough" label=tr!("Dough weight on the scale") unit figure store=Callback::new(store) /> }
}

#[component]
fn PiecesBox() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let dividing = context.dividing(state);
        dividing
            .map(|dividing| format::box_count(dividing.pieces.get(), options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let count = read::count(&text, options).map_err(|error| error.sentence(options))?;
        set_bench(state, context, |bench| bench.pieces = Some(count))
    };
    view! { <NumberBox id="bench-pieces" label=tr!("Into pieces") unit="" figure store=Callback::new(store) /> }
}

/// Changes what is on the bench, where it can be divided.
fn set_bench(
    state: AppState,
    context: BatchContext,
    change: impl FnOnce(&mut DoughOnBench),
) -> Result<(), String> {
    untrack(|| {
        let mut bench = context.dough_on_bench(state);
        change(&mut bench);
        let dividing = context.results.with(|results| dividing::of(results, bench));
        if let Some(Err(error)) = dividing.map(|dividing| dividing.divided) {
            return Err(error.sentence(state.options.get()));
        }
        let formula = state.open_id.get();
        let after = BenchBoxes::of(formula, bench);
        let before = context.bench.get();
        context.bench.set(after.clone());
        let put = |boxes| BatchContext::from_context().bench.set(boxes);
        state.note_step("dividing", [before, after], put);
        Ok(())
    })
}
