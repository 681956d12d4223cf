//! Ratio, temperature and thickness of the syrup, each of which can be set.

use leptos::prelude::*;

use super::ChocolateContext;
use super::thickness::set_thickness;
use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::Flow;
use crate::engine::formula::Formula;
use crate::text::{ErrorText, format, read, tr};

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
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let ratio = context.read_syrup(|syrup| syrup.chocolate_for_one());
        ratio
            .flatten()
            .map(|ratio| format::box_parts(ratio, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let ratio = read::factor(&text, options).map_err(|error| error.sentence(options))?;
        let set = |formula: &Formula| {
            let results = context.now;
            results.with_untracked(|results| results.with_chocolate_for_one(formula, ratio))
        };
        let set = state.change("syrup-ratio", set);
        set.map_err(|error| error.sentence(options))
    };
    view! { <NumberBox id="syrup-ratio" label=tr!("Chocolate : liquid") unit=": 1" figure store=Callback::new(store) /> }
}

/// How thick it is; what is typed is how thick it should be.
#[component]
fn ThicknessBox() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let thickness = context.read_syrup(|syrup| match syrup.flow {
            Flow::Flows { thickness, .. } => format::box_viscosity(thickness, options),
            Flow::Seized | Flow::MeltedOnly => String::new(),
        });
        thickness.unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let wished = read::viscosity(&text, options).map_err(|error| error.sentence(options))?;
        set_thickness(state, context, "syrup-thickness", wished)
    };
    view! { <NumberBox id="syrup-thickness" label=tr!("Thickness") unit=tr!("Pa·s") figure store=Callback::new(store) /> }
}

/// The temperature at which it is used.
#[component]
fn TemperatureBox() -> impl IntoView {
    let state = use_app_state();
    let figure = memo(move || {
        let options = state.options.get();
        state.with(|sheet| format::box_temperature(sheet.batch.syrup_at, options))
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let warm = read::temperature(&text, options).map_err(|error| error.sentence(options))?;
        state.type_in("syrup-at", |sheet| sheet.batch.syrup_at = warm);
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.temperature.symbol());
    view! { <NumberBox id="syrup-at" label=tr!("Used at") unit figure store=Callback::new(store) /> }
}
