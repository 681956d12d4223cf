//! What is weighed at a step: line by line, with what the scale shows as the bowl fills.

use leptos::prelude::*;

use super::results::Day;
use crate::app::page::BatchAnswers;
use crate::app::part::{Button, NumberBox};
use crate::app::state::memo;
use crate::engine::formula::LineAt;
use crate::engine::plan::{StepAt, weighed_at};
use crate::engine::quantity::Mass;
use crate::results::day::{AddMore, add_more, warmed_by_weights};
use crate::text::{Trouble, day as told, format, name, read, tr};

/// The lines of a step.
#[component]
pub fn WeighRows(
    /// Which step.
    step: StepAt,
) -> impl IntoView {
    let day = Day::here();
    let answers = BatchAnswers::here();
    let lines = memo(move || {
        let formula = day.state.with(|sheet| sheet.formula.clone());
        day.read(|planned| weighed_at(step, &planned.plan, &formula))
            .unwrap_or_default()
    });
    let any = memo(move || lines.with(|lines| !lines.is_empty()));
    let off = memo(move || {
        let options = day.state.options.get();
        let formula = answers.read_rounded(|rounded| Some(rounded.formula.clone()));
        let bench = day.own_bench.get();
        let said = formula.zip(bench).map(|(formula, bench)| {
            let water = told::weighed_off(&formula, &bench, options);
            let kitchen = day.state.kitchen.get();
            let warmer = day
                .state
                .with(|sheet| warmed_by_weights(&formula, &bench, &kitchen, &sheet.heat));
            let warmer = warmer.and_then(|by| told::warmed_by_weights(by, options));
            [water, warmer.unwrap_or_default()].join(" ")
        });
        said.unwrap_or_default()
    });
    view! {
        <Show when=move || any.get()>
            <ol class="to-weigh">
                <For each=move || lines.get() key=|at| *at let(at)>
                    <WeighRow at lines />
                </For>
            </ol>
        </Show>
        <p class="weighed-off" role="status">{off}</p>
        <AddedMore />
    }
}

/// What was added to make up for a weight that missed, to be tapped.
#[component]
fn AddedMore() -> impl IntoView {
    let day = Day::here();
    let answers = BatchAnswers::here();
    let ways = memo(move || {
        let options = day.state.options.get();
        let formula = answers.read_rounded(|rounded| Some(rounded.formula.clone()));
        let both = formula.zip(day.own_bench.get());
        let ways = both.map(|(formula, bench)| {
            let ways = add_more(&formula, &bench).into_iter();
            let said = |more: AddMore| (more, told::add_more(&more, &formula, options));
            ways.map(said).collect::<Vec<_>>()
        });
        ways.unwrap_or_default()
    });
    let way = move |(more, said): (AddMore, String)| {
        let then = (!more.as_asked).then_some(more.then);
        view! { <Button says=said tapped=move |()| day.change_bench(|bench| bench.weigh(more.at, then)) /> }
    };
    view! { <div class="buttons">{move || ways.get().into_iter().map(way).collect_view()}</div> }
}

/// One line: what to weigh, what the scale then shows, and what really went in.
#[component]
fn WeighRow(
    /// Where it stands.
    at: LineAt,
    /// All lines of the step, in their order.
    lines: Memo<Vec<LineAt>>,
) -> impl IntoView {
    let day = Day::here();
    let answers = BatchAnswers::here();
    let asked = move |at: LineAt| {
        answers.read_rounded(|rounded| {
            rounded
                .lines
                .iter()
                .find(|line| line.at == at)
                .map(|line| line.weighed)
        })
    };
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
        asked(at)
            .map(|mass| format::mass(mass, options))
            .unwrap_or_default()
    });
    // What the scale shows when nothing is tared between the lines.
    let shows = memo(move || {
        let options = day.state.options.get();
        let lines = lines.get();
        let until = lines
            .iter()
            .take_while(|line| **line != at)
            .chain(std::iter::once(&at));
        let sum: Mass = until.filter_map(|line| asked(*line)).sum();
        format::mass(sum, options)
    });
    let is_in = memo(move || {
        day.bench.with(|bench| {
            bench
                .as_ref()
                .is_some_and(|bench| bench.weighing(at).is_some())
        })
    });
    let figure = memo(move || {
        let options = day.state.options.get();
        let real = day.bench.with(|bench| bench.as_ref()?.weighing(at)?.mass);
        real.or_else(|| asked(at))
            .map(|mass| format::box_mass(mass, options))
            .unwrap_or_default()
    });
    let take = move |text: String| {
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
                bench.weighed.retain(|weighing| weighing.at != at);
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
            <NumberBox id label unit figure take=Callback::new(take) />
        </li>
    }
}
