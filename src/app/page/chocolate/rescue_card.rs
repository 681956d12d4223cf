//! Rescue: asks what is seen of a syrup that does not run, and answers what helps.

use leptos::prelude::*;

use super::ChocolateContext;
use crate::app::page::BatchContext;
use crate::app::part::{AdviceCard, AnswerRow, PickOne};
use crate::app::state::{memo, use_app_state};
use crate::engine::chocolate::SyrupLook;
use crate::results::chocolate::{Rescue, rescue};
use crate::text::{chocolate_rescue as words, tr};

/// It is thick, or lumpy, now.
#[component]
pub fn RescueCard() -> impl IntoView {
    let answer = tr!("Say what you see, read what helps").to_owned();
    view! {
        <AnswerRow title=tr!("It is thick or lumpy now") answer>
            <Content />
        </AnswerRow>
    }
}

/// What is seen, and what helps.
#[component]
fn Content() -> impl IntoView {
    let state = use_app_state();
    let (context, batch) = (
        ChocolateContext::from_context(),
        BatchContext::from_context(),
    );
    let seen = RwSignal::new(None::<SyrupLook>);
    let choices = Signal::derive(move || {
        let named = |look: SyrupLook| (Some(look), words::look(look).to_owned());
        let ask = (None, tr!("What do you see?").to_owned());
        std::iter::once(ask)
            .chain(SyrupLook::ALL.map(named))
            .collect::<Vec<_>>()
    });
    let found = memo(move || {
        let (look, sheet) = (seen.get()?, state.current());
        batch
            .results
            .with(|batch| context.now.with(|now| rescue(&sheet, batch, now, look)))
    });
    let advice = memo(move || {
        let options = state.options.get();
        found.with(|found| found.as_ref().map(|found| words::advice(found, options)))
    });
    let nothing = memo(move || seen.get().is_some() && found.with(Option::is_none));
    let working = move |()| {
        found.with_untracked(|found| found.as_ref().map(Rescue::working).unwrap_or_default())
    };
    view! {
            <div class="body">
                <PickOne id="syrup-look" label=tr!("The syrup") choices selected=seen on_select=Callback::new(move |look| seen.set(look)) />
                <Show when=move || nothing.get()>
                    <p>{tr!("No water thins this one so far: begin again with fresh chocolate.")}</p>
                </Show>
                <AdviceCard title=tr!("What helps") advice working=Callback::new(working) />
            </div>
    }
}
