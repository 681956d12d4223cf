//! The syrup: its ingredients, and the figures that can be set in their place.

use leptos::prelude::*;

use super::ChocolateAnswers;
use super::food_row::FoodRows;
use super::syrup_boxes::SyrupBoxes;
use super::thickness::HandlingChoice;
use crate::app::part::{Button, Picture};
use crate::app::state::{DialogKind, State, memo};
use crate::engine::formula::Line;
use crate::engine::ingredients::Food;
use crate::engine::quantity::Mass;
use crate::text::{Trouble, tr};

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
                        .parts
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
        state.open(DialogKind::Pick {
            title: tr!("Add to the syrup").to_owned(),
            picked: Callback::new(move |food| add(state, answers.topping.get_untracked(), food)),
        });
    };
    view! {
        <section class="card" data-part="topping" aria-label=tr!("Syrup for the top")>
            <header>
                <h2>{tr!("Syrup for the top")}</h2>
                <span class="quiet">{name}</span>
            </header>
            {move || answers.topping.get().map(|part| view! { <FoodRows part /> })}
            <div class="body">
                {move || trouble.get().map(|said| view! { <p class="trouble" role="status">{said}</p> })}
                <SyrupBoxes />
                <HandlingChoice />
            </div>
            <footer>
                <Button says=tr!("Add to the syrup") class="bare" picture=Picture::Add tapped=pick />
            </footer>
        </section>
    }
}

/// Puts an ingredient into the syrup, its weight still open.
fn add(state: State, part: Option<usize>, food: Food) {
    state.edit(|sheet| {
        if sheet.formula.has_room()
            && let Some(own) = part.and_then(|part| sheet.formula.parts.get_mut(part))
        {
            own.lines.push(Line::new(food, Mass::ZERO));
        }
    });
}
