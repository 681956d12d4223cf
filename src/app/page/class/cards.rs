//! All cards of the lower half, where there is a batch to speak of.

use leptos::prelude::*;

use super::allergen_card::AllergenCard;
use super::class_card::ClassCard;
use super::nutrition_card::NutritionCard;
use super::shopping_card::ShoppingCard;
use super::tin_card::TinCard;
use crate::app::page::BatchAnswers;
use crate::app::state::memo;

/// Tins, labels, shopping and the class.
#[component]
pub fn ClassCards() -> impl IntoView {
    let answers = BatchAnswers::here();
    let current = memo(move || answers.is_scaled());
    view! {
        <Show when=move || current.get()>
            <div class="newspaper">
                <TinCard />
                <ShoppingCard />
                <NutritionCard />
                <AllergenCard />
                <ClassCard />
            </div>
        </Show>
    }
}
