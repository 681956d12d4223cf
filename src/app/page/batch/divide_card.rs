//! Dividing: the dough that is really on the bench, into pieces that add up to it.

use std::num::NonZeroU16;

use leptos::prelude::*;

use super::BatchAnswers;
use crate::app::part::{Button, Figure, NumberBox, Shown};
use crate::app::state::{AppState, memo, use_app_state};
use crate::engine::batch::{BatchError, Divided, divide};
use crate::engine::quantity::Mass;
use crate::sheet::Id;
use crate::text::{Trouble, chart, format, read, tr, weighing};

/// The dough that is really on the bench; what is not said is taken from the batch.
#[derive(Clone, Default, PartialEq)]
pub struct Bench {
    /// The formula this belongs to.
    of: Option<Id>,
    dough: Option<Mass>,
    pieces: Option<NonZeroU16>,
}

impl BatchAnswers {
    fn bench(self, state: AppState) -> Bench {
        let id = state.open_id.get();
        let bench = self.bench.get();
        if bench.of == id {
            bench
        } else {
            Bench {
                of: id,
                ..Bench::default()
            }
        }
    }

    /// The dough as it would be divided; none where there is no batch.
    fn divided(self, bench: &Bench) -> Option<Result<Divided, BatchError>> {
        self.scaled.with(|scaled| {
            let scaled = scaled.as_ref().ok()?;
            let pieces = bench.pieces.map_or(scaled.pieces.count, Into::into);
            Some(divide(
                bench.dough.unwrap_or(scaled.needed),
                pieces,
                self.weighing.get().main,
            ))
        })
    }
}

/// The dough on the bench, divided.
#[component]
pub fn DivideCard() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let divided = memo(move || answers.divided(&answers.bench(state)));
    let told = memo(move || {
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
        value: told.with(|told| told.0.clone()),
        was: None,
    });
    let working = move |()| {
        divided.with_untracked(|divided| match divided {
            Some(Ok(divided)) => divided.working(),
            Some(Err(_)) | None => Vec::new(),
        })
    };
    view! {
        <section class="card" aria-label=tr!("Dividing")>
            <header>
                <h2>{tr!("Dividing")}</h2>
            </header>
            <div class="body">
                <div class="boxes">
                    <DoughBox />
                    <PiecesBox />
                </div>
                <div class="figures"><Figure label=tr!("Divide it into") shown working=Callback::new(working) /></div>
                <p class="quiet follows">{move || told.with(|told| told.1.clone())}</p>
                <Forget />
            </div>
        </section>
    }
}

/// Goes back to the batch's own figures, where others were typed.
#[component]
fn Forget() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let is_said = move || {
        let bench = answers.bench(state);
        bench.dough.is_some() || bench.pieces.is_some()
    };
    let forget = move |()| {
        answers.bench.set(Bench::default());
        state.reset_inputs();
    };
    view! {
        <Show when=is_said>
            <Button says=tr!("Take the batch’s own figures again") tapped=forget />
        </Show>
    }
}

#[component]
fn DoughBox() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let figure = memo(move || {
        let options = state.options.get();
        let said = answers.bench(state).dough;
        answers.scaled.with(|scaled| {
            let needed = scaled.as_ref().ok().map(|scaled| scaled.needed);
            said.or(needed)
                .map(|mass| format::box_mass(mass, options))
                .unwrap_or_default()
        })
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        take_bench(state, answers, |bench| bench.dough = Some(mass))
    };
    let unit = Signal::derive(move || state.options.get().units.mass.symbol());
    view! { <NumberBox id="bench-dough" label=tr!("Dough really on the bench") unit figure take=Callback::new(take) /> }
}

#[component]
fn PiecesBox() -> impl IntoView {
    let state = use_app_state();
    let answers = BatchAnswers::here();
    let figure = memo(move || {
        let options = state.options.get();
        let said = answers
            .bench(state)
            .pieces
            .map(|count| u32::from(count.get()));
        answers.scaled.with(|scaled| {
            let count = scaled.as_ref().ok().map(|scaled| scaled.pieces.count.get());
            said.or(count)
                .map(|count| format::box_count(count, options))
                .unwrap_or_default()
        })
    });
    let take = move |text: String| {
        let options = state.options.get_untracked();
        let count = read::count(&text, options).map_err(|error| error.sentence(options))?;
        take_bench(state, answers, |bench| bench.pieces = Some(count))
    };
    view! { <NumberBox id="bench-pieces" label=tr!("Into pieces") unit="" figure take=Callback::new(take) /> }
}

/// Takes what is really there, where it can be divided.
fn take_bench(
    state: AppState,
    answers: BatchAnswers,
    change: impl FnOnce(&mut Bench),
) -> Result<(), String> {
    untrack(|| {
        let before = answers.bench(state);
        let mut bench = before.clone();
        change(&mut bench);
        if let Some(Err(error)) = answers.divided(&bench) {
            return Err(error.sentence(state.options.get()));
        }
        answers.bench.set(bench.clone());
        let put = |bench| BatchAnswers::here().bench.set(bench);
        state.note_step("dividing", [before, bench], put);
        Ok(())
    })
}
