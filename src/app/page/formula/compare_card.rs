//! The card that offers to compare the formula with another one.

use leptos::prelude::*;

use crate::app::lazy;
use crate::app::part::{AnswerRow, Button};
use crate::text::tr;

/// This formula beside another one of the shelf, once that is asked for.
#[component]
pub fn CompareCard() -> impl IntoView {
    let asked = RwSignal::new(false);
    let ask = move |()| asked.set(true);
    view! {
        <AnswerRow title=tr!("Side by side") answer=tr!("with another formula from the shelf")>
            <div class="body">
                <Show when=move || asked.get() fallback=move || view! { <Button label=tr!("Compare with another formula") on_tap=ask /> }>
                    {lazy::compare()}
                </Show>
            </div>
        </AnswerRow>
    }
}
