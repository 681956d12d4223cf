//! One ingredient of the syrup or the filling, with its weight in the formula.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{Opened, State, memo};
use crate::engine::formula::{LineAt, set_mass};
use crate::words::{Trouble, line, name, read, say, write};

/// One ingredient; a tap on its name opens what can be done with it.
#[component]
pub fn FoodRow(
    /// Where it stands.
    at: LineAt,
) -> impl IntoView {
    let state = State::here();
    let food = memo(move || {
        state
            .with(|sheet| {
                sheet
                    .formula
                    .line(at)
                    .map(|line| name::food_short(&line.food).into_owned())
            })
            .unwrap_or_default()
    });
    let said = memo(move || {
        let manner = state.manner.get();
        state
            .with(|sheet| sheet.formula.line(at).map(|line| line::said(line, manner)))
            .unwrap_or_default()
    });
    let mass = move |sheet: &crate::sheet::Sheet| sheet.formula.line(at).map(|line| line.mass);
    let changed = memo(move || state.is_trial() && state.with(mass) != state.with_kept(mass));
    let figure = memo(move || {
        let manner = state.manner.get();
        state
            .with(mass)
            .map(|mass| write::box_mass(mass, manner))
            .unwrap_or_default()
    });
    let id = format!("chocolate-{}-{}", at.stream, at.line);
    let from = id.clone();
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mass = read::mass(&text, manner).map_err(|error| error.sentence(manner))?;
        let set = state.change(&from, |formula| set_mass(formula, at, mass));
        set.map_err(|error| error.sentence(manner))
    };
    let label = Signal::derive(move || say!("{}, weight", food.get()));
    let unit = Signal::derive(move || state.manner.get().units.mass.symbol());
    view! {
        <div class="line one-box" role="group" aria-label=food>
            <button type="button" class="food" aria-haspopup="dialog" on:click=move |_| state.open(Opened::Line(at))>
                <span class="name">{food}</span>
                <span class="said">{said}</span>
            </button>
            <NumberBox id label unit figure changed take=Callback::new(take) />
        </div>
    }
}

/// All ingredients of a stream.
#[component]
pub fn FoodRows(
    /// Which stream.
    stream: usize,
) -> impl IntoView {
    let state = State::here();
    let lines = memo(move || {
        state.with(|sheet| {
            sheet
                .formula
                .streams
                .get(stream)
                .map_or(0, |own| own.lines.len())
        })
    });
    view! {
        <For each=move || 0..lines.get() key=|line| *line let(line)>
            <FoodRow at=LineAt { stream, line } />
        </For>
    }
}
