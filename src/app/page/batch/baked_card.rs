//! Baked: what the pieces weigh as they come from the oven and have cooled.

use leptos::prelude::*;

use super::BatchContext;
use super::key_figures::BatchFigureBox;
use crate::app::part::AnswerRow;
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::BatchFigure;
use crate::text::{batch_answer, format, tr};

/// What the pieces weigh once baked.
#[component]
pub fn BakedCard() -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let answer = memo(move || {
        let options = state.options.get();
        context.read(|scaled| batch_answer::baked(scaled, options))
    });
    view! {
        <AnswerRow title=tr!("Baked and cooled") answer>
            <div class="figures">
                <BatchFigureBox label=tr!("One piece") figure=BatchFigure::BakedEach select=|scaled, options| format::mass(scaled.baked_each, options) />
                <BatchFigureBox label=tr!("All together") figure=BatchFigure::Baked select=|scaled, options| format::mass(scaled.baked, options) />
            </div>
            <div class="body"><p class="quiet">{tr!("filling included, topping not")}</p></div>
        </AnswerRow>
    }
}
