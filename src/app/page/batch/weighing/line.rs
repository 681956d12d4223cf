//! One line to weigh: what the scale shows, what is exact, and what rounding does.

use leptos::prelude::*;

use crate::app::page::BatchContext;
use crate::app::state::{AppState, DialogKind, memo, use_app_state};
use crate::engine::formula::LineAt;
use crate::engine::working::WorkingLine;
use crate::text::{name, weighing};

/// One line to weigh; a tap opens its working.
#[component]
pub fn WeighLine(
    /// Which line.
    at: LineAt,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let food = memo(move || {
        state
            .with(|sheet| name::food_of(&sheet.formula, at))
            .unwrap_or_default()
    });
    let weighed = memo(move || {
        let options = state.options.get();
        let found = context.read_rounded(|rounded| {
            let line = rounded.line(at)?;
            Some(weighing::line(line, options))
        });
        found.unwrap_or_default()
    });
    let open = move |_| {
        state.open(DialogKind::Working {
            title: food.get_untracked(),
            value: weighed
                .with_untracked(|weighed| format!("{} · {}", weighed.shows, weighed.wording)),
            lines: working(state, context, at),
        });
    };
    view! {
        <button type="button" class="weigh" class:off=move || weighed.with(|weighed| weighed.off) aria-haspopup="dialog" on:click=open>
            <span class="name">{food}</span>
            <span class="shows">{move || weighed.with(|weighed| weighed.shows.clone())}</span>
            {move || weighed.with(|weighed| weighed.off.then(|| view! { <span class="said">{weighed.wording.clone()}</span> }))}
        </button>
    }
}

/// The steps from the formula's weight to what the scale shows.
fn working(state: AppState, context: BatchContext, at: LineAt) -> Vec<WorkingLine> {
    let sheet = state.sheet();
    context
        .results
        .with_untracked(|results| results.weighing_working(&sheet.formula, at))
}
