//! The syrup: its ingredients, and the figures that can be set in their place.

use leptos::prelude::*;

use super::ChocolateAnswers;
use super::food_row::FoodRows;
use super::syrup_boxes::SyrupBoxes;
use super::thickness::HandlingChoice;
use crate::app::part::{Button, Picture};
use crate::app::state::{Opened, PickFor, State, memo};
use crate::words::{Trouble, say};

/// The syrup of the formula.
#[component]
pub fn SyrupCard() -> impl IntoView {
    let state = State::here();
    let answers = ChocolateAnswers::here();
    let name = memo(move || {
        state
            .with(|sheet| {
                Some(
                    sheet
                        .formula
                        .streams
                        .get(answers.topping.get()?)?
                        .name
                        .clone(),
                )
            })
            .unwrap_or_default()
    });
    let trouble = memo(move || {
        let manner = state.manner.get();
        answers.syrup.with(|syrup| match syrup {
            Some(Err(error)) => Some(error.sentence(manner)),
            Some(Ok(_)) | None => None,
        })
    });
    let pick = move |()| {
        if let Some(stream) = answers.topping.get_untracked() {
            state.open(Opened::Pick {
                title: say!("Add to the syrup").to_owned(),
                pick_for: PickFor::NewLine(stream),
            });
        }
    };
    view! {
        <section class="card" data-stream="topping" aria-label=say!("Syrup for the top")>
            <header>
                <h2>{say!("Syrup for the top")}</h2>
                <span class="quiet">{name}</span>
            </header>
            {move || answers.topping.get().map(|stream| view! { <FoodRows stream /> })}
            <div class="body">
                {move || trouble.get().map(|said| view! { <p class="trouble" role="status">{said}</p> })}
                <SyrupBoxes />
                <HandlingChoice />
            </div>
            <footer>
                <Button says=say!("Add to the syrup") class="bare" picture=Picture::Add tapped=pick />
            </footer>
        </section>
    }
}
