//! One ingredient of a part: its weight and its baker's percentage, either of which can be set.

use leptos::prelude::*;

use crate::app::part::NumberBox;
use crate::app::state::{AppState, DialogKind, memo, use_app_state};
use crate::engine::formula::{LineAt, set_mass, set_percentage};
use crate::results::formula::line;
use crate::text::{self, ErrorText, format, name, read, tr};

/// The numbers of a row. Worked out in one go, so that the sheet has one reader a line. The options
/// of writing is not followed: a place is drawn anew when that changes.
#[derive(Clone, Debug, Default, PartialEq)]
struct Numbers {
    mass: String,
    percent: String,
    /// Whether a trial has changed the weight.
    changed: bool,
}

impl Numbers {
    fn of(state: AppState, at: LineAt) -> Option<Self> {
        let (options, basis) = (state.options.get_untracked(), state.basis.get());
        let saved = state.saved_in_trial();
        let line = line(&state.current(), saved.as_deref(), at, basis)?;
        Some(Self {
            mass: format::box_mass(line.mass, options),
            percent: line
                .percentage
                .map(|share| format::box_share(share, options))
                .unwrap_or_default(),
            changed: line.is_changed,
        })
    }
}

/// The words of a row: its food, and what is said of it. They seldom change with the numbers.
fn words(state: AppState, at: LineAt) -> Option<(String, String)> {
    let options = state.options.get_untracked();
    let sheet = state.current();
    let line = sheet.formula.line(at)?;
    let food = name::food_short(&line.food).into_owned();
    Some((food, text::line::wording(line, options)))
}

/// One ingredient of a part; a tap on its name opens what can be done with it.
#[component]
pub fn LineRow(
    /// Its index.
    at: LineAt,
    /// Whether its percentage is left out.
    #[prop(optional)]
    weight_only: bool,
) -> impl IntoView {
    let state = use_app_state();
    let words = memo(move || words(state, at).unwrap_or_default());
    let numbers = memo(move || Numbers::of(state, at).unwrap_or_default());
    let text = move |select: fn(&Numbers) -> &String| {
        Signal::derive(move || numbers.with(|numbers| select(numbers).clone()))
    };
    let food = Signal::derive(move || words.with(|(food, _)| food.clone()));
    let wording = move || words.with(|(_, wording)| wording.clone());
    let changed = Signal::derive(move || numbers.with(|numbers| numbers.changed));
    view! {
        <div class="line" class:one-box=weight_only role="group" aria-label=food>
            <button type="button" class="food" aria-haspopup="dialog" on:click=move |_| state.open(DialogKind::Line(at))>
                <span class="name">{food}</span>
                <span class="said">{wording}</span>
            </button>
            <MassBox at food changed figure=text(|numbers| &numbers.mass) />
            {(!weight_only).then(|| view! { <PercentBox at food changed figure=text(|numbers| &numbers.percent) /> })}
        </div>
    }
}

#[component]
fn MassBox(
    at: LineAt,
    food: Signal<String>,
    changed: Signal<bool>,
    figure: Signal<String>,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("mass-{}-{}", at.part, at.line);
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let mass = read::mass(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| set_mass(formula, at, mass))
            .map_err(|error| error.sentence(options))
    };
    let label = Signal::derive(move || tr!("{value}, weight", value = food.get()));
    let unit = state.options.get_untracked().units.mass.symbol();
    view! { <NumberBox id label unit figure changed store=Callback::new(store) /> }
}

#[component]
fn PercentBox(
    at: LineAt,
    food: Signal<String>,
    changed: Signal<bool>,
    figure: Signal<String>,
) -> impl IntoView {
    let state = use_app_state();
    let id = format!("percent-{}-{}", at.part, at.line);
    let from = id.clone();
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let basis = state.basis.get_untracked();
        let share = read::share(&text, options).map_err(|error| error.sentence(options))?;
        state
            .change(&from, |formula| set_percentage(formula, at, basis, share))
            .map_err(|error| error.sentence(options))
    };
    let label = Signal::derive(move || tr!("{value}, of flour", value = food.get()));
    view! { <NumberBox id label unit="%" figure changed store=Callback::new(store) /> }
}
