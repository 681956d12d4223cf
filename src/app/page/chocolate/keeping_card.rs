//! The card on storing the syrup.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::text::{caution, name};

/// How to store the syrup.
#[component]
pub fn KeepingCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let title = memo(move || {
        let keeps = context.read_syrup(|syrup| name::keeps_as(syrup.keeping.keeps_as));
        keeps.unwrap_or_default().to_owned()
    });
    let advice = memo(move || {
        let options = state.options.get();
        context.read_syrup(|syrup| caution::keeping(&syrup.keeping, options))
    });
    let working = move |()| {
        untrack(|| {
            context
                .read_syrup(|syrup| syrup.keeping.working())
                .unwrap_or_default()
        })
    };
    view! { <AdviceCard title advice working=Callback::new(working) /> }
}
