//! All other figures of the dough, each with what a trial changes.

use crate::text::tr;
use leptos::prelude::*;

use crate::app::part::{Card, MassFigure, ShareFigure};
use crate::engine::formula::Figure;

/// All other figures of the dough.
#[component]
pub fn FiguresCard() -> impl IntoView {
    view! {
        <Card title=tr!("Of all flour") aside=tr!("tap a figure for its working")>
            <div class="body">
                <div class="figures">
                    <MassFigure figure=Figure::Flour />
                    {Figure::MORE_SHARES.map(|figure| view! { <ShareFigure figure /> }).into_iter().collect_view()}
                </div>
            </div>
        </Card>
    }
}
