//! The temperature of the flour, beside the advice to warm or chill it.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::NumberBox;
use crate::app::state::{memo, use_app_state};
use crate::results::heat::{flour_starts_at, set_flour_temperature};
use crate::text::{
    ErrorText, format,
    read::{self, ReadError},
    tr,
};

const ID: &str = "heat-flour";

/// The temperature of all flour of the final dough; emptied, that of the kitchen.
#[component]
pub fn FlourBox() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let figure = memo(move || {
        let options = state.options.get();
        let at = context.read_mixing(|mixing| flour_starts_at(&mixing.load));
        at.flatten()
            .map(|at| format::box_temperature(at, options))
            .unwrap_or_default()
    });
    let store = move |text: String| {
        let options = state.options.get_untracked();
        let at = match read::temperature(&text, options) {
            Ok(at) => Some(at),
            Err(ReadError::Empty) => None,
            Err(error) => return Err(error.sentence(options)),
        };
        state.type_in(ID, |sheet| set_flour_temperature(&mut sheet.formula, at));
        Ok(())
    };
    let unit = Signal::derive(move || state.options.get().units.temperature.symbol());
    view! { <NumberBox id=ID label=tr!("Flour at") unit figure store=Callback::new(store) /> }
}
