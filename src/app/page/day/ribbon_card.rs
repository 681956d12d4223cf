//! The ribbon of two days, what is in the way, and what solves it.

use leptos::prelude::*;

use super::conflicts::InTheWay;
use super::results::Day;
use crate::app::browser::file;
use crate::app::part::{Button, DayRibbonPicture};
use crate::app::state::memo;
use crate::sheet::civil;
use crate::storage::calendar::{self, Event};
use crate::text::{chart, day as told, name, tr};

/// The ribbon.
#[component]
pub fn RibbonCard() -> impl IntoView {
    let day = Day::here();
    let formula = move || day.state.with(|sheet| sheet.formula.clone());
    let drawing = memo(move || {
        let now = day.minute.get();
        let formula = formula();
        day.read(|planned| {
            let (plan, solved) = (&planned.plan, &planned.solved);
            day.zone.with_value(|zone| {
                let asleep = day.settings.with(|settings| settings.sleep).map(|sleep| {
                    civil::nights(zone, (sleep.from, sleep.until), solved.begins, solved.table)
                });
                let asleep = asleep.unwrap_or_default();
                chart::DayRibbon::of(plan, solved, &formula, &asleep, now, zone)
            })
        })
    });
    let said = memo(move || {
        let options = day.state.options.get();
        let said = day.read(|planned| {
            day.zone
                .with_value(|zone| chart::day_ribbon(&planned.plan, &planned.solved, zone, options))
        });
        said.unwrap_or_default()
    });
    view! {
        <section class="card" aria-label=tr!("Two days")>
            <header>
                <h2>{tr!("Two days")}</h2>
            </header>
            <div class="body follows">
                {move || drawing.get().map(|drawing| view! { <DayRibbonPicture drawing told=said /> })}
                <p role="status">{said}</p>
                <InTheWay />
            </div>
            <div class="body buttons">
                <Button says=tr!("Save as a calendar file") tapped=move |()| hand_out(day) />
            </div>
        </section>
    }
}

/// Saves the plan as a calendar file.
fn hand_out(day: Day) {
    let formula = day.state.sheet().formula;
    let id = day.formula_id();
    let id = id.as_ref().map_or("visit", |id| id.as_text());
    let events = untrack(|| {
        day.read(|planned| {
            let steps = planned.plan.steps().iter().zip(&planned.solved.steps);
            let events = steps.enumerate().map(|(place, (step, timed))| Event {
                uid: format!("{id}-{place}-{}@softcrumb", timed.begins.seconds()),
                begins: timed.begins,
                ends: timed.ends,
                summary: name::step(step, &formula),
                description: told::looks(step.at.work).to_owned(),
                announced: timed.hands_until > timed.begins,
            });
            events.collect::<Vec<_>>()
        })
    });
    let text = calendar::write(
        &events.unwrap_or_default(),
        day.now.get_untracked().instant(),
    );
    // A browser that refuses says so itself.
    let _saved = file::save("softcrumb-day.ics", "text/calendar", &text);
}
