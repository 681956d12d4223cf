//! The log: bakes that were made, newest first, each with its note.

use leptos::prelude::*;

use super::local_time::zone_at;
use super::log_files::LogFiles;
use super::photo_box::PhotoBox;
use super::photos;
use super::removed_bake::RemovedBake;
use super::results::Day;
use crate::app::part::{AnswerRow, Button};
use crate::app::state::memo;
use crate::results::day::as_expected;
use crate::sheet::day::Bake;
use crate::sheet::{Id, plain};
use crate::text::{day as day_text, format, tr};

/// So many bakes are shown at first, and so many more each time.
const MORE: usize = 40;

/// The bakes.
#[component]
pub fn LogCard() -> impl IntoView {
    let day = Day::from_context();
    let answer = memo(move || {
        let options = day.state.options.get();
        day.log.with(|log| {
            let last = log.bakes().last();
            let zone = last.map(|bake| zone_at(bake.baked().instant()));
            day_text::log_answer(log, &zone.unwrap_or_default(), options)
        })
    });
    view! {
        <AnswerRow title=tr!("Log") answer>
            <Content />
        </AnswerRow>
    }
}

#[component]
fn Content() -> impl IntoView {
    let day = Day::from_context();
    let ids = memo(move || {
        day.log.with(|log| {
            let bakes = log.bakes().iter().rev();
            bakes.map(|bake| bake.id.clone()).collect::<Vec<_>>()
        })
    });
    let none = memo(move || ids.with(Vec::is_empty));
    let shown = RwSignal::new(MORE);
    let more = memo(move || ids.with(Vec::len) > shown.get());
    let put_back = move |()| {
        if let Some(RemovedBake { mut bake, photo }) = day.removed.get_untracked() {
            bake.photo = photo.is_some_and(|photo| photos::save(&bake.id, &photo).is_ok());
            day.change_log(|log| log.put(bake));
            day.removed.set(None);
        }
    };
    view! {
            <Show when=move || none.get()>
                <p class="body quiet">{tr!("No bake yet. What you note at the bench is saved here.")}</p>
            </Show>
            <ul class="log">
                <For each=move || ids.with(|ids| ids.iter().take(shown.get()).cloned().collect::<Vec<_>>()) key=Clone::clone let(id)>
                    <LogRow id />
                </For>
            </ul>
            <Show when=move || more.get()>
                <div class="body buttons">
                    <Button label=tr!("Show older bakes") on_tap=move |()| shown.update(|shown| *shown = shown.saturating_add(MORE)) />
                </div>
            </Show>
            <Show when=move || day.removed.with(Option::is_some)>
                <div class="body buttons">
                    <Button label=tr!("Restore the removed bake") on_tap=put_back />
                </div>
            </Show>
            <LogFiles />
    }
}

/// One bake.
#[component]
fn LogRow(
    /// Which.
    id: Id,
) -> impl IntoView {
    let day = Day::from_context();
    let id = StoredValue::new(id);
    let select = move |select: &dyn Fn(&Bake) -> String| {
        day.log.with(|log| {
            let bake = id.with_value(|id| log.bake(id));
            bake.map(select).unwrap_or_default()
        })
    };
    let began = move || {
        select(&|bake| {
            let zone = zone_at(bake.baked().instant());
            day_text::baked_on(bake, day.minute.get(), &zone)
        })
    };
    let noted = move || {
        select(&|bake| {
            let options = day.state.options.get();
            let mut wording = vec![day_text::observations(&as_expected(bake), options)];
            wording.extend(day_text::weighed_otherwise(bake, options));
            wording.extend(day_text::findings(&bake.found, options));
            wording.join(" ")
        })
    };
    let change = move |change: &dyn Fn(&mut Bake)| {
        day.change_log(|log| {
            let bake = id.with_value(|id| log.bake(id).cloned());
            if let Some(mut bake) = bake {
                change(&mut bake);
                log.put(bake);
            }
        });
    };
    let note = move |text: String| {
        let text = plain::note(&text, Bake::NOTE_LENGTH);
        change(&|bake| bake.note.clone_from(&text));
    };
    let has = Callback::new(move |photo: bool| change(&|bake| bake.photo = photo));
    let alt = Signal::derive(move || {
        select(&|bake| {
            let at = bake.baked().instant();
            day_text::photo_of(&bake.name, &format::date(at, &zone_at(at)))
        })
    });
    // What is folded away is drawn when it is first unfolded: there may be very many bakes.
    let opened = RwSignal::new(false);
    let remove = move |()| {
        let id = id.get_value();
        let photo = photos::photo(&id);
        let mut removed = None;
        day.change_log(|log| removed = log.take(&id));
        photos::remove(&id);
        day.removed
            .set(removed.map(|bake| RemovedBake { bake, photo }));
    };
    let inside = move || {
        let box_id = id.with_value(|id| format!("note-{}", id.as_text()));
        view! {
            <p>{noted}</p>
            <label for=box_id.clone()>{tr!("Note")}</label>
            <textarea id=box_id prop:value=move || select(&|bake| bake.note.clone()) on:change:target=move |event| note(event.target().value())></textarea>
            <PhotoBox bake=id.get_value() alt has />
            <Button label=tr!("Remove from the log") class="danger" on_tap=remove />
        }
    };
    view! {
        <li>
            <details on:toggle=move |_| opened.set(true)>
                <summary>
                    <span class="name">{move || select(&|bake| bake.name.clone())}</span>
                    <span class="quiet">{began}</span>
                </summary>
                {move || opened.get().then(inside)}
            </details>
        </li>
    }
}
