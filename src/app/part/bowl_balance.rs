//! Bowl balance: one bar for each who brings heat or takes it.

use leptos::prelude::*;

use crate::app::part::part_word;
use crate::text::chart::BalanceBar;

/// The balance of the bowl, with its text twin.
#[component]
pub fn BowlBalance(
    /// The bars.
    #[prop(into)]
    bars: Signal<Vec<BalanceBar>>,
    /// The text alternative.
    #[prop(into)]
    description: Signal<String>,
) -> impl IntoView {
    view! {
        <div class="balance follows" role="img" aria-label=move || description.get()>
            {move || bars.get().into_iter().map(bar).collect_view()}
        </div>
    }
}

fn bar(bar: BalanceBar) -> impl IntoView {
    let part = bar.part.map(part_word);
    view! {
        <div class="bar" data-part=part class:brings=bar.brings>
            <span class="name">{bar.name}</span>
            <span class="at">{bar.at}</span>
            <span class="heat">{bar.heat}</span>
            <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
                <rect x=bar.x y="0" width=bar.width height="4" />
                <line x1="50" x2="50" y1="0" y2="4" />
            </svg>
        </div>
    }
}
