//! The syrup: its ingredients, and the figures that can be set in their place.

use leptos::prelude::*;

use super::ChocolateContext;
use super::food_row::FoodRows;
use super::syrup_boxes::SyrupBoxes;
use super::thickness::HandlingChoice;
use crate::app::part::{Button, Picture};
use crate::app::state::{DialogKind, PickFor, memo, use_app_state};
use crate::text::{ErrorText, tr};

/// The syrup of the formula.
#[component]
pub fn SyrupCard() -> impl IntoView {
    let state = use_app_state();
    let context = ChocolateContext::from_context();
    let name = memo(move || {
        state
            .with(|sheet| {
                Some(
                    sheet
                        .formula
                        .parts
                        .get(context.topping.get()?)?
                        .name
                        .clone(),
                )
            })
            .unwrap_or_default()
    });
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
        <section class="card" data-part="topping" aria-label=tr!("Syrup for the top")>
            <header>
                <h2>{tr!("Syrup for the top")}</h2>
                <span class="quiet">{name}</span>
            </header>
            {move || context.topping.get().map(|part| view! { <FoodRows part /> })}
            <div class="body">
                {move || error.get().map(|wording| view! { <p class="error" role="status">{wording}</p> })}
                <SyrupBoxes />
                <HandlingChoice />
            </div>
            <footer>
                <Button label=tr!("Add to the syrup") class="bare" picture=Picture::Add on_tap=pick />
            </footer>
        </section>
    }
}
