//! All weights of a step, each a row that is tapped off; a weight that came out otherwise is tapped
//! and typed.

use leptos::prelude::*;

use super::results::Day;
use super::weigh_row::{PartRow, WeighRow};
use crate::app::part::Button;
use crate::app::state::memo;
use crate::engine::plan::StepAt;
use crate::results::day::{
    Addition, StepWeighing, goes_into_a_bowl, step_additions, step_weighing, step_weighing_effect,
};
use crate::text::{day as day_text, tr};

/// The rows of a step.
#[component]
pub fn WeighRows(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let lines = memo(move || {
        day.with_results(|input, results| step_weighing(input, results, step))
            .unwrap_or_default()
    });
    let places = memo(move || lines.with(StepWeighing::places));
    let parts = memo(move || {
        lines.with(|lines| lines.parts.iter().map(|part| part.part).collect::<Vec<_>>())
    });
    let any = memo(move || places.with(|places| !places.is_empty()));
    let total = memo(move || {
        let options = day.state.options.get();
        lines.with(|lines| day_text::in_the_bowl(lines.so_far, lines.total, options))
    });
    view! {
        <Show when=move || any.get()>
            <ol class="to-weigh" id="bench-weights">
                <For each=move || parts.get() key=|part| *part let(part)>
                    <PartRow part lines />
                </For>
                <For each=move || places.get() key=|at| *at let(at)>
                    <WeighRow at lines />
                </For>
            </ol>
            <p class="so-far">
                <span>{tr!("Tap a weight to change it.")}</span>
                " "
                {goes_into_a_bowl(step.work).then(|| view! { <b>{total}</b> })}
            </p>
            <Effect step />
        </Show>
        <Additions step />
    }
}

/// What the masses that were weighed do.
#[component]
fn Effect(
    /// At which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        let wording = day.with_results(|input, results| {
            let effect = step_weighing_effect(input, results, step);
            day_text::weighing_effect(&effect, &input.sheet.formula, options)
        });
        wording.unwrap_or_default()
    });
    view! { <p class="weighed-off" role="status">{wording}</p> }
}

/// A button for each thing that can be added at this step to make up for a deviating mass.
#[component]
fn Additions(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::from_context();
    let buttons = memo(move || {
        let options = day.state.options.get();
        let found = day.with_results(|input, results| {
            let additions = step_additions(input, results, step).into_iter();
            let wording = |more: Addition| {
                (
                    more,
                    day_text::addition(&more, &input.sheet.formula, options),
                )
            };
            additions.map(wording).collect::<Vec<_>>()
        });
        found.unwrap_or_default()
    });
    let button = move |(more, wording): (Addition, String)| {
        let then = (!more.as_asked).then_some(more.then);
        view! { <Button label=wording on_tap=move |()| day.change_bench(|bench| bench.weigh(more.at, then)) /> }
    };
    view! { <div class="buttons additions">{move || buttons.get().into_iter().map(button).collect_view()}</div> }
}
