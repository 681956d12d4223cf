//! When the bread is ready, with its range.

use leptos::prelude::*;

use super::results::Day;
use crate::app::state::memo;
use crate::text::day as day_text;

/// When the bread is ready, between when, and how that lies to a wished time.
#[component]
pub fn ReadyLine() -> impl IntoView {
    let day = Day::from_context();
    let wording = memo(move || {
        let options = day.state.options.get();
        let wording = day.read(|results| {
            day.zone
                .with_value(|zone| day_text::ready(results, zone, options))
        });
        wording.flatten()
    });
    move || wording.get().map(|wording| view! { <p>{wording}</p> })
}
