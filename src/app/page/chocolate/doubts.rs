//! Doubts about the syrup: seizing first, then what its figures leave out.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::{Syrup, SyrupCaution};
use crate::results::chocolate::SyrupResults;
use crate::text::{caution, tr};

/// What to know about the syrup.
#[component]
pub fn Doubts() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let seized = memo(move || {
        let options = state.options.get();
        context
            .read_syrup(|syrup| caution::seized(syrup, options))
            .flatten()
    });
    let rule = memo(move || {
        let options = state.options.get();
        context
            .read_syrup(|syrup| caution::minimum_water(&syrup.rule, options))
            .flatten()
    });
    let doubts = memo(move || context.read_curve(SyrupResults::doubts).unwrap_or_default());
    let worked = move |()| {
        untrack(|| {
            context
                .read_syrup(Syrup::seizing_working)
                .unwrap_or_default()
        })
    };
    let card = move |doubt: SyrupCaution| {
        let advice = memo(move || Some(caution::syrup(&doubt, state.options.get())));
        view! { <AdviceCard title=caution::syrup_title(doubt) advice /> }
    };
    view! {
        <AdviceCard title=tr!("It seizes") advice=seized working=Callback::new(worked) />
        <AdviceCard title=tr!("Less water than the handbook asks for") advice=rule />
        {move || doubts.get().into_iter().map(card).collect_view()}
    }
}
