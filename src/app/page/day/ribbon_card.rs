//! The ribbon of two days, when the bread is ready, and the way to the bench.

use leptos::prelude::*;

use super::bench_start::BenchStart;
use super::ready_line::ReadyLine;
use super::results::Day;
use crate::app::part::DayRibbonPicture;
use crate::app::state::memo;
use crate::text::{chart, day as day_text, tr};

/// The ribbon.
#[component]
pub fn RibbonCard() -> impl IntoView {
    let day = Day::from_context();
    let title = memo(move || {
        let title = day.read(|results| {
            day.zone
                .with_value(|zone| day_text::days_title(results, zone))
        });
        title.unwrap_or_else(|| tr!("Two days"))
    });
    view! {
        <section class="card" aria-label=title>
            <header>
                <h2>{title}</h2>
            </header>
            <div class="body follows">
                <ReadyLine />
                <Ribbon />
            </div>
            <div class="body buttons">
                <BenchStart />
            </div>
        </section>
    }
}

/// The picture, drawn in the frame after a change.
#[component]
fn Ribbon() -> impl IntoView {
    let day = Day::from_context();
    let drawing = RwSignal::new(None);
    Effect::new(move |_| {
        day.results.track();
        let now = day.minute.get();
        request_animation_frame(move || {
            request_animation_frame(move || {
                let formula = day.state.sheet().formula;
                let drawn = untrack(|| {
                    day.read(|results| {
                        day.zone
                            .with_value(|zone| chart::DayRibbon::of(results, &formula, now, zone))
                    })
                });
                // The place may have been left meanwhile.
                drop(drawing.try_set(drawn));
            });
        });
    });
    let wording = move || {
        drawing.track();
        let options = day.state.options.get();
        let wording = untrack(|| {
            day.read(|results| {
                day.zone
                    .with_value(|zone| chart::day_ribbon(results, zone, options))
            })
        });
        wording.unwrap_or_default()
    };
    let wording = Signal::derive(wording);
    move || {
        drawing
            .get()
            .map(|drawing| view! { <DayRibbonPicture drawing description=wording /> })
    }
}
