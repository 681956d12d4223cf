//! The log: bakes that were made, newest first, each with its note.

use leptos::prelude::*;

use super::answers::Day;
use crate::app::browser::file;
use crate::app::part::Button;
use crate::app::state::memo;
use crate::sheet::day::Bake;
use crate::sheet::record::write_log;
use crate::sheet::{Id, csv, plain};
use crate::words::{day as told, say, write};

/// The bakes.
#[component]
pub fn LogCard() -> impl IntoView {
    let day = Day::here();
    let ids = memo(move || {
        day.log.with(|log| {
            let bakes = log.bakes().iter().rev();
            bakes.map(|bake| bake.id.clone()).collect::<Vec<_>>()
        })
    });
    let none = memo(move || ids.with(Vec::is_empty));
    let table = move |()| {
        let text = day
            .zone
            .with_value(|zone| day.log.with_untracked(|log| csv::write(log, zone)));
        let _saved = file::save("softcrumb-log.csv", "text/csv", &text);
    };
    let whole = move |()| {
        let text = day.log.with_untracked(write_log);
        let _saved = file::save("softcrumb-log.json", "application/json", &text);
    };
    let put_back = move |()| {
        if let Some(bake) = day.taken.get_untracked() {
            day.change_log(|log| log.put(bake));
            day.taken.set(None);
        }
    };
    view! {
        <section class="card" aria-label=say!("Log")>
            <header>
                <h2>{say!("Log")}</h2>
            </header>
            <Show when=move || none.get()>
                <p class="body quiet">{say!("No bake yet. Start at the bench, and what you note there is kept here.")}</p>
            </Show>
            <ul class="log">
                <For each=move || ids.get() key=Clone::clone let(id)>
                    <LogRow id />
                </For>
            </ul>
            <Show when=move || day.taken.with(Option::is_some)>
                <div class="body buttons">
                    <Button says=say!("Put the bake back that was taken out") tapped=put_back />
                </div>
            </Show>
            <Show when=move || !none.get()>
                <div class="body buttons">
                    <Button says=say!("Save as a table") tapped=table />
                    <Button says=say!("Save the log to a file") tapped=whole />
                </div>
            </Show>
        </section>
    }
}

/// One bake.
#[component]
fn LogRow(
    /// Which.
    id: Id,
) -> impl IntoView {
    let day = Day::here();
    let id = StoredValue::new(id);
    let look = move |look: &dyn Fn(&Bake) -> String| {
        day.log.with(|log| {
            let bake = log
                .bakes()
                .iter()
                .find(|bake| id.with_value(|id| bake.id == *id));
            bake.map(look).unwrap_or_default()
        })
    };
    let began = move || {
        look(&|bake| {
            day.zone
                .with_value(|zone| write::date(bake.began.instant(), zone))
        })
    };
    let noted = move || look(&|bake| told::noted(&bake.noted, day.state.manner.get()));
    let note = move |text: String| {
        let text = plain::note(&text, Bake::NOTE_LENGTH);
        day.change_log(|log| {
            let bake = log
                .bakes()
                .iter()
                .find(|bake| id.with_value(|id| bake.id == *id));
            if let Some(mut bake) = bake.cloned() {
                bake.note = text;
                log.put(bake);
            }
        });
    };
    let remove = move |()| {
        let mut taken = None;
        day.change_log(|log| taken = id.with_value(|id| log.take(id)));
        day.taken.set(taken);
    };
    let box_id = id.with_value(|id| format!("note-{}", id.as_text()));
    view! {
        <li>
            <details>
                <summary>
                    <span class="name">{move || look(&|bake| bake.name.clone())}</span>
                    <span class="quiet">{began}</span>
                </summary>
                <p>{noted}</p>
                <label for=box_id.clone()>{say!("Note")}</label>
                <textarea id=box_id prop:value=move || look(&|bake| bake.note.clone()) on:change:target=move |event| note(event.target().value())></textarea>
                <Button says=say!("Take it out of the log") class="risky" tapped=remove />
            </details>
        </li>
    }
}
