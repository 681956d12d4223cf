//! Standing out in the morning: how long each cold part takes, in a fold, after the frame.

use leptos::prelude::*;

use super::HeatAnswers;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::formula::Formula;
use crate::results::heat::warming;
use crate::sheet::Kitchen;
use crate::text::{heat, tr};

/// How long each paste and preferment takes to warm in this room.
#[component]
pub fn StandingFold() -> impl IntoView {
    let state = use_app_state();
    let answers = HeatAnswers::here();
    let asked: Memo<Option<(Formula, Kitchen)>> =
        memo(move || Some((answers.made.get(), state.kitchen.get())));
    let found = after_frame(asked, |(formula, kitchen)| warming(formula, kitchen).ok());
    let said = memo(move || {
        let options = state.options.get();
        found.with(|found| {
            let all = found.iter().flatten();
            let named = |part: usize| {
                answers.made.with(|made| {
                    made.parts
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
    let any = memo(move || said.with(|said| !said.is_empty()));
    view! {
        <Show when=move || any.get()>
            <details class="fold within">
                <summary>
                    <span class="title">{tr!("How long to stand out")}</span>
                    <span class="quiet">{tr!("each in one ball, out of the fridge")}</span>
                </summary>
                <div class="body follows">
                    <ul class="ways-list">
                        {move || said.get().into_iter().map(|said| view! { <li>{said}</li> }).collect_view()}
                    </ul>
                    {move || long.get().map(|said| view! { <p class="caution">{said}</p> })}
                </div>
            </details>
        </Show>
    }
}
