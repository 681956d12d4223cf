//! All other figures of the dough, each with what a trial changes.

use leptos::prelude::*;

use crate::app::part::{AnswerRow, MassFigure, ShareFigure};
use crate::app::state::{memo, use_app_state};
use crate::engine::formula::Figure;
use crate::text::{DoughFigures, tr};

/// All other figures of the dough.
#[component]
pub fn FiguresCard() -> impl IntoView {
    let state = use_app_state();
    let answer = memo(move || state.figures.with(DoughFigures::others_answer));
    view! {
        <AnswerRow title=tr!("Baker’s percentages") answer>
            <div class="body">
                <div class="figures">
                    <MassFigure figure=Figure::Flour />
                    {Figure::MORE_SHARES.map(|figure| view! { <ShareFigure figure /> }).into_iter().collect_view()}
                </div>
            </div>
        </AnswerRow>
    }
}
