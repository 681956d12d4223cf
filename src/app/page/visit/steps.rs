//! The steps of a visit with their temperatures and times, and the teacher's note.

use leptos::prelude::*;

use crate::app::part::SafetyLine;
use crate::app::state::{after_frame, memo, use_app_state};
use crate::engine::formula::PartKind;
use crate::engine::learn::Learnt;
use crate::results::day::usual_run;
use crate::results::run::Run;
use crate::sheet::day::DaySettings;
use crate::sheet::{Kitchen, Sheet};
use crate::text::caution::Hazard;
use crate::text::share::{hazards_of, run_steps, work};
use crate::text::{format, tr};

/// What to do, part by part: the temperatures and times come a frame later.
#[component]
pub fn StepsCard() -> impl IntoView {
    let state = use_app_state();
    let asked = memo(move || Some(((*state.current()).clone(), state.kitchen.get())));
    let run = after_frame(asked, |(sheet, kitchen): &(Sheet, Kitchen)| {
        Some(usual_run(
            sheet,
            kitchen,
            (&DaySettings::default(), &Learnt::default()),
        ))
    });
    let rows = memo(move || {
        let options = state.options.get();
        state.with(|sheet| {
            let said = run.with(|run| {
                let run: Option<&Run> = run.as_ref();
                run.map(|run| run_steps(sheet, run, options))
                    .unwrap_or_default()
            });
            let parts = sheet.formula.parts.iter().zip(work(sheet)).enumerate();
            parts
                .map(|(at, (part, mut steps))| {
                    steps.extend(said.get(at).cloned().unwrap_or_default());
                    (part.name.clone(), part.kind, steps)
                })
                .collect::<Vec<_>>()
        })
    });
    let line = |step: Hazard| view! { <SafetyLine step /> };
    let part = move |(name, kind, steps): (String, PartKind, Vec<String>)| {
        let steps = steps.into_iter().map(|step| view! { <li>{step}</li> });
        view! {
            <h3>{name}</h3>
            <ol>{steps.collect_view()}</ol>
            {hazards_of(kind).iter().copied().map(line).collect_view()}
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
                {move || rows.get().into_iter().map(part).collect_view()}
            </div>
        </section>
    }
}
