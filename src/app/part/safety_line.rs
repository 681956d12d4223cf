//! Safety line: the caution of a risky step in one line, which opens to the rest and the source.

use leptos::prelude::*;

use crate::app::state::{memo, use_app_state};
use crate::text::caution::{Hazard, safety, safety_line};
use crate::text::tr;

/// The caution of a step of the work.
#[component]
pub fn SafetyLine(
    /// The step.
    step: Hazard,
) -> impl IntoView {
    let state = use_app_state();
    let advice = memo(move || safety(step, state.options.get()));
    view! {
        <details class="safety">
            <summary>{move || safety_line(step, state.options.get())}</summary>
            <p>{move || advice.with(|advice| advice.means.to_string())}</p>
            <p>{move || advice.with(|advice| advice.to_do.to_string())}</p>
            <p class="quiet">{tr!("Source: ")}{move || advice.with(|advice| advice.source.to_string())}</p>
        </details>
    }
}
