//! Ratio, temperature and thickness of the syrup, each of which can be set.

use leptos::prelude::*;

use super::ChocolateAnswers;
use super::thickness::set_thickness;
use crate::app::part::NumberBox;
use crate::app::state::{State, memo};
use crate::engine::chocolate::{Flow, set_liquid};
use crate::text::{Trouble, read, tr, format};

/// The figures that can be set in place of weights.
#[component]
pub fn SyrupBoxes() -> impl IntoView {
    view! {
        <div class="boxes">
            <RatioBox />
            <ThicknessBox />
            <TemperatureBox />
        </div>
    }
}

/// Chocolate to one part of liquid.
#[component]
fn RatioBox() -> impl IntoView {
    let state = State::here();
    let answers = ChocolateAnswers::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        let ratio = answers.read_syrup(|syrup| syrup.chocolate_for_one());
        ratio
            .flatten()
            .map(|ratio| format::box_parts(ratio, manner))
            .unwrap_or_default()
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let ratio = read::factor(&text, manner).map_err(|error| error.sentence(manner))?;
        untrack(|| {
            let Some(part) = answers.topping.get() else {
                return Ok(());
            };
            let Some(liquid) = answers.read_syrup(|syrup| syrup.liquid_at(ratio)) else {
                return Ok(());
            };
            let liquid = liquid.map_err(|error| error.sentence(manner))?;
            let set = state.change("syrup-ratio", |formula| set_liquid(formula, part, liquid));
            set.map_err(|error| error.sentence(manner))
        })
    };
    view! { <NumberBox id="syrup-ratio" label=tr!("Chocolate to 1 of liquid") unit=": 1" figure take=Callback::new(take) /> }
}

/// How thick it is; what is typed is how thick it should be.
#[component]
fn ThicknessBox() -> impl IntoView {
    let state = State::here();
    let answers = ChocolateAnswers::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        let thickness = answers.read_syrup(|syrup| match syrup.flow {
            Flow::Flows { thickness, .. } => format::box_viscosity(thickness, manner),
            Flow::Seized | Flow::MeltedOnly => String::new(),
        });
        thickness.unwrap_or_default()
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let wished = read::viscosity(&text, manner).map_err(|error| error.sentence(manner))?;
        set_thickness(state, answers, "syrup-thickness", wished)
    };
    view! { <NumberBox id="syrup-thickness" label=tr!("Thickness") unit=tr!("Pa·s") figure take=Callback::new(take) /> }
}

/// How warm it is when it is used.
#[component]
fn TemperatureBox() -> impl IntoView {
    let state = State::here();
    let figure = memo(move || {
        let manner = state.manner.get();
        state.with(|sheet| format::box_temperature(sheet.batch.syrup_at, manner))
    });
    let take = move |text: String| {
        let manner = state.manner.get_untracked();
        let warm = read::temperature(&text, manner).map_err(|error| error.sentence(manner))?;
        state.type_in("syrup-at", |sheet| sheet.batch.syrup_at = warm);
        Ok(())
    };
    let unit = Signal::derive(move || state.manner.get().units.temperature.symbol());
    view! { <NumberBox id="syrup-at" label=tr!("Used at") unit figure take=Callback::new(take) /> }
}
