//! The card of losses, closed until it is opened.

use leptos::prelude::*;

use super::fields::LOSSES;
use crate::app::part::{AnswerRow, FieldBox};
use crate::app::state::{memo, use_app_state};
use crate::text::{tr, weighing};

/// The losses.
#[component]
pub fn LossesCard() -> impl IntoView {
    let state = use_app_state();
    let wording = memo(move || {
        let options = state.options.get();
        state.with(|sheet| weighing::losses(&sheet.batch.losses, options))
    });
    view! {
        <AnswerRow tucked=true title=tr!("Losses") answer=wording>
            <div class="body">
                <div class="boxes">{LOSSES.map(|field| view! { <FieldBox field /> })}</div>
                <p class="quiet">{tr!("Usual: 1 to 3 % before the oven, 10 to 15 % in it (common practice).")}</p>
            </div>
        </AnswerRow>
    }
}
