//! All remedies for the dough with its liquid as it is, each with what it reaches.

use leptos::prelude::*;

use super::HeatContext;
use crate::app::part::WorkingButton;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::working::WorkingLine;
use crate::results::heat::{DoughQuestion, simplest_first};
use crate::text::{heat, tr};

/// The remedies with the liquid as it is: computed after the frame.
#[component]
pub fn Ways() -> impl IntoView {
    let state = use_app_state();
    let context = HeatContext::from_context();
    let question = memo(move || {
        let wanted = context.settings.with(|settings| settings.dough);
        context.read_mixing(|mixing| {
            state
                .kitchen
                .with(|kitchen| DoughQuestion::as_it_is(&mixing.load, wanted, kitchen))
        })
    });
    let found = after_frame(question, DoughQuestion::remedies);
    let remedies = memo(move || {
        let options = state.options.get();
        let standing = context
            .read_mixing(|mixing| heat::standing_names(&mixing.load))
            .flatten()
            .unwrap_or_default();
        let wanted = context.settings.with(|settings| settings.dough);
        found.with(|found| {
            let remedies = simplest_first(found.clone().unwrap_or_default(), wanted);
            let remedies = remedies.iter();
            remedies
                .map(|remedy| {
                    let ice = question.with(|question| {
                        let asked = question.as_ref();
                        asked.map(|question| question.ice_working(remedy))
                    });
                    let wording = heat::remedy(remedy, &standing, options);
                    (wording, ice.unwrap_or_default())
                })
                .collect::<Vec<_>>()
        })
    });
    let is_there = memo(move || remedies.with(|remedies| !remedies.is_empty()));
    view! {
        <Show when=move || is_there.get()>
            <ul class="ways-list follows">
                {move || remedies.get().into_iter().map(way).collect_view()}
            </ul>
        </Show>
    }
}

/// One of the remedies; that of ice opens how much came about.
fn way((wording, ice): (String, Vec<WorkingLine>)) -> impl IntoView {
    let shown = wording.clone();
    let has_working = !ice.is_empty();
    let worked = Callback::new(move |()| (shown.clone(), ice.clone()));
    view! {
        <li>
            {wording}
            {has_working.then(|| view! { <WorkingButton title=tr!("Ice in the dough") worked /> })}
        </li>
    }
}
