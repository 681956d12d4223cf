//! Advice card: what something means, what to do about it, who says so.

use leptos::prelude::*;

use super::Button;
use crate::app::state::{Opened, State};
use crate::engine::working::Line;
use crate::words::Advice;

/// What something means and what to do about it; nothing where there is no advice.
#[component]
pub fn AdviceCard(
    /// What it is about.
    #[prop(into)]
    title: Signal<String>,
    /// What it says.
    #[prop(into)]
    advice: Signal<Option<Advice>>,
    /// How its figures came about, where they can be opened.
    #[prop(optional, into)]
    working: Option<Callback<(), Vec<Line>>>,
) -> impl IntoView {
    let state = State::here();
    let open = move |working: Callback<(), Vec<Line>>| {
        state.open(Opened::Working {
            title: title.get_untracked(),
            value: advice.with_untracked(|advice| {
                advice
                    .as_ref()
                    .map(|advice| advice.means.to_string())
                    .unwrap_or_default()
            }),
            lines: working.run(()),
        });
    };
    move || {
        advice.get().map(|advice| {
            view! {
                <section class="advice follows" aria-label=title>
                    <h2>{title}</h2>
                    <p>{advice.means}</p>
                    <p>{advice.to_do}</p>
                    <p class="quiet">"Source: "{advice.source}</p>
                    {working.map(|working| view! { <Button says="How this came about" class="bare" tapped=move |()| open(working) /> })}
                </section>
            }
        })
    }
}
