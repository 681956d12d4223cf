//! What weighing changes in all: the dough, and its true water.

use leptos::prelude::*;

use crate::app::page::BatchContext;
use crate::app::part::{Figure, Shown};
use crate::app::state::{memo, use_app_state};
use crate::engine::batch::Rounded;
use crate::text::{FormatOptions, tr, weighing};

/// What weighing changes in all.
#[component]
pub fn ChangeFigures() -> impl IntoView {
    view! {
        <div class="figures">
            <RoundedFigure label=tr!("Dough as weighed") select=|rounded, options| Some(weighing::dough_change(rounded, options)) />
            <RoundedFigure label=tr!("True hydration as weighed, less the steam") select=weighing::water_change />
        </div>
    }
}

#[component]
fn RoundedFigure(
    /// Its name.
    label: &'static str,
    /// The figure, written out.
    select: fn(&Rounded, FormatOptions) -> Option<String>,
) -> impl IntoView {
    let state = use_app_state();
    let context = BatchContext::from_context();
    let shown = memo(move || {
        let options = state.options.get();
        let value = context.read_rounded(|rounded| select(rounded, options));
        Shown {
            value: value.unwrap_or_else(|| tr!("none without flour").to_owned()),
            was: None,
        }
    });
    let working = move |()| {
        let lines = untrack(|| context.read_rounded(|rounded| Some(rounded.working())));
        lines.unwrap_or_default()
    };
    view! { <Figure label shown working=Callback::new(working) /> }
}
