//! The syrup: its ingredients, and the figures that can be set in their place.

use leptos::prelude::*;

use super::ChocolateContext;
use super::curve_card::CurveCard;
use super::doubts::Doubts;
use super::food_row::{FoodRows, MadeOnce, part_title};
use super::syrup_boxes::SyrupBoxes;
use super::thickness::HandlingChoice;
use crate::app::part::{AnswerRow, Button, Picture, Verdict};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::results::chocolate::{ChocolateResults, SyrupVerdict};
use crate::text::{ErrorText, chocolate_answer, tr};

/// The syrup, and whether it runs.
#[component]
pub fn SyrupCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let found = memo(move || context.now.with(ChocolateResults::verdict));
    let answer = memo(move || {
        let options = state.options.get();
        let at = state.with(|sheet| sheet.batch.syrup_at);
        match found.get() {
            Some(verdict) => chocolate_answer::syrup(verdict, at, options),
            None => tr!("not known").to_owned(),
        }
    });
    let verdict = Signal::derive(move || match found.get() {
        Some(SyrupVerdict::Seizes { .. } | SyrupVerdict::Thick) | None => Verdict::Wrong,
        Some(SyrupVerdict::Runs(_)) => Verdict::Good,
        Some(SyrupVerdict::MeltedOnly) => Verdict::Plain,
    });
    view! {
        <AnswerRow title=part_title(context.topping) answer verdict>
            <Content />
        </AnswerRow>
    }
}

/// Its ingredients, its figures, its curve, and what to know about it.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let error = memo(move || {
        let options = state.options.get();
        context.now.with(|now| match &now.syrup {
            Some(Err(error)) => Some(error.sentence(options)),
            Some(Ok(_)) | None => None,
        })
    });
    let pick = move |()| {
        if let Some(part) = context.topping.get_untracked() {
            state.open(DialogKind::Pick {
                title: tr!("Add to the syrup").to_owned(),
                pick_for: PickFor::NewLine(part),
            });
        }
    };
    view! {
        <MadeOnce part=context.topping />
            {move || context.topping.get().map(|part| view! { <FoodRows part /> })}
            <div class="body">
                {move || error.get().map(|wording| view! { <p class="error" role="status">{wording}</p> })}
                <SyrupBoxes />
                <HandlingChoice />
            </div>
            <div class="body">
                <div class="buttons">
                    <Button label=tr!("Add to the syrup") class="bare" picture=Picture::Add on_tap=pick />
                </div>
                <Doubts />
            </div>
            <CurveCard />
    }
}
