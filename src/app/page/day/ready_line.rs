//! When the bread is ready to cut, with its range, and what stands against it.

use leptos::prelude::*;

use super::results::Day;
use crate::app::state::memo;
use crate::text::day as day_text;

/// When the bread is ready, between when, and how that lies to a wished time; a bake that may reach
/// into the night.
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
    let caution = memo(move || {
        let caution = day.read(|results| {
            let night = results.bedtime.as_ref()?;
            Some(day.zone.with_value(|zone| day_text::bedtime(night, zone)))
        });
        caution.flatten()
    });
    view! {
        {move || wording.get().map(|wording| view! { <p role="status"><strong>{wording}</strong></p> })}
        {move || caution.get().map(|wording| view! { <p class="caution">{wording}</p> })}
    }
}
