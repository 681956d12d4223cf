//! The steps of a visit as the bench has them, with their temperatures and times, and the teacher's
//! note.

use leptos::prelude::*;

use super::cards::StepList;
use crate::app::browser::clock;
use crate::app::part::SafetyLine;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::results::batch;
use crate::results::day::{ListedStep, usual_list};
use crate::sheet::{Kitchen, Sheet};
use crate::text::share::{CardStep, card_steps};
use crate::text::{day as day_text, format, tr};

/// The steps of the bench for the sheet that is shown: they come a frame later.
fn usual_steps() -> RwSignal<Option<Vec<ListedStep>>> {
    let state = use_app_state();
    let asked = memo(move || Some(((*state.current()).clone(), state.kitchen.get())));
    after_frame(asked, |(sheet, kitchen): &(Sheet, Kitchen)| {
        let made = batch::of(sheet, kitchen.scales);
        Some(usual_list(sheet, kitchen, made.rounded.as_ref()))
    })
}

/// What to do, step by step; the weights then know it too.
#[component]
pub fn VisitSteps(
    /// Where the steps are told.
    list: StepList,
) -> impl IntoView {
    let state = use_app_state();
    let found = usual_steps();
    // The weights follow them in a task of their own.
    Effect::new(move |_| {
        let found = found.get();
        clock::after_frame(move || {
            let _gone = list.try_set(found);
        });
    });
    let rows = memo(move || {
        let options = state.options.get();
        let list = list.get().unwrap_or_default();
        state.with(|sheet| card_steps(&list, &sheet.formula, None, options))
    });
    let running = |(name, says): (String, String)| {
        view! { <p class="runs"><b>{name}</b>": " {says}</p> }
    };
    let one = move |step: CardStep| {
        view! {
            <li>
                <b>{step.name}</b>": " {step.says}
                {step.runs.into_iter().map(running).collect_view()}
                {step.hazard.map(|step| view! { <SafetyLine step /> })}
            </li>
        }
    };
    let kitchen = memo(move || {
        let options = state.options.get();
        let room = state.kitchen.with(|kitchen| kitchen.room);
        tr!(
            "Times are the likely ones in a room of {room}; go by how the dough looks.",
            room = format::temperature(room, options)
        )
    });
    let note = memo(move || state.with(|sheet| sheet.note.clone()));
    view! {
        <Show when=move || note.with(|note| !note.is_empty())>
            <section class="card" aria-label=tr!("Note")>
                <header>
                    <h2>{tr!("Note")}</h2>
                </header>
                <div class="body">
                    <p class="note">{note}</p>
                </div>
            </section>
        </Show>
        <section class="card" aria-label=tr!("What to do")>
            <header>
                <h2>{tr!("What to do")}</h2>
            </header>
            <div class="body what-to-do">
                <p class="quiet">{kitchen}</p>
                <p class="quiet">{day_text::numbered_steps()}</p>
                <ol>{move || rows.get().into_iter().map(one).collect_view()}</ol>
            </div>
        </section>
    }
}
