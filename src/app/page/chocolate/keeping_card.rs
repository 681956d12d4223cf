//! The row on storing the syrup.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::part::{AdviceCard, AnswerRow};
use crate::app::state::{memo, use_app_state};
use crate::text::{caution, name, tr};

/// How to store the syrup.
#[component]
pub fn KeepingCard() -> impl IntoView {
    let context = ChocolateContext::from_context();
    let answer = memo(move || {
        let keeps = context.read_syrup(|syrup| name::keeps_as(syrup.keeping.keeps_as));
        keeps.unwrap_or_default().to_owned()
    });
    view! {
        <AnswerRow title=tr!("Keeping") answer>
            <Content title=answer />
        </AnswerRow>
    }
}

/// Why, and what to do.
#[component]
fn Content(
    /// How it keeps.
    title: Memo<String>,
) -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
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
    view! {
        <div class="body">
            <AdviceCard title advice working=Callback::new(working) />
        </div>
    }
}
