//! The balance of the bowl: the heat that each ingredient adds, and what they come to together.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::BowlBalance;
use crate::app::state::{memo, use_app_state};
use crate::text::{
    chart::{balance_bars, bowl_balance},
    heat,
};

/// Who brings heat to the bowl, and who takes it.
#[component]
pub fn Balance() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let bars = memo(move || {
        let options = state.options.get();
        let bars = context.read_mixing(|mixing| {
            context
                .scaled
                .with(|formula| balance_bars(&mixing.shares, formula, &mixing.load, options))
        });
        bars.unwrap_or_default()
    });
    let description = memo(move || {
        let options = state.options.get();
        let description = context.read_mixing(|mixing| {
            context
                .scaled
                .with(|formula| bowl_balance(&mixing.shares, formula, &mixing.load, options))
        });
        description.unwrap_or_default()
    });
    let sum = memo(move || {
        let options = state.options.get();
        let wanted = context.settings.with(|settings| settings.dough);
        context
            .read_mixing(|mixing| heat::balance_sum(&mixing.dough, wanted, options))
            .unwrap_or_default()
    });
    view! {
        <BowlBalance bars description=description />
        <p class="follows">{sum}</p>
    }
}
