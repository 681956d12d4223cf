//! Scale: its steps, what it is too coarse for with what helps, and what rounding changes in all.

use leptos::prelude::*;

use super::aids::WeighingAids;
use super::change_card::ChangeFigures;
use crate::app::page::BatchContext;
use crate::app::part::{AnswerRow, KitchenLink, ScaleBoxes, Verdict};
use crate::app::state::{memo, use_app_state};
use crate::results::batch::BatchResults;
use crate::text::{batch_answer, tr};

/// The scales of this kitchen.
#[component]
pub fn ScaleRow() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let hard = memo(move || context.results.with(BatchResults::hard_to_weigh));
    let answer = memo(move || {
        let options = state.options.get();
        let steps = context.results.with(|results| results.weighing);
        hard.with(|hard| {
            state.with(|sheet| batch_answer::scale(hard, &sheet.formula, steps, options))
        })
    });
    let verdict = memo(move || {
        if context.results.with(BatchResults::shows_too_little) {
            Verdict::Wrong
        } else {
            Verdict::Plain
        }
    });
    view! {
        <AnswerRow title=tr!("Scale") answer verdict>
            <div class="body">
                <WeighingAids />
                <ScaleBoxes />
                <KitchenLink />
            </div>
            <ChangeFigures />
        </AnswerRow>
    }
}
