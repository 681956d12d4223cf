//! One row to weigh at the bench: a paste or preferment whole, or an ingredient.

use leptos::prelude::*;

use super::results::Day;
use crate::app::page::BatchContext;
use crate::app::part::NumberBox;
use crate::app::state::memo;
use crate::engine::formula::LineAt;
use crate::results::day::{StepWeighing, WeighedLine};
use crate::text::{ErrorText, caution, day as day_text, format, name, read, tr, weighing};

/// A paste or preferment, all of it.
#[component]
pub fn PartRow(
    /// Which part.
    part: usize,
    /// What goes in at the step.
    lines: Memo<StepWeighing>,
) -> impl IntoView {
    let day = Day::from_context();
    let row = memo(move || lines.with(|lines| lines.part(part)));
    let name = memo(move || {
        let row = row.get()?;
        Some(
            day.state
                .with(|sheet| day_text::all_of_part(&row, &sheet.formula)),
        )
    });
    let mass = move || {
        let options = day.state.options.get();
        row.get().map(|row| format::mass(row.mass, options))
    };
    let is_in = memo(move || row.get().is_some_and(|row| row.is_in));
    let ticked = move |is_in: bool| {
        if let Some(row) = row.get_untracked() {
            day.change_bench(|bench| bench.put_in(row.made, is_in));
        }
    };
    view! {
        <li class:done=is_in>
            <label class="tick-box">
                <input type="checkbox" prop:checked=is_in on:change:target=move |event| ticked(event.target().checked()) />
                <span class="name">{name}</span>
            </label>
            " "
            <b class="shows">{mass}</b>
            " "
        </li>
    }
}

/// An ingredient: the mass to weigh, which opens for the mass that was weighed.
#[component]
pub fn WeighRow(
    /// Which line of the formula.
    at: LineAt,
    /// What goes in at the step.
    lines: Memo<StepWeighing>,
) -> impl IntoView {
    let day = Day::from_context();
    let context = BatchContext::from_context();
    let line = memo(move || lines.with(|lines| lines.line(at)));
    let name = memo(move || {
        let options = day.state.options.get();
        let food = day.state.with(|sheet| name::food_of(&sheet.formula, at));
        let food = food.unwrap_or_default();
        match line.get().and_then(|line| line.warm) {
            Some(warm) => tr!(
                "{food}, at {warm}",
                food = food,
                warm = format::temperature(warm, options)
            ),
            None => food,
        }
    });
    let shows = memo(move || {
        let options = day.state.options.get();
        let shows =
            context.read_rounded(|rounded| Some(weighing::line(rounded.line(at)?, options).shows));
        let shows = shows.unwrap_or_default();
        let line: Option<WeighedLine> = line.get();
        let other = line.filter(|line| line.mass != line.target);
        match other.and_then(|line| line.mass) {
            Some(mass) => format::from_to(&shows, &format::mass(mass, options)),
            None => shows,
        }
    });
    let aid = memo(move || {
        let options = day.state.options.get();
        line.get().filter(|line| line.is_missed)?;
        context.read_rounded(|rounded| {
            let food = name::food_short(&rounded.formula.line(at)?.food);
            caution::rounding(&food, rounded.line(at)?, options)
        })
    });
    let is_below = line.get_untracked().is_some_and(|line| line.below_scale);
    let is_in = memo(move || line.get().is_some_and(|line| line.is_weighed));
    let figure = memo(move || {
        let options = day.state.options.get();
        let mass = line.get().and_then(|line| line.mass);
        mass.map(|mass| format::box_mass(mass, options))
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
                bench.tick(at);
            } else {
                bench.unweigh(at);
            }
        });
    };
    let opened = RwSignal::new(false);
    let unit = Signal::derive(move || day.state.options.get().units.mass.symbol());
    let label = Signal::derive(move || tr!("{value}, actual", value = name.get()));
    let spoken = move || {
        tr!(
            "{food}: {mass}. It came out differently.",
            food = name.get(),
            mass = shows.get()
        )
    };
    let id = format!("real-{}-{}", at.part, at.line);
    let typing = move || {
        let id = id.clone();
        opened
            .get()
            .then(|| view! { <NumberBox id label unit figure store=Callback::new(store) /> })
    };
    view! {
        <li class:done=is_in>
            <label class="tick-box">
                <input type="checkbox" prop:checked=is_in on:change:target=move |event| ticked(event.target().checked()) />
                <span class="name">{name}</span>
            </label>
            " "
            <button type="button" class="shows" class:off=move || aid.with(Option::is_some) aria-label=spoken aria-expanded=move || opened.get().to_string() on:click=move |_| opened.update(|opened| *opened = !*opened)>
                {shows}
            </button>
            {move || {
                // What only rounding misses is told where the row is opened.
                aid.get()
                    .filter(|_| is_below || opened.get())
                    .map(|aid| {
                        view! {
                            <details class="aid" open=true>
                                <summary>{aid.means.into_owned()}</summary>
                                <p>{aid.to_do.into_owned()}</p>
                            </details>
                        }
                    })
            }}
            {typing}
            " "
        </li>
    }
}
