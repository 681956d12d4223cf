//! One ingredient of a stream: its weight and its baker's percentage, either of which can be set.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{Opened, State, memo};
use crate::engine::formula::{LineAt, percentage, set_mass, set_percentage};
use crate::words::{Trouble, line, read, write};

/// One ingredient of a stream.
#[component]
pub fn LineRow(
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
                    .map(|line| line.food.name().to_owned())
            })
            .unwrap_or_default()
    });
    let said = memo(move || {
        let manner = state.manner.get();
        state
            .with(|sheet| sheet.formula.line(at).map(|line| line::said(line, manner)))
            .unwrap_or_default()
    });
    let changed = memo(move || {
        let mass = |sheet: &crate::sheet::Sheet| sheet.formula.line(at).map(|line| line.mass);
        state.is_trial() && state.with(mass) != state.with_kept(mass)
    });
    view! {
        <div class="line" role="group" aria-label=food>
            <button type="button" class="food" aria-haspopup="dialog" on:click=move |_| state.open(Opened::Line(at))>
                <span class="name">{food}</span>
                <span class="said">{said}</span>
            </button>
            <MassBox at food changed />
            <PercentBox at food changed />
        </div>
    }
}

#[component]
fn MassBox(at: LineAt, food: Memo<String>, changed: Memo<bool>) -> impl IntoView {
    let state = State::here();
    let id = format!("mass-{}-{}", at.stream, at.line);
    let figure = memo(move || {
        let manner = state.manner.get();
        state
            .with(|sheet| {
                sheet
                    .formula
                    .line(at)
                    .map(|line| write::box_mass(line.mass, manner))
            })
            .unwrap_or_default()
    });
    let from = id.clone();
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let mass = read::mass(&text, manner).map_err(|error| error.sentence(manner))?;
        state
            .change(&from, |formula| set_mass(formula, at, mass))
            .map_err(|error| error.sentence(manner))
    };
    let label = Signal::derive(move || format!("{}, weight", food.get()));
    let unit = Signal::derive(move || state.manner.get().units.mass.symbol());
    view! { <NumberBox id label unit figure changed take=Callback::new(take) /> }
}

#[component]
fn PercentBox(at: LineAt, food: Memo<String>, changed: Memo<bool>) -> impl IntoView {
    let state = State::here();
    let id = format!("percent-{}-{}", at.stream, at.line);
    let figure = memo(move || {
        let (manner, basis) = (state.manner.get(), state.basis.get());
        let share = state.with(|sheet| percentage(&sheet.formula, at, basis));
        share
            .map(|share| write::box_share(share.share, manner))
            .unwrap_or_default()
    });
    let from = id.clone();
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let basis = state.basis.get_untracked();
        let share = read::share(&text, manner).map_err(|error| error.sentence(manner))?;
        state
            .change(&from, |formula| set_percentage(formula, at, basis, share))
            .map_err(|error| error.sentence(manner))
    };
    let label = Signal::derive(move || format!("{}, of flour", food.get()));
    view! { <NumberBox id label unit="%" figure changed take=Callback::new(take) /> }
}
