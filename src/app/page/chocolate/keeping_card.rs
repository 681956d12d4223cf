//! How the syrup keeps.

use leptos::prelude::*;

use super::ChocolateAnswers;
use crate::app::part::AdviceCard;
use crate::app::state::{memo, use_app_state};
use crate::text::{caution, name};

/// How the syrup must be kept.
#[component]
pub fn KeepingCard() -> impl IntoView {
    let state = use_app_state();
    let answers = ChocolateAnswers::here();
    let title = memo(move || {
        let keeps = answers.read_syrup(|syrup| name::keeps_as(syrup.keeping.keeps_as));
        keeps.unwrap_or_default().to_owned()
    });
    let advice = memo(move || {
        let options = state.options.get();
        answers.read_syrup(|syrup| caution::keeping(&syrup.keeping, options))
    });
    let working = move |()| {
        untrack(|| {
            answers
                .read_syrup(|syrup| syrup.keeping.working())
                .unwrap_or_default()
        })
    };
    view! { <AdviceCard title advice working=Callback::new(working) /> }
}
