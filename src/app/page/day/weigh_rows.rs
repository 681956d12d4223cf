//! The lines to weigh at a step, what deviating masses do, and what makes up for them.

use leptos::prelude::*;

use super::results::Day;
use crate::app::part::{Button, NumberBox};
use crate::app::state::memo;
use crate::engine::formula::LineAt;
use crate::engine::plan::StepAt;
use crate::engine::quantity::Mass;
use crate::results::day::{
    Addition, StepWeighing, WeighedLine, WeighingEffect, step_weighing, weighing_effect,
};
use crate::text::{ErrorText, day as day_text, format, name, read, tr};

/// The lines of a step.
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
    let any = memo(move || places.with(|places| !places.is_empty()));
    let effect = memo(move || {
        let sheet = day.state.current();
        day.with_input(&sheet, weighing_effect)
    });
    let wording = memo(move || {
        let options = day.state.options.get();
        day.state.with(|sheet| {
            effect.with(|effect| day_text::weighing_effect(effect, &sheet.formula, options))
        })
    });
    view! {
        <Show when=move || any.get()>
            <ol class="to-weigh">
                <For each=move || places.get() key=|at| *at let(at)>
                    <WeighRow at lines />
                </For>
            </ol>
        </Show>
        <p class="weighed-off" role="status">{wording}</p>
        <Additions effect />
    }
}

/// A button for each thing that can be added to make up for a deviating mass.
#[component]
fn Additions(
    /// What the masses that were weighed do.
    effect: Memo<WeighingEffect>,
) -> impl IntoView {
    let day = Day::from_context();
    let buttons = memo(move || {
        let options = day.state.options.get();
        let additions = effect.with(|effect| effect.additions.clone());
        day.state.with(|sheet| {
            let additions = additions.into_iter();
            let wording =
                |more: Addition| (more, day_text::addition(&more, &sheet.formula, options));
            additions.map(wording).collect::<Vec<_>>()
        })
    });
    let button = move |(more, wording): (Addition, String)| {
        let then = (!more.as_asked).then_some(more.then);
        view! { <Button label=wording on_tap=move |()| day.change_bench(|bench| bench.weigh(more.at, then)) /> }
    };
    view! { <div class="buttons">{move || buttons.get().into_iter().map(button).collect_view()}</div> }
}

/// One line: the mass to weigh, the untared reading of the scale, and the mass that was weighed.
#[component]
fn WeighRow(
    /// Which line of the formula.
    at: LineAt,
    /// The lines of the step.
    lines: Memo<StepWeighing>,
) -> impl IntoView {
    let day = Day::from_context();
    let line = memo(move || lines.with(|lines| lines.line(at)));
    let mass = move |pick: fn(WeighedLine) -> Option<Mass>| line.get().and_then(pick);
    let name = memo(move || {
        day.state
            .with(|sheet| {
                sheet
                    .formula
                    .line(at)
                    .map(|line| name::food_short(&line.food).into_owned())
            })
            .unwrap_or_default()
    });
    let to_weigh = memo(move || {
        let options = day.state.options.get();
        mass(|line| line.target)
            .map(|mass| format::mass(mass, options))
            .unwrap_or_default()
    });
    let shows = memo(move || {
        let options = day.state.options.get();
        mass(|line| Some(line.untared))
            .map(|mass| format::mass(mass, options))
            .unwrap_or_default()
    });
    let is_in = memo(move || line.get().is_some_and(|line| line.is_weighed));
    let figure = memo(move || {
        let options = day.state.options.get();
        mass(|line| line.mass)
            .map(|mass| format::box_mass(mass, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = day.state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        day.change_bench(|bench| bench.weigh(at, Some(mass)));
        Ok(())
    };
    let ticked = move |is_in: bool| {
        day.change_bench(|bench| {
            if is_in {
                bench.weigh(at, None);
            } else {
                bench.unweigh(at);
            }
        });
    };
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    let label = Signal::derive(move || tr!("{value}, really", value = name.get()));
    let id = format!("real-{}-{}", at.part, at.line);
    view! {
        <li class:done=is_in>
            <label class="tick-box">
                <input type="checkbox" prop:checked=is_in on:change:target=move |event| ticked(event.target().checked()) />
                <span class="name">{name}</span>
                <span class="large">{to_weigh}</span>
            </label>
            <span class="quiet">{tr!("untared, the scale shows ")}{shows}</span>
            <NumberBox id label unit figure store=Callback::new(store) />
        </li>
    }
}
