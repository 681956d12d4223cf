//! Advice card: what something means, what to do about it, and the source.

use std::borrow::Cow;

use leptos::prelude::*;

use super::Button;
use crate::app::state::{DialogKind, memo, use_app_state};
use crate::engine::working::WorkingLine;
use crate::text::{Advice, tr};

/// What something means and what to do about it; nothing where there is no advice.
#[component]
pub fn AdviceCard(
    /// What it is about.
    #[prop(into)]
    title: Signal<String>,
    /// The advice.
    #[prop(into)]
    advice: Signal<Option<Advice>>,
    /// The working of its figures, if it can be opened.
    #[prop(optional, into)]
    working: Option<Callback<(), Vec<WorkingLine>>>,
) -> impl IntoView {
    let state = use_app_state();
    let open = move |working: Callback<(), Vec<WorkingLine>>| {
        state.open(DialogKind::Working {
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
    let is_there = memo(move || advice.with(Option::is_some));
    // Each text is updated by itself, so that a change of its figure does not draw the card again.
    let text = move |select: fn(&Advice) -> &Cow<'static, str>| {
        move || {
            advice.with(|advice| {
                let wording = advice.as_ref().map(select);
                wording.map(ToString::to_string).unwrap_or_default()
            })
        }
    };
    view! {
        <Show when=move || is_there.get()>
            <section class="advice follows" aria-label=title>
                <h2>{title}</h2>
                <p>{text(|advice| &advice.means)}</p>
                <p>{text(|advice| &advice.to_do)}</p>
                <p class="quiet">{tr!("Source: ")}{text(|advice| &advice.source)}</p>
                {working.map(|working| view! { <Button label=tr!("How this is worked out") class="bare" on_tap=move |()| open(working) /> })}
            </section>
        </Show>
    }
}
