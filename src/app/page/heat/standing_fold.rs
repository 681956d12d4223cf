//! Standing out in the morning: how long each cold part takes, after the frame.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::page::Day;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::formula::Formula;
use crate::results::heat::warming;
use crate::sheet::Kitchen;
use crate::text::heat;

/// How long each paste and preferment takes to warm in this room.
#[component]
pub fn StandingTimes() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let day = Day::from_context();
    let asked: Memo<Option<(Formula, Kitchen)>> = memo(move || {
        let taught = day.with_input(&state.current(), |input| input.taught_kitchen());
        Some((context.scaled.get(), taught))
    });
    let found = after_frame(asked, |(formula, kitchen)| warming(formula, kitchen).ok());
    let wording = memo(move || {
        let options = state.options.get();
        found.with(|found| {
            let all = found.iter().flatten();
            let named = |part: usize| {
                context.scaled.with(|scaled| {
                    scaled
                        .parts
                        .get(part)
                        .map(|own| own.name.clone())
                        .unwrap_or_default()
                })
            };
            all.map(|one| heat::warming(one, &named(one.part), options))
                .collect::<Vec<_>>()
        })
    });
    let long = memo(move || found.with(|found| found.as_deref().and_then(heat::standing_long)));
    view! {
        <div class="body follows">
            <ul class="ways-list">
                {move || wording.get().into_iter().map(|wording| view! { <li>{wording}</li> }).collect_view()}
            </ul>
            {move || long.get().map(|wording| view! { <p class="caution">{wording}</p> })}
        </div>
    }
}
