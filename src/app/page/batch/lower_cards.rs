//! The lower half of Batch: tins, shopping, labels, the class.

use leptos::prelude::*;

use super::BatchContext;
use super::allergens::AllergenCard;
use super::class::ClassCard;
use super::nutrition::NutritionCard;
use super::shopping::ShoppingCard;
use super::tins::TinCard;
use crate::app::state::memo;

/// The rows of the lower half, where there is a batch.
#[component]
pub fn LowerCards() -> impl IntoView {
    let context = BatchContext::from_context();
    let current = memo(move || context.is_scaled());
    view! {
        <Show when=move || current.get()>
            <TinCard />
            <ShoppingCard />
            <NutritionCard />
            <AllergenCard />
            <ClassCard />
        </Show>
    }
}
