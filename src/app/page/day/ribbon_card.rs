//! The ribbon of two days, the plan's conflicts, and its calendar file.

use leptos::prelude::*;

use super::conflicts::Conflicts;
use super::paste_conflicts::PasteConflicts;
use super::ready_line::ReadyLine;
use super::results::Day;
use crate::app::browser::file;
use crate::app::part::{Button, DayRibbonPicture};
use crate::app::state::memo;
use crate::storage::calendar;
use crate::text::{chart, day as day_text, tr};

/// The ribbon.
#[component]
pub fn RibbonCard() -> impl IntoView {
    let day = Day::from_context();
    let formula = move || day.state.with(|sheet| sheet.formula.clone());
    let drawing = memo(move || {
        let now = day.minute.get();
        let formula = formula();
        day.read(|results| {
            day.zone
                .with_value(|zone| chart::DayRibbon::of(results, &formula, now, zone))
        })
    });
    let wording = memo(move || {
        let options = day.state.options.get();
        let wording = day.read(|results| {
            day.zone
                .with_value(|zone| chart::day_ribbon(results, zone, options))
        });
        wording.unwrap_or_default()
    });
    view! {
        <section class="card" aria-label=tr!("Two days")>
            <header>
                <h2>{tr!("Two days")}</h2>
            </header>
            <div class="body follows">
                {move || drawing.get().map(|drawing| view! { <DayRibbonPicture drawing description=wording /> })}
                <p role="status">{wording}</p>
                <ReadyLine />
                <Conflicts />
                <PasteConflicts />
            </div>
            <div class="body buttons">
                <Button label=tr!("Save as a calendar file") on_tap=move |()| hand_out(day) />
            </div>
        </section>
    }
}

/// Saves the plan as a calendar file.
fn hand_out(day: Day) {
    let formula = day.state.sheet().formula;
    let id = day.formula_id();
    let id = id.as_ref().map_or("visit", |id| id.as_text());
    let options = day.state.options.get_untracked();
    let events = untrack(|| {
        day.read(|results| {
            day.zone
                .with_value(|zone| day_text::calendar_events(results, &formula, id, zone, options))
        })
    });
    let text = calendar::write(
        &events.unwrap_or_default(),
        day.now.get_untracked().instant(),
    );
    // The browser reports its own refusal.
    let _saved = file::save("softcrumb-day.ics", "text/calendar", &text);
}
